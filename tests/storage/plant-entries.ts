// Entries of an invented plant, ready to append: one of every kind, in an order that can have happened.
// Histories at random are in tests/property/ledger-history.ts.

import type { RunSheet } from '../../src/domain/calibration/run-sheet.ts';
import { preTensionedWindow } from '../../src/domain/rules/elongation-window.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import type { NewEntry } from '../../src/ledger/entry.ts';

/** Answers the UTC instant some seconds into the plant's first morning. */
export function instant(seconds: number): string {
  return new Date(Date.UTC(2026, 0, 5, 14, 0, 0) + seconds * 1000).toISOString();
}

/** Three rising cycles up to 31 kip with a small, fixed scatter. */
export function runSheet(levelCount = 5): RunSheet {
  const levels = Array.from({ length: levelCount }, (_, index) => Math.round((310 * (index + 1)) / levelCount) / 10);
  return {
    units: { force: 'kip', reading: 'psi' },
    cycles: [0, 1, 2].map((cycle) => ({
      points: levels.map((force, row) => ({
        direction: 'up',
        force,
        reading: Math.round(161.3 * force + 12 + ((cycle + row) % 3) * 2),
      })),
    })),
    set: 'force',
    loading: 'active',
  };
}

export function holdPlaced(seconds: number, reason: string, pair = 'P-01'): NewEntry {
  return { at: instant(seconds), actor: 'quinn', kind: 'hold-placed/1', subject: pair, body: { reason } };
}

export function runRecorded(
  seconds: number,
  number: string,
  actor = 'tess',
  pair = 'P-01',
  sheet = runSheet(),
): NewEntry {
  return {
    at: instant(seconds),
    actor,
    kind: 'run-recorded/1',
    subject: number,
    body: { pair, calibratedOn: '2026-01-05', loadCell: 'LC-1', sheet, degree: 'auto' },
  };
}

export function approval(seconds: number, number: string, actor = 'quinn'): NewEntry {
  return {
    at: instant(seconds),
    actor,
    kind: 'calibration-approved/1',
    subject: number,
    body: { reviewed: 'a'.repeat(64) },
  };
}

export function rejection(seconds: number, number: string, actor = 'quinn'): NewEntry {
  return {
    at: instant(seconds),
    actor,
    kind: 'calibration-rejected/1',
    subject: number,
    body: { reason: 'Cycle 2 was read off another gauge.' },
  };
}

export function certificateFiled(seconds: number, number: string, loadCell = 'LC-1'): NewEntry {
  return {
    at: instant(seconds),
    actor: 'ada',
    kind: 'certificate-filed/1',
    subject: loadCell,
    body: {
      certificate: {
        number,
        loadCell,
        laboratory: 'Invented Force Laboratory',
        traceableTo: 'a national standard',
        calibratedOn: '2025-09-01',
        validUntil: '2026-08-31',
        expandedUncertaintyPercent: 0.12,
        coverageFactor: 2,
      },
    },
  };
}

/** A bed of one strand pulled once, by the calibration an entry approved. */
export function stressingRecorded(
  seconds: number,
  number: string,
  calibrationEntry: number,
  { pair = 'P-01', actor = 'carl' } = {},
): NewEntry {
  return {
    at: instant(seconds),
    actor,
    kind: 'stressing-recorded/1',
    subject: number,
    body: {
      facts: {
        bed: 'Bed 3',
        on: '2026-01-05',
        pair,
        calibrationEntry,
        strand: 'A416 1/2 in 270',
        reel: null,
        area: { value: 0.153, unit: 'in2' },
        modulus: { value: 28500, unit: 'ksi' },
        strandsPulled: 1,
        length: { value: 400, unit: 'ft' },
        force: { value: 31, unit: 'kip' },
        preload: { value: 4, unit: 'kip' },
        pattern: { name: 'One strand', positions: [{ id: 'A1', row: 1, column: 1 }] },
        corrections: [],
        window: preTensionedWindow,
      },
      pulls: [
        {
          positions: ['A1'],
          preloadReading: { value: 660, unit: 'psi' },
          finalReading: { value: 5010, unit: 'psi' },
          elongation: { value: 29.7, unit: 'in' },
          gaugeForce: { value: 31, unit: 'kip' },
        },
      ],
    },
  };
}

/** A plant with its people, one pair ready to be calibrated and its load cell under certificate. */
export function plantBeforeCalibration(): readonly NewEntry[] {
  const by = (seconds: number) => ({ at: instant(seconds), actor: 'ada' });
  return [
    {
      ...by(0),
      kind: 'plant-opened/1',
      subject: 'plant',
      body: { name: 'Cañón Precast', timeZone: 'America/Denver', sample: false },
    },
    { ...by(1), kind: 'person-added/1', subject: 'ada', body: { name: 'Ada', role: 'administrator' } },
    { ...by(2), kind: 'person-added/1', subject: 'tess', body: { name: 'Tess', role: 'technician' } },
    { ...by(3), kind: 'person-added/1', subject: 'quinn', body: { name: 'Quinn', role: 'quality' } },
    {
      ...by(4),
      kind: 'equipment-registered/1',
      subject: 'J-01',
      body: {
        equipment: {
          kind: 'jack',
          tag: 'J-01',
          serial: '4411',
          ratedForce: { value: 44, unit: 'kip' },
          pistonArea: { value: 6.35, unit: 'in2' },
          strandsPulled: 1,
        },
      },
    },
    {
      ...by(5),
      kind: 'equipment-registered/1',
      subject: 'G-01',
      body: {
        equipment: {
          kind: 'gauge',
          tag: 'G-01',
          serial: '88-203',
          display: 'dial',
          fullScale: { value: 10000, unit: 'psi' },
          graduation: { value: 100, unit: 'psi' },
        },
      },
    },
    {
      ...by(6),
      kind: 'equipment-registered/1',
      subject: 'LC-1',
      body: { equipment: { kind: 'load-cell', tag: 'LC-1', serial: '90021', capacity: { value: 50, unit: 'kip' } } },
    },
    certificateFiled(7, 'C-2025-118'),
    {
      ...by(8),
      kind: 'pair-formed/1',
      subject: 'P-01',
      body: { pair: { tag: 'P-01', jack: 'J-01', gauge: 'G-01', formedOn: '2026-01-05' } },
    },
  ];
}

/** The same plant with something of every kind done to it. */
export function plantWithEveryKind(): readonly NewEntry[] {
  return [
    ...plantBeforeCalibration(),
    {
      at: instant(10),
      actor: 'quinn',
      kind: 'rules-set/1',
      subject: 'plant-rules',
      body: { profile: { ...twelveMonthsTwoPercent, name: 'plant-rules' }, reason: 'Ours, from this year on.' },
    },
    certificateFiled(10, 'C-2025-131'),
    runRecorded(11, 'CAL-1'),
    rejection(12, 'CAL-1'),
    runRecorded(13, 'CAL-2'),
    approval(14, 'CAL-2'),
    holdPlaced(15, 'Dropped from the bed.'),
    { at: instant(16), actor: 'quinn', kind: 'hold-lifted/1', subject: 'P-01', body: { reason: 'Checked, sound.' } },
    {
      at: instant(17),
      actor: 'carl',
      kind: 'reading-released/1',
      subject: 'P-01',
      body: {
        name: 'Carl',
        reason: 'The bed is half pulled.',
        calibration: 'CAL-2',
        force: { value: 31, unit: 'kip' },
        readingToSet: { value: 5000, unit: 'psi' },
        stops: ['overdue'],
      },
    },
    stressingRecorded(18, 'S-0001', 15),
    {
      at: instant(19),
      actor: 'tess',
      kind: 'pair-parted/1',
      subject: 'P-01',
      body: { on: '2026-01-05', reason: 'Gauge sent for repair.' },
    },
  ];
}
