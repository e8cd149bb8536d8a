/** By how many stitches repeated rounds grow, and that they go on so for rounds that nobody wrote. */

import { describe, expect, test } from 'vitest';
import { workSize } from '../../src/fabric/work.ts';
import { roundGrowths } from '../../src/proof/round-growth.ts';
import { patternOf } from './multiples.ts';

const START =
  'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st in top of beg ch-3. (12 dc, 4 ch-2 sps)';
const GROWS =
  'Rnd 2: Ch 3 (counts as dc), dc in each dc to corner, (2 dc, ch 2, 2 dc) in corner sp, *dc in each dc to next corner, (2 dc, ch 2, 2 dc) in corner sp; rep from * 2 more times, dc in each rem dc around, join with sl st in top of beg ch-3. (28 dc, 4 ch-2 sps)';

function growthsOf(work: string) {
  const pattern = patternOf({ work });
  const plan = { repeats: 1, rows: null };
  return roundGrowths(pattern, { index: 0, plan, readings: workSize(pattern, 0, plan).readings });
}

describe('rounds that are repeated', () => {
  test('of a square add the same on every side, four times over', () => {
    const [growth] = growthsOf(`${START}\n${GROWS}\nRnds 3-4: Rep Rnd 2.`);
    expect(growth).toMatchObject({ from: 'Rnd 3', cycle: 1, adds: 16 });
  });

  test('go on so for as many as anyone works', () => {
    const pattern = patternOf({ work: `${START}\n${GROWS}\nRnds 3-24: Rep Rnd 2.` });
    const { fabric, whole } = workSize(pattern, 0, { repeats: 1, rows: null });
    expect(whole).toBe(true);
    expect(fabric.rows.map(({ stitches }) => stitches)).toEqual(
      Array.from({ length: 24 }, (_, i) => 12 + 16 * i),
    );
  });

  test('that stay as they are add nothing', () => {
    const work = 'Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: Sc in each st around.\nRnds 3-5: Rep Rnd 2.';
    expect(growthsOf(work)).toMatchObject([{ adds: 0 }]);
  });

  test('in turn add as much as their cycle, whatever each adds', () => {
    const work = `${START}\n${GROWS}\nRnd 3: Ch 3 (counts as dc), dc in each dc to corner, (dc, ch 2, dc) in corner sp, *dc in each dc to next corner, (dc, ch 2, dc) in corner sp; rep from * 2 more times, dc in each rem dc around, join with sl st in top of beg ch-3.\nRnds 4-5: Rep Rnds 2 and 3.`;
    expect(growthsOf(work)).toMatchObject([{ cycle: 2, adds: 24 }]);
  });

  test('that double are no steady growth, and nothing is said of them', () => {
    const work = 'Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around.\nRnds 3-4: Rep Rnd 2.';
    expect(growthsOf(work)).toEqual([]);
  });
});
