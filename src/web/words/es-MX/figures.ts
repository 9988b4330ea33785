// Textos de las cifras detrás de un veredicto: niveles, incertidumbre, comparación de grados, la curva en números. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { figures as english } from '../en-US/figures.ts';

type Figure = Parameters<(typeof english)['limit']>[0];

const sources: Readonly<Record<Parameters<(typeof english)['sourceName']>[0], string>> = {
  'load-cell-certificate': 'Celda de carga, según su certificado',
  'cell-indicator': 'Paso del indicador de la celda de carga',
  'gauge-resolution': 'Menor paso que se distingue en el manómetro',
  'scatter-and-fit': 'Dispersión de las lecturas y ajuste',
  reversibility: 'Descenso contra ascenso',
  temperature: 'Temperatura',
  drift: 'Deriva desde la calibración anterior',
};

const distributions: Readonly<Record<Parameters<(typeof english)['distributionName']>[0], string>> = {
  normal: 'normal',
  rectangular: 'rectangular',
  student: 't de Student',
};

const symbols: Readonly<Record<Figure, string>> = {
  accuracy: 'error de exactitud q',
  repeatability: 'repetibilidad b',
  reversibility: 'reversibilidad v',
  zero: 'error de cero f0',
  resolution: 'resolución a',
};

const machine = 'ISO 7500-1:2018 (de memoria), con la curva en lugar de la indicación de la máquina';

export const figures: Catalogue<typeof english> = {
  title: 'Las cifras detrás',
  sourceOf: (source) => `Fuente: ${source}.`,
  whatTheyMean: 'Qué significan las cifras',
  notKnown: 'no se sabe',
  yes: 'sí',
  no: 'no',
  infinite: 'infinitos',
  ofUnit: (name, unit) => `${name}, ${unit}`,
  percentSign: '%',

  levelsTitle: 'Niveles',
  incrementsTitle: 'Promedios por incremento',
  errorsTitle: 'Errores y clase en cada nivel',
  zerosTitle: 'Revisiones de cero',
  set: 'Fijado',
  points: 'Puntos',
  meanForce: 'Fuerza media',
  meanReading: 'Lectura media',
  onCurve: 'En la curva',
  cycleMean: (cycle) => `Ciclo ${cycle + 1}`,
  accuracyError: 'q',
  accuracyUncertainty: 'U de q',
  repeatability: 'b',
  reversibility: 'v',
  resolution: 'a',
  efficiency: 'Eficiencia de carga',
  machineClass: 'Clase',
  limitedBy: 'Limitada por',
  limit: (figure) => symbols[figure],
  noClass: 'ninguna',
  classNotKnown: 'sin juzgar',
  classRange: (name, from, to) => (from === to ? `clase ${name} en ${to}` : `clase ${name} de ${from} a ${to}`),
  classesOfRanges: (ranges) => ranges.join('; '),
  rangesHeld: (ranges) => `Cumple de ISO 7500-1: ${ranges}.`,
  noClassHeld: 'Ninguna clase se cumple hasta el nivel más alto.',
  overallClass: (name) => `Cada nivel cumple la clase ${name}.`,
  noOverallClass: 'Ninguna clase se cumple en todos los niveles.',
  notJudged: (which) =>
    `Sin medir, así que la clase se juzga sin: ${which.map((figure) => symbols[figure]).join(', ')}.`,
  notCertified:
    'Estas clases son las de las máquinas de ensayo, usadas como medida. Gato y manómetro no quedan certificados por ellas.',
  zeroError: (percent) => `El mayor error de cero es f0 = ${percent} % de la fuerza mayor calibrada.`,
  zeroPlace: 'Punto',
  zeroReading: 'Lectura con fuerza cero',
  zeroForce: 'Como fuerza',
  zeroPercent: 'f0',
  zeroNotChecked: 'No se tomó ningún punto con fuerza cero, así que f0 no se sabe.',
  levelNotes: [
    {
      name: 'Promedios',
      means: 'La media de los puntos en ascenso de todos los ciclos en un valor fijado, y de cada ciclo solo.',
      source: 'práctica común, sin fuente',
    },
    {
      name: 'q, error de exactitud',
      means: 'La media de la fuerza de la curva menos la fuerza en la celda de carga, en % de la fuerza.',
      source: machine,
    },
    {
      name: 'U de q',
      means: 'Qué tan bien se conoce q al 95 %: del presupuesto de la media de los puntos del nivel.',
      source: 'JCGM 100:2008 4.2.3 y G.6.4; ILAC-G8:09/2019 para su uso como banda de guarda (de memoria)',
    },
    { name: 'b, repetibilidad', means: 'Mayor menos menor error de los ciclos en un nivel.', source: machine },
    {
      name: 'v, reversibilidad',
      means: 'El error con presión en descenso menos el de presión en ascenso.',
      source: machine,
    },
    {
      name: 'a, resolución',
      means: 'El menor paso que se distingue en el manómetro, como fuerza en % del nivel.',
      source: machine,
    },
    {
      name: 'f0, error de cero',
      means: 'Lo que muestra el manómetro sin fuerza, como fuerza en % de la fuerza mayor calibrada.',
      source: 'ISO 7500-1:2018 (de memoria); la pendiente en el extremo bajo de la curva es regla propia',
    },
    {
      name: 'Eficiencia de carga',
      means: 'La fuerza en la celda de carga entre presión por área del pistón: lo que deja la fricción.',
      source: 'JJG 621 (de segunda mano)',
    },
    {
      name: 'Clase',
      means: 'La clase más estricta de máquinas de ensayo cuyos límites para q, b, v, f0 y a se cumplen todos.',
      source: 'ISO 7500-1:2018 Tabla 2 (de memoria)',
    },
  ],

  uncertaintyTitle: 'Incertidumbre',
  uncertaintyRange: (low, high) => (low === high ? `U ${low} %` : `U ${low} a ${high} % de la fuerza`),
  uncertaintyLead: 'Qué tan bien se conoce la fuerza cuando el manómetro se fija una vez en un nivel.',
  uncertaintyAtLevels: 'Incertidumbre expandida en cada nivel',
  force: 'Fuerza',
  expanded: 'U',
  coverage: 'k',
  combined: 'u',
  effectiveDegrees: 'Grados de libertad efectivos',
  chooseLevel: 'Presupuesto en el nivel',
  budgetTitle: (level) => `Presupuesto en ${level}`,
  source: 'Fuente',
  sourceName: (source) => sources[source],
  type: 'Tipo',
  value: 'Valor',
  divisor: 'Divisor',
  distribution: 'Distribución',
  distributionName: (distribution) => distributions[distribution],
  sensitivity: 'Sensibilidad',
  perUnitOfValue: (unit) => `${unit} por unidad del valor`,
  standardUncertainty: 'Incertidumbre estándar',
  degreesOfFreedom: 'Grados de libertad',
  budgetSum: (u, freedom, k, expanded, level) =>
    `u = ${u} con ${freedom} grados de libertad efectivos, k = ${k} para ${level}: U = ${expanded}.`,
  barsTitle: 'Parte de cada contribución en u²',
  barKinds: 'Lleno: tipo A, de la dispersión. Rayado: tipo B, de todo lo demás.',
  share: (percent) => `${percent} %`,
  uncertaintyNotes: [
    {
      name: 'Incertidumbre estándar',
      means: 'Valor entre divisor, por la sensibilidad: cada contribución como desviación estándar de la fuerza.',
      source: 'JCGM 100:2008 4.3 y 5.1.2',
    },
    {
      name: 'Tipo',
      means: 'A: de la dispersión de las observaciones. B: de certificados, pasos y otro conocimiento.',
      source: 'JCGM 100:2008 4.2 y 4.3',
    },
    {
      name: 'Sensibilidad',
      means: 'Cuánto cambia la fuerza por unidad del valor; para el manómetro, la pendiente de la curva.',
      source: 'JCGM 100:2008 5.1.3',
    },
    {
      name: 'u',
      means: 'La raíz de la suma de los cuadrados de todas las incertidumbres estándar.',
      source: 'JCGM 100:2008 5.1.2',
    },
    {
      name: 'Grados de libertad efectivos',
      means: 'Cuántos datos hay detrás de u; si son pocos, k es mayor.',
      source: 'JCGM 100:2008 G.4.1',
    },
    {
      name: 'U = k u',
      means: 'La fuerza está a no más de U del valor de la curva con una probabilidad de cerca de 95 %.',
      source: 'JCGM 100:2008 G.6.4; 95 % es la costumbre del campo',
    },
  ],

  degreesTitle: 'Grados comparados',
  degreeTaken: (degree) => `se tomó el grado ${degree}`,
  degreeTable: 'Cada grado contra el de abajo',
  degree: 'Grado',
  scatter: 's',
  fStatistic: 'F',
  pValue: 'p',
  rises: 'Sube en todo el intervalo',
  taken: 'Tomado',
  belowThousandth: 'menor que 0.001',
  degreeChart: 'Distancia de cada curva a la que se tomó',
  degreeSummary: (largest) =>
    `Las otras curvas están a no más de ${largest} de la que se tomó. Los residuos se dibujan con ellas.`,
  degreeLine: (degree) => `Grado ${degree}`,
  degreeTakenLine: (degree) => `Grado ${degree}, el tomado`,
  distanceAxis: (unit) => `Menos la curva tomada, ${unit}`,
  degreeNotes: [
    {
      name: 's, desviación estándar residual',
      means: 'Cuánto se dispersan los puntos alrededor de la curva de ese grado, en la unidad observada.',
      source: 'NIST/SEMATECH e-Handbook 4.1.4.1 (de memoria)',
    },
    {
      name: 'F y p',
      means: 'Si el término adicional gana más que la dispersión; se toma por real mientras p sea 0.05 o menos.',
      source: 'JCGM GUM-6:2020 11.10 para elegir entre polinomios anidados; 5 % es la costumbre del campo',
    },
    {
      name: 'Sube en todo el intervalo',
      means: 'Una curva que baja en algún lugar da dos fuerzas a una lectura y nunca se toma.',
      source: 'regla propia: una lectura debe significar una fuerza',
    },
  ],

  curveTitle: 'La curva en números',
  term: 'Término',
  covarianceTitle: 'Covarianza de los coeficientes',
  scatterOf: (scatter) => `s ${scatter}`,
  rSquared: 'R²',
  lackOfFit: 'Falta de ajuste',
  lackOfFitNone:
    'Ningún nivel se repite exactamente, o todas las repeticiones coinciden, así que la falta de ajuste no se puede probar.',
  lackOfFitTested: (f, degrees, p, isSeen) =>
    isSeen
      ? `F = ${f} (${degrees}), ${p}: las medias de los niveles se apartan de la curva más de lo que se dispersan sus repeticiones.`
      : `F = ${f} (${degrees}), ${p}: las medias de los niveles no se apartan de la curva más de lo que se dispersan sus repeticiones.`,
  degreesPair: (above, below) => `${above} y ${below} grados de libertad`,
  curveNotes: [
    {
      name: 'Coeficientes',
      means: 'Del polinomio en potencias ascendentes, en las unidades de la hoja.',
      source: 'mínimos cuadrados, NIST/SEMATECH e-Handbook 4.1.4.1 (de memoria)',
    },
    {
      name: 'Error estándar',
      means: 'La desviación estándar de un coeficiente si la calibración se hiciera de nuevo.',
      source: 'la raíz de la diagonal de la covarianza; JCGM 100:2008 H.3',
    },
    {
      name: 'Covarianza',
      means: 'Cómo van juntos los errores de dos coeficientes; se necesita para calcular las bandas a mano.',
      source: 's² (X’X)⁻¹, NIST/SEMATECH e-Handbook 4.1.4.1 (de memoria)',
    },
    {
      name: 'R²',
      means:
        'La parte de la variación de los valores observados que explica la curva; cerca de 1 para cualquier gato, así que prueba poco.',
      source: '1 − suma de cuadrados residual entre la total',
    },
    {
      name: 'Falta de ajuste',
      means: 'Si la curva tiene la forma equivocada, según los niveles repetidos.',
      source: 'NIST/SEMATECH e-Handbook 4.4.4.6 (de memoria)',
    },
  ],

  residualsTitle: 'Residuos, punto por punto',
  residualNotes: [
    {
      name: 'Studentizado',
      means: 'El residuo en unidades de su propia desviación estándar.',
      source: 'Cook y Weisberg, Residuals and Influence in Regression, 1982 (de memoria)',
    },
    {
      name: 'Eliminado',
      means: 'Lo mismo contra la curva por todos los demás puntos; más allá de 3 a cualquier lado merece una mirada.',
      source: 'Cook y Weisberg 1982, 2.2.2 (de memoria); el 3 es práctica común, sin fuente',
    },
    {
      name: 'Apalancamiento',
      means: 'Con qué fuerza jala la curva el lugar del punto en el intervalo, de 0 a 1.',
      source: 'NIST/SEMATECH e-Handbook 4.5.1.2 (de memoria)',
    },
    {
      name: 'Distancia de Cook',
      means: 'Cuánto se mueve toda la curva sin el punto; desde 0.5 el punto se nombra bajo la gráfica.',
      source: 'Cook y Weisberg 1982, 3.1 (de memoria); el 0.5 es práctica común, sin fuente',
    },
  ],
};
