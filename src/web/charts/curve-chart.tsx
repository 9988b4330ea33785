// The points of a calibration and the curve through them, with both bands and earlier curves beneath.
// The residuals, where the eye sees what the curve leaves over, are in residual-chart.tsx.

import { useMemo } from 'react';
import { Line } from 'recharts';
import type { Curve } from '../../domain/calibration/curve.ts';
import { formatQuantity } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { axisTicks } from './axis-ticks.ts';
import { bandKeys, ChartFrame, type ChartKey } from './chart-frame.tsx';
import { type ChartedFit, chartedCycles, curveChartRows, earlierKey, valuesOfRows } from './chart-rows.ts';
import { axisWords, bandAreas, cyclePoints, Plot } from './plot.tsx';

export interface EarlierCurve {
  readonly day: string;
  readonly curve: Curve;
}

interface CurveChartProps {
  readonly fit: ChartedFit;
  /** Newest first. */
  readonly earlier?: readonly EarlierCurve[];
}

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
  const axes = axisWords(curve);
  const cycles = chartedCycles(residuals);
  const end = (value: number) =>
    formatQuantity({ value, unit: curve.units.force }, { rule: 'significant-digits', digits: 4 });
  const keys: readonly ChartKey[] = [
    { text: words.charts.curve, look: 'curve' },
    ...bandKeys(),
    ...earlier.map(({ day }, index): ChartKey => {
      return { text: words.charts.earlier(day), look: 'dashed', dash: dashOfEarlier(index) };
    }),
  ];
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
      keys={keys}
    >
      <Plot
        rows={rows}
        xTicks={axisTicks(0, Math.max(...rows.map(({ x }) => x)), 6)}
        yTicks={axisTicks(0, Math.max(...valuesOfRows(rows)), 6)}
        xWords={axes.x}
        yWords={axes.y}
      >
        {bandAreas()}
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
        {cyclePoints(cycles)}
      </Plot>
    </ChartFrame>
  );
}

/** The dashes get shorter the older a curve is. */
function dashOfEarlier(index: number): string {
  return ['9 4', '5 4', '2 4', '1 5'][Math.min(index, 3)] ?? '1 5';
}
