/** Keys pressed on a planner's page as a reader without a pointer presses them, and the totals it shows. */

import type { Page } from 'playwright-core';

/** Goes on with the Tab key until the field with that name has the focus. */
export async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 200; i += 1) {
    await page.keyboard.press('Tab');
    const at = await page.evaluate(() => {
      const focused = document.activeElement;
      const label = focused instanceof HTMLInputElement ? focused.labels?.[0]?.textContent : null;
      return label ?? focused?.getAttribute('aria-label') ?? focused?.textContent ?? '';
    });
    if (name.test(at)) return;
  }
  throw new Error(`the Tab key never came to ${name}`);
}

export async function type(page: Page, name: RegExp, value: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Control+a');
  await page.keyboard.type(value);
}

export async function totals(page: Page): Promise<string[][]> {
  return page
    .locator('[data-yarn]')
    .evaluateAll((rows) =>
      rows.map((row) => [
        row.getAttribute('data-yarn') ?? '',
        ...[...row.querySelectorAll('td')].map((cell) => cell.textContent ?? ''),
      ]),
    );
}
