// Who may do what: one table of roles and actions. Signing in is in service/sign-in.ts.

export const roles = ['crew', 'technician', 'quality', 'auditor', 'administrator'] as const;
export type Role = (typeof roles)[number];

export const actions = [
  'look-up',
  'release-reading',
  'register-equipment',
  'amend-equipment',
  'retire-equipment',
  'record-run',
  'decide-calibration',
  'withdraw-certificate',
  'withdraw-calibration',
  'place-hold',
  'lift-hold',
  'set-rules',
  'add-person',
] as const;
export type Action = (typeof actions)[number];

const allowed: Readonly<Record<Action, readonly Role[]>> = {
  'look-up': roles,
  'release-reading': ['crew', 'technician', 'quality', 'administrator'],
  'register-equipment': ['technician', 'quality', 'administrator'],
  'amend-equipment': ['technician', 'quality'],
  'retire-equipment': ['technician', 'quality'],
  'record-run': ['technician', 'quality'],
  'decide-calibration': ['quality'],
  'withdraw-certificate': ['quality'],
  'withdraw-calibration': ['quality'],
  'place-hold': ['crew', 'technician', 'quality', 'administrator'],
  'lift-hold': ['quality'],
  'set-rules': ['quality', 'administrator'],
  'add-person': ['administrator'],
};

/** Answers whether a role may do an action. House rule: an auditor reads everything and writes nothing. */
export function mayDo(role: Role, action: Action): boolean {
  return allowed[action].includes(role);
}

/** The roles that may do an action, for the words of a refusal. */
export function rolesFor(action: Action): readonly Role[] {
  return allowed[action];
}
