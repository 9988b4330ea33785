// The answer of `jackledger lookup` for people: the reading to set first, then how sure it is, the gauge, the limits, what it
// rests on and what to heed. A table of readings is in write-readings-text.ts.

import type { LookupAnswer } from '../contract/lookup.ts';
import { significant, writeTable } from './write-table.ts';

/** Width of the words before a value. */
const labelWidth = 23;

const line = (label: string, text: string): string => `${label.padEnd(labelWidth)}${text}`;
const below = (text: string): string => ' '.repeat(labelWidth) + text;

const plain = (value: number, digits = 6): string => String(Number(value.toPrecision(digits)));

/** Answers the whole answer as lines; `subject` is what was asked about, where it is no pair. */
export function writeLookupText(answer: LookupAnswer, subject: string): string {
  const lines = [
    ...writeAnswer(answer, subject),
    ...writeRounding(answer),
    ...writeSureness(answer),
    ...writeGauge(answer),
    ...writeLimits(answer),
    ...writeBasis(answer),
    '',
    ...writeWarnings(answer),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function writeAnswer(
  { pair, force, reading, readingToSet, outcome }: LookupAnswer,
  subject: string,
): readonly string[] {
  const of = pair === null ? subject : `${pair.tag} (jack ${pair.jack}, gauge ${pair.gauge})`;
  if (force === null) return [`No number with ${of}`, ''];
  const wanted = `${significant(force.value, 5)} ${force.unit}`;
  if (outcome !== 'given' || reading === null) return [`No reading for ${wanted} with ${of}`, ''];
  if (readingToSet === null) {
    return [`${reading.value} ${reading.unit} means ${significant(force.value, 8)} ${force.unit} with ${of}`, ''];
  }
  return [`Set the gauge to ${readingToSet.value} ${readingToSet.unit}`, `for ${wanted} with ${of}`, ''];
}

function writeRounding({
  readingToSet,
  reading,
  forceAtReadingToSet: at,
  roundingError,
}: LookupAnswer): readonly string[] {
  if (readingToSet === null || reading === null) return [];
  const error =
    roundingError === null
      ? ''
      : `, ${writeSigned(roundingError.value)} ${roundingError.unit} (${writeSigned(roundingError.percent)} %) by rounding`;
  return [
    ...(at === null ? [] : [line('Force at that reading', `${significant(at.value, 5)} ${at.unit}${error}`)]),
    line('Unrounded reading', `${significant(reading.value, 7)} ${reading.unit}`),
  ];
}

/** Two significant digits with a sign, for errors. */
function writeSigned(value: number): string {
  return `${value > 0 ? '+' : ''}${significant(value, 2)}`;
}

function writeSureness({ forceInterval, settingInterval, uncertainty }: LookupAnswer): readonly string[] {
  const lines: string[] = [];
  const interval = settingInterval ?? forceInterval;
  if (interval !== null) {
    const { level, low, high, unit } = interval;
    const range = `${significant(low, 6)} to ${significant(high, 6)} ${unit}`;
    lines.push(line('Force interval', `${range} (${level * 100} %, one setting, scatter of the calibration)`));
  }
  if (uncertainty === null) return lines;
  const { expanded, k, unit, effectiveDegreesOfFreedom: nu, level, force } = uncertainty;
  const percent = significant((100 * expanded) / force, 2);
  lines.push(
    line(
      'Uncertainty U',
      `${significant(expanded, 2)} ${unit}, ${percent} % of force (${level * 100} %, k = ${k.toFixed(2)}, effective degrees of freedom ${nu === null ? 'infinite' : nu.toFixed(1)})`,
    ),
    ...writeBudget(uncertainty),
  );
  return lines;
}

function writeBudget({ contributions, combined, unit }: NonNullable<LookupAnswer['uncertainty']>): readonly string[] {
  const right = (title: string) => ({ title, align: 'right' as const });
  const left = (title: string) => ({ title, align: 'left' as const });
  const table = writeTable(
    [
      left('from'),
      left('type'),
      right('value'),
      right('divisor'),
      right(`${unit} per unit`),
      right(`u, ${unit}`),
      right('degrees'),
    ],
    [
      ...contributions.map((each) => [
        each.source.replaceAll('-', ' '),
        `${each.type}, ${each.distribution}`,
        `${significant(each.value, 3)} ${each.valueUnit}`,
        plain(each.divisor, 4),
        significant(each.sensitivity, 4),
        significant(each.standardUncertainty, 2),
        each.degreesOfFreedom === null ? 'infinite' : String(each.degreesOfFreedom),
      ]),
      ['combined u', '', '', '', '', significant(combined, 2), ''],
    ],
  );
  return table
    .trimEnd()
    .split('\n')
    .map((row) => `  ${row}`);
}

function writeGauge({ gaugeAccuracy, pair }: LookupAnswer): readonly string[] {
  if (gaugeAccuracy === null) return [];
  const { accuracyClass, standard, className, permittedError, partOfFullScale, dialWindow, isInDialWindow } =
    gaugeAccuracy;
  const tag = pair?.gauge ?? '';
  const name = standard === 'EN 837-1' ? `class ${className}` : `grade ${className}`;
  const truth =
    accuracyClass === null
      ? 'no accuracy class registered'
      : permittedError === null
        ? `"${accuracyClass}" is no class this program knows`
        : `${standard} ${name} permits ${plain(permittedError.value)} ${permittedError.unit} here, ${significant(permittedError.percentOfReading, 2)} % of the reading`;
  const window = `${plain(100 * dialWindow.low)} to ${plain(100 * dialWindow.high)} %`;
  return [
    line('Gauge', `${tag}: ${truth}`),
    below(
      `at ${significant(100 * partOfFullScale, 3)} % of full scale, ${isInDialWindow ? 'inside' : 'OUTSIDE'} the ${window} to work in`,
    ),
    below(
      `one graduation is ${significant(gaugeAccuracy.graduationPercent, 2)} % of the reading, the smallest step ${significant(gaugeAccuracy.stepPercent, 2)} %`,
    ),
  ];
}

function writeLimits({ preload, doNotExceed }: LookupAnswer): readonly string[] {
  const lines: string[] = [];
  if (preload !== null) {
    const { readingToSet: first, force: at } = preload;
    lines.push(line('Preload reading', `${first.value} ${first.unit} for ${significant(at.value, 4)} ${at.unit}`));
  }
  if (doNotExceed !== null) {
    const { reading: most, because } = doNotExceed;
    lines.push(line('Do not exceed', `${most.value} ${most.unit} (${because.replaceAll('-', ' ')})`));
  }
  return lines;
}

/** The lines on how the pair stands, the calibration and the day, which a table of readings has as well. */
export function writeBasis({
  standing,
  because,
  dueDate,
  calibration,
  asOf,
}: Pick<LookupAnswer, 'standing' | 'because' | 'dueDate' | 'calibration' | 'asOf'>): readonly string[] {
  const lines: string[] = [];
  if (standing !== null) {
    lines.push(line('Standing', `${standing}. ${because ?? ''}`), line('Due', dueDate ?? 'never calibrated'));
  }
  if (calibration !== null) {
    const { number, calibratedOn, loadCell, certificate, laboratory } = calibration;
    const traced = certificate === null ? 'no valid certificate' : `certificate ${certificate} of ${laboratory}`;
    lines.push(line('Rests on', `${number} of ${calibratedOn}, load cell ${loadCell}, ${traced}`));
  }
  return [...lines, line('As of', asOf)];
}

const weightWords = { refuse: 'REFUSED', stop: 'STOP', caution: 'Caution', note: 'Note' } as const;

function writeWarnings({ warnings, outcome }: LookupAnswer): readonly string[] {
  return [
    ...writeWarningLines(warnings),
    ...(outcome === 'withheld' ? ['The number is shown after a release: --release-by NAME --reason TEXT.'] : []),
  ];
}

export function writeWarningLines(warnings: LookupAnswer['warnings']): readonly string[] {
  return warnings.map(({ weight, message }) => `${weightWords[weight]}: ${message}`);
}
