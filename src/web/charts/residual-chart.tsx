// What each point differs from the curve by, in the unit observed, with the band one future setting falls in.

import { useMemo } from 'react';
import {
  Area,
  CartesianGrid,
  ComposedChart,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  XAxis,
  YAxis,
} from 'recharts';
import { formatQuantity, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { axisTicks, symmetricTicks } from './axis-ticks.ts';
import { ChartFrame } from './chart-frame.tsx';
import { type ChartedFit, chartedCycles, cycleKey, residualChartRows, valuesOfRows } from './chart-rows.ts';
import { axisWords, tickWords } from './curve-chart.tsx';
import { PointShape } from './point-shape.tsx';

const margin = { top: 8, right: 12, bottom: 24, left: 12 };

export function ResidualChart({ fit }: { readonly fit: ChartedFit }) {
  const { curve, residuals } = fit;
  const rows = useMemo(() => residualChartRows(fit), [fit]);
  const xTicks = axisTicks(0, Math.max(...rows.map(({ x }) => x)), 6);
  const yTicks = symmetricTicks(Math.max(...valuesOfRows(rows).map(Math.abs)), 7);
  const cycles = chartedCycles(residuals);
  const observedUnit = curve.response === 'reading' ? curve.units.reading : curve.units.force;
  const setUnit = curve.response === 'reading' ? curve.units.force : curve.units.reading;
  const largest = residuals.reduce((most, next) => (Math.abs(next.residual) > Math.abs(most.residual) ? next : most));
  const summary = words.charts.residualSummary(
    formatQuantity({ value: largest.residual, unit: observedUnit }, { rule: 'significant-digits', digits: 3 }),
    formatQuantity(
      { value: curve.response === 'reading' ? largest.force : largest.reading, unit: setUnit },
      { rule: 'significant-digits', digits: 4 },
    ),
  );
  return (
    <ChartFrame title={words.charts.residualTitle} summary={summary} cycles={cycles} hasBand hasCurve={false}>
      <ResponsiveContainer width="100%" height="100%">
        <ComposedChart data={[...rows]} margin={margin} accessibilityLayer={false}>
          <CartesianGrid stroke="var(--line)" />
          <XAxis
            type="number"
            dataKey="x"
            domain={[xTicks[0] ?? 0, xTicks.at(-1) ?? 1]}
            ticks={[...xTicks]}
            tickFormatter={tickWords}
            stroke="var(--ink)"
            label={{ value: axisWords(curve).x, position: 'bottom', offset: 4, fill: 'var(--ink-soft)' }}
          />
          <YAxis
            type="number"
            domain={[yTicks[0] ?? -1, yTicks.at(-1) ?? 1]}
            ticks={[...yTicks]}
            tickFormatter={tickWords}
            stroke="var(--ink)"
            width={58}
            label={{
              value: words.charts.residualAxis(formatUnit(observedUnit)),
              angle: -90,
              position: 'insideLeft',
              offset: -4,
              fill: 'var(--ink-soft)',
              style: { textAnchor: 'middle' },
            }}
          />
          <Area
            dataKey="band"
            stroke="var(--accent)"
            strokeWidth={0.75}
            fill="var(--accent-pale)"
            fillOpacity={1}
            connectNulls
            isAnimationActive={false}
            activeDot={false}
            dot={false}
          />
          <ReferenceLine y={0} stroke="var(--accent)" strokeWidth={2.5} />
          {cycles.map((cycle) => (
            <Scatter
              key={cycle}
              dataKey={cycleKey(cycle)}
              isAnimationActive={false}
              shape={(point) => <PointShape cycle={cycle} cx={point.cx} cy={point.cy} />}
            />
          ))}
        </ComposedChart>
      </ResponsiveContainer>
    </ChartFrame>
  );
}
