// Textos de lo que pone en duda las calibraciones y de lo que les pasa a los pares entre calibraciones. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { doubt as english } from '../en-US/doubt.ts';

export const doubt: Catalogue<typeof english> = {
  title: 'En duda',
  lead: 'Calibraciones que se apoyan en algo que después resultó malo: un certificado o un patrón retirado, una celda de carga o el par mismo fuera de su límite. No se da ninguna lectura hasta que alguien lo revise.',
  openTitle: 'Por revisar',
  clearedTitle: 'Revisado y aclarado',
  noneOpen: 'Nada está en duda.',
  noneCleared: 'Ninguno todavía.',
  causes: {
    'certificate-withdrawn': 'Certificado retirado',
    'certificate-not-valid': 'Sin certificado ese día',
    'standard-withdrawn': 'Patrón retirado',
    'cell-as-found': 'Celda de carga hallada fuera',
    'pair-as-found': 'Par hallado fuera',
  },
  pair: (tag) => `Par ${tag}`,
  calibration: (number) => `Calibración ${number}`,
  inForce: 'vigente hoy',
  notInForce: 'ya no vigente',
  workFrom: (from) => `El trabajo desde ${from} se apoya en ella.`,
  workBetween: (from, until) => `El trabajo de ${from} a ${until} se apoya en ella.`,
  noBeds: 'No hay registrada ninguna mesa que se apoye en ella.',
  bedsRest: (beds, pulls) =>
    `${beds === 1 ? '1 mesa registrada' : `${beds} mesas registradas`} con ${pulls === 1 ? '1 jalón' : `${pulls} jalones`}:`,
  moreBeds: (count) => (count === 1 ? 'y 1 más.' : `y ${count} más.`),
  clear: 'Aclarar la duda',
  clearWhat:
    'Diga qué se revisó y por qué la calibración sigue valiendo. Las lecturas vuelven a apoyarse en ella de inmediato; la duda queda registrada con su nombre.',
  clearedBy: (who, when, reason) => `Aclarado por ${who} el ${when}: ${reason}`,
  ownRun: 'Usted capturó esta calibración; alguien más de calidad aclara las dudas sobre ella.',
  mayNot: 'Calidad revisa las dudas y las aclara.',
  ofPairTitle: 'En duda',
  everyDoubt: 'Todo lo que está en duda',

  eventsTitle: 'Qué le pasó',
  noEvents: 'Nada se reportó.',
  report: 'Reportar lo que pasó',
  reportLead: 'Lo reporta quien lo vio. Lo que le hace al par viene de las reglas de la planta.',
  kinds: {
    dropped: 'Se cayó o lo golpearon',
    overload: 'Sobrecarga',
    repair: 'Reparación',
    'seals-replaced': 'Sellos cambiados',
    'hose-changed': 'Manguera cambiada',
    'pointer-off-zero': 'Aguja fuera de cero',
    'strand-break': 'Ruptura de torón',
    'member-swapped': 'Gato, manómetro o bomba cambiados',
  },
  effects: {
    none: 'La cuadrilla trabaja como antes.',
    caution: 'La cuadrilla ve una precaución hasta la próxima calibración.',
    stop: 'La cuadrilla no recibe lectura hasta que calidad lo resuelva o el par se calibre de nuevo.',
    void: 'La curva queda anulada: la cuadrilla no recibe lectura hasta que el par se calibre de nuevo.',
  },
  acting: {
    none: 'Ya sin efecto',
    caution: 'Precaución',
    stop: 'Detiene el par',
    void: 'Curva anulada',
  },
  what: 'Qué pasó',
  chooseWhat: 'Elegir',
  whatNeeded: 'Elija qué pasó.',
  on: 'Día',
  note: 'Qué se vio',
  noteHint: 'Por ejemplo: el manómetro golpeó el molde, vidrio entero, aguja en cero',
  send: 'Reportarlo',
  swapped: 'Gato y manómetro en otras manos son otro par: separe este y luego forme el nuevo.',
  reportedBy: (who, when) => `reportado por ${who} el ${when}`,
  settle: 'Resolverlo',
  settleWhat: 'Diga qué se revisó. Ya no le hace nada al par; el reporte queda registrado.',
  settleVoidWhat:
    'Una curva anulada necesita una calibración nueva. Resuélvalo solo si el reporte mismo fue erróneo, y dígalo; queda registrado.',
  settledBy: (who, when, reason) => `Resuelto por ${who} el ${when}: ${reason}`,
};
