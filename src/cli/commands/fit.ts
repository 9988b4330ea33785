// jackledger fit: a run sheet to its curve, residuals, levels, checks and acceptance.

import type { FitAnswer } from '../../contract/fit.ts';
import { readRunSheet } from '../../contract/read-run-sheet.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { fitSheet } from '../../service/fit-sheet.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { fixed, significant, writeTable } from '../write-table.ts';

const usage = 'jackledger fit SHEET [--degree 1|2|3|auto] [--set force|reading] [--ledger FILE] [--strict] [--json]';

export const fitCommand: Command = {
  name: 'fit',
  usage,
  summary: 'Fit a run sheet: curve, residuals, levels, checks, acceptance.',
  async run(context, args) {
    const read = readArguments(
      usage,
      args,
      {
        degree: { type: 'string' },
        set: { type: 'string' },
        ledger: { type: 'string' },
        strict: { type: 'boolean' },
        json: { type: 'boolean' },
      },
      { least: 1, most: 1 },
    );
    if (!read.ok) return read;
    const { values, positionals } = read.value;
    const options = readFitOptions(values);
    if (!options.ok) return options;
    const text = context.readFile(positionals[0] ?? '');
    if (!text.ok) return text;
    const sheet = readRunSheet(text.value);
    if (!sheet.ok) return sheet;
    const opened = await context.openPlant(values.ledger, 'read');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    const today = plant.today();
    const answer = fitSheet(sheet.value, plant.state.rules, options.value, { today });
    await close();
    if (!answer.ok) return answer;
    if (values.json) writeJson(context, answer.value);
    else context.write(writeFitText(answer.value));
    return succeed(values.strict && answer.value.verdict !== 'pass' ? exitCodes.caution : exitCodes.done);
  },
};

/** Reads --degree and --set, which fit and lookup share. */
export function readFitOptions(values: {
  readonly degree?: string | undefined;
  readonly set?: string | undefined;
}): Outcome<{ readonly degree: 1 | 2 | 3 | 'auto'; readonly set: 'force' | 'reading' | undefined }> {
  const degrees = { '1': 1, '2': 2, '3': 3, auto: 'auto' } as const;
  const degree = values.degree ?? 'auto';
  if (!Object.hasOwn(degrees, degree)) {
    return fail('degree-not-supported', `A curve of degree "${degree}" is not fitted.`, {
      where: '--degree',
      needed: '1, 2, 3 or auto',
      given: degree,
    });
  }
  const { set } = values;
  if (set !== undefined && set !== 'force' && set !== 'reading') {
    return fail('field-invalid', `"${set}" cannot be what was set.`, {
      where: '--set',
      needed: 'force or reading',
      given: set,
    });
  }
  return succeed({ degree: degrees[degree as keyof typeof degrees], set });
}

function writeFitText({ units, curve, degrees, residuals, levels, checks, acceptance, verdict }: FitAnswer): string {
  const [of, on] = curve.response === 'reading' ? (['reading', 'force'] as const) : (['force', 'reading'] as const);
  const terms = curve.coefficients.map((value, power) => {
    const error = significant(curve.standardErrors[power] ?? 0, 2);
    const name = power === 0 ? 'constant' : power === 1 ? `per ${units[on]}` : `per ${units[on]}^${power}`;
    return [name, significant(value, 10), error];
  });
  const right = (title: string) => ({ title, align: 'right' as const });
  const left = (title: string) => ({ title, align: 'left' as const });
  const parts = [
    `Verdict: ${verdict}\n`,
    `Curve of ${of} (${units[of]}) on ${on} (${units[on]}), degree ${curve.degree}`,
    writeTable([left('term'), right(`coefficient, ${units[of]}`), right('standard error')], terms),
    `Residual standard deviation ${significant(curve.residualStandardDeviation, 4)} ${units[of]}, ${curve.degreesOfFreedom} degrees of freedom, R2 ${curve.rSquared.toFixed(7)}`,
    `Calibrated range ${significant(curve.forceRange.low, 6)} to ${significant(curve.forceRange.high, 6)} ${units.force}, ${significant(curve.readingRange.low, 6)} to ${significant(curve.readingRange.high, 6)} ${units.reading}\n`,
    'Degrees compared (F of the last term; raised only while it is significant at 5 %)',
    writeTable(
      [right('degree'), right(`residual sd, ${units[of]}`), right('F'), right('p'), left('rises strictly')],
      degrees.map((row) => [
        String(row.degree),
        significant(row.residualStandardDeviation, 4),
        row.fStatistic === null ? '-' : significant(row.fStatistic, 4),
        row.pValue === null ? '-' : row.pValue.toPrecision(2),
        row.strictlyIncreasing ? 'yes' : 'no',
      ]),
    ),
    'Levels',
    writeTable(
      [
        right(`force, ${units.force}`),
        right(`reading, ${units.reading}`),
        right('n'),
        right('accuracy, %'),
        right('repeatability, %'),
        right('reversibility, %'),
      ],
      levels.map((level) => [
        significant(level.force, 5),
        significant(level.reading, 5),
        String(level.count),
        fixed(level.accuracyErrorPercent, 2),
        fixed(level.repeatabilityPercent, 2),
        fixed(level.reversibilityPercent, 2),
      ]),
    ),
    'Residuals (observed less fitted)',
    writeTable(
      [
        right('cycle'),
        right('row'),
        right(`force, ${units.force}`),
        right(`reading, ${units.reading}`),
        right(`residual, ${units[of]}`),
        right('studentized'),
      ],
      residuals.map((row) => [
        String(row.cycle + 1),
        String(row.row + 1),
        String(row.force),
        String(row.reading),
        significant(row.residual, 3),
        fixed(row.studentized, 2),
      ]),
    ),
    'Acceptance',
    ...acceptance.map((result) => `  ${result.verdict.padEnd(11)} ${result.message} (${result.basis})`),
    '',
    checks.length === 0 ? 'Nothing in the sheet looks wrong.' : 'Look at:',
    ...checks.map((check) => `  ${check.weight.padEnd(6)} ${check.message}`),
  ];
  return `${parts.join('\n')}\n`;
}
