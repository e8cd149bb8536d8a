/** A front worked as the back up to a row of each size, and two shoulders that count on from it. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

/** Its one slip, in the third size, put right. */
const TOP = readFileSync(join(import.meta.dirname, '../pages/fifth/sleeveless-top.txt'), 'utf8').replace(
  '49 (54, 57, 64) sts',
  '49 (54, 59, 64) sts',
);

function changed(from: string, to: string): string {
  expect(TOP).toContain(from);
  return TOP.replace(from, to);
}

test('every size has its own rows of the back, and both shoulders', () => {
  const { rows, codes } = workedText(TOP);
  expect(codes).toEqual([]);
  const front = rows.map((size) => size.slice(size.lastIndexOf('Foundation: 0')));
  expect(front.map((size) => size.filter((row) => /^Row 4[2358]:|^Row 5[12]:/.test(row)))).toEqual([
    ['Row 42: 49', 'Row 43: 16', 'Row 45: 14', 'Row 48: 13', 'Row 43: 16', 'Row 45: 14', 'Row 48: 13'],
    [
      ...['Row 42: 54', 'Row 43: 54', 'Row 45: 54', 'Row 48: 16', 'Row 51: 15', 'Row 52: 15'],
      ...['Row 48: 16', 'Row 51: 15', 'Row 52: 15'],
    ],
    [
      ...['Row 42: 59', 'Row 43: 59', 'Row 45: 59', 'Row 48: 59', 'Row 51: 18', 'Row 52: 17'],
      ...['Row 51: 18', 'Row 52: 17'],
    ],
    ['Row 42: 64', 'Row 43: 64', 'Row 45: 64', 'Row 48: 64', 'Row 51: 64', 'Row 52: 22', 'Row 52: 22'],
  ]);
});

const ASKS = 'Work as for Back through Row 42 (45, 48, 51). 49 (54, 59, 64) sts.';

test.each([
  [ASKS, 'Work as for Back to end of Row 42 (45, 48, 51).'],
  [ASKS, 'Work same as Back until Row 42 (45, 48, 51) has been completed: 49 (54, 59, 64) hdc'],
  [ASKS, 'Work as for Back up to and including Row 42 (45, 48, 51) - 49 (54, 59, 64) sts.'],
  ['Rows 37-50 (39-53, 41-56, 43-59)', 'Rows 37 (39, 41, 43)-50 (53, 56, 59)'],
  ['unworked sts of Row 42 (45, 48, 51)', 'sts of Row 42 (45, 48, 51)'],
  ['unworked sts of Row 42 (45, 48, 51)', 'sts left unworked on Row 42 (45, 48, 51)'],
  ['unworked sts of Row 42 (45, 48, 51)', 'unworked sts'],
])('"%s" may be written "%s"', (from, to) => expect(workedText(changed(from, to)).codes).toEqual([]));

describe('what is wrong is told', () => {
  test.each([
    [
      '49 (54, 59, 64) sts.\n\nFirst',
      '49 (54, 58, 64) sts.\n\nFirst',
      'Row 48 makes 59 sts, but 58 is stated',
    ],
    ['through Row 42 (45, 48, 51)', 'through Row 41 (45, 48, 51)', 'Row 43 stands where Row 1 should be'],
    ['through Row 42 (45, 48, 51)', 'through Row 42 (45, 48, 71)', 'could not be read'],
    ['through Row 42 (45, 48, 51)', 'through Row 34 (36, 38, 40)', 'Row 34 makes 53 sts, but 49 is stated'],
    ['17 (18, 19, 20) unworked', '16 (18, 19, 20) unworked', 'Row 43'],
    ['unworked sts of Row 42 (45, 48, 51)', 'unworked sts of Row 41 (45, 48, 51)', 'of Row 41'],
    ['unworked sts of Row 42 (45, 48, 51)', 'unworked beads of Row 42 (45, 48, 51)', 'could not be read'],
  ])('"%s", not "%s"', (right, wrong, message) =>
    expect(workedText(changed(right, wrong)).messages.join('\n')).toContain(message),
  );
});
