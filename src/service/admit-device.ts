// The device pass: a crew's telephone or tablet that may look up without anybody signed in, and nothing else.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Device } from '../ledger/plant-state.ts';
import type { CredentialChange } from '../storage/credential-store.ts';
import { checkAccountId } from './add-person.ts';
import { daysFromNow, hashOfCode, newOneTimeCode } from './one-time-code.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';
import { hashOfToken } from './session.ts';
import type { Tries } from './sign-in.ts';

/** How long the code that gets the pass onto the device holds, in days. House rule: the device is at hand. */
const codeDays = 1;

/** How long after it was admitted a device has its pass, in days. House rule: once a year somebody looks at it. */
const passDays = 365;
const dayInMilliseconds = 86_400_000;

export interface AdmittedDevice {
  readonly device: Device;
  /** Shown this once. */
  readonly code: string;
  readonly expiresAt: string;
}

/** Admits a device. Problems: `tag-taken`, `field-invalid`, `role-not-allowed`. */
export function admitDevice(
  plant: Plant,
  { id, name }: { readonly id: string; readonly name: string },
  { actor }: { readonly actor: Actor },
): Promise<Outcome<AdmittedDevice>> {
  const code = newOneTimeCode(plant);
  const expiresAt = daysFromNow(plant, codeDays);
  const pass = { device: id, codeHash: hashOfCode(plant, code), codeExpiresAt: expiresAt, tokenHash: null };
  return performAction<AdmittedDevice>(plant, {
    action: 'admit-device',
    actor,
    retry: null,
    besides: [{ change: 'set-device-pass', pass }],
    decide(at) {
      const plain = checkAccountId(id, 'the id of a device');
      if (!plain.ok) return plain;
      if (plant.state.devices.has(id)) {
        return fail('tag-taken', `There is already a device "${id}".`, { where: 'id', given: id });
      }
      return succeed([{ at, actor: actor.id, kind: 'device-admitted/1', subject: id, body: { name } }]);
    },
    answer() {
      const device = findDevice(plant, id);
      return device.ok ? succeed({ device: device.value, code, expiresAt }) : device;
    },
  });
}

/** Bars a device: its pass ends. Problems: `unknown-device`, `already-barred`, `role-not-allowed`. */
export function barDevice(
  plant: Plant,
  id: string,
  reason: string,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<Device>> {
  return performAction<Device>(plant, {
    action: 'bar-device',
    actor: by.actor,
    retry: by.retry,
    besides: [{ change: 'remove-device-pass', device: id }],
    decide(at) {
      const device = findDevice(plant, id);
      if (!device.ok) return device;
      if (device.value.barred !== undefined) {
        return fail('already-barred', `The device ${id} is barred already.`, { given: id });
      }
      return succeed([{ at, actor: by.actor.id, kind: 'device-barred/1', subject: id, body: { reason } }]);
    },
    answer: () => findDevice(plant, id),
  });
}

/** Gives a device its pass for the one-time code. Problems: `sign-in-refused`, `too-many-tries`. */
export async function fetchDevicePass(
  plant: Plant,
  { id, code }: { readonly id: string; readonly code: string },
  { throttle, address }: Tries,
): Promise<Outcome<{ readonly device: Device; readonly token: string; readonly expiresAt: string }>> {
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return refreshed;
  const attempt = throttle.begin({ account: null, address }, plant.clock());
  if (!attempt.ok) return attempt;
  const codeHash = hashOfCode(plant, code);
  const pass = await plant.credentials.devicePass(id);
  const device = plant.state.devices.get(id);
  const isOpen = pass !== null && pass.codeHash === codeHash && pass.codeExpiresAt > plant.clock();
  if (device === undefined || device.barred !== undefined || !isOpen) {
    return fail('sign-in-refused', 'The device or the code is wrong, or the code is past.', { where: 'code' });
  }
  const token = plant.randomToken();
  const use: CredentialChange = {
    change: 'use-device-code',
    device: id,
    codeHash,
    tokenHash: hashOfToken(plant, token),
  };
  const used = await plant.credentials.change([use]);
  if (!used.ok) return used;
  attempt.value.succeeded();
  return succeed({ device, token, expiresAt: endOfPass(device) });
}

/** Answers the device a pass belongs to; null when none, or one barred since, or its year is over: a cookie can be kept longer. */
export async function deviceOfPass(plant: Plant, token: string): Promise<Device | null> {
  const pass = await plant.credentials.devicePassOfToken(hashOfToken(plant, token));
  const device = pass === null ? undefined : plant.state.devices.get(pass.device);
  if (device === undefined || device.barred !== undefined) return null;
  return plant.clock() < endOfPass(device) ? device : null;
}

function endOfPass({ admittedAt }: Device): string {
  return new Date(Date.parse(admittedAt) + passDays * dayInMilliseconds).toISOString();
}

function findDevice(plant: Plant, id: string): Outcome<Device> {
  const device = plant.state.devices.get(id);
  return device === undefined
    ? fail('unknown-device', `No device "${id}" was admitted.`, { where: 'id', given: id })
    : succeed(device);
}
