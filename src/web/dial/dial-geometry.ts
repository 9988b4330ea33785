// Where things lie on a round gauge face: angles, points, arcs. Which graduations it has is in dial-graduations.ts.

/** The pointer sweeps 270 degrees, from lower left over the top to lower right, as pressure gauges do. Common practice, no source. */
export const sweepDegrees = 270;
export const startDegrees = -135;

export interface FacePoint {
  readonly x: number;
  readonly y: number;
}

/**
 * Answers the pointer's angle for a reading, in degrees clockwise from straight up: -135 at zero, +135 at full scale.
 * Range: 0 to full scale; a reading outside it stays at the stop, as the pointer of the gauge would.
 */
export function angleForReading(reading: number, fullScale: number): number {
  const share = Math.min(Math.max(reading / fullScale, 0), 1);
  return startDegrees + sweepDegrees * share;
}

/** Answers the point of a face, centre 0/0 and y downwards, at an angle clockwise from straight up. */
export function pointAt(angleDegrees: number, radius: number): FacePoint {
  const radians = (angleDegrees * Math.PI) / 180;
  return { x: radius * Math.sin(radians), y: -radius * Math.cos(radians) };
}

const placed = (value: number): string => value.toFixed(3);

function placedPoint(angleDegrees: number, radius: number): string {
  const { x, y } = pointAt(angleDegrees, radius);
  return `${placed(x)} ${placed(y)}`;
}

/** Answers the SVG path of an arc clockwise from one angle to another, not above a full turn. */
export function arcPath(fromDegrees: number, toDegrees: number, radius: number): string {
  const isLarge = toDegrees - fromDegrees > 180 ? 1 : 0;
  return `M${placedPoint(fromDegrees, radius)}A${radius} ${radius} 0 ${isLarge} 1 ${placedPoint(toDegrees, radius)}`;
}

/** Answers the SVG path of a band between two radii, clockwise from one angle to another. */
export function bandPath(fromDegrees: number, toDegrees: number, inner: number, outer: number): string {
  const isLarge = toDegrees - fromDegrees > 180 ? 1 : 0;
  return [
    `M${placedPoint(fromDegrees, outer)}`,
    `A${outer} ${outer} 0 ${isLarge} 1 ${placedPoint(toDegrees, outer)}`,
    `L${placedPoint(toDegrees, inner)}`,
    `A${inner} ${inner} 0 ${isLarge} 0 ${placedPoint(fromDegrees, inner)}Z`,
  ].join('');
}

/** Answers the SVG path of straight strokes along the radius at each angle. */
export function strokesPath(anglesDegrees: readonly number[], inner: number, outer: number): string {
  return anglesDegrees.map((angle) => `M${placedPoint(angle, inner)}L${placedPoint(angle, outer)}`).join('');
}
