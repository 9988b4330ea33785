// HMAC with SHA-1 by the platform, for one-time passwords.

import { createHmac } from 'node:crypto';

export function hmacSha1(key: Uint8Array, message: Uint8Array): Uint8Array {
  return createHmac('sha1', key).update(message).digest();
}
