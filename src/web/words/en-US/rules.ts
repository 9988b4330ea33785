// Words of the page that shows the rules a plant judges by, and sets them. American English.

import type { Provenance, RuleName } from '../../../domain/rules/rule-profile.ts';

interface RuleWords {
  readonly name: string;
  readonly what: string;
  /** The value with its unit; `count` is the number the digits stand for. */
  readonly value: (digits: string, count: number) => string;
  /** The unit alone, beside a field to type in. */
  readonly unit: string;
  /** What a plant without this limit does; absent where every plant has it. */
  readonly without?: string;
}

const counted = (one: string, many: string) => (digits: string, count: number) =>
  count === 1 ? `${digits} ${one}` : `${digits} ${many}`;
const percentOf = (unit: string) => (digits: string) => `${digits} ${unit}`;
const yesNo = (_digits: string, count: number) => (count > 0 ? 'Yes' : 'No');

const percentOfForce = { unit: '% of force', value: percentOf('% of force') };
const ofFullScale = { unit: 'of full scale', value: percentOf('of full scale') };
const ofPressureTimesArea = { unit: 'of pressure times area', value: percentOf('of pressure times area') };

const effects = ['Nothing', 'A caution', 'A stop until quality settles it', 'The curve is void'] as const;
const effectOf = (name: string, what: string): RuleWords => ({
  name,
  what,
  unit: '',
  value: (_digits, value) => effects[value] ?? String(value),
  without: 'A stop until quality settles it',
});

const limits: Readonly<Record<RuleName, RuleWords>> = {
  intervalMonths: {
    name: 'Interval',
    what: 'How long a calibration stays valid, in calendar months from its day.',
    unit: 'months',
    value: counted('month', 'months'),
  },
  dueSoonDays: {
    name: 'Notice before the due day',
    what: 'From how many days before its due day a pair counts as due soon.',
    unit: 'days',
    value: counted('day', 'days'),
  },
  firstUseDays: {
    name: 'Calibration before first use',
    what: 'How many days may lie between a calibration and its first use on a project.',
    unit: 'days',
    value: counted('day', 'days'),
    without: 'Not asked',
  },
  accuracyPercent: {
    name: 'Accuracy',
    what: 'Largest deviation of any level from the curve.',
    ...percentOfForce,
  },
  guardFactor: {
    name: 'Guard band',
    what: 'How much of the uncertainty U is kept away from the accuracy limit: 1 is guarded, 0 simple acceptance.',
    unit: 'times U',
    value: (digits) => `${digits} times U`,
    without: 'None',
  },
  repeatabilityPercent: {
    name: 'Repeatability',
    what: 'Largest spread of the cycles at one level.',
    ...percentOfForce,
  },
  reversibilityPercent: {
    name: 'Reversibility',
    what: 'Largest difference between falling and rising series at one level.',
    ...percentOfForce,
    without: 'Not judged',
  },
  zeroPercent: {
    name: 'Zero',
    what: 'Largest force behind the reading at zero force.',
    unit: '% of the largest force',
    value: percentOf('% of the largest force'),
    without: 'Not judged',
  },
  resolutionPercent: {
    name: 'Resolution',
    what: 'Largest step that can be read at a level, as force.',
    ...percentOfForce,
    without: 'Not judged',
  },
  minimumCycles: {
    name: 'Cycles',
    what: 'How many cycles a calibration needs at least.',
    unit: 'cycles',
    value: counted('cycle', 'cycles'),
  },
  minimumLevels: {
    name: 'Levels',
    what: 'How many different levels a calibration needs at least.',
    unit: 'levels',
    value: counted('level', 'levels'),
  },
  validCertificates: {
    name: 'Certificate of the load cell',
    what: 'Whether the load cell needs a certificate that is valid on the calibration day.',
    unit: '',
    value: yesNo,
  },
  activeLoading: {
    name: 'Jack pushes the load cell',
    what: 'Whether the jack must push the load cell. Where a machine pushes the jack, seal friction acts the other way.',
    unit: '',
    value: yesNo,
  },
  fallingUse: {
    name: 'Work on falling pressure',
    what: 'Whether readings are also worked to on falling pressure, so that reversibility belongs to the uncertainty.',
    unit: '',
    value: yesNo,
    without: 'No',
  },
  efficiencyLow: {
    name: 'Load efficiency, lowest',
    what: 'Force on the load cell over reading times nominal piston area; below this something is wrong.',
    ...ofPressureTimesArea,
  },
  efficiencyHigh: {
    name: 'Load efficiency, highest',
    what: 'A jack cannot give more than pressure times area; above this an area, a unit or a zero is wrong.',
    ...ofPressureTimesArea,
  },
  cellWindowLow: {
    name: 'Load cell, lowest part to use',
    what: 'Below this part of its capacity a load cell is not used.',
    unit: 'of its capacity',
    value: percentOf('of its capacity'),
  },
  driftPercent: {
    name: 'Drift between calibrations',
    what: 'From which change of force at the same reading a pair counts as drifting.',
    ...percentOfForce,
  },
  dialWindowLow: { name: 'Dial, work from', what: 'The lowest part of the gauge to work in.', ...ofFullScale },
  dialWindowHigh: { name: 'Dial, work up to', what: 'The highest part of the gauge to work in.', ...ofFullScale },
  readableStepPercent: {
    name: 'Step of the gauge',
    what: 'Largest step that can be read on the gauge at the reading to set.',
    unit: '% of the reading',
    value: percentOf('% of the reading'),
  },
  ceilingOfBreaking: {
    name: 'Stress ceiling, of breaking load',
    what: 'No strand is stressed higher at the jack; the lesser of the two ceilings governs.',
    unit: 'of breaking load',
    value: percentOf('of breaking load'),
  },
  ceilingOfYield: {
    name: 'Stress ceiling, of yield load',
    what: 'No strand is stressed higher at the jack; the lesser of the two ceilings governs.',
    unit: 'of yield load',
    value: percentOf('of yield load'),
  },
  preloadFraction: {
    name: 'Preload',
    what: 'The force pulled first, where no other is asked for.',
    unit: 'of the final force',
    value: percentOf('of the final force'),
  },
  eventRepair: effectOf('Repair', 'What the repair of a part does to a pair until it is calibrated again.'),
  eventSeals: effectOf('Seals replaced', 'New seals rub otherwise than the old ones did.'),
  eventMemberSwapped: effectOf('Member swapped', 'Another jack, gauge or pump than the one that was calibrated.'),
  eventHose: effectOf('Hose changed', 'Another hose, or another length of it.'),
  eventOverload: effectOf('Overload', 'More force or pressure than the pair is made for.'),
  eventDropped: effectOf('Dropped', 'A jack or gauge that fell or was struck.'),
  eventPointer: effectOf('Pointer off zero', 'The pointer does not come back to zero.'),
  eventStrandBreak: effectOf('Strand break', 'A strand broke while the pair pulled it.'),
  preTensionedWindowPercent: {
    name: 'Gauge against elongation, pre-tensioned',
    what: 'How far the force by the gauge and the force by the elongation may part before the work stops.',
    ...percentOfForce,
    without: '5 %',
  },
  postTensionedWindowPercent: {
    name: 'Gauge against elongation, post-tensioned',
    what: 'The same where strand is pulled in ducts through hardened concrete.',
    ...percentOfForce,
    without: '7 %',
  },
  chartsToSignal: {
    name: 'Charts of the beds',
    what: 'How many of the two charts kept of its beds must signal before a pair counts as drifting.',
    unit: 'charts',
    value: counted('chart', 'charts'),
    without: '2 charts',
  },
  snapshotCautionDays: {
    name: 'Device without the server, caution',
    what: 'After how many days without the server a device gives its readings with a caution.',
    unit: 'days',
    value: counted('day', 'days'),
    without: '3 days',
  },
  snapshotStopDays: {
    name: 'Device without the server, stop',
    what: 'After how many days without the server a device gives no reading.',
    unit: 'days',
    value: counted('day', 'days'),
    without: '14 days',
  },
};

const known: Readonly<Record<Provenance, string>> = {
  read: 'Read in the source',
  'second-hand': 'Second-hand, as another source reports it',
  memory: 'From memory, look it up',
  computed: 'Computed',
  practice: 'Common practice, no source',
  house: 'House rule of this program',
  plant: 'Set by this plant',
};

const whole = (isWhole: boolean) => (isWhole ? 'A whole number' : 'A number');

export const rules = {
  title: 'Rules',
  lead: 'What every calibration, due day and reading of this plant is judged by.',
  whoDecides:
    "The project's own specification, local code and the licensed engineer decide. Where a limit here differs from them, change it here and name them as its source.",
  inForceTitle: 'In force',
  setBy: (who: string, when: string, entry: string) => `Set by ${who} on ${when}, entry ${entry} of the ledger.`,
  neverSet: 'Nobody has set rules yet; these are the ones the program starts with.',
  reasonWas: (reason: string) => `Reason: ${reason}`,
  limits,
  known,
  effects,
  groups: {
    validity: 'How long a calibration holds',
    acceptance: 'What a calibration must show',
    gauge: 'Working on the gauge',
    strand: 'Pulling strand',
    device: 'Devices without the server',
    events: 'What happens between calibrations',
  },
  noSource: 'This profile has no such limit.',
  basis: (provenance: Provenance, text: string) =>
    ['read', 'memory', 'plant'].includes(provenance) ? `Source: ${text}` : `Why: ${text}`,
  change: 'Change the rules',
  signInToChange: 'Quality and administrators set the rules, once signed in.',
  signIn: 'Sign in',
  mayNotChange: 'Quality and administrators set the rules.',
  editTitle: 'Change the rules',
  editLead:
    'Start from a profile, then change single limits. Each change asks where the new limit comes from. Nothing is in force before you put it in force at the end.',
  startFrom: 'Start from',
  startInForce: (title: string) => `The rules in force: ${title}`,
  changeLimit: 'Change',
  changeLimitOf: (name: string) => `Change: ${name}`,
  leaveOut: 'Leave out',
  leaveOutOf: (name: string) => `Leave out: ${name}`,
  askForIt: 'Add',
  askForItOf: (name: string) => `Add: ${name}`,
  keep: 'Keep as it was',
  keepOf: (name: string) => `Keep as it was: ${name}`,
  newValue: (unit: string) => (unit === '' ? 'New value' : `New value, ${unit}`),
  yes: 'Yes',
  no: 'No',
  bounds: (least: string, most: string, isWhole: boolean) => `${whole(isWhole)} from ${least} to ${most}.`,
  newSource: 'Where it comes from',
  newSourceHint: 'For example: project specification 05 12 00, 3.4',
  leftOut: (without: string) => `Left out. ${without}.`,
  valueMissing: (least: string, most: string) => `Give a number from ${least} to ${most}.`,
  valueBad: (typed: string) => `"${typed}" is not a number; write it with a decimal point and without commas.`,
  valueOutside: (typed: string, least: string, most: string, isWhole: boolean) =>
    isWhole
      ? `${typed} is not a whole number from ${least} to ${most}.`
      : `${typed} is not a number from ${least} to ${most}.`,
  sourceNeeded: 'Say where this limit comes from, in three characters or more.',
  ownTitle: 'Title of these rules',
  ownTitleHint: 'Rules with limits of your own need a title of their own.',
  titleToCome: 'To be given below',
  titleNeeded: 'Give the rules a title of three characters or more.',
  reason: 'Reason for the change',
  reasonNeeded: 'Give a reason of at least five characters.',
  summaryTitle: 'What changes',
  titleRow: 'Title',
  was: 'In force',
  becomes: 'New',
  nothingChanges: 'Nothing yet: these are the rules in force.',
  nothingToSave: 'There is nothing to put in force: change a limit or start from another profile.',
  waiting: (count: number) =>
    count === 1
      ? 'One calibration waits for a decision. Whoever has it open must read it again under the new rules before deciding.'
      : `${count} calibrations wait for a decision. Whoever has one open must read it again under the new rules before deciding.`,
  whatFollows:
    'Due days, standings, verdicts and warnings of every pair follow the new rules at once. What was approved stays approved.',
  save: 'Put these rules in force',
  saving: 'Writing it into the ledger ...',
  throwAway: 'Throw these changes away',
  throwAwayAsk: 'What is typed here is gone then; the rules in force stay as they are.',
  throwAwayNow: 'Throw them away',
  keepTyping: 'Keep them',
  mendFirst: (count: number) =>
    count === 1 ? 'One field above needs mending first.' : `${count} fields above need mending first.`,
  changedMeanwhile:
    'Somebody else changed the rules meanwhile. Read them again: your changes stay here, and the summary then compares them with the rules in force now.',
  readAgain: 'Read the rules again',
  saved: (entry: string, title: string) => `Entry ${entry} of the ledger: "${title}" is in force.`,
  savedWaiting: (count: number) =>
    count === 1
      ? 'One waiting calibration is to be read again.'
      : `${count} waiting calibrations are to be read again.`,
  toReview: 'To the review',
  toLedger: 'To the ledger',
  hash: 'Hash',
} as const;
