// A run sheet as a technician starts and fills it on the page Calibrate.

import type { Page } from 'playwright-core';
import { plantAnswer } from '../../src/contract/plant.ts';

/** Three cycles of a jack of 7.22 in2 in kip and psi, as a spreadsheet copies them. */
export const block = [0, 10, 20, 30, 40, 50]
  .map((force) =>
    [force, ...[0, 10, 0].map((more) => (force === 0 ? 0 : Math.round(14.3 * force) * 10 + more))].join('\t'),
  )
  .join('\r\n');

export async function today(page: Page): Promise<string> {
  return plantAnswer.parse(await (await page.request.get('/api/plant')).json()).today;
}

export async function startSheet(page: Page, pair: string): Promise<void> {
  await page.goto(`/calibrate?pair=${pair}`);
  await page.getByRole('button', { name: `Start a run sheet for ${pair}` }).click();
  await page.locator('#cell-0-level').waitFor();
}

export async function paste(page: Page, cell: string, text: string): Promise<void> {
  await page.evaluate((copied) => navigator.clipboard.writeText(copied), text);
  await page.locator(`#${cell}`).focus();
  await page.keyboard.press('Control+V');
}

/** Everything a submission needs, with the load cell LC-1 and readings that meet the rules for 7.22 in2. */
export async function fillSheet(page: Page, pair: string): Promise<void> {
  await startSheet(page, pair);
  await page.getByLabel('Calibration day').fill(await today(page));
  await page.getByLabel('Load cell', { exact: true }).selectOption('LC-1');
  await paste(page, 'cell-0-level', block);
  await page
    .getByRole('region', { name: 'Verdict' })
    .getByText(/^(Meets the rules|Conditional pass)$/)
    .waitFor();
}

/** Whether a draft on the device holds a text, read from the browser's own database. */
export function isKept(page: Page, text: string): Promise<boolean> {
  return page.evaluate(
    (wanted) =>
      new Promise<boolean>((resolve, reject) => {
        const opening = indexedDB.open('jackledger');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('drafts').objectStore('drafts').getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            opening.result.close();
            resolve(JSON.stringify(reading.result).includes(`"${wanted}"`));
          };
        };
      }),
    text,
  );
}
