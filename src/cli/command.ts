// What a command is, and what it may use: its words, the places it writes to, and a way to open a ledger.

import { type ParseArgsConfig, parseArgs } from 'node:util';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { VerifiedLedger } from '../ledger/verify.ts';
import type { ExportedFile } from '../service/export-plant.ts';
import type { Plant } from '../service/plant.ts';
import type { RestoreReport } from '../service/restore.ts';
import type { BackupFiles } from '../storage/ledger-backup.ts';
import type { LedgerHead } from '../storage/ledger-store.ts';

export interface OpenedPlant {
  readonly plant: Plant;
  /** The file behind it; null for a sample plant that lives in memory. */
  readonly file: string | null;
  readonly samplePassword: string | null;
  /** Makes copies of the file; null where there is none. */
  readonly backups: BackupFiles | null;
  /** Takes the file for one server until the plant is closed. Problem: `ledger-locked` naming who has it. */
  holdForServer(): Outcome<void>;
  close(): Promise<void>;
}

/** `read`: an existing ledger, or the sample plant. `write`: the same, kept in a file. `create`: makes a missing file. */
export type OpenFor = 'read' | 'write' | 'create';

export interface CommandContext {
  readonly write: (text: string) => void;
  readonly warn: (text: string) => void;
  readonly readFile: (path: string) => Outcome<string>;
  /** The files of the paths given; of a folder its .json and .csv files, registers first. */
  readonly listFiles: (paths: readonly string[]) => Outcome<readonly string[]>;
  /** Writes files into a new or empty folder. */
  readonly writeFiles: (folder: string, files: readonly ExportedFile[]) => Outcome<void>;
  readonly isFile: (path: string) => boolean;
  readonly openPlant: (ledger: string | undefined, purpose: OpenFor) => Promise<Outcome<OpenedPlant>>;
  /** Verifies a ledger; `find` is the number of an entry to find in it. */
  readonly verify: (ledger: string | undefined, find: number | null) => Promise<Outcome<VerifiedLedger>>;
  /** Puts a backup in the place of a ledger. `force`: why entries may be given up; null gives up none. */
  readonly restore: (
    backup: string,
    ledger: string | undefined,
    why: { readonly force: string | null; readonly reason: string },
  ) => Promise<Outcome<RestoreReport & { readonly file: string }>>;
  /** Makes a new ledger of the entries in an exported folder. */
  readonly rebuild: (folder: string, ledger: string) => Promise<Outcome<LedgerHead>>;
  /** Waits for the signal to stop. */
  readonly untilStopped: () => Promise<void>;
  /** Name of the operating system's user, for entries written from the command line. */
  readonly userName: string;
  readonly webFolder: string;
}

export interface Command {
  readonly name: string;
  readonly usage: string;
  readonly summary: string;
  run(context: CommandContext, args: readonly string[]): Promise<Outcome<number>>;
}

/** Reads the words of a command. Problem: `usage` for an option it does not know or a value left out. */
export function readArguments<T extends NonNullable<ParseArgsConfig['options']>>(
  usage: string,
  args: readonly string[],
  options: T,
  positionals: { readonly least: number; readonly most: number },
) {
  try {
    const parsed = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    const count = parsed.positionals.length;
    if (count >= positionals.least && count <= positionals.most) return succeed(parsed);
    const message = count < positionals.least ? 'Something is missing.' : 'There are too many words.';
    return fail('usage', message, { needed: usage, given: args.join(' ') });
  } catch (error) {
    const reason = error instanceof Error ? (error.message.split('\n')[0] ?? error.message) : String(error);
    return fail('usage', reason, { needed: usage, given: args.join(' ') });
  }
}

export function writeJson(context: CommandContext, value: unknown): void {
  context.write(`${JSON.stringify(value, null, 2)}\n`);
}
