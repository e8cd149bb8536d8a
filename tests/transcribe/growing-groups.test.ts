/** A triangle that grows by a group on each side of its middle, and a turning chain that stands for a stitch and a chain. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const SHAWL = readFileSync(join(import.meta.dirname, '../pages/fifth/triangle-shawl.txt'), 'utf8');

function changed(from: string, to: string): string {
  expect(SHAWL).toContain(from);
  return SHAWL.replace(from, to);
}

test('its rows, the last of those that are told together and its edging come out', () => {
  const { rows, codes } = workedText(SHAWL);
  expect(codes).toEqual([]);
  expect(rows[0]?.filter((_, i) => [1, 5, 6, 40, 41].includes(i))).toEqual([
    'Row 1: 8',
    'Row 5: 32',
    'Row 6: 38',
    'Row 40: 242',
    'Row 41: 325',
  ]);
});

const GROWS = 'working one more group of 3tr on each side of the centre on every row';

test.each([
  [GROWS, 'working 1 more 3-tr group on each side of the 2ch-sp in each row'],
  [GROWS, 'with one extra group on either side'],
  [GROWS, 'adding 1 more group of 3 tr in every row at both sides of the middle'],
  ['4ch at the start of a row counts as 1tr and 1ch', '4ch counts as 1 tr and 1 ch'],
  ['4ch at the start of a row counts as 1tr and 1ch', '4 ch counts as tr and 1 ch throughout'],
])('"%s" may be written "%s"', (from, to) => {
  const { codes } = workedText(changed(from, to));
  expect(codes).toEqual([]);
});

test('groups of a stitch are no gauge in it', () => {
  expect(transcribe({ file: 'shawl.txt', text: SHAWL }).gauge).toBeNull();
  const { gauge } = transcribe({ file: 'shawl.txt', text: changed('9 groups of 3tr', '18 tr') });
  expect(gauge).toMatchObject({ stitches: 18, rows: 18 });
});

describe('what is wrong is told', () => {
  test.each([
    ['(242 tr after', '(241 tr after', 'Row 40 makes 242 tr, but 241 is stated'],
    ['one more group of 3tr', 'two more groups of 3tr', 'could not be read'],
    ['one more group of 3tr', 'one more group of 4tr', 'could not be read'],
    ['one more group of 3tr', 'one more group of 3dc', 'could not be read'],
    ['one more group of 3tr', 'one more group of', 'could not be read'],
    [' on each side of the centre', ' at one side of the centre', 'could not be read'],
    ['(3tr in next 1ch-sp, 1ch) 3 times, 1tr', '(3tr in next 1ch-sp, 2ch) 3 times, 1tr', 'could not be read'],
    ['(8 tr)', '(7 tr)', 'Row 1 makes 8 tr, but 7 is stated'],
    ['counts as 1tr and 1ch', 'counts as 1dc and 1ch', 'Row 1 makes 7 tr'],
  ])('"%s", not "%s"', (right, wrong, message) =>
    expect(workedText(changed(right, wrong)).messages.join('\n')).toContain(message),
  );
});
