// The points of a cycle: each cycle has a shape of its own, so that cycles are told apart without colour.

/** Shapes by cycle, going round when there are more cycles. Drawn about (0, 0) within a radius of 5. */
const paths = [
  'M0 -4.6a4.6 4.6 0 1 1 0 9.2a4.6 4.6 0 1 1 0 -9.2z',
  'M-4.200 -4.200h8.400v8.400h-8.400z',
  'M0 -5.400 5.200 4h-10.400z',
  'M0 -5.800 5.800 0 0 5.800 -5.800 0z',
  'M0 5.400 5.200 -4h-10.400z',
  'M-1.600 -5h3.200v3.400h3.400v3.200h-3.400v3.400h-3.200v-3.400h-3.400v-3.200h3.400z',
] as const;

export const pathOfCycle = (cycle: number): string => paths[cycle % paths.length] ?? paths[0];

interface PointShapeProps {
  readonly cycle: number;
  readonly cx?: number | undefined;
  readonly cy?: number | undefined;
}

/** A point at its place on a chart; nothing where the row has no point of this cycle. */
export function PointShape({ cycle, cx, cy }: PointShapeProps) {
  if (typeof cx !== 'number' || typeof cy !== 'number' || Number.isNaN(cx) || Number.isNaN(cy)) return null;
  return (
    <path
      d={pathOfCycle(cycle)}
      transform={`translate(${cx} ${cy})`}
      fill="none"
      stroke="var(--ink)"
      strokeWidth={1.75}
    />
  );
}
