import { describe, expect, it } from 'vitest';
import type { AsFoundResult } from '../../../../src/domain/calibration/as-found.ts';
import { type DoubtfulCalibration, doubtOfWithdrawal, doubtsOf } from '../../../../src/domain/calibration/doubt.ts';
import type { Certificate } from '../../../../src/domain/equipment/equipment.ts';

const certificate = (facts: Partial<Certificate> = {}): Certificate => ({
  number: 'K-1',
  loadCell: 'LC-1',
  laboratory: 'Laboratory of the Tests',
  traceableTo: 'National standard of force',
  calibratedOn: '2026-01-02',
  validUntil: '2027-01-01',
  expandedUncertaintyPercent: 0.24,
  coverageFactor: 2,
  ...facts,
});
const calibration = (facts: Partial<DoubtfulCalibration> = {}): DoubtfulCalibration => ({
  number: 'C-0001',
  calibratedOn: '2026-03-02',
  loadCell: 'LC-1',
  replacedOn: null,
  foundLater: [],
  ...facts,
});
const reason = 'The laboratory called it back';

describe('a certificate withdrawn', () => {
  it('puts in doubt what was calibrated under it, all of it where the last good day is not known', () => {
    const [doubt, ...others] = doubtsOf(calibration(), [certificate({ withdrawn: { reason } })]);
    expect(others).toEqual([]);
    expect(doubt).toMatchObject({
      name: doubtOfWithdrawal('LC-1', 'K-1'),
      cause: 'certificate-withdrawn',
      from: '2026-03-02',
      until: null,
    });
    expect(doubt?.because).toContain(reason);
  });

  it.each([
    ['2026-03-01', 1],
    ['2026-03-02', 0],
    ['2026-05-01', 0],
  ])('with its last good day %s leaves %i doubts about a calibration of 2 March', (lastGood, doubts) => {
    expect(doubtsOf(calibration(), [certificate({ withdrawn: { reason, lastGood } })])).toHaveLength(doubts);
  });

  it('leaves alone what it did not cover, and what another certificate covers', () => {
    const withdrawn = certificate({ withdrawn: { reason } });
    expect(doubtsOf(calibration({ calibratedOn: '2027-01-02' }), [withdrawn])).toEqual([]);
    expect(doubtsOf(calibration({ calibratedOn: '2026-01-01' }), [withdrawn])).toEqual([]);
    const second = certificate({ number: 'K-2', calibratedOn: '2026-02-01' });
    expect(doubtsOf(calibration(), [withdrawn, second])).toEqual([]);
    expect(doubtsOf(calibration({ calibratedOn: '2026-01-20' }), [withdrawn, second])).toHaveLength(1);
  });

  it('puts work in doubt until the next calibration took over', () => {
    const replaced = calibration({ replacedOn: '2026-06-01' });
    expect(doubtsOf(replaced, [certificate({ withdrawn: { reason } })])[0]?.until).toBe('2026-06-01');
  });
});

describe('a load cell found off its limit', () => {
  const found = (errorPercent: number, facts: Partial<Certificate> = {}) =>
    certificate({
      number: 'K-2',
      calibratedOn: '2026-12-15',
      validUntil: '2027-12-14',
      asFound: { errorPercent, limitPercent: 0.5 },
      ...facts,
    });

  it('puts in doubt its calibrations since the certificate before', () => {
    const certificates = [certificate(), found(-0.8)];
    expect(doubtsOf(calibration(), certificates)).toMatchObject([
      { name: 'as-found-cell LC-1 K-2', cause: 'cell-as-found', from: '2026-03-02' },
    ]);
    expect(doubtsOf(calibration(), certificates)[0]?.because).toContain('-0.8 % off on 2026-12-15');
    expect(doubtsOf(calibration({ calibratedOn: '2025-12-31' }), certificates)).toEqual([]);
    expect(doubtsOf(calibration({ calibratedOn: '2026-12-15' }), certificates)).toEqual([]);
  });

  it('is none at its limit, nor where that certificate was itself withdrawn', () => {
    expect(doubtsOf(calibration(), [certificate(), found(0.5)])).toEqual([]);
    expect(doubtsOf(calibration(), [certificate(), found(0.51)])).toHaveLength(1);
    expect(doubtsOf(calibration(), [certificate(), found(0.8, { withdrawn: { reason } })])).toEqual([]);
  });
});

describe('a pair found off its limit', () => {
  const result = (isOutside: boolean): AsFoundResult => ({
    verdict: isOutside ? 'fail' : 'pass',
    isOutside,
    worst: { errorPercent: isOutside ? 3.1 : 0.4, expandedUncertaintyPercent: 0.3, reading: 4000, force: 27 },
    limitPercent: 2,
    pointsOffCurve: 0,
    message: 'As found, the curve in use gave 3.1 % more force than the load cell.',
  });

  it('puts in doubt the calibration it was held against, by the number of the run', () => {
    const foundLater = [
      { number: 'C-0002', on: '2027-03-01', result: result(false) },
      { number: 'C-0003', on: '2027-03-02', result: result(true) },
    ];
    expect(doubtsOf(calibration({ foundLater }), [certificate()])).toMatchObject([
      { name: 'as-found C-0003', cause: 'pair-as-found', from: '2026-03-02', until: null },
    ]);
  });
});
