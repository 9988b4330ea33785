// The pair's own gauge: a round face or a straight scale, as the gauge is, and the table of its marks.

import { BarFace } from './bar-face.tsx';
import styles from './dial.module.css';
import type { DialFace } from './dial-face.ts';
import { DialLegend } from './dial-legend.tsx';
import { RoundFace } from './round-face.tsx';

export function Dial({ face }: { readonly face: DialFace }) {
  return (
    <figure className={styles.dial} data-display={face.display}>
      {face.display === 'dial' ? <RoundFace face={face} /> : <BarFace face={face} />}
      <DialLegend face={face} />
    </figure>
  );
}
