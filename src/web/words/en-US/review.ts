// Words of the pages where the quality manager reviews a submitted calibration. American English.

import type { CalibrationAnswer } from '../../../contract/calibration.ts';
import type { Verdict } from '../../../domain/calibration/acceptance-result.ts';

const statuses: Readonly<Record<CalibrationAnswer['status'], string>> = {
  submitted: 'Waiting for a decision',
  approved: 'Approved',
  rejected: 'Rejected',
  withdrawn: 'Withdrawn',
};

export const review = {
  title: 'Review',
  lead: 'Calibrations that wait for a decision by somebody other than the one who entered them.',
  none: 'Nothing waits for a decision.',
  noneNext: 'What a technician submits on the page Calibrate appears here.',
  calibratedOn: (day: string) => `calibrated ${day}`,
  enteredBy: (person: string, when: string) => `entered by ${person}, ${when}`,
  own: 'Your own sheet: somebody else decides',
  titleOf: (number: string) => `Calibration ${number}`,
  all: 'All that wait',
  status: (status: CalibrationAnswer['status']) => statuses[status],
  withdraw: 'Withdraw the calibration',
  withdrawWhat: (number: string, pair: string) =>
    `No look-up of pair ${pair} rests on ${number} from then on. The calibration before it is in force again where there is one; else the pair is not calibrated.`,
  withdrawn: (person: string, when: string, reason: string) => `Withdrawn by ${person}, ${when}: ${reason}`,
  decided: (status: string, person: string, when: string) => `${status} by ${person}, ${when}`,
  pair: 'Pair',
  day: 'Calibration day',
  due: 'Would be valid until',
  loadCell: 'Load cell',
  certificate: 'Certificate',
  noCertificate: 'No certificate covers the day',
  certificateOf: (number: string, laboratory: string, until: string) => `${number}, ${laboratory}, until ${until}`,
  traceable: (to: string) => `traceable to ${to}`,
  enteredByLabel: 'Entered by',
  setLabel: 'Set',
  set: { force: 'the force', reading: 'the reading' },
  loadingLabel: 'Loading',
  loading: { active: 'the jack pushed the load cell', passive: 'a machine pushed the jack' },
  conditionLabel: 'When it was run',
  condition: {
    'as-found': 'as found, before anything was adjusted; it does not become the curve in force',
    'as-left': 'as left, after an adjustment or repair',
    unchanged: 'as found and as left, nothing was adjusted',
  },
  asFoundLabel: 'How it was found',
  noAsFound: 'There was no curve in use before.',
  degreeLabel: 'Degree',
  degreeAuto: (degree: number) => `${degree}, by the F test`,
  degreeChosen: (degree: number, reason: string) => `${degree}, chosen: ${reason}`,
  noReason: 'no reason given',
  firstUse: 'Day of first use',
  temperature: 'Temperature',
  celsius: (value: number) => `${value} °C`,
  note: 'Note of the technician',
  dataTitle: 'The run sheet as entered',
  cycle: (cycle: number, ram: string | null) => (ram === null ? `Cycle ${cycle}` : `Cycle ${cycle}, ram out ${ram}`),
  toDecision: 'Go to the decision',
  direction: { up: 'rising', down: 'falling' },
  directionColumn: 'Direction',

  decisionTitle: 'Decision',
  passwordToSign: 'Your password, to sign',
  approve: 'Approve',
  approving: 'Approving ...',
  reject: 'Reject',
  rejecting: 'Rejecting ...',
  approvalNote: 'Note on the approval',
  approvalNoteNeeded: (verdict: Verdict) =>
    verdict === 'fail'
      ? 'Why it is approved although a rule is not met'
      : 'Why it is approved although an entry check found an error',
  rejectReason: 'Why it is rejected',
  reasonNeeded: 'Give a reason of at least five characters.',
  whatApproves: (pair: string, day: string) => `Approving makes this the calibration of ${pair} until ${day}.`,
  ownWork: 'You entered this calibration, so somebody else must approve it.',
  signIn: 'Sign in',
  signInToDecide: 'Sign in to decide.',
  roleMayNot: 'Only the quality manager approves or rejects.',
  stale:
    'This calibration, its curve or the rules changed while you were reading. Nothing was approved. Read it again as it is now, then decide.',
  readAgain: 'Read it again',
  hash: (hash: string) => `You decide on exactly this sheet, curve and rule profile: ${hash.slice(0, 12)}`,
  approvedNow: 'Approved. The crew sees this curve from now on.',
  rejectedNow: 'Rejected. The pair keeps the calibration it had.',
  noCurve: 'The curve cannot be drawn here; the numbers are in the tables.',
} as const;
