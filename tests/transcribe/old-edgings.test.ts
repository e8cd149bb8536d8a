/** Edgings of old leaflets: what a chain is for behind its stop, fans of so many stitches, a last stitch told behind the repeat. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const EDGING = `NARROW FAN EDGING

English terms are used.

THE EDGING

Commence with 18 ch.

1st row.—1 d.c. in the second ch. from the hook, 1 d.c. in each ch. to end, turn. (17 d.c.)

2nd row.—4 ch. (for 1 tr. and 1 ch.), miss the first 2 d.c., 1 tr. in the next d.c., * 1 ch., miss 1 d.c., 1 tr. in the next d.c.; repeat from * to end, turn. (9 tr., 8 sp.)

3rd row.—1 ch., 1 d.c. in the first tr., * 1 d.c. in the next sp., 1 d.c. in the next tr.; repeat from * to end, the last d.c. being worked in the third of the 4 ch., turn. (17 d.c.)

4th row.—1 ch., 1 d.c. in the first d.c., * miss 3 d.c., 7 tr. in the next d.c., miss 3 d.c., 1 d.c. in the next d.c.; repeat from * to end, turn. (2 fans of 7 tr., 3 d.c.)
`;

const codesOf = (from: string, to: string) => {
  expect(EDGING).toContain(from);
  return workedText(EDGING.replace(from, to)).codes;
};

test('is read as it stands', () => expect(codesOf('', '')).toEqual([]));

describe('told where', () => {
  test.each([
    ['there are fewer stitches', '3 d.c.)', '2 d.c.)', 'count/mismatch'],
    ['the fans are of another size', '2 fans of 7', '2 fans of 6', 'count/mismatch'],
    ['there are other fans', '2 fans of 7', '3 fans of 7', 'count/mismatch'],
    [
      'the last stitch is of another sort',
      'the last d.c. being worked',
      'the last wibble being worked',
      'phrase/unread',
    ],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));
});

test('rows are told as those of the edging by their ordinals', () => {
  const insertion = (row: string) =>
    workedText(`${EDGING}Fasten off.\n\nINSERTION\n\nCommence with 18 ch.\n\n1st to 3rd rows.—${row}\n`)
      .codes;
  expect(insertion('As the 1st to 3rd rows of the edging. (17 d.c.)')).toEqual([]);
  expect(insertion('As the 1st to 3rd rows of the edging. (18 d.c.)')).toContain('count/mismatch');
  expect(insertion('As the 1st to 2nd rows of the edging. (17 d.c.)')).not.toEqual([]);
});

test('a stitch is named by what it is told to be made', () => {
  const { specials } = transcribe({
    file: 'edging.txt',
    text: EDGING.replace(
      'THE EDGING',
      'To make a picot: 3 ch., then a slip stitch into the first of them.\n\nTHE EDGING',
    ),
  });
  expect(specials.map(({ name, work }) => [name, work?.text])).toEqual([
    ['picot', '3 ch, slip stitch in first of these ch'],
  ]);
});
