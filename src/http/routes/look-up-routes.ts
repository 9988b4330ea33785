// Look-ups, tables of readings and releases of one pair.

import { z } from 'zod';
import { lookupAnswer, lookupQuery, releaseBody } from '../../contract/lookup.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { readingsAnswer, readingsQuery } from '../../contract/readings-table.ts';
import { listReadings } from '../../service/list-readings.ts';
import { lookUpPair } from '../../service/look-up.ts';
import type { Plant } from '../../service/plant.ts';
import { releaseReading } from '../../service/release-reading.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendProblem, sendWritten, writeLookup } from '../errors.ts';

const params = z.object({ tag: z.string().max(60) });

export function lookUpRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/pairs/:tag/lookup',
    {
      schema: {
        summary: 'The reading to set for a force, or the force behind a reading',
        params,
        querystring: lookupQuery,
        response: { 200: lookupAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const { tag } = request.params;
      // Pages ask the same again every minute; the answer stands until the next entry or the next day.
      const key = JSON.stringify([plant.today(), tag, request.query]);
      const answer = () => writeLookup(lookUpPair(plant, tag, request.query, null));
      return sendWritten(reply, plant.untilNextEntry('look-ups', key, answer));
    },
  );

  app.get(
    '/api/pairs/:tag/readings',
    {
      schema: {
        summary: 'The readings to set over a range of forces, from the calibrated range unless asked otherwise',
        params,
        querystring: readingsQuery,
        response: { 200: readingsAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      return sendWritten(reply, writeLookup(listReadings(plant, request.params.tag, request.query)));
    },
  );

  app.post(
    '/api/pairs/:tag/releases',
    {
      schema: {
        summary: 'Show a withheld reading in the name of the person signed in, with a reason; the release is recorded',
        params,
        body: releaseBody,
        response: { 200: lookupAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const { reason, ...query } = request.body;
      const { name } = person.value;
      const by = { actor: person.value, retry: retryOf(request) };
      const released = await releaseReading(plant, request.params.tag, { name, reason, query }, by);
      return sendWritten(reply, writeLookup(released));
    },
  );
}
