// Verifying the ledger of an open plant with the independent reader.

import type { Outcome } from '../domain/problem.ts';
import { type VerifiedLedger, verifyLedger } from '../ledger/verify.ts';
import type { PlantPorts } from './plant.ts';

/** Reads every stored row and says whether the ledger is whole. Problem: `ledger-broken` naming the first bad entry. */
export function verifyPlant(ports: Pick<PlantPorts, 'rows' | 'sha256'>): Promise<Outcome<VerifiedLedger>> {
  return verifyLedger(ports.rows.readStoredRows(0), ports.sha256);
}
