import { readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { GOOD, WRONG } from '../commands/run-rowfold.ts';
import { type ServedDesk, serveDesk } from './serve-desk.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const STARTER_LINE = GOOD.split('\n').findIndex((line) => line.includes('Row 1 (RS)')) + 1;
const MISREAD = GOOD.replace('medium', 'middling');

/** What a slow machine may need for one thing. */
const SLOW_MS = 30_000;
// Several things are waited for one after the other in most of these.
vi.setConfig({ testTimeout: 6 * SLOW_MS });

let desk: ServedDesk;
beforeAll(async () => {
  desk = await serveDesk({ 'grey-square': GOOD, 'grey-square-again': GOOD });
});
afterAll(() => desk.close());

const open = (name: string) => `.desk/?file=patterns/${name}/pattern.yaml`;
const told = (page: Page) => page.locator('#told');

/** Polled for as long as a slow machine needs; how quick it is, is measured elsewhere. */
const eventually = <T>(look: () => T | Promise<T>) => expect.poll(look, { timeout: SLOW_MS });

/** A page that would be loaded anew loses this. */
async function markPage(page: Page): Promise<void> {
  await page.evaluate('window.sameAsBefore = true');
}

async function faultsByAxe(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const results: AxeResults = await page.evaluate(
    `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })`,
  );
  expect(results.passes.map(({ id }) => id)).toContain('color-contrast');
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${id}: ${html.slice(0, 200)}`),
  );
}

describe.sequential('a pattern on the desk, written in an editor of her own', () => {
  test('a wrong count stands beside its line as soon as it is saved, and is gone once it is mended', async () => {
    await desk.visit(open('grey-square'), async (page) => {
      await eventually(() => told(page).textContent()).toContain('No faults');
      await markPage(page);

      desk.write('grey-square', WRONG);
      const line = page.locator(`#line-${STARTER_LINE}`);
      await eventually(() => line.locator('.told-note').allTextContents()).toHaveLength(1);
      const note = (await line.locator('.told-note').textContent()) ?? '';
      expect(note).toMatch(/^\s*Error/);
      expect(note).toContain('16');
      expect(note).toContain('17');
      expect(note).toContain('Try:');
      expect(await line.locator('mark.error').allTextContents()).not.toEqual([]);
      // Whoever does not see the page is told politely how many there are.
      expect(await page.locator('[role="status"]').textContent()).toBe('1 error');
      expect(await page.title()).toMatch(/^1 error: /);

      desk.write('grey-square', GOOD);
      await eventually(() => page.locator('.told-note').count()).toBe(0);
      await eventually(() => page.locator('[role="status"]').textContent()).toBe('No faults.');
      expect(await page.evaluate('window.sameAsBefore')).toBe(true);
    });
  });

  test('rows, sizes, chart, words and booklet are those of what was saved last', async () => {
    await desk.visit(`${open('grey-square')}&terms=uk`, async (page) => {
      const wider = GOOD.replace('ch 17 (25, 33)', 'ch 21 (25, 33)').replaceAll(
        '(16 (24, 32) sts)',
        '(20 (24, 32) sts)',
      );
      desk.write('grey-square', wider);
      await eventually(() => page.locator('#rows tr', { hasText: 'Row 1' }).first().textContent()).toContain(
        '20 sts',
      );
      const row = page.locator('#sizes tr', { hasText: 'Row 1' }).first();
      expect(await row.locator('td').allTextContents()).toEqual(['20', '24', '32']);
      expect(await page.locator('#chart svg').count()).toBe(1);
      expect(await page.locator('#words').textContent()).toContain('Dc in 2nd ch from hook');
      expect(await page.locator('#booklet svg').count()).toBeGreaterThan(0);
      const booklet = await page.request.get(
        new URL((await page.locator('#booklet a').getAttribute('href')) ?? '', desk.address).href,
      );
      expect((await booklet.body()).subarray(0, 5).toString()).toBe('%PDF-');
      desk.write('grey-square', GOOD);
      await eventually(() => row.locator('td').allTextContents()).toEqual(['16', '24', '32']);
    });
  });

  test('focus and scrolled place stay where they are', async () => {
    await desk.visit(open('grey-square'), async (page) => {
      await page.setViewportSize({ width: 1280, height: 500 });
      const link = page.locator('#rows a[href^="#line-"]').last();
      await link.focus();
      const href = await link.getAttribute('href');
      await page.evaluate('window.scrollTo(0, 300)');
      const [made] = await page.locator('.side.made').evaluateAll((all) => all.map((one) => one.scrollTop));
      desk.write('grey-square', WRONG);
      await eventually(() => page.locator('.told-note').count()).toBe(1);
      expect(await page.evaluate('document.activeElement.getAttribute("href")')).toBe(href);
      expect(await page.evaluate('window.scrollY')).toBe(300);
      expect(await page.locator('.side.made').evaluate((one) => one.scrollTop)).toBe(made);
      desk.write('grey-square', GOOD);
      await eventually(() => page.locator('.told-note').count()).toBe(0);
    });
  });

  test('a file that is no YAML, that is emptied, deleted, and there again is told as it is', async () => {
    await desk.visit(open('grey-square-again'), async (page) => {
      await eventually(() => told(page).textContent()).toContain('No faults');
      desk.write('grey-square-again', GOOD.replace('sizes:', 'sizes: [{'));
      await eventually(() => told(page).textContent()).toMatch(/\d error/);
      expect(await page.locator('.lines .told-note').count()).toBeGreaterThan(0);
      expect(await page.locator('#made').textContent()).toContain('Nothing can be worked yet');
      desk.write('grey-square-again', '');
      await eventually(() => page.locator('.lines li').count()).toBe(1);
      rmSync(path.join(desk.folder, 'patterns/grey-square-again/pattern.yaml'));
      await eventually(() => page.locator('main').textContent()).toContain(
        'There is no patterns/grey-square-again/pattern.yaml any more',
      );
      desk.write('grey-square-again', GOOD);
      await eventually(() => told(page).textContent()).toContain('No faults');
    });
  });

  test('a pattern that is made meanwhile can be chosen without loading the page, and says that it has errors', async () => {
    await desk.visit(open('grey-square'), async (page) => {
      await markPage(page);
      desk.write('later-square', WRONG);
      await eventually(() => page.locator('#file option').allTextContents()).toContain(
        'Grey Square (patterns/later-square/pattern.yaml)',
      );
      await eventually(() => page.locator('#elsewhere').textContent()).toMatch(
        /Not right yet: Grey Square \(1 error\)/,
      );
      expect(await page.evaluate('window.sameAsBefore')).toBe(true);
      rmSync(path.join(desk.folder, 'patterns/later-square'), { recursive: true });
      await eventually(() => page.locator('#file option').count()).toBe(2);
    });
  });

  test('two patterns of one title are told apart by their folders', async () => {
    await desk.visit('.desk/', async (page) => {
      const options = await page.locator('#file option').allTextContents();
      expect(options).toEqual([
        'Grey Square (patterns/grey-square/pattern.yaml)',
        'Grey Square (patterns/grey-square-again/pattern.yaml)',
      ]);
    });
  });
});

describe.sequential('a pattern written in the page', () => {
  test('is shown while it is typed, and saved with the keyboard alone', async () => {
    await desk.visit(open('grey-square'), async (page) => {
      await page.locator('#writing summary').focus();
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.id')).toBe('own-text');
      await page.locator('#own-text').evaluate((area: HTMLTextAreaElement) => {
        const at = area.value.indexOf('(16 (24, 32) sts)') + 1;
        area.setSelectionRange(at, at + 2);
      });
      await page.keyboard.type('17');
      await eventually(() => page.locator(`#line-${STARTER_LINE} .told-note`).count()).toBe(1);
      expect(await page.locator('#unsaved').textContent()).toContain('Not saved yet');
      expect(desk.read('grey-square')).toBe(GOOD);
      await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.textContent')).toBe('Save');
      await page.keyboard.press('Enter');
      await eventually(() => desk.read('grey-square')).toBe(WRONG);
      await eventually(() => page.locator('#unsaved').isHidden()).toBe(true);
      desk.write('grey-square', GOOD);
      await eventually(() => page.locator('#own-text').inputValue()).toBe(GOOD);
      await eventually(() => page.locator('.told-note').count()).toBe(0);
    });
  });

  test('is mended from the note beside its line: the words are marked in the field, and in sight', async () => {
    await desk.visit(open('grey-square'), async (page) => {
      desk.write('grey-square', WRONG);
      const button = page.locator('.told-note button');
      await eventually(() => button.count()).toBe(1);
      await button.press('Enter');
      const area = page.locator('#own-text');
      const marked = await area.evaluate((field: HTMLTextAreaElement) => ({
        words: field.value.slice(field.selectionStart, field.selectionEnd),
        focused: document.activeElement === field,
      }));
      expect(marked).toEqual({ words: '(17 (24, 32) sts)', focused: true });
      await page.keyboard.type('(16 (24, 32) sts)');
      await eventually(() => page.locator('.told-note').count()).toBe(0);
      await page.keyboard.press('Control+s');
      await eventually(() => desk.read('grey-square')).toBe(GOOD);
    });
  });

  test('is never saved over what was changed meanwhile without asking, and neither text is lost', async () => {
    await desk.visit(open('grey-square'), async (page) => {
      await page.locator('#writing summary').click();
      const mine = `${GOOD}# mine\n`;
      await page.locator('#own-text').fill(mine);
      await eventually(() => page.locator('#unsaved').textContent()).toContain('Not saved yet');
      desk.write('grey-square', MISREAD);
      await eventually(() => page.locator('#unsaved').textContent()).toContain('changed elsewhere');
      expect(desk.read('grey-square')).toBe(MISREAD);
      expect(await page.locator('#own-text').inputValue()).toBe(mine);
      await page.locator('#take-theirs').click();
      expect(await page.locator('#own-text').inputValue()).toBe(MISREAD);
      await page.locator('#put-back').click();
      expect(await page.locator('#own-text').inputValue()).toBe(mine);

      // Left without saving: it is there when she comes back.
      await page.reload();
      await eventually(() => page.locator('#own-text').inputValue()).toBe(mine);
      await page.locator('#write button[type="submit"]').click();
      await eventually(() => desk.read('grey-square')).toBe(mine);
      desk.write('grey-square', GOOD);
      await eventually(() => page.locator('#own-text').inputValue()).toBe(GOOD);
    });
  });
});

describe.sequential('pasted instructions', () => {
  const PASTED = `Harbour Cloth
US terms
Hook: 5 mm
Ch 13.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sts)
Row 2: Ch 1, sc in each st across, turn. (13 sts)
Fasten off.

Uncle Bert says hello from the seaside.
`;

  test('become a pattern with the keyboard alone: what was recognised, what was kept, faults beside the lines', async () => {
    await desk.visit('.desk/paste/', async (page) => {
      await page.locator('#pasted').focus();
      await page.keyboard.insertText(PASTED);
      await eventually(() => page.locator('#became .lines').count()).toBe(1);
      expect(await page.locator('#recognised').textContent()).toContain('Harbour Cloth');
      const wrong = page.locator('#became .lines > li', { hasText: 'Row 2: Ch 1' });
      expect(await wrong.locator('.told-note.error').count()).toBe(1);
      expect(await page.locator('#recognised').textContent()).toContain('Uncle Bert says hello');
      expect(await page.locator('#name').inputValue()).toBe('harbour-cloth');
      expect(await faultsByAxe(page)).toEqual([]);

      while ((await page.evaluate('document.activeElement.id')) !== 'name') await page.keyboard.press('Tab');
      await page.keyboard.press('Control+A');
      await page.keyboard.type('grey-square');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await eventually(() => page.locator('#refused').textContent()).toContain(
        'There is already a pattern in patterns/grey-square',
      );
      expect(desk.read('grey-square')).toBe(GOOD);

      await page.keyboard.press('Shift+Tab');
      await page.keyboard.press('Control+A');
      await page.keyboard.type('harbour-cloth');
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.waitForURL(/file=patterns%2Fharbour-cloth%2Fpattern\.yaml/);
      expect(await page.locator('h1').textContent()).toBe('Harbour Cloth');
      expect(await page.locator('.lines .told-note.error').count()).toBe(1);
      expect(desk.read('harbour-cloth')).toContain('Uncle Bert says hello');
    });
    rmSync(path.join(desk.folder, 'patterns/harbour-cloth'), { recursive: true });
  });
});

describe('other pages', () => {
  const form = new URLSearchParams({ file: 'patterns/grey-square/pattern.yaml', text: 'gone', stamp: 'x' });

  test('cannot have anything written: not from another origin, nor without the token', async () => {
    const page = await (await fetch(`${desk.address}${open('grey-square')}`)).text();
    const token = /name="token" value="([^"]+)"/.exec(page)?.[1] ?? '';
    const stamp = /name="stamp" value="([^"]+)"/.exec(page)?.[1] ?? '';
    const origin = desk.address.slice(0, -1);
    const send = (headers: Record<string, string>, fields: Record<string, string>) =>
      fetch(`${desk.address}.desk/save`, {
        method: 'POST',
        headers,
        body: new URLSearchParams({ ...Object.fromEntries(form), ...fields }),
        redirect: 'manual',
      });
    expect((await send({ origin: 'http://elsewhere.example' }, { token, stamp })).status).toBe(403);
    expect((await send({}, { token, stamp })).status).toBe(403);
    expect((await send({ origin, 'sec-fetch-site': 'cross-site' }, { token, stamp })).status).toBe(403);
    expect((await send({ origin }, { stamp })).status).toBe(403);
    expect((await send({ origin }, { token: `${token}x`, stamp })).status).toBe(403);
    // The form is right, the text it was written over is not.
    expect((await send({ origin }, { token })).status).toBe(409);
    expect((await send({ origin }, { token, stamp, file: '../../etc/passwd' })).status).toBe(404);
    expect(desk.read('grey-square')).toBe(GOOD);
    expect((await send({ origin }, { token, stamp, text: GOOD })).status).toBe(303);
  });

  test('cannot hold the desk in a frame or write a script into it', async () => {
    const { headers } = await fetch(`${desk.address}.desk/`);
    expect(headers.get('content-security-policy')).toMatch(
      /default-src 'none'; script-src 'self';.*frame-ancestors 'none'/,
    );
  });
});

describe.each(['light', 'dark'] as const)('in a %s scheme axe finds no fault', (colorScheme) => {
  test('on the desk, with errors, warnings and notes beside the text', async () => {
    desk.write(
      'axe-square',
      WRONG.replace('hook: 5 mm', 'hook: 12 mm').replace('skill: easy', 'skill: simple'),
    );
    desk.write('axe-sound', GOOD);
    for (const name of ['axe-square', 'axe-sound'])
      for (const width of [390, 1280])
        await desk.visit(
          open(name),
          async (page) => {
            await page.locator('#writing summary').click();
            expect(await faultsByAxe(page)).toEqual([]);
            expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
          },
          { colorScheme, viewport: { width, height: 800 } },
        );
    for (const name of ['axe-square', 'axe-sound'])
      rmSync(path.join(desk.folder, 'patterns', name), { recursive: true });
  });
});

test('a page of the site is loaded again by itself once the site is built, by a script that its policy allows', async () => {
  await desk.printed(/The site is at/);
  await desk.visit('grey-square/', async (page) => {
    const refused: string[] = [];
    page.on('console', (message) => {
      if (message.type() === 'error') refused.push(message.text());
    });
    expect(await page.locator('h1').textContent()).toContain('Grey Square');
    desk.write('grey-square', GOOD.replace('Grey Square', 'Slate Square'));
    await eventually(() => page.locator('h1').textContent()).toContain('Slate Square');
    desk.write('grey-square', WRONG);
    await eventually(() => page.locator('.fault-banner').count()).toBe(1);
    expect(refused).toEqual([]);
    desk.write('grey-square', GOOD);
    await eventually(() => page.locator('.fault-banner').count()).toBe(0);
  });
  const published = readFileSync(path.join(desk.folder, '_site/grey-square/index.html'), 'utf8');
  expect(published).not.toContain('.desk');
});

test.each([
  ['a page of the site', 'grey-square/', 'Slate Square'],
  ['the desk', open('grey-square'), 'Fog Square'],
])('%s that was made before a build, and listens only after it, is new as well', async (_, at, title) => {
  await desk.printed(/The site is at/);
  const address = new URL(at, desk.address).href;
  await desk.visit('', async (page) => {
    let letThrough = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letThrough = resolve;
    });
    await page.route('**/.desk/news', async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(address);
    const stamp = page.locator('script[data-news]');
    const before = await stamp.getAttribute('data-news');
    desk.write('grey-square', GOOD.replace('Grey Square', title));
    await eventually(async () => (await fetch(address)).text()).toContain(title);
    await eventually(async () => (await fetch(address)).text()).not.toContain(`data-news="${before}"`);
    expect(await page.locator('h1').textContent()).toContain('Grey Square');
    letThrough();
    await eventually(() => page.locator('h1').textContent()).toContain(title);
  });
  desk.write('grey-square', GOOD);
  await eventually(async () => (await fetch(`${desk.address}grey-square/`)).text()).toContain('Grey Square');
});

test('a file of five thousand lines is shown whole, and a server that has ended is told of', async () => {
  const rows = Array.from(
    { length: 5000 },
    (_, i) => `      Row ${i + 2}: Ch 1, sc in each st across, turn.`,
  );
  const long = GOOD.replace(/ {6}Rows 2-18.*\n/, `${rows.join('\n')}\n`).replace('(27, 36)', '');
  const last = 'Row 5001: Ch 1, sc in each st across, turn.';
  const own = await serveDesk({ 'long-scarf': long.replace(last, `${last} (9 sts)`) });
  try {
    await own.visit(open('long-scarf'), async (page) => {
      await eventually(() => page.locator('.lines > li').count()).toBeGreaterThan(5000);
      expect(await page.locator('.lines > li', { hasText: 'Row 5001' }).locator('.told-note').count()).toBe(
        1,
      );
      expect(await page.locator('#chart').textContent()).toContain('This chart is large');
      own.write('long-scarf', long);
      await eventually(() => page.locator('.told-note').count()).toBe(0);
      // Once the server has ended nobody waits for it without knowing.
      expect(await page.locator('#gone').isVisible()).toBe(false);
      own.end();
      await eventually(() => page.locator('#gone').isVisible()).toBe(true);
    });
  } finally {
    await own.close();
  }
});
