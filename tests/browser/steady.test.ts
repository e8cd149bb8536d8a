/** The page is there before its scripts are, and nothing on it moves when they arrive. */

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { movedSince } from './layout-shift.ts';
import { type OpenSite, openSite } from './open-site.ts';

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

// Scripts are held back on the way, which what a page keeps for itself would go round.
const PHONE = { viewport: { width: 390, height: 780 }, serviceWorkers: 'block' } as const;
/** Long enough for a page to be painted without its scripts. */
const LATE_MS = 1500;

/** From when the scripts come: letters of another face move lines a little when the fonts come. */
const moved = (page: Page) => movedSince(page, LATE_MS);

async function withLateScripts(page: Page, address: string): Promise<number> {
  let arrived = 0;
  await page.route('**/*.js', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, LATE_MS));
    arrived += 1;
    await route.continue();
  });
  await page.goto(new URL(`/somewhere/${address}`, page.url()).href, { waitUntil: 'load' });
  await page.waitForTimeout(500);
  return arrived;
}

// Not the list with something asked for in its address: it shows all until a script has read what is asked.
const KINDS: readonly (readonly [string, string])[] = [
  ['list', ''],
  ['pattern', 'sandbar-square/'],
  ['size', 'sandbar-square/small/'],
  ['size in full words', 'lantern-square/four-rounds/uk-full/'],
  ['made over', 'sandbar-square/your-own/'],
  ['stitches', 'site-stitches/'],
];

describe.each(KINDS)('%s', (_, address) => {
  test('is painted before its scripts arrive, and does not move when they do', async () => {
    await open.visit('site-stitches/', PHONE, async (page) => {
      expect(await withLateScripts(page, address)).toBeGreaterThan(0);
      const painted = await page.evaluate(
        `performance.getEntriesByName('first-contentful-paint')[0].startTime`,
      );
      expect(painted).toBeLessThan(LATE_MS);
      expect(await moved(page)).toEqual([]);
    });
  });
});

test('nor does a page move on which her place is kept', async () => {
  await open.visit('sandbar-square/small/', PHONE, async (page) => {
    await page.locator('#follow').click();
    await page.locator('#at-hand-done').click();
    await withLateScripts(page, 'sandbar-square/small/');
    expect(await page.locator('.rows li[aria-current]').count()).toBe(1);
    expect(await moved(page)).toEqual([]);
  });
});
