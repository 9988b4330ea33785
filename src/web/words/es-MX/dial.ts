// Textos de la carátula del manómetro: lo que muestra, en una frase y en su leyenda.

import type { Catalogue } from '../catalogue.ts';
import type { dial as english } from '../en-US/dial.ts';

export const dial: Catalogue<typeof english> = {
  sentence: (parts) => `${parts.join('; ')}.`,
  face: (gauge, fullScale, graduation) =>
    `Carátula del manómetro ${gauge}, de 0 a ${fullScale}, una división ${graduation}`,
  faceUnnamed: (fullScale, graduation) => `Carátula del manómetro, de 0 a ${fullScale}, una división ${graduation}`,
  calibrated: (low, high) => `calibrado de ${low} a ${high}`,
  notCalibrated: 'sin calibrar',
  mark: (name, reading) => `${name} ${reading}`,
  noMarks: 'sin marca que fijar',
  gaugeTag: (tag) => `Manómetro ${tag}`,
  legend: 'Marcas en la carátula',
  markColumn: 'Marca',
  readingColumn: 'Lectura',
  set: 'Fijar en',
  preload: 'Precarga',
  limit: 'Nunca más de',
  range: 'Calibrado',
  rangeText: (low, high) => `${low} a ${high}`,
};
