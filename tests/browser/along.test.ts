/** The pages of the sample along in a browser, opened from a folder on the disk: no server has a part in them. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPdf } from '../booklet/read-pdf.ts';
import { rowfold } from '../commands/run-rowfold.ts';
import { type OpenAlong, openAlong, yarnRows } from './open-along.ts';
import { tabTo, totals, type } from './planner-keys.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TOP = 'salt-marsh-blanket';
const PAGES = { along: '', week: 'week-4', joining: 'joining-and-border', planner: 'planner' } as const;

let open: OpenAlong;
beforeAll(async () => {
  open = await openAlong('alongs', TOP);
});
afterAll(() => open.close());

function visit<T>(
  page: keyof typeof PAGES,
  options: BrowserContextOptions,
  look: (page: Page) => Promise<T>,
  hash = '',
): Promise<T> {
  return open.visit(PAGES[page], options, look, hash);
}

describe.each(Object.keys(PAGES) as (keyof typeof PAGES)[])('the page "%s"', (kind) => {
  test.each(['light', 'dark'] as const)(
    'has no fault by WCAG 2.2 A and AA that axe can find, %s',
    async (colorScheme) => {
      const found = await visit(kind, { colorScheme }, async (page) => {
        await page.evaluate(axe);
        const results: AxeResults = await page.evaluate(
          `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })`,
        );
        return results;
      });
      expect(found.passes.map(({ id }) => id)).toContain('color-contrast');
      expect(
        found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`)),
      ).toEqual([]);
    },
  );

  test.each([320, 1280])('is no wider than a window of %i', async (width) => {
    const over = await visit(kind, { viewport: { width, height: 800 } }, (page) =>
      page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
    );
    expect(over).toBeLessThanOrEqual(0);
  });
});

describe('the schedule', () => {
  test('stands there without a script', async () => {
    const said = await visit('along', { javaScriptEnabled: false }, (page) =>
      page.locator('.schedule > li').allInnerTexts(),
    );
    expect(said).toHaveLength(6);
    expect(said[1]).toMatch(/Saturday 7 November 2026, 09:00 in Halifax \(UTC−4\)/);
    expect(said[1]).toMatch(/Sydney Sunday 00:00 \(UTC\+11\)/);
    expect(said.join()).not.toMatch(/by your clock/);
  });

  test.each([
    ['Asia/Tokyo', 'Saturday 7 November 2026, 22:00 by your clock (Tokyo)'],
    ['America/Los_Angeles', 'Saturday 7 November 2026, 05:00 by your clock (Los Angeles)'],
  ])('has the hours of a reader in %s beside them', async (timezoneId, words) => {
    const own = await visit('along', { timezoneId }, (page) => page.locator('.own-clock').allInnerTexts());
    expect(own[1]).toBe(words);
  });
});

describe('the planner, by keyboard alone', () => {
  const GRID = { across: 5, down: 4 };
  const MAKE = 'sluice-gate 6, samphire 5, long-creek 3, eelpath 3';

  /** Five across and four down, filled with squares of three weeks and three strips. */
  async function planned(page: Page): Promise<void> {
    await page.evaluate(() => document.body.focus());
    await type(page, /^Sluice Gate/, '6');
    await type(page, /^Cordgrass/, '0');
    await type(page, /^Samphire/, '5');
    await type(page, /^Sea Lavender/, '0');
    await type(page, /^Tidal Creek/, '0');
    await type(page, /^Long Creek/, '3');
    await type(page, /^Lapwing/, '0');
    await type(page, /^Eel Path/, '3');
    await type(page, /^Squares across/, String(GRID.across));
    await type(page, /^Squares down/, String(GRID.down));
  }

  test('plans a full blanket, with the totals of the command line', async () => {
    const { out } = await rowfold(
      ['blanket', `alongs/${TOP}`, '--preview', '--across', '5', '--down', '4', '--make', MAKE, '--json'],
      PROJECT_FOLDER,
    );
    const told = JSON.parse(out);
    const shown = await visit('planner', {}, async (page) => {
      await planned(page);
      return {
        filled: await page.textContent('.filled'),
        yarn: await totals(page),
        measures: await page.locator('.planner-measures li').allInnerTexts(),
      };
    });
    expect(shown.filled).toBe('20 of 20 places filled with 17 squares.');
    expect([told.places, told.filled, told.squares]).toEqual([20, 20, 17]);
    expect(shown.yarn).toEqual(yarnRows(told.yarn));
    expect(shown.measures[1]).toBe(
      `Seams from side to side: ${told.seams[0].count}, ${told.seamStitches[0]} stitches each`,
    );
    expect(shown.measures.at(-1)).toContain(`${told.border.repeats[0]} repeats along top and bottom`);
  });

  test('moves a square with the arrow keys, and keeps what was done in the address and in the browser', async () => {
    await visit('planner', {}, async (page) => {
      await planned(page);
      const names = () =>
        page.locator('[data-tile]').evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')));
      const before = await names();
      await tabTo(page, /, row 1, place 1$/);
      // From the first square of one place to the next one below or beside it that is another.
      const singles = before.flatMap((name, i) => (/^Long Creek/.test(name ?? '') ? [] : [i]));
      const [from = 0, to = 0] = [
        singles[0],
        singles.find((i) => before[i]?.split(',')[0] !== before[singles[0] ?? 0]?.split(',')[0]),
      ];
      await go(page, from);
      await page.keyboard.press('Enter');
      expect(await page.textContent('.said')).toMatch(/picked up/);
      await go(page, to);
      await page.keyboard.press('Enter');
      const after = await names();
      expect(after[from]?.split(',')[0]).toBe(before[to]?.split(',')[0]);
      expect(after[to]?.split(',')[0]).toBe(before[from]?.split(',')[0]);
      const address = page.url();
      await page.goto('about:blank');
      await page.goto(address);
      expect(await names()).toEqual(after);
      await page.goto(address.split('#')[0] ?? '');
      expect(await names()).toEqual(after);
    });
  });

  /** By the arrow keys alone: left and up to the corner, then down and to the right. */
  async function go(page: Page, tile: number): Promise<void> {
    await page.keyboard.press('Home');
    const place = await page.locator(`[data-tile="${tile}"]`).getAttribute('aria-label');
    const [, row = '1', column = '1'] = /row (\d+), place (\d+)$/.exec(place ?? '') ?? [];
    for (let i = 1; i < Number(row); i += 1) await page.keyboard.press('ArrowDown');
    for (let i = 0; i < 60; i += 1) {
      const at = await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
      const now = Number(/place (\d+)$/.exec(at)?.[1] ?? 0);
      if (now === Number(column)) return;
      await page.keyboard.press(now < Number(column) ? 'ArrowRight' : 'ArrowLeft');
    }
    throw new Error(`never came to ${place}`);
  }

  test('prints as one page with the plan, the squares and the yarn', async () => {
    const pdf = await visit('planner', {}, async (page) => {
      await planned(page);
      return page.pdf({ format: 'A4' });
    });
    const { pages } = await readPdf(pdf);
    const words = pages[0]?.texts.map(({ text }) => text).join(' ') ?? '';
    expect(pages).toHaveLength(1);
    expect(words).toMatch(/Sluice Gate: 6/);
    expect(words).not.toMatch(/Print the plan/);
  });

  test('an address that was cut short is read as far as it goes', async () => {
    const filled = await visit(
      'planner',
      {},
      (page) => page.textContent('.filled'),
      '#3x2;apart;sluice-gate=6;A=12',
    );
    expect(filled).toBe('6 of 6 places filled with 6 squares.');
  });

  test('no two alike lie side by side where she asks for it and that can be', async () => {
    const alike = await visit('planner', {}, (page) =>
      page.locator('[data-tile]').evaluateAll((all) => {
        const at = new Map(
          all.map((one) => {
            const [title = '', , row = '', place = ''] = (one.getAttribute('aria-label') ?? '').split(', ');
            return [`${row.slice(4)},${place.slice(6)}`, title] as const;
          }),
        );
        return [...at].filter(([key, title]) => {
          const [row = 0, place = 0] = key.split(',').map(Number);
          return at.get(`${row},${place + 1}`) === title || at.get(`${row + 1},${place}`) === title;
        });
      }),
    );
    expect(alike).toEqual([]);
  });
});
