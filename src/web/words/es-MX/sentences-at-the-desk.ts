// Las frases del dominio que se leen en un escritorio: aceptación y revisiones de captura. Las de la cuadrilla están en sentences.ts.

import type { SentencePair } from '../sentence.ts';

export const sentencesAtTheDesk: readonly SentencePair[] = [
  // Aceptación.
  [
    'Largest deviation of a level from the curve: {size} of force at {level}, U {u}; the limit is {limit} %.',
    'Mayor desviación de un nivel respecto de la curva: {size} de la fuerza en {level}, U {u}; el límite es {limit} %.',
  ],
  [
    'Largest deviation of a level from the curve: {size} of force at {level}, U {u}; the limit is {limit} %, to pass outright {guarded}.',
    'Mayor desviación de un nivel respecto de la curva: {size} de la fuerza en {level}, U {u}; el límite es {limit} %, para cumplir sin condición {guarded}.',
  ],
  [
    'Largest deviation of a level from the curve: {size} of force at {level}, U {u}; the limit is {limit} %; it cannot be passed outright, since the uncertainty alone is as large.',
    'Mayor desviación de un nivel respecto de la curva: {size} de la fuerza en {level}, U {u}; el límite es {limit} %; no se puede cumplir sin condición, pues la sola incertidumbre es igual de grande.',
  ],
  [
    '{what:s}: {size} of force at {level}; the limit is {limit} %.',
    '{what:s}: {size} de la fuerza en {level}; el límite es {limit} %.',
  ],
  ['Largest spread of the cycles at one level', 'Mayor dispersión de los ciclos en un nivel'],
  ['Largest difference between falling and rising series', 'Mayor diferencia entre series en descenso y en ascenso'],
  ['Largest step of the gauge', 'Mayor paso del manómetro'],
  ['There is no level to judge.', 'No hay ningún nivel que juzgar.'],
  ['The sheet has no point at zero force.', 'La hoja no tiene ningún punto con fuerza cero.'],
  [
    'Largest reading at zero force: {size} of the calibrated maximum, in cycle {cycle}; the limit is {limit} %.',
    'Mayor lectura con fuerza cero: {size} del máximo calibrado, en el ciclo {cycle}; el límite es {limit} %.',
  ],
  [
    'The rules ask for a calibration at most {limit} days before first use; the day of first use is not given.',
    'Las reglas piden una calibración de no más de {limit} días antes del primer uso; no se da el día del primer uso.',
  ],
  [
    'First use on {first} lies before the calibration on {day}.',
    'El primer uso el {first} es anterior a la calibración del {day}.',
  ],
  [
    'Calibrated {days} days before first use on {first}; at most {limit} are allowed.',
    'Calibrado {days} días antes del primer uso el {first}; se permiten {limit} como máximo.',
  ],
  [
    'The sheet has {count} {what:s}; at least {limit} are needed.',
    'La hoja tiene {count} {what:s}; hacen falta al menos {limit}.',
  ],
  ['cycles', 'ciclos'],
  ['levels', 'niveles'],
  ['cycle', 'ciclo'],
  ['level', 'nivel'],
  [
    'No load cell and day of the plant are known for the sheet, so its certificate is not judged.',
    'No se conocen la celda de carga ni el día de la hoja, así que no se juzga su certificado.',
  ],
  [
    'The load cell had no certificate valid on the calibration day.',
    'La celda de carga no tenía certificado vigente el día de la calibración.',
  ],
  [
    'Certificate {number} of load cell {cell} was valid on the calibration day, until {until}.',
    'El certificado {number} de la celda de carga {cell} estaba vigente el día de la calibración, hasta {until}.',
  ],
  ['The sheet does not say what pushed what.', 'La hoja no dice qué empujó qué.'],
  ['The jack pushed the load cell.', 'El gato empujó la celda de carga.'],
  [
    'A machine pushed the jack: seal friction acts the other way, so this is not a stressing curve.',
    'Una máquina empujó el gato: la fricción de los sellos actúa al revés, así que esta no es una curva de tensado.',
  ],
  [
    "The jack's nominal piston area is not known, so the load efficiency is not judged.",
    'No se conoce el área nominal del pistón del gato, así que no se juzga la eficiencia de carga.',
  ],
  ['No level has a load efficiency to judge.', 'Ningún nivel tiene una eficiencia de carga que juzgar.'],
  [
    'Load efficiency {value} at {level}; {low} to {high} is expected.',
    'Eficiencia de carga {value} en {level}; se espera de {low} a {high}.',
  ],
  [
    'Load efficiency {value} at {level}; {low} to {high} is expected. Check the nominal area, the units, the zero of the gauge and how the jack was loaded.',
    'Eficiencia de carga {value} en {level}; se espera de {low} a {high}. Revise el área nominal, las unidades, el cero del manómetro y cómo se cargó el gato.',
  ],

  // Revisiones de captura.
  ['Cycle {cycle}, row {row}', 'Ciclo {cycle}, fila {row}'],
  [
    'There are {count} rising points above zero force; a curve needs at least {least}.',
    'Hay {count} puntos en ascenso con fuerza mayor que cero; una curva necesita al menos {least}.',
  ],
  [
    'A curve needs at least {least} rising points above zero force; there are {count}.',
    'Una curva necesita al menos {least} puntos en ascenso con fuerza mayor que cero; hay {count}.',
  ],
  [
    'The curve of degree {degree} does not rise strictly over its range; a reading would mean two forces.',
    'La curva de grado {degree} no sube en todo su intervalo; una lectura significaría dos fuerzas.',
  ],
  [
    'The calibration day {day} lies after today, {today}.',
    'El día de la calibración {day} es posterior a hoy, {today}.',
  ],
  [
    'A machine pushed the jack. That reverses the friction of the seals; the curve does not hold for stressing, where the jack pushes.',
    'Una máquina empujó el gato. Eso invierte la fricción de los sellos; la curva no vale para tensar, donde empuja el gato.',
  ],
  ['{cell} has no certificate that is valid on {day}.', '{cell} no tiene certificado vigente el {day}.'],
  [
    'Certificate {number} of the load cell is valid from {from} to {until}, not on {day}.',
    'El certificado {number} de la celda de carga está vigente de {from} a {until}, no el {day}.',
  ],
  [
    '{place:s}: the load cell shows {shows} at zero reading; 0 would fit, and the point is left out of the curve.',
    '{place:s}: la celda de carga muestra {shows} con lectura cero; cabría 0, y el punto queda fuera de la curva.',
  ],
  [
    '{place:s}: the gauge shows {shows} at zero force; at most {most} would fit.',
    '{place:s}: el manómetro muestra {shows} con fuerza cero; cabría {most} como máximo.',
  ],
  [
    'Cycle {cycle}: every {field:s} would fit the other cycles if it were in {unit}.',
    'Ciclo {cycle}: cada {field:s} cabría con los otros ciclos si estuviera en {unit}.',
  ],
  ['force', 'fuerza'],
  ['reading', 'lectura'],
  [
    '{place:s}: {force} with {reading} does not fit the other points.',
    '{place:s}: {force} con {reading} no cabe con los otros puntos.',
  ],
  [
    '{place:s}: {force} with {reading} does not fit the other points; {fits} would fit.',
    '{place:s}: {force} con {reading} no cabe con los otros puntos; cabría {fits}.',
  ],
];
