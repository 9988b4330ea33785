// Signing in and out, the people of the plant, and opening a new ledger by its one-time code.

import {
  openingBody,
  peopleAnswer,
  personAnswer,
  personBody,
  sessionAnswer,
  signInBody,
} from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { addPerson } from '../../service/add-person.ts';
import { openNewPlant } from '../../service/open-new-plant.ts';
import type { Plant } from '../../service/plant.ts';
import { signIn, signOut } from '../../service/sign-in.ts';
import type { App, AppOptions } from '../app.ts';
import { currentPerson, requirePerson, retryOf, sessionCookie, setSession } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };

export function peopleRoutes(app: App, plant: Plant, options: AppOptions): void {
  app.get(
    '/api/people',
    {
      schema: {
        summary: 'Who can sign in; a real plant lists people to those signed in',
        response: { 200: peopleAnswer },
      },
    },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const isSample = plant.state.plant?.sample ?? false;
      const listed = isSample || (await currentPerson(plant, request)) !== null;
      const samplePassword = isSample ? options.samplePassword : null;
      return reply.send({ people: listed ? [...plant.state.people.values()] : [], samplePassword });
    },
  );

  app.post(
    '/api/people',
    { schema: { summary: 'Add a person', body: personBody, response: { 201: personAnswer, ...failures } } },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retryKey: retryOf(request)?.key ?? null };
      return sendOutcome(reply, await addPerson(plant, request.body, by), 201);
    },
  );

  app.get(
    '/api/session',
    { schema: { summary: 'Who is signed in', response: { 200: sessionAnswer } } },
    async (request, reply) => reply.send({ person: await currentPerson(plant, request) }),
  );

  app.post(
    '/api/session',
    { schema: { summary: 'Sign in', body: signInBody, response: { 200: sessionAnswer, ...failures } } },
    async (request, reply) => {
      const signedIn = await signIn(plant, request.body.person, request.body.password);
      if (!signedIn.ok) return sendProblem(reply, signedIn.problem);
      setSession(reply, signedIn.value.token, signedIn.value.expiresAt, options.secureCookie);
      return reply.send({ person: signedIn.value.person });
    },
  );

  app.delete(
    '/api/session',
    { schema: { summary: 'Sign out', response: { 200: sessionAnswer } } },
    async (request, reply) => {
      const token = request.cookies[sessionCookie];
      const signedOut = token === undefined ? null : await signOut(plant, token);
      if (signedOut?.ok === false) return sendProblem(reply, signedOut.problem);
      return reply.clearCookie(sessionCookie, { path: '/' }).send({ person: null });
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
    async (request, reply) => sendOutcome(reply, await openNewPlant(plant, request.body, options.openingCode), 201),
  );
}
