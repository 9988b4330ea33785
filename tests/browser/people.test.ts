// The people of a new plant, in a real Chromium: its administrator adds a technician, who signs in; a crew member cannot add.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { desk, expectSoundPage, openDesk, telephone } from './desk-page.ts';
import { launchChromium } from './launch-chromium.ts';
import { serveNewLedger } from './serve-sample.ts';

const administrator = { name: 'Ana Reyes', id: 'ana.reyes', password: 'a long password' };
const technician = { name: 'Bartholomew Quist', id: 'b.quist', password: 'his first password' };
const crew = { name: 'Celia Obuya', id: 'celia', password: 'her first password' };

let server: Awaited<ReturnType<typeof serveNewLedger>>;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveNewLedger(), launchChromium()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function signIn(page: Page, { id, password }: { id: string; password: string }, back: string): Promise<void> {
  await page.goto(`/sign-in?back=${encodeURIComponent(back)}`);
  await page.getByLabel('Name').fill(id);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
}

async function fillIn(page: Page, person: typeof technician, role: string): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(person.name);
  await page.getByLabel('Sign-in name').fill(person.id);
  await page.getByRole('radio', { name: role }).check();
  await page.getByLabel('First password').fill(person.password);
}

const addButton = (page: Page) => page.getByRole('button', { name: 'Add the person' });

test('after the plant is opened, its administrator is led to the people it still needs', async () => {
  const { page } = await openDesk(browser, server.url, telephone);
  await page.goto('/open');
  await page.getByLabel('Code from the terminal').fill(server.openingCode);
  await page.getByLabel('Name of the plant').fill('Ridgewater Precast');
  await page.getByLabel('Time zone').selectOption('America/Chicago');
  await page.getByLabel('Your name').fill(administrator.name);
  await page.getByLabel('Sign-in name').fill(administrator.id);
  await page.getByLabel('Password').fill(administrator.password);
  await page.getByRole('button', { name: 'Open the plant' }).click();

  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  await page.getByLabel('Name').fill(administrator.id);
  await page.getByLabel('Password').fill(administrator.password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByText('Add a technician and a quality manager').waitFor();
  expect(await page.getByText(`${administrator.id} (you)`).count()).toBe(1);
  await expectSoundPage(page);
});

describe('the administrator', () => {
  let page: Page;

  beforeEach(async () => {
    ({ page } = await openDesk(browser, server.url, telephone));
    await signIn(page, administrator, '/people');
    await addButton(page).waitFor();
  });

  test('is told beside the fields what is missing', async () => {
    await addButton(page).click();
    await page.getByText('Choose a role.').waitFor();
    for (const label of ['Name', 'Sign-in name', 'First password']) {
      const field = page.getByLabel(label, { exact: true });
      expect(await field.getAttribute('aria-invalid'), label).toBe('true');
    }
    await expectSoundPage(page);
  });

  test('adds a technician, who then signs in', async () => {
    await fillIn(page, technician, 'Technician');
    await addButton(page).click();
    await page.getByText(`${technician.name} was added and signs in as ${technician.id}`).waitFor();
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('');
    await page.getByRole('listitem').filter({ hasText: technician.name }).filter({ hasText: technician.id }).waitFor();
    await page.getByText('Add a quality manager').waitFor();

    const { page: hers, context } = await openDesk(browser, server.url, telephone);
    await signIn(hers, technician, '/');
    await hers.getByText('Technician').waitFor();
    await hers.getByRole('button', { name: 'More' }).click();
    await hers.getByRole('link', { name: 'People' }).click();
    await hers.getByText(`Only an administrator adds people. Ask ${administrator.name}.`).waitFor();
    await context.close();
  });

  test('who takes a sign-in name twice is told beside it, and nothing typed is lost', async () => {
    await fillIn(page, { ...technician, name: 'Another Quist' }, 'Crew');
    await addButton(page).click();
    await page.getByText(`There is already a person "${technician.id}".`).waitFor();
    expect(await page.getByLabel('Sign-in name').getAttribute('aria-invalid')).toBe('true');
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Another Quist');
    expect(await page.getByRole('radio', { name: 'Crew' }).isChecked()).toBe(true);
    expect(await page.getByLabel('First password').inputValue()).toBe(technician.password);

    await page.reload();
    expect(await page.getByLabel('Name', { exact: true }).inputValue()).toBe('Another Quist');
    expect(await page.getByLabel('First password').inputValue()).toBe('');
  });

  test('keeps what was typed when nobody answers, and sends it once somebody does', async () => {
    await fillIn(page, crew, 'Crew');
    await page.context().setOffline(true);
    await addButton(page).click();
    await page.getByText('No connection to Jackledger').waitFor();
    expect(await page.getByLabel('Sign-in name').inputValue()).toBe(crew.id);
    await page.context().setOffline(false);
    await addButton(page).click();
    await page.getByText(`${crew.name} was added`).waitFor();
  });

  test('sees the password on demand', async () => {
    await page.getByLabel('First password').fill('open sesame');
    await page.getByLabel('Show what is typed').check();
    expect(await page.getByLabel('First password').getAttribute('type')).toBe('text');
  });
});

describe('a crew member', () => {
  test('sees who works here, cannot add, and is told whom to ask', async () => {
    const { page } = await openDesk(browser, server.url, desk);
    await signIn(page, crew, '/people');
    await page.getByText(`Ask ${administrator.name}.`).waitFor();
    expect(await addButton(page).count()).toBe(0);
    expect(await page.getByText(technician.name).count()).toBe(1);
    await expectSoundPage(page);
  });

  test('is refused by the server too', async () => {
    const { page, context } = await openDesk(browser, server.url, desk);
    await signIn(page, crew, '/people');
    await page.getByText(`Ask ${administrator.name}.`).waitFor();
    const answer = await context.request.post('/api/people', {
      data: { id: 'friend', name: 'A Friend', role: 'administrator', password: 'a long password' },
    });
    expect(answer.status()).toBe(403);
    expect(await answer.json()).toMatchObject({ code: 'role-not-allowed' });
  });
});

test('who is not signed in sees no names of a plant and the way to sign in', async () => {
  const { page } = await openDesk(browser, server.url, telephone);
  await page.goto('/people');
  await page.getByText('A plant shows its people to those who are signed in.').waitFor();
  expect(await page.getByText(administrator.name).count()).toBe(0);
  await page.getByRole('button', { name: 'More' }).click();
  expect(await page.getByRole('navigation').getByRole('link', { name: 'People' }).count()).toBe(0);
  await expectSoundPage(page);
});
