// Sends the records that wait on this device, one after another in the order they were saved, and says of each how it stands.
// A record is sent with the one key it has for ever, so that a lost answer or a second window never writes it twice.

import { NoConnectionError, ProblemError, UnexpectedAnswerError } from '../app/http-client.ts';
import type { QueuedRecord, RecordQueue } from './record-queue.ts';

/** What keeps the records that wait from being sent now. */
export type Hindrance = 'no-connection' | 'not-signed-in' | 'server-busy';

export interface SenderState {
  readonly records: readonly QueuedRecord[];
  /** The id of the record on its way; null while none is. */
  readonly sending: string | null;
  readonly hindrance: Hindrance | null;
}

export interface RecordSender {
  state(): SenderState;
  subscribe(listener: () => void): () => void;
  /** Resolves when the record is on the device; it is sent afterwards. */
  add(record: QueuedRecord): Promise<void>;
  /** Sends what waits. Asked while it sends, it does so once more afterwards. */
  send(): Promise<void>;
  remove(id: string): Promise<void>;
  /** Looks again at what lies on the device: another window changed it. */
  look(): Promise<void>;
}

export interface SenderPorts {
  readonly queue: RecordQueue;
  /** Answers the number of the record in the ledger; rejects as the HTTP client does. */
  readonly post: (record: QueuedRecord) => Promise<string>;
  /** Runs the work unless another window of this device is at it. */
  readonly alone: (work: () => Promise<void>) => Promise<void>;
  /** Tells the other windows that something changed. */
  readonly tell: () => void;
}

/** Problems that say nothing against the record: it waits and is sent again. */
const passing: readonly string[] = [
  'ledger-locked',
  'ledger-conflict',
  'ledger-write-failed',
  'too-many-tries',
  'internal-error',
];

export function createRecordSender({ queue, post, alone, tell }: SenderPorts): RecordSender {
  let state: SenderState = { records: [], sending: null, hindrance: null };
  const listeners = new Set<() => void>();
  const become = (changed: Partial<SenderState>) => {
    state = { ...state, ...changed };
    for (const listener of listeners) listener();
  };
  const look = async () => become({ records: await queue.list() });
  const changed = async () => {
    await look();
    tell();
  };

  /** Answers whether the next one may be sent. */
  async function sendOne(record: QueuedRecord): Promise<boolean> {
    become({ sending: record.id });
    try {
      const number = await post(record);
      await queue.put({ ...record, state: 'recorded', number });
      become({ hindrance: null });
      return true;
    } catch (error) {
      const hindrance = hindranceOf(error);
      if (hindrance !== null) {
        become({ hindrance });
        return false;
      }
      await queue.put({ ...record, state: 'rejected', why: whyOf(error) });
      return true;
    } finally {
      become({ sending: null });
      await changed();
    }
  }

  async function sendAll(): Promise<void> {
    for (;;) {
      const next = (await queue.list()).find((record) => record.state === 'waiting');
      if (next === undefined || !(await sendOne(next))) return;
    }
  }

  let underWay: Promise<void> | null = null;
  let isAskedAgain = false;
  async function send(): Promise<void> {
    isAskedAgain = underWay !== null;
    underWay ??= alone(sendAll).finally(() => {
      underWay = null;
    });
    await underWay;
    if (!isAskedAgain) return;
    isAskedAgain = false;
    await send();
  }

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async add(record) {
      await queue.put(record);
      await changed();
    },
    send,
    async remove(id) {
      await queue.remove(id);
      await changed();
    },
    look,
  };
}

/** What stands in the way for now; null where the record itself was rejected. */
function hindranceOf(error: unknown): Hindrance | null {
  if (error instanceof ProblemError) {
    if (error.problem.code === 'not-signed-in') return 'not-signed-in';
    return passing.includes(error.problem.code) ? 'server-busy' : null;
  }
  if (error instanceof NoConnectionError) return 'no-connection';
  // What nobody understands was not the ledger's answer: the sign-in page of somebody's network, or an older server.
  if (error instanceof UnexpectedAnswerError) return 'server-busy';
  throw error;
}

function whyOf(error: unknown): NonNullable<QueuedRecord['why']> {
  if (!(error instanceof ProblemError)) throw error;
  const { code, detail, needed } = error.problem;
  return { code, detail, ...(needed === undefined ? {} : { needed }) };
}
