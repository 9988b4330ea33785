// A fit computed on the page or answered by the server, in the one form the tables and drawings take.

import type { FitAnswer } from '../../contract/fit.ts';
import type { CalibrationFit } from '../../domain/calibration/fit-calibration.ts';
import type { JudgedFit } from '../../domain/calibration/judge-fit.ts';
import type { ShownFit } from './shown-fit.ts';

/** Of a draft: `figures` null where nothing is judged. */
export function showDraftFit({ curve, degrees, residuals }: CalibrationFit, figures: JudgedFit | null): ShownFit {
  return { units: curve.units, curve: { ...curve.fit, response: curve.response }, degrees, residuals, figures };
}

/** Of what the server answered. */
export function showFitAnswer(answer: FitAnswer): ShownFit {
  const { units, curve, degrees, residuals } = answer;
  return { units, curve, degrees, residuals, figures: answer };
}
