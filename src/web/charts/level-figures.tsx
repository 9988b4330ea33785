// The levels of a calibration: averages per increment with each cycle, errors and class, zero checks.

import type { MachineClassFigure } from '../../domain/rules/machine-class-limits.ts';
import { formatNumber, formatQuantity, formatUnit } from '../controls/format-number.ts';
import { words } from '../words/desk-words.ts';
import { FigureNotes } from './figure-notes.tsx';
import { fiveDigits, hundredths, threeDigits } from './figure-words.ts';
import { NumberCell, ScrollTable } from './scroll-table.tsx';
import { type ShownFigures, type ShownFit, type ShownLevel, unitsOfFit } from './shown-fit.ts';

interface LevelFiguresProps {
  readonly fit: ShownFit;
  readonly shown: ShownFigures;
}

export function LevelFigures({ fit, shown }: LevelFiguresProps) {
  const { figures } = words;
  const missing = [...new Set(shown.levels.flatMap(({ machineClass }) => machineClass.notJudged))];
  const ranges = classRangesInWords(shown, unitsOfFit(fit).set);
  const overall =
    shown.machineClass !== null
      ? figures.overallClass(shown.machineClass)
      : ranges === null
        ? null
        : figures.noOverallClass;
  return (
    <>
      <IncrementTable fit={fit} levels={shown.levels} />
      <ErrorTable fit={fit} levels={shown.levels} />
      <div>
        <p>{ranges === null ? figures.noClassHeld : figures.rangesHeld(ranges)}</p>
        {overall === null ? null : <p>{overall}</p>}
        {missing.length === 0 ? null : <p>{figures.notJudged(missing)}</p>}
        {shown.zeroErrorPercent === null ? null : <p>{figures.zeroError(hundredths(shown.zeroErrorPercent))}</p>}
        <p>{figures.notCertified}</p>
      </div>
      <ZeroTable fit={fit} shown={shown} />
      <FigureNotes notes={figures.levelNotes} />
    </>
  );
}

/** "class 1 from 40 kip to 50 kip; class 2 from 10 kip to 50 kip"; null where no class is held. */
export function classRangesInWords({ machineClassRanges }: ShownFigures, unit: string): string | null {
  if (machineClassRanges.length === 0) return null;
  const end = (value: number) => formatQuantity({ value: Number(value.toPrecision(5)), unit }, { rule: 'as-typed' });
  return words.figures.classesOfRanges(
    machineClassRanges.map(({ machineClass, from, to }) => words.figures.classRange(machineClass, end(from), end(to))),
  );
}

interface LevelRowsProps {
  readonly fit: ShownFit;
  readonly levels: readonly ShownLevel[];
}

function IncrementTable({ fit, levels }: LevelRowsProps) {
  const { figures, charts } = words;
  const units = unitsOfFit(fit);
  const observed = fit.curve.response;
  const cycles = [...new Set(levels.flatMap((level) => level.cycles.map(({ cycle }) => cycle)))].sort((a, b) => a - b);
  const columns = [
    figures.ofUnit(figures.set, formatUnit(units.set)),
    figures.points,
    figures.ofUnit(figures.meanForce, formatUnit(fit.units.force)),
    figures.ofUnit(figures.meanReading, formatUnit(fit.units.reading)),
    figures.ofUnit(figures.onCurve, formatUnit(units.observed)),
    ...cycles.map((cycle) => figures.ofUnit(figures.cycleMean(cycle), formatUnit(units.observed))),
  ];
  return (
    <ScrollTable title={figures.incrementsTitle} headingLevel={3} columns={columns} numbersFrom={0}>
      {levels.map((level) => (
        <tr key={level.set}>
          <th scope="row" data-number="true">
            {fiveDigits(level.set)}
          </th>
          <NumberCell>{level.count}</NumberCell>
          <NumberCell>{fiveDigits(level.force)}</NumberCell>
          <NumberCell>{fiveDigits(level.reading)}</NumberCell>
          <NumberCell>{fiveDigits(level.fitted)}</NumberCell>
          {cycles.map((cycle) => {
            const own = level.cycles.find((candidate) => candidate.cycle === cycle);
            return (
              <NumberCell key={cycle}>{own === undefined ? charts.notMeasured : fiveDigits(own[observed])}</NumberCell>
            );
          })}
        </tr>
      ))}
    </ScrollTable>
  );
}

function ErrorTable({ fit, levels }: LevelRowsProps) {
  const { figures } = words;
  const percent = (name: string) => figures.ofUnit(name, figures.percentSign);
  const columns = [
    figures.ofUnit(figures.set, formatUnit(unitsOfFit(fit).set)),
    percent(figures.accuracyError),
    percent(figures.accuracyUncertainty),
    percent(figures.repeatability),
    percent(figures.reversibility),
    percent(figures.resolution),
    figures.efficiency,
    figures.machineClass,
    figures.limitedBy,
  ];
  return (
    <ScrollTable title={figures.errorsTitle} headingLevel={3} columns={columns} numbersFrom={0}>
      {levels.map((level) => (
        <tr key={level.set}>
          <th scope="row" data-number="true">
            {fiveDigits(level.set)}
          </th>
          <NumberCell>{hundredths(level.accuracyErrorPercent)}</NumberCell>
          <NumberCell>{hundredths(level.errorUncertaintyPercent)}</NumberCell>
          <NumberCell>{hundredths(level.repeatabilityPercent)}</NumberCell>
          <NumberCell>{hundredths(level.reversibilityPercent)}</NumberCell>
          <NumberCell>
            {level.resolutionPercent === null ? figures.notKnown : hundredths(level.resolutionPercent)}
          </NumberCell>
          <NumberCell>
            {level.loadEfficiency === null
              ? figures.notKnown
              : formatNumber(level.loadEfficiency, { rule: 'decimals', decimals: 3 })}
          </NumberCell>
          <NumberCell>{classInWords(level)}</NumberCell>
          <NumberCell>{limitInWords(level.machineClass.limitedBy)}</NumberCell>
        </tr>
      ))}
    </ScrollTable>
  );
}

function classInWords({ machineClass }: ShownLevel): string {
  if (machineClass.met !== null) return machineClass.met;
  return machineClass.limitedBy === null ? words.figures.classNotKnown : words.figures.noClass;
}

const limitInWords = (figure: MachineClassFigure | null): string =>
  figure === null ? '' : words.figures.limit(figure);

function ZeroTable({ fit, shown }: LevelFiguresProps) {
  const { figures, charts } = words;
  if (shown.zeros.length === 0) return <p>{figures.zeroNotChecked}</p>;
  const columns = [
    figures.zeroPlace,
    figures.ofUnit(figures.zeroReading, formatUnit(fit.units.reading)),
    figures.ofUnit(figures.zeroForce, formatUnit(fit.units.force)),
    figures.ofUnit(figures.zeroPercent, figures.percentSign),
  ];
  return (
    <ScrollTable title={figures.zerosTitle} headingLevel={3} columns={columns}>
      {shown.zeros.map((zero) => (
        <tr key={`${zero.cycle} ${zero.row}`}>
          <th scope="row">{charts.place(zero.cycle, zero.row)}</th>
          <NumberCell>{formatNumber(zero.reading, { rule: 'as-typed' })}</NumberCell>
          <NumberCell>{threeDigits(zero.force)}</NumberCell>
          <NumberCell>{hundredths(zero.percent)}</NumberCell>
        </tr>
      ))}
    </ScrollTable>
  );
}
