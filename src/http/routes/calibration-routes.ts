// Fitting, submitting, reviewing and deciding calibrations.

import { z } from 'zod';
import { approvalBody, calibrationAnswer, calibrationListAnswer, submissionBody } from '../../contract/calibration.ts';
import { reasonBody } from '../../contract/equipment.ts';
import { fitAnswer, fitBody } from '../../contract/fit.ts';
import { asOfQuery, readSheetBody } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { readRunSheet } from '../../contract/read-run-sheet.ts';
import { readRunSheetBody, runSheetBody } from '../../contract/run-sheet-json.ts';
import type { Outcome } from '../../domain/problem.ts';
import type { CalibrationRecord } from '../../ledger/plant-state.ts';
import { approveCalibration, rejectCalibration } from '../../service/decide-calibration.ts';
import { findCalibration } from '../../service/find-record.ts';
import { fitContext, fitSheet } from '../../service/fit-sheet.ts';
import { checkRole } from '../../service/perform-action.ts';
import type { Plant } from '../../service/plant.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { recordRun } from '../../service/record-run.ts';
import { listCalibrations, showCalibration } from '../../service/show-calibration.ts';
import { confirmPassword } from '../../service/sign-in.ts';
import type { SignInThrottle } from '../../service/sign-in-throttle.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const params = z.object({ number: z.string().max(60) });
const failures = { '4xx': problemAnswer };

export function calibrationRoutes(app: App, plant: Plant, throttle: SignInThrottle): void {
  app.post(
    '/api/run-sheets/reading',
    {
      schema: {
        summary: 'Read the text of a CSV or JSON file as a run sheet',
        body: readSheetBody,
        response: { 200: runSheetBody, ...failures },
      },
    },
    async (request, reply) => sendOutcome(reply, readRunSheet(request.body.text)),
  );

  app.post(
    '/api/fit',
    {
      schema: {
        summary: 'Fit a run sheet; nothing is stored',
        body: fitBody,
        response: { 200: fitAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const sheet = readRunSheetBody(request.body.sheet);
      if (!sheet.ok) return sendProblem(reply, sheet.problem);
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const { degree, set } = request.body;
      const context = fitContext(plant, sheet.value);
      return sendOutcome(reply, fitSheet(sheet.value, { degree, set }, context));
    },
  );

  const shown = (outcome: Outcome<CalibrationRecord>) => (outcome.ok ? showCalibration(plant, outcome.value) : outcome);

  app.post(
    '/api/calibrations',
    {
      schema: {
        summary: 'Submit a calibration',
        body: submissionBody,
        response: { 201: calibrationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const sheet = readRunSheetBody(request.body.sheet);
      if (!sheet.ok) return sendProblem(reply, sheet.problem);
      const { degree, degreeReason } = request.body;
      const by = { actor: person.value, retry: retryOf(request) };
      const recorded = await recordRun(plant, { sheet: sheet.value, degree, degreeReason }, by);
      return sendOutcome(reply, shown(recorded), 201);
    },
  );

  app.get(
    '/api/calibrations',
    {
      schema: {
        summary: 'Calibrations, newest entry first',
        querystring: asOfQuery.extend({
          status: z.enum(['submitted', 'approved', 'rejected', 'withdrawn']).optional(),
        }),
        response: { 200: calibrationListAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      return reply.send({ calibrations: [...listCalibrations(reader.value, request.query.status ?? null)] });
    },
  );

  app.get(
    '/api/calibrations/:number',
    {
      schema: {
        summary: 'One calibration',
        params,
        querystring: asOfQuery,
        response: { 200: calibrationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      const record = findCalibration(reader.value.state, request.params.number);
      return sendOutcome(reply, record.ok ? showCalibration(reader.value, record.value) : record);
    },
  );

  app.post(
    '/api/calibrations/:number/approval',
    {
      schema: {
        summary: 'Approve exactly what was reviewed, signed with the password',
        params,
        body: approvalBody,
        response: { 200: calibrationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const allowed = checkRole(person.value, 'approve-calibration');
      if (!allowed.ok) return sendProblem(reply, allowed.problem);
      const { password = '', ...approval } = request.body;
      const tries = { throttle, address: request.ip };
      const confirmed = await confirmPassword(plant, person.value, password, tries);
      if (!confirmed.ok) return sendProblem(reply, confirmed.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, shown(await approveCalibration(plant, request.params.number, approval, by)));
    },
  );

  app.post(
    '/api/calibrations/:number/rejection',
    {
      schema: {
        summary: 'Reject a calibration with a reason',
        params,
        body: reasonBody,
        response: { 200: calibrationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, shown(await rejectCalibration(plant, request.params.number, request.body.reason, by)));
    },
  );
}
