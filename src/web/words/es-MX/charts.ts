// Textos de las gráficas, los niveles, el veredicto y las revisiones de captura que muestran varias páginas. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { charts as english } from '../en-US/charts.ts';

type Verdict = Parameters<(typeof english)['verdict']>[0];

const rules: Readonly<Record<string, string>> = {
  accuracy: 'Exactitud',
  repeatability: 'Repetibilidad',
  cycles: 'Ciclos',
  levels: 'Niveles',
  certificate: 'Certificado',
  loading: 'Carga',
  'load-efficiency': 'Eficiencia de carga',
  reversibility: 'Reversibilidad',
  zero: 'Cero',
  resolution: 'Resolución',
  'first-use': 'Primer uso',
};

const verdicts: Readonly<Record<Verdict, string>> = {
  pass: 'Cumple las reglas',
  'conditional-pass': 'Cumple con condición',
  'conditional-fail': 'No cumple con condición',
  fail: 'No cumple las reglas',
  'not-judged': 'Sin juzgar',
};

const verdictsOfRule: Readonly<Record<Verdict, string>> = {
  pass: 'cumplida',
  'conditional-pass': 'cumplida con condición',
  'conditional-fail': 'no cumplida con condición',
  fail: 'no cumplida',
  'not-judged': 'sin juzgar',
};

const conditionals: Partial<Readonly<Record<Verdict, string>>> = {
  'conditional-pass':
    'Cumple con condición: dentro del límite, pero más cerca de él que la incertidumbre U, así que el error verdadero puede estar fuera (banda de guarda de ILAC-G8).',
  'conditional-fail':
    'No cumple con condición: fuera del límite, pero por menos que la incertidumbre U, así que el error verdadero puede estar dentro (banda de guarda de ILAC-G8).',
};

export const charts: Catalogue<typeof english> = {
  force: 'Fuerza',
  reading: 'Lectura',
  axis: (quantity, unit) => `${quantity}, ${unit}`,
  cycle: (cycle) => `Ciclo ${cycle + 1}`,
  curve: 'Curva',
  band: 'Dónde cae un ajuste futuro, 95 %',
  meanBand: 'Dónde está la curva misma, 95 %',
  influential: (places) => `Lo que más mueve la curva: ${places.join('; ')}. Mírelo otra vez.`,
  earlier: (day) => `Curva del ${day}`,
  curveTitle: 'Puntos y curva',
  curveSummary: (points, degree, low, high) =>
    `${points} puntos y una curva de grado ${degree} de ${low} a ${high}. Los números están en las tablas de esta página.`,
  residualTitle: 'Residuos',
  residualAxis: (unit) => `Observado menos curva, ${unit}`,
  residualSummary: (largest, where) =>
    `Mayor residuo ${largest} en ${where}. Los números están en las tablas de esta página.`,

  verdict: (verdict) => verdicts[verdict],
  verdictOfRule: (verdict) => verdictsOfRule[verdict],
  rule: (rule) => rules[rule] ?? rule,
  acceptanceTitle: 'Aceptación',
  limit: (limit) => `límite ${limit}`,
  uncertaintyOf: (uncertainty) => `U ${uncertainty}`,
  guardedLimit: (limit) => `cumple sin condición hasta ${limit}`,
  probability: (probability) => `dentro del límite con una probabilidad de ${probability}`,
  above: (value) => `más de ${value}`,
  below: (value) => `menos de ${value}`,
  conditional: (verdict) => conditionals[verdict] ?? null,
  p: (value) => (value === null ? 'p menor que 0.001' : `p = ${value}`),
  basis: (basis) => `Base: ${basis}`,
  nothingFound: 'nada que juzgar',
  rulesDecide:
    'Deciden la especificación del proyecto, las normas locales y el ingeniero responsable; estos límites son el perfil de reglas vigente.',

  notMeasured: 'sin medir',

  placeColumn: 'Punto',
  forceColumn: 'Fuerza',
  readingColumn: 'Lectura',
  fittedColumn: 'En la curva',
  residualColumn: 'Residuo',
  studentizedColumn: 'Studentizado',
  deletedColumn: 'Eliminado',
  leverageColumn: 'Apalancamiento',
  cooksColumn: 'Distancia de Cook',
  place: (cycle, row) => `ciclo ${cycle + 1}, punto ${row + 1}`,

  checksTitle: 'Revisiones de captura',
  noChecks: 'Nada en la hoja se ve mal.',
  nothingToCheck: 'Aún no se captura nada.',
  lookFirst: 'Mire esto primero',
  weight: (weight) => (weight === 'error' ? 'Error' : 'Duda'),

  coefficientsTitle: 'Coeficientes',
  equation: (response, of) => `${response} como polinomio en ${of}`,
  scatter: 'Desviación estándar residual',
  freedom: (count) => (count === 1 ? '1 grado de libertad' : `${count} grados de libertad`),
  coefficient: (power) => (power === 0 ? 'Constante' : `Coeficiente de la potencia ${power}`),
  curveColumns: ['Término', 'Valor', 'Error estándar'],
  minus: '\u2212',
  percent: (value) => `${value} %`,
};
