// Installs the pages on the device and tells when a new version of them waits to be taken.
// What is kept of a version is the business of service-worker.ts.

export interface VersionWatch {
  /** Whether a new version is installed and waits. */
  isWaiting(): boolean;
  subscribe(listener: () => void): () => void;
  /** Takes the new version: the page is loaded again with it. */
  take(): void;
}

/** A page may stand open for weeks; it asks this often whether there is a new version. House rule. */
const askAgainMs = 60 * 60_000;

/** `container` is undefined where the browser has none: over plain HTTP from another machine, and in some private windows. */
export function watchVersion(container: ServiceWorkerContainer | undefined, reload: () => void): VersionWatch {
  let waiting: ServiceWorker | null = null;
  const listeners = new Set<() => void>();
  const found = (worker: ServiceWorker | null) => {
    // The first version of all has nothing to take the place of.
    if (worker === null || container?.controller === null) return;
    waiting = worker;
    for (const listener of listeners) listener();
  };
  const watch = (registration: ServiceWorkerRegistration) => {
    found(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const { installing } = registration;
      installing?.addEventListener('statechange', () => {
        if (installing.state === 'installed') found(registration.waiting);
      });
    });
    setInterval(() => registration.update().catch(() => undefined), askAgainMs);
  };
  // Where it cannot be installed the pages work as before, with the server.
  container?.register('/service-worker.js').then(watch, () => undefined);
  return {
    isWaiting: () => waiting !== null,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    take() {
      // In this window alone: another one may have a form open.
      container?.addEventListener('controllerchange', reload, { once: true });
      waiting?.postMessage('take over');
    },
  };
}
