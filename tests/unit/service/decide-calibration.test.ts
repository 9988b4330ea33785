import { beforeEach, describe, expect, it } from 'vitest';
import { twelveMonthsTwoPercent } from '../../../src/domain/rules/twelve-months-two-percent.ts';
import { approveCalibration, rejectCalibration } from '../../../src/service/decide-calibration.ts';
import { fileCertificate } from '../../../src/service/file-certificate.ts';
import { findCalibration, findPair } from '../../../src/service/find-record.ts';
import { judgeCalibration } from '../../../src/service/judge-calibration.ts';
import { lookUpPair } from '../../../src/service/look-up.ts';
import { standingOf } from '../../../src/service/pair-basis.ts';
import { type Actor, commandLineActor } from '../../../src/service/perform-action.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { recordRun } from '../../../src/service/record-run.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { people, plantAtWork, runSheet } from '../../plant-at-work.ts';

let plant: Plant;
beforeEach(async () => {
  plant = (await plantAtWork()).plant;
});

const as = (actor: Actor) => ({ actor, retry: null });
/** A sheet whose last cycle reads 3 % high: it fails the accuracy and the repeatability of the profile. */
const failing = runSheet({
  calibratedOn: '2026-05-20',
  cycles: runSheet().cycles.map((cycle, index) =>
    index < 2
      ? cycle
      : { points: cycle.points.map((point) => ({ ...point, reading: Math.round(point.reading * 1.03) })) },
  ),
});

async function submit(sheet = runSheet({ calibratedOn: '2026-05-20' }), actor: Actor = people.technician) {
  const record = outcomeValue(await recordRun(plant, { sheet, degree: 'auto' }, as(actor)));
  const judged = outcomeValue(judgeCalibration(plant, record));
  return { number: record.number, judged, approval: { reviewHash: judged.reviewHash } };
}

describe('approving a calibration', () => {
  it('puts it in force, with who approved it and when', async () => {
    const { number, approval } = await submit();
    const approved = outcomeValue(await approveCalibration(plant, number, approval, as(people.quality)));
    expect(approved).toMatchObject({ status: 'approved', decidedBy: 'quinn', decidedAt: plant.clock() });
    expect(outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip' }, null)).calibration?.number).toBe(number);
  });

  it('takes somebody else than the one who entered it, whatever the role', async () => {
    const { number, approval } = await submit(undefined, people.quality);
    const head = plant.state.head;
    expect(await approveCalibration(plant, number, approval, as(people.quality))).toMatchObject({
      ok: false,
      problem: { code: 'approver-is-enterer', given: 'quinn' },
    });
    expect(plant.state.head).toEqual(head);
    expect(await approveCalibration(plant, number, approval, as(people.otherQuality))).toMatchObject({ ok: true });
  });

  it.each([people.crew, people.technician, people.auditor, people.administrator])(
    'is not for this role: $role',
    async (person) => {
      const { number, approval } = await submit();
      expect(await approveCalibration(plant, number, approval, as(person))).toMatchObject({
        problem: { code: 'role-not-allowed' },
      });
      expect(await rejectCalibration(plant, number, 'not my task', as(person))).toMatchObject({
        problem: { code: 'role-not-allowed' },
      });
    },
  );

  it('is refused as stale where the rules changed since the review', async () => {
    const { number, approval } = await submit();
    const profile = {
      ...twelveMonthsTwoPercent,
      accuracyPercent: { ...twelveMonthsTwoPercent.accuracyPercent, value: 1 },
    };
    const entry = { kind: 'rules-set/1', subject: profile.name, body: { profile, reason: 'stricter' } } as const;
    outcomeValue(await plant.append([{ at: plant.clock(), actor: 'ada', ...entry }], null));
    const refused = await approveCalibration(plant, number, approval, as(people.quality));
    expect(refused).toMatchObject({ ok: false, problem: { code: 'review-stale', given: approval.reviewHash } });
    const record = outcomeValue(findPair(plant.state, 'P-1'));
    const judged = outcomeValue(
      judgeCalibration(plant, plant.state.calibrations.get(record.calibrations.at(-1) ?? '')!),
    );
    expect(refused.ok ? null : refused.problem.needed).toBe(judged.reviewHash);
    expect(
      await approveCalibration(plant, number, { reviewHash: judged.reviewHash }, as(people.quality)),
    ).toMatchObject({ ok: true });
  });

  it('is refused as stale with the hash of another calibration', async () => {
    const first = await submit();
    const second = await submit();
    expect(await approveCalibration(plant, first.number, second.approval, as(people.quality))).toMatchObject({
      problem: { code: 'review-stale' },
    });
  });

  it('of one that fails a rule needs a note that says why', async () => {
    const { number, judged, approval } = await submit(failing);
    expect(judged.judged.verdict).toBe('fail');
    for (const note of [undefined, '', '    ', ' ok ', 'fine\n\n\n']) {
      expect(await approveCalibration(plant, number, { ...approval, note }, as(people.quality))).toMatchObject({
        ok: false,
        problem: { code: 'field-missing', where: 'note' },
      });
    }
    const note = ' accepted for piling only ';
    const approved = outcomeValue(await approveCalibration(plant, number, { ...approval, note }, as(people.quality)));
    expect(approved.decisionNote).toBe('accepted for piling only');
    const { warnings } = outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip' }, null));
    expect(warnings.map(({ code }) => code)).toContain('acceptance-failed');
  });

  it('of one whose load cell had no valid certificate that day needs a note, until the certificate is filed', async () => {
    const cell = { kind: 'load-cell', tag: 'LC-2', serial: 'S4', capacity: '60 kip' } as const;
    outcomeValue(await registerEquipment(plant, cell, as(people.technician)));
    const { number, judged, approval } = await submit(runSheet({ calibratedOn: '2026-05-20', loadCell: 'LC-2' }));
    expect(judged.parts.certificate).toBeNull();
    expect(judged.checks.map(({ code }) => code)).toContain('certificate-not-valid');
    expect(await approveCalibration(plant, number, approval, as(people.quality))).toMatchObject({
      problem: { code: 'field-missing', where: 'note' },
    });
    const certificate = {
      number: 'K-2',
      laboratory: 'a laboratory',
      traceableTo: 'a national standard',
      calibratedOn: '2026-05-20',
      validUntil: '2026-05-20',
      expandedUncertaintyPercent: 0.2,
      coverageFactor: 2,
    };
    outcomeValue(await fileCertificate(plant, 'LC-2', certificate, as(people.technician)));
    // The certificate is part of what was reviewed, so the review begins anew.
    expect(await approveCalibration(plant, number, approval, as(people.quality))).toMatchObject({
      problem: { code: 'review-stale' },
    });
    const { reviewHash } = outcomeValue(judgeCalibration(plant, outcomeValue(findCalibration(plant.state, number))));
    expect(await approveCalibration(plant, number, { reviewHash }, as(people.quality))).toMatchObject({ ok: true });
  });

  it('is not for the person whose name the operating system gave the command line that entered it', async () => {
    const { number, approval } = await submit(undefined, commandLineActor(people.quality.id));
    expect(await approveCalibration(plant, number, approval, as(people.quality))).toMatchObject({
      problem: { code: 'approver-is-enterer' },
    });
    expect(await approveCalibration(plant, number, approval, as(people.otherQuality))).toMatchObject({ ok: true });
  });

  it('happens once: neither approved again nor rejected after', async () => {
    const { number, approval } = await submit();
    outcomeValue(await approveCalibration(plant, number, approval, as(people.quality)));
    const given = { ok: false, problem: { code: 'already-decided', given: 'approved' } };
    expect(await approveCalibration(plant, number, approval, as(people.otherQuality))).toMatchObject(given);
    expect(await rejectCalibration(plant, number, 'second thoughts', as(people.otherQuality))).toMatchObject(given);
  });

  it('finds the number in other capitals, and refuses one there is not', async () => {
    const { number, approval } = await submit();
    for (const unknown of ['C-9999', '', '__proto__', 'constructor']) {
      expect(await approveCalibration(plant, unknown, approval, as(people.quality))).toMatchObject({
        problem: { code: 'unknown-calibration', given: unknown },
      });
    }
    const approved = outcomeValue(await approveCalibration(plant, number.toLowerCase(), approval, as(people.quality)));
    expect(approved.number).toBe(number);
  });
});

describe('rejecting a calibration', () => {
  it('keeps it with the reason, and out of force', async () => {
    const { number, approval } = await submit();
    const rejected = outcomeValue(await rejectCalibration(plant, number, 'cell was not warm', as(people.quality)));
    expect(rejected).toMatchObject({ status: 'rejected', decidedBy: 'quinn', decisionNote: 'cell was not warm' });
    expect(outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip' }, null)).calibration?.number).toBe('C-0001');
    expect(await approveCalibration(plant, number, approval, as(people.otherQuality))).toMatchObject({
      problem: { code: 'already-decided', given: 'rejected' },
    });
  });
});

describe('the calibration in force', () => {
  const approve = async (calibratedOn: string): Promise<string> => {
    const { number, approval } = await submit(runSheet({ calibratedOn }));
    outcomeValue(await approveCalibration(plant, number, approval, as(people.quality)));
    return number;
  };
  const inForce = (on: string) =>
    outcomeValue(lookUpPair(plant, 'P-1', { force: '31 kip', on }, null)).calibration?.number;

  it('is the one of the latest day, however late an older one was entered', async () => {
    const newer = await approve('2026-05-20');
    await approve('2026-04-01');
    expect(inForce('2026-06-01')).toBe(newer);
  });

  it('is of one day the one entered last', async () => {
    await approve('2026-05-20');
    const again = await approve('2026-05-20');
    expect(inForce('2026-06-01')).toBe(again);
  });

  it('never is one that still waits, and the due day follows the one in force', async () => {
    await submit(runSheet({ calibratedOn: '2026-05-20' }));
    const record = outcomeValue(findPair(plant.state, 'P-1'));
    expect(standingOf(plant, record, '2026-06-01').dueDate).toBe('2027-03-02');
    expect(inForce('2026-06-01')).toBe('C-0001');
  });

  it('drifts where the one before gave another force by more than the limit', async () => {
    const { number, approval } = await submit(runSheet({ calibratedOn: '2026-05-20' }, 1.03));
    outcomeValue(await approveCalibration(plant, number, { ...approval, note: 'as found' }, as(people.quality)));
    const record = outcomeValue(findPair(plant.state, 'P-1'));
    const standing = standingOf(plant, record, '2026-06-01');
    expect(standing.standing).toBe('drifting');
    expect(standing.because).toMatch(/(2\.9|3\.0) % less force/);
    expect(standingOf(plant, record, '2026-05-19').standing).toBe('ready');
  });
});
