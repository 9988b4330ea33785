// What axe finds wrong with a page for people who use it by keyboard, screen reader or with weak eyes.

import axe from 'axe-core';
import type { Page } from 'playwright-core';

/**
 * Answers every violation as one line: rule, help and the first element it concerns. `contrast` "enhanced" asks for 7 to 1
 * where axe's default is 4.5 to 1.
 */
export async function findViolations(
  page: Page,
  options: { readonly contrast: 'normal' | 'enhanced' },
): Promise<readonly string[]> {
  // Evaluated, not added as a script element: the page's own policy allows no foreign script.
  await page.evaluate(axe.source);
  const results = await page.evaluate((enhanced) => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    return checker.run(document, { rules: { 'color-contrast-enhanced': { enabled: enhanced } } });
  }, options.contrast === 'enhanced');
  return results.violations.map(
    ({ id, help, nodes }) => `${id}: ${help} (${nodes.length}), first ${nodes[0]?.html ?? 'the page'}`,
  );
}
