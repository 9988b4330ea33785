// Texts of the page that gives the crew the reading to set.

import type { UncertaintySource } from '../../../domain/calibration/uncertainty-source.ts';
import type { DoNotExceed } from '../../../domain/lookup/do-not-exceed.ts';
import type { WarningCode } from '../../../domain/lookup/warning.ts';

const doNotExceedBecause: Readonly<Record<DoNotExceed['because'], string>> = {
  'stress-ceiling': 'stress ceiling',
  'jack-rating': 'jack rating',
  'gauge-span': 'full scale',
  'calibrated-range': 'calibrated range',
};

/** How long ago, in the largest unit that is whole. */
function age(minutes: number): string {
  if (minutes < 1) return 'just now';
  if (minutes < 120) return minutes === 1 ? '1 minute ago' : `${minutes} minutes ago`;
  const hours = Math.floor(minutes / 60);
  return hours < 48 ? `${hours} hours ago` : `${Math.floor(hours / 24)} days ago`;
}

const whatToDo = {
  'clock-not-trusted': 'Set day and time of this device right, then bring it to where it reaches the server.',
  'snapshot-too-old': 'Bring this device to where it reaches the server.',
  'snapshot-old': 'Bring it to where it reaches the server when you can.',
  'clock-behind-ledger':
    'Ask the administrator to set the clock of the machine the server runs on. Until then no reading is given.',
  'not-calibrated': 'Use another pair that is ready, or have this one calibrated.',
  'pair-parted': 'Use another pair that is ready. These two have to be calibrated together again.',
  'on-hold': 'Use another pair. Quality lifts the hold once its cause is settled.',
  'curve-not-as-approved': 'Use another pair that is ready. Quality has to enter and approve this calibration again.',
  'outside-calibrated-range':
    'Check the strand and the force. If they are right, use a pair that is calibrated this far.',
  'above-jack-rating': 'Check the strand and the force. If they are right, use a larger jack.',
  'above-gauge-span': 'Use a pair whose gauge reads this far.',
  'above-stress-ceiling': 'Check the strand and the force on the drawing. Ask the engineer in charge.',
  'not-a-stressing-curve': 'Have the pair calibrated with the jack pushing, as it does when it pulls a strand.',
  'reference-in-doubt': 'Ask quality: the certificate of the load cell has to be settled first.',
  'curve-in-doubt': 'Use another pair. This one is adjusted and calibrated again first.',
  'event-not-settled': 'Use another pair. Quality looks at this one and settles it.',
  'void-by-event': 'Use another pair that is ready. This one has to be calibrated again.',
  'of-another-day': 'Look the reading up anew before you pull.',
  'ceiling-not-checked': 'Name the strand beside the force, and its ceiling is checked.',
} as const satisfies Partial<Record<WarningCode, string>>;

const uncertaintySources: Readonly<Record<UncertaintySource, string>> = {
  'load-cell-certificate': 'Load cell, by its certificate',
  'cell-indicator': 'Indicator of the load cell',
  'gauge-resolution': 'Reading the gauge',
  'scatter-and-fit': 'Scatter of the calibration',
  reversibility: 'Falling against rising pressure',
  temperature: 'Temperature of the gauge',
  drift: 'Drift since the calibration before',
};

export const setTheGauge = {
  title: 'Set the gauge',
  choosePair: 'Choose the pair',
  changePair: 'Change',
  noPairChosen: 'Which jack and gauge are on the strand?',
  noPairs: 'This plant has no pair yet. The technician forms one on the page Equipment.',
  pair: 'Pair',
  jack: 'Jack',
  gauge: 'Gauge',
  pairTag: (tag: string) => `Pair ${tag}`,
  pairOfOne: (tag: string) => `Pair ${tag}.`,
  pairOfSeveral: (tag: string, strands: number) => `${tag} pulls ${strands} strands.`,
  validUntil: (day: string) => `Valid until ${day}.`,
  wasValidUntil: (day: string) => `Was valid until ${day}.`,
  compareTags: 'Check both tags.',
  findPair: 'Find by tag',
  findPairHint: 'Any part of the tag of the pair, the jack or the gauge',
  morePairs: (count: number) => `${count} more. Type part of a tag to find them.`,
  noSuchPair: (text: string) => `No pair, jack or gauge has "${text}" in its tag.`,
  parted: 'Parted',
  unknownPair: (tag: string) => `There is no pair ${tag} in this plant. Choose another.`,

  chooseTarget: 'Choose the strand or force',
  changeTarget: 'Change',
  noTargetChosen: 'What is pulled?',
  target: 'Pull',
  strand: 'Strand',
  force: 'Force',
  byStrand: 'A strand',
  byForce: 'A force',
  fraction: 'Part of the breaking load',
  percent: (percent: string) => `${percent} %`,
  strandTarget: (percent: string) => `Strand, at ${percent} % of the breaking load`,
  otherFraction: 'Another part, in %',
  otherFractionProblem: 'A number above 0 and at most 100.',
  forceLabel: 'Force at the jack',
  forceHint: 'As on the drawing, for all strands this jack pulls together.',
  forceNotAboveZero: 'A force above zero.',
  unit: 'Unit',
  forceStrand: 'Strand, to check its stress ceiling',
  noStrand: 'Not named',
  forceOnStrand: (strand: string) => `Force, on ${strand}`,
  show: 'Show the reading',
  showForStrand: (strand: string, percent: string) => `Show the reading for ${strand} at ${percent} %`,
  fromMemory: 'check the mill certificate',

  readingToSet: 'Set the gauge to',
  releasedReading: 'Released: set to',
  forForce: (force: string, strands: number) => (strands === 1 ? `for ${force}` : `for ${force} on ${strands} strands`),
  unrounded: 'Reading before rounding',
  asSet: 'Force at the reading to set',
  preload: 'Preload',
  preloadForce: (force: string) => `for ${force}`,
  noPreload: 'none',
  noPreloadWhy: 'see the note',
  doNotExceed: 'Never above',
  doNotExceedBecause,
  ceilingNotChecked: (because: string) => `${because}; stress ceiling not checked, no strand named`,
  dueDate: 'Calibration valid until',
  dueDatePassed: 'Calibration expired after',
  noDueDate: 'no date',
  standing: 'Standing of the pair',
  interval: 'Force interval',
  intervalText: (level: string, low: string, high: string) => `${low} to ${high} in ${level} % of settings`,
  uncertainty: 'Expanded uncertainty',
  uncertaintyText: (expanded: string, k: string) => `\u00b1 ${expanded} (k = ${k})`,
  noInterval: 'not finite',
  asSetText: (force: string, error: string) => `${force}, ${error} % off by rounding`,
  gaugeClass: 'Gauge by its own class',
  gaugeClassText: (name: string, error: string, percent: string) =>
    `${name} permits ${error} here, ${percent} % of the reading`,
  uncertaintyParts: 'What the uncertainty is made of',
  uncertaintyPartsLead: 'Standard uncertainties, put together as the GUM (JCGM 100) has it.',
  uncertaintySource: (source: string) =>
    Object.hasOwn(uncertaintySources, source) ? uncertaintySources[source as UncertaintySource] : source,
  uncertaintySum: 'Together',
  readingsTitle: (pair: string) => `Table of readings of ${pair}`,
  readingsLead: (asOf: string, due: string) =>
    `As of ${asOf}; calibration valid until ${due}. Without preload and strand limits.`,
  readingsForce: (unit: string) => `Force, ${unit}`,
  readingsSet: (unit: string) => `Set to, ${unit}`,
  readingsError: 'Off by rounding',
  readingsCannot: 'none',
  readingsAt: (forces: string, message: string) => `${forces}: ${message}`,
  readingsRun: (from: string, to: string) => `${from} to ${to}`,
  readingsNone: 'No table for this pair now.',
  restsOn: 'What the number rests on',
  calibration: 'Calibration',
  calibrationOn: (number: string, day: string) => `${number} of ${day}`,
  loadCell: 'Load cell',
  certificate: 'Certificate',
  laboratory: 'Laboratory',
  asOf: 'As of',
  lastHeard: 'Server heard',
  heardAt: (when: string, age: string) => `${when}, ${age}.`,
  age,
  serverAway: 'Server away',
  heardAgo: (age: string) => `last heard ${age}`,
  unknownSince: 'This device answers by itself; a hold placed since is not known here.',
  warnings: 'Heed before pulling',

  refusedTitle: 'No reading',
  releaseNeedsServer:
    'No release helps here. Bring this device to where it reaches the server, and the reading comes back.',
  withheldTitle: 'Reading withheld',
  withheldText: 'Pull with another pair that is ready. Where that cannot be, a named person may release this reading.',
  releaseTitle: 'Release the reading by name',
  releasedBy: 'Released by',
  releaseReason: 'Why',
  releaseReasonHint: 'It is written into the ledger for good, with this name and the hour.',
  releaseButton: 'Release and show the reading',
  releasing: 'Writing it into the ledger ...',
  signInToRelease: 'Sign in to release it',
  signInToReleaseText: 'A release carries a name, so it needs a sign-in. Your choice of pair and strand is kept.',
  reasonTooShort: 'A reason of at least five letters.',
  whatToDo,
  whatToDoTitle: 'What to do',

  noConnectionTitle: 'No connection: no reading',
  noConnectionText:
    'The server does not answer, and this device holds nothing of the plant yet. Do not set the gauge from memory.',
  checking: 'Checking the pair ...',
  tryAgain: 'Try again',

  behindTitle: 'Force behind a reading',
  behindLead: 'The pointer stands somewhere already: which force is that?',
  behindReading: (unit: string) => `Reading on the gauge, in ${unit}`,
  behindButton: 'Show the force',
  behindAnswer: (reading: string) => `Behind ${reading} stands`,
  behindNotAboveZero: 'A reading above zero.',
  behindWithheld:
    'The force behind a reading is not available while a stop stands on this pair, also after a reading was released.',

  cautionsTitle: 'Before and while pulling',
  cautions: [
    'Nobody behind the jack or in line with the strand. Barriers and signs stand.',
    'Stand to the side; never reach or step over a strand.',
    'Pointer at zero, hoses whole, chucks seated: look before you pull.',
    'Stop on a jump, a wire break, or when gauge and elongation disagree.',
    'Let the pressure off before you disconnect. Detension in the approved order.',
  ],
  cautionsDefer:
    "The project specification, local codes, the maker's instructions and the engineer in charge come before this page.",
} as const;
