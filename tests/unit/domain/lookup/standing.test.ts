import { describe, expect, it } from 'vitest';
import type { Pair } from '../../../../src/domain/equipment/pair.ts';
import { judgeStanding, type StandingEvidence, standings } from '../../../../src/domain/lookup/standing.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';

const pair: Pair = { tag: 'P-1', jack: 'J-1', gauge: 'G-1', formedOn: '2026-01-05' };
const parted: Pair = { ...pair, parted: { on: '2026-05-01', reason: 'gauge replaced' } };
const hold = { reason: 'dropped on bed 3' };
const calibratedOn = '2026-03-02';
const judge = (evidence: Partial<StandingEvidence>, today: string) =>
  judgeStanding(
    {
      pair,
      hold: null,
      calibratedOn,
      changePercent: null,
      inUseBecause: null,
      voidBecause: null,
      doubts: [],
      ...evidence,
    },
    today,
    rules,
  );

describe('how a pair stands', () => {
  it('drifts by its beds, in their sentence, unless two calibrations say so already', () => {
    const inUseBecause = 'Since 2026-05-01 the gauge shows more force (EWMA 1.02, limit 1.01).';
    expect(judge({ inUseBecause }, '2026-06-01')).toMatchObject({
      standing: 'drifting',
      because: inUseBecause,
      driftBecause: inUseBecause,
    });
    const both = judge({ inUseBecause, changePercent: 2.4 }, '2026-06-01');
    expect(both.because).toContain('2.4 % more force');
    expect(both.driftBecause).toBeUndefined();
    expect(judge({ inUseBecause }, '2027-03-03').standing).toBe('overdue');
  });

  it('is ready, due soon and overdue as the days go by', () => {
    expect(judge({}, '2026-03-02')).toMatchObject({ standing: 'ready', dueDate: '2027-03-02', daysLeft: 365 });
    expect(judge({}, '2026-12-31')).toMatchObject({ standing: 'ready', daysLeft: 61, isDueSoon: false });
    expect(judge({}, '2027-01-01')).toMatchObject({ standing: 'due-soon', daysLeft: 60, isDueSoon: true });
    expect(judge({}, '2027-03-02')).toMatchObject({ standing: 'due-soon', daysLeft: 0, isOverdue: false });
    expect(judge({}, '2027-03-03')).toMatchObject({ standing: 'overdue', daysLeft: -1, isOverdue: true });
  });

  it('is not calibrated without an approved calibration', () => {
    expect(judge({ calibratedOn: null }, '2026-06-01')).toMatchObject({
      standing: 'not-calibrated',
      dueDate: null,
      daysLeft: null,
      isOverdue: false,
      isDueSoon: false,
    });
  });

  it('is drifting above the limit, in either direction, and not at it', () => {
    expect(judge({ changePercent: 2 }, '2026-06-01').standing).toBe('ready');
    expect(judge({ changePercent: 2.001 }, '2026-06-01').standing).toBe('drifting');
    expect(judge({ changePercent: -2.3 }, '2026-06-01')).toMatchObject({ standing: 'drifting', isDrifting: true });
    expect(judge({ changePercent: -2.3 }, '2026-06-01').because).toContain('2.3 % less force');
    expect(judge({ changePercent: 2.3 }, '2026-06-01').because).toContain('2.3 % more force');
    expect(judge({ changePercent: 0 }, '2026-06-01').standing).toBe('ready');
  });

  it('has the gravest word where several are true', () => {
    const drifting = { changePercent: 5 };
    const steps: readonly (readonly [Partial<StandingEvidence>, string, string])[] = [
      [{ pair: parted, hold, ...drifting }, '2028-01-01', 'not-calibrated'],
      [{ calibratedOn: null, hold }, '2028-01-01', 'not-calibrated'],
      [{ hold, voidBecause: 'A part was repaired.' }, '2026-06-01', 'not-calibrated'],
      [{ hold, doubts: ['Certificate withdrawn.'], ...drifting }, '2028-01-01', 'on-hold'],
      [{ doubts: ['Certificate withdrawn.'], ...drifting }, '2028-01-01', 'in-doubt'],
      [drifting, '2028-01-01', 'overdue'],
      [drifting, '2027-02-01', 'drifting'],
      [{}, '2027-02-01', 'due-soon'],
      [{}, '2026-06-01', 'ready'],
    ];
    expect(steps.map(([evidence, today]) => judge(evidence, today).standing)).toEqual(steps.map(([, , word]) => word));
    expect(new Set(steps.map(([, , word]) => word))).toEqual(new Set(standings));
  });

  it('says the gravest of what speaks against it, and no due day once the curve is void', () => {
    expect(judge({ doubts: ['A part was dropped.', 'Certificate withdrawn.'] }, '2026-06-01')).toMatchObject({
      standing: 'in-doubt',
      because: 'A part was dropped.',
      dueDate: '2027-03-02',
    });
    expect(judge({ voidBecause: 'Seals were replaced.' }, '2028-01-01')).toMatchObject({
      because: 'Seals were replaced.',
      dueDate: null,
      isOverdue: false,
    });
  });

  it('keeps the facts behind the graver word, so that nothing is hidden', () => {
    expect(judge({ hold, changePercent: 5 }, '2028-01-01')).toMatchObject({
      standing: 'on-hold',
      because: 'On hold: dropped on bed 3',
      isOverdue: true,
      isDrifting: true,
      dueDate: '2027-03-02',
    });
  });

  it('turns on the day of the parting and not before, and then names no due day', () => {
    expect(judge({ pair: parted }, '2026-04-30').standing).toBe('ready');
    expect(judge({ pair: parted }, '2026-05-01')).toMatchObject({
      standing: 'not-calibrated',
      because: 'Parted on 2026-05-01: gauge replaced',
      dueDate: null,
      daysLeft: null,
    });
  });

  it('says one day and several days in words', () => {
    expect(judge({}, '2027-03-03').because).toContain(', 1 day ago');
    expect(judge({}, '2027-03-04').because).toContain(', 2 days ago');
    expect(judge({}, '2027-03-01').because).toContain('in 1 day.');
    expect(judge({}, '2027-03-02').because).toContain('in 0 days.');
  });
});
