// What can be registered, field by field: names are those of the HTTP bodies, so that a problem finds its field.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { area } from '../../../domain/units/area.ts';
import { force } from '../../../domain/units/force.ts';
import { length } from '../../../domain/units/length.ts';
import { pressure } from '../../../domain/units/pressure.ts';
import type { UnitTable } from '../../../domain/units/quantity.ts';
import { words } from '../../words/desk-words.ts';
import {
  dayCheck,
  type FieldCheck,
  graduationCaution,
  lengthCheck,
  numberCheck,
  quantityCheck,
  tagCheck,
  wholeCheck,
} from './field-checks.ts';

export const registrationKinds = ['jack', 'gauge', 'pump', 'load-cell', 'certificate', 'pair'] as const;
export type RegistrationKind = (typeof registrationKinds)[number];

export interface RegistrationField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly isOptional?: boolean;
  /** `number` is sent as a number; `day` is a day of the calendar; `text` is sent as typed. */
  readonly type: 'text' | 'number' | 'day';
  /** What is wrong with what was typed, before anything is sent. */
  readonly check?: FieldCheck;
  /** What to look at once more, beside the field; it refuses nothing. */
  readonly caution?: FieldCheck;
  readonly start?: string;
  /** Where the field is a choice. */
  readonly options?: readonly { readonly value: string; readonly text: string }[];
}

export interface Registration {
  /** Names the form where its text is kept. */
  readonly kind: RegistrationKind;
  readonly title: string;
  readonly send: string;
  readonly fields: readonly RegistrationField[];
  /** Why it cannot be registered now; absent where it can. */
  readonly hindrance?: string | undefined;
  /** The address of the server, which may depend on what was typed. */
  readonly address: (values: Readonly<Record<string, string>>) => string;
  /** Fields that are part of the address and not of the body. */
  readonly notInBody?: readonly string[];
  readonly done: (values: Readonly<Record<string, string>>) => string;
}

const { equipment } = words;
const text = (name: string, label: string, more: Partial<RegistrationField> = {}): RegistrationField => ({
  name,
  label,
  type: 'text',
  ...more,
});
const quantity = <U extends string>(
  table: UnitTable<U>,
  name: string,
  label: string,
  more: Partial<RegistrationField>,
): RegistrationField => text(name, label, { check: quantityCheck(table, label), ...more });
const day = (name: string, label: string, more: Partial<RegistrationField> = {}): RegistrationField =>
  text(name, label, { type: 'day', check: dayCheck, ...more });
const tag = text('tag', equipment.tag, { hint: equipment.tagHint, check: tagCheck });
const serial = text('serial', equipment.serial, { check: lengthCheck(60) });
const note = text('note', equipment.note, { isOptional: true, check: lengthCheck(500) });

const part = (
  kind: keyof typeof equipment.kinds,
  path: string,
  title: string,
  fields: readonly RegistrationField[],
): Registration => ({
  kind,
  title,
  send: equipment.register,
  fields: [tag, serial, ...fields, note],
  address: () => `/api/${path}`,
  done: (values) => equipment.registered(equipment.kinds[kind], values.tag ?? ''),
});

export function registrationOf(kind: RegistrationKind, register: EquipmentAnswer, chosenCell: string): Registration {
  switch (kind) {
    case 'jack':
      return part('jack', 'jacks', equipment.registerJack, [
        quantity(force, 'ratedForce', equipment.ratedForce, { hint: equipment.forceHint }),
        quantity(area, 'pistonArea', equipment.pistonArea, { hint: equipment.areaHint }),
        quantity(length, 'stroke', equipment.stroke, { hint: equipment.lengthHint, isOptional: true }),
        text('strandsPulled', equipment.strandsPulled, { type: 'number', start: '1', check: wholeCheck(1, 60) }),
      ]);
    case 'gauge':
      return part('gauge', 'gauges', equipment.registerGauge, [
        text('display', equipment.display, {
          start: 'dial',
          options: [
            { value: 'dial', text: equipment.dial },
            { value: 'digital', text: equipment.digital },
          ],
        }),
        quantity(pressure, 'fullScale', equipment.fullScale, { hint: equipment.pressureHint }),
        quantity(pressure, 'graduation', equipment.graduation, {
          hint: equipment.graduationHint,
          caution: graduationCaution,
        }),
        text('readablePart', equipment.readablePart, {
          type: 'number',
          isOptional: true,
          hint: equipment.readablePartHint,
          options: [
            { value: '', text: equipment.readablePartOpen },
            ...([2, 5, 10] as const).map((part) => ({ value: String(part), text: equipment.readableParts[part] })),
          ],
        }),
        text('accuracyClass', equipment.accuracyClass, { isOptional: true, check: lengthCheck(40) }),
        quantity(length, 'dialDiameter', equipment.dialDiameter, { hint: equipment.lengthHint, isOptional: true }),
      ]);
    case 'pump':
      return part('pump', 'pumps', equipment.registerPump, []);
    case 'load-cell':
      return part('load-cell', 'load-cells', equipment.registerLoadCell, [
        quantity(force, 'capacity', equipment.capacity, { hint: equipment.forceHint }),
        quantity(force, 'resolution', equipment.indicatorStep, { hint: equipment.indicatorStepHint, isOptional: true }),
      ]);
    case 'certificate':
      return certificateRegistration(register, chosenCell);
    case 'pair':
      return pairRegistration(register);
  }
}

function certificateRegistration(register: EquipmentAnswer, chosenCell: string): Registration {
  const registered = register.loadCells.map(({ tag: cell }) => cell);
  // A cell registered a moment ago may not be in the answer yet.
  const cells = chosenCell === '' || registered.includes(chosenCell) ? registered : [...registered, chosenCell];
  return {
    kind: 'certificate',
    title: equipment.fileCertificate,
    send: equipment.file,
    fields: [
      text('loadCell', equipment.loadCell, { start: chosenCell, options: choices(cells) }),
      text('number', equipment.certificateNumber, { check: lengthCheck(60) }),
      text('laboratory', equipment.laboratory, { check: lengthCheck(120) }),
      text('accreditation', equipment.accreditation, { isOptional: true, check: lengthCheck(80) }),
      text('traceableTo', equipment.traceableTo, { hint: equipment.traceableHint, check: lengthCheck(120) }),
      text('standard', equipment.standard, { hint: equipment.standardHint, isOptional: true, check: lengthCheck(80) }),
      day('calibratedOn', equipment.calibratedOn),
      day('validUntil', equipment.validUntil),
      text('expandedUncertaintyPercent', equipment.expandedUncertainty, {
        type: 'number',
        check: numberCheck({ low: 0, high: 10, isAbove: true }),
      }),
      text('coverageFactor', equipment.coverageFactor, {
        type: 'number',
        start: '2',
        check: numberCheck({ low: 1, high: 4 }),
      }),
    ],
    address: (values) => `/api/load-cells/${encodeURIComponent(values.loadCell ?? '')}/certificates`,
    notInBody: ['loadCell'],
    done: (values) => equipment.certificateFiled(values.number ?? '', values.loadCell ?? ''),
  };
}

function pairRegistration(register: EquipmentAnswer): Registration {
  const together = register.pairs.filter(({ parted }) => !parted);
  const jacks = register.jacks.filter((jack) => !together.some((pair) => pair.jack === jack.tag));
  const gauges = register.gauges.filter((gauge) => !together.some((pair) => pair.gauge === gauge.tag));
  return {
    kind: 'pair',
    hindrance:
      jacks.length > 0 && gauges.length > 0 ? undefined : equipment.cannotForm(jacks.length > 0, gauges.length > 0),
    title: equipment.formPair,
    send: equipment.form,
    fields: [
      tag,
      text('jack', equipment.jack, { options: choices(jacks.map((jack) => jack.tag)) }),
      text('gauge', equipment.gauge, { options: choices(gauges.map((gauge) => gauge.tag)) }),
      text('pump', equipment.pump, { isOptional: true, options: choices(register.pumps.map((pump) => pump.tag)) }),
      text('hose', equipment.hose, { isOptional: true, check: lengthCheck(80) }),
      day('formedOn', equipment.formedOn, { isOptional: true, hint: equipment.formedOnHint }),
    ],
    address: () => '/api/pairs',
    done: (values) => equipment.pairFormed(values.tag ?? ''),
  };
}

function choices(tags: readonly string[]) {
  return [{ value: '', text: equipment.choose }, ...tags.map((value) => ({ value, text: value }))];
}
