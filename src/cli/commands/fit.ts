// jackledger fit: a run sheet to its curve, residuals, levels, checks and acceptance.

import { readRunSheet } from '../../contract/read-run-sheet.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { findProfile } from '../../service/find-profile.ts';
import { fitContext, fitSheet } from '../../service/fit-sheet.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { writeFitText } from '../write-fit-text.ts';

const usage =
  'jackledger fit SHEET [--degree 1|2|3|auto] [--set force|reading] [--rules NAME] [--ledger FILE] [--strict] [--json]';

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
        rules: { type: 'string' },
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
    const profile = values.rules === undefined ? null : findProfile(values.rules, '--rules');
    if (profile !== null && !profile.ok) return profile;
    const text = context.readFile(positionals[0] ?? '');
    if (!text.ok) return text;
    const sheet = readRunSheet(text.value);
    if (!sheet.ok) return sheet;
    const opened = await context.openPlant(values.ledger, 'read');
    if (!opened.ok) return opened;
    const { plant, close } = opened.value;
    const inPlant = fitContext(plant, sheet.value);
    const answer = fitSheet(sheet.value, options.value, { ...inPlant, rules: profile?.value ?? inPlant.rules });
    await close();
    if (!answer.ok) return answer;
    if (values.json) writeJson(context, answer.value);
    else context.write(writeFitText(answer.value, { ...sheet.value, file: positionals[0] ?? '' }));
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
