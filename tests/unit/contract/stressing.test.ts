import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { readStressingBody, type StressingBody, stressingBody } from '../../../src/contract/stressing.ts';
import { preTensionedWindow } from '../../../src/domain/rules/elongation-window.ts';
import { disagreementReasonCodes } from '../../../src/domain/stressing/disagreement-reason.ts';
import { expectDigits } from '../../expect-digits.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { body } from './stressing-body.ts';

const read = (input: unknown) => readStressingBody(input, () => preTensionedWindow);
const { reel, ...withoutReel } = body;
const withPull = (index: number, more: object): unknown => ({
  ...body,
  pulls: body.pulls.map((pull, at) => (at === index ? { ...pull, ...more } : pull)),
});
const because = { digits: 12, because: 'under thirty roundings of a double' } as const;

describe('the body of a stressing record', () => {
  it('becomes a record with every pull judged', () => {
    const record = outcomeValue(read(body));
    expect(record.theoreticalForce).toEqual({ value: 32, unit: 'kip' });
    expect(record.pulls.map(({ number, outcome, reason, repullOf }) => [number, outcome, reason, repullOf])).toEqual([
      [1, 'within', undefined, undefined],
      [2, 'out-of-window', 'slip', undefined],
      [3, 'within', undefined, 2],
    ]);
    expectDigits(record.pulls[1]?.agreementPercent ?? 0, { certified: 350 / 32, ...because });
    expectDigits(record.pulls[2]?.elongationForce.value ?? 0, { certified: 31.5, ...because });
  });

  it('keeps quantities as they were typed, the reel and the decisions of the engineer', () => {
    const record = outcomeValue(read(body));
    expect(record.pulls[2]?.elongation).toEqual({ value: 711.2, unit: 'mm' });
    expect(record.strand).toBe('1/2 in special 270');
    expect(record.reel).toMatchObject({
      id: 'R-7',
      strandId: '1/2 in special 270',
      area: { value: 0.16, unit: 'in2' },
    });
    expect(record.corrections[1]).toEqual({
      kind: 'temperature',
      effect: { value: -0.4, unit: 'kip' },
      engineer: 'R. Ortiz',
      decision: 'not-applied',
      note: 'under 25 F',
    });
    expect(record.window).toEqual(preTensionedWindow);
  });

  it('takes area and modulus from the table where no reel is given, in the column of the force', () => {
    const input = { ...withoutReel, pulls: body.pulls.map((pull) => ({ ...pull, reason: 'slip' })) };
    expect(outcomeValue(read(input))).toMatchObject({
      reel: null,
      area: { value: 0.167, unit: 'in2' },
      modulus: { value: 28_500, unit: 'ksi' },
    });
    const inNewtons = { ...input, force: '140 kN' };
    expect(outcomeValue(read(inNewtons))).toMatchObject({
      area: { value: 107.7, unit: 'mm2' },
      modulus: { value: 197_000, unit: 'MPa' },
    });
  });

  it("takes a size of the plant's own that a reel describes, and refuses it without one", () => {
    expect(outcomeValue(read({ ...body, strand: '0.55 in plant' })).strand).toBe('0.55 in plant');
    expect(read({ ...withoutReel, strand: '0.55 in plant' })).toMatchObject({
      problem: { code: 'unknown-strand', where: 'strand' },
    });
  });

  it('asks for the reel where the standard names no modulus', () => {
    expect(read({ ...withoutReel, strand: '15.2 mm Y1860S7 prEN 10138-3:2000' })).toMatchObject({
      problem: { code: 'field-missing', where: 'reel' },
    });
  });

  it.each<[string, string, unknown]>([
    ['field-missing', 'bed', { ...body, bed: undefined }],
    ['field-invalid', 'bed', { ...body, bed: ' ' }],
    ['field-invalid', 'on', { ...body, on: '2026-02-30' }],
    ['field-invalid', 'calibrationEntry', { ...body, calibrationEntry: 0 }],
    ['field-invalid', 'strandsPulled', { ...body, strandsPulled: 1.5 }],
    ['field-invalid', 'pulls', { ...body, pulls: [] }],
    ['field-invalid', 'pattern.positions', { ...body, pattern: { name: 'none', positions: [] } }],
    ['field-invalid', 'body', { ...body, outcome: 'within' }],
    ['unit-missing', 'length', { ...body, length: '400' }],
    ['unit-ambiguous', 'force', { ...body, force: '14 t' }],
    ['number-out-of-range', 'preload', { ...body, preload: '0 kip' }],
    ['number-out-of-range', 'preload', { ...body, preload: '33 kip' }],
    ['unit-unknown', 'reel.modulus', { ...body, reel: { ...reel, modulus: '28500 kip' } }],
  ])('is refused with %s at %s', (code, where, input) => {
    expect(read(input)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it.each<[string, string, unknown]>([
    ['field-missing', 'pulls[1].reason', withPull(1, { reason: undefined })],
    ['field-invalid', 'pulls[1].reason', withPull(1, { reason: 'because' })],
    ['field-missing', 'pulls[2].repullOf', withPull(2, { repullOf: undefined })],
    ['field-invalid', 'pulls[2].repullOf', withPull(2, { repullOf: 1 })],
    ['field-invalid', 'pulls[0].positions', withPull(0, { positions: ['C9'] })],
    ['field-invalid', 'pulls[0]', withPull(0, { agreementPercent: 0 })],
    ['ambiguous-number', 'pulls[0].finalReading', withPull(0, { finalReading: '4,300 psi' })],
    ['number-out-of-range', 'pulls[0].finalReading', withPull(0, { finalReading: '500 psi' })],
    ['unit-unknown', 'pulls[0].elongation', withPull(0, { elongation: '28 psi' })],
    ['field-missing', 'pulls[0].gaugeForce', withPull(0, { gaugeForce: undefined })],
  ])('is refused with %s at %s', (code, where, input) => {
    expect(read(input)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it.each<[string, string, object]>([
    ['field-missing', 'corrections[0].engineer', { engineer: undefined }],
    ['field-invalid', 'corrections[0].engineer', { engineer: '' }],
    ['field-missing', 'corrections[0].decision', { decision: undefined }],
    ['field-invalid', 'corrections[0].kind', { kind: 'friction' }],
    ['unit-unknown', 'corrections[0].effect', { kind: 'splice-seating', effect: '0.5 kip' }],
    ['unit-unknown', 'corrections[0].effect', { effect: '0.5 in' }],
    ['number-out-of-range', 'corrections[0].effect', { effect: '-0.5 kip' }],
    ['field-invalid', 'corrections[1].kind', { kind: 'temperature' }],
  ])('is refused with %s at %s of a correction', (code, where, more) => {
    const [first, ...rest] = body.corrections ?? [];
    const input = { ...body, corrections: [{ ...first, ...more }, ...rest] };
    expect(read(input)).toMatchObject({ ok: false, problem: { code, where } });
  });

  it('offers the reasons of the domain and no others', () => {
    const { shape } = stressingBody.shape.pulls.element;
    expect(shape.reason.unwrap().options).toEqual(disagreementReasonCodes);
  });

  it('can be described to others as JSON Schema', () => {
    expect(z.toJSONSchema(stressingBody, { io: 'input' })).toMatchObject({ type: 'object' });
  });

  it.each([null, [], 'bed', 3])('is no record at all where it is %j', (input) => {
    expect(read(input)).toMatchObject({ ok: false, problem: { where: 'body' } });
  });

  it('reads the same from quantities in parts as from quantities as typed', () => {
    const input: StressingBody = { ...body, length: { value: 400, unit: 'ft' }, force: { value: 31.5, unit: 'kip' } };
    expect(read(input)).toEqual(read(body));
  });
});
