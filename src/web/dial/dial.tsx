// The pair's own gauge: a round face or a straight scale, as the gauge is, and the table of its marks.

import { words } from '../words/words.ts';
import { BarFace } from './bar-face.tsx';
import styles from './dial.module.css';
import { type DialFace, mostTagCharacters } from './dial-face.ts';
import { DialLegend } from './dial-legend.tsx';
import { RoundFace } from './round-face.tsx';

export function Dial({ face }: { readonly face: DialFace }) {
  const { gauge, display } = face;
  const isCut = gauge !== null && [...gauge].length > mostTagCharacters[display];
  return (
    <figure className={styles.dial} data-display={face.display}>
      {face.display === 'dial' ? <RoundFace face={face} /> : <BarFace face={face} />}
      {isCut ? <p className={styles.tag}>{words.dial.gaugeTag(gauge)}</p> : null}
      <DialLegend face={face} />
    </figure>
  );
}
