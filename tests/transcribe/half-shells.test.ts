/** A half shell described in words, written out at both ends of a row and told in its count. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const WRAP = `Small Wrap

UK terms
Yarn: sea glass, 9 x 50g balls (120m)
Hook: 4.5 mm

SPECIAL ABBREVIATIONS
Shell: work 5 tr in same st.
Half shell: 3 tr in same st at the beginning or end of a row. At the beginning, 3 ch counts as the first tr.

NOTE
1 ch at the start of a row does not count as a stitch.

WRAP
Make 26 ch.
Row 1 (RS): 1 dc in 2nd ch from hook, *miss 2 ch, shell in next ch, miss 2 ch, 1 dc in next ch; rep from * to end, turn. (4 shells, 5 dc)
Row 2: 3 ch, 2 tr in first dc, *miss 2 tr, 1 dc in next tr, miss 2 tr, shell in next dc; rep from * 2 more times, miss 2 tr, 1 dc in next tr, miss 2 tr, 3 tr in last dc, turn. (3 shells, 2 half shells, 4 dc)
Row 3: 1 ch, 1 dc in first tr, *miss 2 tr, shell in next dc, miss 2 tr, 1 dc in next tr; rep from * to end, working last dc in top of 3 ch, turn. (4 shells, 5 dc)
Rows 4-9: Rep Rows 2 and 3 3 more times.
Fasten off.
`;

const codesOf = (from: string | RegExp, to: string) => workedText(WRAP.replace(from, to)).codes;

test('is counted where it is written out', () => {
  const { codes, rows } = workedText(WRAP);
  expect(codes).toEqual([]);
  expect(rows[0]?.slice(1, 4)).toEqual(['Row 1: 25', 'Row 2: 25', 'Row 3: 25']);
});

describe('read', () => {
  test.each([
    ['3 tr in last dc', 'half shell in last dc'],
    ['at the beginning or end of a row', 'at each end of the row'],
    ['at the beginning or end of a row', 'worked at the start and end of every row'],
  ])('%s: %s', (from, to) => expect(codesOf(from, to)).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['there are fewer', '2 half shells', '3 half shells', 'count/mismatch'],
    ['one end has too few', '3 tr in last dc', '2 tr in last dc', 'count/mismatch'],
    ['it is described as more', 'Half shell: 3 tr', 'Half shell: 4 tr', 'count/mismatch'],
    ['one end has too few', '3 tr in last dc', '2 tr in last dc', 'count/mismatch'],
    [
      'both ends have fewer',
      /2 tr in first dc(.*)3 tr in last dc/,
      '1 tr in first dc$12 tr in last dc',
      'count/mismatch',
    ],
    ['it is described as more', 'Half shell: 3 tr', 'Half shell: 4 tr', 'count/mismatch'],
    ['one end has too many', '3 tr in last dc', '4 tr in last dc', 'count/mismatch'],
    ['the first chain is said not to count', 'counts as the first tr', 'does not count', 'count/mismatch'],
    [
      'it is not told in stitches',
      'at the beginning or end of a row',
      'at the wibble of a row',
      'text/special-unread',
    ],
    ['nothing is said of the chain', ' At the beginning, 3 ch counts as the first tr.', '', 'chain/unstated'],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));
});
