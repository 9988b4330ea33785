// Las frases que el dominio y el servidor escriben en inglés, en español de México: cada plantilla inglesa con la suya, con los
// mismos huecos. Las frases propias de las páginas están en los demás archivos de esta carpeta.

import type { SentenceTemplates } from '../sentence.ts';
import { problemsInSpanish } from './sentences-of-problems.ts';

export const sentences: SentenceTemplates = {
  templates: [
    // Estados de un par.
    ['Parted on {day}: {reason}', 'Separado el {day}: {reason}'],
    [
      'No approved calibration of this jack with this gauge.',
      'Sin calibración aprobada de este gato con este manómetro.',
    ],
    ['On hold: {reason}', 'En espera: {reason}'],
    ['Calibration was valid until {due}, {days:s} ago.', 'La calibración estuvo vigente hasta {due}, hace {days:s}.'],
    [
      'The same reading gives {change} % {direction:s} force than at the calibration before.',
      'La misma lectura da {change} % {direction:s} fuerza que en la calibración anterior.',
    ],
    ['Calibration ends on {due}, in {days:s}.', 'La calibración termina el {due}, en {days:s}.'],
    ['Calibration valid until {due}.', 'Calibración vigente hasta {due}.'],
    [
      'Since {day} the gauge shows {direction:s} force against the elongation than after the calibration ({figures:s}).',
      'Desde {day} el manómetro muestra {direction:s} fuerza contra el alargamiento que después de la calibración ({figures:s}).',
    ],
    ['{first:s}; {second:s}', '{first:s}; {second:s}'],
    ['EWMA {value}, limit {limit}', 'EWMA {value}, límite {limit}'],
    ['CUSUM {value}, limit {limit}', 'CUSUM {value}, límite {limit}'],
    [
      'The check of {day} found the curve {percent} % {than:s} than the load cell at {reading}, beyond {limit} %.',
      'La revisión del {day} halló la curva {percent} % {than:s} que la celda de carga en {reading}, más allá de {limit} %.',
    ],
    ['1 day', '1 día'],
    ['{count} days', '{count} días'],
    ['more', 'más'],
    ['less', 'menos'],

    // Advertencias de una consulta.
    [
      'As of {on}, not of today, {today}: do not set a gauge by it.',
      'Al {on}, no de hoy, {today}: no fije un manómetro con ella.',
    ],
    [
      '{asked} lies outside the calibrated range of {range:s}; nothing is extrapolated.',
      '{asked} queda fuera del intervalo calibrado de {range:s}; nada se extrapola.',
    ],
    ['{low} to {high}', '{low} a {high}'],
    [
      'Jack and gauge were parted; the curve is void. {because:s}',
      'Gato y manómetro se separaron; la curva queda anulada. {because:s}',
    ],
    [
      'This jack has no approved calibration with this gauge. Calibrate the pair first.',
      'Este gato no tiene calibración aprobada con este manómetro. Calibre primero el par.',
    ],
    ['The pair is on hold.', 'El par está en espera.'],
    ['The calibration was valid until {day}.', 'La calibración estuvo vigente hasta {day}.'],
    ['The last two calibrations disagree.', 'Las dos últimas calibraciones no concuerdan.'],
    ['The last two calibrations disagree. {evidence:s}', 'Las dos últimas calibraciones no concuerdan. {evidence:s}'],
    ['The calibration ends on {day}.', 'La calibración termina el {day}.'],
    ["{asked} is above the jack's rating of {rated}.", '{asked} está por arriba de la capacidad del gato, {rated}.'],
    [
      'No strand is named, so its stress ceiling is not checked.',
      'No se nombró ningún torón, así que no se revisa su límite de esfuerzo.',
    ],
    [
      '{asked} is above the stress ceiling of the strand, {ceiling}.',
      '{asked} está por arriba del límite de esfuerzo del torón, {ceiling}.',
    ],
    [
      'The target lies at the end of the calibrated range.',
      'La fuerza pedida está al extremo del intervalo calibrado.',
    ],
    [
      "The reading of {needed} is above the gauge's full scale of {span}.",
      'La lectura de {needed} está por arriba de la escala completa del manómetro, {span}.',
    ],
    [
      'The reading is at {share} of full scale; work between {window:s} ({source}).',
      'La lectura está al {share} de la escala completa; trabaje entre {window:s} ({source}).',
    ],
    ['{low} and {high}', '{low} y {high}'],
    [
      'The smallest step that can be read, {smallest}, is {percent} of the reading, so a setting may miss by half of that; the step should be at most {most} % ({source}).',
      'El menor paso que se puede leer, {smallest}, es {percent} de la lectura, así que un ajuste puede fallar por la mitad; el paso debería ser de {most} % como máximo ({source}).',
    ],
    [
      'By its {name} ({standard}) the gauge may be {error} off here, {percent} of the reading; the accuracy limit is {limit} %. {rest}',
      'Por su {name} ({standard}) el manómetro puede estar aquí {error} fuera, {percent} de la lectura; el límite de exactitud es {limit} %. ({rest})',
    ],
    ['No reading for the preload of {preload}: {why:s}', 'Sin lectura para la precarga de {preload}: {why:s}'],
    [
      'The gauge is not known, so the {asked} at work are not in the uncertainty.',
      'No se conoce el manómetro, así que los {asked} del trabajo no están en la incertidumbre.',
    ],
    [
      'What temperature does to a digital gauge is for its maker to say, so the {asked} at work are not in the uncertainty.',
      'Lo que la temperatura le hace a un manómetro digital lo dice su fabricante, así que los {asked} del trabajo no están en la incertidumbre.',
    ],
    [
      'The calibration gives no temperature to compare with, so the {asked} at work are not in the uncertainty.',
      'La calibración no da temperatura con que comparar, así que los {asked} del trabajo no están en la incertidumbre.',
    ],
    [
      'By the clock of this machine today is {today}, but the ledger has an entry of {newest}; set the clock right (where it is right: jackledger set-clock-right).',
      'Según el reloj de esta máquina hoy es {today}, pero la bitácora tiene un asiento del {newest}; ponga el reloj en hora (si está en hora: jackledger set-clock-right).',
    ],
    [
      '{what} was corrected in entry {seq} after {number} was approved; quality looks at {again} again.',
      '{what} se corrigió en el asiento {seq} después de aprobarse {number}; calidad mira {again} de nuevo.',
    ],
    [
      'The profile wants a calibration at most {limit} days before first use; this one is of {calibrated}, {days} days before, and no day of first use is recorded.',
      'El perfil pide una calibración de no más de {limit} días antes del primer uso; esta es del {calibrated}, {days} días antes, y no hay día de primer uso registrado.',
    ],
    ['Released by {name}.', 'Liberada por {name}.'],
    [
      'The clock of this device shows no time; set it right and connect to the server.',
      'El reloj de este dispositivo no muestra hora; póngalo en hora y conéctese al servidor.',
    ],
    [
      'This device shows {now} UTC and has shown {seen} UTC before. {what:s}',
      'Este dispositivo muestra {now} UTC y antes mostró {seen} UTC. {what:s}',
    ],
    [
      'Set the clock of this device right; until then due days cannot be judged here.',
      'Ponga en hora este dispositivo; hasta entonces aquí no se pueden juzgar vencimientos.',
    ],
    [
      "This device showed {heard} UTC when the server's clock showed {said} UTC. {what:s}",
      'Este dispositivo mostraba {heard} UTC cuando el reloj del servidor mostraba {said} UTC. {what:s}',
    ],
    [
      'The run sheet of {number} gives another curve than the one {who} approved; enter and approve it again.',
      'La hoja de {number} da otra curva que la que aprobó {who}; captúrela y apruébela de nuevo.',
    ],
    [
      'This device last heard from the server {days:s} ago, more than {most} days; what happened since is not known here.',
      'Este dispositivo supo del servidor por última vez hace {days:s}, más de {most} días; aquí no se sabe lo que pasó desde entonces.',
    ],
    [
      'This device last heard from the server {days:s} ago; a hold placed since is not known here.',
      'Este dispositivo supo del servidor por última vez hace {days:s}; aquí no se sabe de una espera puesta desde entonces.',
    ],
    [
      "Every force of the table is above the jack's rating of {rated}.",
      'Cada fuerza de la tabla está por arriba de la capacidad del gato, {rated}.',
    ],
    [
      "Every reading of the table is above the gauge's full scale of {span}.",
      'Cada lectura de la tabla está por arriba de la escala completa del manómetro, {span}.',
    ],

    // Lo que le pasó a un par, y lo que le hace.
    ['{what:s} on {day} ({note}); {follows:s}.', '{what:s} el {day} ({note}); {follows:s}.'],
    ['{what:s} on {day}; {follows:s}.', '{what:s} el {day}; {follows:s}.'],
    ['A part was dropped', 'Una pieza se cayó'],
    ['A part was repaired', 'Se reparó una pieza'],
    ['Seals were replaced', 'Se cambiaron sellos'],
    ['The hose was changed', 'Se cambió la manguera'],
    ['The pair was overloaded', 'El par se sobrecargó'],
    ['The pointer does not return to zero', 'La aguja no vuelve a cero'],
    ['A strand broke', 'Se rompió un torón'],
    ['A member of the pair was swapped', 'Se cambió un miembro del par'],
    [
      'the curve is void until the pair is calibrated again',
      'la curva queda anulada hasta que el par se calibre de nuevo',
    ],
    ['quality settles it, or the pair is calibrated again', 'calidad lo resuelve, o el par se calibra de nuevo'],
    ['heed it until the next calibration', 'atiéndalo hasta la próxima calibración'],

    // Dudas.
    [
      'Certificate {number} of load cell {cell} was withdrawn: {reason}. {lastGood:s}',
      'El certificado {number} de la celda de carga {cell} se retiró: {reason}. {lastGood:s}',
    ],
    [
      'Certificate {number} ({issuer}), which certificate {above} of load cell {cell} rests on, was withdrawn: {reason}. {lastGood:s}',
      'El certificado {number} ({issuer}), en el que se apoya el certificado {above} de la celda de carga {cell}, se retiró: {reason}. {lastGood:s}',
    ],
    ['When it was last good is not known.', 'No se sabe cuándo fue bueno por última vez.'],
    ['It was last known to be good on {day}.', 'Se supo que fue bueno por última vez el {day}.'],
    [
      'No certificate of load cell {cell} covers the calibration day, {day}.',
      'Ningún certificado de la celda de carga {cell} cubre el día de la calibración, {day}.',
    ],
    [
      'Load cell {cell} was found {error} % off on {day} (certificate {number}), beyond its limit of {limit} %.',
      'La celda de carga {cell} se halló {error} % fuera el {day} (certificado {number}), más allá de su límite de {limit} %.',
    ],
    ['Run {number} of {day}. {result:s}', 'Corrida {number} del {day}. {result:s}'],
    [
      'As found, the curve in use gave {error} % {than:s} force than the load cell at {reading} (U {u} %), {side:s} the limit of {limit} %.',
      'Como se halló, la curva en uso daba {error} % {than:s} fuerza que la celda de carga en {reading} (U {u} %), {side:s} del límite de {limit} %.',
    ],
    ['outside', 'fuera'],
    ['within', 'dentro'],
  ],
  problems: problemsInSpanish,
};
