// The chain behind the calibration in force as one picture: a list of links, each with its day by word and shape.

import type { ReactNode } from 'react';
import type { PairPageAnswer } from '../../../contract/calibration.ts';
import type { ChainAnswer } from '../../../contract/traceability.ts';
import { formatNumber } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import { FileLinks } from './file-links.tsx';
import styles from './traceability-part.module.css';

export function TraceabilityPart({ page }: { readonly page: PairPageAnswer }) {
  const { traceability: text } = words;
  const current = page.calibrations.find(({ number }) => number === page.current);
  if (current === undefined) return null;
  const { chain } = page;
  return (
    <section className={styles.part} aria-labelledby="traceability-title">
      <h2 id="traceability-title">{text.chainTitle}</h2>
      {chain === null ? (
        <p className={styles.gap}>{text.noChain}</p>
      ) : (
        <>
          <p className={styles.lead}>{text.lead}</p>
          <ol className={styles.chain}>
            <li className={styles.link}>
              <strong className={styles.name}>{text.pair(page.jack.tag, page.gauge.tag)}</strong>
              <span>{text.calibration(current.number, current.calibratedOn)}</span>
              <span>{text.against(current.loadCell)}</span>
            </li>
            {chain.links.map((link) => (
              <Link key={link.certificate} link={link} />
            ))}
            <li className={styles.link} data-end="true">
              <span>{text.endsAt}</span>
              <strong className={styles.name}>{chain.endsAt}</strong>
            </li>
          </ol>
          {chain.gaps.length === 0 ? (
            <p>{text.whole}</p>
          ) : (
            <div className={styles.gap}>
              <h3>{text.gapsTitle}</h3>
              <ul>
                {chain.gaps.map((gap) => (
                  <li key={gap}>{gap}</li>
                ))}
              </ul>
            </div>
          )}
          <details>
            <summary>{text.certificatesTitle(current.loadCell, current.calibratedOn)}</summary>
            <ul className={styles.certificates}>
              {chain.certificates.map(({ number, from, until, covers, isUsed }) => (
                <li key={number}>
                  {isUsed ? <strong>{number}</strong> : number}: {text.period(from, until)},{' '}
                  {isUsed ? <strong>{text.used}</strong> : covers ? text.covers : text.coversNot}
                </li>
              ))}
            </ul>
          </details>
        </>
      )}
    </section>
  );
}

function Link({ link }: { readonly link: ChainAnswer['links'][number] }) {
  const { traceability: text } = words;
  const { accreditation, expandedUncertaintyPercent: percent, coverageFactor: k } = link;
  return (
    <li className={styles.link} data-valid={link.isValid}>
      <strong className={styles.name}>
        {link.of === 'load-cell' ? text.cellOf(link.instrument) : link.instrument}
      </strong>
      <span>
        {text.certificate(link.certificate)}, {text.issuedBy(link.issuedBy)}
      </span>
      {accreditation === null ? null : (
        <span className={styles.small}>
          {text.accreditedBy(accreditation.body, accreditation.number, accreditation.validUntil)}
          {accreditation.isValid ? null : <strong> {text.accreditationEnded}</strong>}
        </span>
      )}
      {percent === null || k === null ? null : (
        <span className={styles.small}>
          {text.uncertainty(formatNumber(percent, { rule: 'as-typed' }), formatNumber(k, { rule: 'as-typed' }))}
        </span>
      )}
      <Validity isValid={link.isValid}>
        {link.isValid ? text.validOn(link.neededOn) : text.notValidOn(link.neededOn)} (
        {text.period(link.calibratedOn, link.validUntil)})
      </Validity>
      <FileLinks files={link.files} />
    </li>
  );
}

/** A disc that is full, or one struck through: the shape says it without the colour. */
function Validity({ isValid, children }: { readonly isValid: boolean; readonly children: ReactNode }) {
  return (
    <span className={styles.validity} data-valid={isValid}>
      <svg className={styles.shape} viewBox="0 0 20 20" aria-hidden="true">
        <path
          d={
            isValid
              ? 'M10 1.5a8.5 8.5 0 1 1 0 17a8.5 8.5 0 1 1 0-17z'
              : 'M10 1.5a8.5 8.5 0 1 1 0 17a8.5 8.5 0 1 1 0-17z M3 8.5v3h14v-3z'
          }
          fillRule="evenodd"
        />
      </svg>
      <span>{children}</span>
    </span>
  );
}
