// When a draft is written: at once, and while a write is under way the newest content waits for its end.

export interface DraftWriter<T> {
  change(content: T): void;
  /** What is not yet known to be written, null where all is. */
  unwritten(): T | null;
  /** Resolves when everything taken so far was written, or could not be. */
  flush(): Promise<void>;
  /** Forgets what is not yet written and writes nothing more. Resolves when a write under way has ended. */
  stop(): Promise<void>;
}

interface DraftWriterOptions<T> {
  readonly write: (content: T) => Promise<void>;
  /** Told when a write failed; the next change is tried again. */
  readonly onFailure: (reason: unknown) => void;
}

/** Writes go one after another, so that an older content never lands on a newer one, however fast changes come. */
export function createDraftWriter<T>({ write, onFailure }: DraftWriterOptions<T>): DraftWriter<T> {
  let waiting: { readonly content: T } | null = null;
  let newest: { readonly content: T } | null = null;
  let underWay: Promise<void> | null = null;
  let stopped = false;

  async function writeAll(): Promise<void> {
    while (waiting !== null) {
      const next = waiting;
      waiting = null;
      try {
        await write(next.content);
        if (newest === next) newest = null;
      } catch (reason) {
        onFailure(reason);
      }
    }
    underWay = null;
  }

  return {
    change(content) {
      if (stopped) return;
      newest = { content };
      waiting = newest;
      underWay ??= writeAll();
    },
    unwritten: () => newest?.content ?? null,
    flush: async () => {
      await underWay;
    },
    stop: async () => {
      stopped = true;
      waiting = null;
      newest = null;
      await underWay;
    },
  };
}
