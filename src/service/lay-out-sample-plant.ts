// The sample plant: an invented register and its run sheets, entered day by day as its people would have entered them,
// with all dates moved so that they lie around today.

import { type SamplePlantFile, samplePlantFile } from '../contract/equipment-file.ts';
import { readBody } from '../contract/read-body.ts';
import { readRunSheet } from '../contract/read-run-sheet.ts';
import type { RunSheet } from '../domain/calibration/run-sheet.ts';
import { addPlantDays, daysBetween, type PlantDay, plantDayAt } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import { withdrawCertificate } from './amend-certificate.ts';
import { approveCalibration, rejectCalibration } from './decide-calibration.ts';
import { fileCertificate } from './file-certificate.ts';
import { fileLaboratory } from './file-laboratory.ts';
import { fileStandard } from './file-standard.ts';
import { formPair } from './form-pair.ts';
import { placeHold } from './hold-pair.ts';
import { judgeCalibration } from './judge-calibration.ts';
import { partPair } from './part-pair.ts';
import type { Actor } from './perform-action.ts';
import { openPlant, type Plant, type PlantPorts } from './plant.ts';
import { programActor } from './program-actor.ts';
import { recordRun } from './record-run.ts';
import { type EquipmentInput, registerEquipment } from './register-equipment.ts';
import { reportEvent } from './report-event.ts';

/** The password all people of the sample plant share; shown on its sign-in page. */
export const samplePassword = 'sample-plant';

export interface SampleFiles {
  /** Text of plant.json. */
  readonly plant: string;
  readonly runSheets: readonly { readonly name: string; readonly text: string }[];
}

interface Step {
  readonly day: PlantDay;
  /** Of one day the lower comes first. */
  readonly order: number;
  readonly what: string;
  readonly act: (plant: Plant) => Promise<Outcome<unknown>>;
}

/** Lays the sample plant out in an empty ledger. Problems: whatever its files hold that the program refuses. */
export async function layOutSamplePlant(ports: PlantPorts, files: SampleFiles): Promise<Outcome<void>> {
  const parsed = readBody(samplePlantFile, JSON.parse(files.plant));
  if (!parsed.ok) return parsed;
  const { timeZone } = parsed.value.plant;
  const today = plantDayAt(ports.clock(), timeZone);
  const shift = daysBetween(parsed.value.writtenAsOf, today);
  const file = moveDates(parsed.value, shift);
  const sheets: { readonly name: string; readonly sheet: RunSheet }[] = [];
  for (const { name, text } of files.runSheets) {
    const sheet = readRunSheet(text);
    if (!sheet.ok) return { ok: false, problem: { ...sheet.problem, where: `${name}, ${sheet.problem.where ?? ''}` } };
    const day = sheet.value.calibratedOn;
    if (day === undefined) return fail('field-missing', `The run sheet ${name} of the sample plant has no day.`);
    sheets.push({ name, sheet: { ...sheet.value, calibratedOn: addPlantDays(day, shift) } });
  }
  const steps = [
    ...registerSteps(file),
    ...pairSteps(file, today),
    ...sheetSteps(file, sheets),
    ...troubleSteps(file),
  ].sort((a, b) => (a.day === b.day ? a.order - b.order : a.day < b.day ? -1 : 1));

  let instant = `${addPlantDays(steps[0]?.day ?? today, -1)}T14:00:00.000Z`;
  const opened = await openPlant({ ...ports, clock: () => instant });
  if (!opened.ok) return opened;
  const plant = opened.value;
  const founded = await found(plant, file, instant);
  if (!founded.ok) return founded;
  const now = Date.parse(ports.clock());
  for (const [index, step] of steps.entries()) {
    const planned = Date.parse(`${step.day}T15:00:00.000Z`) + (index % 200) * 60_000;
    instant = new Date(Math.min(now, Math.max(planned, Date.parse(instant)))).toISOString();
    const done = await step.act(plant);
    if (!done.ok) return { ok: false, problem: { ...done.problem, message: `${step.what}: ${done.problem.message}` } };
  }
  const hash = await ports.passwords.hash(samplePassword);
  for (const { id } of file.people) {
    const set = await ports.credentials.change([{ change: 'set-password', person: id, hash }]);
    if (!set.ok) return set;
  }
  return succeed(undefined);
}

async function found(plant: Plant, file: SamplePlantFile, at: string): Promise<Outcome<unknown>> {
  const { rules } = plant.state;
  return plant.append(
    [
      { at, actor: programActor, kind: 'plant-opened/1', subject: 'plant', body: { ...file.plant, sample: true } },
      {
        at,
        actor: programActor,
        kind: 'rules-set/4',
        subject: rules.name,
        body: { profile: rules, reason: 'the profile the sample plant works by' },
      },
      ...file.people.map(({ id, name, role }) => ({
        at,
        actor: programActor,
        kind: 'person-added/1' as const,
        subject: id,
        body: { name, role },
      })),
    ],
    null,
  );
}

function personWith(file: SamplePlantFile, role: 'technician' | 'quality', turn = 0): Actor {
  const people = file.people.filter((person) => person.role === role);
  const person = people[turn % people.length];
  if (person === undefined) throw new Error(`The sample plant has nobody with the role ${role}.`);
  return person;
}

function registerSteps(file: SamplePlantFile): readonly Step[] {
  const by = { actor: personWith(file, 'technician'), retry: null };
  const [first = file.writtenAsOf] = [
    ...file.pairs.map((pair) => pair.formedOn),
    ...file.loadCells.flatMap((cell) => cell.certificates.map((certificate) => certificate.calibratedOn)),
  ].sort();
  const parts: readonly EquipmentInput[] = [
    ...file.jacks.map((part) => ({ kind: 'jack' as const, ...part })),
    ...file.gauges.map((part) => ({ kind: 'gauge' as const, ...part })),
    ...file.pumps.map((part) => ({ kind: 'pump' as const, ...part })),
    ...file.loadCells.map(({ certificates: _certificates, ...part }) => ({ kind: 'load-cell' as const, ...part })),
  ];
  return [
    ...file.laboratories.map(({ accreditation, ...laboratory }) => ({
      day: first,
      order: 1,
      what: `laboratory ${laboratory.name}`,
      act: (plant: Plant) =>
        fileLaboratory(
          plant,
          {
            ...laboratory,
            accreditationBody: accreditation?.body,
            accreditationNumber: accreditation?.number,
            accreditationUntil: accreditation?.validUntil,
          },
          by,
        ),
    })),
    ...file.standards.map((standard) => ({
      day: [first, standard.calibratedOn].sort()[1] ?? first,
      order: 1,
      what: `standard ${standard.number}`,
      act: (plant: Plant) => fileStandard(plant, standard, by),
    })),
    ...parts.map((part) => ({
      day: first,
      order: 1,
      what: `${part.kind} ${part.tag}`,
      act: (plant: Plant) => registerEquipment(plant, part, by),
    })),
    ...file.loadCells.flatMap((cell) =>
      cell.certificates.map((certificate) => ({
        day: certificate.calibratedOn,
        order: 2,
        what: `certificate ${certificate.number}`,
        act: (plant: Plant) => fileCertificate(plant, cell.tag, certificate, by),
      })),
    ),
  ];
}

function pairSteps(file: SamplePlantFile, today: PlantDay): readonly Step[] {
  const by = { actor: personWith(file, 'technician'), retry: null };
  return file.pairs.flatMap(({ parted, hold, ...pair }) => [
    { day: pair.formedOn, order: 4, what: `pair ${pair.tag}`, act: (plant: Plant) => formPair(plant, pair, by) },
    ...(parted === undefined
      ? []
      : [
          {
            day: parted.on,
            order: 3,
            what: `parting of ${pair.tag}`,
            act: (plant: Plant) => partPair(plant, pair.tag, parted, by),
          },
        ]),
    ...(hold === undefined
      ? []
      : [
          {
            day: hold.on ?? today,
            order: 6,
            what: `hold on ${pair.tag}`,
            act: (plant: Plant) => placeHold(plant, pair.tag, hold.reason, by),
          },
        ]),
  ]);
}

/** What happened after a calibration: certificates called back, parts dropped. */
function troubleSteps(file: SamplePlantFile): readonly Step[] {
  const quality = { actor: personWith(file, 'quality'), retry: null };
  const technician = { actor: personWith(file, 'technician'), retry: null };
  return [
    ...file.withdrawals.map(({ loadCell, number, on, ...withdrawal }) => ({
      day: on,
      order: 6,
      what: `withdrawal of ${number}`,
      act: (plant: Plant) => withdrawCertificate(plant, loadCell, number, withdrawal, quality),
    })),
    ...file.events.map(({ pair, ...event }) => ({
      day: event.on,
      order: 6,
      what: `event of ${pair}`,
      act: (plant: Plant) => reportEvent(plant, pair, event, technician),
    })),
  ];
}

/** Each sheet is entered on its day and decided on the day after by somebody of quality. */
function sheetSteps(
  file: SamplePlantFile,
  sheets: readonly { readonly name: string; readonly sheet: RunSheet }[],
): readonly Step[] {
  return sheets.flatMap(({ name, sheet }, turn) => {
    const day = sheet.calibratedOn ?? '';
    const by = { actor: personWith(file, 'technician', turn), retry: null };
    const enter: Step = {
      day,
      order: 5,
      what: `run sheet ${name}`,
      act: (plant) => recordRun(plant, { sheet, degree: 'auto' }, by),
    };
    const decide: Step = {
      day: addPlantDays(day, 1),
      order: 0,
      what: `decision on ${name}`,
      act: (plant) => decideSheet(plant, sheet, file.rejected[name], personWith(file, 'quality', turn)),
    };
    return file.undecided.includes(name) ? [enter] : [enter, decide];
  });
}

async function decideSheet(
  plant: Plant,
  sheet: RunSheet,
  rejection: string | undefined,
  actor: Actor,
): Promise<Outcome<unknown>> {
  const by = { actor, retry: null };
  const waiting = [...plant.state.calibrations.values()].find(
    (record) =>
      record.status === 'submitted' && record.pair === sheet.pair && record.calibratedOn === sheet.calibratedOn,
  );
  if (waiting === undefined) return fail('unknown-calibration', `No run sheet of ${sheet.pair} waits.`);
  if (rejection !== undefined) return rejectCalibration(plant, waiting.number, rejection, by);
  const judged = judgeCalibration(plant, waiting);
  if (!judged.ok) return judged;
  return approveCalibration(plant, waiting.number, { reviewHash: judged.value.reviewHash }, by);
}

function moveDates(file: SamplePlantFile, days: number): SamplePlantFile {
  const move = (day: PlantDay): PlantDay => addPlantDays(day, days);
  return {
    ...file,
    loadCells: file.loadCells.map((cell) => ({
      ...cell,
      certificates: cell.certificates.map((certificate) => ({
        ...certificate,
        calibratedOn: move(certificate.calibratedOn),
        validUntil: move(certificate.validUntil),
      })),
    })),
    events: file.events.map((event) => ({ ...event, on: move(event.on) })),
    withdrawals: file.withdrawals.map(({ lastGood, ...withdrawal }) => ({
      ...withdrawal,
      on: move(withdrawal.on),
      ...(lastGood === undefined ? {} : { lastGood: move(lastGood) }),
    })),
    laboratories: file.laboratories.map(({ accreditation, ...laboratory }) => ({
      ...laboratory,
      ...(accreditation === undefined
        ? {}
        : { accreditation: { ...accreditation, validUntil: move(accreditation.validUntil) } }),
    })),
    standards: file.standards.map((standard) => ({
      ...standard,
      calibratedOn: move(standard.calibratedOn),
      validUntil: move(standard.validUntil),
    })),
    pairs: file.pairs.map((pair) => ({
      ...pair,
      formedOn: move(pair.formedOn),
      ...(pair.parted === undefined ? {} : { parted: { ...pair.parted, on: move(pair.parted.on) } }),
      ...(pair.hold?.on === undefined ? {} : { hold: { ...pair.hold, on: move(pair.hold.on) } }),
    })),
  };
}
