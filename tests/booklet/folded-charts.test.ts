/** Charts too large for one sheet: drawn with a window of what repeats where they can be, and whole when asked for. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { PAPERS, type PaperName } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { type BookletChoice, bookletInput } from '../../src/print-booklet.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { mmFromPt } from '../../src/units.ts';
import { fixedWidth } from './fixed-width.ts';

const collection = compilePatterns(await readPatterns([path.join(PROJECT_FOLDER, 'tests/booklet/large')]));

function pagesOf(slug: string, name: string, paper: PaperName, choice: Partial<BookletChoice> = {}) {
  const compiled = collection.find((file) => file.compiled.slug === slug)?.compiled;
  const size = compiled?.sizes.find((each) => each.size.name === name);
  if (!compiled?.pattern || size === undefined) throw new Error(`no ${slug} in ${name}`);
  return layOutBooklet(bookletInput(compiled.pattern, size, { dialect: 'us', ...choice }), paper, fixedWidth)
    .pages;
}

function withChart(pages: readonly Scene[]): readonly Scene[] {
  return pages.filter((page) =>
    walkShapes(page.shapes).some(
      ({ shape, transform }) =>
        shape.kind === 'use' && shape.symbol.startsWith('chart') && transform[0] < 0.99,
    ),
  );
}

/** The words of all pages, as they are read out. */
function wordsOf(pages: readonly Scene[]): string {
  return pages
    .flatMap((page) =>
      walkShapes(page.shapes).flatMap(({ shape }) => (shape.kind === 'text' ? [shape.text] : [])),
    )
    .join(' ')
    .replace(/\s+/g, ' ');
}

describe.each(Object.values(PAPERS).map(({ name }) => name))('on %s', (paper) => {
  test.each([false, true])('the throw says how often to work its window (left-handed: %s)', (leftHanded) => {
    const pages = pagesOf('shell-throw', 'throw', paper, { leftHanded });
    expect(wordsOf(pages)).toContain('Over the bracket, work these 3 repeats 11 times.');
    expect(wordsOf(pages)).toContain('drawn once: work what stands over it as often as it says');
    expect(withChart(pages).length).toBeLessThanOrEqual(1);
  });

  test('what is said under a bracket can be read: no smaller than row numbers', () => {
    const said = pagesOf('shell-throw', 'throw', paper).flatMap((page) =>
      walkShapes(page.shapes).flatMap(({ shape, transform }) =>
        shape.kind === 'text' && shape.text === 'work these 3 repeats 11 times'
          ? [shape.sizeMm * transform[0]]
          : [],
      ),
    );
    expect(said).toHaveLength(1);
    expect(said[0]).toBeGreaterThanOrEqual(mmFromPt(8) - 1e-9);
  });

  test('the scarf, too long for a sheet, says up to which row to work', () => {
    const pages = pagesOf('long-scarf', 'long', paper);
    expect(wordsOf(pages)).toContain('Rows 4 and 5 are worked in turn, up to row 120.');
    expect(wordsOf(pages)).not.toMatch(/Sheet 1 of/);
  });

  test('a chart that fits one sheet is drawn whole', () => {
    expect(wordsOf(pagesOf('shell-throw', 'cushion', paper))).not.toContain('Not every stitch is drawn');
  });

  test('asked for whole, every stitch is drawn, over sheets to lay together', () => {
    const pages = pagesOf('shell-throw', 'throw', paper, { wholeCharts: true });
    expect(wordsOf(pages)).not.toContain('Not every stitch is drawn');
    expect(withChart(pages).length).toBeGreaterThan(1);
    expect(wordsOf(pages)).toMatch(/Sheet 2 of \d/);
  });
});
