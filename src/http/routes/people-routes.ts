// The people of the plant: adding, inviting, changing and barring them. Signing in is in session-routes.ts, what each does
// to their own account in own-account-routes.ts.

import { z } from 'zod';
import { reasonBody } from '../../contract/equipment.ts';
import { acceptanceBody, invitationAnswer, invitationBody, personChangeBody } from '../../contract/people.ts';
import { peopleAnswer, personAnswer, personBody } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { addPerson } from '../../service/add-person.ts';
import { barPerson, changePerson, readmitPerson } from '../../service/change-person.ts';
import { acceptInvitation, inviteAnew, invitePerson } from '../../service/invite-person.ts';
import type { Plant } from '../../service/plant.ts';
import type { SignInThrottle } from '../../service/sign-in-throttle.ts';
import type { App } from '../app.ts';
import { currentPerson, requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };
const params = z.object({ id: z.string().max(60) });

interface PeopleOptions {
  readonly throttle: SignInThrottle;
  /** The password the sample plant's people share; null on a real plant. */
  readonly samplePassword: string | null;
}

export function peopleRoutes(app: App, plant: Plant, { throttle, samplePassword }: PeopleOptions): void {
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
      const people = listed ? [...plant.state.people.values()] : [];
      return reply.send({ people, samplePassword: isSample ? samplePassword : null });
    },
  );

  app.post(
    '/api/people',
    { schema: { summary: 'Add a person', body: personBody, response: { 201: personAnswer, ...failures } } },
    async (request, reply) => {
      const actor = await requirePerson(plant, request);
      if (!actor.ok) return sendProblem(reply, actor.problem);
      const by = { actor: actor.value, retryKey: retryOf(request)?.key ?? null };
      return sendOutcome(reply, await addPerson(plant, request.body, by), 201);
    },
  );

  app.post(
    '/api/people/:id/change',
    {
      schema: {
        summary: 'Change the name or role of a person',
        params,
        body: personChangeBody,
        response: { 200: personAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const actor = await requirePerson(plant, request);
      if (!actor.ok) return sendProblem(reply, actor.problem);
      const by = { actor: actor.value, retry: retryOf(request) };
      return sendOutcome(reply, await changePerson(plant, request.params.id, request.body, by));
    },
  );

  for (const { address, summary, act } of [
    { address: 'bar', summary: 'Bar a person: no sign-in from now on', act: barPerson },
    { address: 'readmission', summary: 'Let a barred person sign in again', act: readmitPerson },
  ]) {
    app.post(
      `/api/people/:id/${address}`,
      { schema: { summary, params, body: reasonBody, response: { 200: personAnswer, ...failures } } },
      async (request, reply) => {
        const actor = await requirePerson(plant, request);
        if (!actor.ok) return sendProblem(reply, actor.problem);
        const by = { actor: actor.value, retry: retryOf(request) };
        return sendOutcome(reply, await act(plant, request.params.id, request.body.reason, by));
      },
    );
  }

  app.post(
    '/api/people/:id/invitation',
    {
      schema: {
        summary: 'Invite a person anew who lost the password or second factor; it leaves an entry',
        params,
        body: reasonBody,
        response: { 201: invitationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const actor = await requirePerson(plant, request);
      if (!actor.ok) return sendProblem(reply, actor.problem);
      const invited = await inviteAnew(plant, request.params.id, request.body.reason, { actor: actor.value });
      return sendOutcome(reply, invited, 201);
    },
  );

  app.post(
    '/api/invitations',
    {
      schema: {
        summary: 'Invite a person, who sets the password with the one-time code',
        body: invitationBody,
        response: { 201: invitationAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const actor = await requirePerson(plant, request);
      if (!actor.ok) return sendProblem(reply, actor.problem);
      return sendOutcome(reply, await invitePerson(plant, request.body, { actor: actor.value }), 201);
    },
  );

  app.post(
    '/api/invitations/acceptance',
    {
      schema: {
        summary: 'Set the password of an invited person',
        body: acceptanceBody,
        response: { 200: personAnswer, ...failures },
      },
    },
    async (request, reply) =>
      sendOutcome(reply, await acceptInvitation(plant, request.body, { throttle, address: request.ip })),
  );
}
