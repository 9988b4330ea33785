// The shape of a rule profile: every limit the program judges by, each with where it comes from.
// The profile shipped with the program is in twelve-months-two-percent.ts.

/**
 * How a limit is known: `read` in the document or a reproduction of it, from `memory`, `computed` from exact values,
 * common `practice` without a source, or a `house` rule of this program.
 */
export type Provenance = 'read' | 'memory' | 'computed' | 'practice' | 'house';

export interface Limit {
  readonly value: number;
  readonly provenance: Provenance;
  readonly source: string;
}

export interface RuleProfile {
  readonly name: string;
  readonly title: string;
  /** Calendar months a calibration stays valid. */
  readonly intervalMonths: Limit;
  /** Days before the due day from which a pair is due soon. */
  readonly dueSoonDays: Limit;
  /** Largest deviation of any level from the curve, in % of force. */
  readonly accuracyPercent: Limit;
  /** Largest spread of the cycles at one level, in % of force. */
  readonly repeatabilityPercent: Limit;
  readonly minimumCycles: Limit;
  readonly minimumLevels: Limit;
  /** Certificates of the load cell valid on the calibration day: 1 asks for one, 0 for none. */
  readonly validCertificates: Limit;
  /** 1 asks that the jack pushed the load cell; 0 takes a jack pushed by a machine as well. */
  readonly activeLoading: Limit;
  /** Load efficiency against the nominal piston area, as a ratio. */
  readonly efficiencyLow: Limit;
  readonly efficiencyHigh: Limit;
  /** Change of force between two calibrations, at any common reading, from which a pair counts as drifting, in %. */
  readonly driftPercent: Limit;
  /** Part of the gauge's full scale to work in. */
  readonly dialWindowLow: Limit;
  readonly dialWindowHigh: Limit;
  /** Largest step that can be read on the gauge, in % of the reading. */
  readonly readableStepPercent: Limit;
  /** Part of the load cell's capacity it may be used in. */
  readonly cellWindowLow: Limit;
  /** Stress ceiling at the jack as a fraction of breaking load and of yield load; the lesser governs. */
  readonly ceilingOfBreaking: Limit;
  readonly ceilingOfYield: Limit;
  /** Preload as a fraction of the final force. */
  readonly preloadFraction: Limit;
}
