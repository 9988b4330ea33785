import Papa from 'papaparse';
import { beforeEach, describe, expect, it } from 'vitest';
import { dueAnswer } from '../../src/contract/due.ts';
import { heldEntryAnswer, ledgerAnswer, verificationAnswer } from '../../src/contract/ledger.ts';
import { peopleAnswer, plantAnswer, sessionAnswer, strandListAnswer } from '../../src/contract/plant.ts';
import { problemAnswer } from '../../src/contract/problem.ts';
import type { App } from '../../src/http/app.ts';
import { writeShortHead } from '../../src/ledger/short-head.ts';
import { emptyPlantAtWork, type PlantAtWork, password, plantAtWork } from '../plant-at-work.ts';
import { signInAs, testApp } from './test-app.ts';

let work: PlantAtWork;
let app: App;
beforeEach(async () => {
  work = await plantAtWork();
  app = await testApp(work);
});

describe('the plant', () => {
  it('says its name, its day and the head of its ledger', async () => {
    const plant = plantAnswer.parse((await app.inject('/api/plant')).json());
    expect(plant).toMatchObject({ name: 'Test Plant', sample: false, opened: true, today: '2026-06-01' });
    expect(plant.head).toEqual(work.plant.state.head);
    expect(plant.shortHead).toBe(writeShortHead(plant.head));
  });

  it('lists what falls due within so many days, and the same as CSV', async () => {
    const due = async (query: string) => dueAnswer.parse((await app.inject(`/api/due?${query}`)).json()).pairs;
    expect(await due('within=60d')).toEqual([]);
    expect((await due('within=275d')).map(({ tag }) => tag)).toEqual(['P-1']);
    expect((await due('within=60&on=2027-01-01')).map(({ tag, daysLeft }) => [tag, daysLeft])).toEqual([['P-1', 60]]);
    expect(await due('standing=overdue')).toEqual([]);
    const csv = await app.inject('/api/due.csv?on=2027-01-01&within=60d');
    expect(csv.headers['content-type']).toBe('text/csv; charset=utf-8');
    expect(csv.body.split('\n')[1]).toBe(
      'P-1,J-1,G-1,due-soon,2026-03-02,2027-03-02,60,0,"Calibration ends on 2027-03-02, in 60 days."',
    );
  });

  it('ends the CSV with the head of the ledger, as a comment that readers of CSV pass over', async () => {
    const csv = (await app.inject('/api/due.csv')).body;
    const { data, errors } = Papa.parse<Record<string, string>>(csv, {
      header: true,
      comments: '#',
      skipEmptyLines: true,
    });
    expect(errors).toEqual([]);
    expect(data.map(({ pair, due }) => [pair, due])).toEqual([['P-1', '2027-03-02']]);
    const head = /^# ledger head: (\S+)$/.exec(csv.trimEnd().split('\n').at(-1) ?? '')?.[1];
    expect((await app.inject(`/api/ledger/heads/${head}`)).json()).toMatchObject(work.plant.state.head);
  });

  it.each([
    ['within=soon', 'within'],
    ['standing=fine', 'standing'],
    ['on=2027-02-30', 'on'],
  ])('refuses the filter %s', async (query, where) => {
    expect((await app.inject(`/api/due?${query}`)).json()).toMatchObject({ status: 400, code: 'field-invalid', where });
  });

  it('lists the strand table', async () => {
    const { strands } = strandListAnswer.parse((await app.inject('/api/strands')).json());
    expect(strands.find(({ designation }) => designation === '1/2 in 270')?.breakingLoad).toEqual({
      lbf: 41300,
      kN: 183.7,
    });
  });

  it('shows and verifies the ledger', async () => {
    const page = ledgerAnswer.parse((await app.inject('/api/ledger')).json());
    expect(page.entries[0]?.seq).toBe(page.total);
    const middle = ledgerAnswer.parse((await app.inject('/api/ledger?after=3&limit=2')).json());
    expect(middle.entries.map(({ seq }) => seq)).toEqual([5, 4]);
    const verified = verificationAnswer.parse((await app.inject('/api/ledger/verification')).json());
    const { head } = work.plant.state;
    expect(verified).toEqual({
      verified: true,
      entries: page.total,
      approvals: verified.approvals,
      files: 0,
      head,
      shortHead: writeShortHead(head),
      notes: [],
    });
    expect(verified.approvals).toBe(page.entries.filter(({ kind }) => kind === 'calibration-approved/2').length);
  });

  it('says whether it holds the entry that the head on a paper names', async () => {
    const { head } = work.plant.state;
    const at = work.plant.state.newestAt;
    const onPaper = writeShortHead(head);
    const found = await app.inject(`/api/ledger/heads/${onPaper}`);
    expect(found.statusCode).toBe(200);
    expect(heldEntryAnswer.parse(found.json())).toEqual({ ...head, at });
    const typed = encodeURIComponent(onPaper.toUpperCase().replaceAll('-', ' '));
    expect((await app.inject(`/api/ledger/heads/${typed}`)).json()).toEqual({ ...head, at });
    expect((await app.inject(`/api/ledger/heads/${head.seq}-${head.hash}`)).statusCode).toBe(200);

    const earlier = await app.inject(`/api/ledger/heads/${onPaper.replace(/^\d+/, '3')}`);
    expect(problemAnswer.parse(earlier.json())).toMatchObject({
      status: 404,
      code: 'head-not-found',
      where: 'entry 3',
    });
    const later = await app.inject(`/api/ledger/heads/${onPaper.replace(/^\d+/, '900')}`);
    expect(problemAnswer.parse(later.json())).toMatchObject({ code: 'head-not-found', given: onPaper });
    const none = await app.inject('/api/ledger/heads/4f3a');
    expect(problemAnswer.parse(none.json())).toMatchObject({ status: 400, code: 'field-invalid', where: 'head' });
  });
});

describe('signing in', () => {
  it('opens a session with a cookie no script can read, and ends it', async () => {
    const answer = await app.inject({ method: 'POST', url: '/api/session', payload: { person: 'tess', password } });
    expect(answer.headers['set-cookie']).toMatch(/HttpOnly/);
    expect(answer.headers['set-cookie']).toMatch(/SameSite=Strict/);
    const headers = await signInAs(app, 'tess');
    const who = async () => sessionAnswer.parse((await app.inject({ url: '/api/session', headers })).json()).person;
    expect(await who()).toMatchObject({ id: 'tess', role: 'technician' });
    await app.inject({ method: 'DELETE', url: '/api/session', headers });
    expect(await who()).toBeNull();
  });

  it('ends a session after a shift', async () => {
    const headers = await signInAs(app, 'tess');
    work.setDay('2026-06-02');
    expect((await app.inject({ url: '/api/session', headers })).json()).toEqual({ person: null });
  });

  it('says the same of an unknown name and a wrong password', async () => {
    const attempt = async (person: string, word: string) =>
      (await app.inject({ method: 'POST', url: '/api/session', payload: { person, password: word } })).json();
    const wrong = await attempt('tess', 'no');
    expect(wrong).toMatchObject({ status: 401, code: 'sign-in-refused' });
    expect(await attempt('nobody', 'no')).toEqual(wrong);
  });

  it('lists people only to those who signed in, and adds them only for the administrator', async () => {
    expect(peopleAnswer.parse((await app.inject('/api/people')).json())).toEqual({ people: [], samplePassword: null });
    const administrator = await signInAs(app, 'ada');
    const person = { id: 'newt', name: 'Newt Newcomer', role: 'technician', password: 'long-enough-words' };
    const add = (headers: Record<string, string>, payload: object) =>
      app.inject({ method: 'POST', url: '/api/people', headers, payload });
    expect((await add(await signInAs(app, 'quinn'), person)).statusCode).toBe(403);
    expect((await add(administrator, { ...person, password: 'short' })).json()).toMatchObject({ where: 'password' });
    const retried = { ...administrator, 'idempotency-key': 'newt' };
    expect((await add(retried, person)).statusCode).toBe(201);
    expect((await add(retried, person)).statusCode).toBe(201);
    expect((await add(administrator, person)).json()).toMatchObject({ status: 409, code: 'tag-taken' });
    const listed = peopleAnswer.parse((await app.inject({ url: '/api/people', headers: administrator })).json());
    expect(listed.people.map(({ id }) => id)).toContain('newt');
    const ledger = (await app.inject('/api/ledger')).body;
    expect(ledger).not.toContain('long-enough-words');
  });
});

describe('opening a new ledger', () => {
  const opening = {
    code: 'ABCDEF1234',
    plantName: 'New Plant',
    timeZone: 'America/Mexico_City',
    administrator: { id: 'root.person', name: 'Root Person', password: 'long-enough-words' },
  };

  it('takes the one-time code once', async () => {
    const fresh = await testApp(await emptyPlantAtWork(), 'ABCDEF1234');
    const open = (payload: object) => fresh.inject({ method: 'POST', url: '/api/opening', payload });
    expect((await fresh.inject('/api/plant')).json()).toMatchObject({ opened: false, name: '' });
    expect((await open({ ...opening, code: 'WRONG' })).json()).toMatchObject({ status: 401, code: 'sign-in-refused' });
    expect((await open({ ...opening, timeZone: 'Mars/Olympus' })).json()).toMatchObject({ where: 'timeZone' });
    expect((await open(opening)).statusCode).toBe(201);
    expect((await fresh.inject('/api/plant')).json()).toMatchObject({ opened: true, name: 'New Plant' });
    expect((await open(opening)).json()).toMatchObject({ status: 409, code: 'ledger-conflict' });
  });

  it('has no code once the plant is open', async () => {
    const answer = await app.inject({ method: 'POST', url: '/api/opening', payload: { ...opening, code: '' } });
    expect(answer.statusCode).toBe(400);
    expect((await app.inject({ method: 'POST', url: '/api/opening', payload: opening })).statusCode).toBe(401);
  });
});

describe('requests that cannot be', () => {
  it('a body that is not JSON is 400, another media type too, nothing is 404, in problem+json', async () => {
    const send = (payload: string, type: string) =>
      app.inject({ method: 'POST', url: '/api/fit', headers: { 'content-type': type }, payload });
    expect((await send('{"sheet":', 'application/json')).json()).toMatchObject({ status: 400, code: 'body-not-json' });
    expect((await send('a=b', 'application/x-www-form-urlencoded')).json()).toMatchObject({
      status: 400,
      code: 'body-not-json',
    });
    const nothing = await app.inject('/api/nothing');
    expect(nothing.json()).toMatchObject({ status: 404, code: 'not-found' });
    expect(nothing.headers['content-type']).toContain('application/problem+json');
  });

  it('a body of 50 MB is 413', async () => {
    const payload = JSON.stringify({ text: 'x'.repeat(50_000_000) });
    const answer = await app.inject({
      method: 'POST',
      url: '/api/run-sheets/reading',
      headers: { 'content-type': 'application/json' },
      payload,
    });
    expect(answer.json()).toMatchObject({ status: 413, code: 'body-too-large' });
  });

  it('a page of another site cannot act', async () => {
    const headers = { ...(await signInAs(app, 'tess')), origin: 'http://elsewhere.example' };
    const answer = await app.inject({
      method: 'POST',
      url: '/api/pumps',
      headers,
      payload: { tag: 'PU-9', serial: '1' },
    });
    expect(answer.json()).toMatchObject({ status: 403, code: 'other-site' });
    expect(work.plant.state.equipment.has('PU-9')).toBe(false);
  });
});

describe('GET /api/openapi.json', () => {
  it('is OpenAPI 3.1 and names every route of the interface', async () => {
    const document = (await app.inject('/api/openapi.json')).json();
    expect(document.openapi).toMatch(/^3\.1\./);
    const paths = Object.keys(document.paths);
    for (const path of [
      '/api/pairs/{tag}/lookup',
      '/api/calibrations',
      '/api/fit',
      '/api/due',
      '/api/pairs/{tag}/releases',
    ]) {
      expect(paths).toContain(path);
    }
    const lookup = document.paths['/api/pairs/{tag}/lookup'].get;
    expect(lookup.parameters.map((parameter: { name: string }) => parameter.name)).toContain('force');
    expect(JSON.stringify(lookup.responses['200'])).toContain('readingToSet');
  });
});
