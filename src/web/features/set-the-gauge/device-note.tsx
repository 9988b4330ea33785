// That the server is away and the answer is the device's own: since when, and what that leaves unknown.

import { NotDoneMark } from '../../controls/not-done-mark.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { words } from '../../words/words.ts';
import styles from './device-note.module.css';

/** Answers how long ago the device heard from the server, as a person says it. */
export function writeHeard({ times, now, snapshot }: ReadyDevice): string {
  const text = words.setTheGauge;
  const minutes = Math.floor((Date.parse(now) - Date.parse(times.heardAt)) / 60_000);
  return text.heardAt(writeMinute(times.heardAt, snapshot.plant.timeZone), text.age(Math.max(0, minutes)));
}

export function DeviceNote({ device }: { readonly device: ReadyDevice }) {
  const text = words.setTheGauge;
  if (device.isConnected) return null;
  return (
    <section className={styles.note} role="status" aria-label={text.serverAway}>
      <NotDoneMark word={text.serverAway} />
      <p>
        {text.serverAwayText} {writeHeard(device)}
      </p>
    </section>
  );
}
