// Texts of the gauge face: what it shows, in one sentence and in its legend.

export const dial = {
  sentence: (parts: readonly string[]) => `${parts.join('; ')}.`,
  face: (gauge: string, fullScale: string, graduation: string) =>
    `Face of gauge ${gauge}, 0 to ${fullScale}, one graduation ${graduation}`,
  faceUnnamed: (fullScale: string, graduation: string) =>
    `Face of the gauge, 0 to ${fullScale}, one graduation ${graduation}`,
  calibrated: (low: string, high: string) => `calibrated from ${low} to ${high}`,
  notCalibrated: 'not calibrated',
  mark: (name: string, reading: string) => `${name} ${reading}`,
  noMarks: 'no mark to set',
  gaugeTag: (tag: string) => `Gauge ${tag}`,
  legend: 'Marks on the face',
  markColumn: 'Mark',
  readingColumn: 'Reading',
  set: 'Set to',
  preload: 'Preload',
  limit: 'Never above',
  range: 'Calibrated',
  rangeText: (low: string, high: string) => `${low} to ${high}`,
} as const;
