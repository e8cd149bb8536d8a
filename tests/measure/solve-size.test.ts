import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Measures } from '../../src/measure/measures.ts';
import { solveRepeats, solveSize } from '../../src/measure/solve-size.ts';

describe('the number of repeats for a wanted width', () => {
  test('is the nearest whole one: shells of 37.5 mm and an edge stitch of 6.25 make 15 cm with 4', () => {
    // 3 repeats 118.75, 4 repeats 156.25, 5 repeats 193.75 mm.
    expect(solveRepeats(150, (n) => 6.25 + 37.5 * n)).toBe(4);
  });

  test('is never less than one, however small the size', () => {
    expect(solveRepeats(2, (n) => 40 * n)).toBe(1);
  });

  test('keeps to numbers that can be worked: every other row is the last of the pattern', () => {
    // Odd rows from 3 at 10 mm: 71 lies between 70 and 90, so 7.
    expect(solveRepeats(71, (n) => (n % 2 === 1 && n >= 3 ? n * 10 : null))).toBe(7);
  });

  test('is none when nothing can be worked', () => {
    expect(solveRepeats(100, () => null)).toBeNull();
  });

  test('is as near as any other number, also where widths do not grow evenly', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 2, max: 60 }),
        fc.integer({ min: 0, max: 50 }),
        (target, each, edge) => {
          // Up to half a repeat too wide or too narrow, in turn.
          const widthOf = (n: number): number => edge + each * n + ((n % 3) - 1) * (each / 4);
          const found = solveRepeats(target, widthOf) ?? 0;
          const off = (n: number): number => Math.abs(widthOf(n) - target);
          const best = Math.min(...Array.from({ length: 2000 }, (_, i) => off(i + 1)));
          expect(off(found)).toBeCloseTo(best, 8);
        },
      ),
    );
  });
});

describe('a wanted size', () => {
  // 6 stitches a repeat and 1, at 16 and 9 over 10 cm; rows odd from 3.
  const measureAt = (repeats: number | null, rows: number | null): Measures | null => {
    if (repeats === null || rows === null || rows < 3 || rows % 2 === 0) return null;
    return {
      widthMm: ((6 * repeats + 1) * 100) / 16,
      heightMm: (rows * 100) / 9,
      aroundMm: null,
      yarn: [],
      stitches: 0,
    };
  };

  test('gives repeats and rows', () => {
    // 37 stitches 231 mm against 230; 21 rows 233 mm against 230.
    expect(solveSize({ widthMm: 230, heightMm: 230, repeats: null, rows: null }, measureAt)).toEqual({
      repeats: 6,
      rows: 21,
    });
  });

  test('leaves alone what the pattern gives', () => {
    expect(solveSize({ widthMm: 230, heightMm: 230, repeats: 8, rows: null }, measureAt)).toEqual({
      repeats: 8,
      rows: 21,
    });
    expect(solveSize({ widthMm: null, heightMm: null, repeats: 2, rows: 9 }, measureAt)).toEqual({
      repeats: 2,
      rows: 9,
    });
  });
});
