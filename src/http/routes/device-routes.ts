// The devices of the crew: admitting one, giving it its pass, barring it.

import { z } from 'zod';
import { reasonBody } from '../../contract/equipment.ts';
import {
  admittedDeviceAnswer,
  deviceAnswer,
  deviceBody,
  deviceListAnswer,
  devicePassBody,
} from '../../contract/people.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { admitDevice, barDevice, fetchDevicePass } from '../../service/admit-device.ts';
import type { Plant } from '../../service/plant.ts';
import type { SignInThrottle } from '../../service/sign-in-throttle.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf, setToken } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };

export function deviceRoutes(app: App, plant: Plant, throttle: SignInThrottle): void {
  app.get(
    '/api/devices',
    { schema: { summary: 'The devices of the crew', response: { 200: deviceListAnswer, ...failures } } },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      return reply.send({ devices: [...plant.state.devices.values()] });
    },
  );

  app.post(
    '/api/devices',
    {
      schema: {
        summary: 'Admit a device; its one-time code is shown this once',
        body: deviceBody,
        response: { 201: admittedDeviceAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      return sendOutcome(reply, await admitDevice(plant, request.body, { actor: person.value }), 201);
    },
  );

  app.post(
    '/api/devices/pass',
    {
      schema: {
        summary: 'Get the pass onto the device that asks, with the one-time code',
        body: devicePassBody,
        response: { 200: deviceAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const fetched = await fetchDevicePass(plant, request.body, { throttle, address: request.ip });
      if (!fetched.ok) return sendProblem(reply, fetched.problem);
      setToken(request, reply, 'device', fetched.value);
      return reply.send(fetched.value.device);
    },
  );

  app.post(
    '/api/devices/:id/bar',
    {
      schema: {
        summary: 'Bar a device: its pass ends',
        params: z.object({ id: z.string().max(60) }),
        body: reasonBody,
        response: { 200: deviceAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await barDevice(plant, request.params.id, request.body.reason, by));
    },
  );
}
