import { describe, expect, it } from 'vitest';
import { twelveMonthsTwoPercent } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import type { AnyLedgerEntry, NewEntry } from '../../../src/ledger/entry.ts';
import { genesisHash, sealEntry } from '../../../src/ledger/hash-chain.ts';
import { createReplay, emptyPlant, replay } from '../../../src/ledger/replay.ts';
import { sha256 } from '../../../src/storage/sha256.ts';
import {
  approval,
  certificateFiled,
  holdPlaced,
  instant,
  plantBeforeCalibration,
  plantWithEveryKind,
  rejection,
  runRecorded,
  runSheet,
  stressingRecorded,
} from '../../storage/plant-entries.ts';

function sealed(newEntries: readonly NewEntry[]): readonly AnyLedgerEntry[] {
  const entries: AnyLedgerEntry[] = [];
  for (const [index, entry] of newEntries.entries()) {
    entries.push(sealEntry({ ...entry, seq: index + 1 }, entries.at(-1)?.hash ?? genesisHash, sha256));
  }
  return entries;
}

describe('emptyPlant', () => {
  it('has nobody and nothing, and the rules the program ships with', () => {
    expect(emptyPlant()).toEqual({
      head: { seq: 0, hash: genesisHash },
      newestAt: null,
      plant: null,
      rules: twelveMonthsTwoPercent,
      rulesHash: null,
      rulesSet: null,
      people: new Map(),
      devices: new Map(),
      equipment: new Map(),
      retired: new Map(),
      laboratories: new Map(),
      checks: new Map(),
      strands: new Map(),
      reels: new Map(),
      standards: new Map(),
      certificates: new Map(),
      pairs: new Map(),
      calibrations: new Map(),
      approvedIn: new Map(),
      stressings: new Map(),
      corrected: new Map(),
      standing: new Map(),
      lastBackup: null,
    });
  });
});

describe('replay', () => {
  it('knows the plant, its people, its parts, its certificates and its pairs', () => {
    const state = replay(sealed(plantBeforeCalibration()));
    expect(state.plant).toEqual({
      name: 'Cañón Precast',
      timeZone: 'America/Denver',
      sample: false,
      openedAt: instant(0),
    });
    expect(state.people.get('quinn')).toEqual({ id: 'quinn', name: 'Quinn', role: 'quality' });
    expect([...state.equipment.keys()]).toEqual(['J-01', 'G-01', 'LC-1']);
    expect(state.certificates.get('LC-1')).toMatchObject([{ number: 'C-2025-118' }]);
    expect(state.pairs.get('P-01')).toEqual({
      pair: { tag: 'P-01', jack: 'J-01', gauge: 'G-01', formedOn: '2026-01-05' },
      calibrations: [],
      hold: null,
      events: [],
    });
  });

  it('stands at the last entry', () => {
    const entries = sealed(plantWithEveryKind());
    const last = entries.at(-1);
    expect(replay(entries).head).toEqual({ seq: last?.seq, hash: last?.hash });
  });

  it('holds a submitted calibration with who entered it and the hash of its entry', () => {
    const entries = sealed([...plantBeforeCalibration(), runRecorded(11, 'CAL-1')]);
    const state = replay(entries);
    expect(state.calibrations.get('CAL-1')).toEqual({
      number: 'CAL-1',
      pair: 'P-01',
      calibratedOn: '2026-01-05',
      loadCell: 'LC-1',
      sheet: runSheet(),
      degree: 'auto',
      runHash: entries.at(-1)?.hash,
      enteredIn: entries.length,
      enteredBy: 'tess',
      enteredAt: instant(11),
      status: 'submitted',
    });
    expect(state.pairs.get('P-01')?.calibrations).toEqual(['CAL-1']);
  });

  it('says who approved or rejected, when, and in which words', () => {
    const state = replay(sealed(plantWithEveryKind()));
    expect(state.calibrations.get('CAL-1')).toMatchObject({
      status: 'rejected',
      decidedBy: 'quinn',
      decidedAt: instant(12),
      decisionNote: 'Cycle 2 was read off another gauge.',
    });
    const approved = state.calibrations.get('CAL-2');
    expect(approved).toMatchObject({ status: 'approved', decidedBy: 'quinn', decidedAt: instant(14) });
    expect(approved).not.toHaveProperty('decisionNote');
    expect(state.pairs.get('P-01')?.calibrations).toEqual(['CAL-1', 'CAL-2']);
  });

  it('keeps the note of an approval', () => {
    const noted = approval(12, 'CAL-1');
    if (noted.kind !== 'calibration-approved/1') throw new Error('Another kind.');
    const entry = { ...noted, body: { ...noted.body, note: 'Second cell agreed.' } };
    const state = replay(sealed([...plantBeforeCalibration(), runRecorded(11, 'CAL-1'), entry]));
    expect(state.calibrations.get('CAL-1')?.decisionNote).toBe('Second cell agreed.');
  });

  it('puts the rules of the last rules entry in force, with its hash, and who set them when and why', () => {
    const entries = sealed(plantWithEveryKind());
    const state = replay(entries);
    expect(state.rules.name).toBe('plant-rules');
    const entry = entries.find(({ kind }) => kind === 'rules-set/1');
    expect(state.rulesHash).toBe(entry?.hash);
    const { seq, at, actor: by } = entry ?? {};
    expect(state.rulesSet).toEqual({ seq, at, by, reason: expect.stringMatching(/./) });
  });

  it('keeps the certificates of a load cell in the order they were filed', () => {
    const filed = replay(sealed(plantWithEveryKind())).certificates.get('LC-1');
    expect(filed?.map(({ number }) => number)).toEqual(['C-2025-118', 'C-2025-131']);
  });

  it('places and lifts a hold', () => {
    const entries = sealed([...plantBeforeCalibration(), holdPlaced(11, 'Dropped.')]);
    expect(replay(entries).pairs.get('P-01')?.hold).toEqual({
      reason: 'Dropped.',
      placedBy: 'quinn',
      placedAt: instant(11),
    });
    expect(replay(sealed(plantWithEveryKind())).pairs.get('P-01')?.hold).toBeNull();
  });

  it('holds the record of a bed with the calibration it rests on, and who entered it', () => {
    const entries = sealed(plantWithEveryKind());
    const entry = entries.find(({ kind }) => kind === 'stressing-recorded/1');
    const record = replay(entries).stressings.get('S-0001');
    expect(record).toEqual({
      ...(entry?.body as object),
      number: 'S-0001',
      calibration: 'CAL-2',
      enteredIn: entry?.seq,
      enteredBy: 'carl',
      enteredAt: instant(18),
    });
    expect(record?.pulls).toHaveLength(1);
  });

  it('parts a pair and keeps its calibrations', () => {
    const record = replay(sealed(plantWithEveryKind())).pairs.get('P-01');
    expect(record?.pair.parted).toEqual({ on: '2026-01-05', reason: 'Gauge sent for repair.' });
    expect(record?.calibrations).toEqual(['CAL-1', 'CAL-2']);
  });

  it('goes on from a state and leaves that state as it was', () => {
    const entries = sealed(plantWithEveryKind());
    for (let cut = 0; cut <= entries.length; cut += 1) {
      const before = replay(entries.slice(0, cut));
      expect(replay(entries.slice(cut), before)).toEqual(replay(entries));
      expect(before).toEqual(replay(entries.slice(0, cut)));
    }
  });
});

describe('an entry that cannot be', () => {
  const stranger = (kind: string): NewEntry => ({ ...holdPlaced(11, 'x'), kind }) as unknown as NewEntry;

  it.each<[string, readonly NewEntry[], string]>([
    ['an unknown kind', [stranger('hold-placed/2')], 'Entry 10 is of the kind "hold-placed/2"'],
    [
      'an approval by the enterer',
      [runRecorded(11, 'C'), approval(12, 'C', 'tess')],
      'Entry 11 (calibration-approved/1)',
    ],
    ['an approval of nothing', [approval(11, 'C')], 'names the calibration "C"'],
    ['a rejection of nothing', [rejection(11, 'C')], 'names the calibration "C"'],
    ['a second approval', [runRecorded(11, 'C'), approval(12, 'C'), approval(13, 'C', 'ada')], 'was approved before'],
    [
      'an approval after a rejection',
      [runRecorded(11, 'C'), rejection(12, 'C'), approval(13, 'C')],
      'was rejected before',
    ],
    ['a run of an unknown pair', [runRecorded(11, 'C', 'tess', 'P-09')], 'names the pair "P-09"'],
    ['a number used twice', [runRecorded(11, 'C'), runRecorded(12, 'C')], 'adds the calibration "C" a second time'],
    ['a bed of an unknown pair', [stressingRecorded(11, 'S', 5, { pair: 'P-09' })], 'names the pair "P-09"'],
    [
      'a bed by a calibration nobody approved',
      [runRecorded(11, 'C'), stressingRecorded(12, 'S', 10)],
      'rests on entry 10, which approved no calibration of "P-01"',
    ],
    [
      'a bed by the calibration of another pair',
      [
        runRecorded(11, 'C'),
        approval(12, 'C'),
        {
          ...{ at: instant(13), actor: 'ada', kind: 'pair-formed/1', subject: 'P-02' },
          body: { pair: { tag: 'P-02', jack: 'J-01', gauge: 'G-01', formedOn: '2026-01-05' } },
        } as NewEntry,
        stressingRecorded(14, 'S', 11, { pair: 'P-02' }),
      ],
      'rests on entry 11, which approved no calibration of "P-02"',
    ],
    [
      'a bed recorded twice under one number',
      [runRecorded(11, 'C'), approval(12, 'C'), stressingRecorded(13, 'S', 11), stressingRecorded(14, 'S', 11)],
      'adds the stressing record "S" a second time',
    ],
    ['a hold on an unknown pair', [holdPlaced(11, 'x', 'P-09')], 'names the pair "P-09"'],
    ['a certificate of an unknown load cell', [certificateFiled(11, 'C-1', 'LC-9')], 'names the part "LC-9"'],
    ['a plant opened twice', plantBeforeCalibration().slice(0, 1), 'already open'],
    ['a person added twice', plantBeforeCalibration().slice(1, 2), 'adds the person "ada" a second time'],
    ['a part registered twice', plantBeforeCalibration().slice(4, 5), 'adds the part "J-01" a second time'],
    ['a pair formed twice', plantBeforeCalibration().slice(8), 'adds the pair "P-01" a second time'],
  ])('is named and taken in by nobody: %s', (_what, more, message) => {
    const entries = sealed([...plantBeforeCalibration(), ...more]);
    const { state, apply } = createReplay();
    for (const entry of entries.slice(0, -1)) apply(entry);
    const last = entries.at(-1)!;
    expect(() => apply(last)).toThrow(message);
    expect(state).toEqual(replay(entries.slice(0, -1)));
  });

  it('is one that does not follow the head', () => {
    const entries = sealed(plantBeforeCalibration());
    const { apply } = createReplay();
    apply(entries[0]!);
    expect(() => apply(entries[0]!)).toThrow('Entry 1 does not follow entry 1');
    expect(() => apply(entries[2]!)).toThrow('Entry 3 does not follow entry 1');
    expect(() => apply({ ...entries[1]!, previousHash: genesisHash })).toThrow('Entry 2 does not follow entry 1');
  });
});
