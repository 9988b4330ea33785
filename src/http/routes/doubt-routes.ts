// Calibrations in doubt and events of pairs: listing, clearing, reporting, settling.

import { z } from 'zod';
import { calibrationAnswer } from '../../contract/calibration.ts';
import { checkBody, checkListAnswer } from '../../contract/check.ts';
import { doubtClearanceBody, doubtListAnswer } from '../../contract/doubt.ts';
import { reasonBody } from '../../contract/equipment.ts';
import { eventBody, eventListAnswer } from '../../contract/event.ts';
import { asOfQuery } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { type Outcome, succeed } from '../../domain/problem.ts';
import type { PairRecord } from '../../ledger/plant-state.ts';
import { clearDoubt } from '../../service/clear-doubt.ts';
import { listDoubts } from '../../service/list-doubts.ts';
import type { Plant } from '../../service/plant.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { listChecks, recordCheck } from '../../service/record-check.ts';
import { listEvents, reportEvent, settleEvent } from '../../service/report-event.ts';
import { showCalibration } from '../../service/show-calibration.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const tagParams = z.object({ tag: z.string().max(60) });
const failures = { '4xx': problemAnswer };

export function doubtRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/doubts',
    {
      schema: {
        summary: 'Calibrations in doubt, those cleared too',
        querystring: asOfQuery,
        response: { 200: doubtListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      return reply.send(listDoubts(reader.value, reader.value.today()));
    },
  );

  app.post(
    '/api/calibrations/:number/clearances',
    {
      schema: {
        summary: 'Clear a doubt about a calibration with a reason',
        params: z.object({ number: z.string().max(60) }),
        body: doubtClearanceBody,
        response: { 200: calibrationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      const cleared = await clearDoubt(plant, request.params.number, request.body, by);
      return sendOutcome(reply, cleared.ok ? showCalibration(plant, cleared.value) : cleared);
    },
  );

  const eventsOf = (outcome: Outcome<PairRecord>) =>
    outcome.ok ? succeed({ events: [...listEvents(plant, outcome.value, plant.today())] }) : outcome;

  app.post(
    '/api/pairs/:tag/events',
    {
      schema: {
        summary: 'Report what happened to a pair',
        params: tagParams,
        body: eventBody,
        response: { 201: eventListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const { what, on = plant.today(), note } = request.body;
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, eventsOf(await reportEvent(plant, request.params.tag, { what, on, note }, by)), 201);
    },
  );

  app.post(
    '/api/pairs/:tag/checks',
    {
      schema: {
        summary: 'Record an interim check of a pair against a load cell',
        params: tagParams,
        body: checkBody,
        response: { 201: checkListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      const recorded = await recordCheck(plant, request.params.tag, request.body, by);
      if (!recorded.ok) return sendProblem(reply, recorded.problem);
      return sendOutcome(reply, succeed({ checks: listChecks(plant, recorded.value, plant.today()) }), 201);
    },
  );

  app.post(
    '/api/pairs/:tag/events/:seq/settlement',
    {
      schema: {
        summary: 'Settle an event with a reason',
        params: tagParams.extend({ seq: z.coerce.number().int().min(1) }),
        body: reasonBody,
        response: { 200: eventListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const { tag, seq } = request.params;
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, eventsOf(await settleEvent(plant, tag, { seq, reason: request.body.reason }, by)));
    },
  );
}
