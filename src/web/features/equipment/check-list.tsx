// The interim checks of a pair, each with how far it lies from the curve and how far it may; and recording one.

import { useState } from 'react';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import type { CheckAnswer } from '../../../contract/check.ts';
import { mayDo } from '../../../domain/rules/role.ts';
import { useAsOfDay } from '../../app/as-of-day.ts';
import { useSession } from '../../app/queries/use-session.ts';
import { NumberCell, ScrollTable } from '../../charts/scroll-table.tsx';
import { Button } from '../../controls/button.tsx';
import { formatNumber } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import { CheckForm } from './check-form.tsx';
import styles from './event-list.module.css';

export function CheckList({ page }: { readonly page: PairPageAnswer }) {
  const { checks: text } = words;
  const [isRecording, setRecording] = useState(false);
  const person = useSession().data?.person ?? null;
  const isPast = useAsOfDay() !== null;
  const mayRecord = !isPast && page.parted === null && person !== null && mayDo(person.role, 'record-check');
  return (
    <div className={styles.events}>
      <ScrollTable title={text.title} columns={text.columns} numbersFrom={3}>
        {page.checks.flatMap((check) => rowsOf(check))}
        {page.checks.length === 0 ? (
          <tr>
            <td colSpan={text.columns.length}>{text.none}</td>
          </tr>
        ) : null}
      </ScrollTable>
      {mayRecord && !isRecording ? (
        <div>
          <Button aria-expanded={false} onClick={() => setRecording(true)}>
            {text.record}
          </Button>
        </div>
      ) : null}
      {mayRecord && isRecording ? <CheckForm page={page} onClose={() => setRecording(false)} /> : null}
    </div>
  );
}

const figure = (value: number): string => formatNumber(value, { rule: 'significant-digits', digits: 4 });
const percent = (value: number): string => formatNumber(value, { rule: 'decimals', decimals: 2 });

/** A line a level; a check that could not be judged has one without figures. */
function rowsOf({ seq, on, loadCell, calibration, levels, units, outcome }: CheckAnswer) {
  const { checks: text } = words;
  if (levels.length === 0 || units === null) {
    return [
      <tr key={seq}>
        <th scope="row">{on}</th>
        <td>{loadCell}</td>
        <td>{calibration}</td>
        <td colSpan={4} />
        <td>{text.outcomes[outcome]}</td>
      </tr>,
    ];
  }
  return levels.map((level) => (
    <tr key={`${seq} ${level.reading}`}>
      <th scope="row">{on}</th>
      <td>{loadCell}</td>
      <td>{calibration}</td>
      <NumberCell>{`${figure(level.force)} ${units.force}`}</NumberCell>
      <NumberCell>{`${figure(level.reading)} ${units.reading}`}</NumberCell>
      <NumberCell>{`${level.deviationPercent > 0 ? '+' : ''}${percent(level.deviationPercent)}`}</NumberCell>
      <NumberCell>{percent(level.limitPercent)}</NumberCell>
      <td>{text.outcomes[level.isOutside ? 'outside' : 'passed']}</td>
    </tr>
  ));
}
