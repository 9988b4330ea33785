// How well the force is known: U and k at each level, and the budget of a chosen level as a table.
// The bars are in contribution-bars.tsx.

import { useState } from 'react';
import { formatNumber, formatQuantity, formatUnit } from '../controls/format-number.ts';
import { SelectField } from '../controls/select-field.tsx';
import { words } from '../words/desk-words.ts';
import { ContributionBars } from './contribution-bars.tsx';
import { FigureNotes } from './figure-notes.tsx';
import { digitsOf, fiveDigits, hundredths, threeDigits, writeFreedom } from './figure-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';
import { type ShownBudget, type ShownFit, type ShownLevel, unitsOfFit } from './shown-fit.ts';
import styles from './uncertainty-figures.module.css';

interface UncertaintyFiguresProps {
  readonly fit: ShownFit;
  readonly levels: readonly ShownLevel[];
}

export function UncertaintyFigures({ fit, levels }: UncertaintyFiguresProps) {
  const { figures } = words;
  /** Counted from the highest level, so that the choice stays when levels are added below. */
  const [chosen, setChosen] = useState(0);
  const level = levels.at(-1 - Math.min(chosen, levels.length - 1));
  const unit = unitsOfFit(fit).set;
  const nameOf = ({ set }: ShownLevel) =>
    formatQuantity({ value: Number(set.toPrecision(5)), unit }, { rule: 'as-typed' });
  if (level === undefined) return null;
  return (
    <>
      <p>{figures.uncertaintyLead}</p>
      <UncertaintyTable fit={fit} levels={levels} />
      <div className={styles.chooser}>
        <SelectField
          label={figures.chooseLevel}
          value={String(levels.length - 1 - levels.indexOf(level))}
          options={levels.map((option, index) => ({ value: String(levels.length - 1 - index), text: nameOf(option) }))}
          onChange={(event) => setChosen(Number(event.currentTarget.value))}
        />
      </div>
      <BudgetTable budget={level.budget} title={figures.budgetTitle(nameOf(level))} />
      <ContributionBars budget={level.budget} />
      <FigureNotes notes={figures.uncertaintyNotes} />
    </>
  );
}

/** The smallest and largest U over the levels, in % of force; null without a level. */
export function uncertaintyRangeInWords(levels: readonly ShownLevel[]): string | undefined {
  if (levels.length === 0) return undefined;
  const all = levels.map(({ budget }) => percentOf(budget));
  return words.figures.uncertaintyRange(hundredths(Math.min(...all)), hundredths(Math.max(...all)));
}

const percentOf = ({ expanded, force }: ShownBudget): number => (100 * expanded) / force;

function UncertaintyTable({ fit, levels }: UncertaintyFiguresProps) {
  const { figures } = words;
  const forceUnit = formatUnit(fit.units.force);
  const columns = [
    figures.ofUnit(figures.set, formatUnit(unitsOfFit(fit).set)),
    figures.ofUnit(figures.force, forceUnit),
    figures.ofUnit(figures.expanded, forceUnit),
    figures.ofUnit(figures.expanded, figures.percentSign),
    figures.coverage,
    figures.effectiveDegrees,
  ];
  return (
    <ScrollTable title={figures.uncertaintyAtLevels} headingLevel={3} columns={columns} numbersFrom={0}>
      {levels.map(({ set, budget }) => (
        <tr key={set}>
          <th scope="row" data-number="true">
            {fiveDigits(set)}
          </th>
          <NumberCell>{fiveDigits(budget.force)}</NumberCell>
          <NumberCell>{threeDigits(budget.expanded)}</NumberCell>
          <NumberCell>{hundredths(percentOf(budget))}</NumberCell>
          <NumberCell>{formatNumber(budget.k, { rule: 'decimals', decimals: 2 })}</NumberCell>
          <NumberCell>{writeFreedom(budget.effectiveDegreesOfFreedom)}</NumberCell>
        </tr>
      ))}
    </ScrollTable>
  );
}

function BudgetTable({ budget, title }: { readonly budget: ShownBudget; readonly title: string }) {
  const { figures } = words;
  const unit = formatUnit(budget.unit);
  const columns = [
    figures.source,
    figures.type,
    figures.distribution,
    figures.value,
    figures.divisor,
    figures.ofUnit(figures.sensitivity, figures.perUnitOfValue(unit)),
    figures.ofUnit(figures.standardUncertainty, unit),
    figures.degreesOfFreedom,
  ];
  const inUnit = (value: number) =>
    formatQuantity({ value: Number(value.toPrecision(3)), unit: budget.unit }, { rule: 'as-typed' });
  return (
    <>
      <ScrollTable title={title} headingLevel={3} columns={columns} numbersFrom={3}>
        {budget.contributions.map((line) => (
          <tr key={line.source}>
            <th scope="row">{figures.sourceName(line.source)}</th>
            <td>{line.type}</td>
            <td>{figures.distributionName(line.distribution)}</td>
            <NumberCell>
              {formatQuantity({ value: Number(line.value.toPrecision(3)), unit: line.valueUnit }, { rule: 'as-typed' })}
            </NumberCell>
            <NumberCell>{formatNumber(Number(line.divisor.toPrecision(4)), { rule: 'as-typed' })}</NumberCell>
            <NumberCell>{digitsOf(line.sensitivity, 4)}</NumberCell>
            <NumberCell>{threeDigits(line.standardUncertainty)}</NumberCell>
            <NumberCell>{writeFreedom(line.degreesOfFreedom)}</NumberCell>
          </tr>
        ))}
      </ScrollTable>
      <p>
        {figures.budgetSum(
          inUnit(budget.combined),
          writeFreedom(budget.effectiveDegreesOfFreedom),
          formatNumber(budget.k, { rule: 'decimals', decimals: 2 }),
          inUnit(budget.expanded),
          figures.share(threeDigits(100 * budget.level)),
        )}
      </p>
    </>
  );
}
