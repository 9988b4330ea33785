import { describe, expect, it } from 'vitest';
import type { AsFoundResult } from '../../../../src/domain/calibration/as-found.ts';
import {
  type DoubtfulCalibration,
  doubtOfWithdrawal,
  doubtsOf as doubtsOfFiled,
  type FiledReference,
} from '../../../../src/domain/calibration/doubt.ts';
import type { Certificate } from '../../../../src/domain/equipment/equipment.ts';
import type { StandardCertificate } from '../../../../src/domain/equipment/traceability.ts';

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
const doubtsOf = (
  doubtful: DoubtfulCalibration,
  certificates: readonly Certificate[],
  facts: Partial<FiledReference> = {},
) => doubtsOfFiled(doubtful, { certificates, standards: new Map(), certificateAsked: false, ...facts });

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

  it('is the one the calibration was approved on, whatever else covers the day or was filed since', () => {
    const [withdrawn, since] = [certificate({ withdrawn: { reason } }), certificate({ number: 'K-1B' })];
    expect(doubtsOf(calibration({ restsOn: 'K-1' }), [withdrawn, since])).toMatchObject([
      { name: 'certificate LC-1 K-1' },
    ]);
    expect(doubtsOf(calibration({ restsOn: 'K-1B' }), [withdrawn, since])).toEqual([]);
    expect(doubtsOf(calibration({ restsOn: null }), [withdrawn, since])).toEqual([]);
  });

  it('puts work in doubt until the next calibration took over', () => {
    const replaced = calibration({ replacedOn: '2026-06-01' });
    expect(doubtsOf(replaced, [certificate({ withdrawn: { reason } })])[0]?.until).toBe('2026-06-01');
  });
});

describe('no certificate on the calibration day', () => {
  it('is a doubt where the rules ask for one: it was amended since, or approved without', () => {
    const shortened = certificate({ validUntil: '2026-03-01' });
    const doubts = doubtsOf(calibration(), [shortened], { certificateAsked: true });
    expect(doubts).toMatchObject([{ name: 'no certificate LC-1 on 2026-03-02', cause: 'certificate-not-valid' }]);
    expect(doubtsOf(calibration(), [shortened])).toEqual([]);
    expect(doubtsOf(calibration(), [certificate()], { certificateAsked: true })).toEqual([]);
    expect(doubtsOf(calibration({ restsOn: null }), [], { certificateAsked: true })).toHaveLength(1);
  });

  it('is one doubt and not two where the certificate of the day was withdrawn', () => {
    const doubts = doubtsOf(calibration(), [certificate({ withdrawn: { reason } })], { certificateAsked: true });
    expect(doubts.map(({ cause }) => cause)).toEqual(['certificate-withdrawn']);
  });
});

describe('a standard withdrawn', () => {
  const standard = (number: string, facts: Partial<StandardCertificate> = {}): StandardCertificate => ({
    number,
    instrument: 'force transducer',
    heldBy: 'Laboratory of the Tests',
    issuedBy: 'a national institute',
    calibratedOn: '2025-02-03',
    validUntil: '2027-02-03',
    ...facts,
  });
  const filed = (...standards: readonly StandardCertificate[]) => ({
    standards: new Map(standards.map((each) => [each.number, each])),
  });
  const resting = certificate({ restsOn: 'S-1' });

  it('puts in doubt what was calibrated under a certificate that rests on it, however far up the chain', () => {
    const first = filed(standard('S-1', { withdrawn: { reason } }));
    expect(doubtsOf(calibration(), [resting], first)).toMatchObject([
      { name: 'standard S-1 behind LC-1 K-1', cause: 'standard-withdrawn', from: '2026-03-02' },
    ]);
    const second = filed(standard('S-1', { restsOn: 'S-2' }), standard('S-2', { withdrawn: { reason } }));
    expect(doubtsOf(calibration(), [resting], second)).toMatchObject([{ name: 'standard S-2 behind LC-1 K-1' }]);
  });

  it('spares what was certified against it while it was good', () => {
    const good = (lastGood: string) => filed(standard('S-1', { withdrawn: { reason, lastGood } }));
    expect(doubtsOf(calibration(), [resting], good('2026-01-01'))).toHaveLength(1);
    expect(doubtsOf(calibration(), [resting], good('2026-01-02'))).toEqual([]);
  });

  it('comes to an end in a chain that leads back to itself', () => {
    const circle = filed(standard('S-1', { restsOn: 'S-2' }), standard('S-2', { restsOn: 'S-1' }));
    expect(doubtsOf(calibration(), [resting], circle)).toEqual([]);
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
      { name: 'as-found-cell LC-1 K-2 -0.8 of 0.5', cause: 'cell-as-found', from: '2026-03-02' },
    ]);
    expect(doubtsOf(calibration(), certificates)[0]?.because).toContain('-0.8 % off on 2026-12-15');
    expect(doubtsOf(calibration({ calibratedOn: '2025-12-31' }), certificates)).toEqual([]);
    expect(doubtsOf(calibration({ calibratedOn: '2026-12-15' }), certificates)).toEqual([]);
  });

  it('reaches back past a certificate that was withdrawn as not good', () => {
    const bad = certificate({ calibratedOn: '2026-06-01', number: 'K-1B', withdrawn: { reason } });
    const good = certificate({ calibratedOn: '2026-06-01', number: 'K-1B' });
    expect(doubtsOf(calibration(), [certificate(), good, found(0.8)])).toEqual([]);
    expect(doubtsOf(calibration(), [certificate(), bad, found(0.8)])).toHaveLength(1);
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
