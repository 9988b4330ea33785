// Textos de las revisiones intermedias de un par. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { checks as english } from '../en-US/checks.ts';

export const checks: Catalogue<typeof english> = {
  title: 'Revisiones intermedias',
  lead: 'Entre calibraciones, unas lecturas contra una celda de carga certificada: ¿sigue valiendo la curva en uso?',
  none: 'No hay ninguna revisión registrada.',
  record: 'Registrar una revisión',
  columns: [
    'Día',
    'Celda de carga',
    'Contra',
    'Fuerza',
    'Lectura',
    'Fuera, % de la fuerza',
    'Permitido, %',
    'Se halló',
  ],
  outcomes: {
    passed: 'concuerda con la curva',
    outside: 'fuera',
    'no-scatter': 'no se puede juzgar, nada se dispersa',
    'not-judged': 'sin juzgar',
  },
  on: 'Día de la revisión',
  loadCell: 'Celda de carga',
  chooseLoadCell: 'Elegir la celda de carga',
  force: (row, unit) => `Fuerza ${row}, ${unit}`,
  reading: (row, unit) => `Lectura ${row}, ${unit}`,
  hint: 'Un nivel por fila, al menos uno; deje las demás en blanco.',
  note: 'Nota',
  send: 'Registrar la revisión',
  sending: 'Escribiéndolo en la bitácora ...',
  cancel: 'Dejarlo como está',
  fewer: 'Llene fuerza y lectura de al menos una fila.',
};
