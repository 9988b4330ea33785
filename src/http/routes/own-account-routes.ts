// What each person does to their own account: the password, and the second factor. Other people are in people-routes.ts.

import {
  doneAnswer,
  passwordBody,
  secondFactorAnswer,
  secondFactorBody,
  secondFactorConfirmationBody,
  secondFactorRemovalBody,
  secondFactorStateAnswer,
} from '../../contract/people.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { type Outcome, succeed } from '../../domain/problem.ts';
import { changePassword } from '../../service/change-password.ts';
import type { Plant } from '../../service/plant.ts';
import {
  checkSecondFactor,
  confirmSecondFactor,
  enrolSecondFactor,
  isSecondFactorInUse,
  removeSecondFactor,
} from '../../service/second-factor.ts';
import { confirmPassword } from '../../service/sign-in.ts';
import type { SignInThrottle } from '../../service/sign-in-throttle.ts';
import type { App } from '../app.ts';
import { requirePerson, sessionToken } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };
const done = (outcome: Outcome<unknown>): Outcome<{ done: true }> => (outcome.ok ? succeed({ done: true }) : outcome);

export function ownAccountRoutes(app: App, plant: Plant, throttle: SignInThrottle): void {
  app.post(
    '/api/password',
    {
      schema: {
        summary: 'Change one’s own password; every other session ends',
        body: passwordBody,
        response: { 200: doneAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const asked = { ...request.body, token: sessionToken(request) ?? '' };
      const tries = { throttle, address: request.ip };
      return sendOutcome(reply, done(await changePassword(plant, person.value, asked, tries)));
    },
  );

  app.get(
    '/api/second-factor',
    {
      schema: { summary: 'Whether a second factor is in use', response: { 200: secondFactorStateAnswer, ...failures } },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      return reply.send({ isInUse: await isSecondFactorInUse(plant, person.value.id) });
    },
  );

  app.post(
    '/api/second-factor',
    {
      schema: {
        summary: 'Begin with a second factor; its secret is shown this once',
        body: secondFactorBody,
        response: { 201: secondFactorAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const tries = { throttle, address: request.ip };
      const confirmed = await confirmPassword(plant, person.value, request.body.password, tries);
      if (!confirmed.ok) return sendProblem(reply, confirmed.problem);
      return sendOutcome(reply, await enrolSecondFactor(plant, person.value), 201);
    },
  );

  app.post(
    '/api/second-factor/confirmation',
    {
      schema: {
        summary: 'Take the second factor into use with its first one-time password',
        body: secondFactorConfirmationBody,
        response: { 200: doneAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const tries = { throttle, address: request.ip };
      const { oneTimePassword } = request.body;
      return sendOutcome(reply, done(await confirmSecondFactor(plant, person.value, oneTimePassword, tries)));
    },
  );

  app.post(
    '/api/second-factor/removal',
    {
      schema: {
        summary: 'Remove the second factor, with the password and a one-time password of it',
        body: secondFactorRemovalBody,
        response: { 200: doneAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const tries = { throttle, address: request.ip };
      const { password, oneTimePassword = null } = request.body;
      const confirmed = await confirmPassword(plant, person.value, password, tries);
      if (!confirmed.ok) return sendProblem(reply, confirmed.problem);
      const second = await checkSecondFactor(plant, person.value.id, oneTimePassword, tries);
      if (!second.ok) return sendProblem(reply, second.problem);
      return sendOutcome(reply, done(await removeSecondFactor(plant, person.value.id)));
    },
  );
}
