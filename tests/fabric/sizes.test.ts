import { describe, expect, test } from 'vitest';
import { codesOf, faultsOf, rowOf, workPiece } from './work-text.ts';

const SIZES = ['name: small', 'name: medium', 'name: large'];

/** The stitches of each row for each size, after any foundation. */
function stitchesBySize(piece: Parameters<typeof workPiece>[0]): readonly (readonly number[])[] {
  const { fabrics, diagnostics } = workPiece(piece);
  expect(diagnostics.map(({ message }) => message)).toEqual([]);
  return fabrics.map(({ rows }) => rows.filter(({ unit }) => unit !== null).map(({ stitches }) => stitches));
}

describe('a number for each size', () => {
  test('is taken from its place in the list', () => {
    const work =
      'Ch 11 (16, 21).\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 (15, 20) sc)\nRow 2: Ch 1, sc in next 2 (4, 6) sts, [2 sc in next st] 0 (1, 2) times, sc in each st across. (10 (16, 22) sc)';
    expect(stitchesBySize({ work, sizes: SIZES })).toEqual([
      [10, 10],
      [15, 16],
      [20, 22],
    ]);
  });

  test('a dash, in a label or a repeat, is a size that skips it', () => {
    const work = `Rnd 1: 6 sc in magic ring. (6 sc)
Rnd 2: 2 sc in each st around. (12 sc)
Rnd - (3, 3): [Sc in next st, 2 sc in next st] - (6, 6) times. (18 sc)
Rnd - (-, 4): [Sc in next 2 sts, 2 sc in next st] 6 times. (24 sc)
Rnds 3 (4, 5)-4 (6, 8): Sc in each st around. (12 (18, 24) sc)`;
    expect(stitchesBySize({ work, sizes: SIZES })).toEqual([
      [6, 12, 12, 12],
      [6, 12, 18, 18, 18, 18],
      [6, 12, 18, 24, 24, 24, 24, 24],
    ]);
  });

  test('a count that is wrong for one size is told for that size alone', () => {
    const work = 'Ch 11 (16, 21).\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 (14, 20) sc)';
    const { diagnostics } = workPiece({ work, sizes: SIZES });
    expect(diagnostics.map(({ code, message, sizes }) => [code, message, sizes])).toEqual([
      ['count/mismatch', 'Row 1 makes 15 sc, but 14 is stated', ['medium']],
    ]);
  });

  test('the same fault in several sizes is told once, with the sizes it touches', () => {
    const work = 'Ch 11 (16, 21).\nRow 1: Sc in 2nd ch from hook and in each ch across. (10 sc)';
    const { diagnostics } = workPiece({ work, sizes: SIZES });
    expect(diagnostics.map(({ code, sizes }) => [code, sizes])).toEqual([
      ['count/mismatch', ['medium', 'large']],
    ]);
  });
});

describe('as many repeats as the size has', () => {
  test('"a multiple of 6 plus 2" is 6 for each, and 2', () => {
    const { fabrics } = workPiece({
      work: 'Ch a multiple of 6 plus 2.\nRow 1: Sc in 2nd ch from hook and in each ch across.',
      sizes: ['name: small, repeats: 3', 'name: large, repeats: 7'],
    });
    expect(fabrics.map((fabric) => rowOf(fabric, 'Row 1').stitches)).toEqual([6 * 3 + 1, 6 * 7 + 1]);
  });
});

describe('as many rows as the size has', () => {
  const rows = (ending: string) =>
    `Ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each st across.\nRow 3: Ch 1, hdc in each st across.\nRows 4 on: Rep Rows 2 and 3 to height${ending}.`;
  test('rows that go on to height are repeated in turn', () => {
    const { fabrics } = workPiece({
      work: rows(''),
      sizes: ['name: small, rows: 6', 'name: large, rows: 9'],
    });
    expect(
      fabrics.map((fabric) => fabric.rows.slice(1).map(({ byStitch }) => Object.keys(byStitch)[0])),
    ).toEqual([
      ['sc', 'sc', 'hdc', 'sc', 'hdc', 'sc'],
      ['sc', 'sc', 'hdc', 'sc', 'hdc', 'sc', 'hdc', 'sc', 'hdc'],
    ]);
    expect(fabrics[1]?.rows.at(-1)).toMatchObject({ label: 'Row 9', number: 9 });
  });
  test('the last one has to be the one named', () => {
    expect(
      faultsOf({
        work: rows(', ending with a Row 3'),
        sizes: ['name: small, rows: 6', 'name: large, rows: 9'],
      }),
    ).toEqual(['row/ending: size small has 6 rows and would end with a Row 2, not a Row 3']);
  });
  test('so has the last of so many in all', () => {
    const total = (row: number) =>
      rows('').replace(
        'Rows 4 on: Rep Rows 2 and 3 to height.',
        `Repeat Rows 2 and 3 until you have 7 rows in total, ending after a Row ${row}.`,
      );
    expect(faultsOf({ work: total(3) })).toEqual([]);
    expect(faultsOf({ work: total(2) })).toEqual([
      'row/ending: the pattern has 7 rows and would end with a Row 3, not a Row 2',
    ]);
  });
  test('a size that gives neither rows nor a height cannot be worked', () => {
    expect(codesOf({ work: rows(''), sizes: ['name: small, rows: 6', 'name: large'] })).toEqual([
      'row/how-many',
    ]);
  });
});

describe('a pattern that lists no sizes', () => {
  test('is told its faults without a size’s name', () => {
    const { diagnostics } = workPiece({
      work: 'Ch 5.\nRow 1: Sc in 2nd ch from hook and in each ch across. (5 sc)',
    });
    expect(diagnostics.map(({ sizes, message }) => [sizes, message])).toEqual([
      [[], 'Row 1 makes 4 sc, but 5 is stated'],
    ]);
    expect(faultsOf('Ch a multiple of 2.\nRow 1: Sc in 2nd ch from hook and in each ch across.')).toEqual([
      'size/no-repeats: the pattern does not say how many pattern repeats it has',
    ]);
  });
});
