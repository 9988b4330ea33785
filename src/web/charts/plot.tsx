// What every drawing of a curve shares: grid, two axes with their words, bands, and the points of each cycle.

import type { ReactNode } from 'react';
import { Area, CartesianGrid, ComposedChart, ResponsiveContainer, Scatter, XAxis, YAxis } from 'recharts';
import type { Curve } from '../../domain/calibration/curve.ts';
import { formatNumber, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { type ChartRow, cycleKey } from './chart-rows.ts';
import { PointShape } from './point-shape.tsx';

interface PlotProps {
  readonly rows: readonly ChartRow[];
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  readonly xWords: string;
  readonly yWords: string;
  readonly children: ReactNode;
}

/** Margins that leave room for the axis words. */
const margin = { top: 8, right: 12, bottom: 24, left: 12 };

const tickWords = (value: number): string => formatNumber(value, { rule: 'as-typed' });

export function Plot({ rows, xTicks, yTicks, xWords, yWords, children }: PlotProps) {
  return (
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
          label={{ value: xWords, position: 'bottom', offset: 4, fill: 'var(--ink-soft)' }}
        />
        <YAxis
          type="number"
          domain={[yTicks[0] ?? 0, yTicks.at(-1) ?? 1]}
          ticks={[...yTicks]}
          tickFormatter={tickWords}
          stroke="var(--ink)"
          width={58}
          label={{
            value: yWords,
            angle: -90,
            position: 'insideLeft',
            offset: -4,
            fill: 'var(--ink-soft)',
            style: { textAnchor: 'middle' },
          }}
        />
        {children}
      </ComposedChart>
    </ResponsiveContainer>
  );
}

/** Both bands: pale with a thin edge for one future setting, darker with a broken edge for the curve itself. */
export function bandAreas(): readonly ReactNode[] {
  return [
    <Area
      key="band"
      dataKey="band"
      stroke="var(--accent)"
      strokeWidth={0.75}
      fill="var(--accent-pale)"
      fillOpacity={1}
      connectNulls
      isAnimationActive={false}
      activeDot={false}
      dot={false}
    />,
    <Area
      key="meanBand"
      dataKey="meanBand"
      stroke="var(--accent)"
      strokeWidth={1}
      strokeDasharray="3 3"
      fill="var(--accent)"
      fillOpacity={0.22}
      connectNulls
      isAnimationActive={false}
      activeDot={false}
      dot={false}
    />,
  ];
}

export function cyclePoints(cycles: readonly number[]): readonly ReactNode[] {
  return cycles.map((cycle) => (
    <Scatter
      key={cycle}
      dataKey={cycleKey(cycle)}
      isAnimationActive={false}
      shape={(point) => <PointShape cycle={cycle} cx={point.cx} cy={point.cy} />}
    />
  ));
}

/** The quantity that was set lies along x, the one observed along y. */
export function axisWords({ response, units }: Curve): { readonly x: string; readonly y: string } {
  const force = words.charts.axis(words.charts.force, formatUnit(units.force));
  const reading = words.charts.axis(words.charts.reading, formatUnit(units.reading));
  return response === 'reading' ? { x: force, y: reading } : { x: reading, y: force };
}
