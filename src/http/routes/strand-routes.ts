// The strands of a plant: the table to choose from, and filing its own sizes and its reels.

import { strandListAnswer } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { filedReelAnswer, filedReelBody, filedStrandAnswer, filedStrandBody } from '../../contract/strand.ts';
import { fileReel, fileStrand } from '../../service/file-strand.ts';
import { listStrands } from '../../service/list-strands.ts';
import type { Plant } from '../../service/plant.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };

export function strandRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/strands',
    {
      schema: {
        summary: 'The strand table with the sizes and reels of the plant',
        response: { 200: strandListAnswer },
      },
    },
    async (_request, reply) => reply.send(listStrands(plant)),
  );

  app.post(
    '/api/strands',
    {
      schema: {
        summary: "File a size of strand of the plant's own",
        body: filedStrandBody,
        response: { 201: filedStrandAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await fileStrand(plant, request.body, by), 201);
    },
  );

  app.post(
    '/api/reels',
    {
      schema: {
        summary: 'File a reel of strand with its mill certificate',
        body: filedReelBody,
        response: { 201: filedReelAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await fileReel(plant, request.body, by), 201);
    },
  );
}
