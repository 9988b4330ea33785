// Records of stressed beds: sending one, listing them, one with its findings, one as CSV.

import { z } from 'zod';
import { asOfQuery } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { stressingBody } from '../../contract/stressing.ts';
import { stressingAnswer, stressingListAnswer, stressingQuery } from '../../contract/stressing-answer.ts';
import { findStressing } from '../../service/find-record.ts';
import type { Plant } from '../../service/plant.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { recordStressing } from '../../service/record-stressing.ts';
import { listStressings, showStressing, writeStressing } from '../../service/show-stressing.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const params = z.object({ number: z.string().max(60) });
const failures = { '4xx': problemAnswer };

export function stressingRoutes(app: App, plant: Plant): void {
  app.post(
    '/api/stressing-records',
    {
      schema: {
        summary: 'Record a stressed bed, every pull with its gauge force by the calibration in force',
        body: stressingBody,
        response: { 201: stressingAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await recordStressing(plant, request.body, by), 201);
    },
  );

  app.get(
    '/api/stressing-records',
    {
      schema: {
        summary: 'Records of stressed beds, the latest day first',
        querystring: stressingQuery.extend(asOfQuery.shape),
        response: { 200: stressingListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const { asOf, ...query } = request.query;
      const reader = await plantAsOf(plant, asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      const records = listStressings(reader.value, query);
      return records.ok ? reply.send({ records: records.value }) : sendProblem(reply, records.problem);
    },
  );

  app.get(
    '/api/stressing-records/:number',
    { schema: { summary: 'One record with its findings', params, response: { 200: stressingAnswer, ...failures } } },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const recorded = findStressing(plant.state, request.params.number);
      return sendOutcome(reply, recorded.ok ? showStressing(plant, recorded.value) : recorded);
    },
  );

  app.get(
    '/api/stressing-records/:number.csv',
    { schema: { summary: 'One record as CSV', params } },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const recorded = findStressing(plant.state, request.params.number);
      if (!recorded.ok) return sendProblem(reply, recorded.problem);
      const written = writeStressing(plant, recorded.value);
      if (!written.ok) return sendProblem(reply, written.problem);
      return reply
        .header('content-disposition', `attachment; filename="${recorded.value.number}.csv"`)
        .type('text/csv; charset=utf-8')
        .serializer(String)
        .send(written.value);
    },
  );
}
