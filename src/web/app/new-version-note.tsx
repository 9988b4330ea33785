// That a new version waits. It moves nothing, takes no focus and does nothing by itself: somebody may be typing.

import { createContext, useContext, useSyncExternalStore } from 'react';
import { Button } from '../controls/button.tsx';
import type { VersionWatch } from '../offline/version-watch.ts';
import { words } from '../words/words.ts';
import styles from './new-version-note.module.css';

/** Given once, where the pages start; null while developing. */
export const VersionContext = createContext<VersionWatch | null>(null);

const never = () => () => undefined;

export function NewVersionNote() {
  const versions = useContext(VersionContext);
  const isWaiting = useSyncExternalStore(versions?.subscribe ?? never, versions?.isWaiting ?? (() => false));
  return (
    <div role="status" className={styles.place}>
      {isWaiting ? (
        <p className={styles.note}>
          <span>
            <strong>{words.app.newVersion}</strong> {words.app.newVersionText}
          </span>
          <Button onClick={() => versions?.take()}>{words.app.newVersionTake}</Button>
        </p>
      ) : null}
    </div>
  );
}
