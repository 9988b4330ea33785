// A small plant in memory for the tests: people, one pair with an approved calibration, a clock that can be set.

import { createHash, randomBytes } from 'node:crypto';
import type { RunSheet } from '../src/domain/calibration/run-sheet.ts';
import { twelveMonthsTwoPercent } from '../src/domain/rules/twelve-months-two-percent.ts';
import type { Person } from '../src/ledger/plant-state.ts';
import { approveCalibration } from '../src/service/decide-calibration.ts';
import { fileCertificate } from '../src/service/file-certificate.ts';
import { formPair } from '../src/service/form-pair.ts';
import { judgeCalibration } from '../src/service/judge-calibration.ts';
import { openPlant, type Plant } from '../src/service/plant.ts';
import { recordRun } from '../src/service/record-run.ts';
import { registerEquipment } from '../src/service/register-equipment.ts';
import { hmacSha1 } from '../src/storage/hmac-sha1.ts';
import { openMemoryStorage } from '../src/storage/memory/open-storage.ts';
import { sha256 } from '../src/storage/sha256.ts';
import { outcomeValue } from './outcome-value.ts';

export const people = {
  crew: { id: 'cal', name: 'Cal Crewman', role: 'crew' },
  technician: { id: 'tess', name: 'Tess Technician', role: 'technician' },
  quality: { id: 'quinn', name: 'Quinn Quality', role: 'quality' },
  otherQuality: { id: 'quade', name: 'Quade Quality', role: 'quality' },
  auditor: { id: 'audie', name: 'Audie Auditor', role: 'auditor' },
  administrator: { id: 'ada', name: 'Ada Administrator', role: 'administrator' },
} as const satisfies Record<string, Person>;

export const password = 'pass-word-1';

export interface PlantAtWork {
  readonly plant: Plant;
  /** Sets the clock to noon UTC of a day. */
  setDay(day: string): void;
  /** Moves the clock on by so many seconds. */
  pass(seconds: number): void;
}

/** Reading = 10 psi + 145 psi per kip, with a small scatter that differs by cycle; 5 to 45 kip in nine levels. */
export function runSheet(facts: Partial<RunSheet> = {}, factor = 1): RunSheet {
  const scatter = [
    [2, -3, 4, -2, 3, -4, 2, -1, 3],
    [-4, 2, -3, 4, -2, 3, -4, 2, -2],
    [3, 1, -2, -3, 4, 1, 2, -4, 1],
  ];
  return {
    units: { force: 'kip', reading: 'psi' },
    set: 'force',
    loading: 'active',
    pair: 'P-1',
    calibratedOn: '2026-03-02',
    loadCell: 'LC-1',
    cycles: scatter.map((errors) => ({
      points: [
        { direction: 'up', force: 0, reading: 0 },
        ...errors.map((error, level) => {
          const force = 5 * (level + 1);
          return { direction: 'up' as const, force, reading: Math.round((10 + 145 * force) * factor + error) };
        }),
      ],
    })),
    ...facts,
  };
}

export async function emptyPlantAtWork(today = '2026-06-01'): Promise<PlantAtWork> {
  let instant = `${today}T18:00:00.000Z`;
  const storage = openMemoryStorage({ sha256 });
  const plant = outcomeValue(
    await openPlant({
      ledger: storage.ledger,
      credentials: storage.credentials,
      rows: storage.rows,
      attachments: storage.attachments,
      clock: () => instant,
      sha256,
      hmacSha1,
      randomToken: () => randomBytes(24).toString('base64url'),
      passwords: {
        hash: async (text) => createHash('sha256').update(text).digest('hex'),
        verify: async (hash, text) => createHash('sha256').update(text).digest('hex') === hash,
      },
    }),
  );
  return {
    plant,
    setDay: (day) => {
      instant = `${day}T18:00:00.000Z`;
    },
    pass: (seconds) => {
      instant = new Date(Date.parse(instant) + seconds * 1000).toISOString();
    },
  };
}

/** The small plant: P-1 of J-1 and G-1, calibrated on 2 March 2026 and approved. */
export async function plantAtWork(today = '2026-06-01'): Promise<PlantAtWork> {
  const work = await emptyPlantAtWork('2026-01-05');
  const { plant } = work;
  const at = plant.clock();
  const actor = 'jackledger';
  outcomeValue(
    await plant.append(
      [
        {
          at,
          actor,
          kind: 'plant-opened/1',
          subject: 'plant',
          body: { name: 'Test Plant', timeZone: 'America/Chicago', sample: false },
        },
        {
          at,
          actor,
          kind: 'rules-set/1',
          subject: twelveMonthsTwoPercent.name,
          body: { profile: twelveMonthsTwoPercent, reason: 'start' },
        },
        ...Object.values(people).map(({ id, name, role }) => ({
          at,
          actor,
          kind: 'person-added/1' as const,
          subject: id,
          body: { name, role },
        })),
      ],
      null,
    ),
  );
  for (const { id } of Object.values(people)) {
    const hash = await plant.passwords.hash(password);
    await plant.credentials.change([{ change: 'set-password', person: id, hash }]);
  }
  const by = { actor: people.technician, retry: null };
  const jack = {
    kind: 'jack',
    tag: 'J-1',
    serial: 'S1',
    ratedForce: '50 kip',
    pistonArea: '7 in2',
    strandsPulled: 1,
  } as const;
  outcomeValue(await registerEquipment(plant, jack, by));
  const gauge = {
    kind: 'gauge',
    tag: 'G-1',
    serial: 'S2',
    display: 'dial',
    fullScale: '10000 psi',
    graduation: '100 psi',
  } as const;
  outcomeValue(await registerEquipment(plant, gauge, by));
  outcomeValue(
    await registerEquipment(plant, { kind: 'load-cell', tag: 'LC-1', serial: 'S3', capacity: '60 kip' }, by),
  );
  const certificate = {
    number: 'K-1',
    laboratory: 'Laboratory of the Tests',
    traceableTo: 'National standard of force',
    calibratedOn: '2026-01-02',
    validUntil: '2027-01-02',
    expandedUncertaintyPercent: 0.24,
    coverageFactor: 2,
  };
  outcomeValue(await fileCertificate(plant, 'LC-1', certificate, by));
  outcomeValue(await formPair(plant, { tag: 'P-1', jack: 'J-1', gauge: 'G-1' }, by));
  work.setDay('2026-03-02');
  await calibrate(plant, runSheet());
  work.setDay(today);
  return work;
}

/** Records a run sheet as the technician and approves it as quality. */
export async function calibrate(plant: Plant, sheet: RunSheet): Promise<string> {
  const recorded = outcomeValue(
    await recordRun(plant, { sheet, degree: 'auto' }, { actor: people.technician, retry: null }),
  );
  const judged = outcomeValue(judgeCalibration(plant, recorded));
  const approval = {
    reviewHash: judged.reviewHash,
    ...(judged.needsNote ? { note: 'accepted in a test' } : {}),
  };
  outcomeValue(await approveCalibration(plant, recorded.number, approval, { actor: people.quality, retry: null }));
  return recorded.number;
}
