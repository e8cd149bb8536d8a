/** Rows that are shaped at a marked stitch, and where the marker goes as they are worked; a border told square by square. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const square = (mark: string, counts = [19, 17, 15]) =>
  workedText(
    `Square\nUS terms\nHook: 5 mm\n\nCh 22.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. ${mark} (21 sc)\nRow 2: Ch 1, sc in each st to 1 st before the marked st, sc3tog, sc in each st to end, turn. (${counts[0]} sc)\nRow 3: Ch 1, sc in each st across, turn. (19 sc)\nRows 4-5: Rep Row 2 — ${counts[1]} and ${counts[2]} sc\n`,
  ).codes;

describe('a marker', () => {
  test.each([
    'Mark the 11th sc.',
    'Mark the center st.',
    'Place marker in the middle st.',
    'Mark the 11th sc, this is the center.',
    'Place a marker in the 11th st.',
  ])('%s', (mark) => {
    expect(square(mark)).toEqual([]);
    expect(square(mark, [18, 17, 15])).toContain('count/mismatch');
    expect(square(mark, [19, 17, 16])).toContain('count/mismatch');
  });

  test('has to be where it is said to be', () => {
    expect(square('Mark the 22nd sc.')).not.toEqual([]);
    expect(square('')).not.toEqual([]);
  });

  const triangle = (row: string, last = 9) =>
    workedText(
      `Triangle\nUS terms\nHook: 5 mm\n\nCh 4, join with sl st to form ring.\nRow 1: Ch 1, 5 sc in ring, turn. Mark the 3rd sc. (5 sc)\nRow 2: ${row} (7 sc)\nRow 3: ${row} (${last} sc)\n`,
    ).codes;
  test.each([
    'Ch 1, sc in each st to marked st, 3 sc in marked st, sc in each st to end, turn.',
    'Ch 1, sc in each st to marked st, 3 sc in marked st, move marker to the middle one, sc in each st to end, turn.',
  ])('is moved to the middle of three: %s', (row) => {
    expect(triangle(row)).toEqual([]);
    expect(triangle(row, 10)).toContain('count/mismatch');
  });

  test('of two in the marked stitch it is not said which has it', () => {
    expect(
      triangle('Ch 1, sc in each st to marked st, 2 sc in marked st, sc in each st to end, turn.'),
    ).not.toEqual([]);
  });
});

describe('so many stitches on each square of a border', () => {
  const mat = (layout: string, total: number, each = 20) =>
    workedText(
      `Mat\nUS terms\nYarn: A: reed; B: sand\n\nSQUARE (make 12)\nWith A, ch 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRows 2-20: Ch 1, sc in each st across, turn. (20 sc)\nFasten off.\n\nBORDER\n${layout}\nRnd 1: With RS facing join A in any corner of the mat, ch 1, *3 sc in corner, ${each} sc evenly along each square to next corner; rep from * 3 more times, join with sl st in first sc. (${total} sc)\nRnd 2: Ch 1, sc in each sc around, join with sl st in first sc. (${total} sc)\nFasten off.\n`,
    ).codes.filter((code) => code !== 'yarn/unused');
  test.each(['', 'Lay out the squares 3 across and 4 down and sew them together.'])('%s', (layout) => {
    expect(mat(layout, 292)).toEqual([]);
    expect(mat(layout, 290)).not.toEqual([]);
    expect(mat(layout, 292, 21)).not.toEqual([]);
  });
  test('has to come to the layout', () =>
    expect(mat('Lay out the squares 3 across and 5 down and sew them together.', 292)).toContain(
      'count/mismatch',
    ));
});
