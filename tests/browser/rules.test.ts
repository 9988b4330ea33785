// The rules in a real Chromium: everybody reads them with their sources; quality changes them and what falls due follows.

import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { rulesAnswer } from '../../src/contract/rules.ts';
import { desk, expectSoundPage, openDesk, signInAs, tabTo, telephone } from './desk-page.ts';
import { launchChromium } from './launch-chromium.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

const quality = 'Inge Marlowsen';
const source = 'project specification 05 12 00, 3.4';

let server: SampleServer;
let browser: Browser;
beforeAll(async () => {
  [server, browser] = await Promise.all([serveSample(), launchChromium()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const begin = (page: Page) => page.getByRole('button', { name: 'Change the rules' });
const save = (page: Page) => page.getByRole('button', { name: 'Put these rules in force' });
const rulesNow = async () => rulesAnswer.parse(await (await fetch(`${server.url}/api/rules`)).json());

async function openEditor(page: Page): Promise<void> {
  await signInAs(page, quality, '/rules');
  await begin(page).click();
}

describe('who reads the rules', () => {
  test.each([desk, telephone])(
    'sees each limit with its value and source at $width px, without signing in',
    async (viewport) => {
      const { page, context } = await openDesk(browser, server.url, viewport);
      await page.goto('/rules');
      const interval = page.locator('[data-rule="intervalMonths"]');
      await interval.waitFor();
      expect(await interval.textContent()).toMatch(/12 months[\s\S]*From memory, look it up[\s\S]*Source: PCI MNL-116/);
      expect(await page.locator('[data-rule="reversibilityPercent"]').textContent()).toContain('Not judged');
      await page.getByText('the licensed engineer decide').waitFor();
      expect(await begin(page).count()).toBe(0);
      await expectSoundPage(page);
      await context.close();
    },
  );

  test('who may not change them is told who may', async () => {
    const { page, context } = await openDesk(browser, server.url, telephone);
    await signInAs(page, 'Marta Quiroga', '/rules');
    await page.getByText('Quality and administrators set the rules.').waitFor();
    expect(await begin(page).count()).toBe(0);
    await context.close();
  });
});

describe('quality', () => {
  test('is told beside each field what is missing, the first one in focus, and keeps what was typed over a reload', async () => {
    const { page, context } = await openDesk(browser, server.url, telephone);
    await openEditor(page);
    await page.getByRole('button', { name: 'Change: Interval' }).click();
    const months = page.getByLabel('New value, months');
    await months.fill('61');
    await save(page).click();
    await page.getByText('61 is not a whole number from 1 to 60.').waitFor();
    await page.getByText('Say where this limit comes from').waitFor();
    await page.getByText('Give a reason of at least five characters.').waitFor();
    expect(await months.evaluate((field) => field === document.activeElement)).toBe(true);
    await expectSoundPage(page);
    await page.reload();
    expect(await months.inputValue()).toBe('61');
    await context.close();
  });

  test('is told where nothing changes, and writes nothing', async () => {
    const { page, context } = await openDesk(browser, server.url, desk);
    await openEditor(page);
    await page.getByText('Nothing yet: these are the rules in force.').waitFor();
    await page.getByLabel('Reason for the change').fill('just to see');
    const before = await rulesNow();
    await save(page).click();
    await page.getByText('There is nothing to put in force').waitFor();
    expect(await rulesNow()).toEqual(before);
    await context.close();
  });

  test('changes a limit by keyboard alone, and takes it back', async () => {
    const { page, context } = await openDesk(browser, server.url, desk);
    await openEditor(page);
    const focused = () => page.evaluate(() => document.activeElement?.id);
    expect(await focused()).toBe('rules-from');
    await tabTo(page, '#rules-open-accuracyPercent');
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('rules-value-accuracyPercent');
    await tabTo(page, '#rules-keep-accuracyPercent');
    await page.keyboard.press('Enter');
    expect(await focused()).toBe('rules-open-accuracyPercent');
    await tabTo(page, '#rules-throw');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Throw them away' }).click();
    expect(await focused()).toBe('rules-begin');
    await context.close();
  });

  test('starts from the rules of six months, sees what changes, and what falls due follows', async () => {
    const { page, context } = await openDesk(browser, server.url, desk);
    await page.goto('/due');
    const overdue = async () => {
      const { pairs } = await (await fetch(`${server.url}/api/due?standing=overdue`)).json();
      return pairs.length as number;
    };
    const overdueBefore = await overdue();
    await openEditor(page);
    await page.getByLabel('Start from').selectOption('six-months-first-use');
    await page.getByRole('button', { name: 'Change: Accuracy' }).click();
    await page.getByLabel('New value, % of force').fill('1.5');
    await page.getByLabel('Where it comes from').fill(source);
    await page.getByLabel('Title of these rules').fill('Project 7, 6 months');
    const change = page.locator('[data-difference="intervalMonths"]');
    expect(await change.textContent()).toMatch(/In force\s*12 months[\s\S]*New\s*6 months/);
    expect(await page.locator('[data-difference="accuracyPercent"]').textContent()).toContain(source);
    const { waitingCalibrations, entry } = await rulesNow();
    expect(waitingCalibrations).toBeGreaterThan(1);
    await page.getByText(`${waitingCalibrations} calibrations wait for a decision.`).waitFor();
    await page.getByLabel('Reason for the change').fill('the specification of project 7');
    await expectSoundPage(page);

    await page.context().setOffline(true);
    await save(page).click();
    await page.getByText('No connection to Jackledger').waitFor();
    await page.context().setOffline(false);
    await save(page).click();
    await page.getByText('"Project 7, 6 months" is in force.').waitFor();
    const now = await rulesNow();
    expect(now).toMatchObject({
      by: 'inge.marlowsen',
      reason: 'the specification of project 7',
      inForce: { intervalMonths: { value: 6 }, accuracyPercent: { value: 1.5, provenance: 'plant', source } },
    });
    expect(now.entry).toBeGreaterThan(entry ?? 0);
    await page.getByText(`${waitingCalibrations} waiting calibrations are to be read again.`).waitFor();
    expect(await page.locator('[data-rule="accuracyPercent"]').textContent()).toContain('Set by this plant');
    expect(await overdue()).toBeGreaterThan(overdueBefore);
    await expectSoundPage(page);
    await page.reload();
    await begin(page).waitFor();
    await context.close();
  });

  test('whose rules were changed by somebody else meanwhile reads them again, with nothing typed lost', async () => {
    const { page, context } = await openDesk(browser, server.url, desk);
    await openEditor(page);
    await page.getByRole('button', { name: 'Change: Cycles' }).click();
    await page.getByLabel('New value, cycles').fill('4');
    await page.getByLabel('Where it comes from').fill(source);
    await page.getByLabel('Title of these rules').fill('Four cycles');
    await page.getByLabel('Reason for the change').fill('more cycles');

    const { rulesHash } = await rulesNow();
    const other = {
      rulesHash,
      from: 'testing-machine-class-1',
      title: 'ISO 7500-1 class 1, 12 months',
      reason: 'class 1',
    };
    const answer = await context.request.post('/api/rules', { data: other });
    expect(answer.status()).toBe(201);
    await save(page).click();
    await page.getByText('Somebody else changed the rules meanwhile.').waitFor();
    await page.getByRole('button', { name: 'Read the rules again' }).click();
    await page.getByText('The rules in force: ISO 7500-1 class 1').waitFor({ state: 'attached' });
    expect(await page.getByLabel('New value, cycles').inputValue()).toBe('4');
    await save(page).click();
    await page.getByText('"Four cycles" is in force.').waitFor();
    expect((await rulesNow()).inForce).toMatchObject({ minimumCycles: { value: 4 }, zeroPercent: { value: 0.1 } });
    await context.close();
  });
});

test.each([960, 1056, 1100, 1152, 1200])(
  'the way between pages fits a screen of %d px, with somebody signed in',
  async (width) => {
    const { page, context } = await openDesk(browser, server.url, { width, height: 800 });
    await signInAs(page, quality, '/rules');
    await begin(page).waitFor();
    await expectSoundPage(page);
    await context.close();
  },
);
