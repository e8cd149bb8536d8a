/**
 * Shapes that every crocheter knows the numbers of. Marked as in the trade notes: [cp] common practice, [computed] worked
 * out from the shape of a stitch; none of them was taken from what this program makes.
 */

import { describe, expect, test } from 'vitest';
import { codesOf, fabricOf, rowOf } from '../fabric/work-text.ts';

function stitchesOf(work: string, rounds: number): readonly number[] {
  const fabric = fabricOf(work);
  return Array.from({ length: rounds }, (_, i) => rowOf(fabric, `Rnd ${i + 1}`).stitches);
}

/** 6, 12, 18 ... */
function multiples(of: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => of * (i + 1));
}

describe('a flat circle adds as many stitches each round as it began with', () => {
  const spiral = (start: number, rounds: number): string =>
    [
      `Rnd 1: ${start} sc in magic ring.`,
      'Rnd 2: 2 sc in each st around.',
      'Rnd 3: [Sc in next st, 2 sc in next st] around.',
      ...Array.from(
        { length: rounds - 3 },
        (_, i) => `Rnd ${i + 4}: [Sc in next ${i + 2} sts, 2 sc in next st] around.`,
      ),
    ].join('\n');

  test('6 in single crochet: 6, 12, 18 ... [cp]', () => {
    expect(stitchesOf(spiral(6, 10), 10)).toEqual(multiples(6, 10));
  });

  test('8 does as well for a looser hand [cp]', () => {
    expect(stitchesOf(spiral(8, 6), 6)).toEqual(multiples(8, 6));
  });

  test('12 in double crochet: 12, 24, 36 ..., the turning chain counted [cp]', () => {
    const work = `Ch 4, join with sl st in first ch to form ring.
Rnd 1: Ch 3 (counts as dc here and throughout), 11 dc in ring, join with sl st in top of beg ch-3.
Rnd 2: Ch 3, dc in same st, 2 dc in each st around, join with sl st in top of beg ch-3.
Rnd 3: Ch 3, 2 dc in next st, [dc in next st, 2 dc in next st] around, join with sl st in top of beg ch-3.
Rnd 4: Ch 3, dc in next st, 2 dc in next st, [dc in next 2 sts, 2 dc in next st] around, join with sl st in top of beg ch-3.
Rnd 5: Ch 3, dc in next 2 sts, 2 dc in next st, *dc in next 3 sts, 2 dc in next st; rep from * around, join with sl st in top of beg ch-3.`;
    expect(stitchesOf(work, 5)).toEqual(multiples(12, 5));
  });

  test('8 or 10 in half double crochet [cp]', () => {
    const work = (start: number) => `Rnd 1: ${start} hdc in magic ring.
Rnd 2: 2 hdc in each st around.
Rnd 3: [Hdc in next st, 2 hdc in next st] around.`;
    expect(stitchesOf(work(8), 3)).toEqual([8, 16, 24]);
    expect(stitchesOf(work(10), 3)).toEqual([10, 20, 30]);
  });
});

describe('a flat square', () => {
  test('of single crochet adds 8 a round with 3 in each corner [cp]', () => {
    const work = `Rnd 1: 8 sc in magic ring, join with sl st in first sc.
Rnd 2: Ch 1, [sc in next st, 3 sc in next st] 4 times, join with sl st in first sc.
Rnd 3: Ch 1, [sc in next 2 sts, 3 sc in next st, sc in next st] 4 times, join with sl st in first sc.
Rnd 4: Ch 1, [sc in next 3 sts, 3 sc in next st, sc in next 2 sts] 4 times, join with sl st in first sc.`;
    expect(stitchesOf(work, 4)).toEqual(multiples(8, 4));
  });

  test('of double crochet adds 16 a round with (2 dc, ch 2, 2 dc) in each corner [cp]', () => {
    const work = `Ch 4, join with sl st in first ch to form ring.
Rnd 1: Ch 3 (counts as dc here and throughout), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st in top of beg ch-3.
Rnd 2: Ch 3, dc in next 2 dc, *(2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 3 dc; rep from * 2 more times, (2 dc, ch 2, 2 dc) in next ch-2 sp, join with sl st in top of beg ch-3.
Rnd 3: Ch 3, *dc in each dc to next corner, (2 dc, ch 2, 2 dc) in next corner ch-2 sp; rep from * 3 more times, dc in each rem dc around, join with sl st in top of beg ch-3.
Rnd 4: Rep Rnd 3.`;
    expect(stitchesOf(work, 4)).toEqual([12, 28, 44, 60]);
    expect(rowOf(fabricOf(work), 'Rnd 4').spaces).toBe(4);
    expect(fabricOf(work).parts[0]?.corners).toBe(4);
  });
});

describe('a flat hexagon', () => {
  test('of single crochet adds 6 a round, one at each corner [cp]', () => {
    const work = [
      'Rnd 1: 6 sc in magic ring.',
      'Rnd 2: [2 sc in next st] 6 times.',
      ...[1, 2, 3].map((n) => `Rnd ${n + 2}: [2 sc in next st, sc in next ${n} sts] 6 times.`),
    ].join('\n');
    expect(stitchesOf(work, 5)).toEqual(multiples(6, 5));
  });

  test('of double crochet adds 12 a round, two at each corner [cp]', () => {
    const work = `Rnd 1: Ch 3 (counts as dc here and throughout), dc in magic ring, ch 2, [2 dc in ring, ch 2] 5 times, join with sl st in top of beg ch-3.
Rnd 2: Ch 3, dc in next dc, [(dc, ch 2, dc) in next ch-2 sp, dc in next 2 dc] 5 times, (dc, ch 2, dc) in next ch-2 sp, join with sl st in top of beg ch-3.
Rnd 3: Ch 3, dc in next 2 dc, *(dc, ch 2, dc) in next ch-2 sp, dc in next 4 dc; rep from * 4 more times, (dc, ch 2, dc) in next ch-2 sp, dc in next dc, join with sl st in top of beg ch-3.`;
    expect(stitchesOf(work, 3)).toEqual([12, 24, 36]);
    expect(fabricOf(work).parts[0]?.corners).toBe(6);
  });
});

describe('a ball', () => {
  test('closes as it opened: the decreases mirror the increases [cp]', () => {
    const work = `Rnd 1: 6 sc in magic ring. (6)
Rnd 2: 2 sc in each st around. (12)
Rnd 3: [Sc in next st, 2 sc in next st] 6 times. (18)
Rnd 4: [Sc in next 2 sts, 2 sc in next st] 6 times. (24)
Rnds 5-8: Sc in each st around. (24)
Rnd 9: [Sc in next 2 sts, sc2tog] 6 times. (18)
Rnd 10: [Sc in next st, sc2tog] 6 times. (12)
Rnd 11: Sc2tog around. (6)`;
    const counts = stitchesOf(work, 11);
    expect(counts).toEqual([6, 12, 18, 24, 24, 24, 24, 24, 18, 12, 6]);
    expect([...counts].reverse()).toEqual(counts);
  });
});

describe('how many chains to begin with for 24 stitches [computed]', () => {
  // N + k - 1 chains where the chains skipped do not count and the first stitch goes into the kth; N + k - 2 where they do.
  const N = 24;
  test.each([
    { row: 'Sc', k: 2, counts: false, chain: 25 },
    { row: 'Hdc', k: 3, counts: true, chain: 25 },
    { row: 'Hdc', k: 3, counts: false, chain: 26 },
    { row: 'Dc', k: 4, counts: true, chain: 26 },
    { row: 'Dc', k: 3, counts: false, chain: 26 },
    { row: 'Tr', k: 5, counts: true, chain: 27 },
    { row: 'Dtr', k: 6, counts: true, chain: 28 },
  ])('$row in the $k. chain, skipped chains counted: $counts', ({ row, k, counts, chain }) => {
    expect(chain).toBe(counts ? N + k - 2 : N + k - 1);
    const skipped = counts ? `counts as ${row.toLowerCase()}` : 'do not count as a st';
    const nth = k === 2 ? '2nd' : k === 3 ? '3rd' : `${k}th`;
    const aside = row === 'Sc' ? '' : ` (skipped ${k - 1} ch ${skipped.replace('counts', 'count')})`;
    const work = (chains: number) =>
      `Ch ${chains}.\nRow 1: ${row} in ${nth} ch from hook${aside} and in each ch across. (${N} sts)`;
    expect(rowOf(fabricOf(work(chain)), 'Row 1').stitches).toBe(N);
    expect(codesOf(work(chain + 1))).toEqual(['count/mismatch']);
    expect(codesOf(work(chain - 1))).toEqual(['count/mismatch']);
  });
});

describe('both sides of a foundation chain', () => {
  test('in single crochet with 3 at each end make twice as many stitches as there are chains [cp]', () => {
    for (const chains of [7, 12, 31]) {
      const middle = chains - 3;
      const work = `Ch ${chains}.
Rnd 1: Sc in 2nd ch from hook, sc in next ${middle} ch, 3 sc in last ch, working along opposite side of foundation ch, sc in next ${middle} ch, 2 sc in next ch. (${2 * chains} sc)`;
      const { stitches } = rowOf(fabricOf(work), 'Rnd 1');
      expect(stitches).toBe(2 * chains);
    }
  });
});
