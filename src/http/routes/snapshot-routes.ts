// What a device takes along to answer look-ups without network.

import { snapshotAnswer, snapshotQuery } from '../../contract/plant-snapshot.ts';
import { problemAnswer } from '../../contract/problem.ts';
import type { Plant } from '../../service/plant.ts';
import { takeSnapshot } from '../../service/take-snapshot.ts';
import type { App } from '../app.ts';
import { sendProblem } from '../errors.ts';
import { pressReply } from '../press-reply.ts';

export function snapshotRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/snapshot',
    {
      onSend: pressReply,
      schema: {
        summary: 'All that look-ups rest on, for a device that answers them without network',
        querystring: snapshotQuery,
        response: { 200: snapshotAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      return reply.send(takeSnapshot(plant, request.query.known));
    },
  );
}
