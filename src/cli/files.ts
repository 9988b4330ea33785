// Reading and writing plain files for commands, with problems that name the file.

import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { ExportedFile } from '../service/export-plant.ts';

/** Larger than any register or run sheet; a larger file is refused unread. */
const largestFileBytes = 5_000_000;

export function isFile(path: string): boolean {
  return existsSync(path) && statSync(path).isFile();
}

export function readTextFile(path: string): Outcome<string> {
  try {
    const { size } = statSync(path);
    if (size > largestFileBytes) {
      return fail('body-too-large', `${path} has ${size} bytes; at most ${largestFileBytes} are read.`, {
        where: path,
        needed: `at most ${largestFileBytes} bytes`,
        given: `${size} bytes`,
      });
    }
    return succeed(new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(path)));
  } catch (error) {
    if (error instanceof TypeError) {
      return fail('sheet-not-readable', `${path} is not text in UTF-8.`, {
        where: path,
        needed: 'a text file in UTF-8',
      });
    }
    const reason = error instanceof Error ? error.message : String(error);
    return fail('file-not-found', `${path} cannot be read: ${reason}`, { where: path, given: path });
  }
}

/** The files of the paths given; of a folder its .json and .csv files and those of its folder run-sheets. */
export function listFiles(paths: readonly string[]): Outcome<readonly string[]> {
  const files: string[] = [];
  for (const path of paths) {
    if (!existsSync(path))
      return fail('file-not-found', `There is no file or folder ${path}.`, { where: path, given: path });
    if (!statSync(path).isDirectory()) {
      files.push(path);
      continue;
    }
    const inFolder = [path, join(path, 'run-sheets')].filter((folder) => existsSync(folder));
    for (const folder of inFolder) {
      const names = readdirSync(folder).filter(
        (name) => /\.(json|csv)$/.test(name) && name !== 'due.csv' && name !== 'head.json',
      );
      files.push(...names.sort().map((name) => join(folder, name)));
    }
  }
  return succeed(files);
}

export function writeFiles(folder: string, files: readonly ExportedFile[]): Outcome<void> {
  try {
    if (existsSync(folder) && readdirSync(folder).length > 0) {
      return fail('folder-not-empty', `${folder} already holds files; nothing was written.`, {
        where: folder,
        needed: 'a new or empty folder',
        given: folder,
      });
    }
    for (const { path, content } of files) {
      const target = join(folder, path);
      mkdirSync(dirname(target), { recursive: true });
      writeFileSync(target, content);
    }
    return succeed(undefined);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail('file-not-found', `${folder} cannot be written: ${reason}`, { where: folder, given: folder });
  }
}
