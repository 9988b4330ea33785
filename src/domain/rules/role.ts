// Who may do what: one table of roles, actions and the situation. Signing in is in service/sign-in.ts.

export const roles = ['crew', 'technician', 'quality', 'auditor', 'administrator'] as const;
export type Role = (typeof roles)[number];

interface ActionRule {
  readonly roles: readonly Role[];
  /** One's own run sheet, entry of a person or credentials: may it be that, must it not, must it be nothing else? */
  readonly own: 'too' | 'never' | 'only';
}

const rule = (own: ActionRule['own'], ...allowed: readonly Role[]): ActionRule => ({ roles: allowed, own });

const table = {
  'look-up': rule('too', ...roles),
  'release-reading': rule('too', 'crew', 'technician', 'quality', 'administrator'),
  'register-equipment': rule('too', 'technician', 'quality', 'administrator'),
  'amend-equipment': rule('too', 'technician', 'quality'),
  'retire-equipment': rule('too', 'technician', 'quality'),
  'record-stressing': rule('too', 'crew', 'technician', 'quality'),
  'record-run': rule('too', 'technician', 'quality'),
  'record-check': rule('too', 'technician', 'quality'),
  'approve-calibration': rule('never', 'quality'),
  'reject-calibration': rule('too', 'quality'),
  'withdraw-certificate': rule('too', 'quality'),
  'withdraw-calibration': rule('too', 'quality'),
  'clear-doubt': rule('never', 'quality'),
  'report-event': rule('too', 'crew', 'technician', 'quality', 'administrator'),
  'settle-event': rule('too', 'quality'),
  'place-hold': rule('too', 'crew', 'technician', 'quality', 'administrator'),
  'lift-hold': rule('too', 'quality'),
  'set-rules': rule('too', 'quality', 'administrator'),
  'set-clock-right': rule('too', 'quality', 'administrator'),
  'add-person': rule('never', 'administrator'),
  'change-person': rule('never', 'administrator'),
  'bar-person': rule('never', 'administrator'),
  'admit-device': rule('too', 'quality', 'administrator'),
  'bar-device': rule('too', 'quality', 'administrator'),
  'change-password': rule('only', ...roles),
  'set-second-factor': rule('only', 'quality', 'administrator'),
} as const satisfies Readonly<Record<string, ActionRule>>;

export type Action = keyof typeof table;
export const actions = Object.keys(table) as readonly Action[];

/** What an action depends on beside the role. */
export interface Situation {
  /** The plant was opened: before that there is nothing to act on. */
  readonly plantOpen: boolean;
  /** The person was barred. */
  readonly barred: boolean;
  /** It is one's own run sheet, one's own entry as a person, or one's own password. */
  readonly own: boolean;
}

/** An open plant, a person who is not barred, a thing of somebody else's. */
export const ordinary: Situation = { plantOpen: true, barred: false, own: false };

/**
 * Answers whether a role may do an action in a situation. House rules: an auditor reads everything and writes nothing but a
 * password of one's own; nobody approves what they entered, nor changes or bars themselves.
 */
export function mayDo(role: Role, action: Action, { plantOpen, barred, own }: Situation = ordinary): boolean {
  const { roles: allowed, own: ownThing }: ActionRule = table[action];
  if (!plantOpen || barred || !allowed.includes(role)) return false;
  return ownThing === 'too' || own === (ownThing === 'only');
}

/** The roles that may do an action, for the words of a refusal. */
export function rolesFor(action: Action): readonly Role[] {
  return table[action].roles;
}
