// A sentence in which no date breaks at its hyphens at the end of a line.

import styles from './whole-dates.module.css';

const date = /(\d{4}-\d{2}-\d{2}(?: \d{2}:\d{2})?)/;

export function WholeDates({ text }: { readonly text: string }) {
  return text.split(date).map((part, index) =>
    index % 2 === 0 ? (
      part
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text have no other name than their place.
      <span key={index} className={styles.whole}>
        {part}
      </span>
    ),
  );
}
