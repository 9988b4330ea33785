// How the ledger is backed up, for people who have signed in.

import { backupsAnswer } from '../../contract/backup.ts';
import { problemAnswer } from '../../contract/problem.ts';
import type { Plant } from '../../service/plant.ts';
import { type BackupWatch, showBackups } from '../../service/show-backups.ts';
import type { App } from '../app.ts';
import { requirePerson } from '../current-person.ts';
import { sendProblem } from '../errors.ts';

export function backupRoutes(app: App, plant: Plant, watch: BackupWatch | null): void {
  app.get(
    '/api/backups',
    {
      schema: {
        summary: 'The last good backup, what came after it, and how the schedule of the server stands',
        response: { 200: backupsAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      return reply.send(showBackups(plant, watch));
    },
  );
}
