/** Rows that go on to a length nobody gives: they are worked once through, and printed in the designer's own words. */

import { expect, test } from 'vitest';
import { compileText } from '../../src/compile.ts';
import { workedText } from './worked-text.ts';

const ROW_3 = '3rd row: 1 ch, 1 dc into each tr to end, turn. (8 dc)';

const edging = (repeat: string, third = ROW_3) =>
  [
    'Edging',
    'UK terms.',
    'Note: 1 ch at the start of a row does not count as a stitch.',
    '',
    'EDGING',
    'Make 9 ch.',
    '1st row: 1 dc into 2nd ch from hook, 1 dc into each ch to end, turn. (8 dc)',
    '2nd row: 3 ch (counts as 1 tr), miss first dc, 1 tr into each dc to end, turn. (8 tr)',
    third,
    `${repeat} Fasten off.`,
  ].join('\n');

test.each([
  ['Repeat from the 2nd to the 3rd row for the length required.', 5],
  ['Rep 2nd and 3rd rows until edging is as long as required.', 5],
  ['Repeat 2nd and 3rd rows until the back matches the front.', 5],
  ['Rep from Row 2 to Row 3 for the required length, finishing with the 2nd row.', 6],
  ['Rep 2nd and 3rd rows until back is the same length as front, ending with a 3rd row.', 5],
  ['Rep 2nd and 3rd rows as often as needed.', 5],
])('%s', (repeat, rows) => {
  const { codes, rows: worked } = workedText(edging(repeat));
  expect(codes).toEqual(['row/open-length']);
  expect(worked[0]?.filter((row) => row.startsWith('Row'))).toHaveLength(rows);
  // A wrong count in the rows that repeat is told.
  expect(workedText(edging(repeat, ROW_3.replace('(8', '(9'))).codes).toContain('count/mismatch');
});

test('a wrong row to end with, and a row that is not there, are told', () => {
  expect(
    workedText(edging('Rep 2nd and 3rd rows for the length required, ending with a 1st row.')).codes,
  ).toContain('row/ending');
  expect(workedText(edging('Rep 5th and 6th rows for the length required.')).codes).toContain('row/no-such');
});

test('so much as stitches is no length', () => {
  expect(workedText(edging('Rep 2nd and 3rd rows until all stitches are as long.')).codes).not.toEqual([
    'row/open-length',
  ]);
});

test('the page names no number of rows that nobody gave', () => {
  const { sizes } = compileText(
    { file: 'x.txt', text: edging('Repeat from the 2nd to the 3rd row for the length required.') },
    'x',
  );
  const lines = sizes[0]?.words.uk.parts.flatMap((part) => part.lines) ?? [];
  expect(lines.map(({ text }) => text)).toContain('Rep Rows 2 and 3 for the length required. Fasten off.');
  expect(lines.some(({ label }) => /[4-9]/.test(label ?? ''))).toBe(false);
  expect(sizes[0]?.measures.heightMm).toBeNull();
});
