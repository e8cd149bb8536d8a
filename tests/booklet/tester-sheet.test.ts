/** A sheet for those who test a pattern: one page a size, what was planned on it, and room for what came out. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { PAPERS } from '../../src/booklet/paper.ts';
import { testerSheet } from '../../src/booklet/tester-sheet.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import { bookletInput, printTesterSheets } from '../../src/print-booklet.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { pageWords, readPdf } from './read-pdf.ts';
import { bareBooklet, longBooklet, shellBooklet } from './sample-input.ts';

const fonts = readFontFiles();
const { measureText } = textRuler(fonts);
const collection = compilePatterns(await readPatterns([path.join(PROJECT_FOLDER, 'patterns')]));
const PAPER_NAMES = Object.values(PAPERS).map(({ name }) => name);

function words(page: Scene): string {
  return walkShapes(page.shapes)
    .flatMap(({ shape }) => (shape.kind === 'text' ? [shape.text] : []))
    .join(' ')
    .replace(/[\u00a0 ]+/g, ' ');
}

/** How far down a page anything is drawn. */
function lowest(page: Scene): number {
  return Math.max(
    ...walkShapes(page.shapes).flatMap(({ shape, transform }) => {
      if (shape.kind === 'text') return [shape.y + transform[5]];
      return shape.kind === 'path' ? shape.parts.map((part) => Number(part[2] ?? 0) + transform[5]) : [];
    }),
  );
}

describe.each(PAPER_NAMES)('on %s', (paper) => {
  test.each(
    collection.flatMap(({ compiled }) =>
      compiled.sizes.map((size) => ({ compiled, size, name: `${compiled.slug}, ${size.size.name}` })),
    ),
  )(
    'the sheet of $name has its gauge, its counts and its yarn, and ends on its page',
    ({ compiled, size }) => {
      if (compiled.pattern === null) throw new Error('no pattern');
      const input = bookletInput(compiled.pattern, size, { dialect: 'us' });
      const page = testerSheet(input, paper, measureText);
      const told = words(page);
      expect(told).toContain(`${compiled.pattern.gauge?.stitches}`);
      for (const { letter } of size.measures.yarn) expect(told).toContain(`Yarn ${letter}: how much`);
      for (const { label, count } of input.words.parts.flatMap(({ lines }) => lines))
        if (label !== null && count !== null) expect(told, label).toContain(count);
      expect(lowest(page)).toBeLessThan(page.heightMm - 12.7);
      expect(lowest(page)).toBeGreaterThan(page.heightMm * 0.8);
    },
  );

  test.each(['bare', 'shell', 'long'] as const)('the %s pattern fits its page', (name) => {
    const input = { bare: bareBooklet, shell: shellBooklet, long: longBooklet }[name]();
    const [size] = input.sizes;
    if (size === undefined) throw new Error('no size');
    const page = testerSheet({ ...input, sizes: [size] }, paper, measureText);
    expect(lowest(page)).toBeLessThan(page.heightMm - 12.7);
    if (name === 'long') expect(words(page)).toMatch(/\d+ counts more stand in the pattern/);
  });
});

test('the file has a page for each size asked for, tagged', async () => {
  const { compiled } = collection.find((each) => each.compiled.slug === 'sandbar-square') ?? {};
  if (compiled === undefined) throw new Error('no pattern');
  const bytes = await printTesterSheets(compiled, compiled.sizes, { dialect: 'uk', paper: 'A4' }, fonts);
  const { pages, language } = await readPdf(bytes);
  expect(language).toBe('en-GB');
  expect(pages.map((page) => /Size (\w+),/.exec(pageWords(page))?.[1])).toEqual(['small', 'medium', 'large']);
});

test('changes stand in the booklet with their days, the newest first', () => {
  const input = shellBooklet();
  const changes = [
    { date: '2026-12-05', version: '1.2', what: 'Row 3 ends with a sc.', index: 0 },
    { date: '2026-11-30', version: null, what: 'The hook is 5 mm.', index: 1 },
  ];
  const { pages } = layOutBooklet({ ...input, pattern: { ...input.pattern, changes } }, 'A4', measureText);
  const told = pages.map(words).join(' ');
  expect(told).toContain('December 5, 2026 (version 1.2): Row 3 ends with a sc.');
  expect(told.indexOf('November 30, 2026: The hook is 5 mm.')).toBeGreaterThan(
    told.indexOf('December 5, 2026'),
  );
});
