// What the tests at a desk share: a signed-in page on a screen of a chosen width, and what must hold on every page.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';
import { findViolations } from './find-violations.ts';

export const desk = { width: 1280, height: 900 } as const;
export const telephone = { width: 360, height: 740 } as const;

export interface DeskPage {
  readonly context: BrowserContext;
  readonly page: Page;
}

export async function openDesk(
  browser: Browser,
  url: string,
  viewport: { width: number; height: number } = desk,
): Promise<DeskPage> {
  const context = await browser.newContext({ baseURL: url, viewport, locale: 'en-US' });
  await context.grantPermissions(['clipboard-read', 'clipboard-write'], { origin: url });
  const page = await context.newPage();
  page.setDefaultTimeout(15_000);
  return { context, page };
}

/** Signs in on the page itself and comes back to an address. */
export async function signInAs(page: Page, name: string, back: string): Promise<void> {
  await page.goto(`/sign-in?back=${encodeURIComponent(back)}`);
  await page.getByRole('radio', { name }).check();
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL(`**${back}`);
}

/** Presses Tab until an element has the focus, so that it is shown to be reachable without a mouse. */
export async function tabTo(page: Page, selector: string): Promise<void> {
  for (let presses = 0; presses < 150; presses += 1) {
    if (await page.locator(selector).evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`${selector} cannot be reached with the Tab key.`);
}

/** Opens everything behind a verdict, each part by keyboard, and waits until it is there. */
export async function openFigures(page: Page): Promise<void> {
  for (const [part, table] of [
    ['Levels', 'Errors and class at each level'],
    ['Uncertainty', 'Expanded uncertainty at each level'],
    ['Degrees compared', 'Each degree against the one below'],
    ['The curve in numbers', 'Covariance of the coefficients'],
    ['Residuals, point by point', 'Residuals, point by point'],
  ] as const) {
    await page.locator('summary', { hasText: part }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('table', { name: table }).waitFor();
  }
}

export async function expectSoundPage(page: Page): Promise<void> {
  await page.locator('h1').waitFor();
  expect(await findViolations(page, { contrast: 'normal' })).toEqual([]);
  const { needed, given } = await page.evaluate(() => ({
    needed: document.documentElement.scrollWidth,
    given: document.documentElement.clientWidth,
  }));
  expect(needed, 'the page scrolls sideways').toBeLessThanOrEqual(given);
}
