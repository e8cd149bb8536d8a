import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type OpenSite, openSite } from './open-site.ts';

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

const KINDS = ['list', 'pattern', 'size', 'full words', 'stitches', 'missing'] as const;

async function boxOf(locator: Locator) {
  const box = await locator.boundingBox();
  if (box === null) throw new Error('it is not shown');
  return box;
}

describe.each(KINDS)('the page of kind "%s"', (kind) => {
  test.each([
    ['a window 320 pixels wide', 320, '100%'],
    ['a window 640 pixels wide, with letters twice as large', 640, '200%'],
    ['a desk 1280 pixels wide', 1280, '100%'],
  ])('does not scroll sideways in %s', async (_, width, letters) => {
    await open.visit(open.kinds[kind], { viewport: { width, height: 800 } }, async (page) => {
      await page.evaluate(`document.documentElement.style.fontSize = '${letters === '100%' ? '' : letters}'`);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
    });
  });
});

test('nothing is asked of another host, nothing is blocked, and the fonts come', async () => {
  const asked: string[] = [];
  const said: string[] = [];
  await open.visit('', {}, async (page) => {
    page.on('request', (request) => asked.push(new URL(request.url()).hostname));
    page.on('console', (message) => said.push(message.text()));
    page.on('requestfailed', (request) => {
      const why = request.failure()?.errorText ?? '';
      // The browser itself drops a page's icon when it moves on to the next page; what is blocked says otherwise.
      if (why !== 'net::ERR_ABORTED') said.push(`${request.url()}: ${why}`);
    });
    await page.goto(new URL(open.kinds.size, page.url()).href, { waitUntil: 'networkidle' });
    for (const face of ['600 20px "Rowfold Title"', '400 20px "Rowfold Text"', '600 20px "Rowfold Text"']) {
      expect(await page.evaluate(`document.fonts.check('${face}', 'Row 2 (½)')`)).toBe(true);
    }
    expect(await page.evaluate('[...document.fonts].map(({ status }) => status)')).toEqual([
      'loaded',
      'loaded',
      'loaded',
    ]);
  });
  expect(new Set(asked)).toEqual(new Set(['127.0.0.1']));
  expect(said).toEqual([]);
});

test('without JavaScript the rows can be read and ticked off, and the links lead on', async () => {
  await open.visit(open.kinds.size, { javaScriptEnabled: false }, async (page) => {
    const words = open.site.collection.find(({ compiled }) =>
      open.kinds.size.startsWith(`${compiled.slug}/`),
    );
    const own = words?.compiled.pattern?.terms === 'UK' ? 'uk' : 'us';
    const line = words?.compiled.sizes[0]?.words[own].parts[0]?.lines.find(({ label }) => label !== null);
    expect(
      await page
        .locator('.rows li')
        .filter({ hasText: line?.text ?? 'no row' })
        .count(),
    ).toBeGreaterThan(0);
    const tick = page.getByLabel(line?.label ?? 'no label', { exact: true }).first();
    await tick.check();
    expect(await tick.isChecked()).toBe(true);
    await page.getByRole('link', { name: 'UK in full words' }).click();
    expect(page.url()).toMatch(/\/uk-full\/$/);
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toContain(
      words?.compiled.pattern?.title,
    );
    await page
      .getByRole('navigation', { name: 'Where you are' })
      .getByRole('link', { name: 'Patterns' })
      .click();
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('The Salt Shed');
  });
});

describe('chart and words', () => {
  test('stand side by side on a desk', async () => {
    await open.visit(open.kinds.size, { viewport: { width: 1280, height: 800 } }, async (page) => {
      const chart = await boxOf(page.locator('.chart').first());
      const rows = await boxOf(page.locator('.with-chart .rows').first());
      expect(chart.x).toBeGreaterThanOrEqual(rows.x + rows.width);
      expect(Math.abs(chart.y - rows.y)).toBeLessThan(20);
    });
  });

  test('follow each other on a phone, chart first, each as wide as the page', async () => {
    await open.visit(open.kinds.size, { viewport: { width: 390, height: 844 } }, async (page) => {
      const chart = await boxOf(page.locator('.chart').first());
      const rows = await boxOf(page.locator('.with-chart .rows').first());
      expect(rows.y).toBeGreaterThanOrEqual(chart.y + chart.height);
      expect(chart.width).toBeGreaterThan(340);
      expect(rows.width).toBeGreaterThan(340);
    });
  });
});

test('on paper there is the pattern in black on white, without what only a screen needs', async () => {
  await open.visit(open.kinds.size, { colorScheme: 'dark' }, async (page) => {
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    for (const hidden of ['.masthead', '.choose', '.downloads', '.skip']) {
      expect(await page.locator(hidden).isVisible(), hidden).toBe(false);
    }
    for (const shown of ['h1', '.rows', '.tick input', '.yarns, .facts']) {
      expect(await page.locator(shown).first().isVisible(), shown).toBe(true);
    }
    const [paper, ink] = (await page.evaluate(
      '[getComputedStyle(document.documentElement).backgroundColor, getComputedStyle(document.body).color]',
    )) as string[];
    expect([paper, ink]).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
  });
});
