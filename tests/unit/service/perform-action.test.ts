import { beforeEach, describe, expect, it } from 'vitest';
import { succeed } from '../../../src/domain/problem.ts';
import { type ActionRequest, commandLineActor, performAction } from '../../../src/service/perform-action.ts';
import { openPlant, type Plant } from '../../../src/service/plant.ts';
import { registerEquipment } from '../../../src/service/register-equipment.ts';
import { verifyPlant } from '../../../src/service/verify-ledger.ts';
import type { LedgerStore } from '../../../src/storage/ledger-store.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { type PlantAtWork, people, plantAtWork } from '../../plant-at-work.ts';

let work: PlantAtWork;
let plant: Plant;
beforeEach(async () => {
  work = await plantAtWork();
  plant = work.plant;
});

const pump = (tag: string, serial = 'S9') => ({ kind: 'pump', tag, serial }) as const;
const by = { actor: people.technician, retry: null };
const countOf = async (kind: string): Promise<number> => {
  let count = 0;
  for await (const entry of plant.ledger.readEntries(0)) if (entry.kind === kind) count += 1;
  return count;
};

/** A second process on the same ledger, whose every append may be preceded by something the first one does. */
async function otherProcess(before: () => Promise<unknown>): Promise<Plant> {
  const ledger: LedgerStore = {
    ...plant.ledger,
    append: async (request) => {
      await before();
      return plant.ledger.append(request);
    },
  };
  return outcomeValue(await openPlant({ ...plant, ledger }));
}

describe('an action', () => {
  it('stores nothing and asks nothing where the role may not', async () => {
    const before = plant.state.head;
    let asked = 0;
    const request: ActionRequest<string> = {
      action: 'register-equipment',
      actor: people.crew,
      retry: null,
      decide: () => {
        asked += 1;
        return succeed([]);
      },
      answer: succeed,
    };
    expect(await performAction(plant, request)).toMatchObject({
      ok: false,
      problem: { code: 'role-not-allowed', given: 'crew', needed: 'technician, quality, administrator' },
    });
    expect(asked).toBe(0);
    expect(plant.state.head).toEqual(before);
  });

  it('stores nothing that no replay could take in again', async () => {
    const before = plant.state.head;
    const { at, actor, body } = { at: plant.clock(), actor: 'tess', body: { reason: 'x' } };
    const hold = { at, actor, kind: 'hold-placed/1', subject: 'P-1', body } as const;
    const ofNobody = { ...hold, subject: 'P-99' } as const;
    const decide = () => succeed([hold, ofNobody]);
    const request = { action: 'place-hold', actor: people.technician, retry: null, decide, answer: succeed } as const;
    expect(await performAction(plant, request)).toMatchObject({
      problem: { code: 'field-invalid', message: expect.stringContaining('"P-99"') },
    });
    expect(await plant.ledger.head()).toEqual(before);
    expect(plant.state.pairs.get('P-1')?.hold).toBeNull();
  });

  it('may be done from the command line of the machine, and the entry says by whom', async () => {
    outcomeValue(await registerEquipment(plant, pump('U-1'), { actor: commandLineActor('root'), retry: null }));
    const last = await lastEntry();
    expect(last).toMatchObject({ actor: 'command-line:root', subject: 'U-1', kind: 'equipment-registered/2' });
  });

  it('decides anew where another entry came first, and loses neither', async () => {
    let interfered = false;
    const second = await otherProcess(async () => {
      if (interfered) return;
      interfered = true;
      outcomeValue(await registerEquipment(plant, pump('U-1'), by));
    });
    const registered = outcomeValue(await registerEquipment(second, pump('U-2'), by));
    expect(registered.tag).toBe('U-2');
    expect([...second.state.equipment.keys()]).toEqual(expect.arrayContaining(['U-1', 'U-2']));
    outcomeValue(await plant.refresh());
    expect(plant.state.head).toEqual(second.state.head);
  });

  it('is refused where what came first took its place', async () => {
    let interfered = false;
    const second = await otherProcess(async () => {
      if (interfered) return;
      interfered = true;
      outcomeValue(await registerEquipment(plant, pump('U-1', 'first'), by));
    });
    expect(await registerEquipment(second, pump('u-1', 'second'), by)).toMatchObject({
      ok: false,
      problem: { code: 'tag-taken' },
    });
    expect(second.state.equipment.get('U-1')).toMatchObject({ serial: 'first' });
    expect(second.state.equipment.has('u-1')).toBe(false);
  });

  it('gives up after five tries in words, and stores nothing', async () => {
    let interfered = 0;
    const second = await otherProcess(async () => {
      interfered += 1;
      outcomeValue(await registerEquipment(plant, pump(`U-${interfered}`), by));
    });
    expect(await registerEquipment(second, pump('V-1'), by)).toMatchObject({
      ok: false,
      problem: { code: 'ledger-conflict' },
    });
    expect(interfered).toBe(5);
    outcomeValue(await plant.refresh());
    expect(plant.state.equipment.has('V-1')).toBe(false);
  });

  async function lastEntry() {
    const entries = [];
    for await (const entry of plant.ledger.readEntries(plant.state.head.seq - 1)) entries.push(entry);
    return entries.at(-1);
  }
});

describe('a retry', () => {
  const retry = { key: 'once', request: '{"tag":"U-1"}' };
  const again = { actor: people.technician, retry };

  it('is one entry and the same answer, at the same time or later, here or in another process', async () => {
    const before = await countOf('equipment-registered/2');
    const [one, two] = await Promise.all([
      registerEquipment(plant, pump('U-1'), again),
      registerEquipment(plant, pump('U-1'), again),
    ]);
    const second = outcomeValue(await openPlant(plant));
    const three = await registerEquipment(second, pump('U-1'), again);
    expect(outcomeValue(one)).toMatchObject({ tag: 'U-1' });
    expect(two).toEqual(one);
    expect(three).toEqual(one);
    expect(await countOf('equipment-registered/2')).toBe(before + 1);
  });

  it('of a process that knows nothing of what came since gets the first answer', async () => {
    const stale = outcomeValue(await openPlant(plant));
    outcomeValue(await registerEquipment(plant, pump('U-0'), by));
    outcomeValue(await registerEquipment(plant, pump('U-1'), again));
    outcomeValue(await registerEquipment(plant, pump('U-2'), by));
    const content = { kind: 'equipment-registered/2', subject: 'U-1', body: { equipment: pump('U-1') } } as const;
    const entry = { at: stale.clock(), actor: people.technician.id, ...content };
    const appended = outcomeValue(await stale.append([entry], retry));
    expect(appended.map(({ subject }) => subject)).toEqual(['U-1']);
    expect(stale.state.head).toEqual(plant.state.head);
  });

  it('is refused where the same key comes with another request', async () => {
    outcomeValue(await registerEquipment(plant, pump('U-1'), again));
    const other = { actor: people.technician, retry: { ...retry, request: '{"tag":"U-2"}' } };
    expect(await registerEquipment(plant, pump('U-2'), other)).toMatchObject({
      ok: false,
      problem: { code: 'key-reused' },
    });
    expect(plant.state.equipment.has('U-2')).toBe(false);
  });

  it('of what was refused is decided anew, since nothing was stored under its key', async () => {
    expect(await registerEquipment(plant, pump('J-1'), again)).toMatchObject({ problem: { code: 'tag-taken' } });
    expect(outcomeValue(await registerEquipment(plant, pump('U-1'), again)).tag).toBe('U-1');
  });

  it('needs the role as the first try did', async () => {
    outcomeValue(await registerEquipment(plant, pump('U-1'), again));
    expect(await registerEquipment(plant, pump('U-1'), { actor: people.crew, retry })).toMatchObject({
      problem: { code: 'role-not-allowed' },
    });
  });
});

describe('verifying an open plant', () => {
  it('names an entry whose bytes are whole and that says what cannot be', async () => {
    expect(await verifyPlant(plant)).toMatchObject({ ok: true });
    const { seq } = plant.state.head;
    const hold = {
      at: plant.clock(),
      actor: 'tess',
      kind: 'hold-placed/1',
      subject: 'P-99',
      body: { reason: 'x' },
    } as const;
    outcomeValue(await plant.ledger.append({ entries: [hold], expectedSeq: seq }));
    expect(await verifyPlant(plant)).toMatchObject({ problem: { code: 'ledger-broken', where: `entry ${seq + 1}` } });
  });
});
