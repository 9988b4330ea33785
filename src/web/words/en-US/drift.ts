// Words of how a pair moves from calibration to calibration. American English.

import type { DriftAnswer } from '../../../contract/drift.ts';

type Forecast = DriftAnswer['forecast'];
type Trend = Extract<Forecast, { readonly kind: 'forecast' }>['trend'];

const signed = (value: number): string => `${value > 0 ? '+' : ''}${value.toFixed(2)}`;
const rate = ({ percentPerYear, low, high }: Trend): string =>
  `${signed(percentPerYear)} % a year (${signed(low)} to ${signed(high)})`;

function forecast(found: Forecast, limit: string): string {
  switch (found.kind) {
    case 'too-few-calibrations':
      return `No forecast yet: it takes ${found.needed} calibrations on different days, and there ${found.given === 1 ? 'is 1' : `are ${found.given}`}.`;
    case 'not-a-line':
      return 'No forecast: the calibrations lie further from any straight line than their uncertainties explain. Something happened between two of them.';
    case 'outside-already':
      return `The trend, ${rate(found.trend)}, is outside ${limit} % already.`;
    case 'no-forecast-before-horizon':
      return found.reason === 'trend-not-distinguishable'
        ? `No day to name: the trend, ${rate(found.trend)}, cannot be told from none.`
        : `The trend, ${rate(found.trend)}, stays within ${limit} % for the next five years.`;
    case 'forecast':
      return `At its trend, ${rate(found.trend)}, the pair leaves ${limit} % on ${found.day}; between ${found.earliest} and ${found.latest ?? 'more than five years from now'} with 95 %.`;
  }
}

const because: Readonly<Record<DriftAnswer['interval']['because'], string>> = {
  'never-found': 'no run sheet says how the pair was found.',
  'found-outside': 'it was found outside its limit.',
  'near-the-limit': 'it was found within its limit, but not well within.',
  'well-within': 'it was found well within its limit.',
  'profile-allows-no-longer': 'the rules allow no longer.',
  'shortest-already': 'there is no shorter step.',
  'drift-reaches-limit': 'its drift may reach the limit by then.',
};

function interval({ advice, months, currentMonths, because: why }: DriftAnswer['interval']): string {
  const what =
    advice === 'keep'
      ? `Keep the interval of ${currentMonths} months`
      : advice === 'shorten'
        ? `Shorten the interval from ${currentMonths} to ${months} months`
        : `The interval could be lengthened from ${currentMonths} to ${months} months`;
  return `${what}: ${because[why]}`;
}

export const drift = {
  title: 'Between calibrations',
  lead: (limit: string) =>
    `How much more or less force the same reading gives from one calibration to the next. The rules allow ${limit} %.`,
  changesTitle: 'From each calibration to the next',
  changeColumns: ['From', 'To', 'Day', 'Verdict', 'Largest change, %', 'At', '% a year', 'E_n'],
  verdicts: {
    agree: 'within their uncertainties',
    differ: 'more than their uncertainties explain',
    'not-judged': 'not judged',
  } satisfies Record<DriftAnswer['changes'][number]['verdict'], string>,
  historyTitle: (force: string) => `At the reading for ${force}, against the curve in force`,
  historyColumns: ['Calibration', 'Day', 'Drift, %', 'U, % (k = 2)'],
  forecast,
  interval,
  signed,
  none: '-',
} as const;
