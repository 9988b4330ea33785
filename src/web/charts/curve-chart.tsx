// The points of a calibration and the curve through them, with the band of one future setting and earlier curves beneath.
// The residuals, where the eye sees what the curve leaves over, are in residual-chart.tsx.

import { useMemo } from 'react';
import { Area, CartesianGrid, ComposedChart, Line, ResponsiveContainer, Scatter, XAxis, YAxis } from 'recharts';
import type { Curve } from '../../domain/calibration/curve.ts';
import { formatNumber, formatQuantity, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { axisTicks } from './axis-ticks.ts';
import { ChartFrame, dashOfEarlier } from './chart-frame.tsx';
import { type ChartedFit, chartedCycles, curveChartRows, cycleKey, earlierKey, valuesOfRows } from './chart-rows.ts';
import { PointShape } from './point-shape.tsx';

export interface EarlierCurve {
  readonly day: string;
  readonly curve: Curve;
}

interface CurveChartProps {
  readonly fit: ChartedFit;
  /** Newest first. */
  readonly earlier?: readonly EarlierCurve[];
}

/** Margins that leave room for the axis words. */
const margin = { top: 8, right: 12, bottom: 24, left: 12 };

export const tickWords = (value: number): string => formatNumber(value, { rule: 'as-typed' });

const noEarlier: readonly EarlierCurve[] = [];

export function CurveChart({ fit, earlier = noEarlier }: CurveChartProps) {
  const { curve, residuals } = fit;
  const rows = useMemo(
    () =>
      curveChartRows(
        fit,
        earlier.map((older) => older.curve),
      ),
    [fit, earlier],
  );
  const xTicks = axisTicks(0, Math.max(...rows.map(({ x }) => x)), 6);
  const yTicks = axisTicks(0, Math.max(...valuesOfRows(rows)), 6);
  const cycles = chartedCycles(residuals);
  const axes = axisWords(curve);
  const end = (value: number) =>
    formatQuantity({ value, unit: curve.units.force }, { rule: 'significant-digits', digits: 4 });
  return (
    <ChartFrame
      title={words.charts.curveTitle}
      summary={words.charts.curveSummary(
        residuals.length,
        curve.fit.degree,
        end(curve.forceRange.low),
        end(curve.forceRange.high),
      )}
      cycles={cycles}
      earlier={earlier.map(({ day }) => day)}
      hasBand
      hasCurve
    >
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
            label={{ value: axes.x, position: 'bottom', offset: 4, fill: 'var(--ink-soft)' }}
          />
          <YAxis
            type="number"
            domain={[yTicks[0] ?? 0, yTicks.at(-1) ?? 1]}
            ticks={[...yTicks]}
            tickFormatter={tickWords}
            stroke="var(--ink)"
            width={58}
            label={{
              value: axes.y,
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
          {earlier.map(({ day }, index) => (
            <Line
              key={day}
              dataKey={earlierKey(index)}
              stroke="var(--ink-soft)"
              strokeWidth={1.75}
              strokeDasharray={dashOfEarlier(index)}
              connectNulls
              isAnimationActive={false}
              dot={false}
              activeDot={false}
            />
          ))}
          <Line
            dataKey="curve"
            stroke="var(--accent)"
            strokeWidth={2.5}
            connectNulls
            isAnimationActive={false}
            dot={false}
            activeDot={false}
          />
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

/** The quantity that was set lies along x, the one observed along y. */
export function axisWords({ response, units }: Curve): { readonly x: string; readonly y: string } {
  const force = words.charts.axis(words.charts.force, formatUnit(units.force));
  const reading = words.charts.axis(words.charts.reading, formatUnit(units.reading));
  return response === 'reading' ? { x: force, y: reading } : { x: reading, y: force };
}
