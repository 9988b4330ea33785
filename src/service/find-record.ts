// Finding a pair, a part or a calibration by its tag or number, or the problem that there is none.

import type { Certificate, Equipment, EquipmentKind } from '../domain/equipment/equipment.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { CalibrationRecord, PairRecord, PlantState, RecordedStressing } from '../ledger/plant-state.ts';

/** At most this many tags are named in a refusal. */
const mostNamed = 12;

function naming(tags: readonly string[]): string {
  if (tags.length === 0) return 'none is registered yet';
  const named = tags.slice(0, mostNamed).join(', ');
  return tags.length > mostNamed ? `one of ${named} and ${tags.length - mostNamed} more` : `one of ${named}`;
}

/** Tags are matched without regard to case, since crews type them with gloves. */
function byTag<T>(records: ReadonlyMap<string, T>, tag: string): T | undefined {
  const exact = records.get(tag);
  if (exact !== undefined) return exact;
  const lower = tag.toLowerCase();
  for (const [key, record] of records) if (key.toLowerCase() === lower) return record;
  return undefined;
}

export function findPair(state: PlantState, tag: string, where = 'pair'): Outcome<PairRecord> {
  const record = byTag(state.pairs, tag);
  if (record !== undefined) return succeed(record);
  return fail('unknown-pair', `No pair has the tag "${tag}".`, {
    where,
    needed: naming([...state.pairs.keys()].sort()),
    given: tag,
  });
}

export function findEquipment<K extends EquipmentKind>(
  state: PlantState,
  kind: K,
  tag: string,
  where: string,
): Outcome<Extract<Equipment, { kind: K }>> {
  const found = byTag(state.equipment, tag);
  if (found !== undefined && found.kind === kind) return succeed(found as Extract<Equipment, { kind: K }>);
  const tags = [...state.equipment.values()].filter((part) => part.kind === kind).map((part) => part.tag);
  const name = kind === 'load-cell' ? 'load cell' : kind;
  return fail('unknown-equipment', `No ${name} has the tag "${tag}".`, { where, needed: naming(tags), given: tag });
}

/** Answers a part of any kind. Problem: `unknown-equipment`. */
export function findPart(state: PlantState, tag: string): Outcome<Equipment> {
  const found = byTag(state.equipment, tag);
  if (found !== undefined) return succeed(found);
  return fail('unknown-equipment', `No part has the tag "${tag}".`, {
    where: 'tag',
    needed: naming([...state.equipment.keys()].sort()),
    given: tag,
  });
}

/** Answers the certificate of a load cell, of several of one number the one filed last. Problem: `unknown-certificate`. */
export function findCertificate(state: PlantState, loadCell: string, number: string): Outcome<Certificate> {
  const filed = state.certificates.get(loadCell) ?? [];
  const found = filed.findLast((certificate) => certificate.number === number);
  if (found !== undefined) return succeed(found);
  return fail('unknown-certificate', `The load cell ${loadCell} has no certificate ${number}.`, {
    where: 'number',
    needed: filed.length === 0 ? 'none is filed yet' : `one of ${filed.map((each) => each.number).join(', ')}`,
    given: number,
  });
}

export function findCalibration(state: PlantState, number: string): Outcome<CalibrationRecord> {
  const record = byTag(state.calibrations, number);
  if (record !== undefined) return succeed(record);
  return fail('unknown-calibration', `No calibration has the number "${number}".`, { where: 'number', given: number });
}

export function findStressing(state: PlantState, number: string): Outcome<RecordedStressing> {
  const record = byTag(state.stressings, number);
  if (record !== undefined) return succeed(record);
  return fail('unknown-stressing', `No stressing record has the number "${number}".`, {
    where: 'number',
    given: number,
  });
}

/** Whether a tag is free among parts and pairs, without regard to case. Problem: `tag-taken`. */
export function checkTagFree(state: PlantState, tag: string): Outcome<void> {
  const part = byTag(state.equipment, tag);
  if (part === undefined && byTag(state.pairs, tag) === undefined) return succeed(undefined);
  const holder = part === undefined ? 'pair' : part.kind.replace('-', ' ');
  return fail('tag-taken', `The tag "${tag}" is already used by a ${holder}.`, {
    where: 'tag',
    needed: 'a tag no part or pair has',
    given: tag,
  });
}
