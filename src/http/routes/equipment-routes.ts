// The register: parts, certificates and pairs.

import { z } from 'zod';
import { pairPageAnswer } from '../../contract/calibration.ts';
import { driftAnswer, driftQuery } from '../../contract/drift.ts';
import { pairListAnswer } from '../../contract/due.ts';
import {
  certificateAnswer,
  certificateBody,
  equipmentAnswer,
  gaugeAnswer,
  gaugeBody,
  jackAnswer,
  jackBody,
  loadCellAnswer,
  loadCellBody,
  pairBody,
  pairLine as pairLineAnswer,
  pumpAnswer,
  pumpBody,
  reasonBody,
} from '../../contract/equipment.ts';
import { partPageAnswer } from '../../contract/part-page.ts';
import { asOfQuery } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { type Outcome, succeed } from '../../domain/problem.ts';
import type { PairRecord, Person } from '../../ledger/plant-state.ts';
import { fileCertificate } from '../../service/file-certificate.ts';
import { formPair } from '../../service/form-pair.ts';
import { liftHold, placeHold } from '../../service/hold-pair.ts';
import { listEquipment } from '../../service/list-equipment.ts';
import { listPairs, pairLine } from '../../service/list-pairs.ts';
import { partPair } from '../../service/part-pair.ts';
import type { Plant, Retry } from '../../service/plant.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { type EquipmentInput, registerEquipment } from '../../service/register-equipment.ts';
import { showDrift } from '../../service/show-drift.ts';
import { showPair } from '../../service/show-pair.ts';
import { showPart } from '../../service/show-part.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const params = z.object({ tag: z.string().max(60) });
const failures = { '4xx': problemAnswer };

export function equipmentRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/equipment',
    {
      schema: {
        summary: 'The whole register',
        querystring: asOfQuery,
        response: { 200: equipmentAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      return reader.ok ? reply.send(listEquipment(reader.value)) : sendProblem(reply, reader.problem);
    },
  );

  app.get(
    '/api/equipment/:tag',
    {
      schema: {
        summary: 'The page of one part: as it stands, its earlier versions, certificates and entries',
        params,
        querystring: asOfQuery,
        response: { 200: partPageAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      return sendOutcome(reply, await showPart(reader.value, request.params.tag));
    },
  );

  app.get(
    '/api/pairs/:tag/drift',
    {
      schema: {
        summary: 'How a pair moved over its calibrations, with a forecast where the data carry one',
        params,
        querystring: driftQuery,
        response: { 200: driftAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      return sendOutcome(reply, showDrift(reader.value, request.params.tag, request.query.force));
    },
  );

  const kinds = [
    ['jacks', 'jack', jackBody, jackAnswer],
    ['gauges', 'gauge', gaugeBody, gaugeAnswer],
    ['pumps', 'pump', pumpBody, pumpAnswer],
    ['load-cells', 'load-cell', loadCellBody, loadCellAnswer],
  ] as const;
  for (const [path, kind, body, answer] of kinds) {
    app.post(
      `/api/${path}`,
      { schema: { summary: `Register a ${kind.replace('-', ' ')}`, body, response: { 201: answer, ...failures } } },
      async (request, reply) => {
        const person = await requirePerson(plant, request);
        if (!person.ok) return sendProblem(reply, person.problem);
        const input = { kind, ...(request.body as object) } as EquipmentInput;
        const by = { actor: person.value, retry: retryOf(request) };
        return sendOutcome(reply, await registerEquipment(plant, input, by), 201);
      },
    );
  }

  app.post(
    '/api/load-cells/:tag/certificates',
    {
      schema: {
        summary: 'File the certificate of a load cell',
        params,
        body: certificateBody,
        response: { 201: certificateAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await fileCertificate(plant, request.params.tag, request.body, by), 201);
    },
  );

  const asLine = (outcome: Outcome<PairRecord>) =>
    outcome.ok ? succeed(pairLine(plant, outcome.value, plant.today())) : outcome;

  app.post(
    '/api/pairs',
    { schema: { summary: 'Form a pair', body: pairBody, response: { 201: pairLineAnswer, ...failures } } },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, asLine(await formPair(plant, request.body, by)), 201);
    },
  );

  const changes: Readonly<
    Record<
      string,
      (tag: string, reason: string, by: { actor: Person; retry: Retry | null }) => Promise<Outcome<PairRecord>>
    >
  > = {
    parting: (tag, reason, by) => partPair(plant, tag, { reason }, by),
    hold: (tag, reason, by) => placeHold(plant, tag, reason, by),
    'hold-lifting': (tag, reason, by) => liftHold(plant, tag, reason, by),
  };
  for (const [path, change] of Object.entries(changes)) {
    app.post(
      `/api/pairs/:tag/${path}`,
      {
        schema: {
          summary: `${path.replace('-', ' ')} of a pair, with a reason`,
          params,
          body: reasonBody,
          response: { 200: pairLineAnswer, ...failures },
        },
      },
      async (request, reply) => {
        const person = await requirePerson(plant, request);
        if (!person.ok) return sendProblem(reply, person.problem);
        const by = { actor: person.value, retry: retryOf(request) };
        return sendOutcome(reply, asLine(await change(request.params.tag, request.body.reason, by)));
      },
    );
  }

  app.get(
    '/api/pairs',
    {
      schema: {
        summary: 'Every pair and how it stands',
        querystring: asOfQuery,
        response: { 200: pairListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      const asOf = reader.value.today();
      return reply.send({ asOf, pairs: [...listPairs(reader.value, asOf)] });
    },
  );

  app.get(
    '/api/pairs/:tag',
    {
      schema: {
        summary: 'The page of one pair',
        params,
        querystring: asOfQuery,
        response: { 200: pairPageAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      return sendOutcome(reply, await showPair(reader.value, request.params.tag));
    },
  );
}
