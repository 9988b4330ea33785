// The warnings of a look-up: each with a code, a weight and one sentence.

/** `refuse`: no number. `stop`: a number only after a named release. `caution`: heed it. `note`: know it. */
export type WarningWeight = 'refuse' | 'stop' | 'caution' | 'note';

/** Every code with its weight; what each means is in warning-meanings.ts. */
export const warningWeights = {
  'not-calibrated': 'refuse',
  'pair-parted': 'refuse',
  'on-hold': 'refuse',
  'outside-calibrated-range': 'refuse',
  'above-jack-rating': 'refuse',
  'above-gauge-span': 'refuse',
  'above-stress-ceiling': 'refuse',
  'clock-behind-ledger': 'refuse',
  'clock-not-trusted': 'refuse',
  'curve-not-as-approved': 'refuse',
  'void-by-event': 'refuse',
  overdue: 'stop',
  'reference-in-doubt': 'stop',
  'curve-in-doubt': 'stop',
  'event-not-settled': 'stop',
  'not-a-stressing-curve': 'stop',
  'snapshot-too-old': 'stop',
  'of-another-day': 'caution',
  'snapshot-old': 'caution',
  'event-reported': 'caution',
  'part-corrected': 'caution',
  drifting: 'caution',
  'beds-signal': 'caution',
  'outside-dial-window': 'caution',
  'graduation-too-coarse': 'caution',
  'first-use-late': 'caution',
  'sheet-in-doubt': 'caution',
  'acceptance-failed': 'caution',
  'acceptance-in-doubt': 'caution',
  'acceptance-conditional': 'note',
  'due-soon': 'note',
  'near-end-of-range': 'note',
  'ceiling-not-checked': 'note',
  'preload-not-given': 'note',
  'gauge-class-coarse': 'note',
  'temperature-not-counted': 'note',
  'interval-not-finite': 'note',
  'released-by-name': 'note',
} as const satisfies Readonly<Record<string, WarningWeight>>;

export type WarningCode = keyof typeof warningWeights;

export interface Warning {
  readonly code: WarningCode;
  readonly weight: WarningWeight;
  readonly message: string;
}

export function warn(code: WarningCode, message: string): Warning {
  return { code, weight: warningWeights[code], message };
}

export function warnOfRelease({ name }: { readonly name: string }): Warning {
  return warn('released-by-name', `Released by ${name}.`);
}

const order: readonly WarningWeight[] = ['refuse', 'stop', 'caution', 'note'];

/** The same warnings, gravest first. */
export function byWeight(warnings: readonly Warning[]): readonly Warning[] {
  return [...warnings].sort((a, b) => order.indexOf(a.weight) - order.indexOf(b.weight));
}
