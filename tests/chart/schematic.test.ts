import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { schematics } from '../../src/chart/schematic.ts';
import { compilePattern } from '../../src/compile.ts';
import { outlines } from '../../src/measure/outlines.ts';
import { patternText } from '../fabric/work-text.ts';
import { textsOf } from './work-text.ts';

const ROOT = join(import.meta.dirname, '../..');

function compiled(folder: string): ReturnType<typeof compilePattern> {
  return compilePattern(
    { file: folder, text: readFileSync(join(ROOT, folder, 'pattern.yaml'), 'utf8') },
    'x',
  );
}

describe('the outline of a piece', () => {
  const sleeve = compiled('tests/patterns/sleeve-shaping');
  const [outline] =
    sleeve.pattern === null
      ? []
      : outlines(
          sleeve.pattern,
          sleeve.sizes[0]?.fabric as NonNullable<(typeof sleeve.sizes)[number]>['fabric'],
        );

  test('grows slowly to the underarm, is drawn in there, and slopes to the top', () => {
    const widths = outline?.points.map(({ widthMm }) => widthMm) ?? [];
    const widest = Math.max(...widths);
    expect(widest).toBeGreaterThan(widths[0] ?? 0);
    expect(widths.at(-1)).toBeLessThan(widths[0] ?? 0);
    // A start, the underarm before and after it is bound off, and the top: no step of the slope for itself.
    expect(outline?.points.length).toBeLessThanOrEqual(6);
    expect(outline?.points.length).toBeGreaterThanOrEqual(4);
  });

  test('is as wide as its stitches by the gauge', () => {
    const fabric = sleeve.sizes[0]?.fabric;
    const gauge = sleeve.pattern?.gauge;
    const first = fabric?.rows.find(({ number }) => number === 1);
    if (!first || !gauge) throw new Error('no row 1 or no gauge');
    expect(outline?.points[0]?.widthMm).toBeCloseTo((first.stitches * gauge.overMm) / gauge.stitches, 5);
  });
});

test.each([
  [
    'the skipped chains count as a stitch',
    'Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch across, turn. (20 dc)',
    'Ch 3 (counts as dc), sk first dc, dc in each dc across, turn. (20 dc)',
  ],
  [
    'the skipped chains stand for a space',
    'Sc in 4th ch from hook (skipped 3 ch count as ch-1 sp), *ch 1, sk next ch, sc in next ch; rep from * across, turn. (10 sc)',
    'Ch 2 (counts as ch-1 sp), *sc in next ch-1 sp, ch 1, sk next sc; rep from * to last sp, sc in last sp, turn. (10 sc)',
  ],
])('a straight piece is as wide at its start as at its end where %s', (_what, first, second) => {
  const text = patternText({ work: `Ch 22.\nRow 1: ${first}\nRow 2: ${second}\nRows 3-10: Rep Row 2.` });
  const { pattern, sizes, diagnostics } = compilePattern({ file: 'straight', text }, 'x');
  const fabric = sizes[0]?.fabric;
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  if (pattern === null || fabric === undefined) throw new Error('no fabric');
  const gauge = {
    stitches: 10,
    rows: 10,
    overMm: 100,
    upMm: 100,
    before: null,
    tookM: null,
    of: null,
    after: null,
  };
  const [outline] = outlines({ ...pattern, gauge: pattern.gauge ?? gauge }, fabric);
  const widths = outline?.points.map(({ widthMm }) => widthMm) ?? [];
  expect(widths.length).toBeGreaterThan(1);
  expect(new Set(widths.map((width) => width.toFixed(3))).size).toBe(1);
});

describe('a drawing of it', () => {
  const drawn = (folder: string): ReturnType<typeof schematics> => {
    const { pattern, sizes } = compiled(folder);
    const fabric = sizes[0]?.fabric;
    return pattern === null || fabric === undefined ? [] : schematics(pattern, fabric, 'T');
  };

  test('bears each measure in centimetres and inches, and says them in words', () => {
    const scene = drawn('tests/patterns/sleeve-shaping')[0]?.scene;
    const texts = scene === undefined ? [] : textsOf(scene);
    expect(texts.filter((text) => / cm$/.test(text))).toHaveLength(3);
    expect(texts.filter((text) => / in$/.test(text))).toHaveLength(3);
    for (const text of texts) expect(scene?.alternative).toContain(text);
  });

  test('says that an edging comes to it', () => {
    expect(drawn('patterns/sandbar-square')[0]?.scene.alternative).toMatch(/onto it comes to that/);
  });

  test.each(['chevron', 'mitred-square', 'triangle-shawl', 'corner-to-corner', 'ball', 'granny-square'])(
    'is left out of %s, which has another shape than straight rows',
    (kind) => {
      expect(drawn(`tests/patterns/${kind}`)).toEqual([]);
    },
  );
});
