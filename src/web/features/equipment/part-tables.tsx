// The parts of the plant, one table a kind.

import { Link } from 'wouter';
import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { NumberCell, ScrollTable } from '../../charts/scroll-table.tsx';
import { formatQuantity } from '../../controls/format-number.ts';
import { words } from '../../words/desk-words.ts';
import { FileLinks } from './file-links.tsx';

interface PartTableProps {
  readonly register: EquipmentAnswer;
}

const asTyped = { rule: 'as-typed' } as const;

export function JackTable({ register }: PartTableProps) {
  const { equipment } = words;
  const columns = [
    equipment.tag,
    equipment.serial,
    equipment.inPair,
    equipment.ratedForce,
    equipment.pistonArea,
    equipment.strandsPulled,
  ];
  return (
    <ScrollTable title={equipment.jacksTitle} columns={columns} numbersFrom={3}>
      {register.jacks.map((jack) => (
        <tr key={jack.tag}>
          <TagCell register={register} tag={jack.tag} />
          <td>{jack.serial}</td>
          <td>
            <PairOf register={register} part="jack" tag={jack.tag} />
          </td>
          <NumberCell>{formatQuantity(jack.ratedForce, asTyped)}</NumberCell>
          <NumberCell>{formatQuantity(jack.pistonArea, asTyped)}</NumberCell>
          <NumberCell>{jack.strandsPulled}</NumberCell>
        </tr>
      ))}
      <NoneYet count={register.jacks.length} columns={columns.length} />
    </ScrollTable>
  );
}

export function GaugeTable({ register }: PartTableProps) {
  const { equipment } = words;
  const columns = [
    equipment.tag,
    equipment.serial,
    equipment.inPair,
    equipment.display,
    equipment.fullScale,
    equipment.graduation,
    equipment.accuracyClass,
  ];
  return (
    <ScrollTable title={equipment.gaugesTitle} columns={columns} numbersFrom={4}>
      {register.gauges.map((gauge) => (
        <tr key={gauge.tag}>
          <TagCell register={register} tag={gauge.tag} />
          <td>{gauge.serial}</td>
          <td>
            <PairOf register={register} part="gauge" tag={gauge.tag} />
          </td>
          <td>{equipment[gauge.display]}</td>
          <NumberCell>{formatQuantity(gauge.fullScale, asTyped)}</NumberCell>
          <NumberCell>
            {formatQuantity(gauge.graduation, asTyped)}
            {gauge.readablePart === undefined ? null : <div>{equipment.readTo[gauge.readablePart]}</div>}
          </NumberCell>
          <NumberCell>{gauge.accuracyClass ?? ''}</NumberCell>
        </tr>
      ))}
      <NoneYet count={register.gauges.length} columns={columns.length} />
    </ScrollTable>
  );
}

export function LoadCellTable({ register }: PartTableProps) {
  const { equipment } = words;
  const columns = [
    equipment.tag,
    equipment.serial,
    equipment.certificates,
    equipment.capacity,
    equipment.indicatorStep,
  ];
  return (
    <ScrollTable title={equipment.loadCellsTitle} columns={columns} numbersFrom={3}>
      {register.loadCells.map((cell) => (
        <tr key={cell.tag}>
          <TagCell register={register} tag={cell.tag} />
          <td>{cell.serial}</td>
          <td>
            {cell.certificates.length === 0
              ? equipment.noCertificate
              : cell.certificates.map(({ number, validUntil, files, withdrawn }) => (
                  <div key={number}>
                    {withdrawn === undefined ? (
                      equipment.certificateUntil(number, validUntil)
                    ) : (
                      <>
                        <del>{equipment.certificateUntil(number, validUntil)}</del>{' '}
                        {equipment.withdrawn(withdrawn.reason)}
                      </>
                    )}
                    <FileLinks files={files} />
                  </div>
                ))}
          </td>
          <NumberCell>{formatQuantity(cell.capacity, asTyped)}</NumberCell>
          <NumberCell>
            {cell.resolution === undefined ? equipment.indicatorNotRecorded : formatQuantity(cell.resolution, asTyped)}
          </NumberCell>
        </tr>
      ))}
      <NoneYet count={register.loadCells.length} columns={columns.length} />
    </ScrollTable>
  );
}

export function PumpTable({ register }: PartTableProps) {
  const { equipment } = words;
  const columns = [equipment.tag, equipment.serial, equipment.note];
  return (
    <ScrollTable title={equipment.pumpsTitle} columns={columns} numbersFrom={3}>
      {register.pumps.map((pump) => (
        <tr key={pump.tag}>
          <TagCell register={register} tag={pump.tag} />
          <td>{pump.serial}</td>
          <td data-sentence="true">{pump.note ?? ''}</td>
        </tr>
      ))}
      <NoneYet count={register.pumps.length} columns={columns.length} />
    </ScrollTable>
  );
}

export function LaboratoryTable({ register }: PartTableProps) {
  const text = words.traceability;
  const columns = [text.laboratoryName, text.place, text.accreditationBody, text.accreditationUntil, text.files];
  return (
    <ScrollTable title={text.laboratoriesTitle} columns={columns} numbersFrom={columns.length}>
      {register.laboratories.map(({ name, place, accreditation, files }) => (
        <tr key={name}>
          <th scope="row">{name}</th>
          <td>{place ?? ''}</td>
          <td>{accreditation === undefined ? text.notAccredited : `${accreditation.body}, ${accreditation.number}`}</td>
          <td>{accreditation?.validUntil ?? ''}</td>
          <td>
            <FileLinks files={files} />
          </td>
        </tr>
      ))}
      <NoneYet count={register.laboratories.length} columns={columns.length} />
    </ScrollTable>
  );
}

export function StandardTable({ register }: PartTableProps) {
  const text = words.traceability;
  const columns = [
    text.standardNumber,
    text.instrument,
    text.heldBy,
    text.issuedByLabel,
    words.equipment.validUntil,
    text.restsOn,
    text.files,
  ];
  return (
    <ScrollTable title={text.standardsTitle} columns={columns} numbersFrom={columns.length}>
      {register.standards.map((standard) => (
        <tr key={standard.number}>
          <th scope="row">
            {standard.withdrawn === undefined ? (
              standard.number
            ) : (
              <>
                <del>{standard.number}</del>
                <div>{text.withdrawnBecause(standard.withdrawn.reason)}</div>
              </>
            )}
          </th>
          <td>{standard.instrument}</td>
          <td>{standard.heldBy}</td>
          <td>{standard.issuedBy}</td>
          <td>{text.period(standard.calibratedOn, standard.validUntil)}</td>
          <td>{standard.restsOn ?? text.noneAbove}</td>
          <td>
            <FileLinks files={standard.files} />
          </td>
        </tr>
      ))}
      <NoneYet count={register.standards.length} columns={columns.length} />
    </ScrollTable>
  );
}

/** The tag leads to the page of the part; out of use it is struck through. */
function TagCell({ register, tag }: PartTableProps & { readonly tag: string }) {
  const retired = register.heldBy.parts.find((part) => part.tag === tag)?.retired ?? null;
  return (
    <th scope="row">
      <Link href={`/part/${encodeURIComponent(tag)}`}>{retired === null ? tag : <del>{tag}</del>}</Link>
      {retired === null ? null : <div>{words.part.outOfUse(retired.on)}</div>}
    </th>
  );
}

interface PairOfProps extends PartTableProps {
  readonly part: 'jack' | 'gauge';
  readonly tag: string;
}

function PairOf({ register, part, tag }: PairOfProps) {
  const pair = register.pairs.find((candidate) => !candidate.parted && candidate[part] === tag);
  if (pair === undefined) return words.equipment.noPair;
  return <Link href={`/equipment/${encodeURIComponent(pair.tag)}`}>{pair.tag}</Link>;
}

function NoneYet({ count, columns }: { readonly count: number; readonly columns: number }) {
  if (count > 0) return null;
  return (
    <tr>
      <td colSpan={columns}>{words.equipment.noneYet}</td>
    </tr>
  );
}
