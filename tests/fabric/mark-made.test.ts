/** What is said beside the stitches stays with those it is said of: how the hand went, where yarn is joined and cut. */

import { describe, expect, test } from 'vitest';
import { hasFlag, stitchRows } from '../../src/chart/elements.ts';
import { type Fabric, FLAG } from '../../src/fabric/fabric.ts';
import { workText } from '../chart/work-text.ts';

/** Row and place in it, from 0, of every stitch with a flag. */
function flagged(fabric: Fabric, flag: number): string[] {
  const table = stitchRows(fabric);
  return fabric.rows.flatMap(({ label, first, end }) =>
    Array.from({ length: end - first }, (_, k) => first + k)
      .filter((i) => hasFlag(fabric, i, flag))
      .map((i) => `${label}: ${i - first} ${table[fabric.kind[i] ?? 0]?.id}`),
  );
}

const crossed = (how: string): Fabric =>
  workText({
    Panel: `Foundation: Ch 6.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (5 sc)
      Row 2: Ch 3 (counts as dc), sk first st, *sk next st, dc in next st, ${how}dc in skipped st; rep from * across, turn. (5 dc)`,
  });

describe('where the hand goes in crossed stitches', () => {
  test('is behind, for each second one', () => {
    const fabric = crossed('working behind dc just made, ');
    expect(flagged(fabric, FLAG.behind)).toEqual(['Row 2: 4 dc', 'Row 2: 6 dc']);
    expect(flagged(fabric, FLAG.around)).toEqual([]);
  });

  test('is around', () => {
    expect(flagged(crossed('working around dc just made, '), FLAG.around)).toEqual([
      'Row 2: 4 dc',
      'Row 2: 6 dc',
    ]);
  });

  test.each(['', 'working in front of dc just made, '])('is in front and needs no sign: "%s"', (how) => {
    expect(flagged(crossed(how), FLAG.behind | FLAG.around)).toEqual([]);
  });
});

const striped = (): Fabric =>
  workText({
    Panel: `Foundation: With A, ch 4.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. Fasten off A. (3 sc)
      Row 2: Join B with sl st in first st, ch 1, sc in same st, sc in next 2 sts, turn. (3 sc)
      Row 3: Ch 1, sc in each st across, turn. (3 sc)
      Fasten off.`,
  });

describe('the ends of yarn', () => {
  test('are where it is said to be fastened off, in the row or on a line of its own', () => {
    expect(flagged(striped(), FLAG.cut)).toEqual(['Row 1: 2 sc', 'Row 3: 3 sc']);
  });

  test('and where it is joined, with a stitch of its own or with what comes next', () => {
    expect(flagged(striped(), FLAG.joinsYarn)).toEqual(['Row 2: 0 sl-st']);
    const plain = workText({
      Panel: `Foundation: With A, ch 4.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (3 sc)
      Row 2: Join B, ch 1, sc in each st across, turn. (3 sc)`,
    });
    expect(flagged(plain, FLAG.joinsYarn)).toEqual(['Row 2: 0 ch']);
  });

  test('of a yarn that is named are its own, though another was used since', () => {
    const fabric = workText({
      Panel: `Foundation: With A, ch 4.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (3 sc)
      Row 2: With B, ch 1, sc in each st across, turn. Fasten off A. (3 sc)`,
    });
    expect(flagged(fabric, FLAG.cut)).toEqual(['Row 1: 2 sc']);
  });
});
