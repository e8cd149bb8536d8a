/** A row that says how much of the row below it leaves. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const strip = (end: string) =>
  workedText(
    `Strip\nUK terms\n\nCh 12.\n1st row: 1 dc into 2nd ch from hook, 1 dc into each of next 8 ch, turn${end}. (9 dc)\n`,
  ).codes;

test.each([
  ', leaving the last 2 ch',
  ', leaving last 2 ch unworked',
  ', leaving the rest',
  ', leaving remaining chs',
])('turn%s', (end) => expect(strip(end)).toEqual([]));

test('a tail that is left leaves no stitches, and nothing is left in silence', () => {
  expect(strip(', leaving a long tail')).toContain('row/unworked');
  expect(strip('')).toContain('row/unworked');
});

test('the number that a row says it leaves has to be left', () => {
  const rows = (left: number) =>
    workedText(
      `Neck\nUS terms\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)\nRow 2: Ch 1, sc in next 9 sts, turn, leaving last ${left} sts unworked for the neck. (9 sc)\n`,
    ).codes;
  expect(rows(3)).toEqual([]);
  expect(rows(2)).toEqual(['row/unworked']);
  expect(rows(4)).toEqual(['row/unworked']);
});
