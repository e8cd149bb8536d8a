/** The pages of an along of hexagons in a browser, opened from a folder on the disk; its planner by keyboard and by pointer. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { alikePairs, type Tile } from '../../src/along/arrange.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPdf } from '../booklet/read-pdf.ts';
import { rowfold } from '../commands/run-rowfold.ts';
import { type OpenAlong, openAlong, yarnRows } from './open-along.ts';
import { tabTo, totals, type } from './planner-keys.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const SOURCE = 'tests/along/hexagons/comb-blanket';
const PAGES = { along: '', joining: 'joining-and-border', planner: 'planner' } as const;

let open: OpenAlong;
beforeAll(async () => {
  open = await openAlong(SOURCE, 'comb-blanket');
});
afterAll(() => open.close());

function visit<T>(
  page: keyof typeof PAGES,
  options: BrowserContextOptions,
  look: (page: Page) => Promise<T>,
): Promise<T> {
  return open.visit(PAGES[page], options, look);
}

describe.each(Object.keys(PAGES) as (keyof typeof PAGES)[])('the page "%s"', (kind) => {
  test('has no fault by WCAG 2.2 A and AA that axe can find', async () => {
    const found = await visit(kind, {}, async (page) => {
      await page.evaluate(axe);
      const results: AxeResults = await page.evaluate(
        `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })`,
      );
      return results;
    });
    expect(found.passes.map(({ id }) => id)).toContain('color-contrast');
    expect(found.violations.map(({ id }) => id)).toEqual([]);
  });

  test('is no wider than a window of 320', async () => {
    const over = await visit(kind, { viewport: { width: 320, height: 800 } }, (page) =>
      page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    );
    expect(over).toBeLessThanOrEqual(0);
  });
});

async function planned(page: Page): Promise<void> {
  await page.evaluate(() => document.body.focus());
  await type(page, /^Wax Cell/, '7');
  await type(page, /^Clover Cell/, '6');
  await type(page, /^Thyme Cell/, '2');
  await type(page, /^Brood Cell/, '5');
  await type(page, /^Hexagons across/, '5');
  await type(page, /^Rows/, '4');
}

async function names(page: Page): Promise<string[]> {
  return page
    .locator('[data-tile]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? ''));
}

function tilesOf(all: readonly string[]): Tile[] {
  return all.map((name) => {
    const [title = '', , row = '', place = ''] = name.split(', ');
    return { id: title, x: Number(place.slice(6)) - 1, y: Number(row.slice(4)) - 1, covers: 1 };
  });
}

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');

describe('the planner, by keyboard alone', () => {
  test('plans a full blanket, with the totals of the command line', async () => {
    const make = 'wax-cell 7, clover-cell 6, thyme-cell 2, brood-cell 5';
    const { out } = await rowfold(
      ['blanket', SOURCE, '--preview', '--across', '5', '--down', '4', '--make', make, '--json'],
      PROJECT_FOLDER,
    );
    const told = JSON.parse(out);
    const shown = await visit('planner', {}, async (page) => {
      await planned(page);
      return {
        filled: await page.textContent('.filled'),
        yarn: await totals(page),
        measures: await page.locator('.planner-measures li').allInnerTexts(),
        tiles: tilesOf(await names(page)),
      };
    });
    expect(shown.filled).toBe('20 of 20 places filled with 20 hexagons.');
    expect([told.places, told.filled, told.squares]).toEqual([20, 20, 20]);
    expect(shown.yarn).toEqual(yarnRows(told.yarn));
    // 16 within the rows; between two rows of five lie 2 x 5 - 1 edges of 8 + 2 stitches.
    expect(shown.measures.slice(1, 3)).toEqual([
      'Seams within the rows: 16, 10 stitches each',
      'Seams between the rows, in zigzag: 3, 90 stitches each',
    ]);
    expect(shown.measures.at(-1)).toBe(`Border round 3: ${told.border.rounds[2].stitches} stitches`);
    expect(alikePairs('hexagons', shown.tiles)).toBe(0);
  });

  test('goes from row to row in zigzag, moves a hexagon, and keeps what was done', async () => {
    await visit('planner', {}, async (page) => {
      await planned(page);
      const before = await names(page);
      await tabTo(page, /, row 1, place 1$/);
      for (const [key, at] of [
        ['ArrowDown', /row 2, place 1$/],
        ['ArrowDown', /row 3, place 1$/],
        ['ArrowRight', /row 3, place 2$/],
        ['ArrowUp', /row 2, place 2$/],
        ['End', /row 4, place 5$/],
        ['Home', /row 1, place 1$/],
      ] as const) {
        await page.keyboard.press(key);
        expect(await focused(page)).toMatch(at);
      }
      await page.keyboard.press('Enter');
      expect(await page.textContent('.said')).toMatch(/picked up. Choose the hexagon/);
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      const after = await names(page);
      expect(after[0]?.split(',')[0]).toBe(before[1]?.split(',')[0]);
      expect(after[1]?.split(',')[0]).toBe(before[0]?.split(',')[0]);
      const address = page.url();
      await page.goto('about:blank');
      await page.goto(address);
      expect(await names(page)).toEqual(after);
      await page.goto(address.split('#')[0] ?? '');
      expect(await names(page)).toEqual(after);
    });
  });

  test('a hexagon is taken by the pointer where it is drawn', async () => {
    await visit('planner', { viewport: { width: 390, height: 900 } }, async (page) => {
      const before = await names(page);
      const [from, to] = [0, before.findIndex((name) => name.split(',')[0] !== before[0]?.split(',')[0])];
      for (const tile of [from, to]) await page.locator(`[data-tile="${tile}"] .rim`).click({ force: true });
      const after = await names(page);
      expect(after[from]?.split(',')[0]).toBe(before[to]?.split(',')[0]);
      expect(after[to]?.split(',')[0]).toBe(before[from]?.split(',')[0]);
    });
  });

  test('prints as one page', async () => {
    const pdf = await visit('planner', {}, async (page) => {
      await planned(page);
      return page.pdf({ format: 'A4' });
    });
    const { pages } = await readPdf(pdf);
    expect(pages).toHaveLength(1);
    expect(pages[0]?.texts.map(({ text }) => text).join(' ')).toMatch(/Thyme Cell: 2/);
  });
});
