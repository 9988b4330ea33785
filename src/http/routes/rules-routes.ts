// The rules: those in force, those that come with the program, and setting them.

import { asOfQuery } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { rulesAnswer, rulesBody } from '../../contract/rules.ts';
import { listRules } from '../../service/list-rules.ts';
import type { Plant } from '../../service/plant.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { setRules } from '../../service/set-rules.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

export function rulesRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/rules',
    {
      schema: {
        summary: 'The rules in force, and the profiles to start from',
        querystring: asOfQuery,
        response: { 200: rulesAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      return reader.ok ? reply.send(listRules(reader.value)) : sendProblem(reply, reader.problem);
    },
  );

  app.post(
    '/api/rules',
    {
      schema: {
        summary: 'Set the rules, each changed limit with where it comes from',
        body: rulesBody,
        response: { 201: rulesAnswer, '4xx': problemAnswer },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await setRules(plant, request.body, by), 201);
    },
  );
}
