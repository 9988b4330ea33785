// Why gauge and elongation disagree: the closed list a crew chooses from before it goes on.

/** Each code with the one line that says what it means; pages have their own words. Common practice, no source. */
export const disagreementReasons = {
  'gauge-off': 'The gauge is damaged or its pointer does not stand at zero.',
  'curve-drifted': 'The curve of the pair has drifted.',
  'wrong-pair': 'The jack was used with another gauge than the reading is for.',
  'wrong-area-or-modulus': 'The area or modulus is not that of the reel.',
  'wrong-length': 'The length is not the one from chuck to chuck.',
  slip: 'The strand slipped at a chuck or splice.',
  'abutment-moved': 'An abutment moved.',
  'deflector-friction': 'A deflector held the strand by friction.',
  'strand-count': 'Another number of strands was pulled.',
  temperature: 'The strand was warmer or colder than reckoned with.',
  'tape-misread': 'The tape was misread.',
} as const;

export type DisagreementReason = keyof typeof disagreementReasons;

export const disagreementReasonCodes = Object.keys(disagreementReasons) as readonly DisagreementReason[];
