// Every fitted point with what the curve leaves over, for who wants the numbers behind the chart.

import { formatNumber, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { FigureNotes } from './figure-notes.tsx';
import { hundredths } from './figure-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';
import { type ShownFit, unitsOfFit } from './shown-fit.ts';

export function ResidualTable({ fit }: { readonly fit: ShownFit }) {
  const { charts, figures } = words;
  const { residuals, units } = fit;
  const observedUnit = formatUnit(unitsOfFit(fit).observed);
  const columns = [
    charts.placeColumn,
    figures.ofUnit(charts.forceColumn, formatUnit(units.force)),
    figures.ofUnit(charts.readingColumn, formatUnit(units.reading)),
    figures.ofUnit(charts.fittedColumn, observedUnit),
    figures.ofUnit(charts.residualColumn, observedUnit),
    charts.studentizedColumn,
    charts.deletedColumn,
    charts.leverageColumn,
    charts.cooksColumn,
  ];
  return (
    <>
      <ScrollTable title={figures.residualsTitle} headingLevel={3} columns={columns}>
        {residuals.map((point) => (
          <tr key={`${point.cycle}-${point.row}`}>
            <th scope="row">{charts.place(point.cycle, point.row)}</th>
            <NumberCell>{formatNumber(point.force, { rule: 'as-typed' })}</NumberCell>
            <NumberCell>{formatNumber(point.reading, { rule: 'as-typed' })}</NumberCell>
            <NumberCell>{formatNumber(point.fitted, { rule: 'significant-digits', digits: 5 })}</NumberCell>
            <NumberCell>{formatNumber(point.residual, { rule: 'significant-digits', digits: 3 })}</NumberCell>
            <NumberCell>{ratio(point.studentized)}</NumberCell>
            <NumberCell>{ratio(point.deletedStudentized)}</NumberCell>
            <NumberCell>{hundredths(point.leverage)}</NumberCell>
            <NumberCell>{ratio(point.cooksDistance)}</NumberCell>
          </tr>
        ))}
      </ScrollTable>
      <FigureNotes notes={figures.residualNotes} />
    </>
  );
}

const ratio = (value: number | null): string => (value === null ? words.figures.notKnown : hundredths(value));
