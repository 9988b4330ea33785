// The cautions of the work itself, beside the number that starts it.

import { words } from '../../words/words.ts';
import styles from './caution-list.module.css';

export function CautionList() {
  const text = words.setTheGauge;
  return (
    <section className={styles.cautions}>
      <h2>{text.cautionsTitle}</h2>
      <ul className={styles.list}>
        {text.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p className={styles.defer}>{text.cautionsDefer}</p>
    </section>
  );
}
