// The rules: those in force, those that come with the program, and setting them.

import { problemAnswer } from '../../contract/problem.ts';
import { rulesAnswer, rulesBody } from '../../contract/rules.ts';
import { listRules } from '../../service/list-rules.ts';
import type { Plant } from '../../service/plant.ts';
import { setRules } from '../../service/set-rules.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

export function rulesRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/rules',
    { schema: { summary: 'The rules in force, and the profiles to start from', response: { 200: rulesAnswer } } },
    async (_request, reply) => {
      const refreshed = await plant.refresh();
      return refreshed.ok ? reply.send(listRules(plant)) : sendProblem(reply, refreshed.problem);
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
