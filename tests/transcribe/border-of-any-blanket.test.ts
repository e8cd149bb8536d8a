/** A border for any blanket: its sides as long as they are told in brackets, shells round to the next corner, then the other sides. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { faultsOf, workedText } from './worked-text.ts';

const BORDER = readFileSync(join(import.meta.dirname, '../pages/eighth/pebble-border.txt'), 'utf8');

function changed(from: string, to: string): string {
  expect(BORDER).toContain(from);
  return BORDER.replace(from, to);
}

const JOIN = ['Round 3 does not join, though the rounds beside it do'];

test('comes out, but for the join that is not told', () => {
  expect(faultsOf(BORDER)).toEqual(JOIN);
  expect(workedText(BORDER).rows[0]).toEqual([
    'Round 1: 384',
    'Round 2: 196',
    'Round 3: 200',
    'Round 4: 408',
    'Round 5: 416',
  ]);
});

test.each([
  ['until all four sides are done', 'until all sides have been worked'],
  ['until all four sides are done', 'twice more'],
  ['until all four sides are done', 'around'],
  [
    '(81 along a short side, 105 along a long side)',
    '(105 along each long side and 81 along each short side)',
  ],
  ['(81 along a short side, 105 along a long side)', '(105 sts for a long side, 81 sts for a short side)'],
  ['4 corner shells of 7 dc', '4 shells of 7 dc'],
])('"%s" may be "%s"', (from, to) => expect(faultsOf(changed(from, to))).toEqual(JOIN));

describe('told where', () => {
  test.each([
    ['a side is otherwise', '105 along a long', '104 along a long', 'Round 1 makes 382 sc'],
    ['shells are counted wrong', '64 shells of 5', '63 shells of 5', 'Round 5 makes 64'],
    ['corners are counted wrong', '4 corner shells', '5 corner shells', 'Round 5 makes 4'],
    ['it goes on too often', 'until all four sides are done', '3 more times', 'Round 5'],
    [
      'no one knows when it ends',
      'until all four sides are done',
      'until all four sides are pretty',
      'could not',
    ],
    [
      'a shell is too wide',
      '*5 dc in next st, sk 2 sts, sc in next st, sk 2 sts; repeat from * to next center corner sc. **',
      '*5 dc in next st, sk 2 sts, sc in next st, sk 3 sts; repeat from * to next center corner sc. **',
      'Round 5',
    ],
  ])('%s', (_, from, to, message) => expect(faultsOf(changed(from, to)).join('\n')).toContain(message));
});

test('without lengths of two sorts they stay the maker’s own', () => {
  const alone = changed('(81 along a short side, 105 along a long side)', '(81 along mine)');
  expect(faultsOf(alone)).not.toEqual(JOIN);
});
