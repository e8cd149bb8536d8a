/** What is put in once has to go in again, the same and at the same place. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { insertsAgain } from '../../src/proof/inserted.ts';

const list = fc.array(fc.integer({ min: 0, max: 3 }), { maxLength: 8 });

describe('a block put in again', () => {
  test('is known for what it is, wherever it goes in', () => {
    fc.assert(
      fc.property(list, list, list, (start, block, end) => {
        const [a, b, c] = [0, 1, 2].map((n) => [...start, ...Array(n).fill(block).flat(), ...end]);
        expect(insertsAgain(a ?? [], b ?? [], c ?? [])).toBe(true);
      }),
    );
  });

  test('is found just where there is one, by trying every place for it', () => {
    const short = fc.array(fc.integer({ min: 0, max: 1 }), { maxLength: 5 });
    // Three lists that have nothing to do with each other, and three that nearly fit.
    const any = fc.tuple(short, short, short);
    const near = fc
      .tuple(short, short, short, short)
      .map(([start, block, other, end]): [number[], number[], number[]] => [
        [...start, ...end],
        [...start, ...block, ...end],
        [...start, ...block, ...other, ...end],
      ]);
    fc.assert(
      fc.property(fc.oneof(any, near), ([a, b, c]) => {
        expect(insertsAgain(a, b, c)).toBe(somePlaceFits(a, b, c));
      }),
      { numRuns: 2000 },
    );
  });

  test.each([
    ['another block the second time', [1, 2], [1, 5, 2], [1, 5, 6, 2]],
    ['the block at another place', [1, 2, 3], [1, 5, 2, 3], [1, 5, 2, 5, 3]],
    ['something else changed beside', [1, 2, 3], [1, 5, 2, 3], [1, 5, 5, 2, 4]],
    ['fewer the second time', [1], [1, 2, 2], [1, 2, 2, 2]],
    ['shorter and shorter', [1, 1, 1], [1, 1], [1]],
  ])('is none: %s', (_, a, b, c) => {
    expect(insertsAgain(a, b, c)).toBe(false);
  });
});

function somePlaceFits(a: readonly number[], b: readonly number[], c: readonly number[]): boolean {
  return a.concat([0]).some((_, at) => {
    const [start, end] = [a.slice(0, at), a.slice(at)];
    const block = b.slice(at, at + b.length - a.length);
    const same = (x: readonly number[], y: readonly number[]) => x.join() === y.join();
    return (
      b.length >= a.length &&
      same(b, [...start, ...block, ...end]) &&
      same(c, [...start, ...block, ...block, ...end])
    );
  });
}
