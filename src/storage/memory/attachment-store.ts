// Files in memory. The twin is sqlite/attachment-store.ts.

import { succeed } from '../../domain/problem.ts';
import type { AttachmentStore, StoredAttachment } from '../attachment-store.ts';

export function openMemoryAttachmentStore(): AttachmentStore {
  const kept = new Map<string, StoredAttachment>();
  return {
    async keep(attachment) {
      if (!kept.has(attachment.sha256)) {
        kept.set(attachment.sha256, { ...attachment, content: attachment.content.slice() });
      }
      return succeed(null);
    },
    async read(sha256) {
      return kept.get(sha256) ?? null;
    },
  };
}
