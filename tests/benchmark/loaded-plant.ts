// A plant in memory with so many pairs, each calibrated once with one load cell, for what is measured on a large plant.

import { createHash, randomBytes } from 'node:crypto';
import type { NewEntry } from '../../src/ledger/entry.ts';
import { openPlant, type Plant } from '../../src/service/plant.ts';
import { hmacSha1 } from '../../src/storage/hmac-sha1.ts';
import { openMemoryStorage } from '../../src/storage/memory/open-storage.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import { outcomeValue } from '../outcome-value.ts';
import { lookupBasis, thirtyPoints } from './sample-curve.ts';

export const pairCount = 10_000;

export async function loadedPlant(): Promise<Plant> {
  const storage = openMemoryStorage({ sha256 });
  const at = '2026-06-01T12:00:00.000Z';
  const { jack, gauge, certificate: behind } = lookupBasis();
  if (jack === null || gauge === null || behind === null) throw new Error('The basis of the benchmark has no parts.');
  const certificate = {
    ...behind,
    loadCell: 'LC-1',
    traceableTo: 'National standard of force',
    calibratedOn: '2026-01-01',
    validUntil: '2027-01-01',
  };
  const cell = { kind: 'load-cell', tag: 'LC-1', serial: '1', capacity: { value: 60, unit: 'kip' } } as const;
  const by = { at, actor: 'entering' };
  const entries: NewEntry[] = [
    { ...by, kind: 'equipment-registered/1', subject: 'LC-1', body: { equipment: cell } },
    { ...by, kind: 'certificate-filed/1', subject: 'LC-1', body: { certificate } },
  ];
  for (let index = 1; index <= pairCount; index += 1) {
    const [pair, jackTag, gaugeTag, calibration] = [`P-${index}`, `J-${index}`, `G-${index}`, `C-${index}`];
    const parts = [
      { ...jack, tag: jackTag },
      { ...gauge, tag: gaugeTag },
    ];
    entries.push(
      ...parts.map((equipment) => ({
        ...by,
        kind: 'equipment-registered/1' as const,
        subject: equipment.tag,
        body: { equipment },
      })),
      {
        ...by,
        kind: 'pair-formed/1',
        subject: pair,
        body: { pair: { tag: pair, jack: jackTag, gauge: gaugeTag, formedOn: '2026-01-01' } },
      },
      {
        ...by,
        kind: 'run-recorded/1',
        subject: calibration,
        body: { pair, calibratedOn: '2026-03-01', loadCell: 'LC-1', sheet: thirtyPoints, degree: 'auto' },
      },
      {
        at,
        actor: 'approving',
        kind: 'calibration-approved/1',
        subject: calibration,
        body: { reviewed: '0'.repeat(64) },
      },
    );
  }
  outcomeValue(await storage.ledger.append({ entries, expectedSeq: 0 }));
  const hash = async (text: string) => createHash('sha256').update(text).digest('hex');
  return outcomeValue(
    await openPlant({
      ...storage,
      clock: () => at,
      sha256,
      hmacSha1,
      randomToken: () => randomBytes(24).toString('base64url'),
      passwords: { hash, verify: async (hashed, text) => hashed === (await hash(text)) },
    }),
  );
}
