/** Pieces from corner to corner in other words: how the second row begins, rows that lose blocks by rule, a border told of all sides at once. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { changed, faultsOf, workedText } from './worked-text.ts';

const page = (name: string) => readFileSync(join(import.meta.dirname, `../pages/${name}.txt`), 'utf8');
const CLOTH = page('fourth/corner-cloth');
const WASHCLOTH = page('seventh/corner-cloth');

describe('a cloth told in talk', () => {
  test('comes out', () => {
    expect(faultsOf(CLOTH)).toEqual([]);
    expect(workedText(CLOTH).rows[0]?.slice(-2)).toEqual(['Rnd 1: 144', 'Rnd 2: 160']);
  });

  test.each([
    ['tip the first block over and (sl', 'flip the block over, (sl'],
    ['tip the first block over and (sl', 'swing the first block round and (sl'],
    ['in its ch-3 space', 'in the ch-3 space of that block'],
    ['of each of the next 10 blocks', 'of the next 10 blocks'],
    ['of each of the next 10 blocks', 'of each of next 10 blocks'],
    [
      '3 sc along the edge of each of the 12 blocks down each side and ch 2 at each corner',
      '3 sc in each block along all four sides, ch 2 at every corner',
    ],
    [
      '3 sc along the edge of each of the 12 blocks down each side and ch 2 at each corner',
      '3 sc in the side of each block on each side with ch 2 for the corners',
    ],
    ['Ch 2 (not a stitch)', 'Ch 2 (not a st)'],
    ['Ch 2 (not a stitch)', "Ch 2 (isn't a stitch)"],
  ])('also where "%s" is "%s"', (from, to) => expect(faultsOf(changed(CLOTH, from, to))).toEqual([]));

  test.each([
    ['each of the next 10 blocks', 'each of the next 9 blocks', 'Row 13'],
    ['each of the 12 blocks', 'each of the 11 blocks', 'Rnd 1'],
    ['work 3 sc along', 'work 4 sc along', 'Rnd 1 makes 192 sc'],
    ['(2 hdc, ch 1, 2 hdc) in each corner', '(3 hdc, ch 1, 3 hdc) in each corner', 'Rnd 2 makes 168 hdc'],
    ['ch 2 at each corner', 'ch 2 at each block', 'could not be read'],
    ['tip the first block over and', 'tip it and', 'could not be read'],
    ['2 blocks\nRow 3', '3 blocks\nRow 3', 'Row 2 makes 2 blocks'],
  ])('told where "%s" is "%s"', (from, to, message) =>
    expect(faultsOf(changed(CLOTH, from, to)).join('\n')).toContain(message),
  );
});

describe('a cloth whose rows lose a block by rule', () => {
  test('comes out', () => {
    expect(faultsOf(WASHCLOTH)).toEqual([]);
    expect(workedText(WASHCLOTH).rows[0]?.slice(-4)).toEqual([
      'Row 22: 6',
      'Row 23: 3',
      'Rnd 1: 144',
      'Rnd 2: 152',
    ]);
  });

  const RULE = 'Continue in this way, with one block fewer in each row,';
  test.each([
    [RULE, 'Continue in the same way, decreasing 1 block in each row,'],
    [RULE, 'Carry on like this, with 1 fewer block in every row,'],
    [RULE, 'Continue as established, working one block less on each row than the row before,'],
    ['(The 3 skipped ch count as a dc, so', '(The skipped 3 ch count as 1 dc, so'],
  ])('also where "%s" is "%s"', (from, to) => expect(faultsOf(changed(WASHCLOTH, from, to))).toEqual([]));

  test('also where its rows go as often as there is room', () => {
    const across = WASHCLOTH.replace(/(?<=next ch-3 sp\] )1[01] times/g, 'across');
    expect(faultsOf(across)).toEqual([]);
    expect(faultsOf(across.replace('turn. 10 blocks', 'turn. 9 blocks')).join()).toContain('makes 10 blocks');
  });

  test.each([
    ['with one block fewer', 'with two blocks fewer', 'could not be read'],
    ['with one block fewer', 'with one block more', 'could not be read'],
    ['until 1 block remains', 'until 2 blocks remain', 'Row 23 makes 1 block, but 2'],
    ['sl st in next ch-3 sp] 11 times', 'sl st in next ch-3 sp] 10 times', 'Row 13'],
    ['of the Row 1 block', 'of the Row 3 block', 'could not be read'],
    ['(3 sc for each block)', '(4 sc for each block)', 'Rnd 1'],
  ])('told where "%s" is "%s"', (from, to, message) =>
    expect(faultsOf(changed(WASHCLOTH, from, to)).join('\n')).toContain(message),
  );
});
