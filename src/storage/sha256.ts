// SHA-256 as the ledger takes it, by Node's own implementation. What is hashed is in ledger/hash-chain.ts.

import { createHash } from 'node:crypto';
import type { Sha256 } from '../ledger/hash-chain.ts';

export const sha256: Sha256 = (bytes) => createHash('sha256').update(bytes).digest('hex');
