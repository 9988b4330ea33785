// The people of a new plant, in a real Chromium: its administrator adds a technician, who signs in; a crew member cannot add.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { oneTimePassword, readBase32, timeStepOf } from '../../src/service/one-time-password.ts';
import { hmacSha1 } from '../../src/storage/hmac-sha1.ts';
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
  await page.getByRole('radio', { name: 'With a password that you type' }).check();
  await page.getByLabel('First password').fill(person.password);
}

const addButton = (page: Page) => page.getByRole('button', { name: /(Add|Invite) the person/ });

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
    await page.getByRole('radio', { name: 'With a password that you type' }).check();
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
    await hers.getByText('Technician', { exact: true }).waitFor();
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
    await page.getByRole('radio', { name: 'With a password that you type' }).check();
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
    await page.getByRole('radio', { name: 'With a password that you type' }).check();
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

const quality = { name: 'Quentin Abara', id: 'q.abara', password: 'chosen by himself' };

describe('an invited person', () => {
  test('sets the password with the one-time code, and signs in with it', async () => {
    const { page } = await openDesk(browser, server.url, telephone);
    await signIn(page, administrator, '/people');
    await page.getByLabel('Name', { exact: true }).fill(quality.name);
    await page.getByLabel('Sign-in name').fill(quality.id);
    await page.getByRole('radio', { name: 'Quality' }).check();
    await addButton(page).click();
    await page.getByText(`One-time code for ${quality.name}`).waitFor();
    const shown = (await page.getByText(/^([A-Z2-7]{4}-){3}[A-Z2-7]{4}$/).textContent()) ?? '';
    await expectSoundPage(page);

    const { page: his, context } = await openDesk(browser, server.url, telephone);
    await his.goto('/sign-in');
    await his.getByRole('link', { name: 'I have an invitation' }).click();
    await his.getByLabel('Sign-in name').fill(quality.id);
    await his.getByLabel('One-time code').fill('AAAA-AAAA-AAAA-AAAA');
    await his.getByLabel('New password').fill('short');
    await his.getByRole('button', { name: 'Set the password' }).click();
    await his.getByText('A password of at least 12 characters.').waitFor();
    await his.getByLabel('New password').fill(quality.password);
    await his.getByRole('button', { name: 'Set the password' }).click();
    await his.getByText('the code is wrong').waitFor();
    await expectSoundPage(his);
    await his.getByLabel('One-time code').fill(shown.toLowerCase().replaceAll('-', ' '));
    await his.getByRole('button', { name: 'Set the password' }).click();
    await his.getByRole('heading', { name: 'Sign in' }).waitFor();
    await his.getByLabel('Password').fill(quality.password);
    await his.getByRole('button', { name: 'Sign in' }).click();
    await his.getByText('Quality').first().waitFor();
    await context.close();
  });

  test('adds a second factor, which signing in then asks for', async () => {
    const { page, context } = await openDesk(browser, server.url, desk);
    await signIn(page, quality, '/account');
    await page.getByRole('heading', { name: 'Your account' }).waitFor();
    const second = page.getByRole('region', { name: 'Second factor' });
    await second.getByLabel('Password now').fill(quality.password);
    await second.getByRole('button', { name: 'Set up a second factor' }).click();
    const secret = ((await second.getByText(/^([A-Z2-7]{4} ){7}[A-Z2-7]{4}$/).textContent()) ?? '').replaceAll(' ', '');
    const digits = (aside = 0) =>
      oneTimePassword(readBase32(secret), timeStepOf(new Date().toISOString()) + aside, hmacSha1);
    await second.getByLabel('Six digits').fill(digits(-1));
    await second.getByRole('button', { name: 'Take it into use' }).click();
    await second.getByText('in use from the next sign-in').waitFor();
    await expectSoundPage(page);
    await context.close();

    const { page: again } = await openDesk(browser, server.url, telephone);
    await signIn(again, quality, '/account');
    await again.getByLabel('Six digits of your authenticator').fill(digits());
    await again.getByRole('button', { name: 'Sign in' }).click();
    await again.getByText('A second factor is in use.').waitFor();
  });

  test('is signed out at once when barred, and not let in', async () => {
    const { page: hers } = await openDesk(browser, server.url, telephone);
    await signIn(hers, crew, '/people');
    await hers.getByText(`Ask ${administrator.name}.`).waitFor();

    const { page } = await openDesk(browser, server.url, desk);
    await signIn(page, administrator, '/people');
    await page.getByRole('button', { name: `Bar: ${crew.name}` }).click();
    await page.getByLabel('Reason').fill('Left the plant');
    await page.getByRole('button', { name: 'Bar', exact: true }).click();
    await page.getByText('Left the plant').waitFor();
    await expectSoundPage(page);

    await hers.reload();
    await hers.getByText('A plant shows its people to those who are signed in.').waitFor();
    await signIn(hers, crew, '/people');
    await hers.getByText('The name or the password is wrong.').waitFor();
  });
});

describe('a device of the crew', () => {
  test('gets its pass by a one-time code, looks up and does nothing else, until it is barred', async () => {
    const { page } = await openDesk(browser, server.url, desk);
    await signIn(page, administrator, '/people');
    await page.getByLabel('What it is').fill('Telephone at bed 3');
    await page.getByLabel('Name of the device').fill('bed-3');
    await page.getByRole('button', { name: 'Admit the device' }).click();
    await page.getByText('One-time code for Telephone at bed 3').waitFor();
    const shown = (await page.getByText(/^([A-Z2-7]{4}-){3}[A-Z2-7]{4}$/).textContent()) ?? '';

    const { page: bed, context } = await openDesk(browser, server.url, telephone);
    await bed.goto('/');
    await bed.getByText('Sign in first.').first().waitFor();
    await bed.goto('/device?device=bed-3');
    await bed.getByLabel('One-time code').fill(shown);
    await bed.getByRole('button', { name: 'Take the pass' }).click();
    await bed.getByText('This plant has no pair yet.').waitFor();
    await expectSoundPage(bed);
    for (const address of ['/api/ledger', '/api/calibrations', '/api/devices', '/api/rules']) {
      expect((await context.request.get(address)).status(), address).toBe(401);
    }
    expect((await context.request.get('/api/due')).status()).toBe(200);

    await page.getByRole('button', { name: 'Bar: Telephone at bed 3' }).click();
    await page.getByLabel('Reason').fill('Lost on the yard');
    await page.getByRole('button', { name: 'Bar', exact: true }).click();
    await page.getByText('Lost on the yard').waitFor();
    await bed.goto('/');
    await bed.getByText('Sign in first.').first().waitFor();
  });
});
