// The English texts of the pages used at a desk, gathered.

import { account } from './account.ts';
import { backup } from './backup.ts';
import { calibrate } from './calibrate.ts';
import { charts } from './charts.ts';
import { checks } from './checks.ts';
import { doubt } from './doubt.ts';
import { drift } from './drift.ts';
import { equipment } from './equipment.ts';
import { figures } from './figures.ts';
import { ledger } from './ledger.ts';
import { openPlant } from './open-plant.ts';
import { part } from './part.ts';
import { people } from './people.ts';
import { review } from './review.ts';
import { rules } from './rules.ts';
import { sentencesAtTheDesk } from './sentences-at-the-desk.ts';
import { strands } from './strands.ts';
import { stressing } from './stressing.ts';
import { traceability } from './traceability.ts';
import { whatsDue } from './whats-due.ts';

export const atTheDesk = {
  account,
  backup,
  calibrate,
  charts,
  checks,
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
  sentencesAtTheDesk,
  strands,
  stressing,
  traceability,
  whatsDue,
};
