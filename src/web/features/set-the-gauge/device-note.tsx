// That the server is away and the answer is the device's own, in one line above the number: it must not push it off the screen.

import { NotDoneMark } from '../../controls/not-done-mark.tsx';
import { writeMinute } from '../../controls/write-minute.ts';
import type { ReadyDevice } from '../../offline/on-device.ts';
import { words } from '../../words/words.ts';
import styles from './device-note.module.css';

function ageOf({ times, now }: ReadyDevice): string {
  const minutes = Math.floor((Date.parse(now) - Date.parse(times.heardAt)) / 60_000);
  return words.setTheGauge.age(Math.max(0, minutes));
}

/** Answers when the device heard from the server, and where it is away what that leaves unknown. */
export function writeHeard(device: ReadyDevice): string {
  const text = words.setTheGauge;
  const heard = text.heardAt(writeMinute(device.times.heardAt, device.snapshot.plant.timeZone), ageOf(device));
  return device.isConnected ? heard : `${heard} ${text.unknownSince}`;
}

export function DeviceNote({ device }: { readonly device: ReadyDevice }) {
  const text = words.setTheGauge;
  if (device.isConnected) return null;
  return (
    <p className={styles.note} role="status" aria-label={text.serverAway}>
      <NotDoneMark word={text.serverAway} /> <span>{text.heardAgo(ageOf(device))}</span>
    </p>
  );
}
