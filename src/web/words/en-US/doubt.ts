// Words of what puts calibrations in doubt and what happens to pairs between calibrations. American English.

import type { DoubtCause } from '../../../domain/calibration/doubt.ts';
import type { EventEffect } from '../../../domain/equipment/event-effect.ts';
import type { PairEventKind } from '../../../domain/equipment/pair-event.ts';

const causes: Readonly<Record<DoubtCause, string>> = {
  'certificate-withdrawn': 'Certificate withdrawn',
  'certificate-not-valid': 'No certificate on the day',
  'standard-withdrawn': 'Standard withdrawn',
  'cell-as-found': 'Load cell found off',
  'pair-as-found': 'Pair found off',
};

const kinds: Readonly<Record<PairEventKind, string>> = {
  dropped: 'Dropped or struck',
  overload: 'Overload',
  repair: 'Repair',
  'seals-replaced': 'Seals replaced',
  'hose-changed': 'Hose changed',
  'pointer-off-zero': 'Pointer off zero',
  'strand-break': 'Strand break',
  'member-swapped': 'Jack, gauge or pump swapped',
};

const effects: Readonly<Record<EventEffect, string>> = {
  none: 'The crew works on as before.',
  caution: 'The crew sees a caution until the next calibration.',
  stop: 'The crew gets no reading until quality settles it or the pair is calibrated again.',
  void: 'The curve is void: the crew gets no reading until the pair is calibrated again.',
};

const acting: Readonly<Record<EventEffect, string>> = {
  none: 'No effect any more',
  caution: 'Caution',
  stop: 'Stops the pair',
  void: 'Curve void',
};

export const doubt = {
  title: 'In doubt',
  lead: 'Calibrations that rest on something found bad afterwards: a certificate or a standard withdrawn, a load cell or the pair itself off its limit. No reading is given until somebody looked into it.',
  openTitle: 'To look into',
  clearedTitle: 'Looked into and cleared',
  noneOpen: 'Nothing is in doubt.',
  noneCleared: 'None yet.',
  causes,
  pair: (tag: string) => `Pair ${tag}`,
  calibration: (number: string) => `Calibration ${number}`,
  inForce: 'in force today',
  notInForce: 'not in force any more',
  workFrom: (from: string) => `Work since ${from} rests on it.`,
  workBetween: (from: string, until: string) => `Work from ${from} to ${until} rests on it.`,
  noBeds: 'No bed that rests on it is recorded.',
  bedsRest: (beds: number, pulls: number) =>
    `${beds === 1 ? '1 recorded bed' : `${beds} recorded beds`} with ${pulls === 1 ? '1 pull' : `${pulls} pulls`}:`,
  moreBeds: (count: number) => (count === 1 ? 'and 1 more.' : `and ${count} more.`),
  clear: 'Clear the doubt',
  clearWhat:
    'Say what was checked and why the calibration still holds. Readings rest on it again at once; the doubt stays on record with your name.',
  clearedBy: (who: string, when: string, reason: string) => `Cleared by ${who} on ${when}: ${reason}`,
  ownRun: 'You entered this calibration; somebody else of quality clears doubts about it.',
  mayNot: 'Quality looks into doubts and clears them.',
  ofPairTitle: 'In doubt',
  everyDoubt: 'Everything in doubt',

  eventsTitle: 'What happened to it',
  noEvents: 'Nothing was reported.',
  report: 'Report what happened',
  reportLead: 'Whoever saw it reports it. What it does to the pair comes from the rules of the plant.',
  kinds,
  effects,
  acting,
  what: 'What happened',
  chooseWhat: 'Choose',
  whatNeeded: 'Choose what happened.',
  on: 'On',
  note: 'What was seen',
  noteHint: 'For example: gauge struck the form, glass whole, pointer at zero',
  send: 'Report it',
  swapped: 'Jack and gauge in other hands are another pair: part this one, then form the new one.',
  reportedBy: (who: string, when: string) => `reported by ${who} on ${when}`,
  settle: 'Settle it',
  settleWhat: 'Say what was checked. It does nothing to the pair any more; the report stays on record.',
  settleVoidWhat:
    'A void curve needs a new calibration. Settle it only where the report itself was wrong, and say so; it stays on record.',
  settledBy: (who: string, when: string, reason: string) => `Settled by ${who} on ${when}: ${reason}`,
} as const;
