// The English texts around every page and of the crew's, gathered. Those of the desk are in at-the-desk.ts.

import { app } from './app.ts';
import { dial } from './dial.ts';
import { problems } from './problems.ts';
import { sentences } from './sentences.ts';
import { setTheGauge } from './set-the-gauge.ts';
import { signIn } from './sign-in.ts';

export const everywhere = { app, dial, problems, sentences, setTheGauge, signIn };
