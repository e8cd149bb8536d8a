/** Pieces that are not plain rows or rounds are drawn in the shape they are made in. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { bentTrack } from '../../src/chart/bent-track.ts';
import { pieces } from '../../src/chart/chart-parts.ts';
import { hasFlag, stitchRows } from '../../src/chart/elements.ts';
import { emptyLayout, type Layout } from '../../src/chart/layout.ts';
import { placePiece } from '../../src/chart/place-part.ts';
import { wallFrom } from '../../src/chart/walls.ts';
import { compilePattern } from '../../src/compile.ts';
import { type Fabric, FLAG, INTO, targets } from '../../src/fabric/fabric.ts';
import { at, stitchesOf } from './work-text.ts';

interface Drawn {
  readonly fabric: Fabric;
  readonly layout: Layout;
}

function drawn(kind: string): Drawn {
  const text = readFileSync(join(import.meta.dirname, '../patterns', kind, 'pattern.yaml'), 'utf8');
  const fabric = compilePattern({ file: kind, text }, kind).sizes[0]?.fabric;
  if (fabric === undefined) throw new Error(`${kind} has no size`);
  const layout = emptyLayout(fabric.count);
  for (const parts of pieces(fabric)) placePiece(fabric, stitchRows(fabric), layout, parts);
  return { fabric, layout };
}

const numberIn = (label: string): string => label.replace(/\D/g, '');
const rowLabelled = ({ fabric }: Drawn, label: string): number =>
  fabric.rows.findIndex((row) => numberIn(row.label) === numberIn(label));
const headY = ({ layout }: Drawn, i: number): number => at(layout.headY, i);
const headX = ({ layout }: Drawn, i: number): number => at(layout.headX, i);

describe('a ripple', () => {
  const ripple = drawn('chevron');
  const row8 = rowLabelled(ripple, 'Row 8');
  const single = stitchesOf(ripple.fabric, row8, 'sc');
  const valleys = stitchesOf(ripple.fabric, row8, 'sc3tog');

  test('has its three-together in the valleys and the middle of three in one stitch on the peaks', () => {
    expect(valleys).toHaveLength(4);
    const low = Math.min(...single.map((i) => headY(ripple, i)));
    for (const valley of valleys) expect(headY(ripple, valley)).toBeLessThan(low);
    const threes = single.filter((i) =>
      [i - 1, i + 1].every(
        (beside) =>
          single.includes(beside) && targets(ripple.fabric, beside)[0] === targets(ripple.fabric, i)[0],
      ),
    );
    expect(threes).toHaveLength(3);
    for (const i of threes)
      for (const beside of [i - 1, i + 1]) expect(headY(ripple, i)).toBeGreaterThan(headY(ripple, beside));
  });

  test('peaks and valleys stand straight over those of the rows below', () => {
    const below = stitchesOf(ripple.fabric, rowLabelled(ripple, 'Row 2'), 'sc3tog');
    const places = (all: readonly number[]): number[] =>
      all.map((i) => headX(ripple, i)).sort((a, b) => a - b);
    places(valleys).forEach((x, k) => {
      expect(x).toBeCloseTo(places(below)[k] ?? Number.NaN, 6);
    });
  });
});

test('a wave of many increases and many decreases is drawn as a ripple too, its edges held', () => {
  const text = readFileSync(
    join(import.meta.dirname, '../mistakes/held-out/headland-ripple/pattern.yaml'),
    'utf8',
  );
  const fabric = compilePattern({ file: 'headland-ripple', text }, 'x').sizes[0]?.fabric;
  if (fabric === undefined) throw new Error('no size');
  const layout = emptyLayout(fabric.count);
  for (const parts of pieces(fabric)) placePiece(fabric, stitchRows(fabric), layout, parts);
  const last = fabric.rows.length - 1;
  const heads = stitchesOf(fabric, last, 'sc').map((i) => at(layout.headY, i));
  expect(Math.max(...heads) - Math.min(...heads)).toBeGreaterThan(2);
});

test('a mitred square stands on its corner: its two sides of chains are of one length and meet over the point', () => {
  const square = drawn('mitred-square');
  const chains = stitchesOf(square.fabric, 0, 'ch').filter(
    (i) => !hasFlag(square.fabric, i, FLAG.turningChain),
  );
  const xs = chains.map((i) => at(square.layout.anchorX, i));
  const lowest = chains.reduce((a, b) => (at(square.layout.footY, a) < at(square.layout.footY, b) ? a : b));
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  expect(Math.abs(at(square.layout.anchorX, lowest) - middle)).toBeLessThan(0.6);
  const last = square.fabric.rows.length - 1;
  const [point = -1] = stitchesOf(square.fabric, last, 'sc3tog');
  expect(headX(square, point)).toBeCloseTo(middle, 1);
});

test('a shawl from the neck has its ring in the middle of its straight edge and its spine straight up', () => {
  const shawl = drawn('triangle-shawl');
  const spine = shawl.fabric.spaces.filter(({ first, end }) => end - first === 2);
  expect(spine.length).toBeGreaterThan(8);
  for (const { first, end } of spine) {
    const x = (at(shawl.layout.footX, first) + at(shawl.layout.headX, end - 1)) / 2;
    expect(Math.abs(x)).toBeLessThan(0.3);
  }
  expect(at(shawl.layout.footX, 0)).toBe(0);
});

describe('a piece from corner to corner', () => {
  const piece = drawn('corner-to-corner');

  test('is a square of blocks, eight by eight, and blocks of neighbouring rows lie across each other', () => {
    const all = piece.fabric.rows.flatMap((_, row) => stitchesOf(piece.fabric, row, 'dc'));
    const upright = (i: number): boolean =>
      Math.abs(headX(piece, i) - at(piece.layout.footX, i)) <
      Math.abs(headY(piece, i) - at(piece.layout.footY, i));
    for (const i of all) {
      const row = piece.fabric.rows[piece.fabric.row[i] ?? 0];
      expect(upright(i)).toBe(row?.side === 'WS');
    }
    const xs = all.flatMap((i) => [headX(piece, i), at(piece.layout.footX, i)]);
    const ys = all.flatMap((i) => [headY(piece, i), at(piece.layout.footY, i)]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(Math.max(...ys) - Math.min(...ys), 0);
  });

  test('each block stands on the chains it is worked into', () => {
    for (let i = 0; i < piece.fabric.count; i += 1) {
      if (
        piece.fabric.where[i] !== INTO.space ||
        stitchRows(piece.fabric)[piece.fabric.kind[i] ?? 0]?.family === 'slip'
      )
        continue;
      const away = [...targets(piece.fabric, i)].map((chain) =>
        Math.hypot(
          at(piece.layout.footX, i) - at(piece.layout.anchorX, chain),
          at(piece.layout.footY, i) - at(piece.layout.anchorY, chain),
        ),
      );
      expect(Math.min(...away)).toBeLessThan(0.6);
    }
  });
});

describe('rounds that go up rather than out', () => {
  test('are laid out straight: a ball is a ring of five rounds and a wall of nine', () => {
    const ball = drawn('ball');
    const heights = (label: string): number[] =>
      stitchesOf(ball.fabric, rowLabelled(ball, label), 'sc').map((i) => headY(ball, i));
    const spread = (all: readonly number[]): number => Math.max(...all) - Math.min(...all);
    expect(spread(heights('Rnd 5'))).toBeGreaterThan(5);
    expect(spread(heights('Rnd 6'))).toBeLessThan(0.01);
    expect(Math.min(...heights('Rnd 6'))).toBeGreaterThan(Math.max(...heights('Rnd 5')));
  });

  test('a tube worked in turned rounds begins each round over the seam, its stitches in the order they are worked', () => {
    const tube = drawn('turned-tube');
    for (const label of ['Rnd 2', 'Rnd 3', 'Rnd 10']) {
      const row = tube.fabric.rows[rowLabelled(tube, label)];
      const xs: number[] = [];
      for (let i = row?.first ?? 0; i < (row?.end ?? 0); i += 1)
        if (hasFlag(tube.fabric, i, FLAG.counted)) xs.push(headX(tube, i));
      const steps = xs.slice(1).map((x, k) => x - (xs[k] ?? 0));
      for (const step of steps) expect(Math.sign(step)).toBe(row?.direction === 'left' ? -1 : 1);
    }
  });

  test('a flat circle is all ring, and so is a mat with two rounds of edge', () => {
    const growing = Array.from({ length: 8 }, (_, k) => ({ row: k, widthU: 6 * (k + 1), heightU: 0.9 }));
    expect(wallFrom(growing, { ringU: 0.4, chainU: 0 })).toBeNull();
    const edged = [...growing, ...[8, 9].map((row) => ({ row, widthU: 48, heightU: 0.9 }))];
    expect(wallFrom(edged, { ringU: 0.4, chainU: 0 })).toBeNull();
  });

  test('a hat goes up from where its rounds stop growing', () => {
    const hat = [
      ...Array.from({ length: 8 }, (_, k) => ({ row: k, widthU: 6 * (k + 1), heightU: 0.9 })),
      ...Array.from({ length: 12 }, (_, k) => ({ row: 8 + k, widthU: 48, heightU: 0.9 })),
    ];
    const from = wallFrom(hat, { ringU: 0.4, chainU: 0 });
    expect(from).toBeGreaterThanOrEqual(8);
    expect(from).toBeLessThanOrEqual(10);
  });
});

test('rows that begin in a ring fan out of it', () => {
  const pineapple = drawn('pineapple');
  const row2 = rowLabelled(pineapple, 'Row 2');
  const far = stitchesOf(pineapple.fabric, row2, 'tr').map((i) =>
    Math.hypot(headX(pineapple, i), headY(pineapple, i)),
  );
  expect(far).toHaveLength(9);
  expect(Math.max(...far) - Math.min(...far)).toBeLessThan(1.1);
});

test('a band worked into row ends stands on the side of its piece, each stitch as far along as its row end', () => {
  const band = drawn('ribbing');
  const rows = band.fabric.parts[1];
  const heads = stitchesOf(band.fabric, (rows?.firstRow ?? 0) + 1, 'hdc').map((i) => headX(band, i));
  expect(heads).toHaveLength(24);
  expect(Math.max(...heads) - Math.min(...heads)).toBeLessThan(0.01);
});

describe('the line of rows that go up and down', () => {
  const track = bentTrack(
    [
      { kind: 'valley', s: 4 },
      { kind: 'peak', s: 10 },
      { kind: 'valley', s: 16 },
    ],
    0.8,
  );

  test.each([-2, 1, 4.5, 7, 9.6, 12, 15, 19])('finds the place %s of each level again', (s) => {
    for (const level of [0, 1, 2.5]) {
      const { x, y } = track.point(s, level, level);
      const found = track.locate(x, y, level);
      expect(found.s).toBeCloseTo(s, 6);
      expect(found.offset).toBeCloseTo(level, 6);
    }
  });

  test('legs between a peak and a valley keep their length', () => {
    for (const level of [0, 1, 3]) {
      expect(track.cornerAt(1, level) - track.cornerAt(0, level)).toBeCloseTo(6, 6);
      expect(track.cornerAt(2, level) - track.cornerAt(1, level)).toBeCloseTo(6, 6);
    }
  });
});
