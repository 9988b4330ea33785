// Los textos alrededor de cada página y los de la cuadrilla, reunidos. Los del escritorio están en at-the-desk.ts.

import { app } from './app.ts';
import { dial } from './dial.ts';
import { problems } from './problems.ts';
import { sentences } from './sentences.ts';
import { setTheGauge } from './set-the-gauge.ts';
import { signIn } from './sign-in.ts';

export const everywhere = { app, dial, problems, sentences, setTheGauge, signIn };
