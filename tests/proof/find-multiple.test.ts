/** What counts as a proof, on parts made up of bare numbers: a trial that comes out is not one yet. */

import { describe, expect, test } from 'vitest';
import { diagnose } from '../../src/diagnostics/catalogue.ts';
import { findMultiple, type TrialAt } from '../../src/proof/find-multiple.ts';

const FAULT = diagnose('row/nothing-below', { file: 'test', span: { start: 0, end: 1 } }, { row: 'Row 1' });

/** One row; null where it does not come out. */
function part(rowOver: (chains: number) => readonly number[] | null): TrialAt {
  return (chains) => {
    const stitches = rowOver(chains);
    const row = { label: 'Row 1', stitches: stitches ?? [], corners: [], counted: stitches?.length ?? 0 };
    return stitches === null
      ? { chains, fault: FAULT, rows: [], flat: true, sure: true, effort: 0 }
      : { chains, fault: null, rows: [row], flat: true, sure: true, effort: 0 };
  };
}

const repeated = (block: readonly number[], n: number): number[] =>
  Array<readonly number[]>(n).fill(block).flat();

describe('a multiple', () => {
  test('is proved where each repeat puts the same in', () => {
    const at = part((n) => (n % 3 === 1 && n > 3 ? [9, ...repeated([1, 2, 3], (n - 1) / 3), 8] : null));
    expect(findMultiple(at, 13, 60)).toEqual({
      of: 3,
      plus: 1,
      from: 4,
      stitches: { of: 3, plus: 2 },
      proved: true,
    });
  });

  test('is only tried where each width makes something of its own', () => {
    const at = part((n) => (n < 60 ? Array.from({ length: n }, (_, i) => i * n) : null));
    expect(findMultiple(at, 20, 60)).toMatchObject({ of: 1, proved: false });
  });

  test('is not named where it fails a few repeats on', () => {
    const at = part((n) => (n < 25 ? Array.from({ length: n }, (_, i) => i * n) : null));
    expect(findMultiple(at, 20, 60)).toBeNull();
  });

  test('is proved for odd and even repeats apart where they alternate', () => {
    const at = part((n) => repeated([1, 2], Math.floor(n / 2)).concat(n % 2 === 0 ? [7] : [1, 5]));
    expect(findMultiple(at, 10, 60)).toMatchObject({ of: 1, from: 1, proved: true });
  });

  test('is not proved by the even repeats alone', () => {
    const at = part((n) => (n % 2 === 0 ? repeated([1], n) : [n, n * n]));
    expect(findMultiple(at, 10, 60)).toMatchObject({ of: 2, proved: true });
  });

  test('may begin to be regular a few repeats on, all narrower ones having come out', () => {
    const at = part((n) => (n % 5 === 0 ? (n < 20 ? [n, n * n] : repeated([1], n)) : null));
    expect(findMultiple(at, 10, 60)).toMatchObject({ of: 5, plus: 0, from: 5, proved: true });
  });

  test('is none where the part goes round', () => {
    const at = part((n) => repeated([1], n));
    expect(findMultiple((n) => ({ ...at(n), flat: false }), 10, 60)).toBeNull();
  });
});
