// How far a point lies from the curve through all the others, in units of that curve's own scatter.

/** Part of the degrees of freedom that is rounding. House rule: below it, a t of a million and more, no double tells all others from exact. */
const roundingPart = 1e-12;

/**
 * Answers the deleted (externally studentized) residual of a point: its distance from the curve fitted without it, over
 * the standard deviation of that distance. Student's t with nu - 1 degrees of freedom where only scatter is at work.
 * t = r sqrt((nu - 1) / (nu - r^2)), r = `studentized`, the internally studentized residual, nu = `degreesOfFreedom` of
 * the fit with the point.
 * Range: |r| <= sqrt(nu), which every fit keeps; with its sign infinite where all other points lie on one curve exactly,
 * null where no degree of freedom is left without the point (nu of 1).
 * Source: R. D. Cook and S. Weisberg, Residuals and Influence in Regression, 1982, 2.2.2 (from memory).
 * Example: r = -2.573 with 13 degrees of freedom gives -3.529 (NAG Library Manual, example of g02faf).
 */
export function deletedResidual(studentized: number, degreesOfFreedom: number): number | null {
  if (degreesOfFreedom <= 1) return null;
  const left = degreesOfFreedom - studentized ** 2;
  if (left <= roundingPart * degreesOfFreedom) return Math.sign(studentized) * Number.POSITIVE_INFINITY;
  return studentized * Math.sqrt((degreesOfFreedom - 1) / left);
}
