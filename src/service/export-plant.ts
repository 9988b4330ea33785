// Exporting the plant as plain files: register, run sheets as JSON and CSV, and every entry of the ledger.
// Writing the files is done by cli/.

import type { EquipmentFile } from '../contract/equipment-file.ts';
import { equipmentFileFormat } from '../contract/equipment-file.ts';
import { writeRunSheetCsv } from '../contract/run-sheet-csv.ts';
import { runSheetFormat } from '../contract/run-sheet-json.ts';
import type { Equipment, EquipmentKind } from '../domain/equipment/equipment.ts';
import { genesisHash } from '../ledger/hash-chain.ts';
import { filesNamedBy } from '../ledger/named-files.ts';
import { writeShortHead } from '../ledger/short-head.ts';
import { listDue, writeDueCsv } from './list-due.ts';
import type { Plant } from './plant.ts';

export interface ExportedFile {
  /** Path inside the folder, with forward slashes. */
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Where attached files lie in an export, each named by its SHA-256. */
export const attachmentFolder = 'attachments';

const endings: Readonly<Record<string, string>> = { 'application/pdf': 'pdf', 'image/png': 'png', 'image/jpeg': 'jpg' };

/**
 * Answers the files of the plant as of today: `equipment.json`, `run-sheets/`, `due.csv`, `attachments/`, `ledger.jsonl`,
 * `head.json`. The register is without attached files; the ledger with `attachments/` is everything but passwords.
 */
export async function exportPlant(plant: Plant): Promise<readonly ExportedFile[]> {
  const files: ExportedFile[] = [
    { path: 'equipment.json', content: `${JSON.stringify(registerOf(plant), null, 2)}\n` },
    { path: 'due.csv', content: writeDueCsv(listDue(plant, { within: null, standing: null, on: plant.today() })) },
  ];
  for (const record of plant.state.calibrations.values()) {
    const name = `${record.number}_${fileName(record.pair)}_${record.calibratedOn}`;
    const sheet = { format: runSheetFormat, ...record.sheet };
    files.push({ path: `run-sheets/${name}.json`, content: `${JSON.stringify(sheet, null, 2)}\n` });
    files.push({ path: `run-sheets/csv/${name}.csv`, content: writeRunSheetCsv(record.sheet) });
  }
  let entries = '';
  const named = new Set<string>();
  let head = { seq: 0, hash: genesisHash };
  for await (const row of plant.rows.readStoredRows(0)) {
    entries += `${JSON.stringify(row)}\n`;
    for (const file of filesNamedBy(row.kind, JSON.parse(row.body))) named.add(file);
    head = { seq: row.seq, hash: row.hash };
  }
  for (const name of named) {
    const attachment = await plant.attachments.read(name);
    if (attachment === null) continue;
    const ending = endings[attachment.type] ?? 'file';
    files.push({ path: `${attachmentFolder}/${name}.${ending}`, content: attachment.content });
  }
  files.push({ path: 'ledger.jsonl', content: entries });
  // The head of the entries written, which others may have appended to since the register was.
  files.push({
    path: 'head.json',
    content: `${JSON.stringify({ ...head, shortHead: writeShortHead(head) }, null, 2)}\n`,
  });
  return files;
}

function fileName(tag: string): string {
  return tag.replaceAll(/[^\p{L}\p{N}._-]/gu, '-');
}

function registerOf(plant: Plant): EquipmentFile {
  const { state } = plant;
  const ofKind = <K extends EquipmentKind>(wanted: K): Omit<Extract<Equipment, { kind: K }>, 'kind'>[] =>
    [...state.equipment.values()].flatMap((part) => {
      if (part.kind !== wanted) return [];
      const { kind: _kind, ...rest } = part;
      return [rest as Omit<Extract<Equipment, { kind: K }>, 'kind'>];
    });
  return {
    format: equipmentFileFormat,
    jacks: ofKind('jack'),
    gauges: ofKind('gauge'),
    pumps: ofKind('pump'),
    loadCells: ofKind('load-cell').map((cell) => ({
      ...cell,
      // A register that is read in again must not make a withdrawn certificate good; ledger.jsonl holds it.
      certificates: (state.certificates.get(cell.tag) ?? [])
        .filter(({ withdrawn }) => withdrawn === undefined)
        .map(({ loadCell: _cell, withdrawn: _withdrawn, files: _files, ...certificate }) => certificate),
    })),
    laboratories: [...state.laboratories.values()].map(({ files: _files, ...laboratory }) => laboratory),
    standards: [...state.standards.values()].flatMap(({ files: _files, withdrawn, ...standard }) =>
      withdrawn === undefined ? [standard] : [],
    ),
    strands: [...state.strands.values()],
    reels: [...state.reels.values()].map(({ strandId: strand, ...reel }) => ({ ...reel, strand })),
    pairs: [...state.pairs.values()].map(({ pair, hold }) => ({
      ...pair,
      ...(hold === null ? {} : { hold: { reason: hold.reason } }),
    })),
  };
}
