// One certificate of a load cell: what is filed, what was corrected, whether it was withdrawn, and what rests on it.

import { Link } from 'wouter';
import type { EquipmentAnswer } from '../../../../contract/equipment.ts';
import type { PartPageAnswer } from '../../../../contract/part-page.ts';
import { mayDo, type Role } from '../../../../domain/rules/role.ts';
import { usePersonName } from '../../../app/queries/use-person-name.ts';
import { usePlant } from '../../../app/queries/use-plant.ts';
import { writeMinute } from '../../../controls/write-minute.ts';
import { words } from '../../../words/desk-words.ts';
import { FileLinks } from '../file-links.tsx';
import { registrationOf } from '../registration-kinds.ts';
import { ActForms, type OfferedForm } from './act-forms.tsx';
import { certificateAmendment, certificateWithdrawal, changeableFields } from './amendments.ts';
import styles from './part-page.module.css';
import { VersionFacts } from './version-facts.tsx';

interface CertificateSectionProps {
  readonly held: PartPageAnswer['certificates'][number];
  readonly register: EquipmentAnswer;
  /** Of the one who may write here now; null for nobody. */
  readonly role: Role | null;
}

export function CertificateSection({ held, register, role }: CertificateSectionProps) {
  const { part } = words;
  const nameOf = usePersonName();
  const plant = usePlant();
  const { certificate, versions, withdrawn, restingOnIt } = held;
  const title = part.certificate(certificate.number);
  const fields = changeableFields(registrationOf('certificate', register, certificate.loadCell));
  return (
    <li className={styles.certificate}>
      <h3>{withdrawn === null ? title : <del>{title}</del>}</h3>
      {withdrawn === null ? null : (
        <p className={styles.ended}>
          {part.certificateWithdrawn(
            nameOf(withdrawn.by),
            writeMinute(withdrawn.at, plant.data?.timeZone),
            withdrawn.reason,
          )}{' '}
          {certificate.withdrawn?.lastGood === undefined
            ? part.goodNever
            : part.goodUntil(certificate.withdrawn.lastGood)}
        </p>
      )}
      <VersionFacts
        fields={fields.filter(({ type }) => type !== 'files')}
        versions={versions.map(({ certificate: thing, ...version }) => ({ ...version, thing }))}
      />
      <FileLinks files={certificate.files} />
      {restingOnIt.length === 0 ? (
        <p>{part.nothingRests}</p>
      ) : (
        <div>
          <p>{part.restsOnIt(restingOnIt.length)}</p>
          <ul className={styles.resting}>
            {restingOnIt.map(({ number, pair, calibratedOn }) => (
              <li key={number}>
                <Link href={`/review/${encodeURIComponent(number)}`}>{number}</Link> {part.ofPair(pair, calibratedOn)}
              </li>
            ))}
          </ul>
        </div>
      )}
      <ActForms forms={role === null ? [] : formsFor(role, held, register)} />
    </li>
  );
}

function formsFor(
  role: Role,
  held: CertificateSectionProps['held'],
  register: EquipmentAnswer,
): readonly OfferedForm[] {
  if (held.withdrawn !== null) return [];
  const { part } = words;
  const amendment = { button: part.correctCertificate, registration: certificateAmendment(held, register) };
  const withdrawal = { button: part.withdraw, registration: certificateWithdrawal(held) };
  return [
    ...(mayDo(role, 'amend-equipment') ? [amendment] : []),
    ...(mayDo(role, 'withdraw-certificate') ? [withdrawal] : []),
  ];
}
