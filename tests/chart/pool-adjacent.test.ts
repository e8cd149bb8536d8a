import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepApart } from '../../src/chart/pool-adjacent.ts';

const place = (wish: number[], gap: number, weight = wish.map(() => 1)): number[] => [
  ...keepApart({
    wish: Float64Array.from(wish),
    weight: Float64Array.from(weight),
    gap: Float64Array.from(wish, () => gap),
  }),
];

const misses = (wish: readonly number[], at: readonly number[]): number =>
  wish.reduce((sum, w, i) => sum + (w - (at[i] ?? 0)) ** 2, 0);

describe('stitches kept apart', () => {
  test('those with room stay where they wish to be', () => {
    expect(place([0, 1, 5], 1)).toEqual([0, 1, 5]);
  });

  test('a shell of five opens evenly about its one place', () => {
    expect(place([3, 3, 3, 3, 3], 0.8)).toEqual([1.4, 2.2, 3, 3.8, 4.6].map((x) => expect.closeTo(x)));
  });

  test('a held stitch makes the others give way', () => {
    expect(place([0, 0], 1, [1000, 1])).toEqual([expect.closeTo(0, 2), expect.closeTo(1, 2)]);
  });

  test('no stitch is placed beyond the ends it is given', () => {
    const wish = Float64Array.from([-3, 0, 9]);
    const weight = Float64Array.from([1, 1, 1]);
    const gap = Float64Array.from([0, 1, 1]);
    expect([...keepApart({ wish, weight, gap, least: -1, most: 4 })]).toEqual([-1, 0, 4]);
  });

  test('order and distances are kept, and no small move of any one stitch would come nearer to the wishes', () => {
    const wishes = fc.array(fc.double({ min: -20, max: 20, noNaN: true }), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(wishes, fc.double({ min: 0.1, max: 2, noNaN: true }), fc.nat(), (wish, gap, pick) => {
        const at = place(wish, gap);
        for (let i = 1; i < at.length; i += 1)
          expect((at[i] ?? 0) - (at[i - 1] ?? 0)).toBeGreaterThanOrEqual(gap - 1e-9);
        const best = misses(wish, at);
        const from = pick % at.length;
        for (let end = from + 1; end <= at.length; end += 1) {
          for (const step of [-1e-3, 1e-3]) {
            const other = at.map((x, i) => (i >= from && i < end ? x + step : x));
            const kept = other.every((x, i) => i === 0 || x - (other[i - 1] ?? 0) >= gap - 1e-12);
            if (kept) expect(misses(wish, other)).toBeGreaterThanOrEqual(best - 1e-9);
          }
        }
      }),
    );
  });
});
