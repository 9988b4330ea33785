import { describe, expect, it } from 'vitest';
import { fitCalibration } from '../../../src/domain/calibration/fit-calibration.ts';
import { judgeFit } from '../../../src/domain/calibration/judge-fit.ts';
import type { RunSheet } from '../../../src/domain/calibration/run-sheet.ts';
import type { UncertaintySource } from '../../../src/domain/calibration/uncertainty-source.ts';
import type { RuleProfile } from '../../../src/domain/rules/rule-profile.ts';
import { sixMonthsFirstUse } from '../../../src/domain/rules/six-months-first-use.ts';
import { twelveMonthsTwoPercent as rules } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import { fileCertificate } from '../../../src/service/file-certificate.ts';
import { findPair } from '../../../src/service/find-record.ts';
import { lookUpPair, lookUpSheet } from '../../../src/service/look-up.ts';
import { pairBasis, usedFallingPercent } from '../../../src/service/pair-basis.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { calibrate, people, plantAtWork, runSheet } from '../../plant-at-work.ts';

/** The sheet of the small plant with a falling series that gives 1 % more force than the rising one at each reading. */
function withFalling(): RunSheet {
  const sheet = runSheet();
  return {
    ...sheet,
    cycles: sheet.cycles.map(({ points }) => ({
      points: [
        ...points,
        ...[...points]
          .filter((point) => point.force > 0)
          .reverse()
          .map((point) => ({ ...point, direction: 'down' as const, reading: point.reading * 0.99 })),
      ],
    })),
  };
}
const fallingUse = (value: number): RuleProfile => ({
  ...rules,
  fallingUse: { value, provenance: 'plant', source: 'the project' },
});
const levelsOf = (sheet: RunSheet) =>
  judgeFit(sheet, outcomeValue(fitCalibration(sheet, { degree: 'auto' })), rules, {}).levels;

const basisOfPair = (plant: Plant, on = plant.today()) =>
  outcomeValue(pairBasis(plant, outcomeValue(findPair(plant.state, 'P-1')), on)).basis;
const sourcesOf = (plant: Plant): readonly UncertaintySource[] =>
  outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip' }, null)).uncertainty?.contributions.map(
    ({ source }) => source,
  ) ?? [];

describe('reversibility in the uncertainty of a look-up', () => {
  it('counts only where the rules say that readings are used falling', () => {
    const levels = levelsOf(withFalling());
    const largest = Math.max(...levels.map((level) => Math.abs(level.reversibilityPercent ?? Number.NaN)));
    expect(largest).toBeGreaterThan(0.9);
    expect(usedFallingPercent(levels, fallingUse(1))).toBe(largest);
    expect(usedFallingPercent(levels, fallingUse(0))).toBeNull();
    expect(usedFallingPercent(levels, rules)).toBeNull();
  });

  it('is not known of a sheet without a falling series', () => {
    expect(usedFallingPercent(levelsOf(runSheet()), fallingUse(1))).toBeNull();
    expect(usedFallingPercent([], fallingUse(1))).toBeNull();
  });

  it('reaches the look-up on a sheet', () => {
    const options = { degree: 'auto', today: '2026-06-01' } as const;
    const sources = (profile: RuleProfile) =>
      outcomeValue(lookUpSheet(withFalling(), profile, { force: '31 kip' }, options)).uncertainty?.contributions.map(
        ({ source }) => source,
      );
    expect(sources(fallingUse(1))).toContain('reversibility');
    expect(sources(fallingUse(0))).not.toContain('reversibility');
    expect(sources(rules)).not.toContain('reversibility');
  });
});

describe('what look-ups of a pair rest on', () => {
  it('has no drift before there are two calibrations, then the change between the last two', async () => {
    const work = await plantAtWork();
    expect(basisOfPair(work.plant).budget.driftPercent).toBeNull();
    expect(sourcesOf(work.plant)).not.toContain('drift');
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-05-04' }, 1.01));
    const { driftPercent } = basisOfPair(work.plant).budget;
    // One per cent more reading for the same force is 1/1.01 - 1 of force at the same reading.
    expectDigits(driftPercent ?? Number.NaN, {
      certified: 100 * (1 / 1.01 - 1),
      digits: 1,
      because: 'readings rounded to 1 psi and scattered by 4 psi of 735 and more leave a tenth of the change open',
    });
    expect(sourcesOf(work.plant)).toContain('drift');
    expect(basisOfPair(work.plant, '2026-04-01').budget.driftPercent).toBeNull();
  });

  it('has the temperature of the sheet, where it gives one', async () => {
    const work = await plantAtWork();
    expect(basisOfPair(work.plant).budget.calibratedAtCelsius).toBeNull();
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-05-04', temperatureCelsius: 18 }));
    expect(basisOfPair(work.plant).budget.calibratedAtCelsius).toBe(18);
    const warm = outcomeValue(lookUpPair(work.plant, 'P-1', { force: '31 kip', temperature: '95 F' }, null));
    const line = warm.uncertainty?.contributions.find(({ source }) => source === 'temperature');
    expectDigits(line?.value ?? Number.NaN, {
      certified: 0.0004 * 17 * 10000,
      digits: 14,
      because: '95 F is 35 C, 17 kelvin above, on a gauge of 10,000 psi',
    });
  });

  it('has the step of the indicator of the load cell that calibrated it, where it was registered with one', async () => {
    const { plant } = await plantAtWork();
    expect(basisOfPair(plant).budget.cellResolution).toBeNull();
    expect(sourcesOf(plant)).not.toContain('cell-indicator');
    const by = { actor: people.technician, retry: null };
    const cell = { kind: 'load-cell', tag: 'LC-2', serial: 'S9', capacity: '60 kip', resolution: '20 lbf' } as const;
    outcomeValue(await registerEquipment(plant, cell, by));
    const certificate = {
      number: 'K-2',
      laboratory: 'Laboratory of the Tests',
      traceableTo: 'National standard of force',
      calibratedOn: '2026-01-02',
      validUntil: '2027-01-02',
      expandedUncertaintyPercent: 0.24,
      coverageFactor: 2,
    };
    outcomeValue(await fileCertificate(plant, 'LC-2', certificate, by));
    await calibrate(plant, runSheet({ calibratedOn: '2026-05-04', loadCell: 'LC-2' }));
    expect(basisOfPair(plant).budget.cellResolution).toEqual({ value: 20, unit: 'lbf' });
    expect(sourcesOf(plant)).toContain('cell-indicator');
  });

  it('has a caution from the first day after those before first use, where the rules count them', async () => {
    const work = await plantAtWork();
    const { plant } = work;
    const { at, actor } = { at: plant.clock(), actor: 'jackledger' };
    const body = { profile: sixMonthsFirstUse, reason: 'the project asks for it' };
    const set = { at, actor, kind: 'rules-set/2', subject: sixMonthsFirstUse.name, body } as const;
    const codesOn = (on: string) =>
      outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip', on }, null)).warnings.map(({ code }) => code);
    expect(codesOn('2026-04-02')).not.toContain('first-use-late');
    outcomeValue(await plant.append([set], null));
    expect(codesOn('2026-04-01')).not.toContain('first-use-late');
    expect(codesOn('2026-04-02')).toContain('first-use-late');
    expect(codesOn('2026-06-01')).toContain('first-use-late');
  });
});
