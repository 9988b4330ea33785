// Who may read: on a plant's own ledger those who are signed in, and a device with a pass what the crew's page needs.
// Who may act is decided in each action, by domain/rules/role.ts.

import type { FastifyInstance } from 'fastify';
import type { Plant } from '../service/plant.ts';
import { currentDevice, currentPerson } from './current-person.ts';
import { sendProblem } from './errors.ts';

/** What a stranger needs to become somebody: the pages that open a ledger, sign in and take an invitation or a pass. */
const forStrangers: ReadonlySet<string> = new Set([
  'GET /api/plant',
  'GET /api/people',
  'GET /api/session',
  'POST /api/session',
  'DELETE /api/session',
  'POST /api/opening',
  'POST /api/invitations/acceptance',
  'POST /api/devices/pass',
  'GET /api/openapi.json',
]);

/** What the page reads that sets a gauge: the pairs, their standing, the reading for a force. */
const forDevices: ReadonlySet<string> = new Set([
  'GET /api/due',
  'GET /api/equipment',
  'GET /api/pairs',
  'GET /api/pairs/:tag/lookup',
  'GET /api/pairs/:tag/readings',
  'GET /api/snapshot',
  'GET /api/strands',
]);

/** Refuses everybody else with `not-signed-in`, before a body is read. A device that asks for more is told so. */
export function refuseStrangers(app: FastifyInstance, plant: Plant): void {
  app.addHook('onRequest', async (request, reply) => {
    const method = request.method === 'HEAD' ? 'GET' : request.method;
    const asked = `${method} ${request.routeOptions.url ?? ''}`;
    if (forStrangers.has(asked)) return;
    const refreshed = await plant.refresh();
    if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
    if ((await currentPerson(plant, request)) !== null) return;
    const device = await currentDevice(plant, request);
    if (device !== null && forDevices.has(asked)) return;
    const message =
      device === null ? 'Sign in first.' : 'The pass of this device is for looking up readings; sign in first.';
    return sendProblem(reply, { code: 'not-signed-in', message });
  });
}
