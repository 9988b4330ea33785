// What was typed into the forms of the register and which of them is open, kept by this window until it is sent.

import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { type Registration, type RegistrationKind, registrationKinds } from './registration-kinds.ts';

type KeptAs = Pick<Registration, 'kind' | 'kept'>;
type Texts = Readonly<Record<string, string>>;

const formName = ({ kind, kept = kind }: KeptAs): string => `register ${kept}`;
const panelName = 'register panel';

export function startOf({ fields }: Registration): Record<string, string> {
  return Object.fromEntries(fields.map(({ name, start = '' }) => [name, start]));
}

/** A choice that is offered no longer is not recalled. */
export function recallRegistration(registration: Registration): Record<string, string> {
  const { fields } = registration;
  const names = fields.map(({ name }) => name);
  const kept = recallFields(window.sessionStorage, formName(registration), names);
  const recalled: Record<string, string> = {};
  for (const { name, options } of fields) {
    const text = kept[name];
    const isOffered = options === undefined || options.some(({ value }) => value === text);
    if (text !== undefined && isOffered) recalled[name] = text;
  }
  return recalled;
}

export function keepRegistration(registration: KeptAs, values: Texts): void {
  keepFields(window.sessionStorage, formName(registration), values);
}

export function forgetRegistration(registration: KeptAs): void {
  forgetFields(window.sessionStorage, formName(registration));
}

export interface OpenForm {
  readonly kind: RegistrationKind | null;
  /** The load cell a certificate is filed for next, blank for none. */
  readonly cell: string;
}

export function recallOpenForm(): OpenForm {
  const { kind, cell = '' } = recallFields(window.sessionStorage, panelName, ['kind', 'cell']);
  return { kind: registrationKinds.find((known) => known === kind) ?? null, cell };
}

export function keepOpenForm({ kind, cell }: OpenForm): void {
  if (kind === null) forgetFields(window.sessionStorage, panelName);
  else keepFields(window.sessionStorage, panelName, { kind, cell });
}
