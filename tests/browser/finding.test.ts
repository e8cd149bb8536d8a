/** Patterns are found by what readers ask, with and without a script, by pointer and by keyboard. */

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenSite, openSite } from './open-site.ts';

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

const PHONE = { viewport: { width: 390, height: 780 } };
const shown = (page: Page): Promise<(string | null)[]> =>
  page
    .locator('.shelf > li')
    .evaluateAll((entries) =>
      entries
        .filter((entry) => entry.checkVisibility())
        .map((entry) => entry.querySelector('a')?.textContent ?? null),
    );

test.each([true, false])(
  'several choices narrow the list together (scripts on: %s)',
  async (javaScriptEnabled) => {
    await open.visit('', { ...PHONE, javaScriptEnabled }, async (page) => {
      const all = await shown(page);
      expect(all.length).toBeGreaterThan(3);
      await page.getByLabel('Technique').selectOption({ label: 'Worked in rows' });
      expect(await shown(page)).toEqual(expect.arrayContaining(['Sandbar Square', 'Two Tides Square']));
      expect(await shown(page)).not.toContain('Pebble Basket');
      await page.getByLabel('Finished size').selectOption({ label: '30 to 60 cm (12 to 24 in)' });
      expect(await shown(page)).toEqual(['Sandbar Square']);
      await page.getByLabel('Technique').selectOption({ label: 'Any' });
      expect(await shown(page)).toEqual(['Pebble Basket', 'Sandbar Square']);
    });
  },
);

test('by keyboard alone: what is found is told, stands in the address, and is there when it is passed on', async () => {
  await open.visit('', PHONE, async (page) => {
    const all = await shown(page);
    await page.getByLabel('Shape').focus();
    await page.keyboard.press('H');
    expect(await shown(page)).toEqual(['Quarry Hexagon']);
    expect(await page.getByRole('status').textContent()).toBe(`1 of ${all.length} shown`);
    expect(new URL(page.url()).search).toBe('?shape=hexagon');
    await page.reload();
    expect(await shown(page)).toEqual(['Quarry Hexagon']);
    await page.getByLabel('Yarn weight').selectOption({ label: '5 Bulky' });
    expect(await page.getByRole('status').textContent()).toBe(
      'Nothing here is all of that. Choose a little less.',
    );
    await page.getByRole('button', { name: 'Show all' }).focus();
    await page.keyboard.press('Enter');
    expect(await shown(page)).toEqual(all);
    expect(new URL(page.url()).search).toBe('');
  });
});

test('an address that asks for what is not there shows everything', async () => {
  await open.visit('?shape=teapot', PHONE, async (page) => {
    expect((await shown(page)).length).toBeGreaterThan(3);
    expect(await page.getByLabel('Shape').inputValue()).toBe('');
  });
});
