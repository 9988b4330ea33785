// What a bed is pulled with and to. Problems stand beside their fields once something was typed there, the first of all at the foot.

import { type ReactNode, useMemo, useState } from 'react';
import type { Problem } from '../../../domain/problem.ts';
import { tensioningMethods } from '../../../domain/rules/elongation-window.ts';
import { Button } from '../../controls/button.tsx';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { pairLinesOnDevice } from '../../offline/answer-on-device.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { words } from '../../words/desk-words.ts';
import { inLanguage } from '../../words/sentence.ts';
import type { BedSetup, SetupField } from './bed-draft.ts';
import { CorrectionFields } from './correction-fields.tsx';
import styles from './setup-form.module.css';
import { anotherReel, sizesOfDevice } from './strands-of-device.ts';

interface SetupFormProps {
  readonly setup: BedSetup;
  readonly device: ReadyDevice;
  readonly problem: Problem | null;
  /** Once something was pulled the bed is what it is. */
  readonly isLocked: boolean;
  readonly onChange: (setup: BedSetup) => void;
  readonly onBegin: () => void;
}

export function SetupForm({ setup, device, problem, isLocked, onChange, onBegin }: SetupFormProps) {
  const text = words.stressing;
  const { snapshot, day } = device;
  const [isTried, setTried] = useState(false);
  const lines = useMemo(() => pairLinesOnDevice(snapshot, day).filter(({ parted }) => !parted), [snapshot, day]);
  const sizes = useMemo(() => sizesOfDevice(snapshot), [snapshot]);
  const problemOf = (field: SetupField): string | null =>
    problem?.where === field && (isTried || setup[field] !== '') ? inLanguage(problem.message, problem.code) : null;
  const set = (field: SetupField) => (event: { readonly target: { readonly value: string } }) =>
    onChange({ ...setup, [field]: event.target.value });
  const field = (name: SetupField, label: string, more: { hint?: string; inputMode?: 'decimal' } = {}) => (
    <TextField
      label={label}
      forGloves
      value={setup[name]}
      problem={problemOf(name)}
      disabled={isLocked}
      onChange={set(name)}
      {...more}
    />
  );
  const select = (name: SetupField, label: string, options: readonly { value: string; text: string }[]) => (
    <SelectField
      label={label}
      forGloves
      value={setup[name]}
      problem={problemOf(name)}
      disabled={isLocked}
      options={options}
      onChange={set(name)}
    />
  );
  const ofStrand = snapshot.reels.filter((reel) => reel.strandId === setup.strand);
  const preloadPercent = String(Math.round(snapshot.rules.preloadFraction.value * 1000) / 10);
  return (
    <form
      className={styles.form}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        setTried(true);
        if (problem === null) onBegin();
      }}
    >
      <h2>{text.setupTitle}</h2>
      <Row>
        {field('bed', text.bed, { hint: text.bedHint })}
        {select('pair', text.pair, [
          { value: '', text: text.choosePair },
          ...lines.map(({ tag, jack, gauge, standing }) => ({
            value: tag,
            text: text.pairOption(tag, jack, gauge, words.app.standings[standing]),
          })),
        ])}
      </Row>
      <Row>
        {select('strand', text.strand, [
          { value: '', text: text.chooseStrand },
          ...sizes.map(({ designation }) => ({ value: designation, text: designation })),
        ])}
        {select('reel', text.reel, [
          { value: '', text: text.reelOfTable },
          ...ofStrand.map(({ id }) => ({ value: id, text: text.reelFiled(id) })),
          { value: anotherReel, text: text.reelOther },
        ])}
      </Row>
      {setup.reel === anotherReel ? (
        <Row>
          {field('reelId', text.reelId)}
          {field('reelArea', text.reelArea, { hint: text.reelAreaHint })}
          {field('reelModulus', text.reelModulus, { hint: text.reelModulusHint })}
          {field('reelBreakingLoad', text.reelBreakingLoad, { hint: text.reelBreakingLoadHint })}
          {field('reelCertificate', text.reelCertificate)}
        </Row>
      ) : null}
      <Row>
        {select('by', text.by, [
          { value: 'fraction', text: text.byFraction },
          { value: 'force', text: text.byForce },
        ])}
        {setup.by === 'fraction'
          ? field('percent', text.percent, { inputMode: 'decimal' })
          : field('force', text.forcePerStrand(setup.forceUnit), { inputMode: 'decimal' })}
        {field('preload', text.preload(setup.forceUnit), {
          inputMode: 'decimal',
          hint: text.preloadHint(preloadPercent),
        })}
        {select('forceUnit', text.forceUnit, unitOptions('kip', 'kN'))}
      </Row>
      <Row>
        {select(
          'method',
          text.method,
          tensioningMethods.map((value) => ({ value, text: text.methods[value] })),
        )}
        {field('length', text.length(setup.lengthUnit), { inputMode: 'decimal' })}
        {select('lengthUnit', text.lengthUnit, unitOptions('ft', 'm'))}
        {field('rows', text.rows, { hint: text.rowsHint })}
        {select('elongationUnit', text.elongationUnit, unitOptions('in', 'mm'))}
      </Row>
      <CorrectionFields setup={setup} field={field} select={select} />
      {isTried && problem !== null ? (
        <p role="alert" className={styles.problem}>
          {text.whyNot} {inLanguage(problem.message, problem.code)}
        </p>
      ) : null}
      {isLocked ? null : (
        <Button look="primary" type="submit" forGloves>
          {text.begin}
        </Button>
      )}
    </form>
  );
}

function unitOptions(...units: readonly string[]) {
  return units.map((unit) => ({ value: unit, text: unit }));
}

function Row({ children }: { readonly children: ReactNode }) {
  return <div className={styles.row}>{children}</div>;
}
