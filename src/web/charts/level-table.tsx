// The levels of a calibration with accuracy, repeatability, reversibility and load efficiency.

import type { Curve } from '../../domain/calibration/curve.ts';
import type { CalibrationLevel } from '../../domain/calibration/levels.ts';
import { formatNumber, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';

interface LevelTableProps {
  readonly levels: readonly Omit<CalibrationLevel, 'budget'>[];
  readonly response: Curve['response'];
  readonly units: { readonly force: string; readonly reading: string };
}

export function LevelTable({ levels, response, units }: LevelTableProps) {
  const { charts } = words;
  const [setUnit, observedUnit] = response === 'reading' ? [units.force, units.reading] : [units.reading, units.force];
  const columns = [
    `${charts.setColumn}, ${formatUnit(setUnit)}`,
    `${charts.meanColumn}, ${formatUnit(observedUnit)}`,
    charts.countColumn,
    `${charts.accuracyColumn}, %`,
    `${charts.repeatabilityColumn}, %`,
    `${charts.reversibilityColumn}, %`,
    charts.efficiencyColumn,
  ];
  return (
    <ScrollTable title={charts.levelsTitle} columns={columns} numbersFrom={0}>
      {levels.map((level) => (
        <tr key={level.set}>
          <th scope="row" data-number="true">
            {fiveDigits(level.set)}
          </th>
          <NumberCell>{fiveDigits(response === 'reading' ? level.reading : level.force)}</NumberCell>
          <NumberCell>{level.count}</NumberCell>
          <NumberCell>{hundredths(level.accuracyErrorPercent)}</NumberCell>
          <NumberCell>{hundredths(level.repeatabilityPercent)}</NumberCell>
          <NumberCell>{hundredths(level.reversibilityPercent)}</NumberCell>
          <NumberCell>
            {level.loadEfficiency === null
              ? charts.notMeasured
              : formatNumber(level.loadEfficiency, { rule: 'decimals', decimals: 3 })}
          </NumberCell>
        </tr>
      ))}
    </ScrollTable>
  );
}

function hundredths(percent: number | null): string {
  return percent === null ? words.charts.notMeasured : formatNumber(percent, { rule: 'decimals', decimals: 2 });
}

/** A value to five digits, without zeros that nobody wrote. */
function fiveDigits(value: number): string {
  return formatNumber(Number(value.toPrecision(5)), { rule: 'as-typed' });
}
