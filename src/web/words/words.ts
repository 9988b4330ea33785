// The catalogue of the texts around every page and of the crew's; all others are in desk-words.ts. Another language is a twin folder of en-US with the same names.

import { app } from './en-US/app.ts';
import { dial } from './en-US/dial.ts';
import { problems } from './en-US/problems.ts';
import { setTheGauge } from './en-US/set-the-gauge.ts';
import { signIn } from './en-US/sign-in.ts';

export const words = { app, dial, problems, setTheGauge, signIn };
export type Words = typeof words;
