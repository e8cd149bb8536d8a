/** What only charts in the Japanese style show: broken stems, triangles where yarn is joined and cut, the sign for a ring. */

import { describe, expect, test } from 'vitest';
import { chartParts } from '../../src/chart/chart-parts.ts';
import { crossedStems } from '../../src/chart/crossings.ts';
import { stitchRows } from '../../src/chart/elements.ts';
import { LabelRoom } from '../../src/chart/label-room.ts';
import { U_MM } from '../../src/chart/metrics.ts';
import { SymbolBook } from '../../src/chart/symbol-book.ts';
import { drawYarnMarks, yarnMarks } from '../../src/chart/yarn-marks.ts';
import type { Fabric } from '../../src/fabric/fabric.ts';
import type { Scene } from '../../src/scene/scene.ts';
import { crossedStem } from '../../src/symbols/crossed-stem.ts';
import { MAGIC_RING_RADIUS_U } from '../../src/symbols/magic-ring.ts';
import { FOOT_GAP_U } from '../../src/symbols/stitch-symbol.ts';
import { SYMBOL_SETS, SYMBOLS } from '../../src/symbols/symbols.ts';
import { granny, rows, spiral } from './samples.ts';
import { allShapes, placed, rowNamed, stitchesOf, textsOf, workText } from './work-text.ts';

function sceneIn(symbols: 'CYC' | 'JIS', fabric: Fabric, leftHanded = false): Scene {
  const [chart] = chartParts(fabric, { terms: 'US', title: 'T', key: true, symbols, leftHanded });
  if (chart === undefined) throw new Error('no chart');
  return chart.scene;
}

const crossed = (side: 'RS' | 'WS', how: string): Fabric =>
  workText({
    Panel: `Foundation: Ch 6.
      Row 1 (${side === 'RS' ? 'WS' : 'RS'}): Sc in 2nd ch from hook and in each ch across, turn. (5 sc)
      Row 2: Ch 3 (counts as dc), sk first st, *sk next st, dc in next st, ${how}dc in skipped st; rep from * across, turn. (5 dc)`,
  });

function brokenIn(fabric: Fabric): number[] {
  const stems = crossedStems(fabric, stitchRows(fabric), placed(fabric), [rowNamed(fabric, 'Row 2')]);
  expect(stems.size).toBe([...stems.values()].flat().length * 2);
  return [...stems].filter(([, shares]) => shares.length > 0).map(([stitch]) => stitch);
}

describe('of two stems that cross', () => {
  const dcs = (fabric: Fabric): number[] => stitchesOf(fabric, rowNamed(fabric, 'Row 2'), 'dc');
  const everyOther = (all: readonly number[], from: number): number[] => all.filter((_, k) => k % 2 === from);

  test.each([
    ['RS', '', 0],
    ['RS', 'working in front of dc just made, ', 0],
    ['RS', 'working behind dc just made, ', 1],
    // A chart shows the right side: what lies in front on a wrong-side row is behind there.
    ['WS', 'working in front of dc just made, ', 1],
    ['WS', 'working behind dc just made, ', 0],
  ] as const)('on a %s row, "%s": the one behind is broken', (side, how, which) => {
    const fabric = crossed(side, how);
    expect(dcs(fabric)).toHaveLength(4);
    expect(brokenIn(fabric).toSorted((a, b) => a - b)).toEqual(everyOther(dcs(fabric), which));
  });

  test('neither is broken where one goes round the other, and plain rows have none that cross', () => {
    const around = crossed('RS', 'working around dc just made, ');
    const table = stitchRows(around);
    expect(crossedStems(around, table, placed(around), [rowNamed(around, 'Row 2')]).size).toBe(0);
    for (const fabric of [rows(), granny()])
      expect(crossedStems(fabric, stitchRows(fabric), placed(fabric), [1, 2, 3]).size).toBe(0);
  });

  test('only the Japanese style breaks one, also for left-handed makers, and its key says what that means', () => {
    const fabric = crossed('RS', '');
    for (const leftHanded of [false, true]) {
      const drawnSo = (symbols: 'CYC' | 'JIS'): number => {
        const all = allShapes(sceneIn(symbols, fabric, leftHanded).shapes);
        return all.filter(
          (shape) => shape.kind === 'use' && shape.data && /crossed-\d+-\d+$/.test(shape.symbol),
        ).length;
      };
      expect([drawnSo('CYC'), drawnSo('JIS')]).toEqual([0, 2]);
    }
    expect(textsOf(sceneIn('JIS', fabric))).toContain('crossed: the broken stem lies behind');
    expect(textsOf(sceneIn('CYC', fabric))).not.toContain('crossed: the broken stem lies behind');
    expect(textsOf(sceneIn('JIS', rows()))).not.toContain('crossed: the broken stem lies behind');
  });

  test('a broken stem has white where the other passes, and is whole but there', () => {
    const lengths = (heights: number[]): number[] =>
      crossedStem(SYMBOLS.double.draw(2, 'firm'), 2, heights).flatMap((shape) =>
        shape.kind !== 'path'
          ? []
          : shape.parts.flatMap((to, k) => {
              const from = shape.parts[k - 1];
              const stem = from?.[0] === 'M' && to[0] === 'L' && from[1] === 0 && to[1] === 0;
              return stem ? [from[2] - to[2]] : [];
            }),
      );
    const [whole = 0, ...more] = lengths([]);
    expect(more).toEqual([]);
    const [below = 0, above = 0, ...others] = lengths([1]);
    expect(others).toEqual([]);
    expect(whole - below - above).toBeCloseTo(0.5);
    expect(Math.min(below, above)).toBeGreaterThan(0.4);
  });
});

const striped = (): Fabric =>
  workText({
    Panel: `Foundation: With A, ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. Fasten off A. (10 sc)
      Row 2: Join B with sl st in first st, ch 1, sc in same st, sc in each st across, turn. (10 sc)
      Row 3: With A, ch 1, sc in each st across, turn. (10 sc)
      Row 4: With B, ch 1, sc in each st across, turn. (10 sc)
      Row 5: With A, ch 1, sc in each st across. (10 sc)
      Fasten off.`,
  });

describe('triangles at the ends of yarn', () => {
  const fabric = striped();
  const all = fabric.rows.map((_, row) => row);
  const marks = yarnMarks(fabric, all);

  test('stand where yarn comes in anew and where it is cut, and not where it begins the piece or is carried', () => {
    const told = marks.map(({ does, stitch }) => `${does} ${fabric.rows[fabric.row[stitch] ?? 0]?.label}`);
    expect(told).toEqual(['cut Row 1', 'join Row 2', 'join Row 3', 'cut Row 5']);
    expect(yarnMarks(rows(), [0, 1, 2, 3])).toEqual([]);
  });

  test('are open for joining and solid for cutting, each near its stitch and on none', () => {
    const layout = placed(fabric);
    const marking = {
      fabric,
      table: stitchRows(fabric),
      layout,
      rows: all,
      inks: [],
      beside: [],
      book: new SymbolBook('JIS'),
    };
    const drawn = drawYarnMarks(marking, marks);
    expect(drawn.map((shape) => (shape.kind === 'path' ? shape.fill : ''))).toEqual([
      'ink',
      'none',
      'none',
      'ink',
    ]);
    const room = new LabelRoom(fabric, layout, all);
    drawn.forEach((shape, k) => {
      if (shape.kind !== 'path') throw new Error('no path');
      const corners = shape.parts.flatMap((part) =>
        part[0] === 'M' || part[0] === 'L' ? [{ x: part[1] / U_MM, y: -part[2] / U_MM }] : [],
      );
      expect(corners).toHaveLength(3);
      expect(room.aroundAll(corners)).toBeGreaterThan(0);
      const { stitch } = marks[k] ?? { stitch: 0 };
      const [tip] = corners;
      const away = (xs: Float64Array, ys: Float64Array): number =>
        Math.hypot((tip?.x ?? 99) - (xs[stitch] ?? 0), (tip?.y ?? 99) - (ys[stitch] ?? 0));
      expect(Math.min(away(layout.footX, layout.footY), away(layout.headX, layout.headY))).toBeLessThan(1.9);
    });
  });

  test('are drawn and explained in the Japanese style only', () => {
    const yarnGroups = (symbols: 'CYC' | 'JIS'): number =>
      allShapes(sceneIn(symbols, fabric).shapes).filter(
        (shape) => shape.kind === 'group' && shape.data?.labels === 'yarn',
      ).length;
    expect([yarnGroups('CYC'), yarnGroups('JIS')]).toEqual([0, 1]);
    expect(textsOf(sceneIn('JIS', fabric))).toEqual(expect.arrayContaining(['yarn joined', 'yarn cut']));
    for (const words of ['yarn joined', 'yarn cut']) {
      expect(textsOf(sceneIn('CYC', fabric))).not.toContain(words);
      expect(textsOf(sceneIn('JIS', rows()))).not.toContain(words);
    }
  });

  test('are not to be taken for where to begin, which then is an arrow', () => {
    const solid = (symbols: 'CYC' | 'JIS'): number =>
      allShapes(sceneIn(symbols, rows()).shapes).filter(
        (shape) => shape.kind === 'path' && shape.fill !== 'none' && shape.parts.length === 4,
      ).length;
    const shafts = (symbols: 'CYC' | 'JIS'): number =>
      allShapes(sceneIn(symbols, rows()).shapes).filter(
        (shape) => shape.kind === 'path' && shape.fill === 'none' && shape.parts.length === 2,
      ).length;
    expect(solid('JIS')).toBe(solid('CYC'));
    // In the chart and in the key.
    expect(shafts('JIS')).toBe(shafts('CYC') + 2);
  });
});

describe('a magic ring', () => {
  test('is the Japanese sign in that style, in strokes and not in letters, and the key says so', () => {
    const fabric = spiral();
    const [council, japanese] = [sceneIn('CYC', fabric), sceneIn('JIS', fabric)];
    const ring = (scene: Scene): string => JSON.stringify(scene.symbols['magic-ring-firm-1']);
    expect(ring(japanese)).toContain('"C"');
    expect(ring(japanese)).not.toBe(ring(council));
    expect(textsOf(japanese)).toContain('magic ring, the Japanese sign for “ring”');
    expect(textsOf(council)).toContain('magic ring');
    expect(textsOf(japanese).join()).not.toMatch(/\p{Script=Hiragana}/u);
  });

  test('leaves the same room for what is worked into it: it keeps clear of where feet begin', () => {
    const [sign] = SYMBOL_SETS.JIS.symbols['magic-ring'].draw(0, 'firm');
    if (sign?.kind !== 'path') throw new Error('no strokes');
    const ends = sign.parts.map((part) =>
      part[0] === 'Z' ? 0 : Math.hypot(part.at(-2) as number, part.at(-1) as number),
    );
    expect(Math.max(...ends)).toBeGreaterThan(0.4);
    expect(Math.max(...ends)).toBeLessThan(MAGIC_RING_RADIUS_U + FOOT_GAP_U - 0.04);
    expect(SYMBOL_SETS.JIS.symbols['magic-ring'].widthU).toBe(SYMBOLS['magic-ring'].widthU);
  });
});
