// Textos de la lista de lo que vence. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { whatsDue as english } from '../en-US/whats-due.ts';

const days = (count: number): string => (count === 1 ? '1 día' : `${count} días`);

export const whatsDue: Catalogue<typeof english> = {
  title: 'Vencimientos',
  asOf: (day) => `Al ${day}`,
  counted: (pairs, within) => {
    const what = pairs === 1 ? '1 par' : `${pairs} pares`;
    return within === null ? `${what} en uso` : `${what} por vencer en ${days(within)}, vencidos o sin calibración`;
  },
  within: 'Vence en',
  ofDays: (count) => days(count),
  everything: 'Todos los pares',
  otherDays: 'O en, días',
  show: 'Mostrar',
  daysBad: (given) => `"${given}" no es un número entero de días entre 0 y 9999.`,
  groupBy: 'Agrupar por',
  byDate: 'Fecha',
  byStanding: 'Estado',
  csv: 'Esta lista como CSV',
  noDate: 'Sin calibración vigente',
  past: 'Pasado el día de vencimiento',
  thisWeek: 'En los próximos 7 días',
  inDays: (count) => `En ${days(count)}`,
  later: 'Después',
  due: (day) => `vence ${day}`,
  never: 'aún sin calibrar',
  left: (count) => {
    if (count < 0) return `hace ${days(-count)}`;
    return count === 0 ? 'hoy' : `en ${days(count)}`;
  },
  waiting: (count) =>
    count === 1 ? '1 calibración espera una decisión' : `${count} calibraciones esperan una decisión`,
  parts: (jack, gauge) => `${jack} con ${gauge}`,
  noneDue: (within) => `Nada vence en ${days(within)}.`,
  nonePairs: 'Aún no hay ningún par en uso.',
  formPair: 'Registre piezas y forme un par',
  showAll: 'Mostrar todos los pares',
};
