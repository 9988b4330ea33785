// One stressing record as it stands in the ledger, with what is found of it.

import { useQuery } from '@tanstack/react-query';
import { Link, useParams } from 'wouter';
import { type StressingAnswer, stressingAnswer } from '../../../contract/stressing-answer.ts';
import { get } from '../../app/http-client.ts';
import { usePersonName } from '../../app/queries/use-person-name.ts';
import { formatQuantity } from '../../controls/format-number.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { StandingMark } from '../../controls/standing-mark.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import editor from './bed-editor.module.css';
import { BedSummary } from './bed-summary.tsx';
import { PullTable } from './pull-table.tsx';
import styles from './record-page.module.css';

const written = (quantity: Parameters<typeof formatQuantity>[0]): string =>
  formatQuantity(quantity, { rule: 'significant-digits', digits: 5 });

export function RecordPage() {
  const { number } = useParams<{ readonly number: string }>();
  const text = words.stressing;
  const address = `/api/stressing-records/${encodeURIComponent(number)}`;
  const record = useQuery({ queryKey: ['stressing-record', number], queryFn: () => get(address, stressingAnswer) });
  return (
    <div className={editor.page}>
      <PageHeading title={text.recordTitle(number)}>
        <a href={`${address}.csv`} download={`${number}.csv`} className={styles.csv}>
          {text.csv}
        </a>
      </PageHeading>
      <p>
        <Link href="/stressing">{text.allBeds}</Link>
      </p>
      {record.isPending ? <WaitingNote /> : null}
      {record.isError ? <ProblemNote error={record.error} onRetry={() => void record.refetch()} /> : null}
      {record.data === undefined ? null : <Record record={record.data} />}
    </div>
  );
}

function Record({ record }: { readonly record: StressingAnswer }) {
  const text = words.stressing;
  const nameOf = usePersonName();
  const worst = record.pullsFound.find(({ number }) => number === record.worst);
  const { window, corrections, reelFacts } = record;
  const facts: readonly (readonly [string, string])[] = [
    [text.calibration, record.calibration],
    [text.strand, record.strand],
    ...(reelFacts === null ? [] : ([[text.reel, text.reelFacts(reelFacts.id, reelFacts.certificate)]] as const)),
    [text.area, written(record.area)],
    [text.modulus, written(record.modulus)],
    [text.length(record.length.unit), written(record.length)],
    [text.theoretical, written(record.theoreticalForce)],
    [text.preloadTo, written(record.preload)],
    [text.expectedElongation, written(record.theoreticalElongation)],
  ];
  return (
    <>
      <p>{text.recordLead(record.bed, record.on, record.pair)}</p>
      <p>
        {text.standingThen}: <StandingMark standing={record.standing} /> {inLanguage(record.because)}
      </p>
      <dl className={styles.facts}>
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {corrections.length === 0 ? <p>{text.noCorrections}</p> : null}
      <ul className={styles.corrections}>
        {corrections.map(({ kind, effect, engineer }) => (
          <li key={kind}>{text.correctionLine(text.corrections[kind], written(effect), engineer)}</li>
        ))}
      </ul>
      <p>{text.windowNote(String(window.percent), window.source)}</p>
      {worst === undefined ? null : <BedSummary {...record} worst={worst} />}
      {record.stillOutOfWindow.length === 0 ? null : (
        <p className={editor.heed}>{text.stillOut(record.stillOutOfWindow.join(', '))}</p>
      )}
      <PullTable pulls={record.pullsFound} />
      <p>{text.enteredBy(nameOf(record.enteredBy), writeMinute(record.enteredAt), String(record.enteredIn))}</p>
    </>
  );
}
