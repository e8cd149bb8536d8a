/** A cushion worked from corner to corner: only its beginning block is described, what is done in each space is the other. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const CUSHION = readFileSync(join(import.meta.dirname, '../pages/fifth/corner-cushion.txt'), 'utf8');

function changed(from: string, to: string): string {
  expect(CUSHION).toContain(from);
  return CUSHION.replaceAll(from, to);
}

test('the blocks, the border and the round that joins both panels come out', () => {
  const { rows, codes } = workedText(CUSHION);
  expect(codes).toEqual([]);
  expect(rows[0]?.filter((_, i) => [0, 15, 30, 31].includes(i))).toEqual([
    'Row 1: 3',
    'Row 16: 48',
    'Row 31: 3',
    'Rnd 1: 204',
  ]);
});

test.each([
  ['Each row has one block less.', 'Each row has one less block than the row before.'],
  ['Each row has one block less.', 'Each row loses 1 block.'],
  ['Each row has one more block.', 'Every row has one block more than the last.'],
  ['of block in Row 1,', 'of the block in the row below,'],
  ['of block in Row 1,', 'of the block of Row 1,'],
  ['Beginning block:', 'Beginning block (beg block):'],
  ['inserting the pillow form before closing the last side', 'insert pillow form'],
  ['inserting the pillow form before closing the last side', 'slip the pillow form inside'],
  [
    'inserting the pillow form before closing the last side',
    'inserting the cushion before the last side is closed',
  ],
])('"%s" may be written "%s"', (from, to) => expect(workedText(changed(from, to)).codes).toEqual([]));

describe('what is wrong is told', () => {
  test.each([
    ['(2 blocks)\n\nRow 3', '(3 blocks)\n\nRow 3', 'Row 2 makes 2 blocks, but 3 is stated'],
    ['has one block less', 'has two blocks less', 'Row 18 is said to lose 2 blocks'],
    ['has one block less', 'adds one block less', 'could not be read'],
    ['has one more block', 'has one block less', 'Row 4 is said to lose 1 block'],
    ['of block in Row 1,', 'of block in Row 3,', 'could not be read'],
    ['Row 17: Turn, sl st in next 3 dc and', 'Row 17: Turn, sl st in next 4 dc and', 'Row 17'],
    [
      'ch 3, 3 dc in same ch-3 sp; rep from * across. (3',
      'ch 3, 2 dc in same ch-3 sp; rep from * across. (3',
      'Row 3',
    ],
    ['inserting the pillow form', 'inserting 3 sc and the pillow form', 'could not be read'],
    ['inserting the pillow form', 'inserting the hook', 'could not be read'],
    ['(212 sc)', '(213 sc)', 'makes 212 sc, but 213'],
  ])('"%s", not "%s"', (right, wrong, message) =>
    expect(workedText(changed(right, wrong)).messages.join('\n')).toContain(message),
  );
});
