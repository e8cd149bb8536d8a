/** How sums are worded where several places have the same in them, at corners, and past stitches that no word skips. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { explainRows } from '../../src/row-table/explain-rows.ts';
import { leftWords } from '../../src/row-table/place-figures.ts';
import { patternText } from '../fabric/work-text.ts';

function rowsOf(work: string) {
  const compiled = compilePattern({ file: 'trial', text: patternText({ work }) }, 'trial');
  expect(compiled.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  const [size] = compiled.sizes;
  if (size === undefined) throw new Error('not worked');
  return explainRows(size, 'US');
}

function howOf(work: string, label: string) {
  const row = rowsOf(work).find((one) => one.label === label);
  if (row === undefined) throw new Error(`no ${label}`);
  return { ...row.how, left: leftWords(row).join(', ') };
}

const LOOPS =
  'Ch 12, join with sl st in first ch to form ring.\nRnd 1: Ch 1, [sc in ring, ch 3] 11 times, join with sl st in first sc. (11 sc, 11 ch-3 sps)\n';

describe('several places with the same in each', () => {
  test('of a bracket are counted', () => {
    const work = `${LOOPS}Rnd 2: Ch 1, (3 sc, ch 1, 4 sc) in each ch-3 sp around, join with sl st in first sc. (77 sc)`;
    expect(howOf(work, 'Rnd 2').stitches).toBe('7 in each of 11 ch-3 sps: 77 sts');
  });

  test('of a stitch are counted by those that are worked into', () => {
    const work = `${LOOPS}Rnd 2: Ch 1, 7 sc in each ch-3 sp around, join with sl st in first sc. (77 sc)`;
    const how = howOf(work, 'Rnd 2');
    expect(how.stitches).toBe('7 in each of 11 ch-3 sps: 77 sts');
    // No word skips the stitches between.
    expect(how.left).toBe('11 sts passed over');
  });

  test('are told apart from those that the stop leaves', () => {
    const work = `${LOOPS}Rnd 2: Ch 1, 4 sc in each of next 5 ch-3 sps, [ch 3, sc in next ch-3 sp] 6 times, join with sl st in first sc.`;
    expect(howOf(work, 'Rnd 2').stitches).toBe('4 in each of the next 5 = 20, 1 x 6 = 6: 26 sts');
  });
});

describe('a round with corners', () => {
  const square =
    'Rnd 1: Ch 3 (counts as dc), 2 dc in magic ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st in top of ch-3.\nRnd 2: Ch 1, sc in each dc around, (sc, ch 2, sc) in each ch-2 sp, join with sl st in first sc.\n';
  test('is told by its sides', () => {
    expect(howOf(square, 'Rnd 1').sides).toBe('3 on each of 4 sides');
    expect(howOf(square, 'Rnd 2')).toMatchObject({
      stitches: '12 and 2 in each of 4 sps: 20 sts',
      sides: '5 on each of 4 sides',
    });
  });

  test('may have corners that are stitches', () => {
    const work = `${square}Rnd 3: Ch 1, sc in each sc around, 3 sc in each ch-2 sp, join with sl st in first sc.`;
    expect(howOf(work, 'Rnd 3').sides).toBe('7 on each of 4 sides, and 4 corner sts');
  });

  test('is none where a ring has spaces once', () => {
    const work =
      'Rnd 1: Ch 1, [sc in magic ring, ch 3] 6 times, join with sl st in first sc.\nRnd 2: Ch 1, 5 sc in each ch-3 sp around, join with sl st in first sc.';
    expect(rowsOf(work).map(({ how }) => how.sides)).toEqual([null, null]);
  });
});

test('stitches that are skipped in words are skipped', () => {
  const work =
    'Ch 12.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (11 sc)\nRow 2: Ch 1, sc in first st, *ch 1, sk next st, sc in next st; rep from * across, turn. (6 sc, 5 ch-1 sps)';
  expect(howOf(work, 'Row 2').left).toBe('5 sts skipped');
});

test('a repeat into a ring uses nothing that could be counted', () => {
  expect(howOf(LOOPS, 'Rnd 1').uses).toBeNull();
});
