// What saves the crew taps: the label of a pair, the camera, the beds of a device, the steps of a pull.

import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { findViolations } from './find-violations.ts';
import { launchChromium } from './launch-chromium.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

const telephone = { width: 360, height: 740 };
let server: SampleServer;
let browser: Browser;
let context: BrowserContext;
let page: Page;

beforeAll(async () => {
  [server, browser] = await Promise.all([serveSample(), launchChromium()]);
});

afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

beforeEach(async () => {
  context = await browser.newContext({ baseURL: server.url, viewport: telephone, hasTouch: true });
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
});

afterEach(() => context.close());

const reading = () => page.getByRole('region', { name: 'Set the gauge to' }).locator('strong');
const plate = () => page.getByRole('button', { name: /^Jack/ });
const key = (name: string) => page.getByRole('button', { name, exact: true });

/** A camera whose picture is a blank canvas, and a code reader that finds in it what it is told, one text after another. */
async function standInCamera(...texts: readonly string[]): Promise<void> {
  await page.addInitScript((found) => {
    const left = [...found];
    Object.assign(window, {
      BarcodeDetector: class {
        detect = async () => (left.length === 0 ? [] : [{ rawValue: left.shift() }]);
      },
    });
    navigator.mediaDevices.getUserMedia = async () => {
      const canvas = document.createElement('canvas');
      canvas.getContext('2d')?.fillRect(0, 0, 10, 10);
      return canvas.captureStream(5);
    };
  }, texts);
}

describe('the label of a pair', () => {
  test('opens the pair cold by its path in capitals, whatever the case, and the pull of before', async () => {
    await page.goto('/?pair=P-01&strand=1/2+in+270&fraction=0.75');
    await reading().waitFor();
    await page.goto('/P/P-02');
    await page.getByRole('button', { name: /J-02/ }).waitFor();
    await page.goto('/p/p-01');
    await page.getByRole('button', { name: /J-01/ }).waitFor();
    await page.waitForURL((url) => url.pathname === '/' && url.searchParams.get('pair')?.toLowerCase() === 'p-01');
    await page.goto('/');
    await page.getByRole('button', { name: /J-01/ }).waitFor();
  });

  test('of no pair says so and leaves the choice', async () => {
    await page.goto('/P/P-99');
    await page.getByText('There is no pair P-99 in this plant. Choose another.').waitFor();
    await page.getByRole('button', { name: 'Choose the pair' }).waitFor();
  });

  test('is read by the camera; a code of something else is named and looked past', async () => {
    const other = 'https://elsewhere.example/menu';
    await standInCamera(...Array.from({ length: 8 }, () => other), 'HTTPS://PLANT.EXAMPLE/P/P-02');
    await page.goto('/?pair=P-01&force=31+kip');
    await plate().click();
    await key('Scan the label').click();
    await page.getByText(`This code names no pair of this plant: ${other}`).waitFor();
    await page.getByRole('dialog').waitFor({ state: 'hidden' });
    await page.getByRole('button', { name: /J-02/ }).waitFor();
  });

  test('cannot be read without leave to use the camera, which is said, and the list stays', async () => {
    await standInCamera();
    await page.addInitScript(() => {
      navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
    });
    await page.goto('/?pair=P-01&force=31+kip');
    await plate().click();
    await key('Scan the label').click();
    await page.getByText('The browser does not let this page use the camera.').waitFor();
    expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
    await page.getByRole('button', { name: 'J-02 + G-02' }).click();
    await page.getByRole('button', { name: /J-02/ }).waitFor();
  });

  test('has no key where the browser cannot read codes', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await plate().click();
    await page.getByRole('button', { name: 'J-02 + G-02' }).waitFor();
    expect(await key('Scan the label').count()).toBe(0);
  });
});

describe('the beds of a device', () => {
  test('keep pair and pull under a name, and bring both back in one key', async () => {
    await page.goto('/?pair=P-02&strand=0.6+in+270&fraction=0.7');
    await reading().waitFor();
    const before = await reading().textContent();
    await page.getByText('Keep this for a bed').click();
    await page.getByLabel('Name of the bed').fill('Bed 3');
    await key('Keep pair and pull').click();
    await page.getByText('Kept for Bed 3.').waitFor();
    expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);

    await page.goto('/?pair=P-01&force=31+kip');
    await page.getByRole('button', { name: /31 kip/ }).click();
    await key('A bed').click();
    const bed = page.getByRole('button', { name: /^Bed 3/ });
    expect((await bed.boundingBox())?.height).toBeGreaterThanOrEqual(76);
    expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
    await bed.click();
    await expect.poll(() => reading().textContent()).toBe(before);
    await page.getByRole('button', { name: /J-02/ }).waitFor();
  });

  test('are forgotten one by one', async () => {
    await page.addInitScript(() =>
      localStorage.setItem('jackledger.set-the-gauge.beds', '[["Bed 1","pair=P-01"],["Bed 2","pair=P-02"]]'),
    );
    await page.goto('/?pair=P-01&force=31+kip');
    await page.getByRole('button', { name: /31 kip/ }).click();
    await key('A bed').click();
    await key('Forget Bed 1').click();
    await page.getByRole('button', { name: /^Bed 2/ }).waitFor();
    expect(await page.getByRole('button', { name: /^Bed 1/ }).count()).toBe(0);
  });
});

test('the steps of a pull stand in a table, as many as are asked for', async () => {
  await page.goto('/?pair=P-01&force=31+kip');
  await page.getByText('Steps of the pull').click();
  const row = (name: string) => page.getByRole('row', { name: new RegExp(`^${name}`) });
  await row('Step 3').waitFor();
  expect(await row('Step').count()).toBe(3);
  const final = await row('Final').getByRole('cell').last().textContent();
  expect(final).toBe(await reading().textContent());
  await key('2').click();
  await expect.poll(() => row('Step').count()).toBe(1);
  expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(telephone.width);
});

test('the script of the crew’s page is at most 150 kB gzipped, with what its keys open', async () => {
  const scripts = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (pathname.endsWith('.js') && pathname !== '/service-worker.js') scripts.set(pathname, response.body());
  });
  await page.goto('/?pair=P-01&force=31+kip');
  await reading().waitFor();
  await plate().click();
  await page.getByRole('button', { name: 'J-02 + G-02' }).click();
  await page.getByRole('button', { name: /31 kip/ }).click();
  await key('A strand').waitFor();
  const bodies = await Promise.all(scripts.values());
  const pressed = bodies.map((body) => gzipSync(body, { level: 9 }).length).reduce((sum, size) => sum + size, 0);
  expect([...scripts.keys()].some((path) => path.includes('/crew-'))).toBe(true);
  expect(pressed).toBeGreaterThan(50_000);
  expect(pressed).toBeLessThanOrEqual(150_000);
});
