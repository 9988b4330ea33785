// Textos de la página de una pieza: lo que la bitácora dice de ella, y cómo se corrige.

import type { Catalogue } from '../catalogue.ts';
import type { part as english } from '../en-US/part.ts';

export const part: Catalogue<typeof english> = {
  title: (kind, tag) => `${kind} ${tag}`,
  inPair: (tag) => `En el par ${tag}`,
  inNoPair: 'En ningún par',
  retired: (day, person, reason) => `Fuera de uso desde ${day}, por ${person}: ${reason}`,
  outOfUse: (day) => `fuera de uso desde ${day}`,
  factsTitle: 'Como está registrado',
  was: 'Ya no:',
  none: 'nada',
  correctionsTitle: 'Correcciones',
  correction: (entry, person, when, reason) => `Asiento ${entry}, ${person}, ${when}: ${reason}`,
  correct: 'Corregir lo registrado',
  correctTitle: (what) => `Corregir ${what}`,
  correctLead:
    'Solo para lo que se anotó mal. Lo que estaba antes queda en la bitácora y se muestra tachado. Algo que cambió en el taller, como una reparación, es un evento del par.',
  send: 'Escribir la corrección',
  retire: 'Poner fuera de uso',
  retireLead:
    'Queda en el registro con todo lo que se apoya en él; no se forma ningún par nuevo con él y ninguna corrida lo usa.',
  retireInPair: (pair) => `Para ponerlo fuera de uso no debe estar en ningún par: separe primero el par ${pair}.`,
  retiredOn: 'Fuera de uso desde',
  retiredOnHint: 'Hoy si se deja abierto',
  reasonHint: 'Al menos cinco caracteres; queda en la bitácora para siempre',
  certificatesTitle: 'Certificados',
  noCertificates: 'No hay ningún certificado archivado. Archívelo en la página del equipo.',
  certificate: (number) => `Certificado ${number}`,
  certificateWithdrawn: (person, when, reason) => `Retirado por ${person}, ${when}: ${reason}`,
  goodUntil: (day) => `Último día bueno: ${day}.`,
  goodNever: 'No se conoce ningún último día bueno: nada se apoya en él.',
  restsOnIt: (count) => (count === 1 ? '1 calibración se apoya en él:' : `${count} calibraciones se apoyan en él:`),
  nothingRests: 'Ninguna calibración se apoya en él.',
  ofPair: (pair, day) => `del par ${pair}, ${day}`,
  correctCertificate: 'Corregir el certificado',
  withdraw: 'Retirar el certificado',
  withdrawLead: (count) => {
    if (count === 0) return 'Ninguna calibración se apoya en él ahora; ninguna lo hará de aquí en adelante.';
    return `${count === 1 ? '1 calibración se apoya' : `${count} calibraciones se apoyan`} en él. Las hechas después del último día bueno quedan en duda de inmediato, y sus consultas se detienen hasta que alguien las revise.`;
  },
  lastGood: 'Último día bueno',
  lastGoodHint:
    'El último día en que se puede confiar en el certificado. Si se deja abierto, todo lo que se apoya en él queda en duda.',
  written: 'Está en la bitácora.',
  mayNot: 'Los técnicos y calidad corrigen el registro.',
};
