// When a draft is written to the device.

import { describe, expect, it } from 'vitest';
import { createDraftWriter } from '../../../../src/web/offline/draft-writer.ts';

/** A writer whose writes end only when told to. */
function slowWriter() {
  const begun: string[] = [];
  const ends: (() => void)[] = [];
  const failures: unknown[] = [];
  const writer = createDraftWriter<string>({
    write: (content) => {
      begun.push(content);
      return new Promise((resolve, reject) => {
        ends.push(() => (content === 'refused' ? reject(new Error('the disk is full')) : resolve()));
      });
    },
    onFailure: (reason) => failures.push(reason),
  });
  const endWrite = async () => {
    ends.shift()?.();
    await new Promise((resolve) => setTimeout(resolve, 0));
  };
  return { begun, failures, writer, endWrite };
}

describe('draft writer', () => {
  it('begins to write the first change at once', () => {
    const { begun, writer } = slowWriter();
    writer.change('7');
    expect(begun).toEqual(['7']);
  });

  it('writes only the newest of the changes that came while a write was under way, after it', async () => {
    const { begun, writer, endWrite } = slowWriter();
    for (const text of ['7', '71', '710']) writer.change(text);
    expect(begun).toEqual(['7']);
    await endWrite();
    expect(begun).toEqual(['7', '710']);
  });

  it('tells what is not yet known to be written', async () => {
    const { writer, endWrite } = slowWriter();
    expect(writer.unwritten()).toBeNull();
    writer.change('7');
    writer.change('71');
    expect(writer.unwritten()).toBe('71');
    await endWrite();
    expect(writer.unwritten()).toBe('71');
    await endWrite();
    expect(writer.unwritten()).toBeNull();
  });

  it('is flushed when everything taken so far is written', async () => {
    const { begun, writer, endWrite } = slowWriter();
    writer.change('7');
    writer.change('71');
    let isFlushed = false;
    const flushed = writer.flush().then(() => {
      isFlushed = true;
    });
    await endWrite();
    expect(isFlushed).toBe(false);
    await endWrite();
    await flushed;
    expect(begun).toEqual(['7', '71']);
  });

  it('tells a failed write, keeps it in mind and writes the next change all the same', async () => {
    const { begun, failures, writer, endWrite } = slowWriter();
    writer.change('refused');
    await endWrite();
    expect(failures).toHaveLength(1);
    expect(writer.unwritten()).toBe('refused');
    writer.change('710');
    await endWrite();
    expect(begun).toEqual(['refused', '710']);
    expect(writer.unwritten()).toBeNull();
  });

  it('writes nothing more after it was stopped', async () => {
    const { begun, writer, endWrite } = slowWriter();
    writer.change('under way');
    writer.change('waiting');
    const stopped = writer.stop();
    writer.change('too late');
    await endWrite();
    await stopped;
    expect(begun).toEqual(['under way']);
    expect(writer.unwritten()).toBeNull();
  });
});
