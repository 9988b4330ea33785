// What each point differs from the curve by, in the unit observed, with both bands about the curve.

import { useMemo } from 'react';
import { ReferenceLine } from 'recharts';
import { formatQuantity, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { axisTicks, symmetricTicks } from './axis-ticks.ts';
import { bandKeys, ChartFrame } from './chart-frame.tsx';
import { type ChartedFit, chartedCycles, residualChartRows, valuesOfRows } from './chart-rows.ts';
import { influentialPoints } from './influential-points.ts';
import { axisWords, bandAreas, cyclePoints, Plot } from './plot.tsx';

export function ResidualChart({ fit }: { readonly fit: ChartedFit }) {
  const { curve, residuals } = fit;
  const rows = useMemo(() => residualChartRows(fit), [fit]);
  const cycles = chartedCycles(residuals);
  const [setUnit, observedUnit] =
    curve.response === 'reading' ? [curve.units.force, curve.units.reading] : [curve.units.reading, curve.units.force];
  const largest = residuals.reduce((most, next) => (Math.abs(next.residual) > Math.abs(most.residual) ? next : most));
  const summary = words.charts.residualSummary(
    formatQuantity({ value: largest.residual, unit: observedUnit }, { rule: 'significant-digits', digits: 3 }),
    formatQuantity(
      { value: curve.response === 'reading' ? largest.force : largest.reading, unit: setUnit },
      { rule: 'significant-digits', digits: 4 },
    ),
  );
  const influential = influentialPoints(residuals).map(({ cycle, row }) => words.charts.place(cycle, row));
  return (
    <ChartFrame
      title={words.charts.residualTitle}
      summary={summary}
      cycles={cycles}
      keys={bandKeys()}
      note={influential.length === 0 ? null : words.charts.influential(influential)}
    >
      <Plot
        rows={rows}
        xTicks={axisTicks(0, Math.max(...rows.map(({ x }) => x)), 6)}
        yTicks={symmetricTicks(Math.max(...valuesOfRows(rows).map(Math.abs)), 7)}
        xWords={axisWords(curve).x}
        yWords={words.charts.residualAxis(formatUnit(observedUnit))}
      >
        {bandAreas()}
        <ReferenceLine y={0} stroke="var(--accent)" strokeWidth={2.5} />
        {cyclePoints(cycles)}
      </Plot>
    </ChartFrame>
  );
}
