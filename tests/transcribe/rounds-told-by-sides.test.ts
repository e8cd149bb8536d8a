/** Rows to be done again and an edging told of all its sides at once, in a text typed without labels; and a chain counted among the stitches of a row. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { changed, faultsOf, workedText } from './worked-text.ts';

const WAFFLE = readFileSync(join(import.meta.dirname, '../pages/eighth/first-waffle-cloth.txt'), 'utf8');

describe('a first cloth, typed as it was made', () => {
  test('comes out to its edge', () => {
    const { rows } = workedText(WAFFLE);
    expect(faultsOf(WAFFLE)).toEqual([]);
    expect(rows[0]?.length).toBe(23);
    expect(rows[0]?.slice(-2)).toEqual(['Row 21: 33', 'edge: 136']);
  });

  const AGAIN = 'then do rows 2 and 3 another 9 times so you have 21 rows';
  test.each([
    [AGAIN, 'now do rows 2 and 3 9 more times. you should have 21 rows'],
    [AGAIN, 'repeat rows 2 and 3 another 9 times, so you have 21 rows'],
    [AGAIN, 'then work rows 2 and 3 nine more times'],
    ['edge - dont turn', 'edging: do not turn'],
    ['is your first treble every time', 'is your first treble'],
    [
      'the 3 chain at the start of the row is your first',
      'chain 3 at the start of each row takes the place of the first',
    ],
    [
      'the 3 chain at the start of the row is your first',
      'the 3 chain at the beginning of the row acts as the first',
    ],
    ['(33 trebles counting the first 3 chain)', '(33 tr, including the beginning 3 ch)'],
    ['(33 trebles counting the first 3 chain)', '(33 trebles counting the missed 3 chain)'],
  ])('also where "%s" is "%s"', (from, to) => expect(faultsOf(changed(WAFFLE, from, to))).toEqual([]));

  test.each([
    ['another 9 times', 'another 8 times', '21'],
    ['31 along each side', '30 along each side', 'edge makes 132'],
    ['3 in every corner', '4 in every corner', 'edge makes 140'],
    ['31 along each side', '31 along each row', 'could not be read'],
    ['(33 trebles counting the first', '(34 trebles counting the first', 'Row 1 makes 33'],
  ])('told where "%s" is "%s"', (from, to, message) =>
    expect(faultsOf(changed(WAFFLE, from, to)).join('\n')).toContain(message),
  );
});

describe('an edging round a cloth', () => {
  const cloth = (edging: string) =>
    faultsOf(
      [
        'Sample',
        'US terms.',
        '',
        'CLOTH',
        'Ch 21.',
        'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)',
        'Rows 2-20: Ch 1, sc in each sc across, turn. (20 sc)',
        '',
        'EDGING',
        `Rnd 1: Ch 1, ${edging}, join with sl st in first sc. (84 sc)`,
        'Rnd 2: Ch 1, sc in each sc around, join with sl st in first sc. (84 sc)',
      ].join('\n'),
    );

  test.each([
    'sc evenly around, working 18 sc along each side and 3 sc in each corner',
    'sc all round, 18 along each side and 3 in every corner',
    'sc all the way around, 3 in each corner and 18 along each side',
    'sc evenly around the edge, with 3 sc in each corner and 18 sc along each side',
    'sc evenly around (18 along each side, 3 in each corner)',
    'sc evenly around, 20 sc along each long side, 16 sc along each short side and 3 sc in each corner',
  ])('%s', (edging) => {
    expect(cloth(edging)).toEqual([]);
    expect(cloth(edging.replace(/\b(18|16)\b/, '17')).join()).toMatch(/Rnd 1 makes (80|86) sc/);
    expect(cloth(edging.replace('3', '2')).join()).toContain('Rnd 1 makes 80 sc');
  });

  test('what is half told is not made up', () => {
    expect(cloth('sc evenly around, 20 sc along each long side and 3 sc in each corner')).not.toEqual([]);
    expect(cloth('sc all round, 18 along each side')).not.toEqual([]);
    expect(cloth('sc evenly around, 18 along each side and 3 dc in each frobble')).not.toEqual([]);
  });
});
