// What is typed into a form, kept by this window until it is sent, so that a lost connection, a sign-in or a reload takes
// nothing away. Never a password. Drafts of calibrations are larger and outlive the window: offline/draft-store.ts.

type Memory = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

const prefix = 'jackledger.typed ';

/** Answers what was typed into these fields of a form before; nothing where the window kept nothing. */
export function recallFields<Name extends string>(
  memory: Memory,
  form: string,
  names: readonly Name[],
): Partial<Record<Name, string>> {
  const kept = readKept(memory, form);
  const found: Partial<Record<Name, string>> = {};
  for (const name of names) {
    const text = kept[name];
    if (typeof text === 'string') found[name] = text;
  }
  return found;
}

function readKept(memory: Memory, form: string): Readonly<Record<string, unknown>> {
  try {
    const kept: unknown = JSON.parse(memory.getItem(prefix + form) ?? '{}');
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

/** Keeps the text of a form's fields. A window that refuses to keep it works all the same. */
export function keepFields(memory: Memory, form: string, fields: Readonly<Record<string, string>>): void {
  try {
    memory.setItem(prefix + form, JSON.stringify(fields));
  } catch {
    return;
  }
}

/** Forgets a form once it was sent. */
export function forgetFields(memory: Memory, form: string): void {
  try {
    memory.removeItem(prefix + form);
  } catch {
    return;
  }
}
