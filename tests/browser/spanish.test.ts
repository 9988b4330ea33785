// The pages in Spanish: chosen on the device, on every page, offline too, and by the person who signs in.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { desk, expectSoundPage, telephone } from './desk-page.ts';
import { launchChromium } from './launch-chromium.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

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
  context = await browser.newContext({ baseURL: server.url, viewport: telephone, locale: 'en-US' });
  page = await context.newPage();
  page.setDefaultTimeout(15_000);
});

afterEach(() => context.close());

const key = (name: string) => page.getByRole('button', { name, exact: true });
const lang = () => page.evaluate(() => document.documentElement.lang);
const spanish = () => page.addInitScript(() => localStorage.setItem('jackledger.language', 'es-MX'));

/** Words of the English pages that stand on no Spanish one. */
const english =
  /\b(Waiting|Never above|Preload|Choose|Save|Show|Settings|The gauge|Sign in|Submit|Approve|Overdue|Ready|Due soon|Calibrated on|Page|Cancel|Close|Read again)\b/;

async function expectNoEnglish(): Promise<void> {
  const text = (await page.locator('body').ariaSnapshot()).replaceAll(/\s+/g, ' ');
  const found = english.exec(text);
  expect(found === null ? '' : text.slice(Math.max(0, found.index - 60), found.index + 60)).toBe('');
}

test('is chosen by a key on the page, keeps what was chosen, and says the same number', async () => {
  await page.goto('/?pair=P-01&strand=1/2+in+270&fraction=0.75');
  const reading = await page.getByRole('region', { name: 'Set the gauge to' }).locator('strong').textContent();
  await key('Español').click();
  const region = page.getByRole('region', { name: 'Fijar el manómetro en' });
  await region.waitFor();
  expect(await region.locator('strong').textContent()).toBe(reading);
  expect(await lang()).toBe('es-MX');
  await expectNoEnglish();
  await expectSoundPage(page);
  await page.reload();
  await region.waitFor();
  await key('English').click();
  await page.getByRole('region', { name: 'Set the gauge to' }).waitFor();
  expect(await lang()).toBe('en-US');
});

test('is taken from the browser where nobody chose', async () => {
  const other = await browser.newContext({ baseURL: server.url, locale: 'es-MX' });
  const its = await other.newPage();
  await its.goto('/');
  await its.getByRole('link', { name: 'Fijar la lectura' }).first().waitFor();
  await other.close();
});

test('is that of the person who signs in, where they chose it on this device', async () => {
  const signIn = async (name: RegExp) => {
    await page.goto('/sign-in?back=%2Faccount');
    await page.getByRole('radio', { name }).check();
    await page.getByRole('button', { name: /^(Sign in|Entrar)$/ }).click();
    await page.waitForURL((url) => url.pathname === '/account');
  };
  await signIn(/Marta Quiroga/);
  await key('Español').click();
  await page.getByRole('heading', { name: 'Su cuenta' }).waitFor();
  await page.getByRole('button', { name: 'Salir', exact: true }).click();
  await key('English').click();
  await page.getByRole('link', { name: 'Sign in' }).first().waitFor();
  await signIn(/Owen Halvorsby/);
  await page.getByRole('heading', { name: 'Your account' }).waitFor();
  await page.getByRole('button', { name: 'Sign out', exact: true }).click();
  await signIn(/Marta Quiroga/);
  await page.getByRole('heading', { name: 'Su cuenta' }).waitFor();
});

describe('every warning a crew may meet is spoken', () => {
  test.each([
    ['/?pair=P-05&force=140+kN', 'La calibración estuvo vigente hasta'],
    ['/?pair=P-01&force=300+kip', 'queda fuera del intervalo calibrado'],
    ['/?pair=P-01&force=31+kip', 'No se nombró ningún torón'],
  ])('%s', async (address, sentence) => {
    await spanish();
    await page.goto(address);
    await page.getByText(sentence).first().waitFor();
    await expectNoEnglish();
    await expectSoundPage(page);
  });
});

test('is spoken without network after one visit', async () => {
  await spanish();
  await page.goto('/?pair=P-01&force=31+kip');
  await page.getByRole('region', { name: 'Fijar el manómetro en' }).waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await context.setOffline(true);
  await page.goto('/?pair=P-02&force=31+kip');
  await page.getByRole('status', { name: 'Servidor ausente' }).waitFor();
  await page.goto('/stressing');
  await page.getByRole('heading', { name: 'Tensado' }).waitFor();
});

describe('every page is sound in Spanish', () => {
  const pages = [
    ['/due', 'Vencimientos'],
    ['/calibrate', 'Calibrar'],
    ['/review', 'Revisar'],
    ['/stressing', 'Tensado'],
    ['/equipment', 'Equipo'],
    ['/equipment/P-01', 'Par P-01'],
    ['/part/J-01', 'Gato J-01'],
    ['/in-doubt', 'En duda'],
    ['/ledger', 'Bitácora'],
    ['/rules', 'Reglas'],
    ['/people', 'Personas'],
    ['/account', 'Su cuenta'],
  ] as const;
  test.each([
    ['telephone', telephone],
    ['desk', desk],
  ] as const)('on the screen of a %s', async (_screen, viewport) => {
    await spanish();
    await page.setViewportSize(viewport);
    await page.goto('/sign-in?back=%2F');
    await page.getByRole('radio', { name: /Inge Marlowsen/ }).check();
    await key('Entrar').click();
    await page.waitForURL((url) => url.pathname === '/');
    for (const [address, title] of pages) {
      await page.goto(address);
      await page.getByRole('heading', { name: title, level: 1 }).waitFor();
      await page.waitForLoadState('networkidle');
      await expectSoundPage(page);
    }
  });
});
