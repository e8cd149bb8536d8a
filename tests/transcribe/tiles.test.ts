/** A rectangle worked from corner to corner, its blocks called tiles. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const SCARF = readFileSync(join(import.meta.dirname, '../pages/second/c2c-scarf.txt'), 'utf8');

function told(from: string, to: string): string {
  expect(SCARF).toContain(from);
  return workedText(SCARF.replace(from, to)).messages.join('\n');
}

test('tiles are blocks, and the yarn slipped along to the first of them is no stitch', () => {
  const { rows, codes } = workedText(SCARF);
  expect(codes).toEqual([]);
  expect(rows[0]?.filter((_, i) => [0, 7, 8, 9, 60, 66].includes(i))).toEqual([
    'Row 1: 3',
    'Row 8: 24',
    'Row 9: 24',
    'Row 10: 24',
    'Row 61: 21',
    'Row 67: 3',
  ]);
});

describe('what is wrong is told', () => {
  test.each([
    ['(2 tiles)', '(3 tiles)', 'Row 2 makes 2 blocks, but 3 is stated'],
    ['(8 tiles each)', '(9 tiles each)', 'Row 60 makes 8 blocks, but 9 is stated'],
    ['of Row 1 tile', 'of Row 4 tile', 'could not be read'],
    [
      "you'll get one more tile each row",
      "you'll get two more tiles each row",
      'Row 4 is said to add 2 blocks',
    ],
    ['you lose one tile each row', 'you lose two tiles each row', 'Row 62 is said to lose 2 blocks'],
    ['you lose one tile each row', 'you lose one toy each row', 'could not be read'],
    ["Don't make a tile there!", "Don't make a tile, 3 dc there!", 'could not be read'],
    [
      "sl st in ch-3 sp of last tile. Don't make",
      "sl st in ch-3 sp of next tile, ch 3, 3 dc in same sp. Don't make",
      'Row 9 makes 9 blocks',
    ],
  ])('"%s", not "%s"', (right, wrong, message) => expect(told(right, wrong)).toContain(message));
});
