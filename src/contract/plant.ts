// The plant as a whole: what every page says at its top, its strands, signing in. What falls due is in due.ts, the ledger in
// ledger.ts.

import { z } from 'zod';
import { roles } from '../domain/rules/role.ts';
import { ruleProfileAnswer } from './rule-profile.ts';
import { plainLine, plantDay } from './typed-text.ts';

export const plantAnswer = z.object({
  opened: z.boolean().describe('false while the ledger is empty and waits for the one-time code'),
  name: z.string(),
  sample: z.boolean(),
  today: z.string(),
  timeZone: z.string(),
  rules: ruleProfileAnswer.describe('The rule profile in force'),
  head: z.object({ seq: z.number().int(), hash: z.string() }),
  shortHead: z.string().describe('The head as it goes on paper'),
  lastBackup: z
    .object({ file: z.string(), at: z.string(), ageHours: z.number(), seq: z.number().int() })
    .nullable()
    .describe('The last backup the ledger knows of, up to which entry; null when there is none'),
});
export type PlantAnswer = z.infer<typeof plantAnswer>;

const person = z.object({
  id: z.string(),
  name: z.string(),
  role: z.enum(roles),
  barred: z
    .object({ by: z.string(), at: z.string(), reason: z.string() })
    .optional()
    .describe('Since when the person cannot sign in, and why'),
});

/** On the sample plant the sign-in page lists the people and the password they all share; a real plant lists nobody. */
export const peopleAnswer = z.object({
  people: z.array(person),
  samplePassword: z.string().nullable(),
});

export const signInBody = z.object({
  person: z.string('Who signs in').trim().min(1, 'Who signs in').max(60),
  password: z.string('The password').min(1, 'The password').max(200),
  oneTimePassword: z.string('The six digits of the authenticator').max(20).optional(),
});

export const sessionAnswer = z.object({ person: person.nullable() });
export type SessionAnswer = z.infer<typeof sessionAnswer>;

/** `asOf`: the plant as it was at the end of that day, by what was known then. */
export const asOfQuery = z.object({
  asOf: plantDay.optional().describe('The plant as it was at the end of that day, by what was known then'),
});

export const strandListAnswer = z.object({
  strands: z.array(
    z.object({
      designation: z.string(),
      standard: z.string(),
      breakingLoad: z.object({
        lbf: z.number().nullable().describe('Null where the standard has no column in inches and pounds'),
        kN: z.number(),
      }),
      provenance: z.string(),
    }),
  ),
});
export type StrandListAnswer = z.infer<typeof strandListAnswer>;

/** The sheet a pasted or chosen file holds, read by the same code as `jackledger import`. */
export const readSheetBody = z.object({ text: z.string().max(1_000_000) });

export const personId = z
  .string('A sign-in name')
  .regex(/^[a-z][a-z0-9.-]{1,39}$/, 'A sign-in name of 2 to 40 lower-case letters, digits, dots or hyphens');
export const newPassword = z.string('A password').min(12, 'A password of at least 12 characters').max(200);
export const personName = plainLine('The name of the person', 80).min(2, 'The name of the person');

export const personBody = z.object({
  id: personId,
  name: personName,
  role: z.enum(roles, 'One of the roles'),
  password: newPassword,
});

/** Whether the name is of a time zone, under any of its names: the list of the runtime leaves out most of them. */
function isTimeZone(name: string): boolean {
  if (!/^[A-Za-z][\w+/-]*$/.test(name)) return false;
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
}

export const openingBody = z.object({
  code: z.string('The code printed in the terminal').min(1, 'The code printed in the terminal').max(80),
  plantName: plainLine('The name of the plant', 120).min(2, 'The name of the plant'),
  timeZone: z.string('The time zone of the plant').refine(isTimeZone, 'An IANA time zone such as America/Chicago'),
  administrator: z.strictObject({ id: personId, name: personName, password: newPassword }),
});

export const personAnswer = person;
