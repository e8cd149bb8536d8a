/** Chains that are said to stand for a space and no stitch, as moss stitch has them, and a V-stitch they begin. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

/** Worked by hand: 10 dc, the first space under the hook, and nine between. */
const moss = (count: number, skipped = ' (the 3 missed ch count as a 1-ch sp)', first = 4) =>
  workedText(
    `Moss cloth
UK terms

Notes
The 2 ch at the beginning of a row counts as a 1-ch sp.

Make 22 ch.
Row 1 – 1 dc in ${first}th ch from hook${skipped}, *1 ch, miss next ch, 1 dc in next ch; rep from * to end. (10 dc)
Row 2 – Turn, 2 ch, *1 dc in next 1-ch sp, 1 ch, miss next dc; rep from * to last sp, 1 dc in last sp. (${count} dc)
Rows 3-8 – Rep Row 2. (${count} dc)
`,
  ).codes;

test('the missed chains are the last space of the next row', () => {
  expect(moss(10)).toEqual([]);
  expect(moss(9)).toEqual(['count/mismatch', 'count/mismatch']);
});

test('chains that are not said to be one are none', () => {
  expect(moss(10, '')).not.toEqual([]);
});

/** Worked by hand: 4 stitches of the join and chain, then 7 V-sts on 24 chains. */
const cowl = (count: number, begun = 'dc in same st as join') =>
  workedText(
    `Cowl
US terms

V-st: V-stitch. (Dc, ch 1, dc) in the same st or sp.

Ch 24, join with sl st in first ch to form a ring.
Rnd 1. Ch 3 (counts as dc), dc in next ch and in each ch around, join with sl st in top of ch-3. (24 dc)
Rnd 2. Ch 4 (counts as dc and ch 1), ${begun}, sk next 2 sts, *V-st in next st, sk next 2 sts; rep from * around, join with sl st in 3rd ch of beg ch-4. (${count} V-sts)
`,
  ).codes;

test('a V-stitch that the turning chain begins is counted among them, and another pair of stitches is not', () => {
  expect(cowl(8)).toEqual([]);
  expect(cowl(9)).toEqual(['count/mismatch']);
  expect(cowl(8, 'hdc in same st as join')).toEqual(['count/mismatch']);
});

test('a fan told in brackets and more, all in one stitch', () => {
  const fans = (count: number) =>
    workedText(
      `Edging
UK terms

Special stitches:
Fan: (1 tr, 1ch) 4 times and 1 tr, all in same dc

Make 18 ch.
1. 1 dc in 2nd ch from hook and in each ch to end, turn. (17 dc)
2. 1ch, 1 dc in first dc, *miss next 3 dc, fan in next dc, miss next 3 dc, 1 dc in next dc; rep from * to end, turn. (${count} fans, 3 dc)
`,
    ).codes;
  expect(fans(2)).toEqual([]);
  expect(fans(3)).toEqual(['count/mismatch']);
});
