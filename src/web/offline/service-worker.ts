// Stands between the pages and the network, so that they open without it: every built file is kept when a version is
// installed. A new version waits until a person takes it; nothing of /api is ever kept.

interface Lifetime extends Event {
  waitUntil(done: Promise<unknown>): void;
}

interface Fetching extends Event {
  readonly request: Request;
  respondWith(response: Promise<Response>): void;
}

interface ServiceWorkerScope {
  skipWaiting(): Promise<void>;
  addEventListener(event: 'install' | 'activate', listener: (event: Lifetime) => void): void;
  addEventListener(event: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(event: 'message', listener: (event: MessageEvent) => void): void;
}

/** Written before this script by list-built-files.ts: the addresses of a build, and a hash of all they hold. */
declare const BUILT_FILES: { readonly version: string; readonly files: readonly string[] };

const scope = globalThis as unknown as ServiceWorkerScope;
const prefix = 'jackledger ';
const current = `${prefix}${BUILT_FILES.version}`;

scope.addEventListener('install', (event) => {
  const fresh = BUILT_FILES.files.map((file) => new Request(file, { cache: 'reload' }));
  event.waitUntil(caches.open(current).then((cache) => cache.addAll(fresh)));
});

scope.addEventListener('activate', (event) => event.waitUntil(forgetOlderVersions()));

/** The version before stays: a window still open on it may yet load one of its pages. */
async function forgetOlderVersions(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== current);
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)));
}

scope.addEventListener('message', ({ data }) => {
  if (data === 'take over') void scope.skipWaiting();
});

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  const { origin, pathname } = new URL(request.url);
  if (request.method !== 'GET' || origin !== location.origin || pathname.startsWith('/api/')) return;
  const file = request.mode === 'navigate' ? '/index.html' : pathname;
  if (request.mode === 'navigate' || pathname.startsWith('/assets/') || BUILT_FILES.files.includes(pathname)) {
    event.respondWith(keptOrAsked(file, request));
  }
});

async function keptOrAsked(file: string, request: Request): Promise<Response> {
  const kept = (await (await caches.open(current)).match(file)) ?? (await caches.match(file));
  return kept ?? fetch(request);
}
