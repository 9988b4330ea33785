// The mark that says without opening anything that records wait on this device. Set and cleared by record-queue.ts.

const mark = 'jackledger.records';

type Memory = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;

/** Answers whether records lie on the device; no where the browser keeps nothing. */
export function recordsLieHere(memory: Pick<Memory, 'getItem'>): boolean {
  try {
    return memory.getItem(mark) !== null;
  } catch {
    return false;
  }
}

export function markRecords(memory: Pick<Memory, 'setItem' | 'removeItem'>, lieHere: boolean): void {
  if (lieHere) memory.setItem(mark, 'yes');
  else memory.removeItem(mark);
}
