// The strands of the standards: area, breaking load and yield load by size and grade. What a row is, is in strand-row.ts;
// forces from them are in jacking-force.ts and stress-ceiling.ts, a plant's own reels in reel.ts.

import { fail, type Outcome, succeed } from '../problem.ts';
import type { Provenance } from '../rules/rule-profile.ts';
import type { StrandRow, YieldBasis } from './strand-row.ts';

/** Yield load at 1 % extension of low-relaxation strand, as a part of the breaking load (ASTM A416; CSA G279 from memory). */
const yieldOfBreaking = 0.9;

/**
 * One row of ASTM A416/A416M. Its in-pound and SI columns are separate; both are kept and neither is converted. The modulus
 * is the one in use where there is no mill certificate, 28,500 ksi or 197,000 MPa.
 */
function astm(
  [size, grade]: readonly [size: string, grade: number],
  [areaIn2, breakingLbf]: readonly [number, number],
  [areaMm2, breakingKn]: readonly [number, number],
  marks: { readonly area: Provenance; readonly load: Provenance },
): StrandRow {
  const yielding = { basis: 'one-percent-extension', provenance: marks.load } as const;
  return {
    designation: `${size} ${grade}`,
    standard: 'ASTM A416',
    edition: null,
    size,
    grade: String(grade),
    inPound: {
      area: { value: areaIn2, unit: 'in2', provenance: marks.area },
      breakingLoad: { value: breakingLbf, unit: 'lbf', provenance: marks.load },
      yieldLoad: { value: yieldOfBreaking * breakingLbf, unit: 'lbf', ...yielding },
      modulus: { value: 28_500, unit: 'ksi', provenance: 'read' },
    },
    si: {
      area: { value: areaMm2, unit: 'mm2', provenance: marks.area },
      breakingLoad: { value: breakingKn, unit: 'kN', provenance: marks.load },
      yieldLoad: { value: yieldOfBreaking * breakingKn, unit: 'kN', ...yielding },
      modulus: { value: 197_000, unit: 'MPa', provenance: 'read' },
    },
  };
}

const read = { area: 'read', load: 'read' } as const;
/** The breaking load from memory: other tables print up to 100 lbf more, so the mill certificate decides. */
const loadFromMemory = { area: 'read', load: 'memory' } as const;
/** Another table gives 0.240 in2 for 0.62 in; both figures are from memory. */
const allFromMemory = { area: 'memory', load: 'memory' } as const;

const ofAstm: readonly StrandRow[] = [
  astm(['3/8 in', 250], [0.08, 20000], [51.61, 89.0], read),
  astm(['7/16 in', 250], [0.108, 27000], [69.68, 120.1], read),
  astm(['1/2 in', 250], [0.144, 36000], [92.9, 160.1], read),
  astm(['0.6 in', 250], [0.216, 54000], [139.35, 240.2], read),
  astm(['3/8 in', 270], [0.085, 23000], [54.84, 102.3], read),
  astm(['7/16 in', 270], [0.115, 31000], [74.19, 137.9], read),
  astm(['1/2 in', 270], [0.153, 41300], [98.71, 183.7], read),
  astm(['1/2 in special', 270], [0.167, 45000], [107.7, 200.2], loadFromMemory),
  astm(['9/16 in', 270], [0.192, 51700], [123.8, 230.0], loadFromMemory),
  astm(['0.6 in', 270], [0.217, 58600], [140.0, 260.7], read),
  astm(['0.62 in', 270], [0.231, 62400], [149, 277.6], allFromMemory),
  astm(['0.7 in', 270], [0.294, 79400], [189.7, 353], loadFromMemory),
];

interface MetricColumn {
  readonly standard: string;
  readonly edition: string | null;
  readonly grade: string;
  readonly yieldBasis: YieldBasis;
  readonly marks: { readonly area: Provenance; readonly load: Provenance; readonly yielding: Provenance };
  readonly modulus: StrandRow['si']['modulus'];
}

/** Rows of a standard that prints SI alone: size, area in mm2, breaking and yield load in kN. */
function metric(
  column: MetricColumn,
  rows: readonly (readonly [size: string, area: number, breaking: number, yielding: number])[],
): readonly StrandRow[] {
  const { standard, edition, grade, yieldBasis: basis, marks } = column;
  const document = edition === null ? standard : `${standard}:${edition}`;
  return rows.map(([size, area, breaking, yielding]) => ({
    designation: `${size} ${grade} (${document})`,
    standard,
    edition,
    size,
    grade,
    inPound: null,
    si: {
      area: { value: area, unit: 'mm2', provenance: marks.area },
      breakingLoad: { value: breaking, unit: 'kN', provenance: marks.load },
      yieldLoad: { value: yielding, unit: 'kN', basis, provenance: marks.yielding },
      modulus: column.modulus,
    },
  }));
}

/** Only drafts of the European standard exist; the editions differ in the 0.1 % force, so the edition is part of the name. */
const ofEuropeanDraft2000 = metric(
  {
    standard: 'prEN 10138-3',
    edition: '2000',
    grade: 'Y1860S7',
    yieldBasis: 'proof-0.1-percent',
    marks: { area: 'read', load: 'read', yielding: 'read' },
    modulus: null,
  },
  [
    ['12.5 mm', 93, 173, 149],
    ['13 mm', 100, 186, 160],
    ['15.2 mm', 140, 260, 224],
    ['16 mm', 150, 279, 240],
  ],
);

/** The forces are computed: breaking load = 1860 MPa x area, 0.1 % force = 0.88 of it, each to a whole kN. */
const ofEuropeanDraft2009 = metric(
  {
    standard: 'FprEN 10138-3',
    edition: '2009',
    grade: 'Y1860S7',
    yieldBasis: 'proof-0.1-percent',
    marks: { area: 'read', load: 'computed', yielding: 'computed' },
    modulus: { value: 195_000, unit: 'MPa', provenance: 'read' },
  },
  [
    ['12.5 mm', 93, 173, 152],
    ['12.9 mm', 100, 186, 164],
    ['15.2 mm', 139, 259, 228],
    ['15.7 mm', 150, 279, 246],
  ],
);

/** The proof loads are those a maker's data sheet gives for the standard. */
const ofIndianStandard = metric(
  {
    standard: 'IS 14268',
    edition: '1995',
    grade: 'class II',
    yieldBasis: 'proof-0.2-percent',
    marks: { area: 'read', load: 'read', yielding: 'second-hand' },
    modulus: null,
  },
  [
    ['9.5 mm', 54.8, 102.3, 92.1],
    ['11.1 mm', 74.2, 137.9, 124.1],
    ['12.7 mm', 98.7, 183.7, 165.3],
    ['15.2 mm', 140.0, 260.7, 234.6],
  ],
);

/** As the CPCI manual prints CSA G279; sizes are names, 13 being 12.70 mm. */
const ofCanadianStandard = metric(
  {
    standard: 'CSA G279',
    edition: null,
    grade: 'grade 1860',
    yieldBasis: 'one-percent-extension',
    marks: { area: 'read', load: 'read', yielding: 'memory' },
    modulus: null,
  },
  (
    [
      ['9', 54.8, 102.3],
      ['11', 74.1, 137.9],
      ['13', 98.7, 183.7],
      ['15', 140.0, 260.7],
    ] as const
  ).map(([size, area, breaking]) => [size, area, breaking, yieldOfBreaking * breaking]),
);

/** Seven-wire low-relaxation strand. Values marked `memory` or `second-hand` are not the standard's word: the mill certificate decides. */
export const strandTable: readonly StrandRow[] = [
  ...ofAstm,
  ...ofEuropeanDraft2000,
  ...ofEuropeanDraft2009,
  ...ofIndianStandard,
  ...ofCanadianStandard,
];

/** Decimal sizes beside the fractions of the table; 0.52 is the half-inch special. */
const sizes: Readonly<Record<string, string>> = {
  '0.375': '3/8',
  '0.438': '7/16',
  '0.4375': '7/16',
  '0.5': '1/2',
  '0.52': '1/2 special',
  '0.563': '9/16',
  '0.5625': '9/16',
};

/** The size and the grade in one spelling: "1/2 special 270". */
function plain(text: string): string {
  const words = text
    .toLowerCase()
    .replaceAll(/["”″,()]|-?(inches|inch|in\b)\.?|\bgrade\b|\bgr\b\.?/g, ' ')
    .replace(/(?<=\d)\s*k(si)?\s*$/, '')
    .trim()
    .split(/\s+/);
  const [first = '', ...rest] = words;
  const size = /^0?\.\d+$/.test(first) ? String(Number(first)) : first;
  return [Object.hasOwn(sizes, size) ? sizes[size] : size, ...rest].join(' ');
}

/** Answers which row, of those of the standards where no others are named, a person means by "1/2 in 270", `0.5" 270` and the like. Problem: `unknown-strand`. */
export function findStrand(
  text: string,
  where?: string,
  among: readonly StrandRow[] = strandTable,
): Outcome<StrandRow> {
  const wanted = plain(text);
  const found = among.find((candidate) => plain(candidate.designation) === wanted);
  if (found !== undefined) return succeed(found);
  return fail('unknown-strand', `"${text}" is not a strand of the table.`, {
    given: text,
    needed: `one of ${among.map((candidate) => candidate.designation).join('; ')}`,
    ...(where === undefined ? {} : { where }),
  });
}
