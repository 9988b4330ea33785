import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { fitAnswer } from '../../src/contract/fit.ts';
import { lookupAnswer } from '../../src/contract/lookup.ts';
import { expectDigits } from '../expect-digits.ts';
import { root, runCommand, temporaryFolder } from './run-command.ts';

const pontius = join(root, 'tests/references/nist-strd-pontius/pontius-run-sheet.csv');
const certified = JSON.parse(readFileSync(join(root, 'tests/references/nist-strd-pontius/case.json'), 'utf8'));
const loadCell = JSON.parse(
  readFileSync(join(root, 'tests/references/nist-handbook-4.6.1-load-cell/case.json'), 'utf8'),
);

// Source: NIST StRD Pontius, load cell deflection against load; the deflection stands in for the reading.
describe('the published load cell data as a run sheet file', () => {
  let folder: string;
  let ledger: string;
  let sheet: string;
  beforeAll(async () => {
    folder = temporaryFolder();
    ledger = join(folder, 'cell.ledger');
    sheet = join(folder, 'pontius.csv');
    copyFileSync(pontius, sheet);
    const register = {
      format: 'jackledger-equipment/1',
      jacks: [{ tag: 'J-1', serial: '1', ratedForce: '3000 kip', pistonArea: '300 in2' }],
      gauges: [{ tag: 'G-1', serial: '1', display: 'digital', fullScale: '5 psi', graduation: '0.00001 psi' }],
      loadCells: [
        {
          tag: 'LC-1',
          serial: '1',
          capacity: '3000 kip',
          certificates: [
            {
              number: 'K-1',
              laboratory: 'Laboratory',
              traceableTo: 'National standard of force',
              calibratedOn: '2025-01-01',
              validUntil: '2026-01-01',
              expandedUncertaintyPercent: 0.1,
            },
          ],
        },
      ],
      pairs: [{ tag: 'P-1', jack: 'J-1', gauge: 'G-1', formedOn: '2025-01-01' }],
    };
    writeFileSync(join(folder, 'equipment.json'), JSON.stringify(register));
  });

  it('goes through import, once', async () => {
    const facts = ['--pair', 'P-1', '--on', '2025-06-01', '--load-cell', 'LC-1', '--ledger', ledger];
    const first = await runCommand(['import', join(folder, 'equipment.json'), sheet, ...facts, '--json']);
    expect(first.exitCode).toBe(0);
    expect(first.json()).toMatchObject({
      fates: expect.arrayContaining([expect.objectContaining({ file: sheet, fate: 'recorded' })]),
    });
    const second = await runCommand(['import', sheet, ...facts]);
    expect(second.exitCode).toBe(0);
    expect(second.output).toContain('0 recorded, 1 known already, 0 refused');
    const verified = await runCommand(['verify', ledger, '--json']);
    expect(verified.json()).toMatchObject({ verified: true, entries: 6 });
  });

  it('fits to the certified coefficients at eleven digits', async () => {
    const run = await runCommand(['fit', sheet, '--degree', '2', '--ledger', ledger, '--json']);
    expect(run.exitCode).toBe(0);
    const { curve, degrees } = fitAnswer.parse(run.json());
    for (const [power, { estimate, standard_deviation: deviation }] of certified.results.parameters.entries()) {
      const because = 'certified by NIST to 15 digits; double arithmetic leaves eleven of the smallest coefficient';
      expectDigits(curve.coefficients[power] ?? Number.NaN, { certified: estimate, digits: 11, because });
      expectDigits(curve.standardErrors[power] ?? Number.NaN, { certified: deviation, digits: 11, because });
    }
    expect(curve.degreesOfFreedom).toBe(37);
    expect(degrees[2]?.pValue).toBeGreaterThan(0.05);
  });

  it('picks the second degree by itself, as the handbook does', async () => {
    const run = await runCommand(['fit', sheet, '--ledger', ledger, '--json']);
    expect(fitAnswer.parse(run.json()).curve.degree).toBe(2);
  });

  it('answers the published load behind a deflection of 1.239722, with its interval', async () => {
    const run = await runCommand([
      'lookup',
      sheet,
      '--reading',
      '1.239722 psi',
      '--degree',
      '2',
      '--ledger',
      ledger,
      '--json',
    ]);
    expect(run.exitCode).toBe(0);
    const lookup = lookupAnswer.parse(run.json());
    expect(lookup).toMatchObject({ standing: null, dueDate: null, force: { unit: 'lbf' } });
    const published = loadCell.recomputed.inverse_use;
    const [low, high] = published.calibration_interval_by_inverting_the_prediction_band_single_new_reading['0.95'];
    const because = 'recomputed in exact arithmetic and printed to twelve digits; the deflection is given to seven';
    expectDigits(lookup.force?.value ?? Number.NaN, {
      certified: published.load_from_full_precision_coefficients,
      digits: 11,
      because,
    });
    expectDigits(lookup.forceInterval?.low ?? Number.NaN, { certified: low, digits: 10, because });
    expectDigits(lookup.forceInterval?.high ?? Number.NaN, { certified: high, digits: 10, because });
  });
});
