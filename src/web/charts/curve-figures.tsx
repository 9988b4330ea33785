// The curve in numbers: coefficients with their standard errors, scatter and degrees of freedom.

import type { FitAnswer } from '../../contract/fit.ts';
import { formatQuantity } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';

export function CurveFigures({ fit }: { readonly fit: Pick<FitAnswer, 'curve' | 'units'> }) {
  const { charts } = words;
  const { curve, units } = fit;
  const [response, of, unit] =
    curve.response === 'reading'
      ? [charts.reading, charts.force.toLowerCase(), units.reading]
      : [charts.force, charts.reading.toLowerCase(), units.force];
  return (
    <ScrollTable title={`${charts.coefficientsTitle}: ${charts.equation(response, of)}`} columns={charts.curveColumns}>
      {curve.coefficients.map((coefficient, power) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the power is the coefficient's name
        <tr key={power}>
          <th scope="row">{charts.coefficient(power)}</th>
          <NumberCell>{digitsOf(coefficient, 8)}</NumberCell>
          <NumberCell>{digitsOf(curve.standardErrors[power] ?? 0, 3)}</NumberCell>
        </tr>
      ))}
      <tr>
        <th scope="row">{charts.scatter}</th>
        <NumberCell>
          {formatQuantity({ value: curve.residualStandardDeviation, unit }, { rule: 'significant-digits', digits: 4 })}
        </NumberCell>
        <NumberCell>{charts.freedom(curve.degreesOfFreedom)}</NumberCell>
      </tr>
    </ScrollTable>
  );
}

/** Enough digits to compute with, also of a number far from one: 1.2e-9. */
function digitsOf(value: number, digits: number): string {
  return value.toPrecision(digits).replaceAll('-', words.charts.minus);
}
