/** A thumb over the chains of a round that is named. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const mitt = (round: number) =>
  workedText(
    `Mitt
US terms

Hand
Ch 12, join with sl st in first ch to form a ring.
Rnd 1: Ch 1, sc in each ch around, join with sl st in first sc. (12 sc)
Rnd 2: Ch 1, sc in each sc around, join with sl st in first sc. (12 sc)
Rnd 3: Ch 1, sc in first 4 sc, ch 2, skip next 4 sc, sc in last 4 sc, join with sl st in first sc. (8 sc, 1 ch-2 sp)
Rnd 4: Ch 1, sc in first 4 sc, 2 sc in ch-2 sp, sc in last 4 sc, join with sl st in first sc. (10 sc)
Fasten off.

Thumb
Join yarn with sl st in first skipped sc of Rnd 2.
Rnd 1: Ch 1, sc in each of the 4 skipped sc, sc in each of the 2 ch of Rnd ${round}, join with sl st in first sc. (6 sc)
`,
  ).codes;

test('the chains of the round named are worked into, and those of no other', () => {
  expect(mitt(3)).toEqual([]);
  expect(mitt(2)).not.toEqual([]);
});
