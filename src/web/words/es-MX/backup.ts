// Textos sobre los respaldos de la bitácora.

import type { Catalogue } from '../catalogue.ts';
import type { backup as english } from '../en-US/backup.ts';

const days = (count: number): string => (count === 1 ? '1 día' : `${count} días`);

export const backup: Catalogue<typeof english> = {
  title: 'Respaldo de la bitácora',
  none: 'Aún no hay ningún respaldo de la bitácora.',
  last: (age) => `Último respaldo bueno de la bitácora: hace ${age}.`,
  age: (hours) => {
    if (hours < 1) return 'menos de una hora';
    if (hours < 48) return Math.round(hours) === 1 ? '1 hora' : `${Math.round(hours)} horas`;
    return days(Math.round(hours / 24));
  },
  since: (entries) => {
    if (entries === 0) return 'Nada se escribió desde entonces.';
    return entries === 1
      ? 'Desde entonces se escribió 1 asiento.'
      : `Desde entonces se escribieron ${entries} asientos.`;
  },
  old: (limit) => `Debería haber uno de no más de ${limit}.`,
  file: (file, when, head) => `${file}, hecho ${when}, cabeza ${head}`,
  schedule: (every, keep, due) =>
    `El servidor hace uno cada ${every === 1 ? 'hora' : `${every} horas`} y conserva ${keep}. El próximo toca ${due}.`,
  noSchedule: 'El servidor no hace ninguno por sí mismo: inícielo con --backup-to, o ejecute el comando backup.',
  failed: (when, message) => `El último intento, ${when}, falló: ${message}`,
};
