import { beforeEach, describe, expect, it } from 'vitest';
import { addPerson } from '../../../src/service/add-person.ts';
import { openNewPlant } from '../../../src/service/open-new-plant.ts';
import type { Plant } from '../../../src/service/plant.ts';
import { openPlant } from '../../../src/service/plant.ts';
import { personOfSession, signOut, signOutEverywhere } from '../../../src/service/session.ts';
import { hashForUnknownNames, signIn as signInWith } from '../../../src/service/sign-in.ts';
import { createSignInThrottle } from '../../../src/service/sign-in-throttle.ts';
import { outcomeValue } from '../../outcome-value.ts';
import { emptyPlantAtWork, type PlantAtWork, password, people, plantAtWork } from '../../plant-at-work.ts';

const signIn = (plant: Plant, person: string, word: string) =>
  signInWith(
    plant,
    { person, password: word, oneTimePassword: null },
    { throttle: createSignInThrottle(), address: '127.0.0.1' },
  );

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

  const later = (instant: string, milliseconds: number) => new Date(Date.parse(instant) + milliseconds).toISOString();
  const hour = 3_600_000;

  it('ends after fourteen hours, to the millisecond, however often it is used', async () => {
    const { plant } = work;
    const begun = plant.clock();
    const { token, expiresAt } = outcomeValue(await signIn(plant, 'tess', password));
    expect(Date.parse(expiresAt) - Date.parse(begun)).toBe(14 * hour);
    const at = async (after: number) =>
      personOfSession(outcomeValue(await openPlant({ ...plant, clock: () => later(begun, after) })), token);
    for (let after = 0; after < 14 * hour; after += hour / 2) expect(await at(after)).toEqual(people.technician);
    expect(await at(14 * hour - 1)).toEqual(people.technician);
    expect(await at(14 * hour)).toBeNull();
  });

  it('ends when nothing was asked for an hour, and its use is written once a minute at most', async () => {
    const { plant } = work;
    const begun = plant.clock();
    const { token } = outcomeValue(await signIn(plant, 'tess', password));
    const changes: unknown[] = [];
    const credentials: typeof plant.credentials = {
      ...plant.credentials,
      change(made) {
        changes.push(...made);
        return plant.credentials.change(made);
      },
    };
    const at = async (after: number) =>
      personOfSession(
        outcomeValue(await openPlant({ ...plant, credentials, clock: () => later(begun, after) })),
        token,
      );
    expect(await at(59_999)).toEqual(people.technician);
    expect(changes).toEqual([]);
    expect(await at(60_000)).toEqual(people.technician);
    expect(await at(60_001)).toEqual(people.technician);
    expect(changes).toMatchObject([{ change: 'use-session', at: later(begun, 60_000) }]);
    expect(await at(60_000 + hour)).toBeNull();
    expect(await at(60_000 + hour - 1)).toEqual(people.technician);
  });

  it('ends on every device at once', async () => {
    const { plant } = work;
    const tokens = [outcomeValue(await signIn(plant, 'tess', password)).token];
    tokens.push(outcomeValue(await signIn(plant, 'tess', password)).token);
    const { token: others } = outcomeValue(await signIn(plant, 'quinn', password));
    outcomeValue(await signOutEverywhere(plant, 'tess'));
    for (const token of tokens) expect(await personOfSession(plant, token)).toBeNull();
    expect(await personOfSession(plant, others)).toEqual(people.quality);
  });

  it('checks as many hashes for a name there is not, a barred person and one who has no password yet', async () => {
    const { plant } = work;
    const at = plant.clock();
    outcomeValue(
      await plant.append(
        [
          { at, actor: 'ada', kind: 'person-barred/1', subject: 'audie', body: { reason: 'left the plant' } },
          { at, actor: 'ada', kind: 'person-added/1', subject: 'nora', body: { name: 'Nora New', role: 'crew' } },
        ],
        null,
      ),
    );
    let verified = 0;
    let hashed = 0;
    const passwords = {
      ...plant.passwords,
      async hash(word: string) {
        hashed += 1;
        return plant.passwords.hash(word);
      },
      async verify(hash: string, word: string) {
        verified += 1;
        return plant.passwords.verify(hash, word);
      },
    };
    const counting = outcomeValue(await openPlant({ ...plant, passwords }));
    // Made when the server starts, so that it is not the first unknown name that waits for it.
    await hashForUnknownNames(counting);
    hashed = 0;
    for (const [tries, name] of ['tess', 'nobody', 'constructor', 'audie', 'nora'].entries()) {
      await signIn(counting, name, 'wrong');
      expect(verified, name).toBe(tries + 1);
      expect(hashed, name).toBe(0);
    }
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

  it('gives a person who was invited and has not come a password', async () => {
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
    [{ id: 'jackledger' }, 'id'],
    [{ id: 'jackledger.service' }, 'id'],
    [{ password: 'eleven-char' }, 'password'],
    [{ password: 'abababababab' }, 'password'],
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
    administrator: { id: 'ada', name: 'Ada', password: 'a first password' },
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
    expect(outcomeValue(await signIn(plant, 'ada', 'a first password')).person.name).toBe('Ada');
    expect(await openNewPlant(plant, opening, 'ABCD-2345')).toMatchObject({ problem: { code: 'ledger-conflict' } });
  });
});
