import { beforeEach, describe, expect, it } from 'vitest';
import { calibrationAnswer, pairPageAnswer } from '../../src/contract/calibration.ts';
import { dueAnswer, pairListAnswer } from '../../src/contract/due.ts';
import { equipmentAnswer } from '../../src/contract/equipment.ts';
import { ledgerAnswer } from '../../src/contract/ledger.ts';
import { partPageAnswer } from '../../src/contract/part-page.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import { rulesAnswer } from '../../src/contract/rules.ts';
import { twelveMonthsTwoPercent } from '../../src/domain/rules/twelve-months-two-percent.ts';
import type { App } from '../../src/http/app.ts';
import { placeHold } from '../../src/service/hold-pair.ts';
import { plantAsOf } from '../../src/service/plant-as-of.ts';
import { retireEquipment } from '../../src/service/retire-equipment.ts';
import { withdrawCalibration } from '../../src/service/withdraw-calibration.ts';
import { outcomeValue } from '../outcome-value.ts';
import { calibrate, type PlantAtWork, people, plantAtWork, runSheet } from '../plant-at-work.ts';
import { testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
const by = { actor: people.quality, retry: null };
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
  outcomeValue(await placeHold(work.plant, 'P-1', 'Dropped from the bed.', by));
});

const get = async (url: string) => (await app.inject(url)).json();
const pageAsOf = async (day: string) => pairPageAnswer.parse(await get(`/api/pairs/P-1?asOf=${day}`));

describe('the plant as of a day', () => {
  it('has no hold the day before it was placed', async () => {
    const [yesterday, today] = [await pageAsOf('2026-05-31'), pairPageAnswer.parse(await get('/api/pairs/P-1'))];
    expect(yesterday).toMatchObject({ asOf: '2026-05-31', hold: null, line: { standing: 'ready' } });
    expect(today).toMatchObject({ asOf: '2026-06-01', hold: { reason: 'Dropped from the bed.' } });
    expect(today.line.standing).toBe('on-hold');
    expect(await pageAsOf('2026-06-01')).toEqual(today);
    expect(yesterday.entries.map(({ kind }) => kind)).not.toContain('hold-placed/1');
  });

  it('knows no calibration the day before it was entered, whatever day it is of', async () => {
    const before = await pageAsOf('2026-03-01');
    expect(before).toMatchObject({ current: null, calibrations: [], line: { standing: 'not-calibrated' } });
    expect(problemAnswer.parse(await get('/api/calibrations/C-0001?asOf=2026-03-01'))).toMatchObject({
      status: 404,
      code: 'unknown-calibration',
    });
    const late = await calibrate(work.plant, runSheet({ calibratedOn: '2026-05-01' }));
    expect((await pageAsOf('2026-05-31')).calibrations.map(({ number }) => number)).toEqual(['C-0001']);
    expect((await pageAsOf('2026-06-01')).current).toBe(late);
  });

  it('shows a calibration as approved before it was withdrawn, and who withdrew it since', async () => {
    outcomeValue(await withdrawCalibration(work.plant, 'C-0001', 'The cell was bad.', by));
    const asOf = async (day: string) => calibrationAnswer.parse(await get(`/api/calibrations/C-0001?asOf=${day}`));
    expect(await asOf('2026-05-31')).toMatchObject({ asOf: '2026-05-31', status: 'approved', withdrawn: null });
    expect(await asOf('2026-06-01')).toMatchObject({ status: 'withdrawn', withdrawn: { by: 'quinn' } });
  });

  it('lists pairs, what fell due, and the ledger as they were', async () => {
    const pairs = pairListAnswer.parse(await get('/api/pairs?asOf=2026-05-31'));
    expect(pairs).toMatchObject({ asOf: '2026-05-31', pairs: [{ tag: 'P-1', standing: 'ready' }] });
    expect(pairListAnswer.parse(await get('/api/pairs')).pairs[0]?.standing).toBe('on-hold');
    const due = dueAnswer.parse(await get('/api/due?asOf=2026-05-31'));
    expect(due).toMatchObject({ asOf: '2026-05-31', pairs: [{ standing: 'ready', daysLeft: 275 }] });
    const whole = ledgerAnswer.parse(await get('/api/ledger'));
    const then = ledgerAnswer.parse(await get('/api/ledger?asOf=2026-05-31'));
    expect(then).toMatchObject({ asOf: '2026-05-31', total: whole.total - 1 });
    expect(then.entries).toEqual(whole.entries.slice(1));
    expect(whole.entries[0]?.kind).toBe('hold-placed/1');
  });

  it('holds for the register, a part and the rules too', async () => {
    work.setDay('2026-06-02');
    outcomeValue(await retireEquipment(work.plant, 'LC-1', { reason: 'Overloaded.' }, by));
    const profile = { ...twelveMonthsTwoPercent, title: 'Of project 7' };
    const entry = { at: work.plant.clock(), actor: 'quinn', subject: profile.name };
    const kind = 'rules-set/2' as const;
    outcomeValue(await work.plant.append([{ ...entry, kind, body: { profile, reason: 'Of project 7.' } }], null));
    const retired = async (query: string) =>
      equipmentAnswer.parse(await get(`/api/equipment${query}`)).heldBy.parts.find(({ tag }) => tag === 'LC-1')
        ?.retired;
    expect([await retired('?asOf=2026-06-01'), (await retired(''))?.on]).toEqual([null, '2026-06-02']);
    const part = async (query: string) => partPageAnswer.parse(await get(`/api/equipment/LC-1${query}`));
    expect(await part('?asOf=2026-06-01')).toMatchObject({ asOf: '2026-06-01', retired: null });
    expect((await part('')).retired?.reason).toBe('Overloaded.');
    const title = async (query: string) => rulesAnswer.parse(await get(`/api/rules${query}`)).inForce.title;
    expect([await title('?asOf=2026-06-01'), await title('')]).toEqual([twelveMonthsTwoPercent.title, 'Of project 7']);
  });

  it('ends with the day of the plant, not of UTC', async () => {
    // 18:00 UTC on 1 June is noon in Chicago; five hours past midnight UTC it is the next day there.
    const instants = ['2026-06-02T04:59:59.999Z', '2026-06-02T05:00:00.000Z'];
    for (const [index, at] of instants.entries()) {
      const entry = { at, actor: 'quinn', subject: 'P-1' };
      const kind = index === 0 ? ('hold-lifted/1' as const) : ('hold-placed/1' as const);
      outcomeValue(await work.plant.append([{ ...entry, kind, body: { reason: `at ${at}` } }], null));
    }
    work.setDay('2026-06-03');
    expect((await pageAsOf('2026-06-01')).hold).toBeNull();
    expect((await pageAsOf('2026-06-02')).hold?.reason).toBe('at 2026-06-02T05:00:00.000Z');
  });

  it('stays as it was when entries are written later, however often it is asked', async () => {
    work.setDay('2026-06-02');
    expect((await pageAsOf('2026-06-01')).hold?.reason).toBe('Dropped from the bed.');
    const total = async () => ledgerAnswer.parse(await get('/api/ledger?asOf=2026-06-01')).total;
    const before = await total();
    await calibrate(work.plant, runSheet({ calibratedOn: '2026-06-02' }));
    expect(await total()).toBe(before);
    // Six days, more than are kept at a time, each answered as the first time.
    for (const day of ['2026-05-27', '2026-05-28', '2026-05-29', '2026-05-30', '2026-05-31', '2026-06-01']) {
      expect((await pageAsOf(day)).hold === null).toBe(day < '2026-06-01');
    }
  });

  it('brings in nothing a clock set back wrote after a later day', async () => {
    const entry = { actor: 'quinn', subject: 'P-1', body: { reason: 'By a clock set back.' } };
    const at = '2026-05-20T18:00:00.000Z';
    outcomeValue(await work.plant.append([{ ...entry, at, kind: 'hold-placed/1' }], null));
    expect((await pageAsOf('2026-05-31')).hold).toBeNull();
  });

  it('is only read', async () => {
    const then = outcomeValue(await plantAsOf(work.plant, '2026-05-31'));
    await expect(placeHold(then, 'P-1', 'Too late for that.', by)).rejects.toThrow('as of 2026-05-31 is only read');
    expect(work.plant.state.pairs.get('P-1')?.hold?.reason).toBe('Dropped from the bed.');
  });

  it.each([
    ['/api/pairs/P-1?asOf=2026-06-02', 'date-in-future', 'asOf'],
    ['/api/ledger?asOf=2026-06-02', 'date-in-future', 'asOf'],
    ['/api/equipment?asOf=2026-06-02', 'date-in-future', 'asOf'],
    ['/api/rules?asOf=2026-01-04', 'field-invalid', 'asOf'],
    ['/api/pairs/P-1?asOf=2026-01-04', 'field-invalid', 'asOf'],
    ['/api/due?asOf=2026-02-30', 'field-invalid', 'asOf'],
    ['/api/due?asOf=2026-05-31&on=2026-06-30', 'usage', 'asOf'],
  ])('refuses what cannot be asked: %s', async (url, code, where) => {
    expect(problemAnswer.parse(await get(url))).toMatchObject({ status: 400, code, where });
  });
});
