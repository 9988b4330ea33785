import { describe, expect, it } from 'vitest';
import { twelveMonthsTwoPercent } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import { type ReviewedCalibration, reviewHash } from '../../../src/ledger/review-hash.ts';
import { sha256 } from '../../../src/storage/sha256.ts';

const reviewed: ReviewedCalibration = {
  runHash: 'a'.repeat(64),
  response: 'reading',
  degree: 1,
  coefficients: [12.25, 161.3],
  rulesHash: null,
  rules: twelveMonthsTwoPercent,
  certificate: null,
  parts: { jack: 5, gauge: 6, loadCell: 7 },
};

describe('reviewHash', () => {
  it('is the SHA-256 of the canonical text of what was reviewed', () => {
    const rules = { intervalMonths: { value: 12, source: 's', provenance: 'house' } };
    const small = { ...reviewed, rules: rules as unknown as ReviewedCalibration['rules'] };
    const text = `{"certificate":null,"coefficients":[12.25,161.3],"degree":1,"parts":{"gauge":6,"jack":5,"loadCell":7},"response":"reading","reviewed":"calibration/2","rules":{"intervalMonths":{"provenance":"house","source":"s","value":12}},"rulesHash":null,"runHash":"${'a'.repeat(64)}"}`;
    expect(reviewHash(small, sha256)).toBe(sha256(Buffer.from(text, 'utf8')));
  });

  it.each<[string, Partial<ReviewedCalibration>]>([
    ['run sheet', { runHash: 'b'.repeat(64) }],
    ['direction of the fit', { response: 'force' }],
    ['degree', { degree: 2 }],
    ['coefficient in its last digit', { coefficients: [12.25, 161.30000000000004] }],
    [
      'certificate',
      {
        certificate: {
          number: 'K-1',
          loadCell: 'LC-1',
          laboratory: 'Laboratory',
          traceableTo: 'National standard of force',
          calibratedOn: '2026-01-01',
          validUntil: '2027-01-01',
          expandedUncertaintyPercent: 0.3,
          coverageFactor: 2,
        },
      },
    ],
    ['part', { parts: { jack: 5, gauge: 9, loadCell: 7 } }],
    ['rules entry', { rulesHash: 'c'.repeat(64) }],
    [
      'limit',
      {
        rules: { ...twelveMonthsTwoPercent, accuracyPercent: { ...twelveMonthsTwoPercent.accuracyPercent, value: 3 } },
      },
    ],
  ])('is another one for another %s', (_what, change) => {
    expect(reviewHash({ ...reviewed, ...change }, sha256)).not.toBe(reviewHash(reviewed, sha256));
  });

  it('does not cover what else the object carries', () => {
    const withMore = { ...reviewed, shownAt: '2026-01-05T14:00:00.000Z' };
    expect(reviewHash(withMore, sha256)).toBe(reviewHash(reviewed, sha256));
  });
});
