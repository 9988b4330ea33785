// Starts the browser part.

import './zod-without-eval.ts';

import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { snapshotAnswer } from '../../contract/plant-snapshot.ts';
import { createSnapshotKeeper } from '../offline/snapshot-keeper.ts';
import { openSnapshotStore } from '../offline/snapshot-store.ts';
import { SnapshotContext } from '../offline/use-snapshot.ts';
import { watchVersion } from '../offline/version-watch.ts';
import { language } from '../words/language.ts';
import { App } from './app.tsx';
import { get } from './http-client.ts';
import { VersionContext } from './new-version-note.tsx';
import { createQueryClient } from './query-client.ts';
import './tokens.css';
import './ground.css';

document.documentElement.lang = language;

// Asks the browser not to clear away what this device holds when room gets short; it may say no.
void navigator.storage?.persist?.().catch(() => false);

const place = document.getElementById('page');
if (place === null) throw new Error('index.html has no element with the id "page"');

const keeper = createSnapshotKeeper({
  store: openSnapshotStore,
  askServer: (known) => {
    const query = known === null ? '' : `?${new URLSearchParams({ known })}`;
    return get(`/api/snapshot${query}`, snapshotAnswer);
  },
  now: () => new Date().toISOString(),
  wait: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
});

// While developing, the files change under the page and none are kept.
const versions = import.meta.env.PROD ? watchVersion(navigator.serviceWorker, () => window.location.reload()) : null;

createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={createQueryClient()}>
      <SnapshotContext value={keeper}>
        <VersionContext value={versions}>
          <App />
        </VersionContext>
      </SnapshotContext>
    </QueryClientProvider>
  </StrictMode>,
);
