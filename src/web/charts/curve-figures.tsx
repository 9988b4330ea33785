// The curve in numbers: coefficients with their standard errors and covariance, scatter, R2 and lack of fit.

import { formatNumber, formatQuantity } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { FigureNotes } from './figure-notes.tsx';
import { digitsOf, threeDigits, writeProbability } from './figure-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';
import { type ShownCurve, type ShownFit, unitsOfFit } from './shown-fit.ts';

export function CurveFigures({ fit }: { readonly fit: ShownFit }) {
  const { charts, figures } = words;
  const { curve } = fit;
  const equation =
    curve.response === 'reading'
      ? charts.equation(charts.reading, charts.force.toLowerCase())
      : charts.equation(charts.force, charts.reading.toLowerCase());
  return (
    <>
      <ScrollTable title={equation} headingLevel={3} columns={charts.curveColumns}>
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
          <NumberCell>{scatterInWords(fit)}</NumberCell>
          <NumberCell>{charts.freedom(curve.degreesOfFreedom)}</NumberCell>
        </tr>
        <tr>
          <th scope="row">{figures.rSquared}</th>
          <NumberCell>{formatNumber(curve.rSquared, { rule: 'decimals', decimals: 6 })}</NumberCell>
          <td />
        </tr>
      </ScrollTable>
      <p>
        <strong>{figures.lackOfFit}</strong> {lackOfFitInWords(curve)}
      </p>
      <CovarianceTable covariance={curve.covariance} />
      <FigureNotes notes={figures.curveNotes} />
    </>
  );
}

/** The residual standard deviation with its unit. */
export function scatterInWords(fit: ShownFit): string {
  const scatter = { value: fit.curve.residualStandardDeviation, unit: unitsOfFit(fit).observed };
  return formatQuantity(scatter, { rule: 'significant-digits', digits: 4 });
}

/** Probability below which a lack of fit is taken as seen. Source: 5 % is the custom of the field, as for the degree. */
const significance = 0.05;

function lackOfFitInWords({ lackOfFit }: ShownCurve): string {
  const { figures } = words;
  if (lackOfFit === null) return figures.lackOfFitNone;
  const { fStatistic, pValue, numeratorDegrees, denominatorDegrees } = lackOfFit;
  return figures.lackOfFitTested(
    threeDigits(fStatistic),
    figures.degreesPair(numeratorDegrees, denominatorDegrees),
    writeProbability(pValue),
    pValue < significance,
  );
}

function CovarianceTable({ covariance }: Pick<ShownCurve, 'covariance'>) {
  const { charts, figures } = words;
  const columns = [figures.term, ...covariance.map((_, power) => charts.coefficient(power))];
  return (
    <ScrollTable title={figures.covarianceTitle} headingLevel={3} columns={columns}>
      {covariance.map((row, power) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the power is the coefficient's name
        <tr key={power}>
          <th scope="row">{charts.coefficient(power)}</th>
          {row.map((value, column) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: the power is the coefficient's name
            <NumberCell key={column}>{digitsOf(value, 5)}</NumberCell>
          ))}
        </tr>
      ))}
    </ScrollTable>
  );
}
