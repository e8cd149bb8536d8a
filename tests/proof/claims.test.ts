/** What a pattern claims of its width against what its rows can do. */

import { describe, expect, test } from 'vitest';
import { workSize } from '../../src/fabric/work.ts';
import { partMultiples } from '../../src/proof/part-multiple.ts';
import type { Piece } from '../fabric/work-text.ts';
import { multipleOf, patternOf } from './multiples.ts';

const SHELLS =
  'Row 1: Sc in 2nd ch from hook, *sk next 2 ch, 5 dc in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.';
const size = ['name: small, repeats: 4'];

function shells(of: number, plus: number, more = ''): Piece {
  return {
    work: `Ch a multiple of ${of}${plus === 0 ? '' : ` plus ${plus}`}.\n${SHELLS}\n${more}`,
    sizes: size,
  };
}

describe('a claim', () => {
  test('that is what the rows need holds', () => {
    expect(multipleOf(patternOf(shells(6, 2)))).toMatchObject({
      claimed: { of: 6, plus: 2 },
      found: { of: 6, plus: 2, from: 8, proved: true },
      broken: null,
    });
  });

  test('of twice the repeat holds as well', () => {
    expect(multipleOf(patternOf(shells(12, 8)))).toMatchObject({ found: { of: 6 }, broken: null });
  });

  test('of a part of the repeat is broken at the first width that does not come out, and the nearest is named', () => {
    const { found, broken } = multipleOf(patternOf(shells(2, 0)));
    expect(found).toMatchObject({ of: 6, plus: 2, proved: true });
    // 8 comes out, 10 does not.
    expect(broken).toMatchObject({ chains: 10, fault: { code: 'repeat/uneven' } });
  });

  test('that holds in one row is broken by another with a repeat of its own', () => {
    const clash =
      'Row 2: Ch 1, *sc in next 4 sts, sk next st; rep from * to last 2 sts, sc in last 2 sts, turn.';
    const { found, broken } = multipleOf(patternOf(shells(6, 2, clash)));
    // Row 1 makes 6 a repeat and 1 more; row 2 asks for 5 a repeat and 2 more: 6n + 1 = 5m + 2 when n is 1 more than a multiple of 5.
    expect(found).toMatchObject({ of: 30, plus: 8, from: 38, proved: true });
    expect(broken?.fault.message).toMatch(/Row 2/);
  });

  test('of which no width comes out is left to the faults of the rows', () => {
    expect(() => multipleOf(patternOf(shells(6, 3)))).toThrow('nothing is found');
  });
});

describe('nothing is proved that hangs on the width', () => {
  test('where a number of times could be read in two senses at some', () => {
    // From 60 stitches on there is room for three passes as well as for two.
    const work =
      'Ch a multiple of 1 plus 40.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, *sc in next 20 sts; rep from * 2 times, sc in each st across, turn.';
    expect(multipleOf(patternOf({ work, sizes: ['name: s, repeats: 5'] })).found?.proved).not.toBe(true);
  });

  const halving =
    'Row 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, *sc2tog; rep from * across, turn.\nRows 3 on: Rep Row 2 to height.';

  test('where rows worked to a height are not the same again', () => {
    const work = `Ch a multiple of 8 plus 1.\n${halving}`;
    const { found } = multipleOf(patternOf({ work, sizes: ['name: s, repeats: 16, rows: 6'] }));
    expect(found?.proved).not.toBe(true);
  });

  test('but the rows a size has are proved, though they are few', () => {
    const work = `Ch a multiple of 4 plus 1.\n${halving}`;
    const sized = patternOf({ work, sizes: ['name: s, repeats: 6, rows: 3'] });
    expect(multipleOf(sized)).toMatchObject({ found: { of: 4, plus: 1, proved: true }, broken: null });
  });

  test('each size is looked into where it has numbers of its own', () => {
    const work =
      'Ch a multiple of 6 plus 2.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRow 2: Ch 1, *sc in next 2 (4) sts, sk next st; rep from * to last st, sc in last st, turn.';
    const pattern = patternOf({ work, sizes: ['name: s, repeats: 5', 'name: m, repeats: 3'] });
    const plan = { repeats: 5, rows: null };
    const sizes = [0, 1].map((index) => ({ index, plan, readings: workSize(pattern, index, plan).readings }));
    expect(partMultiples(pattern, sizes, true)).toMatchObject([
      { size: 's', found: { of: 3, plus: 2 }, broken: null },
      { size: 'm', found: { of: 5, plus: 2 }, broken: { repeats: 6 } },
    ]);
  });

  test('a piece too large to try is left alone, and nothing is said of it', () => {
    const work =
      'Ch a multiple of 250 plus 1.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn.\nRows 2-999: Ch 1, sc in each st across, turn.\nRow 1000: Ch 1, *sc in next 124 sts, sk next st; rep from * across.';
    const found = multipleOf(patternOf({ work, sizes: ['name: s, repeats: 1'] }));
    expect(found).toMatchObject({ found: null, broken: null });
  });
});

describe('a fixed chain', () => {
  test('with every number in the rows is for one width only', () => {
    const work = 'Ch 11.\nRow 1: Sc in 2nd ch from hook and in next 9 ch, turn.';
    expect(multipleOf(patternOf({ work }))).toMatchObject({ claimed: null, found: null });
  });

  test('keeps the reading that its stated count settled, at other widths too', () => {
    // By habit ch 3 would count, and row 2 make one more than row 1.
    const work =
      'Ch 12.\nRow 1: Dc in 4th ch from hook (skipped 3 ch do not count as a st) and in each ch across, turn. (9 dc)\n' +
      'Row 2: Ch 3, dc in first dc, dc in each dc across, turn. (9 dc)\n' +
      'Row 3: Ch 1, *sc in next 2 dc, sk next dc; rep from * across, turn. (6 sc)';
    expect(multipleOf(patternOf({ work })).found).toMatchObject({ of: 3, plus: 0, proved: true });
  });

  test('worked to a height is proved over the rows that come round again', () => {
    const { found } = multipleOf(
      patternOf({
        work: `Ch a multiple of 6 plus 2.\n${SHELLS}\nRow 2: Ch 1, sc in each st across, turn.\nRows 3 on: Rep Row 2 to height.`,
        sizes: ['name: small, repeats: 4, rows: 9'],
      }),
    );
    expect(found).toMatchObject({ of: 6, plus: 2, proved: true });
  });
});
