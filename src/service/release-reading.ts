// A person shows a reading in spite of a stop: who and why go into the ledger, then the number is given.

import type { LookupAnswer, LookupQuery } from '../contract/lookup.ts';
import { fail, isProblemCode, type Outcome, succeed } from '../domain/problem.ts';
import { force } from '../domain/units/force.ts';
import { pressure } from '../domain/units/pressure.ts';
import { parseUnit } from '../domain/units/quantity.ts';
import type { NewEntry } from '../ledger/entry.ts';
import { lookUpPair } from './look-up.ts';
import { type Actor, performAction } from './perform-action.ts';
import type { Plant, Retry } from './plant.ts';

export interface Release {
  readonly name: string;
  readonly reason: string;
  readonly query: LookupQuery;
}

/**
 * Answers the reading that was withheld and records its release. Problems: `nothing-to-release` when no stop stands in
 * the way, the code of the refusal when there is no number to give, `role-not-allowed`.
 */
export function releaseReading(
  plant: Plant,
  tag: string,
  release: Release,
  by: { readonly actor: Actor; readonly retry: Retry | null },
): Promise<Outcome<LookupAnswer>> {
  const released = { name: release.name };
  return performAction(plant, {
    ...by,
    action: 'release-reading',
    decide: (at) => {
      const withheld = lookUpPair(plant, tag, release.query, null);
      if (!withheld.ok) return withheld;
      const refusal = withheld.value.warnings.find(({ weight }) => weight === 'refuse');
      if (withheld.value.outcome === 'refused') {
        const code = refusal !== undefined && isProblemCode(refusal.code) ? refusal.code : 'not-calibrated';
        return fail(code, `No release helps here: ${refusal?.message ?? 'there is no number.'}`);
      }
      if (withheld.value.outcome === 'given') {
        return fail('nothing-to-release', 'No stop stands in the way of this reading.');
      }
      const given = lookUpPair(plant, tag, release.query, released);
      return given.ok ? releaseEntry(given.value, release, { at, actor: by.actor.id }) : given;
    },
    answer: () => lookUpPair(plant, tag, release.query, released),
  });
}

function releaseEntry(
  answer: LookupAnswer,
  release: Release,
  by: { readonly at: string; readonly actor: string },
): Outcome<readonly NewEntry[]> {
  const { pair, calibration, force: target, reading, readingToSet, warnings } = answer;
  const shown = readingToSet ?? reading;
  if (pair === null || calibration === null || target === null || shown === null) {
    return fail('not-calibrated', 'There is no reading to release.');
  }
  const forceUnit = parseUnit(force, target.unit);
  if (!forceUnit.ok) return forceUnit;
  const readingUnit = parseUnit(pressure, shown.unit);
  if (!readingUnit.ok) return readingUnit;
  return succeed([
    {
      ...by,
      kind: 'reading-released/1',
      subject: pair.tag,
      body: {
        name: release.name,
        reason: release.reason,
        calibration: calibration.number,
        force: { value: target.value, unit: forceUnit.value },
        readingToSet: { value: shown.value, unit: readingUnit.value },
        stops: warnings.filter(({ weight }) => weight === 'stop').map(({ code }) => code),
      },
    },
  ]);
}
