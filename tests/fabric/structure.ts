/** A fabric in, everything about its arrays that must hold of any fabric checked. */

import { expect } from 'vitest';
import type { Fabric } from '../../src/fabric/fabric.ts';
import { FLAG, NONE, targets } from '../../src/fabric/fabric.ts';

export function expectSound(fabric: Fabric): void {
  const { count, rows, parts, groups, spaces, stitches, yarns } = fabric;
  const columns = [
    fabric.kind,
    fabric.countsAs,
    fabric.row,
    fabric.yarn,
    fabric.where,
    fabric.loop,
    fabric.flags,
    fabric.group,
  ];
  expect(columns.map(({ length }) => length)).toEqual(columns.map(() => count));
  expect(fabric.intoStart).toHaveLength(count + 1);
  expect(fabric.intoStart[count]).toBe(fabric.into.length);
  const wrong: string[] = [];
  for (let i = 0; i < count; i += 1) {
    const at = (column: ArrayLike<number>): number => column[i] ?? Number.NaN;
    if (!(at(fabric.kind) < stitches.length)) wrong.push(`${i} has no kind`);
    if (!(at(fabric.countsAs) >= NONE && at(fabric.countsAs) < stitches.length))
      wrong.push(`${i} counts as nothing known`);
    if ((at(fabric.countsAs) !== NONE) !== ((at(fabric.flags) & FLAG.counted) !== 0))
      wrong.push(`${i} is counted and not`);
    if (!(at(fabric.yarn) < Math.max(1, yarns.length))) wrong.push(`${i} is of no yarn`);
    if (!(at(fabric.group) >= NONE && at(fabric.group) < groups.length)) wrong.push(`${i} is of no group`);
    if (!(at(fabric.intoStart) <= (fabric.intoStart[i + 1] ?? 0)))
      wrong.push(`${i} goes into less than nothing`);
    for (const target of targets(fabric, i))
      if (!(target < i)) wrong.push(`${i} goes into ${target}, made later`);
    const row = rows[at(fabric.row)];
    if (row === undefined || i < row.first || i >= row.end) wrong.push(`${i} is not in its row`);
  }
  expect(wrong).toEqual([]);
  // The rows follow one another without gap or overlap, the parts likewise.
  expect(rows.map(({ first }) => first)).toEqual([0, ...rows.map(({ end }) => end)].slice(0, rows.length));
  if (rows.length > 0) expect(rows.at(-1)?.end).toBe(count);
  expect(parts.map(({ firstRow }) => firstRow)).toEqual(
    [0, ...parts.map(({ endRow }) => endRow)].slice(0, parts.length),
  );
  rows.forEach((row, index) => {
    const { byStitch, bySpace } = row;
    expect(sum(Object.values(byStitch)), row.label).toBe(row.stitches);
    expect(sum(Object.values(bySpace)), row.label).toBe(row.spaces);
    if (row.onto !== null) expect(row.onto).toBeLessThan(index);
    const part = parts[row.part];
    expect(part !== undefined && index >= part.firstRow && index < part.endRow).toBe(true);
  });
  // What is counted anywhere is counted in one row and no other.
  expect(sum(rows.map((row) => row.stitches))).toBe(fabric.countsAs.filter((as) => as !== NONE).length);
  expect(sum(rows.map((row) => row.spaces))).toBe(spaces.length);
  for (const { row, first, end } of spaces) {
    expect(end).toBeGreaterThan(first);
    const own = rows[row];
    expect(own !== undefined && first >= own.first && end <= own.end).toBe(true);
  }
  for (const { first, end } of groups) expect(end).toBeGreaterThanOrEqual(first);
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, n) => total + n, 0);
}
