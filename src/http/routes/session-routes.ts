// Signing in and out, and opening a new ledger by its one-time code.

import { doneAnswer } from '../../contract/people.ts';
import { openingBody, personAnswer, sessionAnswer, signInBody } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { openNewPlant } from '../../service/open-new-plant.ts';
import type { Plant } from '../../service/plant.ts';
import { signOut, signOutEverywhere } from '../../service/session.ts';
import { signIn } from '../../service/sign-in.ts';
import type { SignInThrottle } from '../../service/sign-in-throttle.ts';
import type { App } from '../app.ts';
import { clearSession, currentPerson, requirePerson, sessionToken, setToken } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };

export function sessionRoutes(
  app: App,
  plant: Plant,
  { throttle, openingCode }: { readonly throttle: SignInThrottle; readonly openingCode: string | null },
): void {
  app.get(
    '/api/session',
    { schema: { summary: 'Who is signed in', response: { 200: sessionAnswer } } },
    async (request, reply) => reply.send({ person: await currentPerson(plant, request) }),
  );

  app.post(
    '/api/session',
    { schema: { summary: 'Sign in', body: signInBody, response: { 200: sessionAnswer, ...failures } } },
    async (request, reply) => {
      const { person, password, oneTimePassword = null } = request.body;
      const tries = { throttle, address: request.ip };
      const signedIn = await signIn(plant, { person, password, oneTimePassword }, tries);
      if (!signedIn.ok) return sendProblem(reply, signedIn.problem);
      setToken(request, reply, 'session', signedIn.value);
      return reply.send({ person: signedIn.value.person });
    },
  );

  app.delete(
    '/api/session',
    { schema: { summary: 'Sign out', response: { 200: sessionAnswer } } },
    async (request, reply) => {
      const token = sessionToken(request);
      const signedOut = token === undefined ? null : await signOut(plant, token);
      if (signedOut?.ok === false) return sendProblem(reply, signedOut.problem);
      return clearSession(request, reply).send({ person: null });
    },
  );

  app.delete(
    '/api/sessions',
    { schema: { summary: 'Sign out on every device', response: { 200: doneAnswer, ...failures } } },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const ended = await signOutEverywhere(plant, person.value.id);
      if (!ended.ok) return sendProblem(reply, ended.problem);
      return clearSession(request, reply).send({ done: true });
    },
  );

  app.post(
    '/api/opening',
    {
      schema: {
        summary: 'Open a new ledger with the one-time code printed in the terminal',
        body: openingBody,
        response: { 201: personAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const attempt = throttle.begin({ account: null, address: request.ip }, plant.clock());
      if (!attempt.ok) return sendProblem(reply, attempt.problem);
      const opened = await openNewPlant(plant, request.body, openingCode);
      if (opened.ok) attempt.value.succeeded();
      else if (opened.problem.code !== 'sign-in-refused') attempt.value.takeBack();
      return sendOutcome(reply, opened, 201);
    },
  );
}
