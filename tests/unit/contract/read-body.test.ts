import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { submissionBody } from '../../../src/contract/calibration.ts';
import { dueQuery } from '../../../src/contract/due.ts';
import { certificateBody, gaugeBody, jackBody, pairBody, reasonBody } from '../../../src/contract/equipment.ts';
import { lookupQuery, releaseBody } from '../../../src/contract/lookup.ts';
import { openingBody, personBody } from '../../../src/contract/plant.ts';
import { readBody } from '../../../src/contract/read-body.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { runSheet } from '../../plant-at-work.ts';

const jack = { tag: 'J-1', serial: 'S1', ratedForce: '50 kip', pistonArea: { value: 7, unit: 'in2' } };
const certificate = {
  number: 'K-1',
  laboratory: 'a laboratory',
  traceableTo: 'a national standard',
  calibratedOn: '2026-01-02',
  validUntil: '2027-01-02',
  expandedUncertaintyPercent: 0.24,
};
const opening = {
  code: 'CODE',
  plantName: 'A Plant',
  timeZone: 'America/Chicago',
  administrator: { id: 'ada', name: 'Ada', password: 'pass-word-12' },
};

describe('a body at the edge', () => {
  it('is read with what was left out filled in', () => {
    expect(outcomeValue(readBody(jackBody, jack))).toEqual({ ...jack, strandsPulled: 1 });
    expect(outcomeValue(readBody(certificateBody, certificate))).toEqual({ ...certificate, coverageFactor: 2 });
    expect(
      outcomeValue(readBody(gaugeBody, { tag: 'G', serial: '1', fullScale: '1 bar', graduation: '1 bar' })),
    ).toMatchObject({ display: 'dial' });
  });

  it('keeps no space around tags and days', () => {
    expect(
      outcomeValue(readBody(pairBody, { tag: ' P-1 ', jack: 'J-1 ', gauge: ' G-1', formedOn: ' 2026-01-05' })),
    ).toEqual({
      tag: 'P-1',
      jack: 'J-1',
      gauge: 'G-1',
      formedOn: '2026-01-05',
    });
    expect(outcomeValue(readBody(certificateBody, { ...certificate, validUntil: '2027-01-02\n' })).validUntil).toBe(
      '2027-01-02',
    );
    expect(outcomeValue(readBody(lookupQuery, { on: ' 2026-06-01 ' })).on).toBe('2026-06-01');
  });

  it('takes a tag that is also the name of a member of every object, as the plain text it is', () => {
    for (const tag of ['constructor', 'toString', 'valueOf']) {
      expect(outcomeValue(readBody(jackBody, { ...jack, tag })).tag).toBe(tag);
    }
  });

  it.each([
    [jackBody, { ...jack, tag: '' }, 'field-invalid', 'tag'],
    [jackBody, { ...jack, tag: '__proto__' }, 'field-invalid', 'tag'],
    [jackBody, { ...jack, tag: 'two words' }, 'field-invalid', 'tag'],
    [jackBody, { ...jack, tag: undefined }, 'field-missing', 'tag'],
    [jackBody, { ...jack, serial: '  ' }, 'field-invalid', 'serial'],
    [jackBody, { ...jack, ratedForce: 50 }, 'field-invalid', 'ratedForce'],
    [jackBody, { ...jack, ratedForce: { value: '50', unit: 'kip' } }, 'field-invalid', 'ratedForce.value'],
    [
      jackBody,
      { ...jack, ratedForce: { value: Number.POSITIVE_INFINITY, unit: 'kip' } },
      'field-invalid',
      'ratedForce.value',
    ],
    [jackBody, { ...jack, ratedForce: { value: 50 } }, 'field-missing', 'ratedForce.unit'],
    [jackBody, { ...jack, strandsPulled: 0 }, 'field-invalid', 'strandsPulled'],
    [jackBody, { ...jack, strandsPulled: 1.5 }, 'field-invalid', 'strandsPulled'],
    [jackBody, { ...jack, strandsPulled: 61 }, 'field-invalid', 'strandsPulled'],
    [certificateBody, { ...certificate, calibratedOn: '2026-02-30' }, 'field-invalid', 'calibratedOn'],
    [certificateBody, { ...certificate, validUntil: undefined }, 'field-missing', 'validUntil'],
    [certificateBody, { ...certificate, expandedUncertaintyPercent: 0 }, 'field-invalid', 'expandedUncertaintyPercent'],
    [
      certificateBody,
      { ...certificate, expandedUncertaintyPercent: 10.1 },
      'field-invalid',
      'expandedUncertaintyPercent',
    ],
    [certificateBody, { ...certificate, coverageFactor: 0.9 }, 'field-invalid', 'coverageFactor'],
    [reasonBody, { reason: ' x ' }, 'field-invalid', 'reason'],
    [reasonBody, { reason: '     ' }, 'field-invalid', 'reason'],
    [reasonBody, {}, 'field-missing', 'reason'],
    [releaseBody, { name: 'F. Foreman', reason: 'long enough' }, 'field-invalid', 'body'],
    [lookupQuery, { fraction: true }, 'field-invalid', 'fraction'],
    [lookupQuery, { fraction: ['0.5'] }, 'field-invalid', 'fraction'],
    [submissionBody, { sheet: { ...runSheet(), pair: undefined } }, 'field-missing', 'sheet.pair'],
    [submissionBody, { sheet: { ...runSheet(), calibratedOn: undefined } }, 'field-missing', 'sheet.calibratedOn'],
    [submissionBody, { sheet: runSheet(), degree: 4 }, 'field-invalid', 'degree'],
    [submissionBody, { sheet: runSheet(), degree: '2' }, 'field-invalid', 'degree'],
    [dueQuery, { within: '-1' }, 'field-invalid', 'within'],
    [dueQuery, { within: '60 days' }, 'field-invalid', 'within'],
    [dueQuery, { on: 'today' }, 'field-invalid', 'on'],
    [lookupQuery, { force: 'x'.repeat(81) }, 'field-invalid', 'force'],
    [personBody, { id: 'Ada', name: 'Ada', role: 'crew', password: 'pass-word-12' }, 'field-invalid', 'id'],
    [personBody, { id: '__proto__', name: 'Ada', role: 'crew', password: 'pass-word-12' }, 'field-invalid', 'id'],
    [personBody, { id: 'ada', name: 'Ada', role: 'chief', password: 'pass-word-12' }, 'field-invalid', 'role'],
    [personBody, { id: 'ada', name: 'Ada', role: 'crew', password: 'short' }, 'field-invalid', 'password'],
  ] as const)('is refused with what, where, needed and given', (schema: z.ZodType, input, code, where) => {
    const read = readBody(schema, input);
    expect(read).toMatchObject({ ok: false, problem: { code, where } });
    if (!read.ok) {
      expect(read.problem.needed, 'needed').toBeTruthy();
      expect(read.problem.needed).not.toMatch(/Invalid input|expected/i);
      expect(read.problem.given, 'given').toBeDefined();
      expect(read.problem.message).toContain(where);
    }
  });

  it('does not repeat a long text in full', () => {
    const read = readBody(z.object({ note: z.string().max(10) }), { note: 'x'.repeat(100_000) });
    expect(JSON.stringify(read).length).toBeLessThan(1000);
  });
});

describe('the time zone of a plant', () => {
  it.each(['America/Chicago', 'UTC', 'Asia/Kolkata', 'America/Argentina/Buenos_Aires', 'US/Central', 'Europe/Kyiv'])(
    'is taken by any name it has: %s',
    (timeZone) => {
      expect(readBody(openingBody, { ...opening, timeZone })).toMatchObject({ ok: true });
    },
  );

  it.each(['', 'Mars/Olympus', '+05:00', '__proto__', 'America/Chicago; x', ' '])(
    'is refused where there is none: %j',
    (timeZone) => {
      expect(readBody(openingBody, { ...opening, timeZone })).toMatchObject({
        ok: false,
        problem: { code: 'field-invalid', where: 'timeZone' },
      });
    },
  );
});
