import { describe, expect, it } from 'vitest';
import type { Certificate } from '../../../src/domain/equipment/equipment.ts';
import { twelveMonthsTwoPercent } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import type { EntryBodies, NewEntry } from '../../../src/ledger/entry.ts';
import { genesisHash, sealRow } from '../../../src/ledger/hash-chain.ts';
import { standingPart } from '../../../src/ledger/plant-state.ts';
import { replay } from '../../../src/ledger/replay.ts';
import { type ReviewedCalibration, reviewHash } from '../../../src/ledger/review-hash.ts';
import { entryOfRow, type StoredRow } from '../../../src/ledger/stored-row.ts';
import { verifyLedger } from '../../../src/ledger/verify.ts';
import { sha256 } from '../../../src/storage/sha256.ts';
import { calibrate, plantAtWork, runSheet as sheetAtWork } from '../../plant-at-work.ts';
import {
  certificateFiled,
  instant,
  plantBeforeCalibration,
  runRecorded,
  runSheet,
} from '../../storage/plant-entries.ts';

type Approval = EntryBodies['calibration-approved/2'];

function sealed(entries: readonly NewEntry[], after: readonly StoredRow[] = []): readonly StoredRow[] {
  const rows = [...after];
  for (const entry of entries) {
    rows.push(sealRow({ ...entry, seq: rows.length + 1 }, rows.at(-1)?.hash ?? genesisHash, sha256));
  }
  return rows;
}

const rules = { ...twelveMonthsTwoPercent, name: 'plant-rules' };
const rulesSet = (reason: string, profile = rules): NewEntry => {
  return { at: instant(9), actor: 'quinn', kind: 'rules-set/1', subject: profile.name, body: { profile, reason } };
};
const certificate = (certificateFiled(7, 'C-2025-118').body as EntryBodies['certificate-filed/1']).certificate;
const curve = { response: 'reading', degree: 1, coefficients: [12.25, 161.3] } as const;

/** Appends the approval of CAL-1 as a service writes it, with what is said otherwise; `signed` alone is not in its body. */
function approved(
  rows: readonly StoredRow[],
  otherwise: { body?: Partial<Approval>; signed?: Partial<ReviewedCalibration>; actor?: string } = {},
): readonly StoredRow[] {
  const state = replay(rows.map(entryOfRow));
  const runHash = state.calibrations.get('CAL-1')?.runHash ?? 'none';
  const held = state.certificates.get('LC-1')?.at(-1) ?? null;
  const { rulesHash } = state;
  const shipped = rulesHash === null ? { rules: state.rules } : {};
  const entryOf = (tag: string): number => state.standing.get(standingPart(tag)) ?? 0;
  const standing = { jack: entryOf('J-01'), gauge: entryOf('G-01'), loadCell: entryOf('LC-1') };
  const signed = { certificate: held, parts: standing, rulesHash, ...shipped, ...otherwise.body };
  const { certificate: named, parts, rules: written = state.rules } = signed;
  const review = { runHash, ...curve, ...otherwise.body?.curve, rulesHash: signed.rulesHash, rules: written };
  const reviewed = reviewHash({ ...review, certificate: named, parts, ...otherwise.signed }, sha256);
  const body: Approval = { reviewed, curve, ...signed };
  const actor = otherwise.actor ?? 'quinn';
  return sealed([{ at: instant(12), actor, kind: 'calibration-approved/2', subject: 'CAL-1', body }], rows);
}

const before = plantBeforeCalibration();
const recorded = sealed([...before, rulesSet('Ours.'), runRecorded(11, 'CAL-1')]);

const verifies = (rows: readonly StoredRow[]) => verifyLedger(rows, sha256);
const brokenAt = (seq: number, why: string) => ({
  ok: false,
  problem: { code: 'ledger-broken', where: `entry ${seq}`, message: expect.stringContaining(why) },
});
const entry = <K extends NewEntry['kind']>(kind: K, subject: string, body: EntryBodies[K]): NewEntry =>
  ({ at: instant(10), actor: 'ada', kind, subject, body }) as unknown as NewEntry;

describe('an approval that verifies', () => {
  it('signs the run, curve, rules and certificate the ledger holds', async () => {
    expect(await verifies(approved(recorded))).toMatchObject({ ok: true });
  });

  it('holds the shipped rules itself while the plant has set none', async () => {
    expect(await verifies(approved(sealed([...before, runRecorded(11, 'CAL-1')])))).toMatchObject({ ok: true });
  });

  it('may do without a certificate', async () => {
    expect(await verifies(approved(recorded, { body: { certificate: null } }))).toMatchObject({ ok: true });
  });

  it('names a certificate as it was amended, and as it was withdrawn', async () => {
    const amended = { ...certificate, validUntil: '2026-07-31' };
    const changes = [
      entry('certificate-amended/1', 'LC-1', { certificate: amended, corrects: 8, reason: 'Misread.' }),
      entry('certificate-withdrawn/1', 'LC-1', { number: 'C-2025-118', reason: 'Bad.', lastGood: '2026-06-30' }),
    ];
    const rows = sealed(changes, recorded);
    expect(await verifies(approved(rows))).toMatchObject({ ok: true });
    const asBefore = approved(rows, { body: { certificate: amended } });
    expect(await verifies(asBefore)).toMatchObject(brokenAt(14, 'on a certificate that no entry before it holds'));
  });

  it('names a certificate that was amended after it was withdrawn as both', async () => {
    const amended = { ...certificate, validUntil: '2026-07-31' };
    const rows = sealed(
      [
        entry('certificate-withdrawn/1', 'LC-1', { number: 'C-2025-118', reason: 'Bad.', lastGood: '2026-06-30' }),
        entry('certificate-amended/1', 'LC-1', { certificate: amended, corrects: 8, reason: 'Misread.' }),
      ],
      recorded,
    );
    expect(await verifies(approved(rows))).toMatchObject({ ok: true });
    const asIfGood = approved(rows, { body: { certificate: amended } });
    expect(await verifies(asIfGood)).toMatchObject(brokenAt(14, 'on a certificate that no entry before it holds'));
  });

  it('is what the services write', async () => {
    const { plant } = await plantAtWork();
    await calibrate(plant, sheetAtWork({ calibratedOn: '2026-05-30' }));
    const rows: StoredRow[] = [];
    for await (const row of plant.rows.readStoredRows(0)) rows.push(row);
    expect(rows.filter(({ kind }) => kind === 'calibration-approved/2').map(({ subject }) => subject)).toEqual([
      'C-0001',
      'C-0002',
    ]);
    expect(await verifies(rows)).toMatchObject({ ok: true });
  });
});

const gaugeCorrected = entry('equipment-amended/1', 'G-01', {
  equipment: {
    kind: 'gauge',
    tag: 'G-01',
    serial: 'corrected',
    display: 'dial',
    fullScale: { value: 10_000, unit: 'psi' },
    graduation: { value: 100, unit: 'psi' },
  },
  corrects: 6,
  reason: 'Misread.',
});

describe('an approval is named as the first bad entry', () => {
  const otherSheet = runRecorded(11, 'CAL-1', 'tess', 'P-01', { ...runSheet(), note: 'written anew' });

  it.each<[string, readonly StoredRow[], string]>([
    [
      'whose curve was changed after it was signed',
      approved(recorded, { signed: { coefficients: [12.25, 161.4] } }),
      'what it signs is not',
    ],
    ['whose degree was changed', approved(recorded, { signed: { degree: 2 } }), 'what it signs is not'],
    [
      'that signs another run sheet',
      approved(recorded, { signed: { runHash: 'b'.repeat(64) } }),
      'what it signs is not',
    ],
    [
      'that signs other rules than it names',
      approved(recorded, { signed: { rules: { ...rules, title: 'Others' } } }),
      'what it signs is not',
    ],
    [
      'that brings rules of its own along',
      approved(recorded, { body: { rules: { ...rules, title: 'Others' } } }),
      'what it signs is not',
    ],
    [
      'whose certificate nobody filed',
      approved(recorded, { body: { certificate: { ...certificate, number: 'C-0' } as Certificate } }),
      'on a certificate that no entry before it holds',
    ],
    [
      'whose certificate was changed in its last digit',
      approved(recorded, { body: { certificate: { ...certificate, expandedUncertaintyPercent: 0.13 } } }),
      'on a certificate that no entry before it holds',
    ],
    [
      'whose certificate is of another load cell',
      approved(
        sealed(
          [
            entry('equipment-registered/1', 'LC-2', {
              equipment: { kind: 'load-cell', tag: 'LC-2', serial: '2', capacity: { value: 50, unit: 'kip' } },
            }),
            certificateFiled(10, 'C-2', 'LC-2'),
          ],
          recorded,
        ),
        {
          body: {
            certificate: { ...certificate, number: 'C-2', loadCell: 'LC-2' },
          },
        },
      ),
      'on a certificate that no entry before it holds',
    ],
    [
      'that signs another part than it names',
      approved(recorded, { signed: { parts: { jack: 5, gauge: 6, loadCell: 6 } } }),
      'what it signs is not',
    ],
    [
      'on a gauge as it was before it was corrected',
      approved(sealed([gaugeCorrected], recorded), { body: { parts: { jack: 5, gauge: 6, loadCell: 7 } } }),
      'for other parts than those the ledger holds',
    ],
    ['by a technician', approved(recorded, { actor: 'ada' }), 'quality does'],
    ['by somebody the ledger does not name', approved(recorded, { actor: 'nemo' }), 'quality does'],
    [
      'by somebody who was barred',
      approved(sealed([entry('person-barred/1', 'quinn', { reason: 'left' })], recorded)),
      'quality does',
    ],
    [
      'by rules that were in force before',
      approved(sealed([rulesSet('Others now.')], recorded), { body: { rulesHash: recorded[9]?.hash ?? '' } }),
      'by other rules than those in force',
    ],
    [
      'by the shipped rules after the plant set its own',
      approved(recorded, { body: { rulesHash: null, rules: twelveMonthsTwoPercent } }),
      'by other rules than those in force',
    ],
  ])('%s', async (_what, rows, why) => {
    expect(await verifies(rows)).toMatchObject(brokenAt(rows.length, why));
  });

  it('when the sheet before it was written anew with every hash after it', async () => {
    const forged = sealed([...before, rulesSet('Ours.'), otherSheet]);
    const approval = approved(recorded).at(-1)!;
    const { at, actor, subject } = approval;
    const body = JSON.parse(approval.body) as Approval;
    const rows = sealed([{ at, actor, kind: 'calibration-approved/2', subject, body }], forged);
    expect(await verifies(rows)).toMatchObject(brokenAt(12, 'what it signs is not'));
  });

  it('when nobody recorded what it approves', async () => {
    const parts = { jack: 5, gauge: 6, loadCell: 7 };
    const body = {
      reviewed: 'a'.repeat(64),
      curve,
      certificate: null,
      parts,
      rulesHash: null,
      rules: twelveMonthsTwoPercent,
    };
    const rows = sealed([...before, { ...entry('calibration-approved/2', 'CAL-9', body), actor: 'quinn' }]);
    expect(await verifies(rows)).toMatchObject(brokenAt(10, 'which no entry before it recorded'));
  });

  it('when its body is nothing an approval can hold', async () => {
    const nothing = null as unknown as Approval;
    const rows = sealed([{ ...entry('calibration-approved/2', 'CAL-1', nothing), actor: 'quinn' }], recorded);
    expect(await verifies(rows)).toMatchObject(brokenAt(12, 'for other parts'));
  });

  it('when its approver entered the run at the command line', async () => {
    const rows = sealed([...before, rulesSet('Ours.'), runRecorded(11, 'CAL-1', 'command-line:quinn')]);
    expect(await verifies(approved(rows))).toMatchObject(brokenAt(12, '"quinn" approves calibration "CAL-1"'));
    expect(() => replay(approved(rows).map(entryOfRow))).toThrow('who entered it');
  });
});
