// Holding a pair, lifting the hold, and parting it, each with a reason.

import { useState } from 'react';
import { useLocation } from 'wouter';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { forgetFields, keepFields, recallFields } from '../../controls/kept-fields.ts';
import { ReasonForm } from '../../controls/reason-form.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './pair-actions.module.css';
import { isPairAction, type PairAction, usePairAction } from './use-pair-page.ts';

export function PairActions({ page }: { readonly page: PairPageAnswer }) {
  const { equipment } = words;
  const session = useSession();
  const isPast = useAsOfDay() !== null;
  const [location] = useLocation();
  const panel = `actions of ${page.line.tag}`;
  const [open, setOpenNow] = useState(() => recallAction(panel));
  const setOpen = (action: PairAction | null) => {
    if (action === null) forgetFields(window.sessionStorage, panel);
    else keepFields(window.sessionStorage, panel, { action });
    setOpenNow(action);
  };
  const person = session.data?.person ?? null;
  if (session.isPending || isPast) return null;
  const isHeld = page.hold !== null;
  const holding: PairAction = isHeld ? 'hold-lifting' : 'hold';
  const mayHold = person !== null && mayDo(person.role, isHeld ? 'lift-hold' : 'place-hold');
  const mayPart = person !== null && mayDo(person.role, 'register-equipment');
  // The form recalled may be of a hold that was lifted meanwhile, or not for the person signed in now.
  const isOffered = open !== null && (open === 'parting' ? mayPart : mayHold && open === holding);
  return (
    <section className={styles.actions} aria-labelledby="actions-title">
      <h2 id="actions-title">{equipment.actionsTitle}</h2>
      {person === null ? (
        <p className={styles.sign}>
          {equipment.signInToWrite} <ButtonLink href={signInAddress(location, '')}>{equipment.signIn}</ButtonLink>
        </p>
      ) : null}
      {person !== null && !mayHold ? <p>{equipment.holdMayNot}</p> : null}
      <div className={styles.ways}>
        {mayHold ? (
          <Button aria-expanded={open === holding} onClick={() => setOpen(holding)}>
            {isHeld ? equipment.lift : equipment.hold}
          </Button>
        ) : null}
        {mayPart ? (
          <Button look="grave" aria-expanded={open === 'parting'} onClick={() => setOpen('parting')}>
            {equipment.part}
          </Button>
        ) : null}
      </div>
      {isOffered ? <ActionForm key={open} tag={page.line.tag} action={open} onClose={() => setOpen(null)} /> : null}
    </section>
  );
}

function recallAction(panel: string): PairAction | null {
  const { action } = recallFields(window.sessionStorage, panel, ['action']);
  return action !== undefined && isPairAction(action) ? action : null;
}

const texts = {
  hold: [words.equipment.hold, words.equipment.holdWhat],
  'hold-lifting': [words.equipment.lift, words.equipment.liftWhat],
  parting: [words.equipment.part, words.equipment.partWhat],
} as const satisfies Readonly<Record<PairAction, readonly [string, string]>>;

interface ActionFormProps {
  readonly tag: string;
  readonly action: PairAction;
  readonly onClose: () => void;
}

function ActionForm({ tag, action, onClose }: ActionFormProps) {
  const [title, what] = texts[action];
  const look = action === 'hold-lifting' ? 'primary' : 'grave';
  const sending = usePairAction(tag, action);
  return <ReasonForm kept={`${action} ${tag}`} {...{ title, what, look, sending, onClose }} />;
}
