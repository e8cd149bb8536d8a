/** Every edition of every demo pattern: what it holds, how large its type is, and that nothing hangs over the page. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import type { BookletInput } from '../../src/booklet/booklet-input.ts';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { type Edition, USUAL_EDITION } from '../../src/booklet/edition.ts';
import { inLowInk } from '../../src/booklet/low-ink.ts';
import { PAPERS } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import { allSizesInput, type BookletChoice, bookletInput } from '../../src/print-booklet.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { applied } from '../../src/scene/transforms.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { ptFromMm } from '../../src/units.ts';

const { measureText } = textRuler(readFontFiles());
const collection = compilePatterns(await readPatterns([path.join(PROJECT_FOLDER, 'patterns')]));
const cases = collection.flatMap(({ compiled }) =>
  compiled.sizes.map((size) => ({ compiled, size, name: `${compiled.slug}, ${size.size.name}` })),
);
const US = { dialect: 'us' } as const;

interface PrintedText {
  readonly text: string;
  readonly pt: number;
  readonly left: number;
  readonly right: number;
  readonly y: number;
}

/** Texts of a page with their size and place on paper. */
function printed(page: Scene): PrintedText[] {
  return walkShapes(page.shapes).flatMap(({ shape, transform }) => {
    if (shape.kind !== 'text') return [];
    const scale = Math.hypot(transform[0], transform[1]);
    const widthMm = measureText(shape.text, shape.face, shape.sizeMm);
    const from = shape.align === 'start' ? 0 : shape.align === 'end' ? -widthMm : -widthMm / 2;
    const [a, y] = applied(transform, shape.x + from, shape.y);
    const [b] = applied(transform, shape.x + from + widthMm, shape.y);
    return [
      {
        text: shape.text,
        pt: ptFromMm(shape.sizeMm * scale),
        left: Math.min(a, b),
        right: Math.max(a, b),
        y,
      },
    ];
  });
}

function pagesOf(input: BookletInput, edition: Partial<Edition>, paper: 'A4' | 'Letter' = 'A4'): Scene[] {
  const { pages, loose } = layOutBooklet(input, paper, measureText, { ...USUAL_EDITION, ...edition });
  return [...pages, ...loose];
}

const EDITIONS: readonly (Partial<Edition> & { readonly named: string })[] = [
  { named: 'the usual edition' },
  { named: 'the folded edition', form: 'folded' },
  { named: 'large print', form: 'large print' },
  { named: 'words only', holds: 'words' },
  { named: 'words only, folded', holds: 'words', form: 'folded' },
  { named: 'words only in large print', holds: 'words', form: 'large print' },
  { named: 'charts only', holds: 'charts' },
];

describe.each(EDITIONS)('$named', ({ named: _named, ...edition }) => {
  test.each(cases)('of $name has no empty page and nothing beyond its margins', ({ compiled, size }) => {
    if (compiled.pattern === null) throw new Error('no pattern');
    const choice: Omit<BookletChoice, 'paper'> = { ...US, ...edition };
    const all = allSizesInput(compiled, compiled.pattern, choice);
    for (const input of [bookletInput(compiled.pattern, size, choice), all])
      for (const { name: paper } of Object.values(PAPERS))
        for (const page of pagesOf(input, edition, paper)) {
          expect(page.alternative, page.title).not.toBe('');
          // What of a chart passes the edge of one of its sheets is covered there, and drawn on the next.
          if (/Sheet \d+ of \d+: row/.test(page.alternative)) continue;
          for (const { text, left, right, y } of printed(page)) {
            expect(left, text).toBeGreaterThan(9);
            expect(right, text).toBeLessThan(page.widthMm - 9);
            expect(y, text).toBeGreaterThan(9);
            expect(y, text).toBeLessThan(page.heightMm - 9);
          }
        }
  });
});

describe('large print', () => {
  test.each(cases)('of $name has 18 point type to read and nothing under 16', ({ compiled, size }) => {
    if (compiled.pattern === null) throw new Error('no pattern');
    const input = bookletInput(compiled.pattern, size, US);
    for (const { name: paper } of Object.values(PAPERS)) {
      const texts = pagesOf(input, { form: 'large print' }, paper).flatMap(printed);
      for (const { text, pt } of texts) expect(pt, text).toBeGreaterThanOrEqual(16 - 1e-6);
      const [row] = input.words.parts[0]?.lines ?? [];
      const first = texts.find(
        ({ text }) => row?.text.startsWith(text.split(' ')[0] ?? '') && text.length > 8,
      );
      expect(first?.pt).toBeCloseTo(18, 6);
    }
  });
});

describe('type of the other editions', () => {
  test.each(cases)('of $name is nowhere under 8 points in a folded booklet', ({ compiled, size }) => {
    if (compiled.pattern === null) throw new Error('no pattern');
    const pages = pagesOf(bookletInput(compiled.pattern, size, US), { form: 'folded' });
    // Numbers among the stitches of a chart may be smaller where they have no room to grow.
    const texts = pages.flatMap(printed).filter(({ text }) => !/^\d+( [A-Z])?$/.test(text));
    for (const { text, pt } of texts) expect(pt, text).toBeGreaterThanOrEqual(8 - 1e-6);
  });
});

describe('what an edition holds', () => {
  const inks = (pages: readonly Scene[]): string[] =>
    pages
      .flatMap(({ shapes }) => walkShapes(shapes))
      .flatMap(({ shape }) => (shape.kind === 'path' || shape.kind === 'circle' ? [shape.fill] : []));
  const symbols = (pages: readonly Scene[]): number =>
    pages.flatMap(({ shapes }) => walkShapes(shapes)).filter(({ shape }) => shape.kind === 'use').length;
  const words = (pages: readonly Scene[]): string[] => pages.flatMap(printed).map(({ text }) => text);

  test.each(cases)('of $name: low ink has no tint and no type but black', ({ compiled, size }) => {
    if (compiled.pattern === null) throw new Error('no pattern');
    const choice = { ...US, lowInk: true };
    const usual = pagesOf(bookletInput(compiled.pattern, size, US), {});
    const low = pagesOf(bookletInput(compiled.pattern, size, choice), { lowInk: true }).map(inLowInk);
    expect(inks(usual).some((fill) => fill.startsWith('#'))).toBe(true);
    expect(inks(low).filter((fill) => fill.startsWith('#'))).toEqual([]);
    const black = low
      .flatMap(({ shapes }) => walkShapes(shapes))
      .flatMap(({ shape }) => (shape.kind === 'text' ? [shape.ink] : []));
    expect(new Set(black.filter((ink) => !ink.startsWith('#') && ink !== 'paper'))).toEqual(new Set(['ink']));
    expect(symbols(low)).toBe(symbols(usual));
  });

  test.each(cases)('of $name: words only has every row and no symbol', ({ compiled, size }) => {
    if (compiled.pattern === null) throw new Error('no pattern');
    const input = bookletInput(compiled.pattern, size, { ...US, holds: 'words' });
    const pages = pagesOf(input, { holds: 'words' });
    expect(symbols(pages)).toBe(0);
    for (const { label } of input.words.parts.flatMap(({ lines }) => lines))
      if (label !== null) expect(words(pages).join(' ').replaceAll('\u00a0', ' ')).toContain(label);
    for (const { scene } of size.schematics)
      expect(words(pages).join(' ').replaceAll('\u00a0', ' ')).toContain(scene.alternative.slice(0, 20));
  });

  test.each(cases)('of $name: charts only has the charts whole and no written row', ({ compiled, size }) => {
    if (compiled.pattern === null) throw new Error('no pattern');
    const input = bookletInput(compiled.pattern, size, US);
    const pages = pagesOf(input, { holds: 'charts' });
    expect(symbols(pages)).toBe(symbols(pagesOf(input, {})));
    const label = input.words.parts[0]?.lines.find((line) => line.label !== null)?.label ?? '';
    expect(words(pages)).not.toContain(label.replaceAll(' ', '\u00a0'));
  });

  test('charts only keeps the words of a part that no chart shows, and of a chart too large for paper', () => {
    const [first] = cases;
    if (!first?.compiled.pattern) throw new Error('no pattern');
    const input = bookletInput(first.compiled.pattern, first.size, US);
    const name = input.words.parts[0]?.name ?? '';
    const [chart] = input.charts;
    if (chart === undefined) throw new Error('no chart');
    const { widthMm, heightMm, shapes } = chart.scene;
    const huge: Scene = {
      ...chart.scene,
      widthMm: widthMm * 60,
      heightMm: heightMm * 60,
      shapes: [{ kind: 'group', transform: [60, 0, 0, 60, 0, 0], shapes }],
    };
    for (const charts of [[], [{ part: chart.part, scene: huge, folded: [] }]])
      expect(words(pagesOf({ ...input, charts }, { holds: 'charts' }))).toContain(name);
    expect(words(pagesOf(input, { holds: 'charts' }))).not.toContain(name);
  });

  test('all sizes have their numbers in the order of the sizes, the first before the brackets', () => {
    const sandbar = collection.find(({ compiled }) => compiled.slug === 'sandbar-square')?.compiled;
    if (!sandbar?.pattern) throw new Error('no pattern');
    const all = allSizesInput(sandbar, sandbar.pattern, US);
    const told = words(pagesOf(all, {})).join(' ').replaceAll('\u00a0', ' ');
    const counts = sandbar.sizes.map(({ words: { us } }) =>
      us.parts[0]?.lines.find(({ label }) => label?.startsWith('Row 1'))?.count?.replace(/\D/g, ''),
    );
    expect(told).toContain(`${counts[0]} (${counts.slice(1).join(', ')}) sts`);
    expect(told).toContain(`Chart, size ${sandbar.sizes[0]?.size.name}`);
  });
});
