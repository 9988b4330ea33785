// Textos de la página que muestra la bitácora.

import type { Catalogue } from '../catalogue.ts';
import type { ledger as english } from '../en-US/ledger.ts';

export const ledger: Catalogue<typeof english> = {
  title: 'Bitácora',
  lead: 'Todo lo que decidió una persona, en orden. Nada se cambia ni se quita; una corrección es un asiento nuevo.',
  verify: 'Verificar la bitácora',
  verifying: 'Calculando de nuevo cada hash ...',
  verified: (entries) =>
    entries === '1'
      ? 'La bitácora se verifica. Su único asiento está como se escribió.'
      : `La bitácora se verifica. Los ${entries} asientos están como se escribieron.`,
  verifiedChain: (seq) => `Secuencia y cadena: números 1 a ${seq} sin huecos, cada asiento con el hash del anterior.`,
  verifiedApprovals: (count) =>
    count === '0'
      ? 'Aprobaciones: ninguna todavía.'
      : `Aprobaciones: ${count}, cada una firmada por alguien distinto de quien la capturó, para exactamente la hoja y la curva revisadas.`,
  verifiedFiles: (count) =>
    count === '0' ? 'Archivos adjuntos: ninguno todavía.' : `Archivos adjuntos: ${count}, cada uno como se guardó.`,
  verifiedNote: (seq, message) => `Extraño, pero prueba de nada: asiento ${seq}: ${message}`,
  headLabel: 'Cabeza de la bitácora',
  headHint:
    'Anótela en papel con el día, o imprima una lista que la lleve. Quien tenga el papel puede saber después si la bitácora aún contiene todo lo que contenía ese día.',
  checkHead: 'Comprobar una cabeza de un papel',
  checkHeadHint: 'Por ejemplo 123-4f3a-91c2-77de-0b15',
  check: 'Comprobar',
  headFound: (seq, when) =>
    `La bitácora la contiene: asiento ${seq}, escrito ${when}. Nada hasta ahí se cambió ni se cortó desde entonces.`,
  correctedBy: (reason) => `: ${reason}`,
  correctedByEntry: (seq) => `Corregido por el asiento ${seq}`,
  correctsEntry: (seq) => `Toma el lugar del asiento ${seq}`,
  notVerified: (entries) =>
    `La bitácora no se verifica. De sus asientos solo los primeros ${entries} están sanos. Avise al gerente de calidad y use el último respaldo bueno.`,
  lastHash: 'Hash del último asiento',
  caption: (from, to, total) => `Asientos ${from} a ${to} de ${total}, los más nuevos primero`,
  empty: 'Aún no hay ningún asiento.',
  seq: 'Núm.',
  when: 'Cuándo',
  who: 'Quién',
  what: 'Qué',
  subject: 'De qué',
  hash: 'Hash',
  older: 'Asientos más antiguos',
  newer: 'Asientos más nuevos',
};
