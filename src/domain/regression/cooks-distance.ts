// How much one point alone moves the whole curve. How far it lies from the others' curve is in deleted-residual.ts.

/**
 * Answers Cook's distance of a point: how far all fitted values move when it is left out, squared and summed, in units
 * of `coefficientCount` times the residual variance.
 * D = r^2 h / ((1 - h) p), r = `studentized`, the internally studentized residual, h = `leverage`, p = `coefficientCount`.
 * Range: 0 <= h < 1; at h = 1 the point alone holds the curve and has no studentized residual to begin with.
 * Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982, 3.1 (from memory).
 * Example: r = -2.573, h = 0.5479, p = 11 gives 0.729 (NAG Library Manual, example of g02faf).
 */
export function cooksDistance(studentized: number, leverage: number, coefficientCount: number): number {
  return (studentized ** 2 * leverage) / ((1 - leverage) * coefficientCount);
}
