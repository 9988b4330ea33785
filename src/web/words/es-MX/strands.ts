// Textos de los tamaños de torón propios de la planta y de sus rollos. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { strands as english } from '../en-US/strands.ts';

export const strands: Catalogue<typeof english> = {
  sizesTitle: 'Tamaños de torón propios de la planta',
  reelsTitle: 'Rollos de torón',
  fileStrand: 'Archivar un tamaño de torón',
  fileStrandLead: 'Para un tamaño que la tabla no tiene. Se puede elegir de inmediato en la página Fijar la lectura.',
  fileReel: 'Archivar un rollo',
  fileReelLead:
    'El área y el módulo de su certificado cuentan para el alargamiento; una carga de ruptura menor baja el límite de esfuerzo, una mayor no sube nada.',
  designation: 'Nombre del tamaño',
  designationHint: 'Como se elige, por ejemplo 18 mm compacto 1860',
  grade: 'Grado',
  area: 'Área',
  areaHint: 'Con su unidad, por ejemplo 0.153 in2 o 98.7 mm2',
  breakingLoad: 'Carga de ruptura',
  specifiedHint: 'La especificada, con su unidad, por ejemplo 41.3 kip o 183.7 kN',
  foundHint: 'La que halló el certificado del fabricante, con su unidad',
  yieldLoad: 'Carga de fluencia',
  yieldBasis: 'Qué cuenta como fluencia',
  yieldBases: {
    'one-percent-extension': 'Carga al 1 % de extensión (ASTM, CSA)',
    'proof-0.1-percent': 'Carga al 0.1 % de deformación permanente (EN)',
    'proof-0.2-percent': 'Carga al 0.2 % de deformación permanente (IS)',
  },
  modulus: 'Módulo de elasticidad',
  modulusHint: 'Con su unidad, por ejemplo 28500 ksi o 197 GPa',
  certificate: 'Certificado del fabricante',
  certificateHint: 'Número o nombre del documento de donde son las cifras',
  reel: 'Rollo',
  strand: 'Tamaño que contiene',
  strandHint: 'Como en la tabla, por ejemplo 1/2 in 270, o un tamaño propio',
  heat: 'Colada',
  strandFiled: (designation) => `${designation} está archivado y se puede elegir.`,
  reelFiled: (id) => `El rollo ${id} está archivado y se puede elegir.`,
};
