/** Where a round of single crochet begins and ends at a corner its chain, its dot and its first and last stitches have room. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pieces } from '../../src/chart/chart-parts.ts';
import { hasFlag, stitchRows } from '../../src/chart/elements.ts';
import { emptyLayout, type Layout, type Point } from '../../src/chart/layout.ts';
import { placePiece } from '../../src/chart/place-part.ts';
import { compilePattern } from '../../src/compile.ts';
import { type Fabric, FLAG, NONE } from '../../src/fabric/fabric.ts';
import { at, stitchesOf } from './work-text.ts';

interface Drawn {
  readonly fabric: Fabric;
  readonly layout: Layout;
}

function drawn(folder: string): Drawn {
  const text = readFileSync(join(import.meta.dirname, '../..', folder, 'pattern.yaml'), 'utf8');
  const fabric = compilePattern({ file: folder, text }, 'x').sizes[0]?.fabric;
  if (fabric === undefined) throw new Error(`${folder} has no size`);
  const layout = emptyLayout(fabric.count);
  for (const parts of pieces(fabric)) placePiece(fabric, stitchRows(fabric), layout, parts);
  return { fabric, layout };
}

/** A point of a stitch so far from its foot, as a share of it. */
function along(layout: Layout, i: number, share: number): Point {
  const between = (foot: Float64Array, head: Float64Array): number =>
    at(foot, i) + (at(head, i) - at(foot, i)) * share;
  return { x: between(layout.footX, layout.headX), y: between(layout.footY, layout.headY) };
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Where the cross of a single crochet is drawn: near its head, however long its stem. */
function crossOf(layout: Layout, i: number): Point {
  const length = apart(along(layout, i, 0), along(layout, i, 1));
  return along(layout, i, Math.max((0.1 + length) / 2, length - 0.36) / length);
}

/** The least distance between any two of the beginning chain, the first two stitches, the last one and the join. */
function leastApart({ fabric, layout }: Drawn, row: number): number {
  const { first = 0, end = 0 } = fabric.rows[row] ?? {};
  let chain = first;
  while (!hasFlag(fabric, chain, FLAG.turningChain) && chain < end) chain += 1;
  const sc = stitchesOf(fabric, row, 'sc').filter((i) => (fabric.countsAs[i] ?? NONE) !== NONE);
  const marks = [
    along(layout, chain, 0.5),
    along(layout, end - 1, 0.5),
    ...[sc[0], sc[1], sc.at(-1)].map((i) => crossOf(layout, i ?? 0)),
  ];
  return Math.min(...marks.flatMap((a, k) => marks.slice(k + 1).map((b) => apart(a, b))));
}

const rounds = ({ fabric }: Drawn): number[] =>
  fabric.rows.flatMap((row, k) => (row.closing === 'joined' && (row.byStitch.sc ?? 0) > 20 ? [k] : []));

describe.each([
  'patterns/lantern-square',
  'patterns/sandbar-square',
  'patterns/two-tides-square',
  'tests/patterns/blanket-border',
])('the edge of %s', (folder) => {
  const chart = drawn(folder);

  // A cross is 0.54 wide, a dot 0.4 and a chain 0.38.
  test('begins and ends with room for each of its marks', () => {
    expect(rounds(chart).length).toBeGreaterThan(0);
    for (const row of rounds(chart)) expect(leastApart(chart, row)).toBeGreaterThan(0.46);
  });
});

test('a chain on the first stitch is found', () => {
  const chart = drawn('patterns/lantern-square');
  const [row = 0] = rounds(chart);
  const [stitch = 0] = stitchesOf(chart.fabric, row, 'sc');
  for (const xs of [chart.layout.footX, chart.layout.headX]) xs[stitch - 1] = at(xs, stitch);
  for (const ys of [chart.layout.footY, chart.layout.headY]) ys[stitch - 1] = at(ys, stitch);
  expect(leastApart(chart, row)).toBeLessThan(0.46);
});

test('chains across a corner bow outwards and do not fold over each other', () => {
  const chart = drawn('patterns/lantern-square');
  const { fabric, layout } = chart;
  const corners = fabric.spaces.filter(({ corner, row }) => corner && rounds(chart).includes(row));
  expect(corners.length).toBe(4);
  for (const { first, end } of corners)
    for (let i = first; i + 1 < end; i += 1) {
      const way = (k: number): Point => {
        const [from, to] = [along(layout, k, 0), along(layout, k, 1)];
        return { x: (to.x - from.x) / apart(from, to), y: (to.y - from.y) / apart(from, to) };
      };
      const [a, b] = [way(i), way(i + 1)];
      // Turned by little more than a right angle at most.
      expect(a.x * b.x + a.y * b.y).toBeGreaterThan(-0.25);
    }
});
