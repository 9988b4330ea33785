// Words of the page where a technician enters a calibration. American English.

import type { SetQuantity } from '../../../domain/calibration/run-sheet.ts';
import type { ProblemCode } from '../../../domain/problem.ts';

const quantity: Readonly<Record<SetQuantity, string>> = { force: 'force', reading: 'reading' };
const capital: Readonly<Record<SetQuantity, string>> = { force: 'Force', reading: 'Reading' };

const whatIsWrong: Partial<Readonly<Record<ProblemCode | 'level-missing', (given: string) => string>>> = {
  'ambiguous-number': (given) => `"${given}" can be read in two ways; write it with a decimal point and without commas`,
  'number-out-of-range': (given) => `"${given}" is below zero or too large; write a number of zero or more`,
};

export const calibrate = {
  title: 'Calibrate',
  intro: 'One run sheet: one pair, one day, one load cell.',

  drafts: 'Drafts on this device',
  noDrafts: 'No draft is waiting on this device.',
  draftsFailed:
    'This browser keeps no drafts: what you type is lost when the page closes. Leave private browsing, or use another browser.',
  draftTitle: (pair: string, day: string) => `${pair || 'No pair yet'}, ${day || 'no day yet'}`,
  draftChanged: (when: string) => `last changed ${when}`,
  draftPoints: (points: number) => (points === 1 ? '1 cell typed' : `${points} cells typed`),
  copyFromWindow: 'Copy from another window',
  roleCannotSubmit: (role: string) =>
    `Your role, ${role}, cannot submit a calibration. What you type here stays on this device until a technician or the quality manager signs in on it and submits.`,
  continueDraft: 'Continue',
  throwAway: 'Throw away',
  throwAwayAsk: 'Throw this draft away?',
  throwAwayWhat: (title: string) => `${title}: everything typed in it is gone for good.`,
  keepIt: 'Keep it',
  start: 'Start a run sheet',
  startFor: (pair: string) => `Start a run sheet for ${pair}`,
  titleOf: (pair: string) => (pair === '' ? 'Calibrate' : `Calibrate ${pair}`),
  allDrafts: 'All drafts',
  keeping: {
    kept: 'The draft is kept on this device.',
    refused: 'Not kept: this browser refuses to store drafts. Submit before you close the page.',
    'changed-elsewhere':
      'This draft was changed in another window. What is typed here goes on as a draft of its own, kept on this device.',
  },
  draftGone: 'There is no such draft on this device. It may have been submitted or thrown away.',
  loading: 'Loading ...',

  aboutTitle: 'What was calibrated',
  pair: 'Pair',
  choosePair: 'Choose the pair',
  noPairs: 'No pair is registered yet. Register the jack and the gauge under Equipment first.',
  pairParted: (tag: string) => `${tag} is parted; it cannot be calibrated again.`,
  jack: 'Jack',
  gauge: 'Gauge',
  ofJack: (rated: string, area: string) => `rated ${rated}, piston ${area}`,
  ofGauge: (full: string, graduation: string) => `to ${full}, graduation ${graduation}`,
  day: 'Calibration day',
  dayInFuture: (today: string) => `The calibration day lies after today, ${today}.`,
  dayInvalid: 'Write a day that exists, as YYYY-MM-DD.',
  loadCell: 'Load cell',
  chooseLoadCell: 'Choose the load cell',
  certificateValid: (number: string, laboratory: string, until: string) =>
    `Certificate ${number} of ${laboratory}, valid until ${until}.`,
  noCertificate: (cell: string) => `${cell} has no certificate. File one under Equipment.`,
  certificateEnded: (cell: string, until: string, day: string) =>
    `The last certificate of ${cell} ended on ${until}; it does not cover ${day}.`,
  certificateLater: (cell: string, from: string, day: string) =>
    `The certificate of ${cell} starts on ${from}; it does not cover ${day}.`,
  certificateNeedsDay: 'Give the calibration day to see whether the certificate covers it.',
  firstUse: 'Day of first use',
  firstUseAsked: (days: number) =>
    `The rules ask for a calibration at most ${days} days before it is first used on the project.`,
  set: 'What was set',
  setForce: 'The force on the load cell; the gauge was read',
  setReading: 'The reading of the gauge; the force was read',
  forceUnit: 'Unit of force',
  readingUnit: 'Unit of reading',
  unitNote: 'Changing a unit changes only the unit: the numbers stay as typed.',
  loadingTitle: 'How it was loaded',
  loadingActive: 'The jack pushed the load cell',
  loadingPassive: 'A machine pushed the jack',
  conditionTitle: 'When it was run',
  conditions: {
    notSaid: 'Not said',
    'as-found': 'As found, before anything was adjusted or repaired: tells how the pair was, gives no new curve',
    'as-left': 'As left, afterwards',
    unchanged: 'As found and as left, nothing was adjusted',
  },
  note: 'Note',
  temperature: 'Temperature, °C',
  temperatureBad: (given: string) => `"${given}" is not a temperature between -60 and 80.`,

  pointsTitle: 'Points',
  keys: 'Arrows, Enter and Tab move; typing replaces, F2 edits; Shift with arrows marks a block; Ctrl+C, Ctrl+V, Ctrl+Z work as in a spreadsheet.',
  skipTable: 'Skip the table',
  cycles: 'Cycles',
  levels: 'Levels',
  fewer: (what: string) => `Fewer ${what.toLowerCase()}`,
  more: (what: string) => `More ${what.toLowerCase()}`,
  minus: '−',
  plus: '+',
  cycle: (cycle: number) => `Cycle ${cycle + 1}`,
  showFalling: (cycle: number) => `Falling points in cycle ${cycle + 1}`,
  falling: 'Falling',
  ownLevels: (cycle: number) => `Own set values in cycle ${cycle + 1}`,
  own: 'Own set values',
  ramOut: 'Ram out',
  ramOutOf: (cycle: number) => `Ram extension in cycle ${cycle + 1}`,
  ramOutBad: (cycle: number, given: string) =>
    `Cycle ${cycle + 1}, ram out: "${given}" is not a length with its unit, for example 75 mm`,
  rowColumn: 'Row',
  setHeader: (set: SetQuantity, unit: string) => `Set ${quantity[set]}, ${unit}`,
  ownHeader: (unit: string) => `Set, ${unit}`,
  risingHeader: (observed: SetQuantity, unit: string) => `${capital[observed]} rising, ${unit}`,
  fallingHeader: (observed: SetQuantity, unit: string) => `${capital[observed]} falling, ${unit}`,
  zeroRow: 'zero',
  tableName: 'Points of the run sheet',
  cellOfLevel: (row: number, set: SetQuantity) => `Row ${row + 1}, set ${quantity[set]}`,
  cellOfOwnLevel: (cycle: number, row: number, set: SetQuantity, falling: boolean) =>
    `Cycle ${cycle + 1}, row ${row + 1}, own set ${quantity[set]}${falling ? ', falling' : ''}`,
  cellObserved: (cycle: number, row: number, observed: SetQuantity, falling: boolean) =>
    `Cycle ${cycle + 1}, row ${row + 1}, ${quantity[observed]}${falling ? ', falling' : ''}`,
  bad: (place: string, code: ProblemCode | 'level-missing', given: string, set: SetQuantity) => {
    if (code === 'level-missing')
      return `${place} is blank, but something was observed at it; write the set ${quantity[set]}`;
    const words = whatIsWrong[code] ?? ((text: string) => `"${text}" is not a number; write it like 1234.5`);
    return `${place}: ${words(given)}`;
  },
  badTitle: (count: number) => (count === 1 ? '1 cell cannot be read' : `${count} cells cannot be read`),
  badNote: 'They are kept as typed and left out of the curve until they are mended.',
  pasted: (rows: number, columns: number) =>
    `Pasted ${rows} ${rows === 1 ? 'row' : 'rows'} by ${columns} ${columns === 1 ? 'column' : 'columns'}. Ctrl+Z takes it back.`,
  pastedGrown: (levels: number, cycles: number) => {
    const parts = [
      ...(levels > 0 ? [levels === 1 ? '1 level' : `${levels} levels`] : []),
      ...(cycles > 0 ? [cycles === 1 ? '1 cycle' : `${cycles} cycles`] : []),
    ];
    return parts.length === 0 ? '' : ` Added ${parts.join(' and ')}.`;
  },
  pastedLeftOut: (cells: number) => (cells === 0 ? '' : ` ${cells} cells did not fit and were left out.`),
  cycleRemoved: (cycle: number, readings: number) =>
    `Cycle ${cycle + 1} with ${readings} ${readings === 1 ? 'reading' : 'readings'} removed. Ctrl+Z brings it back.`,
  rowRemoved: (row: number, cells: number) =>
    `Row ${row + 1} with ${cells} typed ${cells === 1 ? 'cell' : 'cells'} removed. Ctrl+Z brings it back.`,
  undo: 'Undo',
  redo: 'Redo',

  importTitle: 'Import a file',
  importIntro: 'CSV or JSON, as the command line reads it. The table below is replaced; Ctrl+Z brings it back.',
  importFile: 'Choose a file',
  importPaste: 'Or paste its text',
  importRead: 'Read the text',
  imported: (cycles: number, points: number) =>
    `Imported ${cycles} ${cycles === 1 ? 'cycle' : 'cycles'} with ${points} points.`,
  importFailed: (message: string) => `Nothing was imported. ${message}`,
  importWhere: (where: string) => `${where[0]?.toUpperCase() ?? ''}${where.slice(1)}:`,
  importNeeded: (needed: string) => `Needed: ${needed}.`,
  importGiven: (given: string) => `Given: ${given}`,
  importGivenBlank: 'Given: nothing',
  importTooLarge: 'The file is larger than any run sheet and was not read.',
  importUnreadable: 'The file could not be read from the disk.',

  resultTitle: 'Verdict',
  notYet: 'No curve yet',
  goThere: 'Go to the cell',
  putThere: (value: string) => `Put ${value} there`,
  putInstead: (value: string) => `Or ${value}`,
  repaired: (place: string, before: string, value: string) =>
    `${place}: ${value} in place of ${before}. Ctrl+Z takes it back.`,
  pending: (count: number) => (count === 1 ? '1 cell is left out' : `${count} cells are left out`),
  degree: 'Degree of the curve',
  degreeAuto: (degree: number | null) => (degree === null ? 'Automatic' : `Automatic: ${degree}`),
  degreeReason: 'Why this degree',
  degreeReasonNeeded: 'A degree chosen by hand needs a reason of at least five characters.',
  degreeScatter: (scatter: string) => `scatter ${scatter}`,
  degreeFalls: 'does not rise throughout',
  degreeMissing: 'too few levels',

  submitTitle: 'Submit for approval',
  submit: 'Submit',
  submitting: 'Submitting ...',
  signInToSubmit: 'Sign in to submit. The draft stays on this device.',
  signIn: 'Sign in',
  mayNot: 'Only a technician or the quality manager submits a calibration. The draft stays on this device.',
  toMend: 'Before it can be submitted:',
  mendPair: 'Choose the pair.',
  mendDay: 'Give the calibration day.',
  mendFirstUse: 'Give a day of first use that exists, or leave it blank.',
  mendCell: 'Choose the load cell.',
  mendCells: 'Mend or clear the cells that cannot be read.',
  mendCurve: 'Enter points a curve can run through.',
  serverAway:
    'The server does not answer. The draft stays on this device; submit again when it is back. It will be taken once only.',
  keyReused:
    'An earlier submission of this draft has already arrived, and the draft was changed since. Look at the calibrations of the pair before you submit the changed sheet as one more calibration.',
  submitAnew: 'Submit the changed sheet as one more',
  submitted: (number: string) => `Calibration ${number} is submitted`,
  submittedNext: 'It waits for approval by somebody else. The draft is gone from this device.',
  openReview: 'Open it',
  startNext: 'Start the next run sheet',
} as const;
