// Time-based one-time passwords of six digits, and the secret they are made from. Who has one is in second-factor.ts.

/** HMAC with SHA-1 over a message. */
export type HmacSha1 = (key: Uint8Array, message: Uint8Array) => Uint8Array;

/** Seconds one password holds, and its digits. Source: RFC 6238 4.1 (default step), RFC 4226 5.3 (at least six digits); from memory. */
export const stepSeconds = 30;
const digits = 6;

/** Answers the time step an instant lies in, counted from 1970. */
export function timeStepOf(instant: string): number {
  return Math.floor(Date.parse(instant) / 1000 / stepSeconds);
}

/**
 * Answers the one-time password of a time step. `digits` is a choice of the published test vectors, which have eight.
 * Source: RFC 4226 5.3 and 5.4 (dynamic truncation), RFC 6238 4.2; from memory.
 */
export function oneTimePassword(
  secret: Uint8Array,
  step: number,
  hmacSha1: HmacSha1,
  { digits: length }: { readonly digits: number } = { digits },
): string {
  const counter = new DataView(new ArrayBuffer(8));
  counter.setBigUint64(0, BigInt(step));
  const mac = hmacSha1(secret, new Uint8Array(counter.buffer));
  const offset = (mac.at(-1) ?? 0) & 0x0f;
  const view = new DataView(mac.buffer, mac.byteOffset, mac.byteLength);
  const truncated = view.getUint32(offset) & 0x7fff_ffff;
  return String(truncated % 10 ** length).padStart(length, '0');
}

const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567';

/** Writes bytes in base 32, as a person types them into an authenticator. Source: RFC 4648 6, without padding. */
export function writeBase32(bytes: Uint8Array): string {
  let text = '';
  let bits = 0;
  let held = 0;
  for (const byte of bytes) {
    held = (held << 8) | byte;
    bits += 8;
    while (bits >= 5) {
      bits -= 5;
      text += alphabet[(held >> bits) & 31];
    }
    held &= (1 << bits) - 1;
  }
  return bits === 0 ? text : text + alphabet[(held << (5 - bits)) & 31];
}

/** Reads base 32 that `writeBase32` wrote. */
export function readBase32(text: string): Uint8Array {
  const bytes: number[] = [];
  let bits = 0;
  let held = 0;
  for (const letter of text) {
    held = (held << 5) | alphabet.indexOf(letter);
    bits += 5;
    if (bits >= 8) {
      bits -= 8;
      bytes.push((held >> bits) & 255);
    }
    held &= (1 << bits) - 1;
  }
  return Uint8Array.from(bytes);
}
