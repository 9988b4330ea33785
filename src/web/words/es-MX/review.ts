// Textos de las páginas donde el gerente de calidad revisa una calibración enviada. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { review as english } from '../en-US/review.ts';

const statuses: Readonly<Record<Parameters<(typeof english)['status']>[0], string>> = {
  submitted: 'Espera una decisión',
  approved: 'Aprobada',
  rejected: 'Rechazada',
  withdrawn: 'Retirada',
};

export const review: Catalogue<typeof english> = {
  title: 'Revisar',
  lead: 'Calibraciones que esperan la decisión de alguien distinto de quien las capturó.',
  none: 'Nada espera una decisión.',
  noneNext: 'Lo que un técnico envía en la página Calibrar aparece aquí.',
  calibratedOn: (day) => `calibrado ${day}`,
  enteredBy: (person, when) => `capturada por ${person}, ${when}`,
  own: 'Hoja propia: decide alguien más',
  titleOf: (number) => `Calibración ${number}`,
  all: 'Todas las que esperan',
  status: (status) => statuses[status],
  withdraw: 'Retirar la calibración',
  withdrawWhat: (number, pair) =>
    `Desde entonces ninguna consulta del par ${pair} se apoya en ${number}. La calibración anterior vuelve a estar vigente si la hay; si no, el par queda sin calibrar.`,
  withdrawn: (person, when, reason) => `Retirada por ${person}, ${when}: ${reason}`,
  decided: (status, person, when) => `${status} por ${person}, ${when}`,
  pair: 'Par',
  day: 'Día de la calibración',
  due: 'Estaría vigente hasta',
  loadCell: 'Celda de carga',
  certificate: 'Certificado',
  noCertificate: 'Ningún certificado cubre el día',
  certificateOf: (number, laboratory, until) => `${number}, ${laboratory}, hasta ${until}`,
  traceable: (to) => `trazable a ${to}`,
  enteredByLabel: 'Capturada por',
  setLabel: 'Se fijó',
  set: { force: 'la fuerza', reading: 'la lectura' },
  loadingLabel: 'Carga',
  loading: { active: 'el gato empujó la celda de carga', passive: 'una máquina empujó el gato' },
  conditionLabel: 'Cuándo se corrió',
  condition: {
    'as-found': 'como se halló, antes de ajustar nada; no se vuelve la curva vigente',
    'as-left': 'como se dejó, después de un ajuste o reparación',
    unchanged: 'como se halló y se dejó, nada se ajustó',
  },
  asFoundLabel: 'Cómo se halló',
  noAsFound: 'Antes no había ninguna curva en uso.',
  degreeLabel: 'Grado',
  degreeAuto: (degree) => `${degree}, por la prueba F`,
  degreeChosen: (degree, reason) => `${degree}, elegido: ${reason}`,
  noReason: 'no se dio razón',
  firstUse: 'Día del primer uso',
  temperature: 'Temperatura',
  celsius: (value) => `${value} °C`,
  note: 'Nota del técnico',
  dataTitle: 'La hoja como se capturó',
  cycle: (cycle, ram) => (ram === null ? `Ciclo ${cycle}` : `Ciclo ${cycle}, pistón afuera ${ram}`),
  toDecision: 'Ir a la decisión',
  direction: { up: 'ascenso', down: 'descenso' },
  directionColumn: 'Sentido',

  decisionTitle: 'Decisión',
  passwordToSign: 'Su contraseña, para firmar',
  approve: 'Aprobar',
  approving: 'Aprobando ...',
  reject: 'Rechazar',
  rejecting: 'Rechazando ...',
  approvalNote: 'Nota sobre la aprobación',
  approvalNoteNeeded: (verdict) =>
    verdict === 'fail'
      ? 'Por qué se aprueba aunque no se cumple una regla'
      : 'Por qué se aprueba aunque una revisión de captura halló un error',
  rejectReason: 'Por qué se rechaza',
  reasonNeeded: 'Dé una razón de al menos cinco caracteres.',
  whatApproves: (pair, day) => `Al aprobar, esta es la calibración de ${pair} hasta ${day}.`,
  ownWork: 'Usted capturó esta calibración, así que alguien más debe aprobarla.',
  signIn: 'Entrar',
  signInToDecide: 'Entre para decidir.',
  roleMayNot: 'Solo el gerente de calidad aprueba o rechaza.',
  stale:
    'Esta calibración, su curva o las reglas cambiaron mientras usted leía. Nada se aprobó. Léala de nuevo como está ahora y luego decida.',
  readAgain: 'Leerla de nuevo',
  hash: (hash) => `Usted decide sobre exactamente esta hoja, curva y perfil de reglas: ${hash.slice(0, 12)}`,
  approvedNow: 'Aprobada. Desde ahora la cuadrilla ve esta curva.',
  rejectedNow: 'Rechazada. El par conserva la calibración que tenía.',
  noCurve: 'Aquí no se puede dibujar la curva; los números están en las tablas.',
};
