// The page Set the gauge after one visit: server stopped, network off, clock moved, a new version waiting.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { findViolations } from './find-violations.ts';
import { launchChromium } from './launch-chromium.ts';
import { type PassedOn, passOn } from './pass-on.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

const telephone = { width: 360, height: 740 };
const msPerDay = 86_400_000;
const ofP01 = '/?pair=P-01&strand=1/2+in+270&fraction=0.75';

let server: SampleServer;
let browser: Browser;
let front: PassedOn;
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
  front = await passOn(server.url);
  context = await browser.newContext({ baseURL: front.url, viewport: telephone });
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
});

afterEach(async () => {
  await context.close();
  await front.stop();
});

const reading = () => page.getByRole('region', { name: 'Set the gauge to' }).locator('strong');
const main = () => page.getByRole('main');
const away = () => page.getByRole('status', { name: 'Server away' });

/** One visit: the pages are installed and what look-ups rest on is kept. */
async function visitOnce(address = ofP01): Promise<void> {
  await page.goto(address);
  await reading().waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

/** Server stopped, network off, the page closed; then a new one, as after the telephone was switched off. */
async function startCold(address: string, options: { readonly days?: number } = {}): Promise<void> {
  await page.close();
  await front.stop();
  await context.setOffline(true);
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
  if (options.days !== undefined) await page.clock.setFixedTime(Date.now() + options.days * msPerDay);
  await page.goto(address);
}

async function expectText(place: ReturnType<Page['getByRole']>, text: string): Promise<void> {
  await expect
    .poll(async () => (await place.textContent())?.replaceAll(/\s/g, ' '), { timeout: 15_000 })
    .toContain(text);
}

describe('without server and network, after one visit', () => {
  test('the page opens cold and answers as before, with as of when and that the server is away', async () => {
    await visitOnce();
    const before = await reading().textContent();
    await startCold(ofP01);
    await reading().waitFor();
    expect(await reading().textContent()).toBe(before);
    await expectText(away(), 'last heard');
    await expectText(main(), 'This device answers by itself; a hold placed since is not known here');
    const box = await reading().boundingBox();
    // The bar of pages at the foot is 78 high.
    expect((box?.y ?? telephone.height) + (box?.height ?? 0)).toBeLessThanOrEqual(telephone.height - 78);
    await expectText(main(), 'As of');
    await expectText(page.getByRole('banner'), 'Sample plant');
    expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(telephone.width);
  });

  test('another pair and strand are chosen by hand and answered', async () => {
    const { stdout } = await server.run('lookup', 'P-02', '--strand', '0.6 in 270', '--fraction', '0.7', '--json');
    const { readingToSet } = JSON.parse(stdout) as { readingToSet: { value: number } };
    await visitOnce();
    await startCold(ofP01);
    await page.getByRole('button', { name: /^Jack/ }).click();
    await page.getByRole('button', { name: 'J-02 + G-02' }).click();
    await page.getByRole('button', { name: /Strand/ }).click();
    await page.getByRole('button', { name: '0.6 in 270', exact: true }).click();
    await page.getByRole('button', { name: '70 %', exact: true }).click();
    await page.getByRole('button', { name: /^Show the reading/ }).click();
    await expect
      .poll(async () => Number((await reading().textContent())?.replaceAll('\u202f', '')))
      .toBe(readingToSet.value);
  });

  test('a calibration that ended since is withheld by the day of the device', async () => {
    const { pairs } = await (await page.request.get('/api/pairs')).json();
    const soon: { tag: string; daysLeft: number; dueDate: string } = pairs
      .filter((line: { standing: string }) => line.standing === 'due-soon')
      .sort((one: { daysLeft: number }, other: { daysLeft: number }) => one.daysLeft - other.daysLeft)[0];
    await visitOnce();
    await startCold(`/?pair=${soon.tag}&force=140+kN`, { days: soon.daysLeft - 1 });
    await reading().waitFor();
    await expectText(main(), `The calibration ends on ${soon.dueDate}`);
    await page.clock.setFixedTime(Date.now() + (soon.daysLeft + 1) * msPerDay);
    await page.reload();
    await expectText(
      page.getByRole('region', { name: 'Reading withheld' }),
      `The calibration was valid until ${soon.dueDate}`,
    );
    expect(await reading().count()).toBe(0);
  });

  test('a clock set back gives no number', async () => {
    await visitOnce();
    await startCold(ofP01, { days: -1 });
    await expectText(page.getByRole('region', { name: 'No reading' }), 'Set the clock of this device right');
    expect(await reading().count()).toBe(0);
  });

  test('four days on it is a caution, fifteen days on a stop that nobody can release here', async () => {
    await visitOnce();
    await startCold(ofP01, { days: 4 });
    await reading().waitFor();
    await expectText(main(), 'last heard from the server 4 days ago');
    await page.clock.setFixedTime(Date.now() + 15 * msPerDay);
    await page.reload();
    const withheld = page.getByRole('region', { name: 'Reading withheld' });
    await expectText(withheld, 'last heard from the server 15 days ago');
    await expectText(withheld, 'No release helps here');
    expect(await withheld.getByRole('link').count()).toBe(0);
    expect(await reading().count()).toBe(0);
  });
});

describe('with the server', () => {
  test('a clock set wrong by two days is not trusted, and trusted again once it is right', async () => {
    await visitOnce();
    await page.clock.setFixedTime(Date.now() + 2 * msPerDay);
    await page.reload();
    await expectText(page.getByRole('region', { name: 'No reading' }), 'Set the clock of this device right');
    await page.clock.setFixedTime(Date.now());
    await page.reload();
    await reading().waitFor();
  });

  test('a look-up asks nothing of the server, and stands there within a tenth of a second', async () => {
    await visitOnce('/?pair=P-01&force=31+kip');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.getByRole('button', { name: /^Force 31 kip/ }).click();
    await page.getByLabel('Force at the jack').fill('30');
    const took = await page.evaluate(async () => {
      const key = [...document.querySelectorAll('button')].find(
        ({ textContent }) => textContent === 'Show the reading',
      );
      const start = performance.now();
      key?.click();
      while (
        document.querySelector('[aria-label="Set the gauge to"]') === null ||
        document.querySelector('dialog') !== null
      )
        await new Promise(requestAnimationFrame);
      return performance.now() - start;
    });
    process.stdout.write(`from the last tap to the reading: ${took.toFixed(0)} ms\n`);
    await page.getByRole('button', { name: /^Force 30 kip/ }).waitFor();
    expect(asked.filter((url) => url.includes('/api/'))).toEqual([]);
  });

  test('a new version waits for a person and leaves what is being typed alone', async () => {
    await visitOnce('/?pair=P-01&force=31+kip');
    await page.reload();
    await page.getByRole('button', { name: /^Force 31 kip/ }).click();
    await page.getByLabel('Force at the jack').fill('29.5');
    front.changeServiceWorker('\n// another build\n');
    await page.evaluate(async () => {
      Object.assign(window, { isOldPage: true });
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    await page.getByText('New version ready.').waitFor({ state: 'attached' });
    expect(await page.getByLabel('Force at the jack').inputValue()).toBe('29.5');
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('INPUT');
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Reload' }).click();
    await expect.poll(() => page.evaluate(() => 'isOldPage' in window)).toBe(false);
    await reading().waitFor();
    expect(await page.getByText('New version ready.').count()).toBe(0);
  });
});
