import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { RowJson } from '../../src/commands/count-json.ts';
import { countJson } from '../../src/commands/count-json.ts';
import { compilePattern } from '../../src/compile.ts';

// Every number here was worked out by hand from the text of the patterns; the arithmetic stands beside it.

interface Expected {
  readonly part: string;
  readonly label: string;
  readonly stitches: number;
  readonly byStitch: Readonly<Record<string, number>>;
  readonly spaces?: number;
  readonly groups?: Readonly<Record<string, number>>;
  readonly stated?: string;
}

function countsOf(name: string): ReturnType<typeof countJson> {
  const file = new URL(`../../patterns/${name}/pattern.yaml`, import.meta.url);
  const text = readFileSync(file, 'utf8');
  const compiled = compilePattern({ file: `patterns/${name}/pattern.yaml`, text }, name);
  expect(compiled.diagnostics.map(({ message }) => message)).toEqual([]);
  const counts = countJson(compiled, text, compiled.sizes);
  const lines = text.split('\n');
  for (const { rows } of counts.sizes) {
    // The line a row was written on is one that gives its number, or the range it lies in.
    for (const { label, line } of rows)
      expect(lines[line - 1]).toMatch(new RegExp(`^ +${label.split(' ')[0]}s? `));
  }
  return counts;
}

function expectRows(rows: readonly RowJson[] | undefined, expected: readonly Expected[]): void {
  const plain = rows?.map(({ line: _line, takes: _takes, skips: _skips, leaves: _leaves, ...row }) => row);
  expect(plain).toEqual(expected.map((row) => ({ spaces: 0, groups: {}, stated: null, ...row })));
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

describe('Sandbar Square', () => {
  /**
   * A stitch is 100 / 16 = 6.25 mm wide and a row 100 / 9 = 11.1 mm high; the two rounds of edging, half as high as
   * the shell rows, add 4 x 5.56 = 22.2 mm each way. k repeats are 6k + 1 stitches.
   *   small, 170 mm:  25 sts 156.25 + 22.2 = 178.5 (19 sts would be 141); 13 rows 144.4 + 22.2 = 166.7
   *   medium, 210 mm: 31 sts 193.75 + 22.2 = 216.0;                       17 rows 188.9 + 22.2 = 211.1
   *   large, 320 mm:  49 sts 306.25 + 22.2 = 328.5 (43 sts would be 291); 27 rows 300.0 + 22.2 = 322.2
   * Rows are odd in number, as a Row 3 comes last.
   */
  const SIZES = [
    { name: 'small', repeats: 4, rows: 13, rowEnds: 23 },
    { name: 'medium', repeats: 5, rows: 17, rowEnds: 29 },
    { name: 'large', repeats: 8, rows: 27, rowEnds: 47 },
  ];

  test.each(SIZES)('$name: $repeats shells across, $rows rows', ({ name, repeats: k, rows, rowEnds }) => {
    const { title, sizes } = countsOf('sandbar-square');
    expect(title).toBe('Sandbar Square');
    // Odd rows: k shells of 5 dc and an sc on both sides of each.
    const shells = { byStitch: { sc: k + 1, dc: 5 * k }, groups: { shell: k } };
    // Even rows: 3 dc at each end, an sc in every shell, a shell in every sc but the two at the ends.
    const halves = { byStitch: { sc: k, dc: 3 + 5 * (k - 1) + 3 }, groups: { shell: k - 1 } };
    // Along the top 3 + (6k - 1) + 3, along the foundation the same, and the two sides.
    const edging = 2 * (6 * k + 5) + 2 * rowEnds;
    expectRows(sizes.find((size) => size.name === name)?.rows, [
      ...range(1, rows).map((n) => ({
        part: 'Square',
        label: `Row ${n}`,
        stitches: 6 * k + 1,
        ...(n % 2 === 1 ? shells : halves),
      })),
      { part: 'Edging', label: 'Rnd 1', stitches: edging, byStitch: { sc: edging } },
      // 3 sc in each of 4 corner stitches: 2 more a corner.
      { part: 'Edging', label: 'Rnd 2', stitches: edging + 8, byStitch: { sc: edging + 8 } },
    ]);
  });

  test('all four sides of a size come to the same number', () => {
    // Round 2 goes 6k + 5 along each side, from the stitch after a corner to the next corner stitch: 4 of them in all.
    for (const { repeats: k, rowEnds } of SIZES)
      expect(2 * (6 * k + 5) + 2 * rowEnds + 8).toBe(4 * (6 * k + 4));
  });
});

describe('Two Tides Square', () => {
  test.each([
    { name: 'small', repeats: 6, rows: 30, rowEnds: 25 },
    { name: 'large', repeats: 8, rows: 38, rowEnds: 33 },
  ])('$name: $rows rows', ({ name, repeats, rows, rowEnds }) => {
    const { sizes } = countsOf('two-tides-square');
    // A chain of 4 each and 4; row 1 skips one. Every row works or covers all of them: long sc are sc.
    const width = 4 * repeats + 4 - 1;
    const stated = `${width} sts`;
    const border = 2 * (3 + (width - 2) + 3) + 2 * rowEnds;
    expectRows(sizes.find((size) => size.name === name)?.rows, [
      ...range(1, rows).map((n) => ({
        part: 'Square',
        label: `Row ${n}`,
        stitches: width,
        byStitch: { sc: width },
        ...([1, 3, 5].includes(n) ? { stated } : {}),
      })),
      { part: 'Border', label: 'Rnd 1', stitches: border, byStitch: { sc: border }, stated: `${border} sts` },
    ]);
  });
});

describe('Lantern Square', () => {
  test.each([
    { name: 'four rounds', rounds: 4 },
    { name: 'six rounds', rounds: 6 },
    { name: 'eight rounds', rounds: 8 },
  ])('$name', ({ name, rounds }) => {
    const { sizes } = countsOf('lantern-square');
    /**
     * From round 2 each corner holds 2 clusters with a ch-3 between, and each side of round n a cluster in every one
     * of the n - 1 ch-2 spaces of the side below: 4 (2 + n - 1) clusters, the first of them a beginning cluster, and
     * 4 n ch-2 spaces.
     */
    const clusters = (n: number) => ({
      part: 'Square',
      label: `Rnd ${n}`,
      stitches: 4 * (n + 1),
      byStitch: { dc2tog: 1, dc3tog: 4 * (n + 1) - 1 },
      groups: { cl: 4 * (n + 1) },
      spaces: n === 1 ? 8 : 4 * n + 4,
    });
    // In each side n + 1 clusters with one sc each, n ch-2 spaces with two, and a corner of four.
    const border = 4 * (rounds + 1 + 2 * rounds + 4);
    const stated = (n: number) => `${4 * (n + 1)} cl, 4 ch-3 sps, ${4 * n} ch-2 sps`;
    expectRows(sizes.find((size) => size.name === name)?.rows, [
      { ...clusters(1), stated: '8 cl, 8 ch-2 sps' },
      { ...clusters(2), stated: '12 cl, 4 ch-3 sps, 8 ch-2 sps' },
      { ...clusters(3), stated: '16 cl, 4 ch-3 sps, 12 ch-2 sps' },
      ...range(4, rounds).map((n) => (n === rounds ? { ...clusters(n), stated: stated(n) } : clusters(n))),
      {
        part: 'Square',
        label: `Rnd ${rounds + 1}`,
        stitches: border,
        byStitch: { sc: border },
        spaces: 4,
        stated: `${border} sc, 4 ch-2 sps`,
      },
    ]);
  });
});

describe('Quarry Hexagon', () => {
  test.each([
    { name: 'four rounds', rounds: 4 },
    { name: 'six rounds', rounds: 6 },
    { name: 'eight rounds', rounds: 8 },
  ])('$name', ({ name, rounds }) => {
    const { sizes } = countsOf('quarry-hexagon');
    // 6 sides of 2 dc; each round puts 1 dc on either side of every corner space: 12 more.
    const round = (n: number) => ({
      part: 'Hexagon',
      label: `Rnd ${n}`,
      stitches: 12 * n,
      byStitch: { dc: 12 * n },
      spaces: 6,
    });
    const border = 12 * rounds + 12;
    expectRows(sizes.find((size) => size.name === name)?.rows, [
      ...range(1, rounds).map((n) => ({
        ...round(n),
        ...(n <= 3 || n === rounds ? { stated: `${12 * n} dc, 6 ch-2 sps` } : {}),
      })),
      {
        part: 'Hexagon',
        label: `Rnd ${rounds + 1}`,
        stitches: border,
        byStitch: { sc: border },
        spaces: 6,
        stated: `${border} sc, 6 ch-2 sps`,
      },
    ]);
  });
});

describe('Pebble Basket', () => {
  test.each([
    { name: 'small', base: 6, wall: 7, last: 15 },
    { name: 'large', base: 8, wall: 9, last: 19 },
  ])('$name', ({ name, base, wall, last }) => {
    const { sizes } = countsOf('pebble-basket');
    // UK double crochet is sc in the table. 6 more each round of the base, each from one "inc" of six.
    const wide = 6 * base;
    const even = { part: 'Basket', stitches: wide, byStitch: { sc: wide } };
    expectRows(sizes.find((size) => size.name === name)?.rows, [
      { part: 'Basket', label: 'Rnd 1', stitches: 6, byStitch: { sc: 6 }, stated: '6 dc' },
      ...range(2, base).map((n) => ({
        part: 'Basket',
        label: `Rnd ${n}`,
        stitches: 6 * n,
        byStitch: { sc: 6 * n },
        groups: { inc: 6 },
        stated: `${6 * n} dc`,
      })),
      // One round in the back loop, then the wall; of a range the count stands at its last.
      { ...even, label: `Rnd ${base + 1}`, stated: `${wide} dc` },
      ...range(base + 2, base + 1 + wall).map((n) => ({
        ...even,
        label: `Rnd ${n}`,
        ...(n === base + 1 + wall ? { stated: `${wide} dc` } : {}),
      })),
      {
        part: 'Basket',
        label: `Rnd ${last}`,
        stitches: wide,
        byStitch: { 'sl-st': wide },
        stated: `${wide} ss`,
      },
    ]);
    expect(base + 2 + wall).toBe(last);
  });
});
