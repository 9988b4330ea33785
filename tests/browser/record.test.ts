// The record as quality and the auditor use it, in a real Chromium: correcting, withdrawing, taking out of use, looking at
// a day gone by, checking the head from a paper.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { pairPageAnswer } from '../../src/contract/calibration.ts';
import { partPageAnswer } from '../../src/contract/part-page.ts';
import { plantAnswer } from '../../src/contract/plant.ts';
import { expectSoundPage, openDesk, signInAs, telephone } from './desk-page.ts';
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
  ({ context, page } = await openDesk(browser, server.url));
});

afterEach(async () => {
  await context.close();
});

const quality = 'Inge Marlowsen';
const technician = 'Marta Quiroga';

const partOf = async (tag: string) =>
  partPageAnswer.parse(await (await context.request.get(`/api/equipment/${tag}`)).json());
const pairOf = async (tag: string) =>
  pairPageAnswer.parse(await (await context.request.get(`/api/pairs/${tag}`)).json());
const plantNow = async () => plantAnswer.parse(await (await context.request.get('/api/plant')).json());
const button = (name: string | RegExp) => page.getByRole('button', { name });

async function correctSerial(serial: string, reason: string): Promise<void> {
  await button('Correct what is registered').click();
  await page.getByLabel('Serial number').fill(serial);
  await page.getByLabel('Reason').fill(reason);
  await button('Write the correction').click();
}

describe('correcting a part', () => {
  test('asks for a reason, then shows the old value struck through with who, when and why', async () => {
    const { part } = await partOf('G-02');
    await signInAs(page, technician, '/part/G-02');
    await correctSerial('B-9001', 'slip');
    await page.getByText('Give a reason of at least five characters.').waitFor();
    await page.getByLabel('Reason').fill('Two digits were swapped on the label');
    await button('Write the correction').click();

    await page.locator('del', { hasText: part.serial }).first().waitFor();
    await page.locator('ins', { hasText: 'B-9001' }).waitFor();
    await page.getByText(/Entry \d+, Marta Quiroga, .*: Two digits were swapped on the label/).waitFor();
    await expectSoundPage(page);
    await page.setViewportSize(telephone);
    await expectSoundPage(page);
  });

  test('strikes the entry through in the ledger, each of the two leading to the other', async () => {
    const { versions } = await partOf('G-02');
    const [first, second] = versions;
    await page.goto(`/ledger?entry=${first?.entry}`);
    const row = page.locator('tr[aria-current="true"]');
    await row.locator('del', { hasText: 'Gauge G-02 registered' }).waitFor();
    await row.getByRole('link', { name: `Corrected by entry ${second?.entry}` }).click();
    await page.getByRole('link', { name: `Takes the place of entry ${first?.entry}` }).waitFor();
    expect(new URL(page.url()).searchParams.get('entry')).toBe(String(second?.entry));
    await expectSoundPage(page);
  });

  test('keeps what was typed when somebody else corrected it meanwhile, and shows what stands then', async () => {
    await signInAs(page, technician, '/part/G-03');
    await button('Correct what is registered').click();
    await page.getByLabel('Serial number').fill('B-9003');
    await page.getByLabel('Reason').fill('Read off the dial again');
    const { part, versions } = await partOf('G-03');
    const other = await context.request.post('/api/equipment/G-03/amendment', {
      data: {
        equipment: { ...part, note: 'Spare glass in the cabinet' },
        corrects: versions[0]?.entry,
        reason: 'Spare glass',
      },
    });
    expect(other.status()).toBe(200);

    await button('Write the correction').click();
    await page.getByRole('alert').getByText('Somebody else was faster').waitFor();
    await page.locator('ins', { hasText: 'Spare glass in the cabinet' }).waitFor();
    expect(await page.getByLabel('Serial number').inputValue()).toBe('B-9003');
  });

  test('is not offered to an auditor', async () => {
    await signInAs(page, 'Colm Petrakis', '/part/G-03');
    await page.getByText('Technicians and quality correct the register.').waitFor();
    expect(await button('Correct what is registered').count()).toBe(0);
  });
});

describe('a day gone by', () => {
  const yesterday = async () => {
    const { today } = await plantNow();
    return new Date(Date.parse(`${today}T12:00:00Z`) - 86_400_000).toISOString().slice(0, 10);
  };

  test('shows what stood then, offers nothing to write, and goes along from page to page', async () => {
    const day = await yesterday();
    await signInAs(page, quality, '/part/G-02');
    await page.locator('ins', { hasText: 'B-9001' }).waitFor();
    await page.getByLabel('Day', { exact: true }).fill(day);
    await button('Show that day').click();
    await page.getByText(`As it stood at the end of ${day}`).waitFor();
    await page.getByText('As it is registered').waitFor();
    expect(await page.getByText('B-9001').count()).toBe(0);
    expect(await button('Correct what is registered').count()).toBe(0);
    await expectSoundPage(page);

    await page.getByRole('link', { name: 'All equipment' }).click();
    await page.getByText(`As it stood at the end of ${day}`).waitFor();
    await page.getByRole('link', { name: 'P-01', exact: true }).first().click();
    await page.getByRole('heading', { name: 'Pair P-01' }).waitFor();
    expect(new URL(page.url()).searchParams.get('asOf')).toBe(day);
    expect(await button('Put on hold').count()).toBe(0);
    expect(await page.getByRole('link', { name: 'Set the gauge' }).count()).toBe(1);

    await page.getByRole('link', { name: 'Back to today' }).click();
    await button('Report what happened').waitFor();
    expect(new URL(page.url()).searchParams.get('asOf')).toBeNull();
  });

  test.each(['/due', '/equipment', '/in-doubt', '/ledger', '/rules', '/review'])('can be asked of %s', async (path) => {
    const day = await yesterday();
    await signInAs(page, quality, path);
    await page.goto(`${path}?asOf=${day}`);
    await page.getByText(`As it stood at the end of ${day}`).waitFor();
    await page.locator('h1').waitFor();
    expect(await page.getByRole('alert').count()).toBe(0);
    await page.setViewportSize(telephone);
    await expectSoundPage(page);
  });

  test('is refused in words where it lies ahead or before the ledger', async () => {
    await page.goto('/equipment?asOf=2999-01-01');
    await page.getByRole('alert').getByText('Nobody knows yet how the plant stands on 2999-01-01.').waitFor();
    await page.goto('/equipment?asOf=1999-01-01');
    await page
      .getByRole('alert')
      .getByText(/This ledger was opened on .* it knows nothing of 1999-01-01/)
      .waitFor();
    await page.goto('/equipment?asOf=yesterday');
    await page.getByRole('alert').waitFor();
  });
});

describe('the ledger', () => {
  test('says of a head on paper whether it is held, and what verifying looked at', async () => {
    const { shortHead } = await plantNow();
    await page.goto('/ledger');
    await page.getByText(shortHead).waitFor();
    await page.getByLabel('Check a head from a paper').fill(shortHead.toUpperCase().replaceAll('-', ' '));
    await button('Check').click();
    await page.getByText(/The ledger holds it: entry \d+/).waitFor();
    await page.getByLabel('Check a head from a paper').fill(shortHead.replace(/.{4}$/, '0000'));
    await button('Check').click();
    await expect.poll(() => page.getByText(/The ledger holds it/).count()).toBe(0);
    await page
      .getByText(/Entry \d+ of this ledger is another one/)
      .first()
      .waitFor();

    await button('Verify the ledger').click();
    await page.getByText('without a gap').waitFor();
    await page.getByText(/Approvals: \d+, each signed by somebody else/).waitFor();
    await expectSoundPage(page);
  });
});

test('the missing backup is a caution for quality, the last good one is told once it was made', async () => {
  await signInAs(page, quality, '/due');
  await page.getByText('There is no backup of the ledger yet.').waitFor();
  const made = await server.run('backup', `${server.folder}/backup.ledger`);
  expect(made.exitCode, made.stderr).toBe(0);
  await page.reload();
  await page.getByText('Last good backup of the ledger: less than an hour old.').waitFor();
  await page.getByText('Nothing was written since.').waitFor();
  await expectSoundPage(page);

  await page.getByRole('button', { name: 'Sign out' }).click();
  await signInAs(page, technician, '/due');
  await page.getByRole('heading', { name: "What's due" }).waitFor();
  expect(await page.getByText('backup of the ledger').count()).toBe(0);
});

test('a part in no pair is taken out of use, and is struck through in the register', async () => {
  const equipment = await (await context.request.get('/api/equipment')).json();
  const used = equipment.pairs.filter((pair: { parted: boolean }) => !pair.parted);
  const spare = equipment.gauges.find(
    ({ tag }: { tag: string }) => !used.some(({ gauge }: { gauge: string }) => gauge === tag),
  );
  expect(spare, 'the sample plant has a gauge in no pair').toBeDefined();
  await signInAs(page, quality, `/part/${spare.tag}`);
  await button('Take out of use').click();
  await page.getByLabel('Reason').fill('Tube bent beyond repair');
  await page.locator('form').getByRole('button', { name: 'Take out of use' }).click();
  await page.getByText(/Out of use since .*, by Inge Marlowsen: Tube bent beyond repair/).waitFor();
  await page.getByRole('link', { name: 'All equipment' }).click();
  await page.locator('th', { hasText: spare.tag }).locator('del').waitFor();
  await button('Form a pair').click();
  const gauges = await page.getByLabel('Gauge').locator('option').allTextContents();
  expect(gauges).not.toContain(spare.tag);
});

test('a calibration in force is withdrawn with a reason, and the one before it is in force again', async () => {
  const before = await pairOf('P-09');
  const previous = before.calibrations.filter(
    ({ status, number }) => status === 'approved' && number !== before.current,
  )[0];
  await signInAs(page, quality, `/review/${before.current}`);
  await button('Withdraw the calibration').click();
  await page.getByLabel('Reason').fill('The load cell stood askew');
  await page.locator('form').getByRole('button', { name: 'Withdraw the calibration' }).click();
  await page.getByText(/Withdrawn by Inge Marlowsen, .*: The load cell stood askew/).waitFor();
  await expectSoundPage(page);
  expect((await pairOf('P-09')).current).toBe(previous?.number);
  await page.goto('/equipment/P-09');
  await page.locator('del', { hasText: before.current ?? '' }).waitFor();
});
