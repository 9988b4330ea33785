// The face of a digital gauge: its range as a straight scale with the same calibrated band and the same marks.

import { useId } from 'react';
import { formatUnit } from '../controls/format-number.ts';
import styles from './bar-face.module.css';
import { type BarMeasures, barNumbers, placeOnBar } from './bar-geometry.ts';
import { type DialFace, describeFace, mostTagCharacters } from './dial-face.ts';
import { writeFaceNumber } from './dial-graduations.ts';
import { MarkShape } from './mark-shape.tsx';
import { shortTag } from './short-tag.ts';

const bar: BarMeasures = { left: 24, right: 296, characterWidth: 7.5, gap: 10 };
const top = { marks: 16, band: 32, bandEnd: 46, strokesEnd: 58, numbers: 74 } as const;

export function BarFace({ face }: { readonly face: DialFace }) {
  const hatchId = useId();
  const full = face.fullScale.value;
  const place = (reading: number) => placeOnBar(reading, full, bar);
  const numbers = barNumbers(full, bar);
  const limit = face.marks.find((mark) => mark.kind === 'limit');
  const set = face.marks.find((mark) => mark.kind === 'set');
  return (
    <svg className={styles.face} viewBox="0 0 320 104" role="img" aria-label={describeFace(face)}>
      <defs>
        <pattern id={hatchId} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect className={styles.hatch} width="2" height="4" />
        </pattern>
      </defs>
      <rect
        className={styles.plate}
        x={bar.left}
        y={top.band}
        width={bar.right - bar.left}
        height={top.bandEnd - top.band}
      />
      {face.calibrated === null ? null : (
        <rect
          className={styles.calibrated}
          x={place(face.calibrated.low)}
          y={top.band}
          width={place(face.calibrated.high) - place(face.calibrated.low)}
          height={top.bandEnd - top.band}
        />
      )}
      {limit === undefined ? null : (
        <rect
          x={place(limit.reading)}
          y={top.bandEnd}
          width={bar.right - place(limit.reading)}
          height={top.strokesEnd - top.bandEnd}
          fill={`url(#${hatchId})`}
        />
      )}
      {numbers.map((number) => (
        <g key={number}>
          <path className={styles.numbered} d={`M${place(number)} ${top.bandEnd}V${top.strokesEnd}`} />
          <text className={styles.number} x={place(number)} y={top.numbers}>
            {writeFaceNumber(number)}
          </text>
        </g>
      ))}
      <text className={styles.unit} x={(bar.left + bar.right) / 2} y="98">
        {[face.gauge === null ? null : shortTag(face.gauge, mostTagCharacters.digital), formatUnit(face.fullScale.unit)]
          .filter(Boolean)
          .join(', ')}
      </text>
      {set === undefined ? null : (
        <path className={styles.setLine} d={`M${place(set.reading)} ${top.band - 8}V${top.strokesEnd}`} />
      )}
      {face.marks.map((mark) => (
        <g
          key={mark.kind}
          transform={`translate(${place(mark.reading)} ${top.marks}) rotate(180)`}
          data-mark={mark.kind}
        >
          <MarkShape kind={mark.kind} />
        </g>
      ))}
    </svg>
  );
}
