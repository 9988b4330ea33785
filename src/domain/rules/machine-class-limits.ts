// The limits of the classes of ISO 7500-1. Which class a level holds is in calibration/machine-class.ts.

/** Classes of a testing machine, the strictest first. */
export const machineClasses = ['0.5', '1', '2', '3'] as const;
export type MachineClass = (typeof machineClasses)[number];

/** What a class is judged by: q, b, v, f0 and a. */
export const machineClassFigures = ['accuracy', 'repeatability', 'reversibility', 'zero', 'resolution'] as const;
export type MachineClassFigure = (typeof machineClassFigures)[number];

/**
 * Largest q, b, v, f0 and a of each class, in %.
 * Source: ISO 7500-1:2018 Table 2 (from memory); column a agrees with the lower limits of a range, 400, 200, 100 and 67
 * times the resolution.
 */
export const machineClassLimits: Readonly<Record<MachineClass, Readonly<Record<MachineClassFigure, number>>>> = {
  '0.5': { accuracy: 0.5, repeatability: 0.5, reversibility: 0.75, zero: 0.05, resolution: 0.25 },
  '1': { accuracy: 1, repeatability: 1, reversibility: 1.5, zero: 0.1, resolution: 0.5 },
  '2': { accuracy: 2, repeatability: 2, reversibility: 3, zero: 0.2, resolution: 1 },
  '3': { accuracy: 3, repeatability: 3, reversibility: 4.5, zero: 0.3, resolution: 1.5 },
};
