// The face of a dial gauge: strokes and numbers as on the gauge itself, the calibrated arc, and the marks on its rim.

import { useId } from 'react';
import { formatUnit } from '../controls/format-number.ts';
import type { DialFace, DialMark } from './dial-face.ts';
import { describeFace, mostTagCharacters } from './dial-face.ts';
import {
  angleForReading,
  arcPath,
  bandPath,
  pointAt,
  startDegrees,
  strokesPath,
  sweepDegrees,
} from './dial-geometry.ts';
import { graduationsOf, type LabelMeasures, writeFaceNumber } from './dial-graduations.ts';
import { MarkShape } from './mark-shape.tsx';
import styles from './round-face.module.css';
import { shortTag } from './short-tag.ts';

/** Radii of a face drawn around 0/0, in units of the drawing, from the hub to the rim. */
const radius = {
  hub: 7,
  tail: 20,
  needleTip: 78,
  strokesInner: 76,
  middleInner: 80,
  fineInner: 83,
  strokesOuter: 89,
  bandInner: 91,
  bandOuter: 96,
  beyondOuter: 103,
  rim: 105,
  marks: 116,
} as const;

export const numberMeasures: LabelMeasures = { radius: 62, characterWidth: 6.5, height: 10, gap: 2 };

const endDegrees = startDegrees + sweepDegrees;

export function RoundFace({ face }: { readonly face: DialFace }) {
  const hatchId = useId();
  const full = face.fullScale.value;
  const graduations = graduationsOf(full, face.graduation.value, numberMeasures);
  const angle = (reading: number) => angleForReading(reading, full);
  const set = face.marks.find((mark) => mark.kind === 'set');
  const limit = face.marks.find((mark) => mark.kind === 'limit');
  return (
    <svg className={styles.face} viewBox="-127 -127 254 234" role="img" aria-label={describeFace(face)}>
      <defs>
        <pattern id={hatchId} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect className={styles.hatch} width="2" height="4" />
        </pattern>
      </defs>
      <circle className={styles.plate} r={radius.rim} />
      <path className={styles.track} d={arcPath(startDegrees, endDegrees, (radius.bandInner + radius.bandOuter) / 2)} />
      {face.calibrated === null ? null : (
        <path
          className={styles.calibrated}
          d={bandPath(angle(face.calibrated.low), angle(face.calibrated.high), radius.bandInner, radius.bandOuter)}
        />
      )}
      {limit === undefined || angle(limit.reading) >= endDegrees ? null : (
        <path
          className={styles.beyond}
          fill={`url(#${hatchId})`}
          d={bandPath(angle(limit.reading), endDegrees, radius.bandOuter, radius.beyondOuter)}
        />
      )}
      <path
        className={styles.fine}
        d={strokesPath(graduations.fine.map(angle), radius.fineInner, radius.strokesOuter)}
      />
      <path
        className={styles.middle}
        d={strokesPath(graduations.middle.map(angle), radius.middleInner, radius.strokesOuter)}
      />
      <path
        className={styles.numbered}
        d={strokesPath(graduations.numbered.map(angle), radius.strokesInner, radius.strokesOuter)}
      />
      {set === undefined ? null : <Needle angle={angle(set.reading)} />}
      {graduations.numbered.map((number) => {
        const { x, y } = pointAt(angle(number), numberMeasures.radius);
        return (
          <text key={number} className={styles.number} x={x} y={y} dy="0.36em">
            {writeFaceNumber(number)}
          </text>
        );
      })}
      <text className={styles.unit} y="44">
        {formatUnit(face.fullScale.unit)}
      </text>
      {face.gauge === null ? null : (
        <text className={styles.tag} y="88">
          {shortTag(face.gauge, mostTagCharacters.dial)}
        </text>
      )}
      {face.marks.map((mark) => (
        <RimMark key={mark.kind} mark={mark} angle={angle(mark.reading)} />
      ))}
    </svg>
  );
}

function Needle({ angle }: { readonly angle: number }) {
  return (
    <g transform={`rotate(${angle.toFixed(3)})`}>
      <path className={styles.needle} d={`M0 ${-radius.needleTip} 3.200-18 4.200 ${radius.tail}h-8.400L-3.200-18z`} />
      <circle className={styles.hub} r={radius.hub} />
      <circle className={styles.pin} r="2" />
    </g>
  );
}

/** Each mark stands outside the rim and points inwards; the limit also bars the way the pointer takes. */
function RimMark({ mark, angle }: { readonly mark: DialMark; readonly angle: number }) {
  return (
    <g transform={`rotate(${angle.toFixed(3)})`} data-mark={mark.kind}>
      {mark.kind === 'limit' ? (
        <path className={styles.bar} d={`M0 ${-radius.strokesInner}V${-radius.rim}`} />
      ) : (
        <path className={styles.stem} d={`M0 ${-radius.strokesOuter}V${-radius.marks}`} />
      )}
      <g transform={`translate(0 ${-radius.marks}) rotate(180)`}>
        <MarkShape kind={mark.kind} />
      </g>
    </g>
  );
}
