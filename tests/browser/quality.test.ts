// The quality manager: reviews and decides, sees what falls due, opens the page of a pair.

import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { calibrationAnswer, calibrationListAnswer, pairPageAnswer } from '../../src/contract/calibration.ts';
import { dueAnswer } from '../../src/contract/due.ts';
import { plantAnswer } from '../../src/contract/plant.ts';
import { samplePassword } from '../../src/service/lay-out-sample-plant.ts';
import { expectSoundPage, openDesk, openFigures, signInAs, telephone } from './desk-page.ts';
import { launchChromium } from './launch-chromium.ts';
import { type SampleServer, serveSample } from './serve-sample.ts';

/** Signs with the password the people of the sample plant share, and approves. */
async function approve(page: Page): Promise<void> {
  await page.getByLabel('Your password, to sign').fill(samplePassword);
  await page.getByRole('button', { name: 'Approve' }).click();
}

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

async function pairPage(tag: string) {
  return pairPageAnswer.parse(await (await context.request.get(`/api/pairs/${tag}`)).json());
}

/** Submits the calibration a pair has in force once more, as of today, by whoever is signed in, and answers its number. */
async function submitAgain(tag: string): Promise<string> {
  const { current, calibrations } = await pairPage(tag);
  const inForce = calibrations.find(({ number }) => number === current);
  if (inForce === undefined) throw new Error(`${tag} has no calibration in force.`);
  const { today } = plantAnswer.parse(await (await context.request.get('/api/plant')).json());
  const answer = await context.request.post('/api/calibrations', {
    data: { sheet: { ...inForce.sheet, pair: tag, loadCell: inForce.loadCell, calibratedOn: today }, degree: 'auto' },
    headers: { 'idempotency-key': `${tag} ${Date.now()}` },
  });
  return calibrationAnswer.parse(await answer.json()).number;
}

/** A calibration of the sample plant that waits and has a verdict. */
async function waitingWith(verdict: 'conditional-pass' | 'fail') {
  const list = await (await context.request.get('/api/calibrations?status=submitted')).json();
  for (const { number } of calibrationListAnswer.parse(list).calibrations) {
    const calibration = calibrationAnswer.parse(
      await (await context.request.get(`/api/calibrations/${number}`)).json(),
    );
    if (calibration.fit.verdict === verdict) return calibration;
  }
  throw new Error(`No calibration of the sample plant waits with the verdict ${verdict}.`);
}

describe('reviewing', () => {
  test('shows everything a calibration rests on, and approving puts it in force', async () => {
    await signInAs(page, quality, '/review');
    await expectSoundPage(page);
    const chosen = await waitingWith('conditional-pass');
    await page.getByRole('link', { name: chosen.number }).click();
    await page.getByRole('heading', { name: `Calibration ${chosen.number}` }).waitFor();
    for (const part of ['The run sheet as entered', 'Acceptance', 'Levels', 'Entry checks', 'Decision']) {
      await page.getByText(part, { exact: true }).first().waitFor();
    }
    const main = (await page.getByRole('main').textContent()) ?? '';
    for (const { basis, message } of chosen.fit.acceptance) {
      expect(main).toContain(basis);
      expect(main).toContain(message);
    }
    expect(main).toContain('Marta Quiroga');
    await page.getByRole('figure', { name: 'Residuals' }).locator('.recharts-scatter path').first().waitFor();
    await openFigures(page);
    const classes = page.getByRole('table', { name: 'Errors and class at each level' }).getByRole('row');
    expect(await classes.count()).toBe(chosen.fit.levels.length + 1);
    await expectSoundPage(page);
    await page.setViewportSize(telephone);
    await expectSoundPage(page);

    await approve(page);
    await page.getByText(`Approved by ${quality}`).waitFor();
    expect((await pairPage(chosen.pair)).current).toBe(chosen.number);
    await page.goto(`/equipment/${chosen.pair}`);
    await page.getByText('in force', { exact: true }).waitFor();
  });

  test('approves what fails a rule only with a note that says why', async () => {
    await signInAs(page, quality, '/review');
    const { number } = await waitingWith('fail');
    await page.goto(`/review/${number}`);
    await page.getByText('Does not meet the rules').waitFor();
    await approve(page);
    await page.getByText('Give a reason of at least five characters.').waitFor();
    await page.getByLabel('Why it is approved although a rule is not met').fill('For trial pulls on bed 9 only.');
    await approve(page);
    await page.getByText(`Approved by ${quality}`).waitFor();
    await page.getByText('For trial pulls on bed 9 only.').waitFor();
  });

  test('rejects only with a reason, and the reason stays with the calibration', async () => {
    await signInAs(page, 'Owen Halvorsby', '/review');
    const number = await submitAgain('P-12');
    await signInAs(page, quality, `/review/${number}`);
    await page.getByRole('button', { name: 'Reject' }).click();
    await page.getByText('Give a reason of at least five characters.').waitFor();
    await page.getByLabel('Why it is rejected').fill('Cycle 2 was taken with the ram fully out.');
    await page.reload();
    await page.getByLabel('Why it is rejected').waitFor();
    expect(await page.getByLabel('Why it is rejected').inputValue()).toBe('Cycle 2 was taken with the ram fully out.');
    await page.getByRole('button', { name: 'Reject' }).click();
    await page.getByText(`Rejected by ${quality}`).waitFor();
    await page.getByText('Cycle 2 was taken with the ram fully out.').waitFor();
  });

  test('is not for the one who entered it, and says so', async () => {
    await signInAs(page, quality, '/review');
    const number = await submitAgain('P-09');
    await page.goto('/review');
    await page.getByRole('link', { name: number }).getByText('Your own sheet').waitFor();
    await page.goto(`/review/${number}`);
    await page.getByText('You entered this calibration, so somebody else must approve it.').waitFor();
    expect(await page.getByRole('button', { name: 'Approve' }).count()).toBe(0);
    await expectSoundPage(page);
  });

  test('is refused in words to a technician and to who has not signed in', async () => {
    await signInAs(page, 'Owen Halvorsby', '/review');
    const number = await submitAgain('P-11');
    await page.goto(`/review/${number}`);
    await page.getByText('You entered this calibration, so somebody else must approve it.').waitFor();
    await signInAs(page, 'Marta Quiroga', `/review/${number}`);
    await page.getByText('Only the quality manager approves or rejects.').waitFor();
    await page.getByRole('button', { name: 'Sign out' }).click();
    await page.getByText('Sign in to decide.').waitFor();
  });

  test('says that what was read has changed, approves nothing, and goes on after reading again', async () => {
    await signInAs(page, 'Owen Halvorsby', '/review');
    const number = await submitAgain('P-01');
    const address = `**/api/calibrations/${number}`;
    await page.route(address, async (route) => {
      const answer = await route.fetch();
      const body: unknown = await answer.json();
      await route.fulfill({ response: answer, json: { ...(body as object), reviewHash: 'a'.repeat(64) } });
    });
    await signInAs(page, quality, `/review/${number}`);
    await approve(page);
    await page.getByText('Nothing was approved. Read it again as it is now, then decide.').waitFor();
    expect((await pairPage('P-01')).current).not.toBe(number);
    await expectSoundPage(page);
    await page.unroute(address);
    const read = page.waitForResponse((response) => response.url().endsWith(`/api/calibrations/${number}`));
    await page.getByRole('button', { name: 'Read it again' }).click();
    await read;
    await approve(page);
    await page.getByText(`Approved by ${quality}`).waitFor();
  });
});

describe("what's due", () => {
  const tags = () => page.getByRole('main').locator('section li > a').allTextContents();

  test('lists the pairs the server lists, filters to the days asked and holds the same pairs as its CSV', async () => {
    await page.goto('/due');
    for (const [days, choose] of [
      ['60', () => page.getByRole('radio', { name: '60 days' }).check()],
      ['30', () => page.getByRole('radio', { name: '30 days' }).check()],
      [
        '14',
        async () => {
          await page.getByLabel('Or within, days').fill('14');
          await page.getByRole('button', { name: 'Show', exact: true }).click();
        },
      ],
    ] as const) {
      await choose();
      const due = dueAnswer.parse(await (await context.request.get(`/api/due?within=${days}d`)).json());
      await expect.poll(tags).toEqual(due.pairs.map(({ tag }) => tag));
      const link = await page.getByRole('link', { name: 'This list as CSV' }).getAttribute('href');
      const csv = await (await context.request.get(link ?? '')).text();
      const [, ...rows] = csv.trim().split('\n');
      const lines = rows.filter((line) => !line.startsWith('#'));
      expect(lines.map((line) => line.split(',')[0])).toEqual(due.pairs.map(({ tag }) => tag));
      for (const [index, pair] of due.pairs.entries()) expect(lines[index]).toContain(pair.dueDate ?? pair.standing);
    }
    await expectSoundPage(page);
    await page.setViewportSize(telephone);
    await expectSoundPage(page);
  });

  test('groups by standing, keeps the choice in the address and leads to the pair', async () => {
    await page.goto('/due');
    await page.getByLabel('All pairs').check();
    await page.getByLabel('Standing').check();
    await page.getByRole('region', { name: 'Overdue' }).waitFor();
    const due = dueAnswer.parse(await (await context.request.get('/api/due')).json());
    await expect.poll(async () => (await tags()).length).toBe(due.pairs.length);
    await page.reload();
    const overdue = due.pairs.filter(({ standing }) => standing === 'overdue').map(({ tag }) => tag);
    await expect
      .poll(() => page.getByRole('region', { name: 'Overdue' }).locator('li > a').allTextContents())
      .toEqual(overdue);
    await page.getByRole('link', { name: overdue[0] ?? '', exact: true }).click();
    await page.getByRole('heading', { name: `Pair ${overdue[0]}` }).waitFor();
  });

  test('refuses what is no number of days, with what was typed still there', async () => {
    await page.goto('/due');
    await page.getByLabel('Or within, days').fill('soon');
    await page.getByRole('button', { name: 'Show', exact: true }).click();
    await page.getByText('"soon" is not a whole number of days between 0 and 9999.').waitFor();
    expect(await page.getByLabel('Or within, days').inputValue()).toBe('soon');
  });
});

describe('the page of a pair', () => {
  const form = () => page.getByRole('main').locator('form');

  test('shows the curve with the earlier ones, the change, the due day, the certificate and every entry', async () => {
    await page.goto('/equipment/P-06');
    const shown = await pairPage('P-06');
    await page.getByRole('figure', { name: 'Points and curve' }).locator('.recharts-scatter path').first().waitFor();
    const main = (await page.getByRole('main').textContent()) ?? '';
    const earlier = shown.calibrations.filter(
      ({ status, number }) => status === 'approved' && number !== shown.current,
    );
    expect(earlier.length).toBeGreaterThan(0);
    for (const { calibratedOn } of earlier) expect(main).toContain(`Curve of ${calibratedOn}`);
    expect(main).toContain(shown.line.dueDate);
    expect(main).toContain(shown.certificate?.number);
    expect(main).toContain(`${Math.abs(shown.change?.changePercent ?? 0).toFixed(2)} %`);
    for (const { summary } of shown.entries) expect(main).toContain(summary);
    await expectSoundPage(page);
    await page.setViewportSize(telephone);
    await expectSoundPage(page);
  });

  test('says that there is no such pair', async () => {
    await page.goto('/equipment/P-404');
    await page.getByText('No pair has the tag "P-404".').waitFor();
  });

  test('is held and released with a reason, and parted for good', async () => {
    await signInAs(page, quality, '/equipment/P-16');
    await page.getByRole('button', { name: 'Put on hold' }).click();
    await form().getByRole('button', { name: 'Put on hold' }).click();
    await page.getByText('Give a reason of at least five characters.').waitFor();
    await page.getByLabel('Reason').fill('The gauge was dropped.');
    await page.reload();
    await page.getByLabel('Reason').waitFor();
    expect(await page.getByLabel('Reason').inputValue()).toBe('The gauge was dropped.');
    await form().getByRole('button', { name: 'Put on hold' }).click();
    await page.getByText('On hold: The gauge was dropped.', { exact: true }).waitFor();
    await page.getByRole('button', { name: 'Lift the hold' }).click();
    await page.getByLabel('Reason').fill('Checked against the master gauge.');
    await form().getByRole('button', { name: 'Lift the hold' }).click();
    await page.getByRole('button', { name: 'Put on hold' }).waitFor();
    await page.getByRole('button', { name: 'Part the pair' }).click();
    await page.getByLabel('Reason').fill('The jack goes to repair.');
    await expectSoundPage(page);
    await form().getByRole('button', { name: 'Part the pair' }).click();
    await page
      .getByText(/Parted on .*: The jack goes to repair\./)
      .first()
      .waitFor();
    expect(await page.getByRole('button', { name: 'Part the pair' }).count()).toBe(0);
  });
});
