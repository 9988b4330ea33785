// The marks of a face as a table: shape, word and reading. It says in text all that the face shows.

import { formatUnit } from '../controls/format-number.ts';
import { words } from '../words/words.ts';
import { type DialFace, type MarkKind, writeRangeEnd, writeReading } from './dial-face.ts';
import styles from './dial-legend.module.css';
import { MarkShape } from './mark-shape.tsx';

const order: readonly MarkKind[] = ['set', 'preload', 'limit'];

export function DialLegend({ face }: { readonly face: DialFace }) {
  const text = words.dial;
  const marks = order.flatMap((kind) => face.marks.filter((mark) => mark.kind === kind));
  return (
    <table className={styles.legend}>
      <caption className="for-screen-readers">{text.legend}</caption>
      <thead className="for-screen-readers">
        <tr>
          <th scope="col">{text.markColumn}</th>
          <th scope="col">{text.readingColumn}</th>
        </tr>
      </thead>
      <tbody>
        {marks.map((mark) => (
          <tr key={mark.kind}>
            <th scope="row">
              <svg className={styles.shape} viewBox="-10 -10 20 20" aria-hidden="true">
                <g transform={mark.kind === 'set' ? 'rotate(180)' : undefined}>
                  <MarkShape kind={mark.kind} />
                </g>
              </svg>
              {text[mark.kind]}
            </th>
            <td>{writeReading(face, mark.reading)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">
            <svg className={styles.shape} viewBox="-10 -10 20 20" aria-hidden="true">
              <rect className={styles.band} x="-9" y="-4" width="18" height="8" />
            </svg>
            {text.range}
          </th>
          <td>
            {face.calibrated === null
              ? text.notCalibrated
              : `${text.rangeText(writeRangeEnd(face, face.calibrated.low), writeRangeEnd(face, face.calibrated.high))} ${formatUnit(face.fullScale.unit)}`}
          </td>
        </tr>
      </tbody>
    </table>
  );
}
