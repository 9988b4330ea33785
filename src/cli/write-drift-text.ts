// How a pair drifts, as lines for a person.

import type { DriftAnswer } from '../contract/drift.ts';
import { fixed, writeTable } from './write-table.ts';

export function writeDriftText(answer: DriftAnswer): string {
  const { pair, calibration, asOf, limitPercent, changes, force, history } = answer;
  const at = `${force.value} ${force.unit}`;
  const lines = [`Pair ${pair} by calibration ${calibration}, as of ${asOf}; limit of change ${limitPercent} %`, ''];
  if (changes.length > 0) {
    lines.push(
      'From each calibration to the next, over the range both cover:',
      writeTable(
        [
          { title: 'from', align: 'left' },
          { title: 'to', align: 'left' },
          { title: 'on', align: 'left' },
          { title: 'largest change %', align: 'right' },
          { title: 'at', align: 'right' },
          { title: '% a year', align: 'right' },
          { title: 'E_n', align: 'right' },
          { title: 'verdict', align: 'left' },
        ],
        changes.map((change) => [
          change.from,
          change.to,
          change.on,
          signed(change.changePercent),
          `${Math.round(change.at.value)} ${change.at.unit}`,
          change.percentPerYear === null ? '-' : signed(change.percentPerYear),
          fixed(change.normalizedError, 2),
          verdicts[change.verdict],
        ]),
      ),
    );
  }
  lines.push(
    `Force at the reading for ${at}, against the curve in force:`,
    writeTable(
      [
        { title: 'calibration', align: 'left' },
        { title: 'day', align: 'left' },
        { title: 'drift %', align: 'right' },
        { title: 'U % (k = 2)', align: 'right' },
      ],
      history.map((point) => [
        point.calibration,
        point.day,
        signed(point.driftPercent),
        fixed(point.expandedUncertaintyPercent, 2),
      ]),
    ),
    writeForecast(answer),
    writeAdvice(answer),
    '',
  );
  return lines.join('\n');
}

const verdicts = {
  agree: 'within their uncertainties',
  differ: 'more than their uncertainties explain',
  'not-judged': 'not judged',
} as const;

const signed = (value: number): string => `${value > 0 ? '+' : ''}${value.toFixed(2)}`;

function writeForecast({ forecast, limitPercent }: DriftAnswer): string {
  switch (forecast.kind) {
    case 'too-few-calibrations':
      return `No forecast: it takes ${forecast.needed} calibrations on different days, and there ${forecast.given === 1 ? 'is 1' : `are ${forecast.given}`}.`;
    case 'not-a-line':
      return `No forecast: the calibrations lie further from any line than their uncertainties explain (chi squared ${forecast.chiSquared.toFixed(1)}, ${forecast.degreesOfFreedom} degrees of freedom). Something happened between two of them.`;
    case 'outside-already':
      return `By its trend of ${signed(forecast.trend.percentPerYear)} % a year the pair is outside ${limitPercent} % already.`;
    case 'no-forecast-before-horizon': {
      const why =
        forecast.reason === 'trend-not-distinguishable'
          ? 'The trend cannot be told from none'
          : 'By its trend the pair stays within the limit as far as is looked ahead';
      const safe =
        forecast.safeUntil === null ? '' : `; within the limit until ${forecast.safeUntil} by the band of the trend`;
      return `${why} (${signed(forecast.trend.percentPerYear)} % a year, ${signed(forecast.trend.low)} to ${signed(forecast.trend.high)})${safe}.`;
    }
    case 'forecast':
      return `By its trend of ${signed(forecast.trend.percentPerYear)} % a year the pair leaves ${limitPercent} % on ${forecast.day}; between ${forecast.earliest} and ${forecast.latest ?? 'later than is looked ahead'} (95 %).`;
  }
}

const reasons: Readonly<Record<DriftAnswer['interval']['because'], string>> = {
  'never-found': 'no run says how it was found',
  'found-outside': 'it was found outside its limit',
  'near-the-limit': 'it was found within its limit, but not well within',
  'well-within': 'it was found well within its limit',
  'profile-allows-no-longer': 'the rules allow no longer',
  'shortest-already': 'there is no shorter step',
  'drift-reaches-limit': 'its drift may reach the limit by then',
};

function writeAdvice({ interval }: DriftAnswer): string {
  const { advice, months, currentMonths, because, method } = interval;
  const what =
    advice === 'keep' ? `keep ${currentMonths} months` : `${advice} from ${currentMonths} to ${months} months`;
  return `Interval: ${what}, because ${reasons[because]} (${method === 'staircase' ? 'staircase' : 'control chart'} of ILAC-G24).`;
}
