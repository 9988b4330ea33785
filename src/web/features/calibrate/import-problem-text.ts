// Why a file was not imported: where it is, what is wrong there, what was needed and what was given.

import type { Problem } from '../../../domain/problem.ts';
import { words } from '../../words/desk-words.ts';

/** A fact the sentence itself states already is not said twice. */
export function importProblemText({ message, where, needed, given }: Problem): string {
  const { calibrate } = words;
  const isSaid = (fact: string): boolean => message.toLowerCase().includes(fact.toLowerCase());
  return [
    ...(where === undefined || isSaid(where) ? [] : [calibrate.importWhere(where)]),
    message,
    ...(needed === undefined || isSaid(needed) ? [] : [calibrate.importNeeded(needed.replace(/\.$/, ''))]),
    ...(given === undefined || (given !== '' && isSaid(`"${given}"`))
      ? []
      : [given.trim() === '' ? calibrate.importGivenBlank : calibrate.importGiven(given)]),
  ].join(' ');
}
