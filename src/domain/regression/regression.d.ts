// The part of the npm package `regression` that is used here; it ships no types.

declare module 'regression' {
  interface PolynomialOptions {
    readonly order: number;
    /** Decimals the coefficients are rounded to. */
    readonly precision: number;
  }
  interface RegressionResult {
    /** Coefficients in descending powers. */
    readonly equation: readonly number[];
  }
  const regression: {
    polynomial(points: readonly (readonly [number, number])[], options: PolynomialOptions): RegressionResult;
  };
  export default regression;
}
