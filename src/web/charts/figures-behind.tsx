// Everything a verdict rests on, opened on demand: levels, uncertainty, degrees, the curve in numbers, residuals.

import { useId } from 'react';
import { words } from '../words/desk-words.ts';
import type { ChartedFit } from './chart-rows.ts';
import { CurveFigures, scatterInWords } from './curve-figures.tsx';
import { DegreeFigures } from './degree-figures.tsx';
import { Disclosure } from './disclosure.tsx';
import styles from './figures-behind.module.css';
import { classRangesInWords, LevelFigures } from './level-figures.tsx';
import { ResidualTable } from './residual-table.tsx';
import { type ShownFit, unitsOfFit } from './shown-fit.ts';
import { UncertaintyFigures, uncertaintyRangeInWords } from './uncertainty-figures.tsx';

interface FiguresBehindProps {
  readonly fit: ShownFit;
  /** Null where the curve cannot be drawn here; the tables stand all the same. */
  readonly drawn: ChartedFit | null;
}

export function FiguresBehind({ fit, drawn }: FiguresBehindProps) {
  const { figures } = words;
  const titleId = useId();
  const shown = fit.figures;
  return (
    <section className={styles.figures} aria-labelledby={titleId}>
      <h2 id={titleId}>{figures.title}</h2>
      <div className={styles.list}>
        {shown === null ? null : (
          <>
            <Disclosure
              title={figures.levelsTitle}
              gist={classRangesInWords(shown, unitsOfFit(fit).set) ?? figures.noClassHeld}
              render={() => <LevelFigures fit={fit} shown={shown} />}
            />
            <Disclosure
              title={figures.uncertaintyTitle}
              gist={uncertaintyRangeInWords(shown.levels)}
              render={() => <UncertaintyFigures fit={fit} levels={shown.levels} />}
            />
          </>
        )}
        <Disclosure
          title={figures.degreesTitle}
          gist={figures.degreeTaken(fit.curve.degree)}
          render={() => <DegreeFigures fit={fit} drawn={drawn} />}
        />
        <Disclosure
          title={figures.curveTitle}
          gist={figures.scatterOf(scatterInWords(fit))}
          render={() => <CurveFigures fit={fit} />}
        />
        <Disclosure title={figures.residualsTitle} render={() => <ResidualTable fit={fit} />} />
      </div>
    </section>
  );
}
