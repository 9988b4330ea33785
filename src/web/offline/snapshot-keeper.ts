// Keeps what the device holds of the plant: from its own store at once, from the server as often as it is asked.
// What may be answered from it is decided in on-device.ts.

import type { SnapshotAnswer } from '../../contract/plant-snapshot.ts';
import { ProblemError } from '../app/http-client.ts';
import type { HeldSnapshot, SnapshotStore } from './snapshot-store.ts';

export interface KeeperState {
  /** Whether the server was heard, was found away, or was waited for long enough. */
  readonly isSettled: boolean;
  readonly held: HeldSnapshot | null;
  /** Why the server was not heard the last time; null where it was. */
  readonly error: unknown;
  /** The device's instant when this was found. */
  readonly now: string;
}

export interface SnapshotKeeper {
  state(): KeeperState;
  subscribe(listener: () => void): () => void;
  /** Asks the server whether what is held still holds; asked twice at a time it asks once. */
  ask(): Promise<void>;
}

export interface KeeperPorts {
  /** Rejects where the device keeps nothing; then the snapshot lives as long as the page. */
  readonly store: () => Promise<SnapshotStore>;
  readonly askServer: (known: string | null) => Promise<SnapshotAnswer>;
  /** UTC, ISO 8601. */
  readonly now: () => string;
  readonly wait: (ms: number) => Promise<void>;
}

/**
 * How long a device that holds a snapshot waits for the server's first word before it answers without. House rule: a hold
 * placed since should be seen first; a crew should not wait for a network that is not there.
 */
const longestFirstWaitMs = 2_000;

export function createSnapshotKeeper({ store, askServer, now, wait }: KeeperPorts): SnapshotKeeper {
  let state: KeeperState = { isSettled: false, held: null, error: null, now: now() };
  const listeners = new Set<() => void>();
  const become = (changed: Partial<KeeperState>) => {
    state = { ...state, now: now(), ...changed };
    for (const listener of listeners) listener();
  };
  const opened = store().catch(() => null);
  const found = opened.then(async (keeping) => {
    const held = (await keeping?.read().catch(() => null)) ?? null;
    if (held === null || state.held !== null) return;
    become({ held });
    void wait(longestFirstWaitMs).then(() => become({ isSettled: true }));
  });
  const keep = (held: HeldSnapshot | null) =>
    opened.then((keeping) => (held === null ? keeping?.remove() : keeping?.write(held))).catch(() => undefined);

  async function askOnce(): Promise<void> {
    await found;
    await seeTheTime();
    try {
      const answer = await askServer(state.held?.snapshot.name ?? null);
      const snapshot = answer.snapshot ?? state.held?.snapshot;
      if (snapshot === undefined) throw new Error('The server says that nothing changed, but nothing is held.');
      const heardAt = now();
      // What the clock showed before counts no more: it has just been held against the server's.
      const held = { snapshot, times: { saidAt: answer.at, heardAt, latestSeenAt: heardAt } };
      become({ isSettled: true, held, error: null });
      await keep(held);
    } catch (error) {
      // Whoever may not read the plant keeps nothing of it.
      const isBarred = error instanceof ProblemError && error.problem.code === 'not-signed-in';
      become({ isSettled: true, error, ...(isBarred ? { held: null } : {}) });
      if (isBarred) await keep(null);
    }
  }

  /** The latest time seen stays, so that a clock set back is noticed. */
  async function seeTheTime(): Promise<void> {
    const { held } = state;
    const present = now();
    if (held === null || present <= held.times.latestSeenAt) return become({});
    const seen = { ...held, times: { ...held.times, latestSeenAt: present } };
    become({ held: seen });
    await keep(seen);
  }

  let asking: Promise<void> | null = null;
  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    ask() {
      asking ??= askOnce().finally(() => {
        asking = null;
      });
      return asking;
    },
  };
}
