import { existsSync, mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { sweepLeftovers, workFolderNames } from '../../../src/storage/sqlite/sweep-leftovers.ts';

const now = new Date('2026-06-02T12:00:00.000Z');

describe('leftovers beside a ledger', () => {
  it('are swept a day after nobody works on them, and nothing else is', () => {
    const folder = mkdtempSync(join(tmpdir(), 'sweep-'));
    onTestFinished(() => rmSync(folder, { recursive: true }));
    const make = (name: string, hours: number): string => {
      const path = join(folder, name);
      mkdirSync(path);
      writeFileSync(join(path, 'ledger'), 'copy');
      const at = new Date(now.getTime() - hours * 3_600_000);
      utimesSync(path, at, at);
      return path;
    };
    const old = Object.values(workFolderNames).map((start) => make(`${start}Ab12`, 25));
    const young = make(`${workFolderNames.restore}Cd34`, 23);
    const other = make('replaced', 9000);
    const file = join(folder, `${workFolderNames.ledger}file`);
    writeFileSync(file, 'mine');
    utimesSync(file, new Date(0), new Date(0));
    sweepLeftovers(folder, now);
    expect(old.map((path) => existsSync(path))).toEqual([false, false, false]);
    for (const path of [young, other, file]) expect(existsSync(path)).toBe(true);
  });
});
