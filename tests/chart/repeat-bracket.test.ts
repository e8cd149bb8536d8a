/** Where the bracket under one repeat begins and ends, against the stitches that the repeat is worked into. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { pieces } from '../../src/chart/chart-parts.ts';
import { stitchRows } from '../../src/chart/elements.ts';
import { emptyLayout } from '../../src/chart/layout.ts';
import { U_MM } from '../../src/chart/metrics.ts';
import { placePiece } from '../../src/chart/place-part.ts';
import { repeatBracket } from '../../src/chart/repeat-bracket.ts';
import { compilePattern } from '../../src/compile.ts';
import { targets } from '../../src/fabric/fabric.ts';
import { partRepeats } from '../../src/part-repeats.ts';
import { at } from './work-text.ts';

/** What of the row or foundation below the bracket covers, from right to left, and which of it is worked into. */
function covered(kind: string): { places: number[]; worked: number[] } {
  const text = readFileSync(join(import.meta.dirname, '../patterns', kind, 'pattern.yaml'), 'utf8');
  const compiled = compilePattern({ file: kind, text }, kind);
  const size = compiled.sizes[0];
  if (size === undefined) throw new Error('no size');
  const { fabric, accounts } = size;
  const [repeat] = partRepeats(fabric, accounts, compiled.multiples, size.size.name);
  if (repeat === undefined) throw new Error('no repeat');
  const layout = emptyLayout(fabric.count);
  for (const parts of pieces(fabric)) placePiece(fabric, stitchRows(fabric), layout, parts);
  const [line] = repeatBracket(fabric, layout, repeat, 0);
  if (line?.kind !== 'path') throw new Error('no bracket');
  const xs = line.parts.flatMap((part) => (typeof part[1] === 'number' ? [part[1] / U_MM] : []));
  const { first, end } = fabric.rows[repeat.row] ?? { first: 0, end: 0 };
  const inside = (i: number): boolean =>
    at(layout.anchorX, i) > Math.min(...xs) && at(layout.anchorX, i) < Math.max(...xs);
  const places = Array.from({ length: end - first }, (_, k) => first + k).filter(inside);
  const row = fabric.row[repeat.worked] ?? 0;
  const into = new Set(
    Array.from({ length: fabric.count }, (_, i) => i)
      .filter((i) => fabric.row[i] === row)
      .flatMap((i) => [...targets(fabric, i)]),
  );
  return { places, worked: places.filter((i) => into.has(i)) };
}

test('V-stitches: 2 chains are skipped and the third is worked into', () => {
  // 28 chains; 4 skipped and the first V behind them come before.
  expect(covered('v-stitch')).toEqual({ places: [20, 21, 22], worked: [20] });
});

test('shells over a foundation: the shell in the middle, single crochet at the end', () => {
  const { places, worked } = covered('shells-spikes');
  expect(places).toHaveLength(6);
  expect(worked.map((i) => places.indexOf(i))).toEqual([0, 3]);
});

test('crossed stitches over a plain row: 2 stitches, both worked into', () => {
  const { places, worked } = covered('crossed-dc');
  expect(places).toHaveLength(2);
  expect(worked).toEqual(places);
});
