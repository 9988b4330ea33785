// What was calibrated, when, against which load cell, what was set and in which units.

import type { EquipmentAnswer } from '../../../contract/equipment.ts';
import { sheetConditions } from '../../../domain/calibration/run-sheet.ts';
import { type ForceUnit, force } from '../../../domain/units/force.ts';
import { type PressureUnit, pressure } from '../../../domain/units/pressure.ts';
import { formatQuantity, formatUnit } from '../../controls/format-number.ts';
import { problemForField } from '../../controls/problem-for-field.ts';
import { SelectField } from '../../controls/select-field.tsx';
import { TextField } from '../../controls/text-field.tsx';
import { words } from '../../words/desk-words.ts';
import styles from './about-fields.module.css';
import type { ChosenParts } from './chosen-parts.ts';
import type { DraftFields } from './draft-state.ts';
import { isFirstUseBad, judgeDay, readTemperature } from './sheet-of-draft.ts';

interface AboutFieldsProps {
  readonly fields: DraftFields;
  readonly equipment: EquipmentAnswer | undefined;
  readonly parts: ChosenParts;
  /** What the server said when the draft was submitted. */
  readonly error: unknown;
  readonly set: (fields: Partial<DraftFields>) => void;
  readonly choosePair: (pair: string) => void;
}

const forceUnits = Object.keys(force.factors) as ForceUnit[];
const readingUnits = Object.keys(pressure.factors) as PressureUnit[];
const asTyped = { rule: 'as-typed' } as const;

export function AboutFields({ fields, equipment, parts, error, set, choosePair }: AboutFieldsProps) {
  const { calibrate } = words;
  const pairs = equipment?.pairs ?? [];
  const today = parts.context.today;
  const asked = parts.context.rules?.firstUseDays?.value;
  return (
    <section className={styles.about}>
      <h2>{calibrate.aboutTitle}</h2>
      <div className={styles.fields}>
        <SelectField
          label={calibrate.pair}
          value={fields.pair}
          problem={
            pairProblem(fields, parts, equipment) ??
            problemForField(error, 'sheet.pair') ??
            problemForField(error, 'pair')
          }
          options={optionsWith(
            fields.pair,
            pairs.filter(({ parted }) => !parted).map(({ tag }) => tag),
            calibrate.choosePair,
          )}
          onChange={(event) => choosePair(event.currentTarget.value)}
        />
        <TextField
          label={calibrate.day}
          type="date"
          max={today ?? undefined}
          value={fields.calibratedOn}
          problem={dayProblem(fields.calibratedOn, today) ?? problemForField(error, 'calibratedOn')}
          onChange={(event) => set({ calibratedOn: event.currentTarget.value })}
        />
        <SelectField
          label={calibrate.loadCell}
          value={fields.loadCell}
          hint={certificateHint(parts)}
          problem={certificateProblem(fields, parts) ?? problemForField(error, 'loadCell')}
          options={optionsWith(
            fields.loadCell,
            (equipment?.loadCells ?? []).map(({ tag }) => tag),
            calibrate.chooseLoadCell,
          )}
          onChange={(event) => set({ loadCell: event.currentTarget.value })}
        />
        {/* Without a rule that asks for it only what an import brought is shown. */}
        {asked === undefined && fields.firstUseOn === '' ? null : (
          <TextField
            label={calibrate.firstUse}
            isOptional
            type="date"
            value={fields.firstUseOn}
            hint={asked === undefined ? undefined : calibrate.firstUseAsked(asked)}
            problem={(isFirstUseBad(fields) ? calibrate.dayInvalid : null) ?? problemForField(error, 'firstUseOn')}
            onChange={(event) => set({ firstUseOn: event.currentTarget.value })}
          />
        )}
      </div>
      <PartWords parts={parts} />
      <div className={styles.fields}>
        <Choice
          legend={calibrate.set}
          name="set"
          value={fields.set}
          options={[
            ['force', calibrate.setForce],
            ['reading', calibrate.setReading],
          ]}
          onChoose={(chosen) => set({ set: chosen })}
        />
        <Choice
          legend={calibrate.loadingTitle}
          name="loading"
          value={fields.loading}
          options={[
            ['active', calibrate.loadingActive],
            ['passive', calibrate.loadingPassive],
          ]}
          onChoose={(chosen) => set({ loading: chosen })}
        />
        <Choice
          legend={calibrate.conditionTitle}
          name="condition"
          value={fields.condition}
          options={[
            ['', calibrate.conditions.notSaid] as const,
            ...sheetConditions.map((condition) => [condition, calibrate.conditions[condition]] as const),
          ]}
          onChoose={(chosen) => set({ condition: chosen })}
        />
        <div className={styles.units}>
          <SelectField
            label={calibrate.forceUnit}
            value={fields.forceUnit}
            options={forceUnits.map((unit) => ({ value: unit, text: formatUnit(unit) }))}
            onChange={(event) => set({ forceUnit: unitOf(forceUnits, event.currentTarget.value, fields.forceUnit) })}
          />
          <SelectField
            label={calibrate.readingUnit}
            value={fields.readingUnit}
            options={readingUnits.map((unit) => ({ value: unit, text: formatUnit(unit) }))}
            onChange={(event) =>
              set({ readingUnit: unitOf(readingUnits, event.currentTarget.value, fields.readingUnit) })
            }
          />
          <p className={styles.note}>{calibrate.unitNote}</p>
        </div>
      </div>
      <div className={styles.fields}>
        <TextField
          label={calibrate.temperature}
          isOptional
          inputMode="decimal"
          value={fields.temperature}
          problem={readTemperature(fields.temperature) === 'bad' ? calibrate.temperatureBad(fields.temperature) : null}
          onChange={(event) => set({ temperature: event.currentTarget.value })}
        />
        <div className={styles.wide}>
          <TextField
            label={calibrate.note}
            isOptional
            maxLength={2000}
            value={fields.note}
            onChange={(event) => set({ note: event.currentTarget.value })}
          />
        </div>
      </div>
    </section>
  );
}

function PartWords({ parts }: { readonly parts: ChosenParts }) {
  const { jack, gauge } = parts.context;
  if (parts.line === null || jack === null || gauge === null) return null;
  return (
    <dl className={styles.parts}>
      <div>
        <dt>{words.calibrate.jack}</dt>
        <dd>
          <strong>{jack.tag}</strong>
          {words.calibrate.ofJack(formatQuantity(jack.ratedForce, asTyped), formatQuantity(jack.pistonArea, asTyped))}
        </dd>
      </div>
      <div>
        <dt>{words.calibrate.gauge}</dt>
        <dd>
          <strong>{gauge.tag}</strong>
          {words.calibrate.ofGauge(formatQuantity(gauge.fullScale, asTyped), formatQuantity(gauge.graduation, asTyped))}
        </dd>
      </div>
    </dl>
  );
}

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: T;
  readonly options: readonly (readonly [T, string])[];
  readonly onChoose: (value: T) => void;
}

function Choice<T extends string>({ legend, name, value, options, onChoose }: ChoiceProps<T>) {
  return (
    <fieldset className={styles.choice}>
      <legend>{legend}</legend>
      {options.map(([option, text]) => (
        <label key={option}>
          <input type="radio" name={name} checked={value === option} onChange={() => onChoose(option)} />
          {text}
        </label>
      ))}
    </fieldset>
  );
}

/** A choice that is no longer offered stays visible, so that a draft never changes by itself. */
function optionsWith(chosen: string, offered: readonly string[], prompt: string) {
  const all = chosen === '' || offered.includes(chosen) ? offered : [chosen, ...offered];
  return [{ value: '', text: prompt }, ...all.map((tag) => ({ value: tag, text: tag }))];
}

function unitOf<U extends string>(units: readonly U[], text: string, before: U): U {
  return units.find((unit) => unit === text) ?? before;
}

function pairProblem(
  { pair }: DraftFields,
  { line }: ChosenParts,
  equipment: EquipmentAnswer | undefined,
): string | null {
  if (equipment !== undefined && equipment.pairs.length === 0) return words.calibrate.noPairs;
  if (pair !== '' && line?.parted === true) return words.calibrate.pairParted(pair);
  return null;
}

function dayProblem(day: string, today: string | null): string | null {
  switch (judgeDay(day, today)) {
    case 'invalid':
      return words.calibrate.dayInvalid;
    case 'in-future':
      return words.calibrate.dayInFuture(today ?? '');
    default:
      return null;
  }
}

function certificateHint({ onDay, context }: ChosenParts): string | undefined {
  if (onDay?.kind === 'valid') {
    const { number, laboratory, validUntil } = onDay.certificate;
    return words.calibrate.certificateValid(number, laboratory, validUntil);
  }
  return context.cell !== null && onDay === null ? words.calibrate.certificateNeedsDay : undefined;
}

function certificateProblem({ loadCell, calibratedOn }: DraftFields, { onDay }: ChosenParts): string | null {
  switch (onDay?.kind) {
    case 'none-filed':
      return words.calibrate.noCertificate(loadCell);
    case 'ended':
      return words.calibrate.certificateEnded(loadCell, onDay.until, calibratedOn);
    case 'starts-later':
      return words.calibrate.certificateLater(loadCell, onDay.from, calibratedOn);
    default:
      return null;
  }
}
