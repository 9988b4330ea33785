// The report of `jackledger fit` for people: what was judged by what, verdict, curve, degrees, levels, uncertainty, residuals.

import type { FitAnswer } from '../contract/fit.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import { fixed, significant, writeTable } from './write-table.ts';

/** What the report names of the sheet beside its figures. */
export interface SheetIdentity extends Pick<RunSheet, 'cycles' | 'calibratedOn' | 'loading' | 'temperatureCelsius'> {
  readonly file: string;
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`;

const right = (title: string) => ({ title, align: 'right' as const });
const left = (title: string) => ({ title, align: 'left' as const });

/** Widest line of running text. */
const lineWidth = 110;

/** Answers the whole report, each part under its heading. */
export function writeFitText(answer: FitAnswer, sheet: SheetIdentity): string {
  const parts = [
    writeHead(answer, sheet),
    writeAcceptance(answer),
    writeChecks(answer),
    writeCurve(answer),
    writeDegrees(answer),
    writeLevels(answer),
    writeErrors(answer),
    writeUncertainty(answer),
    writeResiduals(answer),
    writeNotes(answer),
  ];
  return parts.join('\n');
}

const verdictWords: Readonly<Record<FitAnswer['verdict'], string>> = {
  pass: 'PASS',
  'conditional-pass': 'CONDITIONAL PASS',
  'conditional-fail': 'CONDITIONAL FAIL',
  fail: 'FAIL',
  'not-judged': 'not judged',
};

/** The verdict with what it does not cover: rules that could not be judged, and errors of the sheet itself. */
function writeVerdict({ verdict, acceptance, checks }: FitAnswer): string {
  const open = acceptance
    .filter((result) => result.verdict === 'not-judged')
    .map(({ rule }) => rule.replaceAll('-', ' '));
  const errors = checks.filter(({ weight }) => weight === 'error').length;
  return [
    verdictWords[verdict],
    ...(open.length === 0 ? [] : [`as far as it is judged; not judged: ${open.join(', ')}`]),
    ...(errors === 0
      ? []
      : [`\nNot to be signed before ${count(errors, 'error')} below ${errors === 1 ? 'is' : 'are'} looked into`]),
  ]
    .join(', ')
    .replace(', \n', '\n');
}

function writeHead(answer: FitAnswer, sheet: SheetIdentity): string {
  const { rules, parts, residuals } = answer;
  const { pair, jack, pistonArea, gauge, step, loadCell, cellCapacity, certificate, traceableTo } = parts;
  const { certificateUncertainty } = parts;
  const capacity = cellCapacity === null ? '' : `, capacity ${cellCapacity.value} ${cellCapacity.unit}`;
  const known = (label: string, text: string | null): readonly string[] =>
    text === null ? [] : [`${label.padEnd(15)}${text}`];
  const area = pistonArea === null ? '' : `, nominal piston area ${pistonArea.value} ${pistonArea.unit}`;
  const stepSize = `${Number(step.value.toPrecision(6))} ${step.unit}`;
  const cell =
    loadCell === null
      ? 'not known: its uncertainty is not in the figures below'
      : certificate === null
        ? `${loadCell}${capacity}, ${sheet.calibratedOn === undefined ? 'its certificate is not known without the day' : 'no certificate valid on the day'}`
        : `${loadCell}${capacity}, certificate ${certificate}, traceable to ${traceableTo}`;
  return [
    `Verdict: ${writeVerdict(answer)}`,
    '',
    ...known(
      'Run sheet',
      `${sheet.file}, ${count(sheet.cycles.length, 'cycle')}, ${count(residuals.length, 'point')} fitted`,
    ),
    ...known('Calibrated on', sheet.calibratedOn ?? 'day not given'),
    ...known('Judged by', `${rules.title} (${rules.name})`),
    ...known('Pair', pair),
    ...known('Jack', jack === null ? null : `${jack}${area}`),
    ...known(
      'Gauge',
      gauge === null ? `not known; readings written to steps of ${stepSize}` : `${gauge}, smallest step ${stepSize}`,
    ),
    ...known('Load cell', cell),
    ...known('Certificate', certificateUncertainty === null ? null : writeCertificate(certificateUncertainty)),
    ...known('Set-up', sheet.loading === undefined ? null : setUpWords[sheet.loading]),
    ...known('Temperature', sheet.temperatureCelsius === undefined ? null : `${sheet.temperatureCelsius} C`),
    '',
  ].join('\n');
}

const setUpWords = { active: 'the jack pushed the load cell', passive: 'a machine pushed the jack' } as const;

function writeCertificate({ expandedPercent, k }: NonNullable<FitAnswer['parts']['certificateUncertainty']>): string {
  return `U = ${expandedPercent} % of force, k = ${k}`;
}

function writeAcceptance({ acceptance }: FitAnswer): string {
  const lines = acceptance.flatMap(({ verdict, message, basis, probability }) => [
    ...wrap(`${verdictWords[verdict].toLowerCase().padEnd(18)}${message}${writeProbability(probability)}`, 18),
    ...wrap(`${' '.repeat(18)}Limit: ${basis}.`, 18),
  ]);
  return `Acceptance\n${lines.map((line) => `  ${line}\n`).join('')}`;
}

function writeProbability(probability: number | null): string {
  if (probability === null) return '';
  const words = probability > 0.9999 ? 'more than 99.99' : significant(100 * probability, 4);
  return ` Probability that the limit is held: ${words} %.`;
}

function writeChecks({ checks }: FitAnswer): string {
  if (checks.length === 0) return 'Nothing in the sheet looks wrong.\n';
  const lines = checks.flatMap(({ weight, message }) => wrap(`${weight.padEnd(7)}${message}`, 7));
  return `Look at\n${lines.map((line) => `  ${line}\n`).join('')}`;
}

function writeCurve({ curve, units }: FitAnswer): string {
  const [of, on] = curve.response === 'reading' ? (['reading', 'force'] as const) : (['force', 'reading'] as const);
  const symbol = { reading: 'p', force: 'F' };
  const terms = curve.coefficients.map((value, power) => {
    const unit = power === 0 ? units[of] : `${units[of]}/${units[on]}${power === 1 ? '' : `^${power}`}`;
    return [`a${power}`, significant(value, 10), significant(curve.standardErrors[power] ?? 0, 2), unit];
  });
  const formula = curve.coefficients
    .map((_, power) => (power === 0 ? 'a0' : `a${power} ${symbol[on]}${power === 1 ? '' : `^${power}`}`))
    .join(' + ');
  const { forceRange, readingRange, lackOfFit } = curve;
  const fit =
    lackOfFit === null
      ? 'Lack of fit is not tested: that needs levels met again at the very same setting, more levels than coefficients, and cycles that do not agree exactly.'
      : `Lack of fit F = ${significant(lackOfFit.fStatistic, 4)} with ${lackOfFit.numeratorDegrees} and ${lackOfFit.denominatorDegrees} degrees of freedom, p = ${lackOfFit.pValue.toPrecision(2)}: ${
          lackOfFit.pValue < 0.05
            ? 'the level means miss the curve by more than the cycles scatter.'
            : 'the level means lie as near the curve as the cycles scatter.'
        }`;
  return [
    `Curve, degree ${curve.degree}: ${symbol[of]} = ${formula}, ${symbol[of]} = ${of} in ${units[of]}, ${symbol[on]} = ${on} in ${units[on]}`,
    `Least squares of the observed ${of} on the set ${on}, rising points above zero force, all cycles together`,
    writeTable([left('term'), right('coefficient'), right('standard error'), left('unit')], terms),
    `Residual standard deviation s = ${significant(curve.residualStandardDeviation, 4)} ${units[of]}, ${curve.degreesOfFreedom} degrees of freedom, R2 = ${curve.rSquared.toFixed(7)}`,
    fit,
    `Calibrated range ${plain(forceRange.low)} to ${plain(forceRange.high)} ${units.force}, ${plain(readingRange.low)} to ${plain(readingRange.high)} ${units.reading}; nothing is extrapolated`,
    '',
  ].join('\n');
}

function writeDegrees({ degrees, curve, units }: FitAnswer): string {
  const of = units[curve.response];
  const table = writeTable(
    [right('degree'), right(`s, ${of}`), right('degrees of freedom'), right('F'), right('p'), left('rises strictly')],
    degrees.map((row) => [
      String(row.degree),
      significant(row.residualStandardDeviation, 4),
      String(row.degreesOfFreedom),
      row.fStatistic === null ? '-' : significant(row.fStatistic, 4),
      row.pValue === null ? '-' : row.pValue.toPrecision(2),
      row.strictlyIncreasing ? 'yes' : 'no',
    ]),
  );
  return `Degrees compared: F of the last term; raised only while p is below 5 % and the curve rises strictly\n${table}`;
}

function writeLevels({ levels, units, curve }: FitAnswer): string {
  const observed = curve.response;
  const force = columnOf(levels.map((level) => level.force));
  const reading = columnOf(levels.map((level) => level.reading));
  const shown = observed === 'reading' ? reading : force;
  const cycles = [...new Set(levels.flatMap((level) => level.cycles.map(({ cycle }) => cycle)))].sort((a, b) => a - b);
  const table = writeTable(
    [
      right(`force, ${units.force}`),
      right(`reading, ${units.reading}`),
      right('points'),
      ...cycles.map((cycle) => right(`cycle ${cycle + 1}, ${units[observed]}`)),
      right(`curve, ${units[observed]}`),
      right('efficiency'),
    ],
    levels.map((level) => [
      force(level.force),
      reading(level.reading),
      String(level.count),
      ...cycles.map((cycle) => {
        const own = level.cycles.find((each) => each.cycle === cycle);
        return own === undefined ? '-' : shown(own[observed]);
      }),
      shown(level.fitted),
      fixed(level.loadEfficiency, 3),
    ]),
  );
  return `Averages per increment\n${table}`;
}

function writeErrors({ levels, units, curve, zeros, zeroErrorPercent, machineClassRanges }: FitAnswer): string {
  const force = columnOf(levels.map((level) => level.force));
  const table = writeTable(
    [
      right(`force, ${units.force}`),
      right('q, %'),
      right('U of q, %'),
      right('b, %'),
      right('v, %'),
      right('a, %'),
      left('class'),
      left('limited by'),
    ],
    levels.map((level) => [
      force(level.force),
      fixed(level.accuracyErrorPercent, 2),
      fixed(level.errorUncertaintyPercent, 2),
      fixed(level.repeatabilityPercent, 2),
      fixed(level.reversibilityPercent, 2),
      fixed(level.resolutionPercent, 2),
      level.machineClass.met ?? '-',
      level.machineClass.limitedBy ?? '',
    ]),
  );
  const set = units[curve.response === 'reading' ? 'force' : 'reading'];
  const ranges = machineClassRanges.map(
    ({ machineClass: name, from, to }) => `class ${name} from ${plain(from)} to ${plain(to)} ${set}`,
  );
  const notJudged = [...new Set(levels.flatMap((level) => level.machineClass.notJudged))];
  const zero =
    zeroErrorPercent === null
      ? 'f0 is not known: no point at zero force.'
      : `f0 = ${fixed(zeroErrorPercent, 2)} % of the largest force (${zeros.length} zero ${zeros.length === 1 ? 'check' : 'checks'}).`;
  return [
    'Errors after ISO 7500-1, in % of force: accuracy q, repeatability b, reversibility v, resolution a',
    table.trimEnd(),
    zero,
    ranges.length === 0 ? 'No class is held over more than the highest level.' : `Held: ${ranges.join('; ')}.`,
    ...(notJudged.length === 0 ? [] : [`Not measured at every level, and not judged there: ${notJudged.join(', ')}.`]),
    '',
  ].join('\n');
}

function writeUncertainty({ levels, units }: FitAnswer): string {
  const force = columnOf(levels.map(({ budget }) => budget.force));
  const sources = [...new Set(levels.flatMap((level) => level.budget.contributions.map(({ source }) => source)))];
  const table = writeTable(
    [
      right(`force, ${units.force}`),
      ...sources.map((source) => right(`u ${source.replaceAll('-', ' ')}`)),
      right('u'),
      right('degrees of freedom'),
      right('k'),
      right(`U, ${units.force}`),
      right('U, %'),
    ],
    levels.map(({ budget }) => [
      force(budget.force),
      ...sources.map((source) => {
        const line = budget.contributions.find((each) => each.source === source);
        return line === undefined ? '-' : significant(line.standardUncertainty, 2);
      }),
      significant(budget.combined, 2),
      budget.effectiveDegreesOfFreedom === null ? 'infinite' : budget.effectiveDegreesOfFreedom.toFixed(1),
      budget.k.toFixed(2),
      significant(budget.expanded, 2),
      significant((100 * budget.expanded) / budget.force, 2),
    ]),
  );
  const where =
    "The force is the curve's at the mean reading of the level. Drift since the calibration day is not in it; a look-up adds it.";
  return `Uncertainty of the force when the gauge is set once to a level, on the calibration day, 95 %, U = k u; all u in ${units.force}\n${where}\n${table}${writeBudget(levels.at(-1), units.force)}`;
}

/** The columns of the GUM for one level: what the row above is made of. */
function writeBudget(level: FitAnswer['levels'][number] | undefined, unit: string): string {
  if (level === undefined) return '';
  const { contributions, force } = level.budget;
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
    contributions.map((each) => [
      each.source.replaceAll('-', ' '),
      `${each.type}, ${each.distribution}`,
      `${significant(each.value, 3)} ${each.valueUnit}`,
      significant(each.divisor, 4),
      significant(each.sensitivity, 4),
      significant(each.standardUncertainty, 2),
      each.degreesOfFreedom === null ? 'infinite' : String(each.degreesOfFreedom),
    ]),
  );
  return `\nAt ${plain(force)} ${unit}:\n${table}`;
}

function writeResiduals({ residuals, units, curve }: FitAnswer): string {
  const table = writeTable(
    [
      right('cycle'),
      right('row'),
      right(`force, ${units.force}`),
      right(`reading, ${units.reading}`),
      right(`residual, ${units[curve.response]}`),
      right('studentized'),
      right('deleted'),
      right('leverage'),
      right("Cook's D"),
    ],
    residuals.map((row) => [
      String(row.cycle + 1),
      String(row.row + 1),
      String(row.force),
      String(row.reading),
      significant(row.residual, 3),
      fixed(row.studentized, 2),
      fixed(row.deletedStudentized, 2),
      fixed(row.leverage, 3),
      fixed(row.cooksDistance, 3),
    ]),
  );
  return `Residuals: observed less fitted; studentized by the whole fit, deleted by the fit without the point\n${table}`;
}

function writeNotes({ rules }: FitAnswer): string {
  const sources =
    'Least squares and the choice of degree after JCGM GUM-6; uncertainty after JCGM 100 (GUM), G.4 for the degrees of freedom; errors and class after ISO 7500-1, limits from memory; guard band after ILAC-G8 and JCGM 106. A pair that holds a class is not certified by that.';
  const caution =
    "The figures do not replace the project specification, local codes, the maker's instructions or the engineer in charge.";
  return `${[...wrap(`Rules "${rules.title}". ${sources}`, 0), ...wrap(caution, 0)].join('\n')}\n`;
}

/** Six significant digits at most, without zeros that say nothing. */
function plain(value: number): string {
  return String(Number(value.toPrecision(6)));
}

/** Writes the numbers of one column with the decimals that give the largest of them six digits, so that points align. */
function columnOf(values: readonly number[]): (value: number) => string {
  const largest = Math.max(...values.map(Math.abs));
  const decimals = largest > 0 ? Math.min(9, Math.max(0, 5 - Math.floor(Math.log10(largest)))) : 0;
  const needed = values.reduce((most, value) => Math.max(most, decimalsOf(Number(value.toFixed(decimals)))), 0);
  return (value) => value.toFixed(needed);
}

function decimalsOf(value: number): number {
  return String(value).split('.')[1]?.length ?? 0;
}

/** Breaks running text at blanks, never before a percent sign; lines after the first stand in by `indent`. */
function wrap(text: string, indent: number): readonly string[] {
  const lines: string[] = [];
  let rest = text;
  while (rest.length > lineWidth) {
    let at = rest.lastIndexOf(' ', lineWidth);
    if (rest[at + 1] === '%') at = rest.lastIndexOf(' ', at - 1);
    if (at <= indent) break;
    lines.push(rest.slice(0, at));
    rest = `${' '.repeat(indent)}${rest.slice(at + 1)}`;
  }
  return [...lines, rest];
}
