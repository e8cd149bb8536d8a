/** A blanket in stripes that go on as they are told, edged along one side and then along the other in the same way. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const RIPPLE = `Small Ripple

UK terms
Yarn: A: slate, 5 x 50g balls (120m), B: cream, 5 x 50g balls (120m)
Hook: 4.5 mm
Notes
3ch at the start of a row counts as 1tr.

BLANKET
With A, make 27ch.
1st row (RS): 1tr in 4th ch from hook (missed 3ch count as 1tr), 1tr in each of next 3ch, (tr2tog) twice, 1tr in each of next 3ch, *2tr in each of next 2ch, 1tr in each of next 3ch, (tr2tog) twice, 1tr in each of next 3ch; rep from * to last ch, 2tr in last ch, turn. 24 sts.
2nd row: 3ch, 1tr in st at base of 3ch, 1tr in each of next 3 sts, (tr2tog) twice, 1tr in each of next 3 sts, *2tr in each of next 2 sts, 1tr in each of next 3 sts, (tr2tog) twice, 1tr in each of next 3 sts; rep from * to last st, 2tr in top of 3ch, turn. 24 sts.
Change to B.
3rd and 4th rows: As 2nd row. 24 sts.
5th to 20th rows: Rep 2nd row, keeping the stripes of 2 rows A, 2 rows B as set. 24 sts.
Fasten off.

SIDE EDGING
Row 1: With RS facing, join A with a dc in the first row end of one long side, 1dc in same row end, 2dc in each row end to end, turn. 40 dc.
Row 2: 1ch (does not count as a st), 1dc in each dc to end, turn. 40 dc.
Fasten off. Work the other long side in the same way.
`;

const told = (from: string, to: string) => workedText(RIPPLE.replace(from, to));
const codesOf = (from: string, to: string) => told(from, to).codes;

test('all rows of the one side are worked again', () => {
  const { codes, rows } = workedText(RIPPLE);
  expect(codes).toEqual([]);
  expect(rows[0]?.slice(-4)).toEqual(['Row 1: 40', 'Row 2: 40', 'Row 3: 40', 'Row 4: 40']);
});

describe('read', () => {
  test.each([
    'Work along the other side to match.',
    'Work the second long edge in same way.',
    'Repeat on the opposite side.',
    'Repeat along other long edge.',
    'Work 2nd side to correspond.',
  ])('%s', (words) => expect(codesOf('Work the other long side in the same way.', words)).toEqual([]));

  test.each([
    'keeping to stripes as established',
    'keeping the stripe pattern of 2 rows in A and 2 rows in B',
    'keeping stripes correct',
  ])('%s', (words) => expect(codesOf('keeping the stripes of 2 rows A, 2 rows B as set', words)).toEqual([]));

  test.each(['in same st at base of 3ch', 'in st at the base of the 3 ch', 'at base of ch'])('%s', (words) =>
    expect(codesOf('in st at base of 3ch', words)).toEqual([]),
  );
});

describe('told where', () => {
  test.each([
    ['the side is none of rows', 'the other long side in', 'the other long sleeve in', 'phrase/unread'],
    ['it is not said how', ' in the same way', ' with care', 'phrase/unread'],
    ['the row ends come to another number', 'to end, turn. 40 dc', 'to end, turn. 42 dc', 'count/mismatch'],
    ['a stripe is of no yarn of the list', '2 rows B as set', '2 rows D as set', 'phrase/unread'],
    ['a stripe is of stitches', '2 rows B as set', '2 tr B as set', 'phrase/unread'],
    ['a row begins without its increase', '1tr in st at base of 3ch, ', '', 'count/mismatch'],
    ['the stitch at the base is missing', 'at base of 3ch', 'at base of 3tr', 'word/unknown'],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));

  test('no side is worked before it', () => {
    const across = RIPPLE.replace(
      /^Row 1: .*$/m,
      'Row 1: Join A with a dc in first st, 1dc in each st to end, turn.',
    );
    expect(workedText(across).codes).toContain('phrase/unread');
  });
});

test('an edging along the sides makes the piece no wider than it is', () => {
  const sized = `Gauge: 12 sts = 8 cm and 8 rows = 10 cm\nSize: 18 cm x 25 cm\n`;
  const text = RIPPLE.replace('UK terms\n', `UK terms\n${sized}`);
  expect(workedText(text).codes).toEqual([]);
  expect(workedText(text.replace('18 cm x', '27 cm x')).codes).toEqual(['size/otherwise']);
});
