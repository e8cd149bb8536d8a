/** A shawl of V-sts whose counts are told in sentences, worked row by row. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const SHAWL = readFileSync(join(import.meta.dirname, '../pages/second/v-stitch-shawl.txt'), 'utf8');

function told(from: string, to: string): readonly string[] {
  expect(SHAWL).toContain(from);
  const { messages, codes } = workedText(SHAWL.replace(from, to));
  return messages.filter((_, i) => !ALWAYS.has(codes[i] ?? ''));
}

/** Told of the page as it stands, and worth telling. */
const ALWAYS = new Set(['hook/unlikely', 'text/abbreviation-unlisted']);

test('the shawl has as many V-sts as it says, and stitches along its edge', () => {
  const { rows } = workedText(SHAWL);
  expect(rows[0]?.slice(1, 4)).toEqual(['Row 1: 6', 'Row 2: 14', 'Row 3: 22']);
  expect(rows[0]?.at(-1)).toBe('Row 25: 291');
  expect(told('', '')).toEqual([]);
});

describe('counts in a sentence', () => {
  test.each([
    ['You have 6 V-sts.', 'You have 7 V-sts.', 'Row 2 makes 6 V-sts, but 7 is stated'],
    ['2 V-sts, 1 tr each end', '2 V-sts, 2 tr each end', 'Row 1 makes 6 tr, but 4 is stated'],
    ['you have 94 V-sts (47 on', 'you have 95 V-sts (47 on', null],
    ['you have 94 V-sts (47 on', 'you have 96 V-sts (48 on', 'Row 24 makes 94 V-sts, but 96 is stated'],
    ['(47 on each side)', '(46 on each side)', null],
    ['46 five-dc shells', '45 five-dc shells', 'Row 25 makes 46 groups of 5 dc'],
    ['one 7-dc shell', 'two 7-dc shells', 'Row 25 makes 1 group of 7 dc'],
    ['a half shell of 3 dc', 'a half shell of 4 dc', 'Row 25 makes 0 groups of 4 dc'],
    ['at each end and 48 sc', 'at each end and 47 sc', 'Row 25 makes 48 sc'],
  ])('"%s" is right, "%s" is not', (right, wrong, message) => {
    const found = told(right, wrong);
    expect(found.join('\n')).toContain(message ?? 'could not be read');
  });

  test('may be of a row on the way, which is the one that is held against it', () => {
    expect(told('After Row 24 you have 94 V-sts (47 on', 'After Row 10 you have 38 V-sts (19 on')).toEqual(
      [],
    );
    const [only, more] = told(
      'After Row 24 you have 94 V-sts (47 on',
      'At the end of Row 10 you have 94 V-sts (47 on',
    );
    expect(only).toContain('Row 10 makes 38 V-sts');
    expect(more).toBeUndefined();
  });
});

describe('what each row adds', () => {
  test.each([
    [
      'Each row adds 4 V-sts, 2 on',
      'Each row adds 6 V-sts, 3 on',
      'Row 4 is said to add 6 V-sts, but it has 14 on 10',
    ],
    ['Each row adds 4 V-sts, 2 on', 'Each row adds 4 V-sts, 3 on', 'could not be read'],
    ['Each row adds 4 V-sts, 2 on', 'Each row loses 4 V-sts, 2 on', 'Row 4 is said to lose 4 V-sts'],
    ['Each row adds 4 V-sts, 2 on', 'Each row adds 4 blobs, 2 on', 'could not be read'],
  ])('"%s", not "%s"', (right, wrong, message) => {
    expect(told(right, wrong).join('\n')).toContain(message);
  });
});

describe('the gap between the last V-st and the turning chain', () => {
  test.each([
    ['V-st in sp between last V-st and tch', 'V-st in sp between last V-st and turning ch', null],
    ['V-st in sp before next V-st', 'V-st in sp between tch and first V-st', null],
    // All the V-sts of the second half are passed without a word.
    ['V-st in each V-st to the end, V-st in sp', 'V-st in sp', 'before it unworked'],
    ['between last V-st and tch', 'between last dc and tch', ' '],
  ])('"%s", "%s"', (right, other, message) => {
    const found = told(right, other);
    if (message === null) expect(found).toEqual([]);
    else expect(found.join('\n')).toContain(message);
  });
});

test('a list of stitches "as usual" with other words behind it is not taken for one', () => {
  expect(
    told('(chain, single crochet, double crochet, treble)', '(chain, single crochet, double crochet)'),
  ).not.toEqual([]);
  expect(
    told(
      '(chain, single crochet, double crochet, treble)',
      '(chain, double crochet, double crochet, treble)',
    ).join(),
  ).toContain('sc is explained as');
});
