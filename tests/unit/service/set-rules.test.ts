import { beforeEach, describe, expect, it } from 'vitest';
import { type RulesInput, rulesBody } from '../../../src/contract/rules.ts';
import { sixMonthsFirstUse } from '../../../src/domain/rules/six-months-first-use.ts';
import { twelveMonthsTwoPercent } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import { approveCalibration } from '../../../src/service/decide-calibration.ts';
import { findProfile } from '../../../src/service/find-profile.ts';
import { findCalibration } from '../../../src/service/find-record.ts';
import { judgeCalibration } from '../../../src/service/judge-calibration.ts';
import { listDue } from '../../../src/service/list-due.ts';
import { listRules } from '../../../src/service/list-rules.ts';
import { lookUpPair } from '../../../src/service/look-up.ts';
import type { Actor } from '../../../src/service/perform-action.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { recordRun } from '../../../src/service/record-run.ts';
import { setRules } from '../../../src/service/set-rules.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { people, plantAtWork, runSheet } from '../../plant-at-work.ts';

let plant: Plant;
beforeEach(async () => {
  // P-1 was calibrated on 2 March: six months end on 2 September, twelve in March of the next year.
  ({ plant } = await plantAtWork('2026-09-10'));
});

const as = (actor: Actor, key?: string) => ({
  actor,
  retry: key === undefined ? null : { key, request: 'the same request' },
});
const source = 'project specification 05 12 00, 3.4';
const setting = (facts: Partial<RulesInput>): RulesInput =>
  rulesBody.parse({
    rulesHash: plant.state.rulesHash,
    from: 'in-force',
    title: 'Rules of project 7',
    reason: 'the project asks for it',
    ...facts,
  });
const set = (facts: Partial<RulesInput>, by = as(people.quality)) => setRules(plant, setting(facts), by);
const dueDates = () => listDue(plant, { within: null, standing: null, on: plant.today() }).pairs;

describe('setting the rules', () => {
  it('puts a profile with limits of the plant in force, with who, when and why', async () => {
    const changes = { intervalMonths: { value: 6, source } };
    const answer = outcomeValue(await set({ changes }));
    expect(answer.inForce).toEqual({
      ...twelveMonthsTwoPercent,
      name: 'plant-rules-of-project-7',
      title: 'Rules of project 7',
      intervalMonths: { value: 6, provenance: 'plant', source },
    });
    expect(answer).toMatchObject({
      by: 'quinn',
      since: plant.clock(),
      reason: 'the project asks for it',
      entry: plant.state.head.seq,
      rulesHash: plant.state.head.hash,
    });
  });

  it('makes a pair overdue from the next reading on, and withholds its reading', async () => {
    expect(dueDates()).toMatchObject([{ tag: 'P-1', standing: 'ready', dueDate: '2027-03-02' }]);
    expect(outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip' }, null)).outcome).toBe('given');
    outcomeValue(await set({ changes: { intervalMonths: { value: 6, source } } }));
    expect(dueDates()).toMatchObject([{ tag: 'P-1', standing: 'overdue', dueDate: '2026-09-02' }]);
    expect(outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip' }, null)).outcome).toBe('withheld');
  });

  it('judges every calibration by the new limits, and its approver reads it again', async () => {
    const sheet = runSheet({ calibratedOn: '2026-09-08' });
    const { number } = outcomeValue(await recordRun(plant, { sheet, degree: 'auto' }, as(people.technician)));
    const judge = () => outcomeValue(judgeCalibration(plant, outcomeValue(findCalibration(plant.state, number))));
    const before = judge();
    const verdictOf = ({ judged }: typeof before) => judged.acceptance.find(({ rule }) => rule === 'repeatability');
    expect(verdictOf(before)?.verdict).toBe('pass');
    expect(listRules(plant).waitingCalibrations).toBe(1);
    const answer = outcomeValue(await set({ changes: { repeatabilityPercent: { value: 0.1, source } } }));
    expect(answer.waitingCalibrations).toBe(1);
    expect(verdictOf(judge())).toMatchObject({ verdict: 'fail', limit: 0.1 });
    const approval = { reviewHash: before.reviewHash };
    expect(await approveCalibration(plant, number, approval, as(people.quality))).toMatchObject({
      problem: { code: 'review-stale' },
    });
  });

  it('takes a shipped profile as it is, under its own name', async () => {
    const answer = outcomeValue(await set({ from: sixMonthsFirstUse.name, title: sixMonthsFirstUse.title }));
    expect(answer.inForce).toEqual(sixMonthsFirstUse);
  });

  it('takes away a limit that may be left out', async () => {
    const answer = outcomeValue(await set({ removed: ['guardFactor'] }));
    expect(Object.keys(answer.inForce)).not.toContain('guardFactor');
  });

  it.each([people.crew, people.technician, people.auditor])('is not for this role: $role', async (person) => {
    expect(await set({}, as(person))).toMatchObject({ problem: { code: 'role-not-allowed' } });
  });

  it('is for the administrator too', async () => {
    expect(await set({}, as(people.administrator))).toMatchObject({ ok: true });
  });

  it('refuses rules that are in force already, and writes nothing', async () => {
    const { head } = plant.state;
    const { name, title } = twelveMonthsTwoPercent;
    for (const from of [name, 'in-force']) {
      expect(await set({ from, title })).toMatchObject({ problem: { code: 'field-invalid', where: 'changes' } });
    }
    const change = { changes: { intervalMonths: { value: 6, source } } };
    outcomeValue(await set(change));
    expect(await set(change)).toMatchObject({ problem: { code: 'field-invalid', where: 'changes' } });
    expect(plant.state.head.seq).toBe(head.seq + 1);
  });

  it('refuses to build on rules that somebody else changed meanwhile', async () => {
    const stale = setting({ changes: { accuracyPercent: { value: 1, source } } });
    outcomeValue(await set({ changes: { intervalMonths: { value: 6, source } } }));
    expect(await setRules(plant, stale, as(people.quality))).toMatchObject({
      problem: { code: 'ledger-conflict', where: 'rulesHash', needed: plant.state.rulesHash, given: stale.rulesHash },
    });
  });

  it('answers a retry with what the first try did, once', async () => {
    const input = setting({ changes: { intervalMonths: { value: 6, source } } });
    const first = outcomeValue(await setRules(plant, input, as(people.quality, 'key-1')));
    expect(outcomeValue(await setRules(plant, input, as(people.quality, 'key-1')))).toEqual(first);
    expect(plant.state.head.seq).toBe(first.entry);
  });

  it('refuses a profile there is not', async () => {
    for (const from of ['six-months', '', '__proto__']) {
      expect(await set({ from })).toMatchObject({ problem: { code: 'field-invalid', where: 'from', given: from } });
    }
  });
});

describe('a shipped profile by its name', () => {
  it('is found in any capitals, and refused with the names there are', () => {
    expect(outcomeValue(findProfile(' Six-Months-First-Use ', '--rules'))).toBe(sixMonthsFirstUse);
    expect(findProfile('strict', '--rules')).toMatchObject({
      problem: { code: 'field-invalid', where: '--rules', given: 'strict', needed: expect.stringContaining('class-1') },
    });
  });
});
