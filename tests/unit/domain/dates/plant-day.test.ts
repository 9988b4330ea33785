import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { addPlantDays, daysBetween, parsePlantDay, plantDayAt } from '../../../../src/domain/dates/plant-day.ts';

describe('a plant day a person wrote', () => {
  it.each(['2026-03-02', '2024-02-29', '2000-02-29', '0001-01-01', '9999-12-31'])('is read: %s', (text) => {
    expect(parsePlantDay(text)).toEqual({ ok: true, value: text });
  });

  it('loses the spaces around it', () => {
    expect(parsePlantDay(' 2026-03-02\t')).toEqual({ ok: true, value: '2026-03-02' });
  });

  it.each([
    '',
    '2026-02-29',
    '1900-02-29',
    '2026-04-31',
    '2026-13-01',
    '2026-00-10',
    '2026-01-00',
    '0000-01-01',
    '2026-1-1',
    '20260302',
    '03/02/2026',
    '2026-03-02T00:00',
    '2026-03-02Z',
    '+2026-03-02',
    '-2026-03-02',
    '12026-03-02',
    '\u0662026-03-02',
    'today',
    '__proto__',
  ])('is refused where it does not exist or is written otherwise: %j', (text) => {
    expect(parsePlantDay(text, '--on')).toMatchObject({
      ok: false,
      problem: { code: 'date-invalid', where: '--on', given: text },
    });
  });
});

describe('counting days', () => {
  it('is zero from a day to itself and negative backwards', () => {
    expect(daysBetween('2026-03-02', '2026-03-02')).toBe(0);
    expect(daysBetween('2026-03-02', '2026-03-01')).toBe(-1);
  });

  it('knows leap years and the ends of months and years', () => {
    expect(daysBetween('2024-02-28', '2024-03-01')).toBe(2);
    expect(daysBetween('2026-02-28', '2026-03-01')).toBe(1);
    expect(addPlantDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(addPlantDays('2024-03-01', -1)).toBe('2024-02-29');
    expect(addPlantDays('2026-03-02', 0)).toBe('2026-03-02');
  });

  it('counts the days of a change of the clock as one day each', () => {
    expect(daysBetween('2026-03-07', '2026-03-09')).toBe(2);
    expect(addPlantDays('2026-03-08', 1)).toBe('2026-03-09');
    expect(daysBetween('2026-10-31', '2026-11-02')).toBe(2);
    expect(addPlantDays('2026-11-01', 1)).toBe('2026-11-02');
  });

  it('is right in the first century, which dates of two digits would move', () => {
    expect(addPlantDays('0050-02-28', 1)).toBe('0050-03-01');
    expect(daysBetween('0099-12-31', '0100-01-01')).toBe(1);
  });
});

describe('the day at the plant', () => {
  it.each([
    ['2026-06-01T04:59:59.999Z', 'America/Chicago', '2026-05-31'],
    ['2026-06-01T05:00:00.000Z', 'America/Chicago', '2026-06-01'],
    ['2026-01-01T05:59:59.999Z', 'America/Chicago', '2025-12-31'],
    ['2026-01-01T06:00:00.000Z', 'America/Chicago', '2026-01-01'],
    ['2026-06-01T11:59:59.999Z', 'Pacific/Auckland', '2026-06-01'],
    ['2026-06-01T12:00:00.000Z', 'Pacific/Auckland', '2026-06-02'],
    ['2026-06-01T18:29:59.999Z', 'Asia/Kolkata', '2026-06-01'],
    ['2026-06-01T18:30:00.000Z', 'Asia/Kolkata', '2026-06-02'],
    ['2024-02-29T23:59:59.999Z', 'UTC', '2024-02-29'],
  ])('changes at midnight there: %s in %s is %s', (instant, zone, day) => {
    expect(plantDayAt(instant, zone)).toBe(day);
  });

  it.each([
    ['2026-03-08T06:00:00.000Z', '2026-03-08'],
    ['2026-03-09T04:59:59.999Z', '2026-03-08'],
    ['2026-03-09T05:00:00.000Z', '2026-03-09'],
    ['2026-11-01T05:00:00.000Z', '2026-11-01'],
    ['2026-11-02T05:59:59.999Z', '2026-11-01'],
    ['2026-11-02T06:00:00.000Z', '2026-11-02'],
  ])('follows the clock of Chicago through its 23-hour and its 25-hour day: %s', (instant, day) => {
    expect(plantDayAt(instant, 'America/Chicago')).toBe(day);
  });
});

describe('a process that runs in another time zone', () => {
  const module = (name: string): string => new URL(`../../../../src/domain/dates/${name}.ts`, import.meta.url).href;
  const script = `
    const { addPlantDays, daysBetween, parsePlantDay, plantDayAt } = await import(${JSON.stringify(module('plant-day'))});
    const { dueDate, isOverdue } = await import(${JSON.stringify(module('due-date'))});
    const wrong = [];
    for (let at = Date.UTC(1990, 0, 1); at < Date.UTC(2040, 0, 1); at += 86400000) {
      const day = new Date(at).toISOString().slice(0, 10);
      const next = new Date(at + 86400000).toISOString().slice(0, 10);
      const right = parsePlantDay(day).ok && addPlantDays(day, 1) === next && addPlantDays(next, -1) === day
        && addPlantDays(day, 0) === day && daysBetween(day, next) === 1 && dueDate(day, 0) === day;
      if (!right) wrong.push(day);
    }
    const due = [['2025-08-31', 6], ['2024-02-29', 12], ['2026-03-08', 12], ['2025-11-01', 12]].map(([day, n]) => dueDate(day, n));
    const at = plantDayAt('2026-06-01T04:59:59.999Z', 'America/Chicago');
    console.log(JSON.stringify({ wrong, due, at, overdue: isOverdue('2026-03-08', '2026-03-09'), offset: new Date(0).getTimezoneOffset() }));
  `;
  const runIn = (zone: string): unknown =>
    JSON.parse(
      execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], {
        env: { ...process.env, TZ: zone },
        encoding: 'utf8',
      }),
    );

  // Apia and Kwajalein are zones in which a whole calendar day never was.
  it.each([
    ['Pacific/Auckland', -720],
    ['America/Los_Angeles', 480],
    ['Pacific/Apia', 660],
    ['Pacific/Kwajalein', 720],
  ])('counts the same days: %s', (zone, offset) => {
    expect(runIn(zone)).toEqual({
      wrong: [],
      due: ['2026-02-28', '2025-02-28', '2027-03-08', '2026-11-01'],
      at: '2026-05-31',
      overdue: true,
      offset,
    });
  });
});
