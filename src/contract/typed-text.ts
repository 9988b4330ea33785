// Text a person types that must be of one form: a tag, one line, a day. Quantities are in quantity.ts.

import { z } from 'zod';
import { parsePlantDay } from '../domain/dates/plant-day.ts';

const tagWords = 'A tag of 1 to 40 Latin letters, digits, dots, hyphens or slashes';

/** Wide and narrow forms of a letter are one letter, and letters of other scripts that look alike are refused. */
export const tag = z
  .string(tagWords)
  .trim()
  .normalize('NFKC')
  .min(1, tagWords)
  .max(40, tagWords)
  .regex(/^[\p{Script=Latin}\d][\p{Script=Latin}\d._/-]*$/u, tagWords);

/** One line of text a person typed: no control characters, nothing that turns the direction of writing. */
export const plainLine = (words: string, most: number) =>
  z
    .string(words)
    .trim()
    .max(most, `${words}, at most ${most} characters`)
    .regex(/^\P{C}*$/u, `${words}, without control characters`);

/** Text of several lines a person typed, under the same bounds but for line breaks and tabs. */
export const plainText = (words: string, most: number) =>
  z
    .string(words)
    .max(most, `${words}, at most ${most} characters`)
    .regex(/^(?:\P{C}|[\n\r\t])*$/u, `${words}, without control characters`);

const reasonWords = 'A reason of at least five characters';

/** Why something is done: a line with three letters or digits that show, since some letters are blank on the page. */
export const reasonLine = plainLine('A reason', 500)
  .min(5, reasonWords)
  .regex(/(?:(?![\u115f\u1160\u3164\uffa0])[\p{L}\p{N}].*){3}/u, reasonWords);

const dayWords = 'A day that exists, written YYYY-MM-DD';
export const plantDay = z
  .string(dayWords)
  .trim()
  .refine((text) => parsePlantDay(text).ok, dayWords);
