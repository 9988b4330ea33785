// An interim check recorded on the page of a pair, and what it does to its standing.

import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { desk, expectSoundPage, openDesk, signInAs, telephone } from './desk-page.ts';
import { launchChromium } from './launch-chromium.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

let server: SampleServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveSample(), launchChromium()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

test('a technician records a check that lies outside; the pair drifts, and the crew reads why', async () => {
  const { page, context } = await openDesk(browser, server.url, desk);
  await signInAs(page, 'Marta Quiroga', '/equipment/P-01');
  await page.getByRole('heading', { name: 'Interim checks' }).waitFor();
  await page.getByRole('button', { name: 'Record a check' }).click();
  await page.getByRole('button', { name: 'Record the check' }).click();
  await page.getByText('Fill force and reading of at least one row.').waitFor();
  const cell = page.getByLabel('Load cell', { exact: true });
  await expect.poll(() => cell.locator('option').count()).toBeGreaterThan(1);
  await cell.selectOption('LC-1');
  await page.getByLabel('Force 1, kip').fill('29');
  await page.getByLabel('Reading 1, psi').fill('4425');
  await expectSoundPage(page);
  await page.reload();
  await page.getByRole('button', { name: 'Record a check' }).click();
  expect(await page.getByLabel('Reading 1, psi').inputValue()).toBe('4425');
  await page.getByRole('button', { name: 'Record the check' }).click();
  await page.getByRole('row', { name: /LC-1 .* outside$/ }).waitFor();
  await page.getByText('The check of').first().waitFor();
  await expectSoundPage(page);
  await page.setViewportSize(telephone);
  await expectSoundPage(page);
  await page.goto('/?pair=P-01&force=31+kip');
  await page.getByRole('button', { name: /Drifting/ }).waitFor();
  await page.getByText('found the curve').first().waitFor();
  expect(await page.getByRole('region', { name: 'Set the gauge to' }).count()).toBe(1);
  await context.close();
});
