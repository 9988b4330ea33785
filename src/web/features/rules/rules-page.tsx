// The rules of the plant: everybody reads them with their sources; quality and administrators change them here.

import { useState } from 'react';
import { flushSync } from 'react-dom';
import type { RulesAnswer } from '../../../contract/rules.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { signInAddress } from '../../app/sign-in-address.ts';
import { Button } from '../../controls/button.tsx';
import { ButtonLink } from '../../controls/button-link.tsx';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import { forgetDraft, keepDraft, recallDraft } from './kept-draft.ts';
import { fieldId, focusOn } from './limit-change.tsx';
import { RuleList } from './rule-list.tsx';
import { emptyDraft, type RulesDraft } from './rules-draft.ts';
import { RulesEditor } from './rules-editor.tsx';
import { RulesInForce } from './rules-in-force.tsx';
import styles from './rules-page.module.css';
import { SavedNote } from './saved-note.tsx';
import { useRules } from './use-rules.ts';

export function RulesPage() {
  const text = words.rules;
  const rules = useRules();
  const session = useSession();
  const isPast = useAsOfDay() !== null;
  const person = session.data?.person ?? null;
  if (rules.isPending || session.isPending) return <WaitingNote />;
  return (
    <>
      <PageHeading title={text.title} lead={text.lead} />
      <div className={styles.page}>
        <p className={styles.whoDecides}>{text.whoDecides}</p>
        {rules.isError ? <ProblemNote error={rules.error} onRetry={() => rules.refetch()} /> : null}
        {rules.data === undefined ? null : !isPast && person !== null && mayDo(person.role, 'set-rules') ? (
          <ChangeableRules
            key={person.id}
            rules={rules.data}
            person={person.id}
            readAgain={() => void rules.refetch()}
          />
        ) : (
          <>
            <RulesInForce rules={rules.data} />
            {isPast ? null : person === null ? (
              <p className={styles.way}>
                {text.signInToChange} <ButtonLink href={signInAddress('/rules', '')}>{text.signIn}</ButtonLink>
              </p>
            ) : (
              <p>{text.mayNotChange}</p>
            )}
            <RuleList profile={rules.data.inForce} />
          </>
        )}
      </div>
    </>
  );
}

interface ChangeableRulesProps {
  readonly rules: RulesAnswer;
  readonly person: string;
  readonly readAgain: () => void;
}

function ChangeableRules({ rules, person, readAgain }: ChangeableRulesProps) {
  const [draft, setDraftNow] = useState(() => recallDraft(person));
  const [saved, setSaved] = useState<RulesAnswer | null>(null);
  const setDraft = (next: RulesDraft | null) => {
    if (next === null) forgetDraft(person);
    else keepDraft(person, next);
    setDraftNow(next);
  };
  const begin = () => {
    flushSync(() => {
      setSaved(null);
      setDraft(emptyDraft);
    });
    focusOn('from');
  };
  const throwAway = () => {
    flushSync(() => setDraft(null));
    focusOn('begin');
  };
  return (
    <>
      {saved === null ? null : <SavedNote rules={saved} />}
      <RulesInForce rules={rules} />
      {draft === null ? (
        <>
          <div>
            <Button id={fieldId('begin')} look="primary" onClick={begin}>
              {words.rules.change}
            </Button>
          </div>
          <RuleList profile={rules.inForce} />
        </>
      ) : (
        <RulesEditor
          rules={rules}
          draft={draft}
          onDraft={setDraft}
          onThrowAway={throwAway}
          onSaved={(answer) => {
            setDraft(null);
            setSaved(answer);
            window.scrollTo(0, 0);
          }}
          readAgain={readAgain}
        />
      )}
    </>
  );
}
