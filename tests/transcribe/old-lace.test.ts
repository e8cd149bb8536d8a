/** Narrow lace of old books: shells in shells with plain stitches beyond, a loop at the start of a row, scallops held down. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const lace = (
  changes: Readonly<Record<string, string>> = {},
  last = 'Repeat 2nd to 5th rows for the length required.',
) => {
  const text = [
    'A NARROW LACE',
    'English terms are used.',
    'ABBREVIATIONS. ch, chain; dc, double crochet; tr, treble; shell, 2 tr, 2 ch and 2 tr all into the same place.',
    '',
    'Commence with 9 ch.',
    '1st row. 1 tr into 4th ch from hook (3 missed ch count as 1 tr), 1 tr into next ch, 2 ch, miss 3 ch, shell into last ch, turn. (7 tr)',
    '2nd row. 5 ch, shell into 2 ch sp of shell, 2 ch, 1 tr into each of next 2 tr, 1 tr into top of turning ch, turn. (7 tr)',
    '3rd row. 3 ch (to stand for 1 tr), miss first tr, 1 tr into each of next 2 tr, 2 ch, shell into 2 ch sp of shell, 9 tr into 5 ch loop, 1 dc into foundation ch at base of first shell, turn. (16 tr, 1 dc)',
    '4th row. 1 ch, miss the dc, 1 dc into each of next 9 tr, shell into 2 ch sp of shell, 2 ch, 1 tr into each of next 2 tr, 1 tr into top of 3 ch, turn. (9 dc, 7 tr)',
    '5th row. 3 ch, miss first tr, 1 tr into each of next 2 tr, 2 ch, shell into 2 ch sp of shell, turn (leaving the scallop). (7 tr)',
    last,
    'Fasten off.',
  ].join('\n');
  return workedText(Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text));
};

const wrong = (codes: readonly string[]) =>
  codes.filter((code) => code !== 'count/not-checked' && code !== 'row/open-length');

test('comes out row by row, and says what is not checked', () => {
  const { codes, rows } = lace();
  expect(wrong(codes)).toEqual([]);
  expect(codes).toContain('count/not-checked');
  expect(rows[0]?.slice(1, 6)).toEqual(['Row 1: 7', 'Row 2: 7', 'Row 3: 17', 'Row 4: 16', 'Row 5: 7']);
});

describe('told where', () => {
  test.each([
    [
      'a stitch too many goes beyond the shell',
      '1 tr into each of next 2 tr, 1 tr into top of turning',
      '1 tr into each of next 3 tr, 1 tr into top of turning',
    ],
    [
      'one is left out',
      '1 tr into each of next 2 tr, 1 tr into top of turning',
      '1 tr into next tr, 1 tr into top of turning',
    ],
    ['the loop has another length', '9 tr into 5 ch loop', '9 tr into 6 ch loop'],
    ['the scallop has another count', '9 tr into 5 ch loop', '8 tr into 5 ch loop'],
    ['there is no such stitch', '1 dc into foundation ch at base', '1 dcr into foundation ch at base'],
    ['a count is wrong', '(9 dc, 7 tr)', '(9 dc, 8 tr)'],
  ])('%s', (_, from, to) => expect(wrong(lace({ [from]: to }).codes)).not.toEqual([]));
});

test.each([
  'Repeat 2nd to 5th rows for the length required, but in every following 3rd row work the last dc into the 9th dc of the scallop before.',
  'Repeat 2nd to 5th rows for the length required, but on all later 3rd rows work the last dc in the last dc of the scallop before.',
])('rows that are repeated with one stitch put elsewhere: %s', (last) => {
  expect(wrong(lace({}, last).codes)).toEqual([]);
  expect(lace({}, last.replace('work the last dc', 'work 3 more dc')).codes).toContain('phrase/unread');
});
