// The comparison of degrees: the F test of each against the one below, and how far their curves lie apart.

import { useMemo } from 'react';
import { Line, ReferenceLine } from 'recharts';
import { formatNumber, formatQuantity, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { axisTicks, symmetricTicks } from './axis-ticks.ts';
import { ChartFrame, type ChartKey } from './chart-frame.tsx';
import { type ChartedFit, chartedCycles, degreeChartRows, degreeKey, valuesOfRows } from './chart-rows.ts';
import { FigureNotes } from './figure-notes.tsx';
import { threeDigits } from './figure-words.ts';
import { axisWords, cyclePoints, Plot } from './plot.tsx';
import { NumberCell, ScrollTable } from './scroll-table.tsx';
import { type ShownDegree, type ShownFit, unitsOfFit } from './shown-fit.ts';

interface DegreeFiguresProps {
  readonly fit: ShownFit;
  /** Null where the curve cannot be drawn here. */
  readonly drawn: ChartedFit | null;
}

export function DegreeFigures({ fit, drawn }: DegreeFiguresProps) {
  return (
    <>
      <DegreeTable fit={fit} />
      {drawn === null ? null : <DegreeChart drawn={drawn} degrees={fit.degrees} />}
      <FigureNotes notes={words.figures.degreeNotes} />
    </>
  );
}

function DegreeTable({ fit }: { readonly fit: ShownFit }) {
  const { figures } = words;
  const columns = [
    figures.degree,
    figures.ofUnit(figures.scatter, formatUnit(unitsOfFit(fit).observed)),
    figures.degreesOfFreedom,
    figures.fStatistic,
    figures.pValue,
    figures.rises,
    figures.taken,
  ];
  return (
    <ScrollTable title={figures.degreeTable} headingLevel={3} columns={columns}>
      {fit.degrees.map((compared) => (
        <tr key={compared.degree}>
          <th scope="row">{compared.degree}</th>
          <NumberCell>{threeDigits(compared.residualStandardDeviation)}</NumberCell>
          <NumberCell>{compared.degreesOfFreedom}</NumberCell>
          <NumberCell>{compared.fStatistic === null ? '' : threeDigits(compared.fStatistic)}</NumberCell>
          <NumberCell>{compared.pValue === null ? '' : pInColumn(compared.pValue)}</NumberCell>
          <NumberCell>{compared.strictlyIncreasing ? figures.yes : figures.no}</NumberCell>
          <NumberCell>{compared.degree === fit.curve.degree ? figures.yes : ''}</NumberCell>
        </tr>
      ))}
    </ScrollTable>
  );
}

const pInColumn = (p: number): string =>
  p < 0.001 ? words.figures.belowThousandth : formatNumber(p, { rule: 'decimals', decimals: 3 });

/** Dashes by degree, so that the lines are told apart without colour. */
const dashes: Readonly<Record<number, string>> = { 1: '10 4', 2: '5 4', 3: '1.5 4' };

interface DegreeChartProps {
  readonly drawn: ChartedFit;
  readonly degrees: readonly ShownDegree[];
}

function DegreeChart({ drawn, degrees }: DegreeChartProps) {
  const { figures } = words;
  const { curve, residuals } = drawn;
  const chosen = curve.fit.degree;
  const others = useMemo(() => degrees.filter(({ degree }) => degree !== chosen), [degrees, chosen]);
  const rows = useMemo(() => degreeChartRows(drawn, others), [drawn, others]);
  const cycles = chartedCycles(residuals);
  const unit = curve.response === 'reading' ? curve.units.reading : curve.units.force;
  const apart = rows.flatMap((row) =>
    others.flatMap(({ degree }) => {
      const value = row[degreeKey(degree)];
      return typeof value === 'number' ? [Math.abs(value)] : [];
    }),
  );
  const keys: readonly ChartKey[] = [
    { text: figures.degreeTakenLine(chosen), look: 'curve' },
    ...others.map(({ degree }): ChartKey => {
      return { text: figures.degreeLine(degree), look: 'dashed', dash: dashes[degree] ?? '' };
    }),
  ];
  return (
    <ChartFrame
      title={figures.degreeChart}
      summary={figures.degreeSummary(
        formatQuantity({ value: Math.max(0, ...apart), unit }, { rule: 'significant-digits', digits: 3 }),
      )}
      cycles={cycles}
      keys={keys}
    >
      <Plot
        rows={rows}
        xTicks={axisTicks(0, Math.max(...rows.map(({ x }) => x)), 6)}
        yTicks={symmetricTicks(Math.max(...valuesOfRows(rows).map(Math.abs)), 7)}
        xWords={axisWords(curve).x}
        yWords={figures.distanceAxis(formatUnit(unit))}
      >
        <ReferenceLine y={0} stroke="var(--accent)" strokeWidth={2.5} />
        {others.map(({ degree }) => (
          <Line
            key={degree}
            dataKey={degreeKey(degree)}
            stroke="var(--ink-soft)"
            strokeWidth={1.75}
            strokeDasharray={dashes[degree] ?? ''}
            connectNulls
            isAnimationActive={false}
            dot={false}
            activeDot={false}
          />
        ))}
        {cyclePoints(cycles)}
      </Plot>
    </ChartFrame>
  );
}
