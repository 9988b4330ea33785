// Words of the plant's own sizes of strand and its reels. American English.

import type { YieldBasis } from '../../../domain/strand/strand-row.ts';

const yieldBases: Readonly<Record<YieldBasis, string>> = {
  'one-percent-extension': 'Load at 1 % extension (ASTM, CSA)',
  'proof-0.1-percent': 'Load at 0.1 % lasting strain (EN)',
  'proof-0.2-percent': 'Load at 0.2 % lasting strain (IS)',
};

export const strands = {
  sizesTitle: "Sizes of strand of the plant's own",
  reelsTitle: 'Reels of strand',
  fileStrand: 'File a size of strand',
  fileStrandLead: 'For a size the table does not hold. It can be chosen at the gauge at once.',
  fileReel: 'File a reel',
  fileReelLead:
    'Area and modulus of its mill certificate count for the elongation; a lower breaking load lowers the stress ceiling, a higher one raises nothing.',
  designation: 'Name of the size',
  designationHint: 'As people choose it, for example 18 mm compact 1860',
  grade: 'Grade',
  area: 'Area',
  areaHint: 'With its unit, for example 0.153 in2 or 98.7 mm2',
  breakingLoad: 'Breaking load',
  specifiedHint: 'As specified, with its unit, for example 41.3 kip or 183.7 kN',
  foundHint: 'As the mill certificate found it, with its unit',
  yieldLoad: 'Yield load',
  yieldBasis: 'What counts as yielding',
  yieldBases,
  modulus: 'Modulus of elasticity',
  modulusHint: 'With its unit, for example 28500 ksi or 197 GPa',
  certificate: 'Mill certificate',
  certificateHint: 'The number or name of the document the figures are from',
  reel: 'Reel',
  strand: 'Size it holds',
  strandHint: 'As in the table, for example 1/2 in 270, or a size of your own',
  heat: 'Heat',
  strandFiled: (designation: string) => `${designation} is filed and can be chosen at the gauge.`,
  reelFiled: (id: string) => `Reel ${id} is filed and can be chosen at the gauge.`,
} as const;
