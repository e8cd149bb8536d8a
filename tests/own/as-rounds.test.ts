/** Pieces that grow round by round, made larger and smaller: against counts worked by hand. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { compileOwnSize, remakeableFrom } from '../../src/compile-own.ts';
import { cannotBe } from '../../src/own/cannot-be.ts';
import { nearOwn } from '../../src/own/own-pattern.ts';
import { NOTHING_ASKED } from '../../src/pattern/own-size.ts';

const demo = (name: string) =>
  compilePattern(
    {
      file: name,
      text: readFileSync(join(import.meta.dirname, '../../patterns', name, 'pattern.yaml'), 'utf8'),
    },
    name,
  );
const lantern = demo('lantern-square');
const hexagon = demo('quarry-hexagon');

function lastRounds(compiled: typeof lantern, rows: number): number[] {
  const [size] = compileOwnSize(compiled, { ...NOTHING_ASKED, rows }).sizes;
  return (size?.fabric.rows ?? []).filter(({ number }) => number !== null).map(({ stitches }) => stitches);
}

describe('a square of clusters', () => {
  // Each side gains a cluster a round; the border puts 2 sc in each ch-2 space, 1 in each cluster and 4 in each corner.
  const clusters = (round: number): number => (round === 1 ? 8 : 4 * (round + 1));
  const border = (inner: number): number => {
    const perSide = clusters(inner) / 4;
    return 4 * (perSide + 2 * (perSide - 1) + 4);
  };

  test.each([5, 7, 9, 14])('of %d rounds in all has the counts that its rule gives', (rows) => {
    const inner = rows - 1;
    expect(lastRounds(lantern, rows)).toEqual([
      ...Array.from({ length: inner }, (_, i) => clusters(i + 1)),
      border(inner),
    ]);
  });

  test('of its own five rounds is what its file says: 68 sc', () => {
    expect(lastRounds(lantern, 5).at(-1)).toBe(68);
  });

  test('may leave out all rounds that only repeat', () => {
    expect(lastRounds(lantern, 4)).toEqual([8, 12, 16, border(3)]);
  });

  test('with fewer than that is refused with the fewest there can be', () => {
    const remakeable = remakeableFrom(lantern, 0);
    if (remakeable === null) throw new Error('no pattern');
    expect(cannotBe({ ...NOTHING_ASKED, rows: 3 }, remakeable)).toBe(
      'Lantern Square takes 4 rounds at least.',
    );
    expect(cannotBe({ ...NOTHING_ASKED, rows: 4 }, remakeable)).toBeNull();
  });
});

test('a hexagon has 12 more stitches a round, and the border one for each and one more on either side of a corner', () => {
  const rounds = lastRounds(hexagon, 11);
  expect(rounds.slice(0, -1)).toEqual(Array.from({ length: 10 }, (_, i) => 12 * (i + 1)));
  expect(rounds.at(-1)).toBe(120 + 12);
});

test.each([60, 143, 200, 410])(
  'asked to be %d mm across, no other number of rounds comes nearer',
  (widthMm) => {
    for (const compiled of [lantern, hexagon]) {
      const remakeable = remakeableFrom(compiled, 0);
      if (remakeable === null) throw new Error('no pattern');
      const [size] = compileOwnSize(compiled, { ...NOTHING_ASKED, widthMm }).sizes;
      const got = Math.abs((size?.measures.widthMm ?? Number.NaN) - widthMm);
      const others = nearOwn(remakeable, { ...NOTHING_ASKED, widthMm }).rounds ?? [];
      expect(others.length).toBeGreaterThan(2);
      for (const { offMm } of others) expect(Math.abs(offMm)).toBeGreaterThanOrEqual(got - 1e-9);
    }
  },
);

test('the words number the rounds anew and name the round that is repeated', () => {
  const [size] = compileOwnSize(hexagon, { ...NOTHING_ASKED, rows: 9 }).sizes;
  const labels = size?.words.us.parts[0]?.lines.flatMap(({ label }) => label ?? []);
  expect(labels).toEqual(['Rnd 1 (RS)', 'Rnd 2', 'Rnd 3', 'Rnds 4–8', 'Rnd 9']);
});
