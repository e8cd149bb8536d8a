/** Pages on sheets to fold: where they go, against orders in print; and sheets cut, folded and laid together again. */

import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { foldedBooklet } from '../../src/booklet/folded-booklet.ts';
import { creepMm, foldedSheets, paddedPages, pagePosition } from '../../src/booklet/folding.ts';
import { imposedSides } from '../../src/booklet/impose.ts';
import { PAPERS, type PaperName } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { paintPdf } from '../../src/paint/pdf.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { applied } from '../../src/scene/transforms.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { ptFromMm } from '../../src/units.ts';
import { pageWords, type ReadPage, readPdf } from './read-pdf.ts';
import { bareBooklet, chartScene, grannyBooklet, longBooklet, shellBooklet } from './sample-input.ts';

/**
 * Orders of saddle-stitched booklets, sheet by sheet: left and right of the front, left and right of the back. The one of
 * eight pages is printed in an imposition tool's handbook; the others are worked out by the same rule and agree with it.
 */
const IN_PRINT: Readonly<Record<number, readonly (readonly [number, number, number, number])[]>> = {
  4: [[4, 1, 2, 3]],
  8: [
    [8, 1, 2, 7],
    [6, 3, 4, 5],
  ],
  12: [
    [12, 1, 2, 11],
    [10, 3, 4, 9],
    [8, 5, 6, 7],
  ],
  16: [
    [16, 1, 2, 15],
    [14, 3, 4, 13],
    [12, 5, 6, 11],
    [10, 7, 8, 9],
  ],
};

describe('the order of pages on sheets to fold', () => {
  test.each(Object.entries(IN_PRINT))('%s pages stand as they do in print', (pages, order) => {
    const sheets = foldedSheets(Number(pages));
    expect(sheets.map(({ front, back }) => [front.left, front.right, back.left, back.right])).toEqual(order);
  });

  test('a number that is no multiple of four is filled up with blanks, all at the end', () => {
    expect([1, 4, 5, 7, 8].map(paddedPages)).toEqual([4, 4, 8, 8, 8]);
    expect(foldedSheets(6)).toEqual([
      { front: { left: null, right: 1 }, back: { left: 2, right: null } },
      { front: { left: 6, right: 3 }, back: { left: 4, right: 5 } },
    ]);
  });

  test('up to a hundred pages each is printed once, and each side adds up to one more than all', () => {
    for (let pages = 1; pages <= 100; pages += 1) {
      const all = paddedPages(pages);
      const sheets = foldedSheets(all);
      const sides = sheets.flatMap(({ front, back }) => [front, back]);
      expect(sides.map(({ left, right }) => (left ?? 0) + (right ?? 0))).toEqual(sides.map(() => all + 1));
      for (let page = 1; page <= pages; page += 1) {
        const { sheet, side, half } = pagePosition(page, pages);
        expect(foldedSheets(pages)[sheet - 1]?.[side][half]).toBe(page);
      }
    }
  });

  test('sheets further in are moved nearer to the fold, a paper thickness each', () => {
    expect([1, 2, 6].map(creepMm)).toEqual([0, 0.1, 0.5]);
  });
});

const fonts = readFontFiles();
const { measureText } = textRuler(fonts);
const FOLDED = { form: 'folded', holds: 'all', lowInk: false } as const;
const PAPER_NAMES = Object.values(PAPERS).map(({ name }) => name);
const SAMPLES = { bare: bareBooklet, granny: grannyBooklet, shell: shellBooklet, long: longBooklet } as const;
const CASES = Object.keys(SAMPLES).flatMap((name) =>
  PAPER_NAMES.map((paper) => ({ name: name as keyof typeof SAMPLES, paper })),
);

function bytesOf(pages: readonly Scene[]): Promise<Uint8Array> {
  const createdAt = new Date('2026-11-24T00:00:00Z');
  return paintPdf(pages, { title: 'Folded', author: null, language: 'en-US', createdAt, fonts });
}

/** A sheet cut down the middle. */
function cut({ widthPt, texts }: ReadPage): { left: string; right: string } {
  const middle = widthPt / 2;
  const words = (half: ReadPage['texts']): string => pageWords({ widthPt, heightPt: 0, texts: half });
  return {
    left: words(texts.filter(({ x, width }) => x + width / 2 < middle)),
    right: words(texts.filter(({ x, width }) => x + width / 2 >= middle)),
  };
}

/**
 * The leaves of the sheets as paper gives them: printed on both sides and flipped on the short edge, what stands at the
 * left of the back lies behind the right of the front. Laid one in another and folded, a reader turns the right half of
 * each sheet from the outermost in, and then the left half of each from the innermost out.
 */
function foldedTogether(sides: readonly ReadPage[]): string[] {
  const sheets = Array.from({ length: sides.length / 2 }, (_, index) => {
    const [front, back] = [sides[2 * index], sides[2 * index + 1]];
    if (!front || !back) throw new Error('a sheet without a back');
    return { front: cut(front), back: cut(back) };
  });
  return [
    ...sheets.flatMap(({ front, back }) => [front.right, back.left]),
    ...sheets.reverse().flatMap(({ front, back }) => [back.right, front.left]),
  ];
}

describe.each(CASES)('the $name booklet folded from $paper', ({ name, paper }) => {
  const laidOut = layOutBooklet(SAMPLES[name](), paper, measureText, FOLDED);

  test('its pages are half a sheet (ISO 216: A5 is 148 by 210 mm; half a Letter 5.5 by 8.5 in)', () => {
    const half = paper === 'A4' ? [148, 210] : [5.5 * 25.4, 8.5 * 25.4];
    for (const { widthMm, heightMm } of laidOut.pages) {
      const [short, long] = [widthMm, heightMm].sort((a, b) => a - b);
      expect(short).toBeCloseTo(half[0] ?? 0, 6);
      expect(long).toBeCloseTo(half[1] ?? 0, 6);
    }
  });

  test('pages left over on the last sheet are lined for notes, and only the back cover stays blank', () => {
    const { pages } = laidOut;
    expect(paddedPages(pages.length) - pages.length).toBeLessThanOrEqual(1);
    const forNotes = pages.map(({ alternative }) => alternative === 'Notes of your own');
    const first = forNotes.indexOf(true);
    if (first >= 0) expect(forNotes.slice(first)).toEqual(forNotes.slice(first).map(() => true));
    expect(forNotes.filter(Boolean).length).toBeLessThanOrEqual(2);
  });

  test('printed, cut, folded and laid together its pages read in order', async () => {
    const upright = await readPdf(await bytesOf(laidOut.pages));
    const sides = await readPdf(await bytesOf(imposedSides(laidOut.pages, paper, 'Folded')));
    expect(sides.pages).toHaveLength(paddedPages(laidOut.pages.length) / 2);
    const turned = foldedTogether(sides.pages);
    const lying = laidOut.pages.map(({ widthMm, heightMm }) => widthMm > heightMm);
    const wanted = upright.pages.map(pageWords);
    turned.slice(0, wanted.length).forEach((words, index) => {
      // A page that lies on its side is read from another corner: its words are the same, in another order.
      const sorted = (text: string): string => text.split(' ').sort().join(' ');
      if (lying[index]) expect(sorted(words)).toBe(sorted(wanted[index] ?? ''));
      else expect(words).toBe(wanted[index]);
    });
    expect(turned.slice(wanted.length).every((words) => words === '')).toBe(true);
  });

  test('every sheet is as large as its paper on its side, and nothing comes nearer its edges than printers reach', async () => {
    const { pages } = await readPdf(await bytesOf(imposedSides(laidOut.pages, paper, 'Folded')));
    const { widthMm, heightMm } = PAPERS[paper];
    for (const page of pages) {
      expect(page.widthPt).toBeCloseTo(ptFromMm(heightMm), 1);
      expect(page.heightPt).toBeCloseTo(ptFromMm(widthMm), 1);
      for (const { x, y, width, text } of page.texts) {
        expect(x, text).toBeGreaterThanOrEqual(ptFromMm(12.7));
        expect(x + width, text).toBeLessThanOrEqual(page.widthPt - ptFromMm(12.7));
        expect(y, text).toBeGreaterThanOrEqual(ptFromMm(12.7));
        expect(y, text).toBeLessThanOrEqual(page.heightPt - ptFromMm(12.7));
      }
    }
  });

  test('nothing is written across the fold', () => {
    const { heightMm } = PAPERS[paper];
    for (const side of imposedSides(laidOut.pages, paper, 'Folded')) {
      for (const { shape, transform } of walkShapes(side.shapes)) {
        if (shape.kind !== 'text') continue;
        const widthMm = measureText(shape.text, shape.face, shape.sizeMm);
        const from = shape.align === 'start' ? 0 : shape.align === 'end' ? -widthMm : -widthMm / 2;
        const [a] = applied(transform, shape.x + from, shape.y);
        const [b] = applied(transform, shape.x + from + widthMm, shape.y);
        expect((a - heightMm / 2) * (b - heightMm / 2), shape.text).toBeGreaterThan(0);
      }
    }
  });
});

describe.each(PAPER_NAMES)('a chart too large for half of %s', (paper: PaperName) => {
  const chart = chartScene(60, 70, 4);
  const input = { ...bareBooklet(), charts: [{ part: 'Square', scene: chart, folded: [] }] };
  const laidOut = layOutBooklet(input, paper, measureText, FOLDED);
  const uses = (scenes: readonly Scene[]): number =>
    scenes.flatMap(({ shapes }) => walkShapes(shapes)).filter(({ shape }) => shape.kind === 'use').length;

  test('stands whole on a loose sheet of the whole paper, and the booklet says where it is', () => {
    expect(uses(laidOut.pages)).toBe(0);
    expect(laidOut.loose).toHaveLength(1);
    expect(uses(laidOut.loose)).toBe(uses([chart]));
    const { widthMm, heightMm } = PAPERS[paper];
    for (const sheet of laidOut.loose)
      expect([sheet.widthMm, sheet.heightMm].sort((a, b) => a - b)).toEqual([widthMm, heightMm]);
    expect(laidOut.pages.map(({ alternative }) => alternative).join(' ')).toContain('loose sheet');
  });

  test('has a blank back, as the folding notes have, so that all sheets print on both sides in one go', async () => {
    const setting = { title: 'Folded', paper, notes: true, measure: measureText };
    const { pages } = await readPdf(await bytesOf(foldedBooklet(laidOut, setting)));
    const blank = pages.map(({ texts }) => texts.length === 0);
    expect(pages).toHaveLength(2 + paddedPages(laidOut.pages.length) / 2 + 2);
    expect([blank[0], blank[1], blank.at(-2), blank.at(-1)]).toEqual([false, true, false, true]);
    expect(pageWords(pages[0] ?? { widthPt: 0, heightPt: 0, texts: [] })).toContain('short edge');
  });
});
