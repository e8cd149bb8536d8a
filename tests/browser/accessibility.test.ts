import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type OpenSite, openSite } from './open-site.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let open: OpenSite;
beforeAll(async () => {
  open = await openSite();
});
afterAll(() => open.close());

const KINDS = ['list', 'pattern', 'size', 'full words', 'stitches', 'missing'] as const;

describe.each(KINDS)('the page of kind "%s" has no fault by WCAG 2.2 A and AA that axe can find', (kind) => {
  test.each(['light', 'dark'] as const)('in a %s scheme', async (colorScheme) => {
    const found = await open.visit(open.kinds[kind], { colorScheme }, async (page) => {
      await page.evaluate(axe);
      const results: AxeResults = await page.evaluate(
        `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })`,
      );
      return results;
    });
    // It looked at the page at all, and could measure contrast.
    expect(found.passes.map(({ id }) => id)).toContain('color-contrast');
    const faults = found.violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
    );
    expect(faults).toEqual([]);
  });
});

test('every link, tick box and scrolling table can be reached with the Tab key, in the order of the page', async () => {
  for (const kind of ['list', 'pattern', 'size'] as const) {
    await open.visit(open.kinds[kind], {}, async (page) => {
      // What is folded away is reached once it is opened.
      await page.locator('details').evaluateAll((all) => all.map((one) => one.setAttribute('open', '')));
      const wanted = await page
        .locator('a[href], input, select, button, summary, [tabindex="0"]')
        .evaluateAll((all) =>
          all
            // The others of a group of choices are reached with the arrow keys.
            .filter(
              (element) => element.checkVisibility() && !element.matches('[type="radio"]:not(:checked)'),
            )
            .map((element) => element.outerHTML),
        );
      const reached: string[] = [];
      for (let i = 0; i < wanted.length; i++) {
        await page.keyboard.press('Tab');
        reached.push(await page.evaluate('document.activeElement.outerHTML'));
      }
      expect(reached).toEqual(wanted);
    });
  }
});

test('the first key press offers to skip to the text, where it can be seen, and does so', async () => {
  await open.visit(open.kinds.size, {}, async (page) => {
    await page.keyboard.press('Tab');
    const skip = page.locator(':focus');
    expect(await skip.textContent()).toBe('Skip to the text');
    const box = await skip.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.activeElement.id')).toBe('main');
  });
});

test('what has the focus is shown by an outline of three pixels', async () => {
  await open.visit(open.kinds.size, {}, async (page) => {
    const count = await page.locator('a[href], input').count();
    for (let i = 0; i < Math.min(count, 15); i++) {
      await page.keyboard.press('Tab');
      const outline = await page.evaluate(
        '(({ outlineStyle, outlineWidth }) => [outlineStyle, outlineWidth].join(" "))(getComputedStyle(document.activeElement))',
      );
      expect(outline).toBe('solid 3px');
    }
  });
});

test('a tick box and its label are at least 24 pixels high and wide (WCAG 2.2, 2.5.8)', async () => {
  await open.visit(open.kinds.size, { viewport: { width: 390, height: 844 } }, async (page) => {
    const boxes = await page
      .locator('label.tick')
      .evaluateAll((all) => all.map((label) => label.getBoundingClientRect().toJSON()));
    expect(boxes.length).toBeGreaterThan(0);
    for (const { width, height } of boxes) expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
  });
});
