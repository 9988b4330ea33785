// Whether gauge and elongation of a pull agree, and whether the pulls of a bed can stand beside each other.
// What a bed comes to is in summarise-bed.ts.

import { fail, type Outcome, type Problem, succeed } from '../problem.ts';
import { forceBehindElongation } from '../strand/elongation.ts';
import { forceAgreement } from '../strand/force-agreement.ts';
import { length } from '../units/length.ts';
import { pressure } from '../units/pressure.ts';
import { convert } from '../units/quantity.ts';
import { writeQuantityInFull } from '../units/write-quantity.ts';
import { type BedPattern, checkBedPattern } from './bed-pattern.ts';
import { disagreementReasonCodes } from './disagreement-reason.ts';
import type { Pull, PullBasis, PullEntry, PullOutcome } from './pull.ts';

export type PullFindings = Pick<Pull, 'elongationForce' | 'agreementPercent' | 'outcome'>;

/**
 * Answers how gauge and elongation of a pull agree, while it is still being entered: no reason is asked for yet.
 * Elongation force = P0 + (travel - allowance) n A E / L; agreement in % of the theoretical force; within the window when
 * its size is at most the window's, an agreement at the window itself being within.
 * Range: the travel above the allowance; the final reading above the preload's. Problem: `number-out-of-range`.
 * Source: the window's own; common practice for the rest, no source.
 */
export function findAgreement(entry: PullEntry, basis: PullBasis): Outcome<PullFindings> {
  const { strand, preload, allowance, window, theoreticalForce: theoretical } = basis;
  const { elongation: travel, preloadReading, finalReading, gaugeForce: gauge } = entry;
  const isRise = convert(pressure, finalReading, 'Pa') > convert(pressure, preloadReading, 'Pa');
  if (!isRise)
    return outOfRange('finalReading', finalReading, `above the preload's, ${writeQuantityInFull(preloadReading)}`);
  const stretch = travel.value - convert(length, allowance, travel.unit);
  if (!(stretch > 0))
    return outOfRange('elongation', travel, `above the allowance of ${writeQuantityInFull(allowance)}`);
  const elongation = { value: stretch, unit: travel.unit };
  const behind = forceBehindElongation(strand, { elongation, preload });
  if (!behind.ok) return behind;
  const agreement = forceAgreement({ gauge, elongation: behind.value, theoretical });
  if (!agreement.ok) return agreement;
  const outcome: PullOutcome = isWithin(agreement.value, window.percent) ? 'within' : 'out-of-window';
  return succeed({ elongationForce: behind.value, agreementPercent: agreement.value, outcome });
}

/** The last digits of a difference of two forces do not decide. */
const isWithin = (percent: number, limit: number): boolean => Math.abs(percent) <= limit + 1e-9;

function outOfRange(where: string, given: Parameters<typeof writeQuantityInFull>[0], needed: string): Outcome<never> {
  const text = writeQuantityInFull(given);
  return fail('number-out-of-range', `${where} cannot be ${text}; it is ${needed}.`, { where, needed, given: text });
}

/**
 * Answers a pull with its findings. Out of the window it needs a reason of the closed list before it can stand.
 * Problems: those of `findAgreement`; `field-missing` for the reason.
 */
export function judgePull(entry: PullEntry, basis: PullBasis, number: number): Outcome<Pull> {
  const found = findAgreement(entry, basis);
  if (!found.ok) return found;
  const { outcome, agreementPercent } = found.value;
  if (outcome === 'out-of-window' && entry.reason === undefined) {
    const off = Number(agreementPercent.toPrecision(3));
    const { percent, source } = basis.window;
    return fail(
      'field-missing',
      `Gauge and elongation differ by ${off} % of the force; the window is ${percent} % (${source}). A reason is needed.`,
      { where: 'reason', needed: `one of ${disagreementReasonCodes.join(', ')}`, given: 'nothing' },
    );
  }
  return succeed({ ...entry, number, ...found.value });
}

/**
 * Answers the pulls of a bed in order, each with its findings. Pulled strands are of the pattern, as many as the jack pulls
 * together, each once in a pull; strands pulled before are pulled again only as a re-pull of their last pull, which stays.
 * Problems, `where` naming the pull: those of `judgePull` and of the pattern; `field-invalid`, `field-missing`.
 */
export function judgePulls(
  pattern: BedPattern,
  entries: readonly PullEntry[],
  basis: PullBasis,
): Outcome<readonly Pull[]> {
  const checked = checkBedPattern(pattern);
  if (!checked.ok) return checked;
  const pulls: Pull[] = [];
  for (const [index, entry] of entries.entries()) {
    const placed = checkPositions(entry, pattern, basis.strand.strands);
    const isRepull = placed.ok ? checkRepull(entry, pulls) : placed;
    const pull = isRepull.ok ? judgePull(entry, basis, index + 1) : isRepull;
    if (!pull.ok) return { ok: false, problem: inPull(index, pull.problem) };
    pulls.push(pull.value);
  }
  return succeed(pulls);
}

/** A figure of the bed itself keeps its name; what was entered with a pull is named within it. */
function inPull(index: number, problem: Problem): Problem {
  return { ...problem, where: `pulls[${index}]${problem.where === undefined ? '' : `.${problem.where}`}` };
}

function checkPositions({ positions }: PullEntry, pattern: BedPattern, strands: number): Outcome<null> {
  const facts = { where: 'positions', given: positions.join(', ') };
  const unknown = positions.find((id) => !pattern.positions.some((position) => position.id === id));
  if (unknown !== undefined) {
    const needed = `positions of the pattern "${pattern.name}"`;
    return fail('field-invalid', `The pattern has no position "${unknown}".`, { ...facts, needed });
  }
  if (new Set(positions).size === positions.length && positions.length === strands) return succeed(null);
  return fail('field-invalid', `The jack pulls ${strands} together; the pull names ${positions.join(', ')}.`, {
    ...facts,
    needed: `${strands} different positions`,
  });
}

const isSame = (one: readonly string[], other: readonly string[]): boolean =>
  one.length === other.length && one.every((id) => other.includes(id));

function checkRepull({ positions, repullOf }: PullEntry, pulls: readonly Pull[]): Outcome<null> {
  const last = pulls.findLast((pull) => pull.positions.some((id) => positions.includes(id)));
  if (last?.number === repullOf && (last === undefined || isSame(last.positions, positions))) return succeed(null);
  const facts = { where: 'repullOf', given: repullOf === undefined ? 'nothing' : String(repullOf) };
  const names = positions.join(', ');
  if (last === undefined) {
    const needed = 'no number, since nothing was pulled here before';
    return fail('field-invalid', `${names} was not pulled before.`, { ...facts, needed });
  }
  if (!isSame(last.positions, positions)) {
    return fail('field-invalid', `Pull ${last.number} pulled ${last.positions.join(', ')} together.`, {
      where: 'positions',
      needed: last.positions.join(', '),
      given: names,
    });
  }
  return fail(
    repullOf === undefined ? 'field-missing' : 'field-invalid',
    `${names} was pulled before; the last time in pull ${last.number}, which this one repeats and does not replace.`,
    { ...facts, needed: String(last.number) },
  );
}
