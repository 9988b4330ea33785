// What entries about people and devices do to the plant state. The other kinds are dealt out by grow-plant.ts.

import type { LedgerEntry } from './entry.ts';
import { actOf, addNew, type GrowingPlant, known, refusal } from './growing-plant.ts';
import type { Person } from './plant-state.ts';

export function addPerson(plant: GrowingPlant, entry: LedgerEntry<'person-added/1'>): void {
  addNew(plant.people, entry.subject, { id: entry.subject, ...entry.body }, entry, 'person');
}

export function changePerson(plant: GrowingPlant, entry: LedgerEntry<'person-changed/1'>): void {
  const person = known(plant.people, entry.subject, entry, 'person');
  plant.people.set(entry.subject, { ...person, name: entry.body.name, role: entry.body.role });
}

export function barPerson(plant: GrowingPlant, entry: LedgerEntry<'person-barred/1'>): void {
  const person = known(plant.people, entry.subject, entry, 'person');
  if (person.barred !== undefined) throw refusal(entry, `bars "${entry.subject}", who is barred already`);
  plant.people.set(entry.subject, { ...person, barred: actOf(entry, entry.body.reason) });
}

export function readmitPerson(plant: GrowingPlant, entry: LedgerEntry<'person-readmitted/1'>): void {
  const { barred, ...person } = known(plant.people, entry.subject, entry, 'person');
  if (barred === undefined) throw refusal(entry, `readmits "${entry.subject}", who is not barred`);
  plant.people.set(entry.subject, person satisfies Person);
}

export function admitDevice(plant: GrowingPlant, entry: LedgerEntry<'device-admitted/1'>): void {
  const device = { id: entry.subject, name: entry.body.name, admittedBy: entry.actor, admittedAt: entry.at };
  addNew(plant.devices, entry.subject, device, entry, 'device');
}

export function barDevice(plant: GrowingPlant, entry: LedgerEntry<'device-barred/1'>): void {
  const device = known(plant.devices, entry.subject, entry, 'device');
  if (device.barred !== undefined) throw refusal(entry, `bars the device "${entry.subject}", which is barred already`);
  plant.devices.set(entry.subject, { ...device, barred: actOf(entry, entry.body.reason) });
}
