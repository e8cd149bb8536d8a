/** Where a repeat does not come out, the numbers that are said to come out do. */

import { describe, expect, test } from 'vitest';
import { workPiece } from './work-text.ts';

/** Second rows over a first one of as many sc as are tried. */
const ROWS = [
  'Ch 1, *sc in next 3 sts, 2 sc in next st; rep from * across.',
  'Ch 1, sc in first st, *sk next 2 sts, shell in next st, sk next 2 sts, sc in next st; rep from * across.',
  'Ch 1, sc in next 2 sts, *sk next st, sc in next 4 sts; rep from * across, sc in last st.',
  'Ch 1, *sk next st, sc in next 2 sts; rep from * to last 4 sts, sc in last 4 sts.',
  'Ch 1, sc in first st, *sk next 2 sts, sc in next st; rep from * to last 3 sts, sc in next 3 sts.',
  'Ch 3 (counts as dc), *sk next st, dc in next st, ch 1; rep from * across, dc in last st.',
  'Ch 1, sc in next st, [sk next 2 sts, shell in next st] across, sc in last 2 sts.',
] as const;

function unevenAt(row: string, width: number): { readonly try: string; readonly why: string } | null {
  const work = `Ch ${width + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${row}`;
  const { diagnostics } = workPiece({ work, special: ['shell: 5 dc in same st'] });
  return diagnostics.find(({ code }) => code === 'repeat/uneven') ?? null;
}

describe.each(ROWS)('%s', (row) => {
  const WIDTHS = Array.from({ length: 24 }, (_, i) => i + 12);
  const uneven = WIDTHS.flatMap((width) => {
    const fault = unevenAt(row, width);
    return fault === null ? [] : [{ width, fault }];
  });

  test('fails at some widths, and says which lie next to it that come out', () => {
    expect(uneven.length).toBeGreaterThan(3);
    for (const { width, fault } of uneven) {
      const [, of, plus = '0', list = ''] =
        fault.try.match(/a multiple of (\d+)(?: plus (\d+))? stitches, such as ([\d or]+),/) ?? [];
      const suggested = list.split(' or ').map(Number);
      expect(suggested.length, fault.try).toBeGreaterThan(0);
      for (const n of suggested) {
        expect((n - Number(plus)) % Number(of), `${width}: ${fault.try}`).toBe(0);
        expect(unevenAt(row, n), `${width}: ${fault.try}`).toBeNull();
      }
      // They lie next to it: none that comes out is nearer.
      expect(Math.max(...suggested) - width).toBeLessThanOrEqual(Number(of));
      expect(suggested).not.toContain(width);
    }
  });

  test('tells a division that holds', () => {
    for (const { width, fault } of uneven) {
      const found = fault.why.match(
        /has (\d+)(?: and the ends use (\d+): (\d+) - \2 = (\d+))?, which is (\d+) x (\d+) and (\d+) over/,
      );
      if (found === null) continue;
      const [below = 0, ends = 0, again = 0, room = 0, times = 0, uses = 0, over = 0] = found
        .slice(1)
        .map((n) => Number(n ?? 0));
      expect(below, fault.why).toBe(width);
      if (again > 0) expect([again, again - ends], fault.why).toEqual([below, room]);
      expect(times * uses + over, fault.why).toBe(again > 0 ? room : below);
      expect(over).toBeLessThan(uses);
    }
    expect(uneven.some(({ fault }) => fault.why.includes(' over. '))).toBe(true);
  });
});
