/** What a booklet of the demo patterns holds beside its words: the measures of its size, and charts for either hand. */

import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { PAPERS } from '../../src/booklet/paper.ts';
import { walkShapes } from '../../src/booklet/walk-shapes.ts';
import { bookletInput } from '../../src/print-booklet.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { fixedWidth } from './fixed-width.ts';

const [file] = compilePatterns(
  await readPatterns([path.join(PROJECT_FOLDER, 'patterns/sandbar-square/pattern.yaml')]),
);
const compiled = file?.compiled;
const pattern = compiled?.pattern;
if (compiled === undefined || !pattern) throw new Error('no pattern');
const { sizes } = compiled;
const US = { dialect: 'us' } as const;

function textsOf(scene: Scene): string[] {
  return walkShapes(scene.shapes).flatMap(({ shape }) => (shape.kind === 'text' ? [shape.text] : []));
}

/** Where the symbols of charts stand across their page, by the page's own middle. */
function acrossOf(pages: readonly Scene[]): number[] {
  return pages.flatMap((page) =>
    walkShapes(page.shapes).flatMap(({ shape, transform }) =>
      shape.kind === 'use' && shape.symbol.startsWith('chart')
        ? [transform[0] * shape.transform[4] + transform[4] - page.widthMm / 2]
        : [],
    ),
  );
}

describe.each(Object.values(PAPERS).map(({ name }) => name))('on %s', (paper) => {
  test.each(sizes)('the booklet of $size.name has its measures in centimetres and inches', (size) => {
    const { pages } = layOutBooklet(bookletInput(pattern, size, US), paper, fixedWidth);
    const texts = pages.flatMap(textsOf);
    const wanted = size.schematics.flatMap(({ scene }) => textsOf(scene));
    expect(wanted.some((text) => / cm$/.test(text))).toBe(true);
    expect(wanted.some((text) => / in$/.test(text))).toBe(true);
    for (const text of wanted) expect(texts).toContain(text);
  });

  test('a booklet of all sizes has the measures of each, under its name', () => {
    const [first] = sizes;
    if (first === undefined) throw new Error('no size');
    const all = sizes.flatMap((size) => bookletInput(pattern, size, US).sizes);
    const { pages } = layOutBooklet({ ...bookletInput(pattern, first, US), sizes: all }, paper, fixedWidth);
    const texts = pages.flatMap(textsOf);
    for (const { name, schematics } of all) {
      expect(texts.filter((text) => text.startsWith(`${name}: `))).toHaveLength(schematics.length);
      for (const { scene } of schematics) for (const text of textsOf(scene)) expect(texts).toContain(text);
    }
  });

  test('charts for left-handed makers are those of the other hand turned over, and every page says so', () => {
    const [size] = sizes;
    if (size === undefined) throw new Error('no size');
    const [right, left] = [false, true].map(
      (leftHanded) =>
        layOutBooklet(bookletInput(pattern, size, { dialect: 'us', leftHanded }), paper, fixedWidth).pages,
    );
    const [ofRight, ofLeft] = [acrossOf(right ?? []), acrossOf(left ?? [])];
    expect(ofLeft.length).toBeGreaterThan(100);
    expect(ofLeft).toHaveLength(ofRight.length);
    expect(ofLeft).not.toEqual(ofRight);
    for (const page of left?.slice(1) ?? [])
      expect(page.alternative + textsOf(page)).toContain('left-handed charts');
    expect(textsOf(left?.find((page) => acrossOf([page]).length > 0) ?? EMPTY)).toContain(
      'Chart for left-handed makers',
    );
  });
});

const EMPTY: Scene = { widthMm: 0, heightMm: 0, title: '', alternative: '', symbols: {}, shapes: [] };
