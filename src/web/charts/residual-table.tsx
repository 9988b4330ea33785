// Every fitted point with what the curve leaves over, for who wants the numbers behind the chart.

import type { FitAnswer } from '../../contract/fit.ts';
import { formatNumber, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';

interface ResidualTableProps {
  readonly residuals: readonly FitAnswer['residuals'][number][];
  readonly response: 'reading' | 'force';
  readonly units: { readonly force: string; readonly reading: string };
}

export function ResidualTable({ residuals, response, units }: ResidualTableProps) {
  const { charts } = words;
  const observedUnit = formatUnit(response === 'reading' ? units.reading : units.force);
  const columns = [
    charts.placeColumn,
    `${charts.forceColumn}, ${formatUnit(units.force)}`,
    `${charts.readingColumn}, ${formatUnit(units.reading)}`,
    `${charts.fittedColumn}, ${observedUnit}`,
    `${charts.residualColumn}, ${observedUnit}`,
    charts.studentizedColumn,
  ];
  return (
    <ScrollTable title={charts.residualsTitle} columns={columns}>
      {residuals.map((point) => (
        <tr key={`${point.cycle}-${point.row}`}>
          <th scope="row">{charts.place(point.cycle, point.row)}</th>
          <NumberCell>{formatNumber(point.force, { rule: 'as-typed' })}</NumberCell>
          <NumberCell>{formatNumber(point.reading, { rule: 'as-typed' })}</NumberCell>
          <NumberCell>{formatNumber(point.fitted, { rule: 'significant-digits', digits: 5 })}</NumberCell>
          <NumberCell>{formatNumber(point.residual, { rule: 'significant-digits', digits: 3 })}</NumberCell>
          <NumberCell>
            {point.studentized === null
              ? charts.notMeasured
              : formatNumber(point.studentized, { rule: 'decimals', decimals: 2 })}
          </NumberCell>
        </tr>
      ))}
    </ScrollTable>
  );
}
