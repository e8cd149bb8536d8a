/** Balls to buy: by length, of another put-up than the one asked for. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { against, inBalls, thickness } from '../../src/measure/put-up.ts';

describe('balls of another yarn', () => {
  test('go by length: 8 balls of 125 m are 1000 m, and 6 of 183 m', () => {
    expect(inBalls(1000, { lengthM: 182.88, massG: 99.2 })).toMatchObject({ balls: 6 });
    // By weight 400 g would seem to be 5 of them.
    expect(against(1000, { lengthM: 125, massG: 50 }, { lengthM: 182.88, massG: 99.2 }).byWeight).toBe(5);
  });

  test('are one where it is just enough, and never none', () => {
    expect(inBalls(200, { lengthM: 200, massG: null })).toEqual({ balls: 1, massG: null });
    expect(inBalls(200.5, { lengthM: 200, massG: null }).balls).toBe(2);
    expect(inBalls(0, { lengthM: 200, massG: null }).balls).toBe(1);
  });

  test('hold the length, and one fewer would not', () => {
    const metres = fc.double({ min: 1, max: 20_000, noNaN: true });
    fc.assert(
      fc.property(metres, metres, (lengthM, each) => {
        const { balls } = inBalls(lengthM, { lengthM: each, massG: null });
        expect(balls * each).toBeGreaterThanOrEqual(lengthM * (1 - 1e-6));
        expect((balls - 1) * each).toBeLessThan(lengthM);
      }),
    );
  });

  test('thinner and thicker are told from what a gram measures', () => {
    const worsted = { lengthM: 180, massG: 100 };
    expect(thickness(against(500, worsted, { lengthM: 250, massG: 100 }))).toBe('thinner');
    expect(thickness(against(500, worsted, { lengthM: 60, massG: 50 }))).toBe('thicker');
    expect(thickness(against(500, worsted, { lengthM: 100, massG: 50 }))).toBeNull();
    expect(thickness(against(500, worsted, { lengthM: 250, massG: null }))).toBeNull();
  });
});
