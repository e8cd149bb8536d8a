/** An edging as old books print one: stops behind abbreviations, a dash behind the row's number, what a shell is behind the list. */

import { expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const edging = (second: string, shell = '2 tr., 2 ch., 2 tr., all worked into the one place') =>
  [
    'A LITTLE EDGING',
    '',
    `Explanation of (English) terms: ch., chain; d.c., double crochet; tr., treble; s.s., slip stitch. A "shell" is ${shell}.`,
    '',
    'Make 10 ch.',
    '',
    '1st row.—1 tr. in the 4th ch. from the hook, 2 ch., miss 2 ch., 1 tr. in next, 2 ch., miss 2 ch., shell in the last ch. Turn.',
    '',
    `2nd row.—5 ch., shell in the 2 ch. of the shell, 2 ch., ${second}. Turn.`,
  ].join('\n');
const SECOND = '1 tr. on the single tr., 2 ch., 1 tr. on the next tr., 1 tr. on the top of the turning ch.';

/** Terms that its rows do not use, and chains it leaves open. */
const SAID = new Set(['text/abbreviation-unused', 'chain/unstated']);

test('is read without its stops, and the shell with the rest', () => {
  const { rows, codes } = workedText(edging(SECOND));
  expect(codes.filter((code) => !SAID.has(code))).toEqual([]);
  expect(rows).toEqual([['Foundation: 0', 'Row 1: 7', 'Row 2: 8']]);
  const { specials } = transcribe({ file: 'pasted.txt', text: edging(SECOND) });
  expect(specials.map(({ name, work }) => `${name} = ${work?.text}`)).toEqual([
    'shell = (2 tr, 2 ch, 2 tr) in same st',
  ]);
});

test('what is wrong in it is told', () => {
  // There is one single treble, and the two next to it stand side by side.
  expect(
    workedText(
      edging(SECOND.replace('on the next', 'on the single tr., 1 tr. on the single tr., 1 tr. on the next')),
    ).codes,
  ).toContain('row/used-up');
  expect(workedText(edging(SECOND.replace('on the single tr', 'on the single d.c'))).codes).toContain(
    'place/not-there',
  );
  expect(workedText(edging(SECOND).replace('in the 2 ch. of', 'in the 3 ch. of')).codes).toContain(
    'place/not-there',
  );
  expect(workedText(edging('1 tr. on the single shell')).codes).toContain('phrase/unread');
});

test('a stop that ends a sentence stays', () => {
  const text = 'A Square\n\nUS terms\n\nCh 11.\nRow 1: Sc in 2nd ch from hook and in each ch. Turn.';
  expect(workedText(text).rows).toEqual([['Foundation: 0', 'Row 1: 10']]);
});
