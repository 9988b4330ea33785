// Takes the README's pictures anew: `node --import tsx tests/browser/take-screenshots.ts`, after `npm run build`.

import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { launchChromium } from './launch-chromium.ts';
import { fillSheet } from './run-sheet-page.ts';
import { serveSample } from './serve-sample.ts';

const folder = fileURLToPath(new URL('../../.screenshots', import.meta.url));
mkdirSync(folder, { recursive: true });

const [server, browser] = await Promise.all([serveSample(), launchChromium()]);
try {
  const phone = await browser.newContext({ baseURL: server.url, viewport: { width: 390, height: 1240 } });
  const crew = await phone.newPage();
  await crew.goto('/?pair=P-01&strand=0.6+in+270&fraction=0.75');
  await crew.getByRole('region', { name: 'Set the gauge to' }).waitFor();
  await crew.getByRole('table').first().waitFor();
  await crew.screenshot({ path: join(folder, 'set-the-gauge.png') });

  const desk = await browser.newContext({
    baseURL: server.url,
    viewport: { width: 1280, height: 1150 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  const technician = await desk.newPage();
  await fillSheet(technician, 'P-01');
  await technician.screenshot({ path: join(folder, 'calibrate.png') });
  await technician.goto('/due');
  await technician.getByRole('heading', { name: "What's due" }).waitFor();
  await technician.getByText('P-05').first().waitFor();
  await technician.screenshot({ path: join(folder, 'whats-due.png') });
} finally {
  await browser.close();
  await server.stop();
}
