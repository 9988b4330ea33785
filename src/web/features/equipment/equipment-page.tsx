// The register: pairs with how they stand, the parts they are made of, and registering new ones.

import { useEquipment } from '../../app/queries/use-equipment.ts';
import { PageHeading } from '../../controls/page-heading.tsx';
import { ProblemNote } from '../../controls/problem-note.tsx';
import { WaitingNote } from '../../controls/waiting-note.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './equipment-page.module.css';
import { PairList } from './pair-list.tsx';
import { GaugeTable, JackTable, LaboratoryTable, LoadCellTable, PumpTable, StandardTable } from './part-tables.tsx';
import { RegisterPanel } from './register-panel.tsx';
import { StrandTables } from './strand-tables.tsx';

export function EquipmentPage() {
  const { equipment } = words;
  const register = useEquipment();
  return (
    <>
      <PageHeading title={equipment.title} lead={equipment.lead} />
      {register.isPending ? <WaitingNote /> : null}
      {register.isError ? <ProblemNote error={register.error} onRetry={() => void register.refetch()} /> : null}
      {register.data === undefined ? null : (
        <div className={styles.page}>
          <RegisterPanel register={register.data} />
          <section className={styles.section} aria-labelledby="pairs-title">
            <h2 id="pairs-title">{equipment.pairsTitle}</h2>
            <PairList pairs={register.data.pairs.filter(({ parted }) => !parted)} none={equipment.noPairs} />
          </section>
          <JackTable register={register.data} />
          <GaugeTable register={register.data} />
          <LoadCellTable register={register.data} />
          <LaboratoryTable register={register.data} />
          <StandardTable register={register.data} />
          <PumpTable register={register.data} />
          <StrandTables register={register.data} />
          {register.data.pairs.some(({ parted }) => parted) ? (
            <section className={styles.section} aria-labelledby="parted-title">
              <h2 id="parted-title">{equipment.partedTitle}</h2>
              <PairList pairs={register.data.pairs.filter(({ parted }) => parted)} none={equipment.noneYet} />
            </section>
          ) : null}
        </div>
      )}
    </>
  );
}
