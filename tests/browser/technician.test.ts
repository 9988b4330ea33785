// The technician: registers parts, types a run sheet by keyboard alone, loses nothing, submits once.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { calibrationListAnswer } from '../../src/contract/calibration.ts';
import { desk, expectSoundPage, openDesk, openFigures, signInAs, tabTo, telephone } from './desk-page.ts';
import { launchChromium } from './launch-chromium.ts';
import { block, fillSheet, isKept, paste, startSheet, today } from './run-sheet-page.ts';
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
  ({ context, page } = await openDesk(browser, server.url));
});

afterEach(async () => {
  await context.close();
});

const technician = 'Marta Quiroga';
const verdict = () => page.getByRole('region', { name: 'Verdict' }).getByRole('status');

const cell = (id: string) => page.locator(`#${id}`).inputValue();

async function submittedOf(pair: string): Promise<readonly string[]> {
  const answer = await context.request.get('/api/calibrations?status=submitted');
  const { calibrations } = calibrationListAnswer.parse(await answer.json());
  return calibrations.filter((calibration) => calibration.pair === pair).map(({ number }) => number);
}

describe('registering', () => {
  test('goes from parts to a pair, and what is wrong stands beside its field with what was typed still in it', async () => {
    await signInAs(page, technician, '/equipment');
    await page.getByRole('button', { name: 'Register a jack' }).click();
    await page.getByLabel('Tag').fill('J-77');
    await page.getByLabel('Serial number').fill('TW-4471');
    await page.getByLabel('Rated force').fill('60 ton');
    await page.getByLabel('Piston area').fill('7.22 in2');
    await page.getByRole('button', { name: 'Register', exact: true }).click();
    const ratedForce = page.getByLabel('Rated force');
    await expect.poll(() => ratedForce.getAttribute('aria-invalid')).toBe('true');
    expect(await page.locator(`[id="${await ratedForce.getAttribute('id')}-problem"]`).textContent()).toContain('ton');
    expect(await ratedForce.inputValue()).toBe('60 ton');
    expect(await page.getByLabel('Serial number').inputValue()).toBe('TW-4471');
    await expectSoundPage(page);
    await ratedForce.fill('60 kip');
    await page.getByRole('button', { name: 'Register', exact: true }).click();
    await page.getByText('Jack J-77 is registered.').waitFor();

    await page.getByRole('button', { name: 'Register a gauge' }).click();
    await page.getByLabel('Tag').fill('G-77');
    await page.getByLabel('Serial number').fill('41177');
    await page.getByLabel('Full scale').fill('10000 psi');
    await page.getByLabel('Graduation', { exact: true }).fill('50 psi');
    await page.getByRole('button', { name: 'Register', exact: true }).click();
    await page.getByText('Gauge G-77 is registered.').waitFor();

    await page.getByRole('button', { name: 'Register a load cell' }).click();
    await page.getByLabel('Tag').fill('LC-77');
    await page.getByLabel('Serial number').fill('T-77');
    await page.getByLabel('Capacity').fill('60 kip');
    await page.getByRole('button', { name: 'Register', exact: true }).click();
    await page.getByText('Load cell LC-77 is registered.').waitFor();
    expect(await page.getByRole('combobox', { name: 'Load cell' }).inputValue()).toBe('LC-77');
    await page.getByLabel('Number of the certificate').fill('Q77-1');
    await page.getByLabel('Laboratory').fill('Quarrowby Force Laboratory');
    await page.getByLabel('Traceable to').fill('National force standard');
    await page.getByLabel('Calibrated on').fill(await today(page));
    await page.getByLabel('Valid until, last day').fill('2099-12-31');
    await page.getByLabel('Expanded uncertainty, % of force').fill('a quarter');
    await page.getByRole('button', { name: 'File', exact: true }).click();
    await page.getByText('"a quarter" is not a number; write it like 0.25.').waitFor();
    await page.getByLabel('Expanded uncertainty, % of force').fill('0.25');
    await page.getByRole('button', { name: 'File', exact: true }).click();
    await page.getByText('Certificate Q77-1 of LC-77 is filed.').waitFor();

    await page.getByRole('button', { name: 'Form a pair' }).click();
    await page.getByLabel('Tag').fill('P-77');
    await page.getByRole('combobox', { name: 'Jack' }).selectOption('J-77');
    await page.getByRole('combobox', { name: 'Gauge' }).selectOption('G-77');
    await page.getByRole('button', { name: 'Form the pair' }).click();
    await page.getByText('Pair P-77 is formed.').waitFor();
    await page.getByRole('link', { name: /^P-77 ?J-77 with G-77/ }).click();
    await page.getByRole('heading', { name: 'Pair P-77' }).waitFor();
  });
});

describe('registering, kept and checked', () => {
  test('says everything that is wrong at once, with the names of the page, and cautions at an odd graduation', async () => {
    await signInAs(page, technician, '/equipment');
    await page.getByRole('button', { name: 'Register a jack' }).click();
    await page.getByLabel('Tag').fill('J 78');
    await page.getByLabel('Serial number').fill('TW-4478');
    await page.getByLabel('Rated force').fill('-60 kip');
    await page.getByLabel('Piston area').fill('7.22');
    await page.getByLabel('Strands pulled together').fill('1,5');
    await page.getByRole('button', { name: 'Register', exact: true }).click();
    await page.getByText('"1,5" is not a whole number; write it like 2.').waitFor();
    await page.getByText('"J 78" cannot be a tag').waitFor();
    await page.getByText(/^Rated force: a force above zero/).waitFor();
    await page.getByText(/area needs a unit/).waitFor();
    await page.getByRole('button', { name: 'Register a gauge' }).click();
    await page.getByLabel('Graduation', { exact: true }).fill('30 psi');
    await page.getByText('Caution: 30 psi is an unusual graduation').waitFor();
    await expectSoundPage(page);
    await page.getByLabel('Graduation', { exact: true }).fill('50 psi');
    await expect.poll(() => page.getByText('unusual graduation').count()).toBe(0);
  });

  test('opens the form again after a reload with everything that was typed', async () => {
    await signInAs(page, technician, '/equipment');
    await page.getByRole('button', { name: 'Register a gauge' }).click();
    await page.getByLabel('Serial number').fill('41179');
    await page.getByRole('combobox', { name: 'Display' }).selectOption('digital');
    await page.reload();
    await expect.poll(() => page.getByLabel('Serial number').inputValue()).toBe('41179');
    expect(await page.getByRole('combobox', { name: 'Display' }).inputValue()).toBe('digital');
    await page.goto('/due');
    await page.goto('/equipment');
    await expect.poll(() => page.getByLabel('Serial number').inputValue()).toBe('41179');
  });
});

describe('the run sheet', () => {
  test('replaces a cell that is clicked again with the mouse, and F2 or a double click edits it', async () => {
    await startSheet(page, 'P-09');
    await paste(page, 'cell-0-level', block);
    for (const [at, typed] of [
      [0.05, '1425'],
      [0.95, '1426'],
    ] as const) {
      const box = await page.locator('#cell-1-rising-0').boundingBox();
      if (box === null) throw new Error('The cell is not on the page.');
      const place = [box.x + box.width * at, box.y + box.height / 2] as const;
      await page.mouse.click(...place);
      await page.waitForTimeout(600);
      await page.mouse.click(...place);
      await page.keyboard.type(typed);
      expect(await cell('cell-1-rising-0')).toBe(typed);
    }
    await page.keyboard.press('F2');
    await page.keyboard.type('0');
    expect(await cell('cell-1-rising-0')).toBe('14260');
    await page.locator('#cell-2-rising-0').dblclick();
    await page.keyboard.type('5');
    expect(await cell('cell-2-rising-0')).toBe('28605');
  });

  test('puts a slip of the unit before any verdict', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-09');
    await page.getByLabel('Unit of reading').selectOption('bar');
    await expect.poll(() => verdict().textContent()).toBe('Look at this first');
    expect(await page.getByText('Meets the rules').count()).toBe(0);
    await expectSoundPage(page);
  });

  test('says what a smaller table takes away, and Ctrl+Z at once brings it back', async () => {
    await startSheet(page, 'P-09');
    await paste(page, 'cell-0-level', block);
    await page.getByRole('button', { name: 'Fewer cycles' }).click();
    await page.getByText('Cycle 3 with 6 readings removed. Ctrl+Z brings it back.').waitFor();
    await page.keyboard.press('Control+Z');
    expect(await cell('cell-5-rising-2')).toBe('7150');
  });

  test('takes the full width with falling points, so that no column is cut', async () => {
    await startSheet(page, 'P-09');
    for (const cycle of [1, 2, 3]) await page.getByLabel(`Falling points in cycle ${cycle}`).check();
    const box = page.getByRole('region', { name: 'Points of the run sheet' });
    expect(await box.evaluate((element) => element.scrollWidth <= element.clientWidth)).toBe(true);
  });

  test('is typed by keyboard alone, from the pair to the submission', async () => {
    await signInAs(page, technician, '/calibrate?pair=P-14');
    await tabTo(page, 'button:text("Start a run sheet for P-14")');
    await page.keyboard.press('Enter');
    await page.locator('#cell-0-level').waitFor();
    await page.getByRole('heading', { name: 'Calibrate P-14' }).waitFor();
    await tabTo(page, 'input[type="date"]');
    const [year, month, day] = (await today(page)).split('-');
    await page.keyboard.type(`${month}${day}${year}`);
    await tabTo(page, 'select:has(option[value="LC-1"])');
    await page.keyboard.type('LC-1');
    await page.getByText(/^Certificate .* valid until/).waitFor();

    await tabTo(page, '#cell-1-level');
    for (const level of [10, 20, 30, 40]) {
      await page.keyboard.type(String(level));
      await page.keyboard.press('Enter');
    }
    await page.keyboard.type('50');
    await page.keyboard.press('ArrowRight');
    expect(await page.locator('#cell-5-rising-0').evaluate((input) => input === document.activeElement)).toBe(true);
    for (const reading of [7150, 5720, 4290, 2860, 1430]) {
      await page.keyboard.type(String(reading));
      await page.keyboard.press('ArrowUp');
    }
    await page.getByText('Does not meet the rules').waitFor();
    await page.evaluate(() =>
      navigator.clipboard.writeText('0\t0\n1440\t1430\n2870\t2860\n4300\t4290\n5730\t5720\n7160\t7150\n'),
    );
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Control+V');
    await page.getByText('Pasted 6 rows by 2 columns.').waitFor();
    await expect.poll(() => verdict().textContent()).toBe('Meets the rules');
    await expectSoundPage(page);

    await tabTo(page, 'button:text-is("Submit")');
    await page.keyboard.press('Enter');
    const result = page.getByRole('heading', { name: /^Calibration C-\d+ is submitted$/ });
    await result.waitFor();
    expect(await result.evaluate((heading) => heading === document.activeElement)).toBe(true);
    expect(await submittedOf('P-14')).toHaveLength(1);
    await page.goto('/calibrate');
    await page.getByText('No draft is waiting on this device.').waitFor();
  });

  test('redraws curve and residuals and changes its verdict while one reading is typed', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-09');
    const points = page.getByRole('figure', { name: 'Residuals' }).locator('.recharts-scatter path');
    const before = await points.evaluateAll((paths) => paths.map((path) => path.getAttribute('transform')));
    expect(before).toHaveLength(15);
    await page.locator('#cell-2-rising-1').focus();
    await page.keyboard.type('2780');
    await expect.poll(() => verdict().textContent()).toBe('Does not meet the rules');
    const after = await points.evaluateAll((paths) => paths.map((path) => path.getAttribute('transform')));
    expect(after).not.toEqual(before);
    await page.getByRole('link', { name: 'Go to the cell' }).first().click();
    expect(await page.locator('#cell-2-rising-1').evaluate((input) => input === document.activeElement)).toBe(true);
  });

  test('puts the repair of an entry check into its cell only when asked, and Ctrl+Z takes it back', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-09');
    await page.locator('#cell-2-rising-1').focus();
    await page.keyboard.type('2780');
    const repair = page.getByRole('button', { name: 'Put 2870 there' });
    await repair.waitFor();
    expect(await cell('cell-2-rising-1')).toBe('2780');
    await repair.focus();
    await page.keyboard.press('Enter');
    await page.getByText('Cycle 2, row 3, reading: 2870 in place of 2780. Ctrl+Z takes it back.').waitFor();
    expect(await cell('cell-2-rising-1')).toBe('2870');
    await expect.poll(() => verdict().textContent()).toBe('Meets the rules');
    await page.keyboard.press('Control+Z');
    await expect.poll(() => cell('cell-2-rising-1')).toBe('2780');
  });

  test('opens the figures behind the verdict by keyboard, and the budget of the level chosen', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-09');
    await openFigures(page);
    await page.getByLabel('Budget at the level').selectOption({ label: '30\u00a0kip' });
    const budget = page.getByRole('table', { name: 'Budget at 30' });
    await budget.getByRole('row', { name: /^Load cell, by its certificate B normal/ }).waitFor();
    await budget.getByRole('row', { name: /^Scatter of the readings and fit A/ }).waitFor();
    await expectSoundPage(page);
    await page.setViewportSize(telephone);
    await expectSoundPage(page);
  });

  test('names a bad cell in words, keeps it as typed, and leads to it', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-09');
    await page.locator('#cell-3-rising-1').focus();
    await page.keyboard.type('52,40');
    const sentence = 'Cycle 2, row 4, reading: "52,40" can be read in two ways';
    await page.getByRole('link', { name: sentence }).click();
    const bad = page.locator('#cell-3-rising-1');
    expect(await bad.evaluate((input) => input === document.activeElement)).toBe(true);
    expect(await bad.getAttribute('aria-invalid')).toBe('true');
    expect(await bad.inputValue()).toBe('52,40');
    expect(await page.getByRole('button', { name: 'Submit' }).isDisabled()).toBe(true);
    await expectSoundPage(page);
    await page.keyboard.press('Escape');
    expect(await bad.inputValue()).toBe('52,40');
    await page.keyboard.press('Control+Z');
    expect(await bad.inputValue()).toBe('4300');
    await expect.poll(() => bad.getAttribute('aria-invalid')).toBeNull();
  });

  test('takes a whole paste back with one Ctrl+Z, and copies a marked block out', async () => {
    await signInAs(page, technician, '/calibrate');
    await startSheet(page, 'P-09');
    await page.locator('#cell-1-rising-0').focus();
    await page.keyboard.type('old');
    await paste(page, 'cell-0-level', block);
    expect(await cell('cell-1-rising-0')).toBe('1430');
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Control+C');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe('0\t0\n10\t1430');
    await page.keyboard.press('Control+Z');
    expect([await cell('cell-0-level'), await cell('cell-1-level'), await cell('cell-1-rising-0')]).toEqual([
      '0',
      '',
      'old',
    ]);
  });

  test('keeps every number when a unit is changed', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-09');
    await page.getByLabel('Unit of force').selectOption('kN');
    await page.getByLabel('Unit of reading').selectOption('bar');
    expect(await cell('cell-5-level')).toBe('50');
    expect(await cell('cell-5-rising-1')).toBe('7160');
    await page.getByText('Reading rising, bar').first().waitFor();
  });

  test('is imported from a file as the command line reads it, and a file that is none changes nothing', async () => {
    await signInAs(page, technician, '/calibrate');
    await startSheet(page, 'P-09');
    await page.getByText('Import a file').click();
    const csv =
      'run,direction,force (kN),reading (bar)\n1,up,0,0\n1,up,100,210\n1,up,200,421\n1,down,100,205\n2,up,100,211\n';
    await page
      .getByLabel('Choose a file')
      .setInputFiles({ name: 'sheet.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    await page.getByText('Imported 2 cycles with 5 points.').waitFor();
    expect([await cell('cell-1-falling-0'), await cell('cell-1-rising-1')]).toEqual(['205', '211']);
    const letter = { name: 'letter.txt', mimeType: 'text/plain', buffer: Buffer.from('Dear Sir,') };
    await page.getByLabel('Choose a file').setInputFiles(letter);
    await page.getByText('Needed: a header such as run,direction,force (kip),reading (psi)').waitFor();
    expect(await cell('cell-1-falling-0')).toBe('205');
  });

  test('scrolls in its own box on a telephone', async () => {
    await signInAs(page, technician, '/calibrate');
    await page.setViewportSize(telephone);
    await fillSheet(page, 'P-09');
    await expectSoundPage(page);
    const box = page.getByRole('region', { name: 'Points of the run sheet' });
    expect(await box.evaluate((element) => element.scrollWidth > element.clientWidth)).toBe(true);
    await page.setViewportSize(desk);
  });
});

describe('a draft', () => {
  test('is there after a reload, bad cells included', async () => {
    await startSheet(page, 'P-09');
    await paste(page, 'cell-0-level', block);
    await page.locator('#cell-2-rising-0').focus();
    await page.keyboard.type('52,40');
    await expect.poll(() => isKept(page, '52,40')).toBe(true);
    await page.reload();
    await page.locator('#cell-0-level').waitFor();
    expect([await cell('cell-2-rising-0'), await cell('cell-5-rising-2')]).toEqual(['52,40', '7150']);
  });

  test('is there after the page crashed', async () => {
    await startSheet(page, 'P-09');
    const address = page.url();
    await paste(page, 'cell-0-level', block);
    await expect.poll(() => isKept(page, '7160')).toBe(true);
    const crashed = page.waitForEvent('crash');
    await Promise.all([crashed, page.goto('chrome://crash').catch(() => null)]);
    page = await context.newPage();
    await page.goto('/calibrate');
    await page.getByText('P-09, no day yet').waitFor();
    await expectSoundPage(page);
    await page.getByRole('link', { name: 'Continue' }).click();
    await page.waitForURL(address);
    await page.locator('#cell-0-level').waitFor();
    expect(await cell('cell-5-rising-1')).toBe('7160');
  });

  test('is there after the page was closed in the middle of typing', async () => {
    await startSheet(page, 'P-09');
    const address = page.url();
    await page.locator('#cell-1-rising-0').focus();
    await page.keyboard.type('1430');
    await page.close({ runBeforeUnload: true });
    page = await context.newPage();
    await page.goto(address);
    await page.locator('#cell-1-rising-0').waitFor();
    expect(await cell('cell-1-rising-0')).toBe('1430');
  });

  test('is thrown away only after it was asked', async () => {
    await startSheet(page, 'P-09');
    await page.goto('/calibrate');
    await page.getByRole('button', { name: 'Throw away' }).click();
    const asked = page.getByRole('dialog', { name: 'Throw this draft away?' });
    await expectSoundPage(page);
    await page.keyboard.press('Escape');
    await page.getByText('P-09, no day yet').waitFor();
    await page.getByRole('button', { name: 'Throw away' }).click();
    await asked.getByRole('button', { name: 'Throw away' }).click();
    await page.getByText('No draft is waiting on this device.').waitFor();
  });

  test('goes on as two drafts when two windows type in it', async () => {
    await startSheet(page, 'P-09');
    const other = await context.newPage();
    await other.goto(page.url());
    await other.locator('#cell-1-rising-0').fill('1430');
    await expect.poll(() => isKept(other, '1430')).toBe(true);
    await page.locator('#cell-1-rising-0').fill('1550');
    await page.getByText('This draft was changed in another window.').waitFor();
    await expect.poll(() => page.url()).not.toBe(other.url());
    expect(await page.locator('#cell-1-rising-0').evaluate((input) => input === document.activeElement)).toBe(true);
    await page.locator('#cell-2-rising-0').fill('2860');
    await expect.poll(() => isKept(page, '2860')).toBe(true);
    await page.reload();
    await expect.poll(() => cell('cell-1-rising-0')).toBe('1550');
    expect(await cell('cell-2-rising-0')).toBe('2860');
    await page.goto('/calibrate');
    await expect.poll(() => page.getByText('Copy from another window').count()).toBe(1);
    await expect.poll(() => page.getByRole('link', { name: 'Continue' }).count()).toBe(2);
  });

  test('waits for signing in and is still whole after it', async () => {
    await fillSheet(page, 'P-09');
    await page.getByText('Sign in to submit. The draft stays on this device.').waitFor();
    await page.getByRole('region', { name: 'Submit for approval' }).getByRole('link', { name: 'Sign in' }).click();
    await page.getByRole('radio', { name: technician }).check();
    await page.getByRole('button', { name: 'Sign in' }).click();
    await page.locator('#cell-0-level').waitFor();
    expect(await cell('cell-5-rising-1')).toBe('7160');
    await expect.poll(() => page.getByRole('button', { name: 'Submit' }).isEnabled()).toBe(true);
  });
});

describe('submitting', () => {
  const submit = () => page.getByRole('button', { name: 'Submit' });
  const away = () => page.getByText('The server does not answer. The draft stays on this device');

  test('while the server is away keeps the draft, and submits it when the server is back', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-03');
    await server.kill();
    try {
      await submit().click();
      await away().waitFor();
      expect(await submit().isEnabled()).toBe(true);
    } finally {
      await server.restart();
    }
    expect(await submittedOf('P-03')).toEqual([]);
    await submit().click();
    await page.getByRole('heading', { name: /is submitted$/ }).waitFor();
    expect(await submittedOf('P-03')).toHaveLength(1);
  });

  test('once more after the server was killed before it could acknowledge gives exactly one calibration', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-01');
    await page.route('**/api/calibrations', async (route) => {
      await route.fetch();
      await server.kill();
      await route.abort();
    });
    await submit().click();
    await away().waitFor();
    await page.unroute('**/api/calibrations');
    await server.restart();
    const stored = await submittedOf('P-01');
    expect(stored).toHaveLength(1);

    await page.reload();
    await page.locator('#cell-0-level').waitFor();
    expect(await cell('cell-5-rising-1')).toBe('7160');
    await submit().click();
    await page.getByRole('heading', { name: `Calibration ${stored[0]} is submitted` }).waitFor();
    expect(await submittedOf('P-01')).toEqual(stored);
  });

  test('a draft that had arrived and was changed since says so and submits anew only when told to', async () => {
    await signInAs(page, technician, '/calibrate');
    await fillSheet(page, 'P-15');
    const before = await submittedOf('P-15');
    await page.route('**/api/calibrations', async (route) => {
      await route.fetch();
      await route.abort();
    });
    await submit().click();
    await away().waitFor();
    await page.unroute('**/api/calibrations');
    await page.locator('#cell-1-rising-0').fill('1440');
    await submit().click();
    await page.getByText('An earlier submission of this draft has already arrived').waitFor();
    expect(await submittedOf('P-15')).toHaveLength(before.length + 1);
    await page.getByRole('button', { name: 'Submit the changed sheet as one more' }).click();
    await page.getByRole('heading', { name: /is submitted$/ }).waitFor();
    expect(await submittedOf('P-15')).toHaveLength(before.length + 2);
  });

  test('is refused to the crew in words', async () => {
    await signInAs(page, 'Wendell Abara', '/calibrate');
    await page.getByText('Your role, Crew, cannot submit a calibration.').waitFor();
    await expectSoundPage(page);
    await fillSheet(page, 'P-09');
    await page.getByText('Only a technician or the quality manager submits a calibration.').waitFor();
    expect(await submit().isDisabled()).toBe(true);
  });
});
