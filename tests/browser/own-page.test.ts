/** The page on which a reader has a pattern made over, driven as she would, against what the command line makes of the same. */

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compileOwnSize } from '../../src/compile-own.ts';
import type { OwnSize } from '../../src/pattern/own-size.ts';
import { NOTHING_ASKED } from '../../src/pattern/own-size.ts';
import { printBooklet } from '../../src/print-booklet.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import type { DialectKey } from '../../src/wording/words.ts';
import { readPdf } from '../booklet/read-pdf.ts';
import { type OpenSite, openSite } from './open-site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

function compiledOf(slug: string) {
  const found = open.site.collection.find(({ compiled }) => compiled.slug === slug);
  if (found === undefined) throw new Error(`no ${slug}`);
  return found.compiled;
}

/** Rows as the page shows them: label, words, count, without the spaces between and without what the words mean. */
const shownRows = (page: Page): Promise<string[]> =>
  page.locator('#own-rows .rows li').evaluateAll((rows) =>
    rows.map((row) =>
      [...row.querySelectorAll('.label, p:not(.watch), .sentence > span')]
        .map((words) => words.textContent ?? '')
        .join('')
        .replace(/\s+/g, ''),
    ),
  );

function wordedRows(slug: string, own: Partial<OwnSize>, key: DialectKey): string[] {
  const [size] = compileOwnSize(compiledOf(slug), { ...NOTHING_ASKED, ...own }).sizes;
  return (size?.words[key].parts ?? []).flatMap(({ lines }) =>
    lines.map(({ label, text, count }) =>
      [label, text, count]
        .filter((words) => words !== null)
        .join('')
        .replace(/\s+/g, ''),
    ),
  );
}

const GAUGE = { stitches: 14, rows: 9, overMm: 100, upMm: 100 };
const WISHES: readonly [slug: string, query: string, own: Partial<OwnSize>, key: DialectKey][] = [
  ['sandbar-square', 'width=40+cm&gauge-sts=14&gauge-rows=9', { widthMm: 400, gauge: GAUGE }, 'us'],
  [
    'sandbar-square',
    'width=12+in&height=14+in&terms=uk-full',
    { widthMm: 304.8, heightMm: 355.6 },
    'uk-full',
  ],
  ['lantern-square', 'width=8&units=imperial&terms=uk', { widthMm: 203.2 }, 'uk'],
  ['quarry-hexagon', 'rows=12&terms=us-full', { rows: 12 }, 'us-full'],
  ['two-tides-square', 'size=large&height=50+cm', { heightMm: 500 }, 'us'],
  ['pebble-basket', 'gauge-sts=12&gauge-rows=14', { gauge: { ...GAUGE, stitches: 12, rows: 14 } }, 'uk'],
];

test.each(WISHES)(
  '%s?%s gives the rows and counts that the command line gives',
  async (slug, query, own, key) => {
    const compiled = compiledOf(slug);
    const wanted = new URLSearchParams(query).get('size');
    const from = Math.max(
      0,
      compiled.sizes.findIndex((size) => size.slug === wanted),
    );
    await open.visit(`${slug}/your-own/?${query}`, {}, async (page) => {
      const expected = wordedRows(slug, { ...own, from }, key);
      expect(expected.length).toBeGreaterThan(3);
      await page.locator('#own-rows .rows li').first().waitFor();
      expect(await shownRows(page)).toEqual(expected);
      const [size] = compileOwnSize(compiled, { ...NOTHING_ASKED, ...own, from }).sizes;
      const stitches = new Intl.NumberFormat('en-GB').format(size?.measures.stitches ?? 0);
      expect(await page.locator('#own-first .facts').textContent()).toContain(stitches);
    });
  },
);

test('filled in by keyboard alone, it is worked out, told aloud, kept in the address, and there again after a reload and going back', async () => {
  await open.visit('sandbar-square/your-own/', {}, async (page) => {
    await page.locator('#own-width').focus();
    await page.keyboard.type('30 cm');
    await page.keyboard.press('Enter');
    await page.locator('#own-rows .rows li').first().waitFor();
    expect(page.url()).toContain('width=30+cm');
    expect(await page.locator('#own-told').getAttribute('role')).toBe('status');
    expect(await page.locator('#own-told').textContent()).toMatch(/^Worked out: it comes out at 29\.5 × /);
    const rows = await shownRows(page);
    await page.reload();
    await page.locator('#own-rows .rows li').first().waitFor();
    expect(await page.locator('#own-width').inputValue()).toBe('30 cm');
    expect(await shownRows(page)).toEqual(rows);
    await page.locator('#own-terms').selectOption('uk');
    await page.waitForURL(/terms=uk/);
    expect(await shownRows(page)).not.toEqual(rows);
    await page.goBack();
    await page.waitForFunction(`document.querySelector('#own-terms').value === 'us'`);
    expect(await shownRows(page)).toEqual(rows);
  });
});

test('rounds asked for in the address stay when she changes her terms', async () => {
  await open.visit('quarry-hexagon/your-own/?rows=12', {}, async (page) => {
    await page.locator('#own-rows .rows li').first().waitFor();
    await page.locator('#own-terms').selectOption('uk');
    await page.waitForURL(/terms=uk/);
    expect(new URL(page.url()).searchParams.get('rows')).toBe('12');
    expect(await shownRows(page)).toEqual(wordedRows('quarry-hexagon', { rows: 12 }, 'uk'));
  });
});

test('a size beside hers is one step away', async () => {
  await open.visit('sandbar-square/your-own/?width=30+cm', {}, async (page) => {
    const first = page.locator('.near a').first();
    const count = await first.textContent();
    await first.click();
    await page.locator('.near tr[aria-current]').waitFor();
    expect(await page.locator('.near tr[aria-current] td').first().textContent()).toBe(count);
  });
});

test('what cannot be read is told with the field marked, and what was made before stays', async () => {
  await open.visit('sandbar-square/your-own/?width=30+cm', {}, async (page) => {
    await page.locator('#own-rows .rows li').first().waitFor();
    await page.locator('#own-width').fill('as wide as the bed');
    await page.keyboard.press('Enter');
    expect(await page.locator('#own-told').textContent()).toMatch(/^Width wants a length with its unit/);
    expect(await page.locator('#own-width').getAttribute('aria-invalid')).toBe('true');
    expect((await shownRows(page)).length).toBeGreaterThan(3);
  });
});

test('its chart is drawn for the hand she says, in its own part of the script', async () => {
  const drawnFor = (hand: string) =>
    open.visit(`sandbar-square/your-own/?width=20+cm&hand=${hand}`, {}, async (page) => {
      await page.locator('.chart svg').first().waitFor();
      return page.locator('.chart desc').first().textContent();
    });
  const [right, left] = [await drawnFor('right'), await drawnFor('left')];
  expect(left).toMatch(/left-handed/i);
  expect(right).not.toMatch(/left-handed/i);
});

test('what it sets is what the page of a ready-made size sets, element for element', async () => {
  const sections = ['materials', 'abbreviations', 'special-stitches', 'notes', 'finishing'];
  const read = (page: Page): Promise<(string | null)[]> =>
    page.evaluate(
      `${JSON.stringify(sections)}.map((id) => document.querySelector('[aria-labelledby="' + id + '"]')?.outerHTML.replace(/>\\s+/g, '>').replace(/\\s+</g, '<') ?? null)`,
    );
  const rows = (page: Page): Promise<string[]> =>
    page
      .locator('.rows')
      .evaluateAll((lists) =>
        lists.map((list) => list.outerHTML.replace(/>\s+/g, '>').replace(/\s+</g, '<')),
      );
  for (const slug of ['sandbar-square', 'pebble-basket']) {
    const size = compiledOf(slug).sizes[0]?.slug ?? '';
    const readyMade = await open.visit(`${slug}/${size}/`, {}, async (page) => [
      await read(page),
      await rows(page),
    ]);
    const own = await open.visit(`${slug}/your-own/?size=${size}`, {}, async (page) => {
      await page.locator('#own-rows .rows li').first().waitFor();
      return [await read(page), await rows(page)];
    });
    expect(own).toEqual(readyMade);
  }
});

describe('without a script', () => {
  test('it says so and leads to the sizes that stand ready', async () => {
    await open.visit('sandbar-square/your-own/?width=30+cm', { javaScriptEnabled: false }, async (page) => {
      expect(await page.locator('#own-first').textContent()).toContain('Where scripts are switched off');
      const links = await page
        .locator('#own-first a')
        .evaluateAll((all) => all.map((link) => link.textContent));
      expect(links).toEqual(compiledOf('sandbar-square').sizes.map(({ size }) => size.name));
    });
  });
});

describe.each(['light', 'dark'] as const)('in a %s scheme', (colorScheme) => {
  test.each(['', '?width=30+cm', '?width=nonsense'])('axe finds no fault on your-own/%s', async (query) => {
    await open.visit(`sandbar-square/your-own/${query}`, { colorScheme }, async (page) => {
      if (query === '?width=30+cm') await page.locator('.chart svg').first().waitFor();
      await page.evaluate(axe);
      const results: AxeResults = await page.evaluate(
        `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })`,
      );
      expect(results.passes.map(({ id }) => id)).toContain('color-contrast');
      expect(
        results.violations.flatMap(({ id, nodes }) =>
          nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
        ),
      ).toEqual([]);
    });
  });
});

test('on a phone nothing is wider than the page, and it asks no other host', async () => {
  await open.visit('sandbar-square/', { viewport: { width: 320, height: 700 } }, async (page) => {
    const asked: string[] = [];
    page.on('request', (request) => asked.push(new URL(request.url()).host));
    await page.getByText('Another size, gauge or yarn').click();
    await page.locator('#own-width').fill('25 cm');
    await page.keyboard.press('Enter');
    await page.waitForURL(/your-own\/\?/);
    // The address is short enough to pass on: what she left empty does not stand in it.
    await page.waitForURL((url) => !url.search.includes('hook='));
    expect(page.url()).toContain('width=25+cm');
    await page.locator('.chart svg').first().waitFor();
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(320);
    expect(new Set(asked).size).toBe(1);
  });
});

test.each([
  ['flat', 'all'],
  ['folded', 'words'],
] as const)(
  'its booklet (%s, %s), set in the browser with fonts of the site, says on every page what the terminal’s does',
  async (form, holds) => {
    const query = 'width=25+cm&terms=uk&hand=left';
    await open.visit(`lantern-square/your-own/?${query}`, { acceptDownloads: true }, async (page) => {
      await page.locator('#own-rows .rows li').first().waitFor();
      await page.locator('#keep-form').selectOption(form);
      await page.locator('#keep-holds').selectOption(holds);
      const [download] = await Promise.all([
        page.waitForEvent('download', { timeout: 60_000 }),
        page.locator('button[data-keep="Letter"]').click(),
      ]);
      expect(download.suggestedFilename()).toBe('lantern-square-your-own-uk-letter.pdf');
      const made = await readPdf(readFileSync(await download.path()));
      const own = compileOwnSize(compiledOf('lantern-square'), { ...NOTHING_ASKED, widthMm: 250 });
      const [size] = own.sizes;
      if (size === undefined) throw new Error('nothing was made');
      const choice = {
        dialect: 'uk',
        paper: 'Letter',
        leftHanded: true,
        address: page.url(),
        form,
        holds,
        foldingNotes: true,
      } as const;
      const expected = await readPdf(await printBooklet(own, size, choice, readFontFiles()));
      expect(made.pages.length).toBe(expected.pages.length);
      expect(made.pages).toEqual(expected.pages);
      expect(made.title).toBe(expected.title);
      expect(await page.locator('#own-kept').textContent()).toContain('The booklet is ready');
    });
  },
  90_000,
);

test('printed, the page leaves out the form and its buttons', async () => {
  await open.visit('sandbar-square/your-own/?width=30+cm', {}, async (page) => {
    await page.locator('#own-rows .rows li').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('#own-form').isVisible()).toBe(false);
    expect(await page.locator('[data-keep]').first().isVisible()).toBe(false);
    expect(await page.locator('#own-rows .rows li').first().isVisible()).toBe(true);
  });
});
