// The forms of a part's page: correcting what is registered, taking out of use, withdrawing a certificate. A correction
// names the entry it takes the place of, so that nobody corrects what somebody else corrected meanwhile.

import type { EquipmentAnswer } from '../../../../contract/equipment.ts';
import type { PartPageAnswer } from '../../../../contract/part-page.ts';
import { words } from '../../../words/desk-words.ts';
import { dayCheck, reasonCheck } from '../field-checks.ts';
import { type Registration, type RegistrationField, registrationOf } from '../registration-kinds.ts';
import { textsOf } from './part-texts.ts';

const reason: RegistrationField = {
  name: 'reason',
  label: words.equipment.reason,
  hint: words.part.reasonHint,
  type: 'text',
  check: reasonCheck,
};

type Held = PartPageAnswer['certificates'][number];

const addressOf = (tag: string) => `/api/equipment/${encodeURIComponent(tag)}`;
const addressOfCertificate = (cell: string, number: string) =>
  `/api/load-cells/${encodeURIComponent(cell)}/certificates/${encodeURIComponent(number)}`;

/** Answers the fields of a part or a certificate that a correction may change; none where no version is known. */
export function changeableFields({ kind, fields }: Registration): readonly RegistrationField[] {
  const fixed = kind === 'certificate' ? ['loadCell', 'number'] : ['tag'];
  return fields.filter(({ name }) => !fixed.includes(name));
}

const startedWith = (
  fields: readonly RegistrationField[],
  thing: Readonly<Record<string, unknown>>,
): readonly RegistrationField[] => {
  const texts = textsOf(thing);
  return fields.map((field) => ({ ...field, start: texts[field.name] ?? '' }));
};

const done = () => words.part.written;
const placeIn = (body: string) => (name: string) => (name === reason.name ? name : `${body}.${name}`);

export function partAmendment({ part, versions }: PartPageAnswer, register: EquipmentAnswer): Registration {
  const registration = registrationOf(part.kind, register, '');
  return {
    kind: part.kind,
    kept: `correction of ${part.tag}`,
    title: words.part.correctTitle(part.tag),
    lead: words.part.correctLead,
    send: words.part.send,
    fields: [...startedWith(changeableFields(registration), part), reason],
    address: () => `${addressOf(part.tag)}/amendment`,
    bodyOf: ({ reason: why, ...equipment }) => ({
      equipment: { ...equipment, kind: part.kind, tag: part.tag },
      corrects: versions.at(-1)?.entry,
      reason: why,
    }),
    placeOf: placeIn('equipment'),
    done,
  };
}

export function retirement({ part }: PartPageAnswer): Registration {
  return {
    kind: part.kind,
    kept: `retirement of ${part.tag}`,
    title: words.part.retire,
    lead: words.part.retireLead,
    look: 'grave',
    send: words.part.retire,
    fields: [
      reason,
      {
        name: 'on',
        label: words.part.retiredOn,
        hint: words.part.retiredOnHint,
        type: 'day',
        isOptional: true,
        check: dayCheck,
      },
    ],
    address: () => `${addressOf(part.tag)}/retirement`,
    done,
  };
}

export function certificateAmendment({ certificate, versions }: Held, register: EquipmentAnswer): Registration {
  const { loadCell, number } = certificate;
  const registration = registrationOf('certificate', register, loadCell);
  return {
    kind: 'certificate',
    kept: `correction of certificate ${loadCell} ${number}`,
    title: words.part.correctTitle(number),
    lead: words.part.correctLead,
    send: words.part.send,
    fields: [...startedWith(changeableFields(registration), certificate), reason],
    address: () => `${addressOfCertificate(loadCell, number)}/amendment`,
    bodyOf: ({ reason: why, ...written }) => ({
      certificate: { ...written, number },
      corrects: versions.at(-1)?.entry,
      reason: why,
    }),
    placeOf: placeIn('certificate'),
    done,
  };
}

export function certificateWithdrawal({ certificate, restingOnIt }: Held): Registration {
  const { loadCell, number } = certificate;
  return {
    kind: 'certificate',
    kept: `withdrawal of certificate ${loadCell} ${number}`,
    title: words.part.withdraw,
    lead: words.part.withdrawLead(restingOnIt.length),
    look: 'grave',
    send: words.part.withdraw,
    fields: [
      reason,
      {
        name: 'lastGood',
        label: words.part.lastGood,
        hint: words.part.lastGoodHint,
        type: 'day',
        isOptional: true,
        check: dayCheck,
      },
    ],
    address: () => `${addressOfCertificate(loadCell, number)}/withdrawal`,
    done,
  };
}
