// What can be registered, field by field: names are those of the HTTP bodies, so that a problem finds its field.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { words } from '../../words/desk-words.ts';

export type RegistrationKind = 'jack' | 'gauge' | 'pump' | 'load-cell' | 'certificate' | 'pair';

export interface RegistrationField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly isOptional?: boolean;
  /** `number` is sent as a number; `day` is a day of the calendar; `text` is sent as typed. */
  readonly type: 'text' | 'number' | 'day';
  readonly start?: string;
  /** Where the field is a choice. */
  readonly options?: readonly { readonly value: string; readonly text: string }[];
}

export interface Registration {
  readonly title: string;
  readonly send: string;
  readonly fields: readonly RegistrationField[];
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
const tag = text('tag', equipment.tag, { hint: equipment.tagHint });
const serial = text('serial', equipment.serial);
const note = text('note', equipment.note, { isOptional: true });

const part = (
  kind: keyof typeof equipment.kinds,
  path: string,
  title: string,
  fields: readonly RegistrationField[],
): Registration => ({
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
        text('ratedForce', equipment.ratedForce, { hint: equipment.forceHint }),
        text('pistonArea', equipment.pistonArea, { hint: equipment.areaHint }),
        text('stroke', equipment.stroke, { hint: equipment.lengthHint, isOptional: true }),
        text('strandsPulled', equipment.strandsPulled, { type: 'number', start: '1' }),
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
        text('fullScale', equipment.fullScale, { hint: equipment.pressureHint }),
        text('graduation', equipment.graduation, { hint: equipment.graduationHint }),
        text('accuracyClass', equipment.accuracyClass, { isOptional: true }),
        text('dialDiameter', equipment.dialDiameter, { hint: equipment.lengthHint, isOptional: true }),
      ]);
    case 'pump':
      return part('pump', 'pumps', equipment.registerPump, []);
    case 'load-cell':
      return part('load-cell', 'load-cells', equipment.registerLoadCell, [
        text('capacity', equipment.capacity, { hint: equipment.forceHint }),
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
    title: equipment.fileCertificate,
    send: equipment.file,
    fields: [
      text('loadCell', equipment.loadCell, { start: chosenCell, options: choices(cells) }),
      text('number', equipment.certificateNumber),
      text('laboratory', equipment.laboratory),
      text('accreditation', equipment.accreditation, { isOptional: true }),
      text('traceableTo', equipment.traceableTo, { hint: equipment.traceableHint }),
      text('standard', equipment.standard, { hint: equipment.standardHint, isOptional: true }),
      text('calibratedOn', equipment.calibratedOn, { type: 'day' }),
      text('validUntil', equipment.validUntil, { type: 'day' }),
      text('expandedUncertaintyPercent', equipment.expandedUncertainty, { type: 'number' }),
      text('coverageFactor', equipment.coverageFactor, { type: 'number', start: '2' }),
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
    title: equipment.formPair,
    send: equipment.form,
    fields: [
      tag,
      text('jack', equipment.jack, { options: choices(jacks.map((jack) => jack.tag)) }),
      text('gauge', equipment.gauge, { options: choices(gauges.map((gauge) => gauge.tag)) }),
      text('pump', equipment.pump, { isOptional: true, options: choices(register.pumps.map((pump) => pump.tag)) }),
      text('hose', equipment.hose, { isOptional: true }),
      text('formedOn', equipment.formedOn, { type: 'day', isOptional: true, hint: equipment.formedOnHint }),
    ],
    address: () => '/api/pairs',
    done: (values) => equipment.pairFormed(values.tag ?? ''),
  };
}

function choices(tags: readonly string[]) {
  return [{ value: '', text: equipment.choose }, ...tags.map((value) => ({ value, text: value }))];
}
