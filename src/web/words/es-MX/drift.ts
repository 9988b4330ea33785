// Textos de cómo se mueve un par de calibración a calibración. Español de México.

import type { DriftAnswer } from '../../../contract/drift.ts';
import type { Catalogue } from '../catalogue.ts';
import type { drift as english } from '../en-US/drift.ts';

type Forecast = DriftAnswer['forecast'];
type Trend = Extract<Forecast, { readonly kind: 'forecast' }>['trend'];

const signed = (value: number): string => `${value > 0 ? '+' : ''}${value.toFixed(2)}`;
const rate = ({ percentPerYear, low, high }: Trend): string =>
  `${signed(percentPerYear)} % al año (${signed(low)} a ${signed(high)})`;

function forecast(found: Forecast, limit: string): string {
  switch (found.kind) {
    case 'too-few-calibrations':
      return `Aún sin pronóstico: hacen falta ${found.needed} calibraciones en días distintos, y ${found.given === 1 ? 'hay 1' : `hay ${found.given}`}.`;
    case 'not-a-line':
      return 'Sin pronóstico: las calibraciones quedan más lejos de cualquier recta de lo que explican sus incertidumbres. Algo pasó entre dos de ellas.';
    case 'outside-already':
      return `La tendencia, ${rate(found.trend)}, ya está fuera de ${limit} %.`;
    case 'no-forecast-before-horizon':
      return found.reason === 'trend-not-distinguishable'
        ? `Sin día que nombrar: la tendencia, ${rate(found.trend)}, no se distingue de ninguna.`
        : `La tendencia, ${rate(found.trend)}, queda dentro de ${limit} % los próximos cinco años.`;
    case 'forecast':
      return `Con su tendencia, ${rate(found.trend)}, el par sale de ${limit} % el ${found.day}; entre ${found.earliest} y ${found.latest ?? 'más de cinco años después'} con 95 %.`;
  }
}

const because: Readonly<Record<DriftAnswer['interval']['because'], string>> = {
  'never-found': 'ninguna hoja dice cómo se halló el par.',
  'found-outside': 'se halló fuera de su límite.',
  'near-the-limit': 'se halló dentro de su límite, pero no holgadamente.',
  'well-within': 'se halló holgadamente dentro de su límite.',
  'profile-allows-no-longer': 'las reglas no permiten uno más largo.',
  'shortest-already': 'no hay un paso más corto.',
  'drift-reaches-limit': 'para entonces su deriva puede alcanzar el límite.',
};

function interval({ advice, months, currentMonths, because: why }: DriftAnswer['interval']): string {
  const what =
    advice === 'keep'
      ? `Conserve el intervalo de ${currentMonths} meses`
      : advice === 'shorten'
        ? `Acorte el intervalo de ${currentMonths} a ${months} meses`
        : `El intervalo podría alargarse de ${currentMonths} a ${months} meses`;
  return `${what}: ${because[why]}`;
}

export const drift: Catalogue<typeof english> = {
  title: 'Entre calibraciones',
  lead: (limit) =>
    `Cuánta fuerza de más o de menos da la misma lectura de una calibración a la siguiente. Las reglas permiten ${limit} %.`,
  changesTitle: 'De cada calibración a la siguiente',
  changeColumns: ['De', 'A', 'Día', 'Veredicto', 'Mayor cambio, %', 'En', '% al año', 'E_n'],
  verdicts: {
    agree: 'dentro de sus incertidumbres',
    differ: 'más de lo que explican sus incertidumbres',
    'not-judged': 'sin juzgar',
  },
  historyTitle: (force) => `En la lectura para ${force}, contra la curva vigente`,
  historyColumns: ['Calibración', 'Día', 'Deriva, %', 'U, % (k = 2)'],
  forecast,
  interval,
  signed,
  none: '-',
};
