// The shape of a rule profile: every limit the program judges by, each with where it comes from.
// The profiles shipped with the program are listed in shipped-profiles.ts.

/**
 * How a limit is known: `read` in the document or a reproduction of it, `second-hand` from another that reports it, from `memory`, `computed` from exact values,
 * common `practice` without a source, a `house` rule of this program, or set by the `plant` for reasons it names.
 */
export const provenances = ['read', 'second-hand', 'memory', 'computed', 'practice', 'house', 'plant'] as const;
export type Provenance = (typeof provenances)[number];

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
  /**
   * How much of the expanded uncertainty of a level's error is kept away from the accuracy limit, as a multiple of U:
   * 1 is guarded, 0 simple acceptance. Without it, as in `rules-set/1`: 0.
   */
  readonly guardFactor?: Limit | undefined;
  /** Largest difference between falling and rising series at one level, in % of force. Without it: not judged. */
  readonly reversibilityPercent?: Limit | undefined;
  /** Largest force behind the reading at zero force, in % of the largest force calibrated. Without it: not judged. */
  readonly zeroPercent?: Limit | undefined;
  /** Largest step that can be read at a level, as force in % of the level. Without it: not judged. */
  readonly resolutionPercent?: Limit | undefined;
  /** Days before its first use on a project that a calibration may lie at most. Without it: not asked. */
  readonly firstUseDays?: Limit | undefined;
  /** 1 where readings are also worked to on falling pressure, so that reversibility belongs to the uncertainty. Without it: 0. */
  readonly fallingUse?: Limit | undefined;
  /**
   * What an event does to the pair until it is calibrated again: 0 nothing, 1 a caution, 2 a stop until quality settles it,
   * 3 makes the curve void. Without it, as before `rules-set/3`: 2.
   */
  readonly eventDropped?: Limit | undefined;
  readonly eventOverload?: Limit | undefined;
  readonly eventRepair?: Limit | undefined;
  readonly eventSeals?: Limit | undefined;
  readonly eventHose?: Limit | undefined;
  readonly eventPointer?: Limit | undefined;
  readonly eventStrandBreak?: Limit | undefined;
  readonly eventMemberSwapped?: Limit | undefined;
  /** Days a device may answer without having heard from the server before a caution, and before a stop. Without them, as before `rules-set/4`: 3 and 14. */
  readonly snapshotCautionDays?: Limit | undefined;
  readonly snapshotStopDays?: Limit | undefined;
  /** How far the gauge's force and the elongation's may part, in % of the theoretical force. Without them: 5 and 7. */
  readonly preTensionedWindowPercent?: Limit | undefined;
  readonly postTensionedWindowPercent?: Limit | undefined;
  /** How many of the two charts of a pair's beds must signal before it counts as drifting. Without it: 2. */
  readonly chartsToSignal?: Limit | undefined;
}

/** The names of the limits of a profile. */
export type RuleName = Exclude<keyof RuleProfile, 'name' | 'title'>;
