/** What is promised of every chart, measured over the demo patterns and all whole patterns of the tests. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { chartParts, pieces, rowsOfParts } from '../../src/chart/chart-parts.ts';
import { isLong } from '../../src/chart/columns.ts';
import { hasFlag, stitchRows } from '../../src/chart/elements.ts';
import { emptyLayout, type Layout } from '../../src/chart/layout.ts';
import { placePiece } from '../../src/chart/place-part.ts';
import { compilePattern } from '../../src/compile.ts';
import { type Fabric, FLAG, INTO, targets } from '../../src/fabric/fabric.ts';
import { paintSvg } from '../../src/paint/svg.ts';
import { isCrossed, overlaps } from './overlaps.ts';
import { at, drawnStitches } from './work-text.ts';

const ROOT = join(import.meta.dirname, '../..');
const KINDS = ['patterns', 'tests/patterns', 'tests/mistakes/held-out'].flatMap((folder) =>
  readdirSync(join(ROOT, folder))
    .filter((name) => existsSync(join(ROOT, folder, name, 'pattern.yaml')))
    .map((name) => ({ name, file: join(ROOT, folder, name, 'pattern.yaml') })),
);

const fabrics = new Map<string, Fabric>();
function fabricOf({ name, file }: (typeof KINDS)[number]): Fabric {
  const fabric =
    fabrics.get(name) ??
    compilePattern({ file: name, text: readFileSync(file, 'utf8') }, name).sizes[0]?.fabric;
  if (fabric === undefined) throw new Error(`${name} has no size`);
  fabrics.set(name, fabric);
  return fabric;
}

function layoutOf(fabric: Fabric): Layout {
  const layout = emptyLayout(fabric.count);
  for (const parts of pieces(fabric)) placePiece(fabric, stitchRows(fabric), layout, parts);
  return layout;
}

describe.each(KINDS)('the chart of $name', (kind) => {
  const fabric = fabricOf(kind);
  const layout = layoutOf(fabric);

  test('has no stitches drawn over each other but those that cross in the work', () => {
    expect(overlaps(fabric, layout).filter((pair) => !isCrossed(fabric, pair))).toEqual([]);
  });

  test('places every stitch, each at a place that is a number', () => {
    for (let i = 0; i < fabric.count; i += 1) {
      expect(layout.placed[i]).toBe(1);
      for (const value of [layout.footX[i], layout.footY[i], layout.headX[i], layout.headY[i]])
        expect(Number.isFinite(value)).toBe(true);
    }
  });

  test('draws every stitch once, and for left-handed makers as well', () => {
    for (const leftHanded of [false, true]) {
      const charts = chartParts(fabric, { terms: 'US', title: 'x', key: false, leftHanded });
      const drawn = charts.flatMap(({ scene }) => drawnStitches(scene));
      expect(drawn.sort((a, b) => a - b)).toEqual(Array.from({ length: fabric.count }, (_, i) => i));
    }
  });

  test('stands each stitch on the head of the one it is worked into', () => {
    const rows = stitchRows(fabric);
    for (let i = 0; i < fabric.count; i += 1) {
      const [target, ...more] = targets(fabric, i);
      if (target === undefined || more.length > 0 || fabric.where[i] !== INTO.top) continue;
      if (rows[fabric.kind[i] ?? 0]?.family === 'slip' || rows[fabric.kind[i] ?? 0]?.lies) continue;
      if (hasFlag(fabric, i, FLAG.turningChain) || isLong(fabric, i)) continue;
      const acrossSeam = fabric.rows[fabric.row[i] ?? 0]?.closing !== 'flat';
      const dx = at(layout.footX, i) - at(layout.anchorX, target);
      const dy = at(layout.footY, i) - at(layout.anchorY, target);
      // A round laid out straight may run over its seam, and what is worked into one chain goes round it.
      if (acrossSeam && (Math.abs(dx) > 5 || Math.hypot(at(layout.footX, i), at(layout.footY, i)) < 1))
        continue;
      expect(Math.hypot(dx, dy)).toBeLessThan(1e-6);
    }
  });
});

test('crossed stitches cross, each pair once', () => {
  const crossing = KINDS.flatMap((kind) => {
    const pairs = overlaps(fabricOf(kind), layoutOf(fabricOf(kind)));
    return pairs.length === 0 ? [] : [[kind.name, pairs.length]];
  });
  // Four rows of eleven pairs.
  expect(crossing).toEqual([['crossed-dc', 44]]);
});

test('stitches moved over each other are found', () => {
  const fabric = fabricOf(KINDS.find(({ name }) => name === 'solid-granny') ?? { name: '', file: '' });
  const layout = layoutOf(fabric);
  expect(overlaps(fabric, layout)).toEqual([]);
  for (let i = 0; i < fabric.count; i += 7) {
    layout.footX[i] = at(layout.footX, i) + 0.5;
    layout.headX[i] = at(layout.headX, i) + 0.5;
  }
  expect(overlaps(fabric, layout).length).toBeGreaterThan(5);
});

test('turned over, every stitch lies as far to the other side', () => {
  for (const kind of KINDS.slice(0, 8)) {
    const fabric = fabricOf(kind);
    const [right] = chartParts(fabric, { terms: 'US', title: 'x', key: false });
    const [left] = chartParts(fabric, { terms: 'US', title: 'x', key: false, leftHanded: true });
    expect(left?.scene.heightMm).toBeCloseTo(right?.scene.heightMm ?? 0, 1);
    expect(left?.scene.title).toMatch(/left-handed/);
    expect(left?.scene.alternative).not.toBe(right?.scene.alternative);
  }
});

test('corners of squares are true', () => {
  const fabric = fabricOf(
    KINDS.find(({ name }) => name === 'solid-granny') ?? KINDS[0] ?? { name: '', file: '' },
  );
  const layout = layoutOf(fabric);
  const last = rowsOfParts(fabric, [0]).at(-1) ?? 0;
  const { first = 0, end = 0 } = fabric.rows[last] ?? {};
  const heads = Array.from({ length: end - first }, (_, k) => first + k)
    .filter((i) => hasFlag(fabric, i, FLAG.counted))
    .map((i) => [at(layout.headX, i), at(layout.headY, i)] as const);
  // The heads of one side lie on one line, to within a degree over its length.
  const top = Math.max(...heads.map(([, y]) => y));
  const side = heads.filter(([, y]) => y > top - 0.5);
  const width = Math.max(...side.map(([x]) => x)) - Math.min(...side.map(([x]) => x));
  const rise = Math.max(...side.map(([, y]) => y)) - Math.min(...side.map(([, y]) => y));
  expect(side.length).toBeGreaterThan(8);
  expect((Math.atan2(rise, width) * 180) / Math.PI).toBeLessThan(1);
});

describe('a chart as SVG', () => {
  const plainRows = (stitches: number, rows: number): Fabric => {
    const text = `title: T
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
parts:
  - name: P
    work: |
      Foundation: Ch ${stitches + 2}.
      Row 1 (RS): Dc in 4th ch from hook (skipped 3 ch count as dc), dc in each ch across, turn.
      Row 2: Ch 3 (counts as dc), sk first dc, dc in each st across, turn.
      Rows 3-${rows}: Rep Row 2.
`;
    const fabric = compilePattern({ file: 't', text }, 't').sizes[0]?.fabric;
    if (fabric === undefined) throw new Error('no size');
    return fabric;
  };

  test('of 10,000 stitches takes less than 60 kB for 2,000 of them, its key aside', () => {
    const fabric = plainRows(98, 100);
    expect(fabric.count).toBeGreaterThan(10_000);
    const [chart] = chartParts(fabric, { terms: 'US', title: 'T', key: false });
    const svg = chart === undefined ? '' : paintSvg(chart.scene, { idPrefix: 'c', colours: 'plain' });
    const bytes = Buffer.byteLength(svg);
    expect((bytes * 2000) / fabric.count).toBeLessThan(60_000);
  });
});
