/** A pattern followed row by row on a phone: what is ticked stays, also without a network. */

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fromKept, rowAtHand, toKeep } from '../../src/reader/row-place.ts';
import { type OpenSite, openSite } from './open-site.ts';

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

const PHONE = { viewport: { width: 390, height: 780 } };
const ticked = (page: Page): Promise<boolean[]> =>
  page.locator('.rows.ticked input').evaluateAll((boxes) => boxes.map((box) => box.matches(':checked')));
const atHand = (page: Page): Promise<number> =>
  page
    .locator('.rows.ticked li')
    .evaluateAll((rows) => rows.findIndex((row) => row.hasAttribute('aria-current')));

test('to the last row by the thumb alone, with the place kept over a reload', async () => {
  await open.visit(open.kinds.size, PHONE, async (page) => {
    expect(await page.locator('#at-hand').isVisible()).toBe(false);
    const rows = (await ticked(page)).length;
    expect(rows).toBeGreaterThan(4);
    await page.locator('.rows.ticked input').first().check();
    expect(await page.locator('#at-hand').isVisible()).toBe(true);
    expect(await atHand(page)).toBe(1);
    await page.locator('#at-hand-done').click();
    expect(await atHand(page)).toBe(2);
    await page.reload();
    expect((await ticked(page)).map((one, i) => (one ? i : -1)).filter((i) => i >= 0)).toEqual([0, 1]);
    expect(await atHand(page)).toBe(2);
    await page.locator('#at-hand-back').click();
    expect(await atHand(page)).toBe(1);
    for (let i = 1; i < rows; i++) await page.locator('#at-hand-done').click();
    expect(await ticked(page)).toEqual(Array.from({ length: rows }, () => true));
    expect(await page.locator('#at-hand-label').textContent()).toBe('All rows are done.');
    await page.locator('#at-hand-done').click();
    expect((await ticked(page)).some(Boolean)).toBe(false);
  });
});

test('the row at hand is in view, and nothing of it lies under the bar', async () => {
  await open.visit(open.kinds.size, { ...PHONE, reducedMotion: 'reduce' }, async (page) => {
    await page.locator('.rows.ticked input').first().check();
    for (let i = 0; i < 3; i++) await page.locator('#at-hand-done').click();
    const row = await page.locator('.rows li[aria-current]').boundingBox();
    const bar = await page.locator('#at-hand').boundingBox();
    expect(row?.y).toBeGreaterThanOrEqual(0);
    expect((row?.y ?? 0) + (row?.height ?? 0)).toBeLessThanOrEqual(bar?.y ?? 0);
  });
});

test('in other terms the place is the same, and the terms she chose are there when she comes back', async () => {
  await open.visit(open.kinds.size, PHONE, async (page) => {
    await page.locator('.rows.ticked input').nth(2).check();
    await page.locator('a[data-terms="uk-full"]').click();
    await page.waitForURL(/uk-full\//);
    expect((await ticked(page)).indexOf(true)).toBe(2);
    await page.goto(new URL(`../`, page.url()).href);
    await page.waitForURL(/uk-full\//);
    const own = page.locator('a[data-terms="us"]');
    await own.click();
    await page.waitForURL((url) => !url.pathname.includes('uk-full'));
    await page.waitForTimeout(300);
    expect(page.url()).not.toContain('uk-full');
  });
});

test('opened once, page, picture and booklet are there without a network, and so are the ticks', async () => {
  await open.visit(open.kinds.size, PHONE, async (page) => {
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
    // The second visit goes through it.
    await page.reload({ waitUntil: 'networkidle' });
    await page.waitForFunction('navigator.serviceWorker.controller !== null');
    const pdf = await page.locator('.downloads a[href$=".pdf"]').first().getAttribute('href');
    const size = await page.evaluate(
      `fetch(${JSON.stringify(pdf)}).then((r) => r.arrayBuffer()).then((b) => b.byteLength)`,
    );
    await page.locator('.rows.ticked input').first().check();
    await page.context().setOffline(true);
    await page.reload();
    expect(await page.locator('h1').textContent()).toBeTruthy();
    expect((await ticked(page))[0]).toBe(true);
    expect(
      await page.evaluate(
        'document.fonts.ready.then(() => document.fonts.check("400 20px \\"Rowfold Text\\""))',
      ),
    ).toBe(true);
    const again = await page.evaluate(
      `fetch(${JSON.stringify(pdf)}).then((r) => r.arrayBuffer()).then((b) => b.byteLength)`,
    );
    expect(again).toBe(size);
    await page.context().setOffline(false);
  });
});

describe('where rows are kept', () => {
  const place = { ticked: [true, false, true, false], last: 2 };

  test('the row at hand is the first after the one ticked last, else the first of all', () => {
    expect(rowAtHand(place)).toBe(3);
    expect(rowAtHand({ ticked: [true, false, true, true], last: 3 })).toBe(1);
    expect(rowAtHand({ ticked: [true, true], last: 1 })).toBe(-1);
  });

  test('what is kept comes back, but not for a pattern that has other rows by now', () => {
    expect(fromKept(toKeep(place), 4)).toEqual(place);
    expect(fromKept(toKeep(place), 5)).toEqual({ ticked: [false, false, false, false, false], last: -1 });
  });
});
