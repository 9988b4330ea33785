// A bed recorded at the bed: pulls judged while they are typed, a stop with its reason, the network away, two devices.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { findViolations } from './find-violations.ts';
import { launchChromium } from './launch-chromium.ts';
import { type PassedOn, passOn } from './pass-on.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

const telephone = { width: 360, height: 740 };
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
  context = await browser.newContext({ baseURL: front.url, viewport: telephone, hasTouch: true });
  page = await newPage(context);
});

afterEach(async () => {
  await context.close();
  await front.stop();
});

async function newPage(on: BrowserContext): Promise<Page> {
  const opened = await on.newPage();
  opened.setDefaultTimeout(15_000);
  return opened;
}

const key = (name: string, on = page) => on.getByRole('button', { name, exact: true });

async function signIn(on = page): Promise<void> {
  await on.goto('/sign-in?back=%2Fstressing');
  await on.getByRole('radio', { name: /Crew/ }).first().check();
  await key('Sign in', on).click();
  await on.waitForURL((url) => url.pathname === '/stressing');
}

/** A bed of two strands of 1/2 in 270 on 400 ft: 4425 psi and 27.28 in. */
async function begin(bed: string, on = page): Promise<void> {
  await on.goto('/stressing');
  await key('Record a bed', on).click();
  await on.getByLabel('Bed', { exact: true }).fill(bed);
  await on.getByLabel('Pair', { exact: true }).selectOption('P-01');
  await on.getByLabel('Strand', { exact: true }).selectOption('1/2 in 270');
  await on.getByLabel('Length chuck to chuck, ft').fill('400');
  await on.getByLabel('Strands in each row, from the bottom').fill('2');
  await key('Begin pulling', on).click();
  await on.getByRole('heading', { name: 'Pull 1: strand 1' }).waitFor();
}

async function type(text: string, on = page): Promise<void> {
  for (const sign of text) await key(sign === '.' ? 'Point' : sign, on).click();
}

/** Readings as planned, and an elongation. */
async function enterPull(elongation: string, on = page): Promise<void> {
  for (const _reading of ['preload', 'final']) {
    await key('As planned', on).click();
    await key('Next', on).click();
  }
  await type(elongation, on);
}

async function pullBoth(on = page): Promise<void> {
  await enterPull('27.3', on);
  await on.getByText('within 5 %').waitFor();
  await key('Keep this pull, go on', on).click();
  await on.getByRole('heading', { name: 'Pull 2: strand 2' }).waitFor();
  await enterPull('27.1', on);
  await key('Keep this pull, go on', on).click();
  await on.getByText('All strands are pulled.').waitFor();
}

async function recordsOf(bed: string): Promise<readonly { number: string; pulls: number }[]> {
  const query = new URLSearchParams({ bed });
  return (await (await fetch(`${server.url}/api/stressing-records?${query}`)).json()).records;
}

const line = (text: string, on = page) => on.getByRole('listitem').filter({ hasText: text });

async function expectSound(): Promise<void> {
  expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(telephone.width);
}

describe('a bed', () => {
  test('is recorded whole, with a re-pull beside the first, and stands in the ledger', async () => {
    await signIn();
    await begin('Bed whole');
    await expectSound();
    expect((await key('5').boundingBox())?.height).toBeGreaterThanOrEqual(76);

    await enterPull('30');
    await key('Next').click();
    await page.getByText(/^Stop. \u22127\.\d %: out of 5 %$/).waitFor();
    expect(await key('Keep this pull, go on').isDisabled()).toBe(true);
    await key('Strand slipped at a chuck or splice').click();
    await expectSound();
    await key('Keep it and pull again').click();
    await page.getByRole('heading', { name: 'Pull 2: strand 1 again, after pull 1' }).waitFor();
    await enterPull('27.25');
    await key('Keep this pull, go on').click();
    await page.getByRole('heading', { name: 'Pull 3: strand 2' }).waitFor();
    await enterPull('27.1');
    await key('Keep this pull, go on').click();
    await page.getByText('2 of 2 strands pulled').waitFor();
    await expectSound();
    await key('Finish and record').click();

    await line('Bed whole').getByText('Saved in the ledger').waitFor();
    await expectSound();
    await line('Bed whole').getByRole('link').click();
    await page.getByRole('heading', { name: /^Record S-/ }).waitFor();
    await page.getByRole('cell', { name: /Strand slipped at a chuck or splice/ }).waitFor();
    await page.getByRole('row', { name: /again, after pull 1/ }).waitFor();
    await expectSound();
    const csv = await page.getByRole('link', { name: 'As CSV' }).getAttribute('href');
    expect(await (await fetch(`${server.url}${csv}`)).text()).toMatch(/slip/);
    expect(await recordsOf('Bed whole')).toMatchObject([{ pulls: 3 }]);
  });

  test('says beside its field what is wrong, and begins with no pair that is stopped', async () => {
    await page.goto('/stressing');
    await key('Record a bed').click();
    await key('Begin pulling').click();
    await page.getByText('Not yet: This is needed.').waitFor();
    await page.getByLabel('Bed', { exact: true }).fill('Bed stopped');
    await page.getByLabel('Pair', { exact: true }).selectOption('P-05');
    await page.getByLabel('Strand', { exact: true }).selectOption('1/2 in 270');
    await page.getByLabel('Length chuck to chuck, ft').fill('400');
    await page.getByLabel('Strands in each row, from the bottom').fill('two');
    await page.getByText('"two" is no list of rows.').first().waitFor();
    await page.getByLabel('Strands in each row, from the bottom').fill('2');
    await key('Begin pulling').click();
    await page.getByRole('alert').getByText('The calibration was valid until').waitFor();
    expect(await page.getByRole('heading', { name: /^Pull 1/ }).count()).toBe(0);
    await expectSound();
  });

  test('is kept at every key: reloaded in the middle of a pull it goes on where it was', async () => {
    await begin('Bed reloaded');
    await enterPull('27');
    await page.reload();
    await page.getByRole('heading', { name: 'Pull 1: strand 1' }).waitFor();
    expect(await page.getByLabel('Elongation, in').inputValue()).toBe('27');
    expect(await page.getByLabel('Final reading, psi').inputValue()).toBe('4425');
    await page.goto('/stressing');
    await line('Bed reloaded').getByRole('link', { name: 'Go on' }).waitFor();
    await line('Bed reloaded').getByRole('button', { name: 'Throw away' }).click();
    await key('Yes, throw it away').click();
    await line('Bed reloaded').waitFor({ state: 'detached' });
  });

  test('is left alone by a new version, which waits for a person', async () => {
    await page.goto('/stressing');
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.reload();
    await begin('Bed and version');
    await enterPull('27');
    front.changeServiceWorker('\n// another build\n');
    await page.evaluate(async () => {
      await (await navigator.serviceWorker.getRegistration())?.update();
    });
    await page.getByText('New version ready.').waitFor({ state: 'attached' });
    expect(await page.getByLabel('Elongation, in').inputValue()).toBe('27');
    await key('Reload').click();
    await page.getByRole('heading', { name: 'Pull 1: strand 1' }).waitFor();
    expect(await page.getByLabel('Elongation, in').inputValue()).toBe('27');
  });

  test('shows how its figures were reckoned, with the correction an engineer decided on', async () => {
    await page.goto('/stressing');
    await key('Record a bed').click();
    await page.getByLabel('Bed', { exact: true }).fill('Bed corrected');
    await page.getByLabel('Pair', { exact: true }).selectOption('P-01');
    await page.getByLabel('Strand', { exact: true }).selectOption('1/2 in 270');
    await page.getByLabel('Part, in %').fill('70');
    await page.getByLabel('Length chuck to chuck, ft').fill('400');
    await page.getByLabel('Strands in each row, from the bottom').fill('2');
    await page.getByText('Corrections, where the engineer').click();
    await page.getByLabel('Live end seating, in').fill('0.25');
    await key('Begin pulling').click();
    await page.getByRole('alert').getByText('it needs the name').waitFor();
    await page.getByLabel('Engineer who decided').fill('E. Falk');
    await page.getByText('Worked step by step').click();
    await page.getByText('P_over = s n A E / L').waitFor();
    await page.getByText('dL = (P - P0) L / (n A E)').waitFor();
    await expectSound();
  });

  test('whose preload lies below the calibrated range still shows its plan, in the units of the pair', async () => {
    await page.goto('/stressing');
    await key('Record a bed').click();
    await page.getByLabel('Bed', { exact: true }).fill('Bed metric');
    await page.getByLabel('Pair', { exact: true }).selectOption('P-04');
    await page.getByLabel('Strand', { exact: true }).selectOption('1/2 in 270');
    await page.getByLabel('Forces in').selectOption('kN');
    await page.getByLabel('Length in', { exact: true }).selectOption('m');
    await page.getByLabel('Elongation in', { exact: true }).selectOption('mm');
    await page.getByLabel('Length chuck to chuck, m').fill('120');
    await page.getByLabel('Preload of the jack, kN').fill('5');
    await page.getByLabel('Strands in each row, from the bottom').fill('2');
    await key('Begin pulling').click();
    const plan = page.getByRole('region', { name: 'Plan of each pull' });
    await plan.getByText('below the calibrated range').waitFor();
    await plan.getByText('mm', { exact: true }).waitFor();
    expect(await key('As planned').count()).toBe(0);
    await page.getByLabel('Preload read, bar').fill('12');
    expect(await page.getByText('The preload read is not the planned').count()).toBe(0);
    await expectSound();
  });

  test('is recorded by keyboard alone', async () => {
    await begin('Bed keyboard');
    await page.getByLabel('Preload read, psi').focus();
    await page.keyboard.type('900');
    await page.keyboard.press('Tab');
    await page.keyboard.type('4425');
    await page.keyboard.press('Tab');
    await page.keyboard.type('27.2');
    await page.keyboard.press('Enter');
    await page.getByText('within 5 %').waitFor();
    await key('Keep this pull, go on').focus();
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Pull 2: strand 2' }).waitFor();
  });
});

describe('without network, after one visit', () => {
  async function visitOnce(): Promise<void> {
    const taken = page.waitForResponse((response) => response.url().includes('/api/snapshot'));
    await signIn();
    await (await taken).finished();
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await page.getByRole('heading', { name: 'Recorded beds' }).waitFor();
  }

  test('a bed is recorded, kept through the death of the page, and sent once the server is there', async () => {
    await visitOnce();
    await context.setOffline(true);
    await begin('Bed offline');
    await pullBoth();
    await key('Finish and record').click();
    await line('Bed offline').getByText('Saved on this device').waitFor();
    await page.getByText('The server does not answer.').first().waitFor();
    await expectSound();
    await page.close();

    page = await newPage(context);
    await page.goto('/stressing');
    await line('Bed offline').getByText('Saved on this device').waitFor();
    expect(await recordsOf('Bed offline')).toEqual([]);
    await context.setOffline(false);
    await line('Bed offline').getByText('Saved in the ledger').waitFor();
    expect(await recordsOf('Bed offline')).toHaveLength(1);
    await page.reload();
    await line('Bed offline').getByText('Saved in the ledger').waitFor();
    expect(await recordsOf('Bed offline')).toHaveLength(1);
  });

  test('what waits is sent from whatever page is opened next', async () => {
    await visitOnce();
    await context.setOffline(true);
    await begin('Bed elsewhere');
    await pullBoth();
    await key('Finish and record').click();
    await line('Bed elsewhere').getByText('Saved on this device').waitFor();
    await page.close();
    await context.setOffline(false);
    page = await newPage(context);
    await page.goto('/?pair=P-01&force=31+kip');
    await expect.poll(async () => (await recordsOf('Bed elsewhere')).length, { timeout: 15_000 }).toBe(1);
  });

  test('an answer that was lost leaves one record', async () => {
    await visitOnce();
    await begin('Bed twice');
    await pullBoth();
    let isLost = true;
    await page.route('**/api/stressing-records', async (route) => {
      if (route.request().method() !== 'POST' || !isLost) return route.continue();
      isLost = false;
      await route.fetch();
      await route.abort();
    });
    await key('Finish and record').click();
    await line('Bed twice').getByText('Saved on this device').waitFor();
    await expect.poll(async () => (await recordsOf('Bed twice')).length, { timeout: 15_000 }).toBe(1);
    await page.getByText('The server does not answer.').first().waitFor();
    await key('Send now').click();
    await line('Bed twice').getByText('Saved in the ledger').waitFor();
    expect(await recordsOf('Bed twice')).toHaveLength(1);
  });
});

describe('two devices', () => {
  test('record a bed each at the same time, and each sees its own', async () => {
    await signIn();
    const other = await browser.newContext({ baseURL: front.url, viewport: telephone, hasTouch: true });
    const its = await newPage(other);
    await signIn(its);
    await begin('Bed A');
    await begin('Bed B', its);
    await pullBoth();
    await pullBoth(its);
    await Promise.all([key('Finish and record').click(), key('Finish and record', its).click()]);
    await line('Bed A').getByText('Saved in the ledger').waitFor();
    await line('Bed B', its).getByText('Saved in the ledger').waitFor();
    expect(await line('Bed B').count()).toBe(0);
    expect([await recordsOf('Bed A'), await recordsOf('Bed B')].map(({ length }) => length)).toEqual([1, 1]);
    await other.close();
  });

  test('a record the server rejects says why, and is opened again to be mended', async () => {
    await signIn();
    await begin('Bed rejected');
    await pullBoth();
    await page.route('**/api/stressing-records', async (route) => {
      if (route.request().method() !== 'POST') return route.continue();
      const body = route.request().postDataJSON();
      await route.continue({ postData: JSON.stringify({ ...body, calibrationEntry: 1 }) });
    });
    await key('Finish and record').click();
    await line('Bed rejected').getByText('Rejected', { exact: true }).waitFor();
    await line('Bed rejected').getByText('Entry 1 approved no calibration').waitFor();
    await expectSound();
    await page.unroute('**/api/stressing-records');
    await key('Open it again to mend it').click();
    await page.getByRole('heading', { name: 'Bed rejected' }).waitFor();
    await key('Finish and record').click();
    await line('Bed rejected').getByText('Saved in the ledger').waitFor();
    expect(await recordsOf('Bed rejected')).toHaveLength(1);
  });

  test('who is not signed in is told so, and loses nothing', async () => {
    await begin('Bed unsigned');
    await pullBoth();
    await key('Finish and record').click();
    await page.getByText('Nobody is signed in on this device.').waitFor();
    await line('Bed unsigned').getByText('Saved on this device').waitFor();
    await signIn();
    await line('Bed unsigned').getByText('Saved in the ledger').waitFor();
  });
});
