import { describe, expect, it } from 'vitest';
import type { Certificate } from '../../../../src/domain/equipment/equipment.ts';
import type { Laboratory, StandardCertificate } from '../../../../src/domain/equipment/traceability.ts';
import { traceabilityChain } from '../../../../src/domain/equipment/traceability-chain.ts';

const certificate: Certificate = {
  number: 'K-1',
  loadCell: 'LC-1',
  laboratory: 'Test Laboratory',
  traceableTo: 'National standard of force',
  calibratedOn: '2026-01-02',
  validUntil: '2027-01-01',
  expandedUncertaintyPercent: 0.24,
  coverageFactor: 2,
  restsOn: 'S-1',
};
const standard = (facts: Partial<StandardCertificate> = {}): StandardCertificate => ({
  number: 'S-1',
  instrument: 'Force transducer 1 MN',
  heldBy: 'Test Laboratory',
  issuedBy: 'National Institute of the Tests',
  calibratedOn: '2025-03-01',
  validUntil: '2027-02-28',
  ...facts,
});
const laboratory: Laboratory = {
  name: 'Test Laboratory',
  accreditation: { body: 'Board of the Tests', number: 'B-1', validUntil: '2028-01-01' },
};
const chainOf = (
  standards: readonly StandardCertificate[],
  facts: Partial<Certificate> = {},
  { day = '2026-03-02', laboratories = [laboratory] }: { day?: string; laboratories?: readonly Laboratory[] } = {},
) =>
  traceabilityChain({ ...certificate, ...facts }, day, {
    standards: new Map(standards.map((each) => [each.number, each])),
    laboratories: new Map(laboratories.map((each) => [each.name, each])),
  });

describe('the chain behind a calibration', () => {
  it('goes from the load cell up, each link valid on the day of the one below', () => {
    const top = standard({
      number: 'S-0',
      restsOn: undefined as never,
      calibratedOn: '2024-01-01',
      validUntil: '2025-12-31',
      issuedBy: 'The Institute',
    });
    const { restsOn: _none, ...institute } = top;
    const chain = chainOf([standard({ restsOn: 'S-0' }), institute]);
    expect(chain.links.map(({ certificate: number, neededOn, isValid }) => [number, neededOn, isValid])).toEqual([
      ['K-1', '2026-03-02', true],
      ['S-1', '2026-01-02', true],
      ['S-0', '2025-03-01', true],
    ]);
    expect(chain.gaps).toEqual([]);
    expect(chain.endsAt).toBe('The Institute');
    expect(chain.links[0]?.accreditation).toMatchObject({ number: 'B-1', isValid: true });
    expect(chain.links[1]?.accreditation).toBeNull();
  });

  it('names a certificate that rests on none, and ends at what it says', () => {
    const { restsOn: _none, ...alone } = certificate;
    const chain = traceabilityChain(alone, '2026-03-02', { standards: new Map(), laboratories: new Map() });
    expect(chain.links).toHaveLength(1);
    expect(chain.gaps).toEqual(['Certificate K-1 names no certificate of the standard it rests on.']);
    expect(chain.endsAt).toBe('National standard of force');
  });

  it('names one that is not filed', () => {
    expect(chainOf([]).gaps).toEqual(['Certificate S-1, which K-1 rests on, is not filed.']);
  });

  it.each([
    ['2026-01-02', []],
    ['2026-01-01', ['Certificate S-1 did not cover 2026-01-02, when K-1 was made.']],
  ])('asks of a standard that it held on the day: until %s', (validUntil, gaps) => {
    expect(chainOf([standard({ validUntil })]).gaps).toEqual(gaps);
  });

  it('names a load cell whose certificate does not cover the day', () => {
    const chain = chainOf([standard()], {}, { day: '2027-01-02' });
    expect(chain.links[0]?.isValid).toBe(false);
    expect(chain.gaps).toEqual(['Certificate K-1 did not cover 2027-01-02.']);
  });

  it('ends where it leads back to itself', () => {
    const chain = chainOf([standard({ restsOn: 'S-2' }), standard({ number: 'S-2', restsOn: 'S-1' })]);
    expect(chain.links.map(({ certificate: number }) => number)).toEqual(['K-1', 'S-1', 'S-2']);
    expect(chain.gaps).toContain('Certificate S-1 rests on itself in the end.');
  });

  it('names an accreditation that had ended', () => {
    const ended = { ...laboratory, accreditation: { body: 'B', number: 'B-1', validUntil: '2026-01-01' } };
    expect(chainOf([standard()], {}, { laboratories: [ended] }).gaps).toEqual([
      'The accreditation of Test Laboratory had ended on 2026-01-02, when it issued K-1.',
    ]);
  });
});
