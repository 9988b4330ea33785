// Opening a new ledger in the browser, with the code the server printed.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findViolations } from './find-violations.ts';
import { launchChromium } from './launch-chromium.ts';
import { serveNewLedger } from './serve-sample.ts';

let server: Awaited<ReturnType<typeof serveNewLedger>>;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveNewLedger(), launchChromium()]);
  page = await browser.newPage({ baseURL: server.url, viewport: { width: 360, height: 740 } });
  page.setDefaultTimeout(15_000);
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

async function fillIn(code: string): Promise<void> {
  await page.getByLabel('Code from the terminal').fill(code);
  await page.getByLabel('Name of the plant').fill('Ridgewater Precast');
  await page.getByLabel('Time zone').selectOption('America/Chicago');
  await page.getByLabel('Your name').fill('Ana Reyes');
  await page.getByLabel('Sign-in name').fill('ana.reyes');
  await page.getByLabel('Password').fill('a long password');
  await page.getByRole('button', { name: 'Open the plant' }).click();
}

test('a wrong code is said beside its field, and nothing typed is lost', async () => {
  await page.goto('/ledger');
  await page.getByRole('link', { name: 'Open it with the code from the terminal' }).click();
  await page.getByRole('heading', { name: 'Open the plant' }).waitFor();
  expect(await findViolations(page, { contrast: 'normal' })).toEqual([]);
  await fillIn('NOT-THE-CODE');
  await page.getByText('This is not the code printed in the terminal.').waitFor();
  expect(await page.getByLabel('Code from the terminal').getAttribute('aria-invalid')).toBe('true');
  expect(await page.getByLabel('Name of the plant').inputValue()).toBe('Ridgewater Precast');
});

test('the right code opens it, and its administrator signs in by name', async () => {
  await page.goto('/open');
  await fillIn(server.openingCode);
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  expect(await page.getByText('Sample plant').count()).toBe(0);
  expect(await page.getByLabel('Sign-in name').inputValue()).toBe('ana.reyes');
  await page.getByLabel('Password').fill('a long password');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByText('Administrator').waitFor();
  await page.getByRole('heading', { name: 'People' }).waitFor();
  await page.getByRole('link', { name: 'Set the gauge' }).click();
  await page.getByText('This plant has no pair yet.').waitFor();
  expect(await page.getByRole('link', { name: 'Ridgewater Precast' }).count()).toBe(1);
});

test('a plant that is open is not opened again', async () => {
  await page.goto('/open');
  await page.getByRole('heading', { name: 'The plant is open' }).waitFor();
  expect(await page.getByRole('textbox').count()).toBe(0);
  await page.getByRole('main').getByRole('link', { name: 'Set the gauge' }).click();
  await page.getByText('This plant has no pair yet.').waitFor();
});
