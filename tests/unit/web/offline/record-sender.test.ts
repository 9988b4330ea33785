import { describe, expect, it, vi } from 'vitest';
import { NoConnectionError, ProblemError } from '../../../../src/web/app/http-client.ts';
import type { QueuedRecord, RecordQueue } from '../../../../src/web/offline/record-queue.ts';
import { createRecordSender } from '../../../../src/web/offline/record-sender.ts';

const record = (id: string, changes: Partial<QueuedRecord> = {}): QueuedRecord => ({
  ...{ id, savedAt: `2026-06-01T12:00:0${id}.000Z`, bed: `Bed ${id}`, on: '2026-06-01', pair: 'P-01', pulls: 4 },
  ...{ body: { bed: id }, draft: {}, state: 'waiting' },
  ...changes,
});

function queueOf(...records: readonly QueuedRecord[]): RecordQueue {
  const kept = new Map(records.map((one) => [one.id, one]));
  return {
    list: async () => [...kept.values()].sort((a, b) => a.savedAt.localeCompare(b.savedAt)),
    put: async (one) => void kept.set(one.id, one),
    remove: async (id) => void kept.delete(id),
  };
}

const refused = (code: 'field-invalid' | 'not-signed-in' | 'ledger-locked', detail = 'Because.') =>
  new ProblemError({ code, detail });
const tell = vi.fn();

function senderOn(queue: RecordQueue, post: (one: QueuedRecord) => Promise<string>) {
  return createRecordSender({ queue, post, alone: (work) => work(), tell });
}

describe('records that wait', () => {
  it('are sent in the order they were saved, each once, and get their numbers', async () => {
    const sent: string[] = [];
    const sender = senderOn(queueOf(record('2'), record('1'), record('3')), async ({ id }) => {
      sent.push(id);
      return `S-000${id}`;
    });
    await sender.send();
    await sender.send();
    expect(sent).toEqual(['1', '2', '3']);
    expect(sender.state().records.map(({ state, number }) => [state, number])).toEqual([
      ['recorded', 'S-0001'],
      ['recorded', 'S-0002'],
      ['recorded', 'S-0003'],
    ]);
  });

  it('wait on without a connection, none overtaking another', async () => {
    const post = vi.fn((): Promise<string> => Promise.reject(new NoConnectionError('no answer')));
    const sender = senderOn(queueOf(record('1'), record('2')), post);
    await sender.send();
    expect(post).toHaveBeenCalledTimes(1);
    expect(sender.state()).toMatchObject({ hindrance: 'no-connection', sending: null });
    expect(sender.state().records.map(({ state }) => state)).toEqual(['waiting', 'waiting']);
    post.mockImplementation(() => Promise.resolve('S-1'));
    await sender.send();
    expect(sender.state()).toMatchObject({ hindrance: null });
    expect(sender.state().records.map(({ state }) => state)).toEqual(['recorded', 'recorded']);
  });

  it('wait for somebody to sign in, and for a server that is busy', async () => {
    for (const [code, hindrance] of [
      ['not-signed-in', 'not-signed-in'],
      ['ledger-locked', 'server-busy'],
    ] as const) {
      const sender = senderOn(queueOf(record('1')), () => Promise.reject(refused(code)));
      await sender.send();
      expect(sender.state()).toMatchObject({ hindrance, records: [{ state: 'waiting' }] });
    }
  });

  it('that are rejected say why and let the next one pass', async () => {
    const sender = senderOn(queueOf(record('1'), record('2')), async ({ id }) => {
      if (id === '1') throw refused('field-invalid', 'The pair was parted.');
      return 'S-0001';
    });
    await sender.send();
    expect(sender.state().records).toMatchObject([
      { state: 'rejected', why: { code: 'field-invalid', detail: 'The pair was parted.' } },
      { state: 'recorded' },
    ]);
    await sender.send();
    expect(sender.state().records[0]?.state).toBe('rejected');
  });

  it('are sent with the key they have for ever after the answer was lost', async () => {
    const keys: string[] = [];
    let isLost = true;
    const sender = senderOn(queueOf(record('1')), async ({ id }) => {
      keys.push(id);
      if (isLost) throw new NoConnectionError('answer lost');
      return 'S-0001';
    });
    await sender.send();
    isLost = false;
    await sender.send();
    expect(keys).toEqual(['1', '1']);
  });

  it('one added while others are on their way is sent too, and what is on its way is named', async () => {
    const queue = queueOf(record('1'));
    const named: (string | null)[] = [];
    let open = (): void => undefined;
    const gate = new Promise<void>((resolve) => {
      open = resolve;
    });
    const sender = senderOn(queue, async ({ id }) => {
      named.push(sender.state().sending);
      if (id === '1') await gate;
      return `S-${id}`;
    });
    const first = sender.send();
    await sender.add(record('2'));
    const second = sender.send();
    open();
    await Promise.all([first, second]);
    expect(named).toEqual(['1', '2']);
    expect(sender.state().records.every(({ state }) => state === 'recorded')).toBe(true);
  });

  it('a fault of the program is no rejection', async () => {
    const sender = senderOn(queueOf(record('1')), () => Promise.reject(new TypeError('undefined')));
    await expect(sender.send()).rejects.toThrow(TypeError);
    expect((await sender.state()).records[0]?.state).toBe('waiting');
  });

  it('are told of in the other windows whenever one changes', async () => {
    tell.mockClear();
    const sender = senderOn(queueOf(), async () => 'S-1');
    await sender.add(record('1'));
    await sender.send();
    await sender.remove('1');
    expect(tell).toHaveBeenCalledTimes(3);
    expect(sender.state().records).toEqual([]);
  });
});
