import { describe, expect, it } from 'vitest';
import {
  forgetBed,
  type KeptBed,
  keepBed,
  mostBeds,
  recallBeds,
  rememberBeds,
} from '../../../../src/web/features/set-the-gauge/kept-beds.ts';

const bed = (name: string, pair = 'P-01'): KeptBed => ({
  name,
  choice: { pair, target: { by: 'strand', strand: '1/2 in 270', fraction: 0.75 } },
});

function memory(): Pick<Storage, 'getItem' | 'setItem'> {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, value) => void kept.set(key, value) };
}

describe('the beds of a device', () => {
  it('come back as they were kept', () => {
    const device = memory();
    const beds = keepBed(keepBed([], bed('Bed 10')), {
      name: 'Bed 2',
      choice: { pair: 'P-02', target: { by: 'force', force: '140 kN', strand: null } },
    });
    expect(rememberBeds(device, beds)).toBe(true);
    expect(recallBeds(device)).toEqual(beds);
    expect(beds.map(({ name }) => name)).toEqual(['Bed 2', 'Bed 10']);
  });

  it('are kept anew under the same name, whatever its case', () => {
    const beds = keepBed(keepBed([], bed('Bed 1')), bed(' BED 1 ', 'P-02'));
    expect(beds).toEqual([bed('BED 1', 'P-02')]);
    expect(forgetBed(beds, 'bed 1')).toEqual([]);
  });

  it('are so many and no more, but one of them can still be kept anew', () => {
    const full = Array.from({ length: mostBeds }, (_, index) => `Bed ${index}`).reduce<readonly KeptBed[]>(
      (beds, name) => keepBed(beds, bed(name)),
      [],
    );
    expect(full).toHaveLength(mostBeds);
    expect(keepBed(full, bed('One more'))).toBe(full);
    expect(keepBed(full, bed('Bed 3', 'P-09'))).toHaveLength(mostBeds);
  });

  it('are none where the device keeps nothing, or what it keeps is something else', () => {
    const refusing = {
      getItem: () => {
        throw new Error('forbidden');
      },
      setItem: () => {
        throw new Error('forbidden');
      },
    };
    expect(recallBeds(refusing)).toEqual([]);
    expect(rememberBeds(refusing, [bed('Bed 1')])).toBe(false);
    for (const text of ['{', '{}', '7', '[1,["a"],["Bed 1","pair=P-01"]]']) {
      const device = memory();
      device.setItem('jackledger.set-the-gauge.beds', text);
      expect(recallBeds(device).map(({ name }) => name)).toEqual(text.includes('Bed 1') ? ['Bed 1'] : []);
    }
  });
});
