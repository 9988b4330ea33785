// What a device keeps of the plant: from its store, from the server, and when it gives it up.

import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { PlantSnapshot, SnapshotAnswer } from '../../../../src/contract/plant-snapshot.ts';
import { twelveMonthsTwoPercent as rules } from '../../../../src/domain/rules/twelve-months-two-percent.ts';
import { NoConnectionError, ProblemError, UnexpectedAnswerError } from '../../../../src/web/app/http-client.ts';
import { onDevice } from '../../../../src/web/offline/on-device.ts';
import { createSnapshotKeeper } from '../../../../src/web/offline/snapshot-keeper.ts';
import type { HeldSnapshot, SnapshotStore } from '../../../../src/web/offline/snapshot-store.ts';

const snapshotNamed = (name: string): PlantSnapshot => ({
  name,
  ledgerHead: '1-0000-0000-0000-0000',
  plant: { name: 'Test Plant', sample: false, timeZone: 'America/Chicago' },
  rules,
  newestOn: '2026-06-01',
  strands: [],
  ownStrands: [],
  reels: [],
  pairs: [],
});
const heldFrom = (at: string, name = 'one'): HeldSnapshot => ({
  snapshot: snapshotNamed(name),
  times: { saidAt: at, heardAt: at, latestSeenAt: at },
});

let now: string;
let stored: HeldSnapshot | null;
let endWait: () => void;
const askServer = vi.fn<(known: string | null) => Promise<SnapshotAnswer>>();
const store: SnapshotStore = {
  read: async () => stored,
  write: async (held) => {
    stored = held;
  },
  remove: async () => {
    stored = null;
  },
};
const keeperOn = (opens: () => Promise<SnapshotStore>) =>
  createSnapshotKeeper({
    store: opens,
    askServer,
    now: () => now,
    wait: () =>
      new Promise((resolve) => {
        endWait = resolve;
      }),
  });

beforeEach(() => {
  now = '2026-06-02T12:00:00.000Z';
  stored = null;
  askServer.mockReset();
});

describe('the snapshot on a device', () => {
  it('is taken from the server, kept, and asked for by its name from then on', async () => {
    const keeper = keeperOn(async () => store);
    expect(onDevice(keeper.state())).toEqual({ kind: 'waiting' });
    askServer.mockResolvedValue({ at: now, name: 'one', snapshot: snapshotNamed('one') });
    await keeper.ask();
    expect(stored?.snapshot.name).toBe('one');
    expect(onDevice(keeper.state())).toMatchObject({ kind: 'ready', isConnected: true, day: { on: '2026-06-02' } });
    const later = '2026-06-02T12:01:00.000Z';
    now = later;
    askServer.mockResolvedValue({ at: later, name: 'one', snapshot: null });
    await keeper.ask();
    expect(askServer.mock.calls).toEqual([[null], ['one']]);
    expect(stored).toEqual(heldFrom(later));
  });

  it('answers without the server, and says so, on the day of the device', async () => {
    stored = heldFrom('2026-06-01T12:00:00.000Z');
    askServer.mockRejectedValue(new NoConnectionError());
    const keeper = keeperOn(async () => store);
    await keeper.ask();
    expect(onDevice(keeper.state())).toMatchObject({
      kind: 'ready',
      isConnected: false,
      day: { on: '2026-06-02', warnings: [] },
      times: { heardAt: '2026-06-01T12:00:00.000Z' },
    });
    now = '2026-06-09T12:00:00.000Z';
    await keeper.ask();
    expect(onDevice(keeper.state())).toMatchObject({ day: { on: '2026-06-09', warnings: [{ code: 'snapshot-old' }] } });
  });

  it('is used too where the answer comes from a stranger on the way', async () => {
    stored = heldFrom('2026-06-01T12:00:00.000Z');
    askServer.mockRejectedValue(new UnexpectedAnswerError());
    const keeper = keeperOn(async () => store);
    await keeper.ask();
    expect(onDevice(keeper.state())).toMatchObject({ kind: 'ready', isConnected: false });
  });

  it('waits for the first word of the server, but not for ever', async () => {
    stored = heldFrom('2026-06-01T12:00:00.000Z');
    askServer.mockReturnValue(new Promise(() => undefined));
    const keeper = keeperOn(async () => store);
    void keeper.ask();
    await vi.waitFor(() => expect(keeper.state().held).not.toBeNull());
    expect(onDevice(keeper.state())).toEqual({ kind: 'waiting' });
    endWait();
    await vi.waitFor(() => expect(onDevice(keeper.state()).kind).toBe('ready'));
  });

  it('is given up by a device that may no longer read, and kept but not used where the server refuses otherwise', async () => {
    stored = heldFrom('2026-06-01T12:00:00.000Z');
    const keeper = keeperOn(async () => store);
    askServer.mockRejectedValue(new ProblemError({ code: 'ledger-broken', detail: 'An entry does not verify.' }));
    await keeper.ask();
    expect(onDevice(keeper.state()).kind).toBe('failed');
    expect(stored).not.toBeNull();
    askServer.mockRejectedValue(new ProblemError({ code: 'not-signed-in', detail: 'Sign in first.' }));
    await keeper.ask();
    expect(onDevice(keeper.state()).kind).toBe('failed');
    expect(stored).toBeNull();
  });

  it('remembers the latest time it saw, so that a clock set back is noticed after a cold start', async () => {
    stored = heldFrom('2026-06-01T12:00:00.000Z');
    askServer.mockRejectedValue(new NoConnectionError());
    await keeperOn(async () => store).ask();
    now = '2026-06-01T12:30:00.000Z';
    const again = keeperOn(async () => store);
    await again.ask();
    expect(onDevice(again.state())).toMatchObject({ day: { warnings: [{ code: 'clock-not-trusted' }] } });
    askServer.mockResolvedValue({ at: now, name: 'one', snapshot: null });
    await again.ask();
    expect(onDevice(again.state())).toMatchObject({ day: { warnings: [] } });
  });

  it('lives as long as the page where the browser keeps nothing', async () => {
    const keeper = keeperOn(() => Promise.reject(new Error('private')));
    askServer.mockResolvedValue({ at: now, name: 'one', snapshot: snapshotNamed('one') });
    await keeper.ask();
    askServer.mockRejectedValue(new NoConnectionError());
    await keeper.ask();
    expect(onDevice(keeper.state())).toMatchObject({ kind: 'ready', isConnected: false });
  });

  it('is nothing to answer from where it was never had', async () => {
    const keeper = keeperOn(async () => store);
    askServer.mockRejectedValue(new NoConnectionError());
    await keeper.ask();
    expect(onDevice(keeper.state()).kind).toBe('failed');
  });
});
