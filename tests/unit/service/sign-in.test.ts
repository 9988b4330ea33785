import { beforeEach, describe, expect, it } from 'vitest';
import { addPerson } from '../../../src/service/add-person.ts';
import { openNewPlant } from '../../../src/service/open-new-plant.ts';
import { openPlant } from '../../../src/service/plant.ts';
import { personOfSession, signIn, signOut } from '../../../src/service/sign-in.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { emptyPlantAtWork, type PlantAtWork, password, people, plantAtWork } from '../../plant-at-work.ts';

let work: PlantAtWork;
beforeEach(async () => {
  work = await plantAtWork();
});

describe('signing in', () => {
  it('gives a token that stands for the person until it is signed out', async () => {
    const { plant } = work;
    const { person, token } = outcomeValue(await signIn(plant, ' Tess ', password));
    expect(person).toEqual(people.technician);
    expect(await personOfSession(plant, token)).toEqual(people.technician);
    await signOut(plant, token);
    expect(await personOfSession(plant, token)).toBeNull();
  });

  it('is refused alike for a wrong password, a name there is not, and a name every object has', async () => {
    const refusals = [];
    for (const [id, word] of [
      ['tess', 'wrong'],
      ['nobody', password],
      ['constructor', password],
      ['', ''],
    ] as const) {
      refusals.push(await signIn(work.plant, id, word));
    }
    expect(refusals[0]).toMatchObject({ ok: false, problem: { code: 'sign-in-refused' } });
    for (const refusal of refusals) expect(refusal).toEqual(refusals[0]);
  });

  it('ends after fourteen hours, to the millisecond', async () => {
    const { plant } = work;
    const { token, expiresAt } = outcomeValue(await signIn(plant, 'tess', password));
    expect(Date.parse(expiresAt) - Date.parse(plant.clock())).toBe(14 * 3_600_000);
    const at = async (instant: string) =>
      personOfSession(outcomeValue(await openPlant({ ...plant, clock: () => instant })), token);
    expect(await at(new Date(Date.parse(expiresAt) - 1).toISOString())).toEqual(people.technician);
    expect(await at(expiresAt)).toBeNull();
  });

  it('keeps neither the password nor the token in any entry', async () => {
    const { plant } = work;
    const { token } = outcomeValue(await signIn(plant, 'tess', password));
    for await (const row of plant.rows.readStoredRows(0)) {
      expect(JSON.stringify(row)).not.toContain(password);
      expect(JSON.stringify(row)).not.toContain(token);
    }
  });
});

describe('adding a person', () => {
  const person = { id: 'nora', name: 'Nora New', role: 'crew', password: 'another-word' } as const;

  it('lets the person sign in', async () => {
    outcomeValue(await addPerson(work.plant, person, { actor: people.administrator, retryKey: null }));
    expect(outcomeValue(await signIn(work.plant, 'nora', 'another-word')).person.role).toBe('crew');
  });

  it('goes on where it was cut off between the entry and the password', async () => {
    const { id, name, role } = person;
    const at = work.plant.clock();
    const entry = { at, actor: 'ada', kind: 'person-added/1', subject: id, body: { name, role } } as const;
    outcomeValue(await work.plant.append([entry], null));
    const by = { actor: people.administrator, retryKey: null };
    expect(await addPerson(work.plant, person, { ...by, actor: people.quality })).toMatchObject({
      problem: { code: 'role-not-allowed' },
    });
    outcomeValue(await addPerson(work.plant, person, by));
    outcomeValue(await signIn(work.plant, id, person.password));
    expect(await addPerson(work.plant, person, by)).toMatchObject({ problem: { code: 'tag-taken' } });
  });

  it('is for the administrator, and never changes who is there already', async () => {
    expect(await addPerson(work.plant, person, { actor: people.quality, retryKey: null })).toMatchObject({
      problem: { code: 'role-not-allowed' },
    });
    expect(
      await addPerson(work.plant, { ...person, id: 'tess' }, { actor: people.administrator, retryKey: null }),
    ).toMatchObject({
      problem: { code: 'tag-taken' },
    });
    expect(outcomeValue(await signIn(work.plant, 'tess', password)).person).toEqual(people.technician);
  });

  it.each([
    [{ id: 'Nora' }, 'id'],
    [{ id: 'n' }, 'id'],
    [{ id: '__proto__' }, 'id'],
    [{ id: 'command-line:root' }, 'id'],
    [{ password: 'short' }, 'password'],
  ])('is refused: %j', async (changes, where) => {
    expect(
      await addPerson(work.plant, { ...person, ...changes }, { actor: people.administrator, retryKey: null }),
    ).toMatchObject({
      problem: { code: 'field-invalid', where },
    });
  });
});

describe('opening a new plant', () => {
  const opening = {
    code: 'ABCD-2345',
    plantName: 'A Plant',
    timeZone: 'Pacific/Auckland',
    administrator: { id: 'ada', name: 'Ada', password: 'pass-word-1' },
  };

  it('takes the code once, then the day is that of its zone and its administrator signs in', async () => {
    const { plant } = await emptyPlantAtWork('2026-06-01');
    for (const code of [null, 'OTHER-999', '']) {
      expect(await openNewPlant(plant, opening, code)).toMatchObject({ problem: { code: 'sign-in-refused' } });
    }
    expect(plant.state.head.seq).toBe(0);
    expect(plant.today()).toBe('2026-06-01');
    expect(outcomeValue(await openNewPlant(plant, { ...opening, code: ' abcd-2345 ' }, 'ABCD-2345')).role).toBe(
      'administrator',
    );
    expect(plant.today()).toBe('2026-06-02');
    expect(outcomeValue(await signIn(plant, 'ada', 'pass-word-1')).person.name).toBe('Ada');
    expect(await openNewPlant(plant, opening, 'ABCD-2345')).toMatchObject({ problem: { code: 'ledger-conflict' } });
  });
});
