// Importing plain files into the ledger: a register (jackledger-equipment/1) or a run sheet, each entry by the same
// action a person would use. Reading the files is done by cli/.

import { type EquipmentFile, equipmentFile, equipmentFileFormat } from '../contract/equipment-file.ts';
import { readBody } from '../contract/read-body.ts';
import { readRunSheet } from '../contract/read-run-sheet.ts';
import { daysBetween } from '../domain/dates/plant-day.ts';
import { fail, type Outcome, type Problem, succeed } from '../domain/problem.ts';
import { canonicalText } from '../ledger/canonical-bytes.ts';
import { fileCertificate } from './file-certificate.ts';
import { fileLaboratory } from './file-laboratory.ts';
import { fileStandard } from './file-standard.ts';
import { fileReel, fileStrand, readReel, readStrand } from './file-strand.ts';
import { formPair } from './form-pair.ts';
import { placeHold } from './hold-pair.ts';
import { partPair } from './part-pair.ts';
import type { Actor } from './perform-action.ts';
import type { Plant } from './plant.ts';
import { recordRun } from './record-run.ts';
import { type EquipmentInput, readEquipment, registerEquipment } from './register-equipment.ts';

/** What became of one thing in a file. */
export interface ImportFate {
  readonly what: string;
  readonly fate: 'recorded' | 'known-already' | 'refused';
  readonly problem?: Problem;
}

/** What a bare CSV cannot say of itself. */
export interface SheetFacts {
  readonly pair?: string | undefined;
  readonly calibratedOn?: string | undefined;
  readonly loadCell?: string | undefined;
  readonly degree: 1 | 2 | 3 | 'auto';
  readonly degreeReason?: string | undefined;
}

interface By {
  readonly actor: Actor;
}

/** Notes what became of one thing; `isKnown` where the ledger holds it already, described in the same words. */
type Note = (what: string, outcome: Outcome<unknown>, isKnown?: boolean) => void;

/** Imports the text of one file. Problems: a text that is neither format; every refusal is in its fate. */
export async function importText(
  plant: Plant,
  text: string,
  facts: SheetFacts,
  by: By,
): Promise<Outcome<readonly ImportFate[]>> {
  const register = readRegister(text);
  if (register !== null) return register.ok ? succeed(await importRegister(plant, register.value, by)) : register;
  const sheet = readRunSheet(text);
  if (!sheet.ok) return sheet;
  return succeed([await importSheet(plant, sheet.value, facts, by)]);
}

function readRegister(text: string): Outcome<EquipmentFile> | null {
  if (!text.trimStart().startsWith('{') || !text.includes(equipmentFileFormat)) return null;
  let input: unknown;
  try {
    input = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return fail('sheet-not-readable', `This is not JSON: ${error instanceof Error ? error.message : String(error)}.`);
  }
  return readBody(equipmentFile, input);
}

async function importSheet(
  plant: Plant,
  sheet: Parameters<typeof recordRun>[1]['sheet'],
  facts: SheetFacts,
  { actor }: By,
): Promise<ImportFate> {
  const pair = facts.pair ?? sheet.pair;
  const calibratedOn = facts.calibratedOn ?? sheet.calibratedOn;
  const loadCell = facts.loadCell ?? sheet.loadCell;
  const stated = { pair, calibratedOn, loadCell };
  const full = { ...sheet, ...Object.fromEntries(Object.entries(stated).filter(([, value]) => value !== undefined)) };
  const { degree, degreeReason } = facts;
  const what = `calibration of ${pair ?? 'an unnamed pair'} on ${calibratedOn ?? 'an unnamed day'}`;
  const refreshed = await plant.refresh();
  if (!refreshed.ok) return { what, fate: 'refused', problem: refreshed.problem };
  // A sheet that is in the ledger already, through whichever door and in whichever format, is not recorded again.
  const known = [...plant.state.calibrations.values()].find(
    (calibration) => calibration.degree === degree && isSame(calibration.sheet, full),
  );
  if (known !== undefined) {
    const standing = known.status === 'submitted' ? 'waits for approval' : known.status;
    return { what: `${what}, number ${known.number}, ${standing}`, fate: 'known-already' };
  }
  // The same sheet imported by two at a time is the same action.
  const request = JSON.stringify({ sheet: full, degree, degreeReason });
  const key = `import ${plant.sha256(new TextEncoder().encode(request))}`;
  const recorded = await recordRun(plant, { sheet: full, degree, degreeReason }, { actor, retry: { key, request } });
  if (!recorded.ok) return { what, fate: 'refused', problem: recorded.problem };
  return { what: `${what}, number ${recorded.value.number}, waits for approval`, fate: 'recorded' };
}

function isSame(one: unknown, other: unknown): boolean {
  return canonicalText(one) === canonicalText(other);
}

async function importRegister(plant: Plant, file: EquipmentFile, { actor }: By): Promise<readonly ImportFate[]> {
  const by = { actor, retry: null };
  const fates: ImportFate[] = [];
  const note: Note = (what, outcome, isKnown = false) => {
    if (outcome.ok) fates.push({ what, fate: 'recorded' });
    else if (isKnown && outcome.problem.code === 'tag-taken')
      fates.push({ what, fate: 'known-already', problem: outcome.problem });
    else fates.push({ what, fate: 'refused', problem: outcome.problem });
  };
  const parts: readonly EquipmentInput[] = [
    ...file.jacks.map((part) => ({ kind: 'jack' as const, ...part })),
    ...file.gauges.map((part) => ({ kind: 'gauge' as const, ...part })),
    ...file.pumps.map((part) => ({ kind: 'pump' as const, ...part })),
    ...file.loadCells.map(({ certificates: _certificates, ...part }) => ({ kind: 'load-cell' as const, ...part })),
  ];
  for (const part of parts) {
    const registered = await registerEquipment(plant, part, by);
    const described = readEquipment(part);
    const isKnown = described.ok && isSame(plant.state.equipment.get(part.tag) ?? null, described.value);
    note(`${part.kind.replace('-', ' ')} ${part.tag}`, registered, isKnown);
  }
  for (const { accreditation, ...laboratory } of file.laboratories) {
    // One filed again would take the place of the earlier, so the same is not filed twice.
    const known = plant.state.laboratories.get(laboratory.name);
    const { files: _files, ...before } = known ?? { name: '' };
    if (isSame(before, { ...laboratory, ...(accreditation === undefined ? {} : { accreditation }) })) {
      fates.push({ what: `laboratory ${laboratory.name}`, fate: 'known-already' });
      continue;
    }
    const { body, number, validUntil } = accreditation ?? {};
    const input = {
      ...laboratory,
      accreditationBody: body,
      accreditationNumber: number,
      accreditationUntil: validUntil,
    };
    note(`laboratory ${laboratory.name}`, await fileLaboratory(plant, input, by));
  }
  for (const standard of file.standards) {
    const { files: _files, ...before } = plant.state.standards.get(standard.number) ?? { number: '' };
    const filed = await fileStandard(plant, standard, by);
    note(`certificate ${standard.number} of a standard`, filed, isSame(before, standard));
  }
  for (const cell of file.loadCells) {
    for (const certificate of cell.certificates) {
      const filed = await fileCertificate(plant, cell.tag, certificate, by);
      const isKnown = (plant.state.certificates.get(cell.tag) ?? []).some(({ files: _files, ...known }) =>
        isSame(known, { ...certificate, loadCell: cell.tag }),
      );
      note(`certificate ${certificate.number} of ${cell.tag}`, filed, isKnown);
    }
  }
  await importStrands(plant, file, by, note);
  // A part may go from a parted pair to a later one, so the pairs are formed in the order of their days.
  const pairs = [...file.pairs].sort((a, b) => daysBetween(b.formedOn, a.formedOn));
  for (const pair of pairs) await importPair(plant, pair, by, note);
  return fates;
}

/** Filed again, one would take the place of the earlier, so the same is not filed twice. */
async function importStrands(
  plant: Plant,
  { strands, reels }: EquipmentFile,
  by: { readonly actor: Actor; readonly retry: null },
  note: Note,
): Promise<void> {
  const { state } = plant;
  for (const strand of strands) {
    const what = `strand ${strand.designation}`;
    const read = readStrand(strand);
    if (read.ok && isSame(state.strands.get(strand.designation) ?? null, read.value)) note(what, alreadyKnown, true);
    else note(what, await fileStrand(plant, strand, by));
  }
  for (const reel of reels) {
    const what = `reel ${reel.id}`;
    const read = readReel(plant, reel);
    if (read.ok && isSame(state.reels.get(reel.id) ?? null, read.value)) note(what, alreadyKnown, true);
    else note(what, await fileReel(plant, reel, by));
  }
}

const alreadyKnown = fail('tag-taken', 'The same is filed already.');

async function importPair(
  plant: Plant,
  { parted, hold, ...pair }: EquipmentFile['pairs'][number],
  by: { readonly actor: Actor; readonly retry: null },
  note: Note,
): Promise<void> {
  const formed = await formPair(plant, pair, by);
  const { parted: _parted, ...known } = plant.state.pairs.get(pair.tag)?.pair ?? { parted: undefined };
  const isKnown = isSame(known, pair);
  note(`pair ${pair.tag}`, formed, isKnown);
  if (!formed.ok && !isKnown) return;
  // A pair that was known before may still lack its hold or its parting.
  const record = plant.state.pairs.get(pair.tag);
  if (hold !== undefined && record?.hold?.reason !== hold.reason) {
    note(`hold on ${pair.tag}`, await placeHold(plant, pair.tag, hold.reason, by));
  }
  if (parted !== undefined && !isSame(record?.pair.parted ?? null, parted)) {
    note(`parting of ${pair.tag}`, await partPair(plant, pair.tag, parted, by));
  }
}
