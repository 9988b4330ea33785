import { readFileSync } from 'node:fs';
import { basename, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { warningWeights } from '../../src/domain/lookup/warning.ts';
import { problemCodes } from '../../src/domain/problem.ts';
import { entryKinds } from '../../src/ledger/entry.ts';
import { filesBelow, root, sourceRoot } from './read-imports.ts';

const sources = filesBelow(sourceRoot, /\.(ts|tsx|mjs)$/);
const bannedFolders = /\/(utils?|helpers?|common|misc|shared|lib|core|manager|types)\//;
const longestFile = 400;

describe('names', () => {
  it('of files are kebab-case, and no folder is a place for anything', () => {
    const wrong = sources.filter(
      (path) =>
        !/^[a-z0-9]+([-.][a-z0-9]+)*\.(ts|tsx|mjs)$/i.test(basename(path)) ||
        bannedFolders.test(path) ||
        /\/index\.tsx?$/.test(path),
    );
    expect(
      wrong.filter((path) => !/\/words\/[a-z]{2}-[A-Z]{2}\//.test(path)).map((path) => relative(root, path)),
    ).toEqual([]);
  });

  it('every file opens with a comment on what it holds', () => {
    const silent = sources.filter((path) => !/^(#!.*\n)?(\/\/|\/\*)/.test(readFileSync(path, 'utf8')));
    expect(silent.map((path) => relative(root, path))).toEqual([]);
  });

  it(`no file is longer than ${longestFile} lines`, () => {
    const long = sources.filter((path) => readFileSync(path, 'utf8').split('\n').length > longestFile + 1);
    expect(long.map((path) => relative(root, path))).toEqual([]);
  });
});

describe('words other people rely on', () => {
  const manual = readFileSync(`${root}/DEVELOPERS.md`, 'utf8');

  it('every problem code is documented and used', () => {
    const text = sources
      .filter((path) => !/domain\/problem(-meanings)?\.ts$/.test(path))
      .map((path) => readFileSync(path, 'utf8'))
      .join('\n');
    const unused = problemCodes.filter((code) => !text.includes(`'${code}'`));
    expect(unused).toEqual([]);
    expect(problemCodes.filter((code) => !manual.includes(`\`${code}\``))).toEqual([]);
  });

  it('every warning code and every kind of entry is documented', () => {
    expect(Object.keys(warningWeights).filter((code) => !manual.includes(`\`${code}\``))).toEqual([]);
    expect(entryKinds.filter((kind) => !manual.includes(`\`${kind}\``))).toEqual([]);
  });
});
