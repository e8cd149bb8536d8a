/** Narrow laces of old books: a fan over the loop a row turned with, fastened down at the side, and left by the row after. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const FAN = `FAN EDGING

Explanation of (English) terms: ch., chain; d.c., double crochet; tr., treble; s.s., slip stitch. A "shell" is 2 tr., 2 ch., 2 tr., all worked into the one place.

Make 10 ch.

1st row.—1 tr. in the 4th ch. from the hook, 2 ch., miss 2 ch., 1 tr. in next, 2 ch., miss 2 ch., shell in the last ch. Turn.

2nd row.—5 ch., shell in the 2 ch. of the shell, 2 ch., 1 tr. on the single tr., 2 ch., 1 tr. on the next tr., 1 tr. on the top of the turning ch. Turn.

3rd row.—3 ch. (for a tr.), miss the first tr., 1 tr. on the next tr., 2 ch., 1 tr. on the single tr., 2 ch., shell in the 2 ch. of the shell, 9 tr. under the 5 ch., s.s. to the top of the last tr. of the row before last. Turn.

4th row.—*3 ch., miss 1 tr., 1 d.c. in the next tr.; repeat from * 3 times more, 3 ch., miss the last tr. of the fan, shell in the 2 ch. of the shell, 2 ch., 1 tr. on the single tr., 2 ch., 1 tr. on the next tr., 1 tr. on the top of the 3 ch. Turn.

5th row.—3 ch., miss the first tr., 1 tr. on the next tr., 2 ch., 1 tr. on the single tr., 2 ch., shell in the 2 ch. of the shell. Turn, leaving the loops of the fan.

Repeat from the 2nd to the 5th row for the length required, finishing with the 4th row.

Heading.—Along the straight edge work 2 d.c. under each row end, and fasten off.
`;

const LEFT = `FAN EDGING

US terms are used.
A shell is 2 dc, 2 ch, 2 dc, all in the same place.

Ch 10.

1st row—1 dc in 4th ch from hook (the 3 ch passed over stand for a dc), 1 dc in next ch, ch 2, skip 2 ch, 1 shell in next ch, skip 1 ch, 1 dc in last ch. Turn.

2nd row—Ch 5, 1 shell in shell, ch 2, 1 dc in each of next 2 dc, 1 dc in top of 3 ch. Turn.

3rd row—Ch 3, 1 dc in each of next 2 dc, ch 2, 1 shell in shell, 9 dc under the 5 ch, 1 sc in top of the dc at the end of the 1st row. Turn.

4th row—Skip the sc, (ch 3, skip 1 dc, 1 sc in next dc) 4 times, ch 2, 1 shell in shell, ch 2, 1 dc in each of next 2 dc, 1 dc in top of 3 ch. Turn.

5th row—Ch 3, 1 dc in each of next 2 dc, ch 2, 1 shell in shell, 1 dc in the last dc of the fan, which was left unworked. Turn.

Repeat from 2nd to 5th row until the edging is as long as required, making the sc of the 3rd row in the dc at the end of the row last but one. Fasten off.
`;

const SCALLOP = `SCALLOP LACE

Abbreviations.—Ch., chain; d.c., double crochet; tr., treble. English terms.

Commence with 14 ch.

1st row.—1 tr. into the 8th ch. from the hook, 2 ch., miss 2 ch., 1 tr. into next ch., 2 ch., miss 2 ch., 1 tr. into last ch. (3 spaces); turn.

2nd row.—5 ch. (to stand for 1 tr. and 2 ch.), miss the first tr., 1 tr. on next tr., 2 ch., 1 tr. on next tr., 2 ch., miss 2 ch., 1 tr. into next ch.; turn.

3rd row.—8 ch. for the scallop, 1 tr. on the first tr., 2 ch., 1 tr. on next tr., 2 ch., 1 tr. on next tr., 2 ch., 1 tr. into the 3rd of the 5 ch.; turn.

4th row.—5 ch., miss the first tr., 1 tr. on next tr., 2 ch., 1 tr. on next tr., 2 ch., 1 tr. on next tr., 12 tr. into the loop of 8 ch., 1 d.c. into the corner at the foot of this loop; turn.

5th row.—* 4 ch., miss 1 tr., 1 d.c. on next tr.; repeat from * five times more (6 loops), 1 tr. on next tr., 2 ch., 1 tr. on next tr., 2 ch., 1 tr. on next tr., 2 ch., 1 tr. into the 3rd of the 5 ch.; turn.

6th row.—5 ch., miss the first tr., 1 tr. on next tr., 2 ch., 1 tr. on next tr., 2 ch., 1 tr. on next tr., which is the one close beside the scallop; turn.

Now repeat from the 3rd to the 6th row until the lace is the length required, ending with a 5th row. Do not break the cotton.

THE HEADING.—Turn the work and pass along the straight side, putting 3 d.c. into the edge of every row to the end. Fasten off.
`;

const notes = ['row/open-length', 'text/abbreviation-unused', 'text/abbreviation-unlisted'];
const faults = (text: string) => workedText(text).codes.filter((code) => !notes.includes(code));

test.each([
  ['fastened down by a slip stitch', FAN],
  ['with a stitch left for the row after', LEFT],
  ['over a loop of its own', SCALLOP],
])('%s', (_, text) => expect(faults(text)).toEqual([]));

test('each row goes on with as many as the one four rows before', () => {
  const [rows = []] = workedText(LEFT).rows;
  expect(rows.slice(2, 6).map((row) => row.replace(/.*: /, ''))).toEqual(['8', '17', '11', '8']);
  expect(rows.slice(6, 10).map((row) => row.replace(/.*: /, ''))).toEqual(['8', '17', '11', '8']);
});

const changed = (text: string, from: string, to: string) => {
  expect(text).toContain(from);
  return faults(text.replace(from, to));
};

describe('may also', () => {
  test.each([
    [FAN, 'the last tr. of the row before last', 'the tr. at the end of the 1st row'],
    [FAN, 'the last tr. of the row before last', 'the last tr. of the last row but one'],
    [FAN, 'Turn, leaving the loops of the fan.', 'Leave the loops of the fan, turn.'],
    [LEFT, 'at the end of the 1st row', 'at the end of row 1'],
    [LEFT, 'which was left unworked', 'that was left'],
    [SCALLOP, 'at the foot of this loop', 'at the base of the loop'],
    [SCALLOP, 'close beside the scallop', 'next to the scallop'],
    [SCALLOP, '8 ch. for the scallop', '8 ch. for a loop'],
  ])('%#', (text, from, to) => expect(changed(text, from, to)).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['a fan has a stitch too few', FAN, '9 tr. under', '8 tr. under', 'place/not-there'],
    ['a fan has a stitch too many', FAN, '9 tr. under', '10 tr. under', 'place/not-there'],
    ['it goes under another loop', FAN, 'under the 5 ch', 'under the 6 ch', 'place/not-there'],
    [
      'no row is so far below',
      FAN,
      'the last tr. of the row before last',
      'the tr. at the end of the 3rd row',
      'phrase/unread',
    ],
    ['nothing leaves the fan', FAN, ', leaving the loops of the fan', '', 'row/unworked'],
    ['no stitch is left', LEFT, '1 sc in next dc) 4 times', '1 sc in next dc) 5 times', 'row/used-up'],
    [
      'the one that is left is another',
      LEFT,
      '1 dc in the last dc of the fan',
      '1 dc in the last sc of the fan',
      'row/used-up',
    ],
    ['a scallop has a stitch too many', SCALLOP, '12 tr. into', '13 tr. into', 'place/not-there'],
    ['a loop is another', SCALLOP, 'the loop of 8 ch', 'the loop of 7 ch', 'row/used-up'],
  ])('%s', (_, text, from, to, code) => expect(changed(text, from, to)).toContain(code));
});
