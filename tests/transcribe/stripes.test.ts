/** Which rows are in which yarn, told apart from the rows, and an edging joined where one side begins. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const blanket = (
  stripes: string,
  rows = 'Rows 2-12: Ch 1, sc in each st across, turn.',
  edging = '',
): string =>
  `Stripy Cloth
US terms

Color A: white, 1 ball
Color B: coral, 1 ball

${stripes}

BLANKET
With A, ch 21.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)
${rows}
Fasten off.
${edging}`;

describe('stripes have to come to the rows', () => {
  const told = (
    stripes: string,
    rows = 'Rows 2-12: Ch 1, sc in each st across, turn, keeping to the stripe sequence.',
  ) =>
    workedText(blanket(`STRIPE SEQUENCE\n${stripes}`, rows)).messages.filter((message) =>
      /stripes/.test(message),
    );

  test.each([
    '2 rows A, 2 rows B. Work these 4 rows 2 times, then work 4 more rows in A. (12 rows)',
    '2 rows white, 2 rows coral. Work these 4 rows 3 times.',
    '2 rows in A, 2 rows in B. Repeat these 4 rows 2 more times. 12 rows in all.',
    '2 rows A, 2 rows B, repeat these 4 rows throughout.',
    '2 rows A, 2 rows B.',
  ])('%s', (stripes) => expect(told(stripes)).toEqual([]));

  test.each([
    ['2 rows A, 2 rows B. Work these 6 rows 2 times.', '6 are said to be repeated'],
    ['2 rows A, 2 rows B. Work these 4 rows 2 times. (12 rows)', 'come to 8 rows, but 12 are said'],
    ['2 rows A, 2 rows B. Work these 4 rows 4 times.', 'come to 16 rows, but the piece has 12'],
    [
      '2 rows A, 4 rows B. Work these 6 rows 2 times, then work 2 more rows in A. (14 rows)',
      'the piece has 12',
    ],
  ])('%s: %s', (stripes, message) => expect(told(stripes).join()).toContain(message));

  test('where the rows tell how many they are', () => {
    const open =
      'Row 2: Ch 1, sc in each st across, turn.\nRep Row 2, keeping to the stripe sequence, until work measures 30 cm.';
    expect(told('2 rows A, 2 rows B. Work these 4 rows 4 times.', open)).toEqual([]);
  });
});

describe('a heading of stripes', () => {
  test.each([
    ['STRIPE SEQUENCE\n2 rows A, 2 rows B. Work these 4 rows 2 times, then work 4 more rows in A. (12 rows)'],
    ['Stripes\nRows 1-6: Color A\nRows 7-12: Color B'],
    ['Colour order\nRows 1-6: A\nRows 7-12: B'],
    ['Color Sequence\nRows 1-6: white\nRows 7-12: coral'],
  ])('tells no rows: %s', (stripes) => {
    const text = blanket(stripes);
    expect(workedText(text).rows[0]?.at(-1)).toBe('Row 12: 20');
    expect(
      workedText(text).messages.filter((message) => /could not be read|is not a stitch/.test(message)),
    ).toEqual([]);
    expect(transcribe({ file: 'cloth.txt', text }).parts.map(({ name }) => name)).toEqual(['Blanket']);
  });

  test.each([
    ['Stripes\nRows 1-6: Color A', 'Rows 2-12: frobble in each st across, turn.', 'word/unknown'],
    ['Stripes\nRows 1-6: Color A', 'Rows 2-12: Color A, sc in first 21 sts, turn.', 'row/used-up'],
    [
      'Stripes\nRows 1-6: Color A',
      'Rows 2-12: Ch 1, 2 sc in first st, sc in each st across. (20 sc)',
      'count/mismatch',
    ],
  ])('hides no work: %s, %s', (stripes, rows, code) => {
    expect(workedText(blanket(stripes, rows)).codes).toContain(code);
  });

  test('leaves open which yarn comes when', () => {
    const rows = 'Rows 2-12: Ch 1, sc in each st across, turn, keeping to the stripe sequence.';
    const { codes } = workedText(blanket('STRIPE SEQUENCE\n2 rows A, 2 rows B.', rows));
    expect(codes).not.toContain('yarn/unused');
    expect(workedText(blanket('STRIPE SEQUENCE\n2 rows A, 2 rows B.')).codes).toContain('yarn/unused');
  });
});

describe('an edging of one side', () => {
  const edged = (words: string) =>
    workedText(
      blanket('', 'Rows 2-12: With B, ch 1, sc in each st across, turn.', `\nEDGING\n${words}\nFasten off.`),
    ).codes.filter((code) => /^(?:count|row|phrase|word|place)\//.test(code));

  test.each([
    [
      'With RS facing and A, join yarn at the bottom of one long side (the row ends). Ch 1, 2 sc in each row end to the top. 24 sc.',
    ],
    [
      'With RS facing and using A, join yarn at the top of left side. Ch 1, 2 sc in each row end down to the bottom. 24 sc.',
    ],
  ])('%s', (words) => {
    expect(edged(words)).toEqual([]);
  });

  test.each([
    [
      'With RS facing and A, join yarn at the bottom of one long side. Ch 1, 2 sc in each row end to the top. 25 sc.',
      'count/mismatch',
    ],
    [
      'With RS facing and A, join yarn with sl st at the bottom of the bag. Ch 1, 2 sc in each row end to the top. 24 sc.',
      'phrase/unread',
    ],
  ])('told where it is wrong: %s', (words, code) => {
    expect(edged(words)).toContain(code);
  });
});

test.each([
  ['3 sc', []],
  ['4 sc', ['count/mismatch']],
])('rows that are repeated, ending with so many: %s', (count, codes) => {
  const text = `Strip\nUS terms\n\nCh 9.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (8 sc)\nRow 2: Ch 1, sc2tog, sc in each st across, turn. (7 sc)\nRows 3-6: Rep Row 2, ending with ${count}.\n`;
  expect(workedText(text).codes).toEqual(codes);
});
