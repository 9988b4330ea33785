// The crew at the page Set the gauge, in a real Chromium, against the real server.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { findViolations } from './find-violations.ts';
import { launchChromium } from './launch-chromium.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

/** A telephone held upright, as it stands beside the jack. */
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
  context = await browser.newContext({ baseURL: server.url, viewport: telephone });
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
});

afterEach(async () => {
  await context.close();
});

const reading = () => page.getByRole('region', { name: 'Set the gauge to' }).locator('strong');
const overdue = '/?pair=P-05&force=140+kN';

async function shownReading(): Promise<number> {
  const text = await reading().textContent();
  return Number((text ?? '').replaceAll('\u202f', ''));
}

async function printedLookup(...words: readonly string[]) {
  const { stdout } = await server.run('lookup', ...words, '--json');
  return JSON.parse(stdout) as { readingToSet: { value: number; unit: string } | null; dueDate: string };
}

async function signIn(name: string): Promise<void> {
  await page.getByRole('radio', { name }).check();
  await page.getByRole('button', { name: 'Sign in' }).click();
}

describe('the reading to set', () => {
  test('for a pair and a strand picked by hand is the one the command prints', async () => {
    await page.goto('/');
    await page.getByRole('button', { name: 'Choose the pair' }).click();
    await page.getByRole('button', { name: 'J-01 + G-01' }).click();
    await page.getByRole('button', { name: 'Choose the strand or force' }).click();
    await page.getByRole('button', { name: '1/2 in 270', exact: true }).click();
    await page.getByRole('button', { name: '75 %', exact: true }).click();
    await page.getByRole('button', { name: /^Show the reading/ }).click();

    const printed = await printedLookup('P-01', '--strand', '1/2 in 270', '--fraction', '0.75');
    await reading().waitFor();
    expect(await shownReading()).toBe(printed.readingToSet?.value);
    const main = page.getByRole('main');
    await expectText(main.getByRole('img', { name: /Face of gauge G-01/ }), 'psi');
    await expectText(main, printed.dueDate);
    await expectText(main, 'As of');
  });

  test('for a force typed with its unit is the one the command prints', async () => {
    await page.goto('/?pair=P-09');
    await page.getByRole('button', { name: 'Choose the strand or force' }).click();
    await page.getByRole('button', { name: 'A force' }).click();
    await page.getByLabel('Force at the jack').fill('30 kip');
    await page.getByRole('button', { name: 'Show the reading' }).click();

    const printed = await printedLookup('P-09', '--force', '30 kip');
    await reading().waitFor();
    expect(await shownReading()).toBe(printed.readingToSet?.value);
  });

  test('the unit shown for a force chosen before is the unit sent', async () => {
    await page.goto('/?pair=P-12&force=60+metric+ton');
    await page.getByRole('button', { name: /^Force/ }).click();
    expect(await page.getByLabel('Force at the jack').inputValue()).toBe('60');
    const unit = await page.getByLabel('Unit').inputValue();
    expect(unit).toBe('tf');
    await page.getByLabel('Force at the jack').fill('61');
    await page.getByRole('button', { name: 'Show the reading' }).click();
    await expect.poll(() => new URL(page.url()).searchParams.get('force')).toBe(`61 ${unit}`);
  });

  test('for a force alone says that no ceiling was checked, and with a strand named checks it', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await expectText(page.getByRole('main'), 'stress ceiling not checked');
    await page.getByRole('button', { name: /^Force/ }).click();
    await page.getByLabel('Strand, to check its stress ceiling').selectOption('1/2 in 270');
    await page.getByRole('button', { name: 'Show the reading' }).click();
    await page.getByRole('button', { name: /^Force, on 1\/2 in 270/ }).waitFor();
    await reading().waitFor();
    const main = page.getByRole('main');
    await expect.poll(() => main.textContent()).not.toContain('stress ceiling not checked');
    await page.goto('/?pair=P-01&force=40+kip&strand=1/2+in+270');
    await expectText(page.getByRole('region', { name: 'No reading' }), 'above the stress ceiling');
  });

  test.each([
    { width: 740, height: 360 },
    { width: 640, height: 450 },
  ])('is seen without scrolling on a screen of $width by $height', async (size) => {
    await page.setViewportSize(size);
    await page.goto('/?pair=P-01&strand=1/2+in+270&fraction=0.75');
    await reading().waitFor();
    const box = await reading().boundingBox();
    expect((box?.y ?? size.height) + (box?.height ?? 0)).toBeLessThanOrEqual(size.height);
  });

  test('of a jack that pulls several strands says how many', async () => {
    await page.goto('/?pair=P-13&strand=1/2+in+270&fraction=0.75');
    await expectText(page.getByRole('main'), 'pulls 12 strands');
  });

  test('stands large enough to be read from two metres, on keys a glove can hit', async () => {
    await page.goto('/?pair=P-01&strand=1/2+in+270&fraction=0.75');
    const size = await reading().evaluate((element) => Number.parseFloat(getComputedStyle(element).fontSize));
    expect(size).toBeGreaterThanOrEqual(72);
    for (const key of [page.getByRole('button', { name: /^Jack/ }), page.getByRole('button', { name: /Strand/ })]) {
      expect((await key.boundingBox())?.height).toBeGreaterThanOrEqual(76);
    }
  });

  test('is asked for anew for the pair and strand this device had last', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await page.getByRole('button', { name: /^Jack/ }).click();
    await page.getByRole('button', { name: 'J-02 + G-02' }).click();
    await reading().waitFor();
    const before = await shownReading();
    await page.goto('/');
    await reading().waitFor();
    expect(await shownReading()).toBe(before);
    await expectText(page.getByRole('button', { name: /^Jack/ }), 'G-02');
  });
});

describe('without a number', () => {
  test('a pair on hold is refused with its reason and what to do', async () => {
    await page.goto('/?pair=P-07&force=31+kip');
    const refusal = page.getByRole('region', { name: 'No reading' });
    await expectText(refusal, 'On hold');
    await expectText(refusal, 'Use another pair');
    expect(await reading().count()).toBe(0);
  });

  test('a force outside the calibrated range is refused, not extrapolated', async () => {
    await page.goto('/?pair=P-01&force=0.2+kip');
    await expectText(page.getByRole('region', { name: 'No reading' }), 'nothing is extrapolated');
    expect(await reading().count()).toBe(0);
  });

  test('a ton is refused in words, for there are three of them', async () => {
    await page.goto('/?pair=P-01');
    await page.getByRole('button', { name: 'Choose the strand or force' }).click();
    await page.getByRole('button', { name: 'A force' }).click();
    await page.getByLabel('Force at the jack').fill('31 ton');
    await page.getByRole('button', { name: 'Show the reading' }).click();
    const field = page.getByLabel('Force at the jack');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await expectText(page.getByRole('dialog'), '"ton" has several meanings');
    expect(await field.inputValue()).toBe('31 ton');
  });

  test('an overdue pair gives it only after a release by name, and the ledger keeps name and reason', async () => {
    await page.goto(overdue);
    await expectText(page.getByRole('region', { name: 'Reading withheld' }), 'valid until');
    expect(await reading().count()).toBe(0);

    await page.getByRole('link', { name: 'Sign in to release it' }).click();
    await signIn('Wendell Abara');
    await page.getByRole('button', { name: 'Release and show the reading' }).click();
    await expectText(page.getByRole('main'), 'A reason of at least five letters.');

    await page.getByLabel('Why').fill('Bed 2 is half pulled; the other pair is at the laboratory');
    await page.getByRole('button', { name: 'Release and show the reading' }).click();
    await reading().waitFor();
    await expectText(page.getByRole('main'), 'Released by Wendell Abara');

    const { entries } = await (await page.request.get('/api/ledger?after=0')).json();
    const released = entries.filter(({ kind }: { kind: string }) => kind === 'reading-released/1');
    expect(released).toHaveLength(1);
    expect(released[0].summary).toContain('Bed 2 is half pulled');
    expect(released[0].summary).toContain(`${await shownReading()} bar`);
  });

  test('a reason half typed outlasts a lost connection and a reload', async () => {
    await page.goto('/sign-in?back=%2F%3Fpair%3DP-13%26force%3D300%2Bkip');
    await signIn('Wendell Abara');
    await page.getByLabel('Why').fill('The other pair is');
    await context.setOffline(true);
    await page.evaluate(() => window.dispatchEvent(new Event('visibilitychange')));
    await page.getByRole('status', { name: 'Server away' }).waitFor();
    await context.setOffline(false);
    await expect.poll(() => page.getByLabel('Why').inputValue()).toBe('The other pair is');
    await page.reload();
    await expect.poll(() => page.getByLabel('Why').inputValue()).toBe('The other pair is');
  });

  test('a released reading does not follow to another force', async () => {
    await page.goto('/sign-in?back=%2F%3Fpair%3DP-13%26force%3D300%2Bkip');
    await signIn('Wendell Abara');
    await page.getByLabel('Why').fill('The other pair leaks');
    await page.getByRole('button', { name: 'Release and show the reading' }).click();
    await reading().waitFor();
    await page.getByRole('button', { name: /^Force 300 kip/ }).click();
    await page.getByLabel('Force at the jack').fill('290');
    await page.getByRole('button', { name: 'Show the reading' }).click();
    await page.getByRole('region', { name: 'Reading withheld' }).waitFor();
    expect(await reading().count()).toBe(0);
  });

  test('a released reading takes the focus, and leaves the force behind a reading withheld', async () => {
    await page.goto('/sign-in?back=%2F%3Fpair%3DP-05%26force%3D140%2BkN');
    await signIn('Wendell Abara');
    await expectText(page.getByRole('region', { name: 'Reading withheld' }), 'Released by');
    expect(await page.getByRole('main').getByRole('textbox').count()).toBe(1);
    await page.getByLabel('Why').fill('The bed is half pulled');
    await page.getByRole('button', { name: 'Release and show the reading' }).click();
    await reading().waitFor();
    await expect.poll(focusedLabel).toBe('Set the gauge to');
    await page.getByText('Force behind a reading').click();
    await page.getByLabel('Reading on the gauge').fill('200');
    await page.getByRole('button', { name: 'Show the force' }).click();
    await expectText(forceBehindReading(), 'not available while a stop stands');
  });

  test('a pair that does not exist is said in words', async () => {
    await page.goto('/?pair=P-99&force=31+kip');
    await expectText(page.getByRole('main'), 'There is no pair P-99');
  });
});

describe('without a connection', () => {
  test('the number stays, with since when the server is away and what that leaves unknown', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await reading().waitFor();
    const before = await shownReading();
    const away = page.getByRole('status', { name: 'Server away' });
    expect(await away.count()).toBe(0);

    await context.setOffline(true);
    await expectText(away, 'last heard just now');
    await expectText(page.getByRole('main'), 'a hold placed since is not known here');
    expect(await shownReading()).toBe(before);

    await context.setOffline(false);
    await away.waitFor({ state: 'detached' });
    expect(await shownReading()).toBe(before);
  });

  test('a page not loaded before says that the server is away, and the way back is open', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await reading().waitFor();
    await context.setOffline(true);
    await page.getByRole('button', { name: 'More' }).click();
    await page.getByRole('link', { name: 'Ledger' }).click();
    await page.getByRole('heading', { name: 'The server is away' }).waitFor();
    await context.setOffline(false);
    await page.getByRole('link', { name: 'Set the gauge' }).click();
    await page.getByRole('button', { name: 'Choose the pair' }).waitFor();
  });
});

describe('the force behind a reading', () => {
  test('is not asked for below zero', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await page.getByText('Force behind a reading').click();
    const field = page.getByLabel('Reading on the gauge, in psi');
    await field.fill('-3');
    await page.getByRole('button', { name: 'Show the force' }).click();
    await expectText(forceBehindReading(), 'A reading above zero.');
    expect(await field.evaluate((element) => element === document.activeElement)).toBe(true);
    expect(await page.getByRole('region', { name: 'No reading' }).count()).toBe(0);
  });

  test('is the force the reading was looked up for', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    await reading().waitFor();
    const set = await shownReading();
    await page.getByText('Force behind a reading').click();
    await page.getByLabel('Reading on the gauge, in psi').fill(String(set));
    await page.getByRole('button', { name: 'Show the force' }).click();
    const { stdout } = await server.run('lookup', 'P-01', '--reading', `${set} psi`, '--json');
    const { force } = JSON.parse(stdout) as { force: { value: number; unit: string } };
    await expectText(forceBehindReading(), `${force.value.toPrecision(4)} kip`);
  });
});

describe('whoever it is', () => {
  test('the keyboard alone leads from nothing to the number', async () => {
    await page.goto('/');
    await page.getByRole('button', { name: 'Choose the pair' }).waitFor();
    await pressUntilFocused('Choose the pair');
    await page.keyboard.press('Enter');
    await pressUntilFocused('J-01 + G-01');
    await page.keyboard.press('Enter');
    await pressUntilFocused('Choose the strand or force');
    await page.keyboard.press('Enter');
    await pressUntilFocused('0.6 in 270');
    await page.keyboard.press('Space');
    await pressUntilFocused('Another part, in %');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('60');
    await page.keyboard.press('Enter');
    await reading().waitFor();
    const printed = await printedLookup('P-01', '--strand', '0.6 in 270', '--fraction', '0.6');
    expect(await shownReading()).toBe(printed.readingToSet?.value);
  });

  test('Escape leaves a choice as it was and the focus where it came from', async () => {
    await page.goto('/?pair=P-01&force=31+kip');
    const change = page.getByRole('button', { name: /^Jack/ });
    await change.press('Enter');
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await change.evaluate((element) => element === document.activeElement)).toBe(true);
  });

  test('a first choice leaves the focus on what was chosen', async () => {
    await page.goto('/');
    await page.getByRole('button', { name: 'Choose the pair' }).click();
    await page.getByRole('button', { name: 'J-01 + G-01' }).click();
    await expect.poll(focusedLabel).toMatch(/^Jack J-01/);
  });

  test('a wrong password is said, and the focus stands in its field', async () => {
    await page.goto('/sign-in');
    await page.getByRole('radio', { name: 'Wendell Abara' }).check();
    await page.getByLabel('Password').fill('not the password');
    await page.getByRole('button', { name: 'Sign in' }).click();
    await expectText(page.getByRole('alert'), 'Not done');
    await expect.poll(focusedLabel).toBe('Password');
  });

  test('the page starts without an error in the console', async () => {
    const errors: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') errors.push(message.text());
    });
    await page.goto('/?pair=P-01&force=31+kip');
    await reading().waitFor();
    expect(errors).toEqual([]);
  });

  test.each([
    '/',
    '/?pair=P-01&strand=1/2+in+270&fraction=0.75',
    '/?pair=P-07&force=31+kip',
    overdue,
    '/sign-in',
    '/ledger',
  ])('nothing of %s is wider than a screen of 320', async (address) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(address);
    await settle();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  });

  test.each([
    '/',
    '/?pair=P-01&strand=1/2+in+270&fraction=0.75',
    '/?pair=P-06&force=140+kN',
    '/?pair=P-09&force=31+kip',
    overdue,
  ])('axe finds nothing on %s, at a contrast of 7 to 1', async (address) => {
    await page.goto(address);
    await settle();
    expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
  });

  test('axe finds nothing where pair and strand are chosen', async () => {
    await page.goto('/?pair=P-01&strand=1/2+in+270&fraction=0.75');
    for (const [key, inside] of [
      [/^Jack/, 'J-02 + G-02'],
      [/Strand/, '0.6 in 270'],
    ] as const) {
      await page.getByRole('button', { name: key }).click();
      await page.getByRole('button', { name: inside }).first().waitFor();
      expect(await findViolations(page, { contrast: 'enhanced' })).toEqual([]);
      await page.keyboard.press('Escape');
    }
  });

  test.each(['/sign-in', '/ledger', '/open', '/nowhere'])('axe finds nothing on %s', async (address) => {
    await page.goto(address);
    await settle();
    expect(await findViolations(page, { contrast: 'normal' })).toEqual([]);
  });
});

describe('the ledger', () => {
  test('verifies at the press of a key, in words', async () => {
    await page.goto('/ledger');
    await page.getByRole('button', { name: 'Verify the ledger' }).click();
    await expectText(page.getByRole('main'), /The ledger verifies\. All \d+ entries are as they were written/);
  });
});

/** The part of the page that gives the force behind a reading. */
const forceBehindReading = () => page.getByRole('group').filter({ hasText: 'Force behind a reading' });

/** Waits until `text` stands in the place; fails with what stands there instead. */
async function expectText(place: ReturnType<Page['getByRole']>, text: string | RegExp): Promise<void> {
  await expect
    .poll(() => place.textContent(), { timeout: 15_000 })
    .toMatch(
      typeof text === 'string'
        ? new RegExp(text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll(' ', '\\s'))
        : text,
    );
}

/** The name of what has the focus: its label, else its text. */
function focusedLabel(): Promise<string> {
  return page.evaluate(() => {
    const element = document.activeElement;
    if (element instanceof HTMLInputElement) return element.labels?.[0]?.textContent ?? '';
    return element?.getAttribute('aria-label') ?? element?.textContent ?? '';
  });
}

/** Waits until nothing is waited for any more. */
async function settle(): Promise<void> {
  await page.waitForLoadState('networkidle');
  await page.getByRole('main').waitFor();
}

/** Presses Tab until the control with this name has the focus; gives up after more controls than any page has. */
async function pressUntilFocused(name: string): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      if (element instanceof HTMLInputElement) return element.labels?.[0]?.textContent ?? '';
      return element instanceof HTMLButtonElement ? (element.textContent ?? '') : '';
    });
    if (focused.includes(name)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached "${name}".`);
}
