// The page of one part: what is registered with every correction, its certificates, and every entry about it.

import { useQuery } from '@tanstack/react-query';
import { Link, useLocation, useParams } from 'wouter';
import type { EquipmentAnswer } from '../../../../contract/equipment.ts';
import { type PartPageAnswer, partPageAnswer } from '../../../../contract/part-page.ts';
import { mayDo, type Role } from '../../../../domain/rules/role.ts';
import { useAsOfDay } from '../../../app/as-of-day.ts';
import { get } from '../../../app/http-client.ts';
import { useEquipment } from '../../../app/queries/use-equipment.ts';
import { usePersonName } from '../../../app/queries/use-person-name.ts';
import { useSession } from '../../../app/queries/use-session.ts';
import { signInAddress } from '../../../app/sign-in-address.ts';
import { ButtonLink } from '../../../controls/button-link.tsx';
import { PageHeading } from '../../../controls/page-heading.tsx';
import { ProblemNote } from '../../../controls/problem-note.tsx';
import { WaitingNote } from '../../../controls/waiting-note.tsx';
import { words } from '../../../words/desk-words.ts';
import { EntryList } from '../entry-list.tsx';
import { registrationOf } from '../registration-kinds.ts';
import { ActForms, type OfferedForm } from './act-forms.tsx';
import { changeableFields, partAmendment, retirement } from './amendments.ts';
import { CertificateSection } from './certificate-section.tsx';
import styles from './part-page.module.css';
import { VersionFacts } from './version-facts.tsx';

export function PartPage() {
  const { tag = '' } = useParams<{ tag: string }>();
  const page = useQuery({
    queryKey: ['part', tag],
    queryFn: () => get(`/api/equipment/${encodeURIComponent(tag)}`, partPageAnswer),
  });
  const register = useEquipment();
  const { equipment, part } = words;
  const failed = [page, register].find(({ isError }) => isError);
  const found = page.data?.part;
  return (
    <>
      <PageHeading title={found === undefined ? tag : part.title(equipment.kinds[found.kind], found.tag)}>
        <Link href="/equipment">{equipment.allEquipment}</Link>
      </PageHeading>
      {failed === undefined ? null : <ProblemNote error={failed.error} onRetry={() => void failed.refetch()} />}
      {failed === undefined && (page.isPending || register.isPending) ? <WaitingNote /> : null}
      {page.data === undefined || register.data === undefined ? null : (
        <PartShown page={page.data} register={register.data} />
      )}
    </>
  );
}

interface PartShownProps {
  readonly page: PartPageAnswer;
  readonly register: EquipmentAnswer;
}

function PartShown({ page, register }: PartShownProps) {
  const { part: text } = words;
  const { part, pair, retired, versions, certificates, entries } = page;
  const nameOf = usePersonName();
  const isPast = useAsOfDay() !== null;
  const role = useSession().data?.person?.role ?? null;
  const acting = isPast ? null : role;
  return (
    <div className={styles.page}>
      <section className={styles.section} aria-labelledby="facts-title">
        <h2 id="facts-title">{text.factsTitle}</h2>
        {retired === null ? (
          <p>
            {pair === null ? (
              text.inNoPair
            ) : (
              <Link href={`/equipment/${encodeURIComponent(pair)}`}>{text.inPair(pair)}</Link>
            )}
          </p>
        ) : (
          <p className={styles.ended}>{text.retired(retired.on, nameOf(retired.by), retired.reason)}</p>
        )}
        <VersionFacts
          fields={changeableFields(registrationOf(part.kind, register, ''))}
          versions={versions.map(({ part: thing, ...version }) => ({ ...version, thing }))}
        />
        <WhoMay role={role} isPast={isPast} />
        <ActForms forms={acting === null ? [] : formsFor(acting, page, register)} />
        {retired !== null || pair === null || acting === null || !mayDo(acting, 'retire-equipment') ? null : (
          <p>{text.retireInPair(pair)}</p>
        )}
      </section>
      {part.kind === 'load-cell' ? (
        <section className={styles.section} aria-labelledby="certificates-title">
          <h2 id="certificates-title">{text.certificatesTitle}</h2>
          {certificates.length === 0 ? <p>{text.noCertificates}</p> : null}
          <ul className={styles.certificates}>
            {certificates.map((held) => (
              <CertificateSection key={held.certificate.number} held={held} register={register} role={acting} />
            ))}
          </ul>
        </section>
      ) : null}
      <EntryList entries={entries} />
    </div>
  );
}

function WhoMay({ role, isPast }: { readonly role: Role | null; readonly isPast: boolean }) {
  const [location] = useLocation();
  const { equipment, part } = words;
  if (isPast) return null;
  if (role === null) {
    return (
      <p>
        {equipment.signInToWrite} <ButtonLink href={signInAddress(location, '')}>{equipment.signIn}</ButtonLink>
      </p>
    );
  }
  return mayDo(role, 'amend-equipment') ? null : <p>{part.mayNot}</p>;
}

function formsFor(role: Role, page: PartPageAnswer, register: EquipmentAnswer): readonly OfferedForm[] {
  const { part } = words;
  const amendment = { button: part.correct, registration: partAmendment(page, register) };
  const ending = { button: part.retire, registration: retirement(page) };
  return [
    ...(mayDo(role, 'amend-equipment') ? [amendment] : []),
    ...(mayDo(role, 'retire-equipment') && page.retired === null && page.pair === null ? [ending] : []),
  ];
}
