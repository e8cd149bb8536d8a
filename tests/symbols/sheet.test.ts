/**
 * Every chart symbol, held against how the trade describes it (`shared/trade/symbols.md`): what each is made of, in
 * words, and all of them on one sheet that was looked at. The sheet is drawn anew with
 * `ROWFOLD_PICTURES=new npx vitest run --config tests/vitest.config.ts tests/symbols/sheet.test.ts`; then look at it.
 */

import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { paintSvg } from '../../src/paint/svg.ts';
import { boundsOf } from '../../src/scene/bounds.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';
import { enlarged, placedAt } from '../../src/scene/transforms.ts';
import { drawLens } from '../../src/symbols/gathered.ts';
import { drawPopcorn } from '../../src/symbols/popcorn.ts';
import { POST_HOOKS } from '../../src/symbols/post-hook.ts';
import { SYMBOL_SETS, type SYMBOLS } from '../../src/symbols/symbols.ts';
import { kept, pictured, shareDiffering, TOLERANCE } from '../chart/compare-pictures.ts';
import { madeOf } from './made-of.ts';

const CYC = SYMBOL_SETS.CYC;
const JIS = SYMBOL_SETS.JIS;

/** One leg of a decrease, leaning neither way. */
function leg(set: typeof CYC, id: 'single' | 'double'): readonly Shape[] {
  return set.symbols[id].leg(1.4, null, 'firm');
}

function whole(set: typeof CYC, id: keyof typeof SYMBOLS): readonly Shape[] {
  const { draw, heightU } = set.symbols[id];
  return draw(heightU, 'firm');
}

/** What it is called, its drawing, and what the trade says it is made of. */
const SHEET: readonly (readonly [string, readonly Shape[], string])[] = [
  ['chain', whole(CYC, 'chain'), 'open oval'],
  ['slip stitch', whole(CYC, 'slip-stitch'), 'solid oval'],
  ['sc, upright', whole(CYC, 'single'), 'stem, stroke across it'],
  ['sc, Japanese', whole(JIS, 'single'), '2 long strokes aslant'],
  ['hdc', whole(CYC, 'half-double'), 'stem, bar on top'],
  ['dc', whole(CYC, 'double'), 'stem, bar on top, 1 slash'],
  ['tr', whole(CYC, 'treble'), 'stem, bar on top, 2 slashes'],
  ['dtr', whole(CYC, 'double-treble'), 'stem, bar on top, 3 slashes'],
  ['trtr', whole(CYC, 'triple-treble'), 'stem, bar on top, 4 slashes'],
  ['quadtr', whole(CYC, 'quadruple-treble'), 'stem, bar on top, 5 slashes'],
  ['esc', whole(CYC, 'extended-single'), 'stem, stroke across it, open oval'],
  ['esc, Japanese', whole(JIS, 'extended-single'), '2 long strokes aslant, open oval'],
  ['ehdc', whole(CYC, 'extended-half-double'), 'stem, bar on top, open oval'],
  ['edc', whole(CYC, 'extended-double'), 'stem, bar on top, 1 slash, open oval'],
  ['etr', whole(CYC, 'extended-treble'), 'stem, bar on top, 2 slashes, open oval'],
  ['reverse sc', whole(CYC, 'reverse-single'), 'stem, stroke across it, wave'],
  ['reverse sc, Japanese', whole(JIS, 'reverse-single'), '2 long strokes aslant, wave'],
  ['loop stitch', whole(CYC, 'looped-single'), 'stem, stroke across it, loop'],
  ['loop stitch, Japanese', whole(JIS, 'looped-single'), '2 long strokes aslant, loop'],
  ['linked dc', whole(CYC, 'linked-double'), 'stem, stroke across it, bar on top'],
  ['linked tr', whole(CYC, 'linked-treble'), 'stem, 2 strokes across it, bar on top'],
  ['love knot', whole(CYC, 'love-knot'), 'stem, stroke across it, open oval'],
  ['bullion', whole(CYC, 'bullion'), 'stem, bar on top, 6 short arcs'],
  ['magic ring', whole(CYC, 'magic-ring'), 'spiral'],
  ['leg of sc together', leg(CYC, 'single'), 'stem, stroke across it'],
  ['leg, Japanese', leg(JIS, 'single'), 'stem'],
  ['leg of dc together', leg(CYC, 'double'), 'stem, 1 slash'],
  ['2 sc in one place', drawLens(CYC.symbols.single, 2, 1, 'firm'), '2 bowed stems, 2 strokes across'],
  ['puff of 3', drawLens(CYC.symbols['half-double'], 3, 1.4, 'firm'), 'stem, 2 bowed stems, bar on top'],
  [
    'cluster of 3 dc',
    drawLens(CYC.symbols.double, 3, 2, 'firm'),
    'stem, 2 bowed stems, bar on top, 3 slashes',
  ],
  [
    'popcorn of 5 dc',
    drawPopcorn(CYC.symbols.double, 5, 2.2, 'firm'),
    'stem, 4 bowed stems, 5 slashes, open oval',
  ],
  ['front post', POST_HOOKS.front('firm'), 'hook open to the right'],
  ['back post', POST_HOOKS.back('firm'), 'hook open to the left'],
  ['back loop', CYC.loopMarks.back('firm'), 'hump'],
  ['front loop', CYC.loopMarks.front('firm'), 'cup'],
  ['back loop, Japanese', JIS.loopMarks.back('firm'), 'bar'],
];

describe('as the trade describes it', () => {
  test.each(SHEET)('%s', (_name, shapes, words) => {
    expect(madeOf(shapes)).toBe(words);
  });

  test('no two look alike, but what is told apart by where it stands', () => {
    const alike = new Map<string, string[]>();
    for (const [name, shapes] of SHEET) {
      const box = boundsOf(shapes);
      const tall = ((box?.bottom ?? 0) - (box?.top ?? 0)).toFixed(1);
      const look = `${madeOf(shapes)}, ${tall} tall`;
      alike.set(look, [...(alike.get(look) ?? []), name]);
    }
    expect([...alike.values()].filter((names) => names.length > 1)).toEqual([]);
  });
});

const COLUMNS = 9;
const CELL_MM = { wide: 24, high: 30 } as const;

function sheet(): Scene {
  const shapes = SHEET.flatMap(([name, drawing], k): Shape[] => {
    const x = ((k % COLUMNS) + 0.5) * CELL_MM.wide;
    const y = (Math.floor(k / COLUMNS) + 1) * CELL_MM.high - 7;
    return [
      { kind: 'group', transform: placedAt(x, y), shapes: enlarged(drawing, 4) },
      { kind: 'text', x, y: y + 5, text: name, sizeMm: 2.2, face: 'text', align: 'middle', ink: 'ink' },
    ];
  });
  return {
    title: 'Symbols',
    alternative: '',
    widthMm: COLUMNS * CELL_MM.wide,
    heightMm: Math.ceil(SHEET.length / COLUMNS) * CELL_MM.high,
    shapes,
    symbols: {},
  };
}

test('the sheet of all symbols is the one that was looked at', () => {
  const picture = pictured(paintSvg(sheet(), { idPrefix: 's', colours: 'plain' }), 900);
  const file = join(import.meta.dirname, 'sheet.png');
  if (process.env.ROWFOLD_PICTURES === 'new') writeFileSync(file, picture.png);
  expect(existsSync(file)).toBe(true);
  expect(shareDiffering(picture, kept(file))).toBeLessThan(TOLERANCE);
});
