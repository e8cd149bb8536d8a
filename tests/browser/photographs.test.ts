/** Photographs as a browser shows them: the width it needs, what they show in words, nothing moved while they load. */

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { movedSince } from './layout-shift.ts';
import { type OpenSite, openSite } from './open-site.ts';

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

const PAGES = ['quarry-hexagon/', 'quarry-hexagon/four-rounds/', ''];

const WIDTHS = [
  { width: 390, height: 844 },
  { width: 1280, height: 900 },
];

/** Down to the foot and back, so that all is fetched that comes near. */
async function scrolled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    for (let y = 0; y < document.body.scrollHeight; y += 300) {
      scrollTo(0, y);
      await new Promise((resolve) => setTimeout(resolve, 30));
    }
    scrollTo(0, 0);
  });
  await page.waitForFunction(() => [...document.images].every((image) => image.complete));
}

async function moved(page: Page): Promise<number> {
  return (await movedSince(page)).reduce((sum, { value }) => sum + value, 0);
}

describe.each(PAGES)('on the page %j', (address) => {
  test.each(WIDTHS)(
    'photographs are shown at $width dots, in WebP, with words, and nothing moves',
    async (viewport) => {
      await open.visit(address, { viewport, serviceWorkers: 'block' }, async (page) => {
        const refused: string[] = [];
        page.on('console', (message) => {
          const ofFont = message.location().url.endsWith('.woff');
          if (message.type() === 'error' && !ofFont) refused.push(message.text());
        });
        // Letters that come late move the words a little; that is not what is looked at here.
        await page.route('**/*.woff', (route) => route.abort());
        await page.reload();
        await scrolled(page);
        const found = await page.locator('img.photograph').evaluateAll((images) =>
          images.map((image) => {
            const { alt, currentSrc, naturalWidth, clientWidth, clientHeight } = image as HTMLImageElement;
            return { alt, currentSrc, naturalWidth, clientWidth, clientHeight };
          }),
        );
        expect(found.length).toBeGreaterThan(0);
        for (const { alt, currentSrc, naturalWidth, clientWidth, clientHeight } of found) {
          expect(alt.length).toBeGreaterThan(20);
          expect(currentSrc).toMatch(/-(?:480|960)\.webp$/);
          expect(naturalWidth).toBeGreaterThan(0);
          expect(Number(/-(\d+)\.webp$/.exec(currentSrc)?.[1])).toBeGreaterThanOrEqual(clientWidth);
          expect(clientHeight).toBeGreaterThan(80);
        }
        expect(await moved(page)).toBe(0);
        expect(refused).toEqual([]);
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(wide).toBeLessThanOrEqual(viewport.width);
      });
    },
  );
});

test('a photograph without its place kept would move the page, and that would be seen', async () => {
  await open.visit('quarry-hexagon/', { viewport: { width: 390, height: 844 } }, async (page) => {
    await scrolled(page);
    await page.evaluate(() => {
      const image = document.querySelector('img.photograph');
      image?.removeAttribute('width');
      image?.removeAttribute('height');
      image?.setAttribute('src', '');
      image?.closest('picture')?.querySelector('source')?.remove();
    });
    expect(await moved(page)).toBeGreaterThan(0);
  });
});
