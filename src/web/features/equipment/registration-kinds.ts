// What can be registered, field by field: names are those of the HTTP bodies, so that a problem finds its field.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { type YieldBasis, yieldBases } from '../../../domain/strand/strand-row.ts';
import { area } from '../../../domain/units/area.ts';
import { force } from '../../../domain/units/force.ts';
import { length } from '../../../domain/units/length.ts';
import { modulus } from '../../../domain/units/modulus.ts';
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
  reasonCheck,
  tagCheck,
  wholeCheck,
} from './field-checks.ts';

export const registrationKinds = [
  'jack',
  'gauge',
  'pump',
  'load-cell',
  'certificate',
  'laboratory',
  'standard',
  'standard-withdrawal',
  'strand',
  'reel',
  'pair',
] as const;
export type RegistrationKind = (typeof registrationKinds)[number];

export interface RegistrationField {
  readonly name: string;
  readonly label: string;
  readonly hint?: string;
  readonly isOptional?: boolean;
  /** `number` is sent as a number; `day` is a day of the calendar; `files` are sent before; `text` is sent as typed. */
  readonly type: 'text' | 'number' | 'day' | 'files';
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
  /** Names it where it is kept, if not its kind: the correction of one thing. */
  readonly kept?: string | undefined;
  readonly title: string;
  /** What happens after. */
  readonly lead?: string;
  readonly look?: 'primary' | 'grave';
  readonly send: string;
  readonly fields: readonly RegistrationField[];
  /** Why it cannot be registered now; absent where it can. */
  readonly hindrance?: string | undefined;
  /** The address of the server, which may depend on what was typed. */
  readonly address: (values: Readonly<Record<string, string>>) => string;
  /** Fields that are part of the address and not of the body. */
  readonly notInBody?: readonly string[];
  /** The body that is sent, where the fields alone are not it. */
  readonly bodyOf?: (body: Readonly<Record<string, unknown>>) => unknown;
  /** Where in that body a field stands, for the problem that belongs beside it; the name alone where they are it. */
  readonly placeOf?: (name: string) => string;
  readonly done: (values: Readonly<Record<string, string>>) => string;
}

const { equipment, strands, traceability } = words;
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
const files = text('files', traceability.files, { type: 'files', isOptional: true, hint: traceability.filesHint });
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
    case 'strand':
      return strandRegistration();
    case 'reel':
      return reelRegistration();
    case 'laboratory':
      return laboratoryRegistration();
    case 'standard':
      return standardRegistration(register);
    case 'standard-withdrawal':
      return standardWithdrawal(register);
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
      restsOn(register),
      text('asFoundError', traceability.asFoundError, {
        type: 'number',
        isOptional: true,
        hint: traceability.asFoundHint,
        check: numberCheck({ low: -100, high: 100 }),
      }),
      text('asFoundLimit', traceability.asFoundLimit, {
        type: 'number',
        isOptional: true,
        check: numberCheck({ low: 0, high: 100, isAbove: true }),
      }),
      files,
    ],
    address: (values) => `/api/load-cells/${encodeURIComponent(values.loadCell ?? '')}/certificates`,
    notInBody: ['loadCell'],
    done: (values) => equipment.certificateFiled(values.number ?? '', values.loadCell ?? ''),
  };
}

const millCertificate = text('certificate', strands.certificate, {
  hint: strands.certificateHint,
  check: lengthCheck(120),
});

function strandRegistration(): Registration {
  return {
    kind: 'strand',
    title: strands.fileStrand,
    lead: strands.fileStrandLead,
    send: equipment.file,
    fields: [
      text('designation', strands.designation, { hint: strands.designationHint, check: lengthCheck(60) }),
      text('grade', strands.grade, { check: lengthCheck(40) }),
      quantity(area, 'area', strands.area, { hint: strands.areaHint }),
      quantity(force, 'breakingLoad', strands.breakingLoad, { hint: strands.specifiedHint }),
      quantity(force, 'yieldLoad', strands.yieldLoad, {}),
      text('yieldBasis', strands.yieldBasis, {
        start: 'one-percent-extension' satisfies YieldBasis,
        options: yieldBases.map((value) => ({ value, text: strands.yieldBases[value] })),
      }),
      quantity(modulus, 'modulus', strands.modulus, { hint: strands.modulusHint }),
      millCertificate,
    ],
    address: () => '/api/strands',
    done: (values) => strands.strandFiled(values.designation ?? ''),
  };
}

function reelRegistration(): Registration {
  return {
    kind: 'reel',
    title: strands.fileReel,
    lead: strands.fileReelLead,
    send: equipment.file,
    fields: [
      text('id', strands.reel, { hint: equipment.tagHint, check: tagCheck }),
      text('strand', strands.strand, { hint: strands.strandHint, check: lengthCheck(60) }),
      text('heat', strands.heat, { isOptional: true, check: lengthCheck(60) }),
      quantity(area, 'area', strands.area, { hint: strands.areaHint }),
      quantity(force, 'breakingLoad', strands.breakingLoad, { hint: strands.foundHint }),
      quantity(modulus, 'modulus', strands.modulus, { hint: strands.modulusHint }),
      millCertificate,
    ],
    address: () => '/api/reels',
    done: (values) => strands.reelFiled(values.id ?? ''),
  };
}

function laboratoryRegistration(): Registration {
  return {
    kind: 'laboratory',
    title: traceability.fileLaboratory,
    send: equipment.file,
    fields: [
      text('name', traceability.laboratoryName, { hint: traceability.laboratoryNameHint, check: lengthCheck(120) }),
      text('place', traceability.place, { isOptional: true, check: lengthCheck(120) }),
      text('accreditationBody', traceability.accreditationBody, { isOptional: true, check: lengthCheck(120) }),
      text('accreditationNumber', traceability.accreditationNumber, { isOptional: true, check: lengthCheck(80) }),
      day('accreditationUntil', traceability.accreditationUntil, { isOptional: true }),
      files,
    ],
    address: () => '/api/laboratories',
    done: (values) => traceability.laboratoryFiled(values.name ?? ''),
  };
}

function standardWithdrawal(register: EquipmentAnswer): Registration {
  const standing = register.standards.filter(({ withdrawn }) => withdrawn === undefined);
  return {
    kind: 'standard-withdrawal',
    title: traceability.withdrawStandard,
    lead: traceability.withdrawStandardLead,
    look: 'grave',
    send: traceability.withdrawStandard,
    hindrance: standing.length === 0 ? traceability.noStandardToWithdraw : undefined,
    fields: [
      text('number', traceability.standardNumber, {
        options: [
          { value: '', text: traceability.chooseStandard },
          ...standing.map(({ number, instrument }) => ({ value: number, text: `${number}, ${instrument}` })),
        ],
        check: lengthCheck(60),
      }),
      text('reason', equipment.reason, { hint: words.part.reasonHint, check: reasonCheck }),
      {
        name: 'lastGood',
        label: words.part.lastGood,
        hint: words.part.lastGoodHint,
        type: 'day',
        isOptional: true,
        check: dayCheck,
      },
    ],
    address: ({ number = '' }) => `/api/standards/${encodeURIComponent(number)}/withdrawal`,
    notInBody: ['number'],
    done: ({ number = '' }) => traceability.standardWithdrawn(number),
  };
}

function standardRegistration(register: EquipmentAnswer): Registration {
  return {
    kind: 'standard',
    title: traceability.fileStandard,
    send: equipment.file,
    fields: [
      text('number', traceability.standardNumber, { check: lengthCheck(60) }),
      text('instrument', traceability.instrument, { hint: traceability.instrumentHint, check: lengthCheck(120) }),
      text('heldBy', traceability.heldBy, { hint: traceability.heldByHint, check: lengthCheck(120) }),
      text('issuedBy', traceability.issuedByLabel, { hint: traceability.issuedByHint, check: lengthCheck(120) }),
      day('calibratedOn', equipment.calibratedOn),
      day('validUntil', equipment.validUntil),
      text('expandedUncertaintyPercent', equipment.expandedUncertainty, {
        type: 'number',
        isOptional: true,
        check: numberCheck({ low: 0, high: 10, isAbove: true }),
      }),
      text('coverageFactor', equipment.coverageFactor, {
        type: 'number',
        isOptional: true,
        check: numberCheck({ low: 1, high: 4 }),
      }),
      restsOn(register),
      files,
    ],
    address: () => '/api/standards',
    done: (values) => traceability.standardFiled(values.number ?? ''),
  };
}

function restsOn(register: EquipmentAnswer): RegistrationField {
  return text('restsOn', traceability.restsOn, {
    isOptional: true,
    hint: traceability.restsOnHint,
    options: [
      { value: '', text: traceability.noneAbove },
      ...register.standards.map(({ number, instrument }) => ({ value: number, text: `${number}, ${instrument}` })),
    ],
  });
}

function pairRegistration(register: EquipmentAnswer): Registration {
  const together = register.pairs.filter(({ parted }) => !parted);
  const retired = register.heldBy.parts.filter((part) => part.retired !== null).map(({ tag: part }) => part);
  const jacks = register.jacks.filter(
    (jack) => !retired.includes(jack.tag) && !together.some((pair) => pair.jack === jack.tag),
  );
  const gauges = register.gauges.filter(
    (gauge) => !retired.includes(gauge.tag) && !together.some((pair) => pair.gauge === gauge.tag),
  );
  const pumps = register.pumps.filter((pump) => !retired.includes(pump.tag));
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
      text('pump', equipment.pump, { isOptional: true, options: choices(pumps.map((pump) => pump.tag)) }),
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
