// Corrections: amending and withdrawing what the ledger holds, and taking parts out of use. Nothing is ever removed.

import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { calibrationAnswer } from '../../contract/calibration.ts';
import {
  certificateAmendmentBody,
  certificateWithdrawalBody,
  equipmentAmendmentBody,
  retirementAnswer,
  retirementBody,
} from '../../contract/correction.ts';
import {
  certificateAnswer,
  gaugeAnswer,
  jackAnswer,
  loadCellAnswer,
  pumpAnswer,
  reasonBody,
} from '../../contract/equipment.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { standardAnswer } from '../../contract/traceability.ts';
import { type Outcome, succeed } from '../../domain/problem.ts';
import { amendCertificate, withdrawCertificate } from '../../service/amend-certificate.ts';
import { amendEquipment } from '../../service/amend-equipment.ts';
import type { Actor } from '../../service/perform-action.ts';
import type { Plant, Retry } from '../../service/plant.ts';
import { retireEquipment } from '../../service/retire-equipment.ts';
import { showCalibration } from '../../service/show-calibration.ts';
import { withdrawCalibration } from '../../service/withdraw-calibration.ts';
import { withdrawStandard } from '../../service/withdraw-standard.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const tagParams = z.object({ tag: z.string().max(60) });
const certificateParams = tagParams.extend({ number: z.string().max(60) });
const numberParams = z.object({ number: z.string().max(60) });
const partAnswer = z.discriminatedUnion('kind', [jackAnswer, gaugeAnswer, pumpAnswer, loadCellAnswer]);
const failures = { '4xx': problemAnswer };

export function correctionRoutes(app: App, plant: Plant): void {
  async function byOf(
    request: FastifyRequest,
  ): Promise<Outcome<{ readonly actor: Actor; readonly retry: Retry | null }>> {
    const person = await requirePerson(plant, request);
    return person.ok ? succeed({ actor: person.value, retry: retryOf(request) }) : person;
  }

  app.post(
    '/api/equipment/:tag/amendment',
    {
      schema: {
        summary: 'Amend a part: the whole part as it should have been registered',
        params: tagParams,
        body: equipmentAmendmentBody,
        response: { 200: partAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const by = await byOf(request);
      if (!by.ok) return sendProblem(reply, by.problem);
      return sendOutcome(reply, await amendEquipment(plant, request.params.tag, request.body, by.value));
    },
  );

  app.post(
    '/api/equipment/:tag/retirement',
    {
      schema: {
        summary: 'Take a part out of use',
        params: tagParams,
        body: retirementBody,
        response: { 200: retirementAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const by = await byOf(request);
      if (!by.ok) return sendProblem(reply, by.problem);
      return sendOutcome(reply, await retireEquipment(plant, request.params.tag, request.body, by.value));
    },
  );

  app.post(
    '/api/load-cells/:tag/certificates/:number/amendment',
    {
      schema: {
        summary: 'Amend a certificate: the whole certificate as it should have been filed',
        params: certificateParams,
        body: certificateAmendmentBody,
        response: { 200: certificateAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const by = await byOf(request);
      if (!by.ok) return sendProblem(reply, by.problem);
      const { tag, number } = request.params;
      return sendOutcome(reply, await amendCertificate(plant, tag, number, request.body, by.value));
    },
  );

  app.post(
    '/api/load-cells/:tag/certificates/:number/withdrawal',
    {
      schema: {
        summary: 'Withdraw a certificate, from its last good day on or altogether',
        params: certificateParams,
        body: certificateWithdrawalBody,
        response: { 200: certificateAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const by = await byOf(request);
      if (!by.ok) return sendProblem(reply, by.problem);
      const { tag, number } = request.params;
      return sendOutcome(reply, await withdrawCertificate(plant, tag, number, request.body, by.value));
    },
  );

  app.post(
    '/api/standards/:number/withdrawal',
    {
      schema: {
        summary: 'Withdraw the certificate of a standard, from its last good day on or altogether',
        params: numberParams,
        body: certificateWithdrawalBody,
        response: { 200: standardAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const by = await byOf(request);
      if (!by.ok) return sendProblem(reply, by.problem);
      return sendOutcome(reply, await withdrawStandard(plant, request.params.number, request.body, by.value));
    },
  );

  app.post(
    '/api/calibrations/:number/withdrawal',
    {
      schema: {
        summary: 'Withdraw a calibration; the one before it is in force again',
        params: numberParams,
        body: reasonBody,
        response: { 200: calibrationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const by = await byOf(request);
      if (!by.ok) return sendProblem(reply, by.problem);
      const { number } = request.params;
      const withdrawn = await withdrawCalibration(plant, number, request.body.reason, by.value);
      return sendOutcome(reply, withdrawn.ok ? showCalibration(plant, withdrawn.value) : withdrawn);
    },
  );
}
