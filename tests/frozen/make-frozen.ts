// Makes the frozen ledger of this version, once, with every kind of entry: node --import tsx tests/frozen/make-frozen.ts
// A ledger that was frozen is never made again: it must verify and replay to what is written beside it for ever.

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import { entryKinds, type NewEntry } from '../../src/ledger/entry.ts';
import { approveCalibration, rejectCalibration } from '../../src/service/decide-calibration.ts';
import { liftHold, placeHold } from '../../src/service/hold-pair.ts';
import { judgeCalibration } from '../../src/service/judge-calibration.ts';
import type { Plant } from '../../src/service/plant.ts';
import { recordRun } from '../../src/service/record-run.ts';
import { rebuildLedgerFile } from '../../src/storage/sqlite/rebuild-ledger-file.ts';
import { outcomeValue } from '../outcome-value.ts';
import { calibrate, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { stateDigests } from '../state-digests.ts';
import { collect } from '../storage/collect.ts';
import { stressingRecorded } from '../storage/plant-entries.ts';

const folder = import.meta.dirname;
const { version } = JSON.parse(readFileSync(join(folder, '../../package.json'), 'utf8')) as { version: string };
const file = join(folder, `${version}.ledger`);
if (existsSync(file)) throw new Error(`${file} is frozen already; a new version gets a ledger of its own.`);

const work = await plantAtWork();
const { plant } = work;
await byActions(plant);
for (const entry of withoutActions(plant)) outcomeValue(await plant.append([entry], null));
outcomeValue(await plant.append(settled(plant), null));

const rows = await collect(plant.rows.readStoredRows(0));
const missing = entryKinds.filter((kind) => !rows.some((row) => row.kind === kind));
if (missing.length > 0) throw new Error(`No entry of the kinds ${missing.join(', ')}.`);
outcomeValue(rebuildLedgerFile(file, rows, []));
const record = { version, entries: rows.length, head: plant.state.head, digests: stateDigests(plant.state) };
writeFileSync(join(folder, `${version}.json`), `${JSON.stringify(record, null, 2)}\n`);
process.stdout.write(`${file}: ${rows.length} entries, head ${plant.state.head.hash}\n`);

/** What people do by the actions of this version. */
async function byActions(plant: Plant): Promise<void> {
  const byQuality = { actor: people.quality, retry: null };
  outcomeValue(await placeHold(plant, 'P-1', 'dropped from the bed', { actor: people.crew, retry: null }));
  outcomeValue(await liftHold(plant, 'P-1', 'checked, sound', byQuality));
  const sheet = runSheet({ calibratedOn: '2026-06-01' });
  const byTechnician = { actor: people.technician, retry: null };
  const run = outcomeValue(await recordRun(plant, { sheet, degree: 'auto' }, byTechnician));
  outcomeValue(await rejectCalibration(plant, run.number, 'read off another gauge', byQuality));
  await calibrate(plant, runSheet({ calibratedOn: '2026-06-01' }, 1.001));
  // Two people of quality, each on a sheet of the technician's.
  const other = outcomeValue(
    await recordRun(plant, { sheet: runSheet({}, 1.002), degree: 2, degreeReason: 'bends' }, byTechnician),
  );
  const judged = outcomeValue(judgeCalibration(plant, other));
  const approval = { reviewHash: judged.reviewHash, note: 'accepted with a note' };
  const byOther = { actor: people.otherQuality, retry: null };
  outcomeValue(await approveCalibration(plant, other.number, approval, byOther));
}

/** Entries of kinds that older ledgers hold, or that no action of the tests writes. */
function withoutActions({ state, clock }: Plant): readonly NewEntry[] {
  const by = { at: clock(), actor: people.administrator.id };
  const reason = 'frozen';
  const jack = {
    kind: 'jack',
    tag: 'J-9',
    serial: 'S9',
    ratedForce: { value: 220, unit: 'kN' },
    pistonArea: { value: 41, unit: 'cm2' },
    strandsPulled: 1,
  } as const;
  const gauge = {
    kind: 'gauge',
    tag: 'G-9',
    serial: 'S10',
    display: 'dial',
    fullScale: { value: 700, unit: 'bar' },
    graduation: { value: 5, unit: 'bar' },
  } as const;
  const cell = { kind: 'load-cell', tag: 'LC-9', serial: 'S11', capacity: { value: 300, unit: 'kN' } } as const;
  const certificate = {
    number: 'K-9',
    loadCell: 'LC-9',
    laboratory: 'Laboratory of the Tests',
    traceableTo: 'National standard of force',
    calibratedOn: '2026-01-02',
    validUntil: '2027-01-02',
    expandedUncertaintyPercent: 0.24,
    coverageFactor: 2,
  } as const;
  const first = state.head.seq + 1;
  const profile = { ...twelveMonthsTwoPercent, name: 'plant-rules' };
  const number = 'C-9999';
  const run = { pair: 'P-9', calibratedOn: '2026-05-01', loadCell: 'LC-9', sheet: runSheet(), degree: 1 } as const;
  const calibration = [...state.calibrations.keys()].at(-1) ?? '';
  const force = { value: 31, unit: 'kip' } as const;
  const readingToSet = { value: 4500, unit: 'psi' } as const;
  const head = { seq: 3, hash: 'b'.repeat(64) };
  const standard = {
    number: 'N-1',
    instrument: 'force transducer 1 MN, serial 1107',
    heldBy: certificate.laboratory,
    issuedBy: 'a national institute',
    calibratedOn: '2025-02-03',
    validUntil: '2027-02-03',
  } as const;
  const ownStrand = {
    designation: '18 mm compact',
    grade: '1860',
    area: { value: 200, unit: 'mm2' },
    breakingLoad: { value: 372, unit: 'kN' },
    yieldLoad: { value: 327, unit: 'kN' },
    yieldBasis: 'proof-0.1-percent',
    modulus: { value: 195, unit: 'GPa' },
    certificate: 'mill certificate M-9',
  } as const;
  const reel = {
    id: 'R-9',
    strandId: '1/2 in 270',
    heat: '5512',
    area: { value: 0.1535, unit: 'in2' },
    modulus: { value: 28_700, unit: 'ksi' },
    breakingLoad: { value: 42.1, unit: 'kip' },
    certificate: 'mill certificate M-10',
  } as const;
  const equipment = { ...jack, serial: 'S9A' };
  return [
    { ...by, kind: 'equipment-registered/1', subject: 'J-9', body: { equipment: jack } },
    { ...by, kind: 'equipment-amended/1', subject: 'J-9', body: { equipment, corrects: first, reason } },
    { ...by, kind: 'equipment-registered/2', subject: 'G-9', body: { equipment: gauge } },
    { ...by, kind: 'equipment-registered/1', subject: 'LC-9', body: { equipment: cell } },
    { ...by, kind: 'laboratory-filed/1', subject: standard.heldBy, body: { laboratory: { name: standard.heldBy } } },
    { ...by, kind: 'standard-filed/1', subject: 'N-1', body: { standard } },
    { ...by, kind: 'standard-withdrawn/1', subject: 'N-1', body: { reason, lastGood: '2025-12-31' } },
    { ...by, kind: 'strand-filed/1', subject: ownStrand.designation, body: { strand: ownStrand } },
    { ...by, kind: 'reel-filed/1', subject: reel.id, body: { reel } },
    { ...by, kind: 'clock-set-right/1', subject: 'plant', body: { ahead: '2027-06-01T18:00:00.000Z', reason } },
    { ...by, kind: 'certificate-filed/1', subject: 'LC-9', body: { certificate } },
    { ...by, kind: 'certificate-filed/2', subject: 'LC-9', body: { certificate: { ...certificate, number: 'K-10' } } },
    {
      ...by,
      kind: 'certificate-amended/1',
      subject: 'LC-9',
      body: { certificate: { ...certificate, expandedUncertaintyPercent: 0.25 }, corrects: first + 10, reason },
    },
    {
      ...by,
      kind: 'certificate-withdrawn/1',
      subject: 'LC-9',
      body: { number: 'K-10', reason, lastGood: '2026-02-01' },
    },
    {
      ...by,
      kind: 'pair-formed/1',
      subject: 'P-9',
      body: { pair: { tag: 'P-9', jack: 'J-9', gauge: 'G-9', formedOn: '2026-04-01' } },
    },
    { ...by, kind: 'run-recorded/1', subject: number, body: run },
    { ...by, kind: 'run-recorded/2', subject: 'C-9998', body: run },
    { ...by, actor: 'quinn', kind: 'calibration-approved/1', subject: number, body: { reviewed: 'a'.repeat(64) } },
    { ...stressingRecorded(0, 'S-9999', first + 17, { pair: 'P-9' }), ...by },
    { ...by, kind: 'doubt-cleared/1', subject: number, body: { doubt: 'certificate LC-9 K-10', reason } },
    {
      ...by,
      kind: 'check-recorded/1',
      subject: 'P-1',
      body: {
        check: {
          on: '2026-05-20',
          loadCell: 'LC-1',
          levels: [[{ force: { value: 31, unit: 'kip' }, reading: { value: 4500, unit: 'psi' } }]],
          note: 'before the large beds',
        },
        calibration: 'C-0001',
      },
    },
    { ...by, kind: 'calibration-withdrawn/1', subject: number, body: { reason } },
    {
      ...by,
      kind: 'event-reported/1',
      subject: 'P-9',
      body: { event: { what: 'seals-replaced', on: '2026-05-20', note: 'both' } },
    },
    {
      ...by,
      kind: 'reading-released/1',
      subject: 'P-1',
      body: { name: 'F. Foreman', reason, calibration, force, readingToSet, stops: ['overdue'] },
    },
    { ...by, kind: 'rules-set/1', subject: profile.name, body: { profile, reason } },
    { ...by, kind: 'rules-set/2', subject: profile.name, body: { profile, reason } },
    { ...by, kind: 'rules-set/3', subject: profile.name, body: { profile, reason } },
    { ...by, kind: 'rules-set/4', subject: profile.name, body: { profile, reason } },
    { ...by, kind: 'person-changed/1', subject: 'cal', body: { name: 'Cal', role: 'technician', reason } },
    { ...by, kind: 'person-barred/1', subject: 'cal', body: { reason } },
    { ...by, kind: 'person-readmitted/1', subject: 'cal', body: { reason } },
    { ...by, kind: 'device-admitted/1', subject: 'D-1', body: { name: 'bed 2' } },
    { ...by, kind: 'device-barred/1', subject: 'D-1', body: { reason } },
    { ...by, kind: 'backup-made/1', subject: 'plant.backup', body: { head, bytes: 4096, sha256: 'c'.repeat(64) } },
    { ...by, kind: 'restored/1', subject: 'plant.backup', body: { from: head, givenUp: null, reason } },
    { ...by, kind: 'pair-parted/1', subject: 'P-9', body: { on: '2026-06-01', reason } },
    { ...by, kind: 'equipment-retired/1', subject: 'J-9', body: { on: '2026-06-01', reason } },
  ];
}

/** The event of the entry that reported it, settled. */
function settled({ state, clock }: Plant): readonly NewEntry[] {
  const event = state.pairs.get('P-9')?.events[0]?.seq ?? 0;
  return [{ at: clock(), actor: 'quinn', kind: 'event-settled/1', subject: 'P-9', body: { event, reason: 'frozen' } }];
}
