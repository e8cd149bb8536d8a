/** What strains a page: endless titles, hundreds of rows, forty sizes at once, many yarns; in every form. */

import { describe, expect, test } from 'vitest';
import type { BookletInput } from '../../src/booklet/booklet-input.ts';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { type Edition, USUAL_EDITION } from '../../src/booklet/edition.ts';
import { foldedBooklet } from '../../src/booklet/folded-booklet.ts';
import { MOST_STAPLED, paddedPages } from '../../src/booklet/folding.ts';
import { PAPERS } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { INKS } from '../../src/paint/inks.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { applied } from '../../src/scene/transforms.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { longBooklet, shellBooklet } from './sample-input.ts';

const { measureText } = textRuler(readFontFiles());
const PAPER_NAMES = Object.values(PAPERS).map(({ name }) => name);
const FORMS = ['flat', 'folded', 'large print'] as const;

function manyYarns(): BookletInput {
  const base = longBooklet();
  const [yarn] = base.pattern.yarns;
  if (yarn === undefined) throw new Error('no yarn');
  const letters = [...'ABCDEFGHIJKLMNOP'];
  return {
    ...base,
    pattern: {
      ...base.pattern,
      yarns: letters.map((letter) => ({ ...yarn, letter, colour: `a colour with a long name, ${letter}` })),
    },
    sizes: base.sizes.map((size) => ({
      ...size,
      yarn: letters.flatMap((letter) => size.yarn.slice(0, 1).map((use) => ({ ...use, letter }))),
    })),
  };
}

const INPUTS = { long: longBooklet, 'many yarns': manyYarns } as const;

function textsOf(page: Scene): { text: string; left: number; right: number; y: number }[] {
  return walkShapes(page.shapes).flatMap(({ shape, transform }) => {
    if (shape.kind !== 'text') return [];
    const widthMm = measureText(shape.text.trimEnd(), shape.face, shape.sizeMm);
    const from = shape.align === 'start' ? 0 : shape.align === 'end' ? -widthMm : -widthMm / 2;
    const [a, y] = applied(transform, shape.x + from, shape.y);
    const [b] = applied(transform, shape.x + from + widthMm, shape.y);
    return [{ text: shape.text, left: Math.min(a, b), right: Math.max(a, b), y }];
  });
}

function isTile(page: Scene): boolean {
  return /Sheet \d+ of \d+: row/.test(page.alternative);
}

describe.each(
  FORMS.flatMap((form) =>
    PAPER_NAMES.flatMap((paper) => (['long', 'many yarns'] as const).map((name) => ({ form, paper, name }))),
  ),
)('the $name pattern, $form on $paper', ({ form, paper, name }) => {
  const edition: Edition = { ...USUAL_EDITION, form };
  const { pages, loose } = layOutBooklet(INPUTS[name](), paper, measureText, edition);

  test('stays within its margins on every page, and no page is empty', () => {
    for (const page of [...pages, ...loose]) {
      expect(page.shapes.length).toBeGreaterThan(0);
      if (isTile(page)) continue;
      for (const { text, left, right, y } of textsOf(page)) {
        expect(left, text).toBeGreaterThan(12.6);
        expect(right, text).toBeLessThan(page.widthMm - 12.6);
        expect(y, text).toBeLessThan(page.heightMm - 12.6);
        expect(y, text).toBeGreaterThan(12.6);
      }
    }
  });

  test('no two lines of text on a page are printed over each other', () => {
    for (const page of pages.filter((each) => !isTile(each))) {
      const lines = textsOf(page)
        .filter(({ text }) => text.trim().length > 3)
        .sort((a, b) => a.y - b.y);
      lines.forEach((line, index) => {
        for (const other of lines.slice(index + 1, index + 8)) {
          const over = other.left < line.right - 0.2 && other.right > line.left + 0.2;
          if (over && other.y - line.y < 2.2)
            throw new Error(`"${line.text}" and "${other.text}" stand over each other on ${page.title}`);
        }
      });
    }
  });

  test('has every row', () => {
    const labels = new Set(pages.flatMap(textsOf).map(({ text }) => text.replaceAll('\u00a0', ' ').trim()));
    const wanted = INPUTS[name]().words.parts.flatMap(({ lines }) => lines.slice(0, 320));
    // A label too long for its column stands on two lines.
    for (const { label } of wanted)
      if (label !== null)
        expect(labels.has(label) || labels.has(label.replace(/ \(.*/, '')), label).toBe(true);
  });
});

test('a booklet of more sheets than can be stapled says so where it tells how to fold it', () => {
  const once = layOutBooklet(longBooklet(), 'A4', measureText, { ...USUAL_EDITION, form: 'folded' });
  const laidOut = { ...once, pages: [...once.pages, ...once.pages] };
  expect(paddedPages(laidOut.pages.length) / 4).toBeGreaterThan(MOST_STAPLED);
  const [notes] = foldedBooklet(laidOut, { title: 'Long', paper: 'A4', notes: true, measure: measureText });
  expect(notes?.alternative).toMatch(/more than a stapler at home takes/);
  for (const { right, y } of textsOf(notes ?? EMPTY)) {
    expect(right).toBeLessThan((notes?.widthMm ?? 0) - 12.6);
    expect(y).toBeLessThan((notes?.heightMm ?? 0) - 12.6);
  }
});

const EMPTY: Scene = { widthMm: 0, heightMm: 0, title: '', alternative: '', symbols: {}, shapes: [] };

describe('contrast on white paper, by the formula of WCAG 2.2', () => {
  test('of all type is at least 4.5 to 1, and of boxes and rules at least 3 to 1', () => {
    const inks = new Set<string>();
    const strokes = new Set<string>();
    for (const page of layOutBooklet(shellBooklet(), 'A4', measureText).pages)
      for (const { shape } of walkShapes(page.shapes)) {
        if (shape.kind === 'text') inks.add(shape.ink);
        if (shape.kind === 'path' && shape.stroke !== null) strokes.add(shape.stroke.ink);
      }
    expect(inks.size).toBeGreaterThan(2);
    for (const ink of inks)
      if (ink !== 'paper') expect(contrast(colour(ink), '#ffffff'), ink).toBeGreaterThanOrEqual(4.5);
    for (const ink of strokes) expect(contrast(colour(ink), '#ffffff'), ink).toBeGreaterThanOrEqual(3);
    // The number of the present sheet on a map stands in white on its colour.
    expect(contrast(INKS.second, INKS.paper)).toBeGreaterThanOrEqual(4.5);
  });
});

function colour(ink: string): string {
  const named = Object.entries(INKS).find(([name]) => name === ink);
  return named?.[1] ?? ink;
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

/** Relative luminance, WCAG 2.2. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
