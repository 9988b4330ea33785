// The catalogue of the pages used at a desk, with everything of words.ts. Apart from it, so that the crew's page stays small.

import { account } from './en-US/account.ts';
import { backup } from './en-US/backup.ts';
import { calibrate } from './en-US/calibrate.ts';
import { charts } from './en-US/charts.ts';
import { doubt } from './en-US/doubt.ts';
import { drift } from './en-US/drift.ts';
import { equipment } from './en-US/equipment.ts';
import { figures } from './en-US/figures.ts';
import { ledger } from './en-US/ledger.ts';
import { openPlant } from './en-US/open-plant.ts';
import { part } from './en-US/part.ts';
import { people } from './en-US/people.ts';
import { review } from './en-US/review.ts';
import { rules } from './en-US/rules.ts';
import { traceability } from './en-US/traceability.ts';
import { whatsDue } from './en-US/whats-due.ts';
import { words as everywhere } from './words.ts';

export const words = {
  ...everywhere,
  account,
  backup,
  calibrate,
  charts,
  doubt,
  drift,
  equipment,
  figures,
  ledger,
  openPlant,
  part,
  people,
  review,
  rules,
  traceability,
  whatsDue,
};
