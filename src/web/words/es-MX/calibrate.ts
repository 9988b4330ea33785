// Textos de la página donde un técnico captura una calibración. Español de México.

import type { Catalogue } from '../catalogue.ts';
import type { calibrate as english } from '../en-US/calibrate.ts';

const quantity = { force: 'fuerza', reading: 'lectura' } as const;
const capital = { force: 'Fuerza', reading: 'Lectura' } as const;

const whatIsWrong: Readonly<Record<string, (given: string) => string>> = {
  'ambiguous-number': (given) => `"${given}" se puede leer de dos maneras; escríbalo con punto decimal y sin comas`,
  'number-out-of-range': (given) => `"${given}" es menor que cero o demasiado grande; escriba un número de cero o más`,
};

export const calibrate: Catalogue<typeof english> = {
  title: 'Calibrar',
  intro: 'Una hoja: un par, un día, una celda de carga.',

  drafts: 'Borradores en este dispositivo',
  noDrafts: 'Ningún borrador espera en este dispositivo.',
  draftsFailed:
    'Este navegador no guarda borradores: lo que escriba se pierde al cerrar la página. Salga de la navegación privada o use otro navegador.',
  draftTitle: (pair, day) => `${pair || 'Aún sin par'}, ${day || 'aún sin día'}`,
  draftChanged: (when) => `último cambio ${when}`,
  draftPoints: (points) => (points === 1 ? '1 celda escrita' : `${points} celdas escritas`),
  copyFromWindow: 'Copia de otra ventana',
  roleCannotSubmit: (role) =>
    `Su función, ${role}, no puede enviar una calibración. Lo que escriba aquí queda en este dispositivo hasta que un técnico o el gerente de calidad entre en él y la envíe.`,
  continueDraft: 'Continuar',
  throwAway: 'Desechar',
  throwAwayAsk: '¿Desechar este borrador?',
  throwAwayWhat: (title) => `${title}: todo lo escrito en él se pierde para siempre.`,
  keepIt: 'Conservarlo',
  start: 'Empezar una hoja',
  startFor: (pair) => `Empezar una hoja para ${pair}`,
  titleOf: (pair) => (pair === '' ? 'Calibrar' : `Calibrar ${pair}`),
  allDrafts: 'Todos los borradores',
  keeping: {
    kept: 'El borrador está guardado en este dispositivo.',
    refused: 'Sin guardar: este navegador se niega a guardar borradores. Envíe antes de cerrar la página.',
    'changed-elsewhere':
      'Este borrador se cambió en otra ventana. Lo que se escriba aquí sigue como un borrador aparte, guardado en este dispositivo.',
  },
  draftGone: 'No hay tal borrador en este dispositivo. Puede haberse enviado o desechado.',
  loading: 'Cargando ...',

  aboutTitle: 'Qué se calibró',
  pair: 'Par',
  choosePair: 'Elegir el par',
  noPairs: 'Aún no hay ningún par registrado. Registre primero el gato y el manómetro en Equipo.',
  pairParted: (tag) => `${tag} está separado; no se puede calibrar de nuevo.`,
  jack: 'Gato',
  gauge: 'Manómetro',
  ofJack: (rated, area) => `capacidad ${rated}, pistón ${area}`,
  ofGauge: (full, graduation) => `hasta ${full}, división ${graduation}`,
  day: 'Día de la calibración',
  dayInFuture: (today) => `El día de la calibración es posterior a hoy, ${today}.`,
  dayInvalid: 'Escriba un día que exista, como AAAA-MM-DD.',
  loadCell: 'Celda de carga',
  chooseLoadCell: 'Elegir la celda de carga',
  certificateValid: (number, laboratory, until) => `Certificado ${number} de ${laboratory}, vigente hasta ${until}.`,
  noCertificate: (cell) => `${cell} no tiene certificado. Archive uno en Equipo.`,
  certificateEnded: (cell, until, day) => `El último certificado de ${cell} terminó el ${until}; no cubre el ${day}.`,
  certificateLater: (cell, from, day) => `El certificado de ${cell} empieza el ${from}; no cubre el ${day}.`,
  certificateNeedsDay: 'Dé el día de la calibración para ver si el certificado lo cubre.',
  firstUse: 'Día del primer uso',
  firstUseAsked: (days) =>
    `Las reglas piden una calibración de no más de ${days} días antes de usarse por primera vez en el proyecto.`,
  set: 'Qué se fijó',
  setForce: 'La fuerza en la celda de carga; se leyó el manómetro',
  setReading: 'La lectura del manómetro; se leyó la fuerza',
  forceUnit: 'Unidad de fuerza',
  readingUnit: 'Unidad de lectura',
  unitNote: 'Cambiar una unidad cambia solo la unidad: los números quedan como se escribieron.',
  loadingTitle: 'Cómo se cargó',
  loadingActive: 'El gato empujó la celda de carga',
  loadingPassive: 'Una máquina empujó el gato',
  conditionTitle: 'Cuándo se corrió',
  conditions: {
    notSaid: 'Sin decir',
    'as-found': 'Como se halló, antes de ajustar o reparar nada: dice cómo estaba el par, no da curva nueva',
    'as-left': 'Como se dejó, después',
    unchanged: 'Como se halló y se dejó, nada se ajustó',
  },
  note: 'Nota',
  temperature: 'Temperatura, °C',
  temperatureBad: (given) => `"${given}" no es una temperatura entre -60 y 80.`,

  pointsTitle: 'Puntos',
  keys: 'Flechas, Enter y Tab mueven; escribir reemplaza, F2 edita; Mayús con flechas marca un bloque; Ctrl+C, Ctrl+V, Ctrl+Z funcionan como en una hoja de cálculo.',
  skipTable: 'Saltar la tabla',
  cycles: 'Ciclos',
  levels: 'Niveles',
  fewer: (what) => `Menos ${what.toLowerCase()}`,
  more: (what) => `Más ${what.toLowerCase()}`,
  minus: '−',
  plus: '+',
  cycle: (cycle) => `Ciclo ${cycle + 1}`,
  showFalling: (cycle) => `Puntos en descenso en el ciclo ${cycle + 1}`,
  falling: 'Descenso',
  ownLevels: (cycle) => `Valores fijados propios en el ciclo ${cycle + 1}`,
  own: 'Valores fijados propios',
  ramOut: 'Pistón afuera',
  ramOutOf: (cycle) => `Extensión del pistón en el ciclo ${cycle + 1}`,
  ramOutBad: (cycle, given) =>
    `Ciclo ${cycle + 1}, pistón afuera: "${given}" no es una longitud con su unidad, por ejemplo 75 mm`,
  rowColumn: 'Fila',
  setHeader: (set, unit) => `${capital[set]} fijada, ${unit}`,
  ownHeader: (unit) => `Fijado, ${unit}`,
  risingHeader: (observed, unit) => `${capital[observed]} en ascenso, ${unit}`,
  fallingHeader: (observed, unit) => `${capital[observed]} en descenso, ${unit}`,
  zeroRow: 'cero',
  tableName: 'Puntos de la hoja',
  cellOfLevel: (row, set) => `Fila ${row + 1}, ${quantity[set]} fijada`,
  cellOfOwnLevel: (cycle, row, set, falling) =>
    `Ciclo ${cycle + 1}, fila ${row + 1}, ${quantity[set]} fijada propia${falling ? ', descenso' : ''}`,
  cellObserved: (cycle, row, observed, falling) =>
    `Ciclo ${cycle + 1}, fila ${row + 1}, ${quantity[observed]}${falling ? ', descenso' : ''}`,
  bad: (place, code, given, set) => {
    if (code === 'level-missing')
      return `${place} está en blanco, pero ahí se observó algo; escriba la ${quantity[set]} fijada`;
    const words = whatIsWrong[code] ?? ((text: string) => `"${text}" no es un número; escríbalo como 1234.5`);
    return `${place}: ${words(given)}`;
  },
  badTitle: (count) => (count === 1 ? '1 celda no se puede leer' : `${count} celdas no se pueden leer`),
  badNote: 'Quedan como se escribieron y fuera de la curva hasta que se corrijan.',
  pasted: (rows, columns) =>
    `Se pegaron ${rows} ${rows === 1 ? 'fila' : 'filas'} por ${columns} ${columns === 1 ? 'columna' : 'columnas'}. Ctrl+Z lo deshace.`,
  pastedGrown: (levels, cycles) => {
    const parts = [
      ...(levels > 0 ? [levels === 1 ? '1 nivel' : `${levels} niveles`] : []),
      ...(cycles > 0 ? [cycles === 1 ? '1 ciclo' : `${cycles} ciclos`] : []),
    ];
    return parts.length === 0 ? '' : ` Se agregaron ${parts.join(' y ')}.`;
  },
  pastedLeftOut: (cells) => (cells === 0 ? '' : ` ${cells} celdas no cupieron y quedaron fuera.`),
  cycleRemoved: (cycle, readings) =>
    `Ciclo ${cycle + 1} con ${readings} ${readings === 1 ? 'lectura' : 'lecturas'} quitado. Ctrl+Z lo trae de vuelta.`,
  rowRemoved: (row, cells) =>
    `Fila ${row + 1} con ${cells} ${cells === 1 ? 'celda escrita' : 'celdas escritas'} quitada. Ctrl+Z la trae de vuelta.`,
  undo: 'Deshacer',
  redo: 'Rehacer',

  importTitle: 'Importar un archivo',
  importIntro:
    'CSV o JSON, como los lee la línea de comandos. La tabla de abajo se reemplaza; Ctrl+Z la trae de vuelta.',
  importFile: 'Elegir un archivo',
  importPaste: 'O pegar su texto',
  importRead: 'Leer el texto',
  imported: (cycles, points) => `Se importaron ${cycles} ${cycles === 1 ? 'ciclo' : 'ciclos'} con ${points} puntos.`,
  importFailed: (message) => `Nada se importó. ${message}`,
  importWhere: (where) => `${where[0]?.toUpperCase() ?? ''}${where.slice(1)}:`,
  importNeeded: (needed) => `Se necesita: ${needed}.`,
  importGiven: (given) => `Se dio: ${given}`,
  importGivenBlank: 'Se dio: nada',
  importTooLarge: 'El archivo es más grande que cualquier hoja y no se leyó.',
  importUnreadable: 'No se pudo leer el archivo del disco.',

  resultTitle: 'Veredicto',
  notYet: 'Aún sin curva',
  goThere: 'Ir a la celda',
  putThere: (value) => `Poner ahí ${value}`,
  putInstead: (value) => `O ${value}`,
  repaired: (place, before, value) => `${place}: ${value} en lugar de ${before}. Ctrl+Z lo deshace.`,
  pending: (count) => (count === 1 ? '1 celda queda fuera' : `${count} celdas quedan fuera`),
  degree: 'Grado de la curva',
  degreeAuto: (degree) => (degree === null ? 'Automático' : `Automático: ${degree}`),
  degreeReason: 'Por qué este grado',
  degreeReasonNeeded: 'Un grado elegido a mano necesita una razón de al menos cinco caracteres.',
  degreeScatter: (scatter) => `dispersión ${scatter}`,
  degreeFalls: 'no sube en todo el intervalo',
  degreeMissing: 'muy pocos niveles',

  submitTitle: 'Enviar para aprobación',
  submit: 'Enviar',
  submitting: 'Enviando ...',
  signInToSubmit: 'Entre para enviar. El borrador queda en este dispositivo.',
  signIn: 'Entrar',
  mayNot: 'Solo un técnico o el gerente de calidad envía una calibración. El borrador queda en este dispositivo.',
  toMend: 'Antes de poder enviarla:',
  mendPair: 'Elija el par.',
  mendDay: 'Dé el día de la calibración.',
  mendFirstUse: 'Dé un día de primer uso que exista, o déjelo en blanco.',
  mendCell: 'Elija la celda de carga.',
  mendCells: 'Corrija o vacíe las celdas que no se pueden leer.',
  mendCurve: 'Capture puntos por los que pueda pasar una curva.',
  serverAway:
    'El servidor no responde. El borrador queda en este dispositivo; envíe de nuevo cuando vuelva. Se tomará una sola vez.',
  keyReused:
    'Un envío anterior de este borrador ya llegó, y el borrador se cambió desde entonces. Mire las calibraciones del par antes de enviar la hoja cambiada como una calibración más.',
  submitAnew: 'Enviar la hoja cambiada como una más',
  submitted: (number) => `La calibración ${number} está enviada`,
  submittedNext: 'Espera la aprobación de alguien más. El borrador ya no está en este dispositivo.',
  openReview: 'Abrirla',
  startNext: 'Empezar la siguiente hoja',
};
