// The file beside a backup that says what it is: its head, its size, the hash of its bytes.

import { z } from 'zod';

export const backupManifestFormat = 'jackledger-backup/1';

export const backupManifest = z.object({
  format: z.literal(backupManifestFormat),
  head: z.object({ seq: z.number().int().min(0), hash: z.string().regex(/^[0-9a-f]{64}$/) }),
  shortHead: z.string(),
  bytes: z.number().int().min(1),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  madeAt: z.string().describe('UTC instant'),
  ledger: z.string().describe('File name of the ledger it is a copy of'),
});
export type BackupManifest = z.infer<typeof backupManifest>;
