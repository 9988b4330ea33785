import { describe, expect, it } from 'vitest';
import { exceptions, importTable, type Part } from './import-table.ts';
import { allImports, type Import, importsIn } from './read-imports.ts';

const partOf = (path: string): string => path.split('/')[0] ?? '';

/** Answers what is wrong with one import, null when nothing is. */
function faultOf({ from, to, isPackage, isTypeOnly }: Import): string | null {
  const part = partOf(from) as Part;
  const rule = importTable[part];
  if (rule === undefined) return `${from} lies in no known part of src/`;
  const complaint = `${from} may not import ${to}, because ${rule.because}`;
  if (isPackage) {
    const isFree = rule.packages === undefined || rule.packages.some((pattern) => pattern.test(to));
    return isFree ? null : complaint;
  }
  if (exceptions.some((exception) => exception.from.test(from) && exception.to.test(to))) return null;
  const target = partOf(to) as Part;
  if (rule.code.includes(target) || (isTypeOnly && rule.types.includes(target))) return featureFault(from, to);
  return complaint;
}

function featureFault(from: string, to: string): string | null {
  const feature = (path: string) => /^web\/features\/([^/]+)\//.exec(path)?.[1];
  const [own, other] = [feature(from), feature(to)];
  if (own === undefined || other === undefined || own === other) return null;
  return `${from} may not import ${to}, because a feature never imports a feature`;
}

describe('imports', () => {
  const imports = allImports();

  it('finds the imports there are', () => {
    expect(imports.length).toBeGreaterThan(100);
    expect(imports.some(({ isPackage }) => isPackage)).toBe(true);
  });

  it('go one way only, as the table says', () => {
    expect(imports.map(faultOf).filter((fault) => fault !== null)).toEqual([]);
  });

  it('refuses what the table forbids, and says why', () => {
    const forbidden = [
      ['domain/lookup/standing.ts', "import { openPlant } from '../../service/plant.ts';"],
      ['domain/lookup/standing.ts', "import { readFileSync } from 'node:fs';"],
      ['ledger/verify.ts', "import { z } from 'zod';"],
      ['service/look-up.ts', "import { openSqliteStorage } from '../storage/sqlite/open-storage.ts';"],
      ['http/app.ts', "import { fitPolynomial } from '../domain/regression/fit-polynomial.ts';"],
      ['web/features/review/review-page.tsx', "import { Grid } from '../calibrate/grid.tsx';"],
      ['web/app/app.tsx', "const page = () => import('../../service/plant.ts');"],
    ] as const;
    for (const [from, text] of forbidden) {
      const fault = importsIn(from, text).map(faultOf)[0];
      expect(fault).toContain('may not import');
      expect(fault).toContain('because');
    }
  });

  it('lets types of a port pass where its code may not', () => {
    const typeImport = "import type { LedgerStore } from '../storage/ledger-store.ts';";
    expect(importsIn('service/plant.ts', typeImport).map(faultOf)).toEqual([null]);
    const codeImport = "import { openMemoryStorage } from '../storage/memory/open-storage.ts';";
    expect(importsIn('service/plant.ts', codeImport).map(faultOf)[0]).toContain('may not import');
  });

  it('never go round in a circle', () => {
    const graph = new Map<string, string[]>();
    for (const { from, to, isPackage, isTypeOnly } of imports) {
      if (!isPackage && !isTypeOnly) graph.set(from, [...(graph.get(from) ?? []), to]);
    }
    expect(findCircle(graph)).toBeNull();
    expect(
      findCircle(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['a']],
        ]),
      ),
    ).toEqual(['a', 'b', 'c', 'a']);
  });
});

function findCircle(graph: ReadonlyMap<string, readonly string[]>): readonly string[] | null {
  const done = new Set<string>();
  const visit = (node: string, path: readonly string[]): readonly string[] | null => {
    if (path.includes(node)) return [...path.slice(path.indexOf(node)), node];
    if (done.has(node)) return null;
    for (const next of graph.get(node) ?? []) {
      const circle = visit(next, [...path, node]);
      if (circle !== null) return circle;
    }
    done.add(node);
    return null;
  };
  for (const node of graph.keys()) {
    const circle = visit(node, []);
    if (circle !== null) return circle;
  }
  return null;
}
