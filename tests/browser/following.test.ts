/** A pattern followed row by row on a phone: what is ticked stays, also without a network. */

import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  fromKept,
  lineAtHand,
  passAtHand,
  type RowPlace,
  rowBack,
  rowDone,
  startOver,
  toKeep,
} from '../../src/reader/row-place.ts';
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
    // One press for each row: a line may stand for many.
    for (let i = 0; i < 100 && (await atHand(page)) >= 0; i++) await page.locator('#at-hand-done').click();
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
  const place = { ticked: [true, false, true, false], last: 2, rowsDone: 1, passesDone: 3 };

  test('the line at hand is the first after the one ticked last, else the first of all', () => {
    expect(lineAtHand(place)).toBe(3);
    expect(lineAtHand({ ticked: [true, false, true, true], last: 3 })).toBe(1);
    expect(lineAtHand({ ticked: [true, true], last: 1 })).toBe(-1);
  });

  test('what is kept comes back, but not for a pattern that has other rows by now', () => {
    expect(fromKept(toKeep(place), 4)).toEqual(place);
    expect(fromKept(toKeep(place), 5)).toEqual(startOver(5));
  });

  test('a line of several rows is gone through row by row, and back again', () => {
    const rowsOf = (line: number): number => [1, 3, 0][line] ?? 0;
    const way: RowPlace[] = [startOver(3)];
    while (lineAtHand(way.at(-1) ?? startOver(0)) >= 0) way.push(rowDone(way.at(-1) ?? startOver(3), rowsOf));
    expect(way.map((one) => `${lineAtHand(one)}.${one.rowsDone}`)).toEqual([
      '0.0',
      '1.0',
      '1.1',
      '1.2',
      '2.0',
      '-1.0',
    ]);
    for (let i = way.length - 1; i > 0; i--) {
      const before = rowBack(way[i] ?? startOver(3), rowsOf);
      expect([lineAtHand(before), before.rowsDone]).toEqual([
        lineAtHand(way[i - 1] ?? startOver(3)),
        way[i - 1]?.rowsDone,
      ]);
    }
  });

  test('passes are counted through the repeats of a row one after the other', () => {
    expect([0, 1, 2, 3].map((done) => passAtHand(done, [2, 1]))).toEqual([
      { repeat: 0, pass: 1, of: 2 },
      { repeat: 0, pass: 2, of: 2 },
      { repeat: 1, pass: 1, of: 1 },
      null,
    ]);
  });
});

describe('the row at hand', () => {
  const lines = (page: Page): Promise<readonly { rows: readonly { row: number; onto: number | null }[] }[]> =>
    page.evaluate(`JSON.parse(document.querySelector('#following').textContent)`);

  test('is marked in the chart, with the row it goes into, row by row through a line of many', async () => {
    await open.visit('sandbar-square/small/', PHONE, async (page) => {
      const expected = (await lines(page)).flatMap(({ rows }) =>
        rows.length === 0
          ? [null]
          : rows.map(({ row, onto }) => `${row} on ${onto === null ? 'nothing' : onto}`),
      );
      // A chain of 26, rows on it, and an edging whose first round goes along all edges.
      expect(expected.slice(0, 4)).toEqual(['0 on nothing', '1 on 0', '2 on 1', '3 on 2']);
      expect(expected.length).toBeGreaterThan(10);
      await page.locator('#follow').click();
      const marked: (string | null)[] = [];
      for (const _ of expected) {
        const [now, under] = [page.locator('.chart .now'), page.locator('.chart .under')];
        const onto = (await under.count()) === 0 ? 'nothing' : await under.getAttribute('data-row');
        marked.push((await now.count()) === 0 ? null : `${await now.getAttribute('data-row')} on ${onto}`);
        await page.locator('#at-hand-done').click();
      }
      expect(marked).toEqual(expected);
    });
  });

  test('of rows that repeat others has the words of the one it is worked as, and its number', async () => {
    await open.visit('sandbar-square/small/', PHONE, async (page) => {
      await page.locator('#follow').click();
      for (let i = 0; i < 5; i++) await page.locator('#at-hand-done').click();
      expect(await page.locator('#at-hand-label').textContent()).toBe(
        'Row 5 of Rows 4–13, worked as Row 3, 4 of 9 done',
      );
      const words = await page.locator('.rows li:has(.label:text-is("Row 3")) > p').first().textContent();
      const count = await page.locator('.rows li:has(.label:text-is("Row 3")) .count').textContent();
      const shown = await page.locator('.rows li[aria-current] .as-row p').textContent();
      expect(shown?.replace('Row 5:', '').trim()).toBe(words?.replace(count ?? '?', '').trim());
    });
  });

  test('counts the passes of its repeat, and keeps the count over a reload', async () => {
    await open.visit('sandbar-square/small/', PHONE, async (page) => {
      await page.locator('#follow').click();
      await page.locator('#at-hand-done').click();
      const pass = page.locator('#at-hand-pass');
      expect(await pass.textContent()).toBe('Repeat 1 of 4');
      await pass.click();
      await pass.click();
      await page.reload();
      expect(await pass.textContent()).toBe('Repeat 3 of 4');
      expect(await page.locator('.rows li[aria-current] .again.now').count()).toBe(1);
      await pass.click();
      await pass.click();
      expect(await pass.textContent()).toBe('Repeats done');
      await page.locator('#at-hand-done').click();
      expect(await pass.textContent()).toBe('Repeat 1 of 3');
    });
  });
});

test('a size of her own is followed as a ready-made one is, and keeps her place when she changes its terms', async () => {
  await open.visit('sandbar-square/your-own/?width=30+cm', PHONE, async (page) => {
    await page.locator('#follow').click();
    for (let i = 0; i < 5; i++) await page.locator('#at-hand-done').click();
    const label = page.locator('#at-hand-label');
    expect(await label.textContent()).toMatch(/^Row 5 of Rows 4–\d+, worked as Row 3, 4 of 9 done$/);
    await page.locator('.chart .now').waitFor();
    expect(await page.locator('.chart .now').getAttribute('data-row')).toBe('5');
    await page.locator('#at-hand-pass').click();
    await page.reload();
    await page.locator('.chart .now').waitFor();
    expect(await page.locator('#at-hand-pass').textContent()).toMatch(/^Repeat 2 of \d+$/);
    await page.locator('form select[name="terms"]').selectOption('uk');
    await page.locator('.chart .now').waitFor();
    expect(await label.textContent()).toMatch(/^Row 5 of Rows 4–\d+, worked as Row 3, 4 of 9 done$/);
    // Another size is another piece of work.
    await page.goto(page.url().replace('30+cm', '40+cm'));
    await page.locator('#own-rows .rows li').first().waitFor();
    expect(await page.locator('#at-hand').isVisible()).toBe(false);
  });
});

describe('what the words of a row mean', () => {
  test('opens beneath it when a word is pressed, without ticking it', async () => {
    await open.visit('sandbar-square/small/', PHONE, async (page) => {
      const row = page.locator('.rows li').nth(1);
      await row.locator('abbr', { hasText: 'shell' }).first().click();
      expect(await row.locator('.meanings dl').isVisible()).toBe(true);
      expect(await row.locator('.asked').textContent()).toMatch(/shell\s*5 dc in same st/);
      expect(await row.locator('input').isChecked()).toBe(false);
      // Where the words are the label of the box as well: no demo pattern has a short word in such a sentence.
      const sentence = page.locator('.rows li:has(.sentence)').first();
      await sentence.locator('.sentence span').evaluate((words) => {
        words.innerHTML = '<abbr title="chain">ch</abbr>';
        words
          .closest('li')
          ?.insertAdjacentHTML(
            'beforeend',
            '<details class="meanings"><summary>?</summary><dl><div><dt>ch</dt><dd>chain</dd></div></dl></details>',
          );
      });
      await sentence.locator('abbr').click();
      expect(await sentence.locator('.asked').isVisible()).toBe(true);
      expect(await sentence.locator('input').isChecked()).toBe(false);
    });
  });

  test('opens without a script as well, and not at all where there is nothing short', async () => {
    await open.visit('sandbar-square/small/', { ...PHONE, javaScriptEnabled: false }, async (page) => {
      const row = page.locator('.rows li').nth(1);
      await row.locator('summary').click();
      expect(await row.locator('.meanings').textContent()).toMatch(/sc\s*single crochet/);
    });
    await open.visit('two-tides-square/small/us-full/', PHONE, async (page) => {
      expect(await page.locator('.rows li').count()).toBeGreaterThan(4);
      expect(await page.locator('.meanings').count()).toBe(0);
    });
  });
});

describe('light and letters', () => {
  const paper = (page: Page) => page.evaluate('getComputedStyle(document.documentElement).backgroundColor');
  const letters = (page: Page): Promise<number> =>
    page.evaluate('parseFloat(getComputedStyle(document.documentElement).fontSize)');

  test('are chosen without a script, by keyboard, for the page', async () => {
    await open.visit(open.kinds.list, { javaScriptEnabled: false, colorScheme: 'light' }, async (page) => {
      const before = [await paper(page), await letters(page)];
      await page.locator('.looks > summary').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('Tab');
      await page.keyboard.press('ArrowDown');
      await page.keyboard.press('ArrowDown');
      const after = [await paper(page), await letters(page)];
      expect(before).toEqual(['rgb(245, 239, 227)', 17]);
      expect(after).toEqual(['rgb(28, 25, 22)', 24.96]);
    });
  });

  test('are kept from page to page, and the device is followed where nothing is chosen', async () => {
    await open.visit(open.kinds.list, { colorScheme: 'dark' }, async (page) => {
      expect(await paper(page)).toBe('rgb(28, 25, 22)');
      await page.locator('.looks > summary').click();
      await page.getByLabel('Light', { exact: true }).check();
      await page.getByLabel('Largest').check();
      await page.goto(new URL(open.kinds.size, page.url()).href);
      expect(await paper(page)).toBe('rgb(245, 239, 227)');
      expect(await letters(page)).toBeCloseTo(24.96);
      await page.setViewportSize({ width: 320, height: 700 });
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
      // And can be changed there.
      await page.locator('.looks > summary').click();
      await page.getByLabel('As this device').check();
      expect(await paper(page)).toBe('rgb(28, 25, 22)');
    });
  });
});
