// Textos de la página que muestra las reglas con que juzga una planta, y las fija. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { rules as english } from '../en-US/rules.ts';

type LimitWords = Catalogue<(typeof english)['limits']>[keyof (typeof english)['limits']];

const counted = (one: string, many: string) => (digits: string, count: number) =>
  count === 1 ? `${digits} ${one}` : `${digits} ${many}`;
const percentOf = (unit: string) => (digits: string) => `${digits} ${unit}`;
const yesNo = (_digits: string, count: number) => (count > 0 ? 'Sí' : 'No');

const percentOfForce = { unit: '% de la fuerza', value: percentOf('% de la fuerza') };
const ofFullScale = { unit: 'de la escala completa', value: percentOf('de la escala completa') };
const ofPressureTimesArea = { unit: 'de presión por área', value: percentOf('de presión por área') };
const months = { unit: 'meses', value: counted('mes', 'meses') };
const days = { unit: 'días', value: counted('día', 'días') };

const effects = ['Nada', 'Una precaución', 'Un alto hasta que calidad lo resuelva', 'La curva queda anulada'] as const;
const effectOf = (name: string, what: string): LimitWords => ({
  name,
  what,
  unit: '',
  value: (_digits, value) => effects[value] ?? String(value),
  without: 'Un alto hasta que calidad lo resuelva',
});

const whole = (isWhole: boolean) => (isWhole ? 'Un número entero' : 'Un número');

export const rules: Catalogue<typeof english> = {
  title: 'Reglas',
  lead: 'Con qué se juzgan cada calibración, vencimiento y lectura de esta planta.',
  whoDecides:
    'Deciden la especificación del proyecto, las normas locales y el ingeniero con licencia. Donde un límite de aquí difiera de ellos, cámbielo aquí y nómbrelos como su fuente.',
  inForceTitle: 'Vigentes',
  setBy: (who, when, entry) => `Fijadas por ${who} el ${when}, asiento ${entry} de la bitácora.`,
  neverSet: 'Nadie ha fijado reglas todavía; estas son con las que empieza el programa.',
  reasonWas: (reason) => `Razón: ${reason}`,
  limits: {
    intervalMonths: {
      name: 'Intervalo',
      what: 'Cuánto queda vigente una calibración, en meses de calendario desde su día.',
      ...months,
    },
    dueSoonDays: {
      name: 'Aviso antes del vencimiento',
      what: 'Desde cuántos días antes de su vencimiento un par cuenta como por vencer.',
      ...days,
    },
    firstUseDays: {
      name: 'Calibración antes del primer uso',
      what: 'Cuántos días pueden pasar entre una calibración y su primer uso en un proyecto.',
      ...days,
      without: 'No se pide',
    },
    accuracyPercent: {
      name: 'Exactitud',
      what: 'Mayor desviación de cualquier nivel respecto de la curva.',
      ...percentOfForce,
    },
    guardFactor: {
      name: 'Banda de guarda',
      what: 'Cuánto de la incertidumbre U se guarda del límite de exactitud: 1 es con guarda, 0 aceptación simple.',
      unit: 'veces U',
      value: (digits) => `${digits} veces U`,
      without: 'Ninguna',
    },
    repeatabilityPercent: {
      name: 'Repetibilidad',
      what: 'Mayor dispersión de los ciclos en un nivel.',
      ...percentOfForce,
    },
    reversibilityPercent: {
      name: 'Reversibilidad',
      what: 'Mayor diferencia entre series en descenso y en ascenso en un nivel.',
      ...percentOfForce,
      without: 'Sin juzgar',
    },
    zeroPercent: {
      name: 'Cero',
      what: 'Mayor fuerza detrás de la lectura con fuerza cero.',
      unit: '% de la fuerza mayor',
      value: percentOf('% de la fuerza mayor'),
      without: 'Sin juzgar',
    },
    resolutionPercent: {
      name: 'Resolución',
      what: 'Mayor paso que se puede leer en un nivel, como fuerza.',
      ...percentOfForce,
      without: 'Sin juzgar',
    },
    minimumCycles: {
      name: 'Ciclos',
      what: 'Cuántos ciclos necesita una calibración como mínimo.',
      unit: 'ciclos',
      value: counted('ciclo', 'ciclos'),
    },
    minimumLevels: {
      name: 'Niveles',
      what: 'Cuántos niveles distintos necesita una calibración como mínimo.',
      unit: 'niveles',
      value: counted('nivel', 'niveles'),
    },
    validCertificates: {
      name: 'Certificado de la celda de carga',
      what: 'Si la celda de carga necesita un certificado vigente el día de la calibración.',
      unit: '',
      value: yesNo,
    },
    activeLoading: {
      name: 'El gato empuja la celda de carga',
      what: 'Si el gato tiene que empujar la celda de carga. Donde una máquina empuja el gato, la fricción de los sellos actúa al revés.',
      unit: '',
      value: yesNo,
    },
    fallingUse: {
      name: 'Trabajo con presión en descenso',
      what: 'Si también se trabaja con lecturas en descenso, de modo que la reversibilidad pertenece a la incertidumbre.',
      unit: '',
      value: yesNo,
      without: 'No',
    },
    efficiencyLow: {
      name: 'Eficiencia de carga, mínima',
      what: 'Fuerza en la celda de carga entre lectura por área nominal del pistón; por debajo algo está mal.',
      ...ofPressureTimesArea,
    },
    efficiencyHigh: {
      name: 'Eficiencia de carga, máxima',
      what: 'Un gato no puede dar más que presión por área; por arriba hay un área, una unidad o un cero mal.',
      ...ofPressureTimesArea,
    },
    cellWindowLow: {
      name: 'Celda de carga, parte mínima de uso',
      what: 'Por debajo de esta parte de su capacidad no se usa una celda de carga.',
      unit: 'de su capacidad',
      value: percentOf('de su capacidad'),
    },
    driftPercent: {
      name: 'Deriva entre calibraciones',
      what: 'Desde qué cambio de fuerza en la misma lectura un par cuenta como con deriva.',
      ...percentOfForce,
    },
    dialWindowLow: {
      name: 'Carátula, trabajar desde',
      what: 'La parte más baja del manómetro en que trabajar.',
      ...ofFullScale,
    },
    dialWindowHigh: {
      name: 'Carátula, trabajar hasta',
      what: 'La parte más alta del manómetro en que trabajar.',
      ...ofFullScale,
    },
    readableStepPercent: {
      name: 'Paso del manómetro',
      what: 'Mayor paso que se puede leer en el manómetro en la lectura que fijar.',
      unit: '% de la lectura',
      value: percentOf('% de la lectura'),
    },
    ceilingOfBreaking: {
      name: 'Límite de esfuerzo, de la carga de ruptura',
      what: 'Ningún torón se esfuerza más en el gato; rige el menor de los dos límites.',
      unit: 'de la carga de ruptura',
      value: percentOf('de la carga de ruptura'),
    },
    ceilingOfYield: {
      name: 'Límite de esfuerzo, de la carga de fluencia',
      what: 'Ningún torón se esfuerza más en el gato; rige el menor de los dos límites.',
      unit: 'de la carga de fluencia',
      value: percentOf('de la carga de fluencia'),
    },
    preloadFraction: {
      name: 'Precarga',
      what: 'La fuerza que se jala primero, si no se pide otra.',
      unit: 'de la fuerza final',
      value: percentOf('de la fuerza final'),
    },
    eventRepair: effectOf(
      'Reparación',
      'Lo que le hace la reparación de una pieza a un par hasta que se calibra de nuevo.',
    ),
    eventSeals: effectOf('Sellos cambiados', 'Los sellos nuevos rozan distinto que los viejos.'),
    eventMemberSwapped: effectOf('Miembro cambiado', 'Otro gato, manómetro o bomba que el que se calibró.'),
    eventHose: effectOf('Manguera cambiada', 'Otra manguera, u otra longitud de ella.'),
    eventOverload: effectOf('Sobrecarga', 'Más fuerza o presión que para la que está hecho el par.'),
    eventDropped: effectOf('Caída', 'Un gato o manómetro que se cayó o recibió un golpe.'),
    eventPointer: effectOf('Aguja fuera de cero', 'La aguja no vuelve a cero.'),
    eventStrandBreak: effectOf('Ruptura de torón', 'Se rompió un torón mientras el par lo jalaba.'),
    preTensionedWindowPercent: {
      name: 'Manómetro contra alargamiento, pretensado',
      what: 'Cuánto pueden diferir la fuerza por el manómetro y la fuerza por el alargamiento antes de parar el trabajo.',
      ...percentOfForce,
      without: '5 %',
    },
    postTensionedWindowPercent: {
      name: 'Manómetro contra alargamiento, postensado',
      what: 'Lo mismo donde el torón se jala en ductos a través de concreto endurecido.',
      ...percentOfForce,
      without: '7 %',
    },
    chartsToSignal: {
      name: 'Gráficas de las mesas',
      what: 'Cuántas de las dos gráficas de sus mesas deben dar señal para que un par cuente como con deriva.',
      unit: 'gráficas',
      value: counted('gráfica', 'gráficas'),
      without: '2 gráficas',
    },
    snapshotCautionDays: {
      name: 'Dispositivo sin el servidor, precaución',
      what: 'Después de cuántos días sin el servidor un dispositivo da sus lecturas con una precaución.',
      ...days,
      without: '3 días',
    },
    snapshotStopDays: {
      name: 'Dispositivo sin el servidor, alto',
      what: 'Después de cuántos días sin el servidor un dispositivo no da lectura.',
      ...days,
      without: '14 días',
    },
  },
  known: {
    read: 'Leído en la fuente',
    'second-hand': 'De segunda mano, como lo reporta otra fuente',
    memory: 'De memoria, consúltelo',
    computed: 'Calculado',
    practice: 'Práctica común, sin fuente',
    house: 'Regla propia de este programa',
    plant: 'Fijado por esta planta',
  },
  effects,
  groups: {
    validity: 'Cuánto vale una calibración',
    acceptance: 'Qué debe mostrar una calibración',
    gauge: 'Trabajo con el manómetro',
    strand: 'Tensado de torón',
    device: 'Dispositivos sin el servidor',
    events: 'Lo que pasa entre calibraciones',
  },
  noSource: 'Este perfil no tiene tal límite.',
  basis: (provenance, text) =>
    ['read', 'memory', 'plant'].includes(provenance) ? `Fuente: ${text}` : `Por qué: ${text}`,
  change: 'Cambiar las reglas',
  signInToChange: 'Calidad y los administradores fijan las reglas, después de entrar.',
  signIn: 'Entrar',
  mayNotChange: 'Calidad y los administradores fijan las reglas.',
  editTitle: 'Cambiar las reglas',
  editLead:
    'Parta de un perfil y luego cambie límites sueltos. Cada cambio pregunta de dónde viene el límite nuevo. Nada rige antes de que usted lo ponga en vigor al final.',
  startFrom: 'Partir de',
  startInForce: (title) => `Las reglas vigentes: ${title}`,
  changeLimit: 'Cambiar',
  changeLimitOf: (name) => `Cambiar: ${name}`,
  leaveOut: 'Dejar fuera',
  leaveOutOf: (name) => `Dejar fuera: ${name}`,
  askForIt: 'Agregar',
  askForItOf: (name) => `Agregar: ${name}`,
  keep: 'Dejar como estaba',
  keepOf: (name) => `Dejar como estaba: ${name}`,
  newValue: (unit) => (unit === '' ? 'Valor nuevo' : `Valor nuevo, ${unit}`),
  yes: 'Sí',
  no: 'No',
  bounds: (least, most, isWhole) => `${whole(isWhole)} de ${least} a ${most}.`,
  newSource: 'De dónde viene',
  newSourceHint: 'Por ejemplo: especificación del proyecto 05 12 00, 3.4',
  leftOut: (without) => `Dejado fuera. ${without}.`,
  valueMissing: (least, most) => `Dé un número de ${least} a ${most}.`,
  valueBad: (typed) => `"${typed}" no es un número; escríbalo con punto decimal y sin comas.`,
  valueOutside: (typed, least, most, isWhole) =>
    isWhole
      ? `${typed} no es un número entero de ${least} a ${most}.`
      : `${typed} no es un número de ${least} a ${most}.`,
  sourceNeeded: 'Diga de dónde viene este límite, en tres caracteres o más.',
  ownTitle: 'Título de estas reglas',
  ownTitleHint: 'Reglas con límites propios necesitan un título propio.',
  titleToCome: 'Se da abajo',
  titleNeeded: 'Dé a las reglas un título de tres caracteres o más.',
  reason: 'Razón del cambio',
  reasonNeeded: 'Dé una razón de al menos cinco caracteres.',
  summaryTitle: 'Qué cambia',
  titleRow: 'Título',
  was: 'Vigente',
  becomes: 'Nuevo',
  nothingChanges: 'Nada todavía: estas son las reglas vigentes.',
  nothingToSave: 'No hay nada que poner en vigor: cambie un límite o parta de otro perfil.',
  waiting: (count) =>
    count === 1
      ? 'Una calibración espera una decisión. Quien la tenga abierta debe leerla de nuevo bajo las reglas nuevas antes de decidir.'
      : `${count} calibraciones esperan una decisión. Quien tenga una abierta debe leerla de nuevo bajo las reglas nuevas antes de decidir.`,
  whatFollows:
    'Vencimientos, estados, veredictos y advertencias de cada par siguen las reglas nuevas de inmediato. Lo aprobado queda aprobado.',
  save: 'Poner en vigor estas reglas',
  saving: 'Escribiéndolo en la bitácora ...',
  throwAway: 'Desechar estos cambios',
  throwAwayAsk: 'Lo escrito aquí se pierde entonces; las reglas vigentes quedan como están.',
  throwAwayNow: 'Desecharlos',
  keepTyping: 'Conservarlos',
  mendFirst: (count) =>
    count === 1
      ? 'Un campo de arriba necesita corregirse primero.'
      : `${count} campos de arriba necesitan corregirse primero.`,
  changedMeanwhile:
    'Alguien más cambió las reglas entre tanto. Léalas de nuevo: sus cambios quedan aquí, y el resumen los compara entonces con las reglas vigentes ahora.',
  readAgain: 'Leer las reglas de nuevo',
  saved: (entry, title) => `Asiento ${entry} de la bitácora: "${title}" está en vigor.`,
  savedWaiting: (count) =>
    count === 1
      ? 'Una calibración en espera se debe leer de nuevo.'
      : `${count} calibraciones en espera se deben leer de nuevo.`,
  toReview: 'A la revisión',
  toLedger: 'A la bitácora',
  hash: 'Hash',
};
