import { describe, expect, test } from 'vitest';
import { workPiece } from './work-text.ts';

const HEAD = 'Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)\n';
const UNREAD = 'phrase/unread: "do the wobble in each st" could not be read here';

/** What is said of the rows behind the first, in their order. */
function said(rows: string): readonly string[] {
  const { diagnostics } = workPiece({ work: HEAD + rows });
  return [...diagnostics]
    .sort((a, b) => a.span.start - b.span.start)
    .map(({ code, message }) => `${code}: ${message}`);
}

describe('a row whose words could not be read', () => {
  test('that states its count is what the next is worked into', () => {
    expect(
      said(
        'Row 2: Ch 1, do the wobble in each st, turn. (14 sc)\nRow 3: Ch 1, sc in next 14 sts, turn. (14 sc)\nRow 4: Ch 1, sc in each st across, turn. (15 sc)',
      ),
    ).toEqual([UNREAD, 'count/mismatch: Row 4 makes 14 sc, but 15 is stated']);
  });

  test('contradicts a later count that does not follow from it', () => {
    expect(
      said(
        'Row 2: Ch 1, do the wobble in each st, turn. (14 sc)\nRow 3: Ch 1, sc in each st across, turn. (12 sc)',
      ),
    ).toEqual([UNREAD, 'count/mismatch: Row 3 makes 14 sc, but 12 is stated']);
  });

  test('and states none leaves the rows behind it unchecked up to the next count, which is told once', () => {
    expect(
      said(
        'Row 2: Ch 1, do the wobble in each st, turn.\nRow 3: Ch 1, sc in next 14 sts, turn.\nRow 4: Ch 1, sc in next 14 sts, turn.\nRow 5: Ch 1, sc in next 14 sts, turn. (14 sc)\nRow 6: Ch 1, sc in next 13 sts, turn.',
      ),
    ).toEqual([
      UNREAD,
      'row/hangs-on: Row 3 to Row 5 could not be checked: they hang on Row 2',
      'row/unworked: Row 6 leaves 1 of the 14 stitches below unworked',
    ]);
  });

  test('cannot be repeated either', () => {
    expect(
      said(
        'Row 2: Ch 1, do the wobble in each st, turn.\nRows 3-6: Rep Row 2.\nRow 7: Ch 1, sc in each st across, turn. (12 sc)\nRow 8: Ch 1, sc in next 11 sts, turn.',
      ),
    ).toEqual([
      UNREAD,
      'row/hangs-on: Row 7 could not be checked: it hangs on Row 6',
      'row/unworked: Row 8 leaves 1 of the 12 stitches below unworked',
    ]);
  });

  test('does not say what lies between its stitches', () => {
    const unread = 'Row 2: Ch 1, do the wobble in each st, turn. (12 sts)\n';
    const row = (words: string) =>
      `${unread}Row 3: Ch 1, ${words}, turn. (9 sc)\nRow 4: Ch 1, sc in next 10 sts, turn.`;
    for (const words of [
      'sc in each ch-1 sp across',
      '3 sc in next ch-2 sp',
      'sc in each sc and ch-1 sp across',
    ])
      expect(said(row(words))).toEqual([
        UNREAD,
        'row/hangs-on: Row 3 could not be checked: it hangs on Row 2',
        'row/used-up: Row 4 asks for another st, but the row below has none left',
      ]);
  });

  test('numbers its rows all the same', () => {
    expect(
      said(
        'Row 2: Ch 1, do the wobble in each st, turn. (12 sc)\nRow 4: Ch 1, sc in each st across, turn. (12 sc)',
      ),
    ).toEqual([UNREAD, 'row/out-of-order: Row 4 stands where Row 3 should be']);
  });
});

describe('words outside of rows that could not be read', () => {
  test('and name nothing of crochet change nothing', () => {
    expect(
      said('The edge will curl a little here.\nRow 2: Ch 1, sc in next 11 sts, turn. (11 sc)').filter(
        (fault) => !/^(?:word|phrase)\//.test(fault),
      ),
    ).toEqual(['row/unworked: Row 2 leaves 1 of the 12 stitches below unworked']);
  });

  test('and may be work make a fault of the next row doubtful', () => {
    const wobble = 'Do the wobble in each st.\n';
    const faults = (row: string) => said(wobble + row).filter((fault) => fault.startsWith('row/'));
    expect(
      faults('Row 2: Ch 1, sc in next 14 sts, turn. (14 sc)\nRow 3: Ch 1, sc in next 13 sts, turn.'),
    ).toEqual([
      'row/hangs-on: Row 2 could not be checked: it hangs on what stands before',
      'row/unworked: Row 3 leaves 1 of the 14 stitches below unworked',
    ]);
    // It comes out as it is: what was not read did not matter.
    expect(
      faults('Row 2: Ch 1, sc in next 12 sts, turn. (12 sc)\nRow 3: Ch 1, sc in next 11 sts, turn. (11 sc)'),
    ).toEqual(['row/unworked: Row 3 leaves 1 of the 12 stitches below unworked']);
  });
});

describe('a count of several things that is wrong', () => {
  const mesh =
    'Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * to last 2 sts, sc in last 2 sts, turn. (8 sc, 6 ch-1 sps)\n';
  const wrong = 'count/mismatch: Row 2 makes 7 sc and 5 ch-1 sps, but 8 and 6 are stated';

  test('is told once where the next rows are meant for what is stated', () => {
    expect(
      said(
        `${mesh}Row 3: Ch 1, sc in each sc and in each ch-1 sp across, turn. (14 sc)\nRow 4: Ch 1, sc in next 14 sts, turn. (14 sc)\nRow 5: Ch 1, sc in next 14 sts, turn. (13 sc)`,
      ),
    ).toEqual([
      wrong,
      'row/hangs-on: Row 3 could not be checked: it hangs on Row 2',
      'count/mismatch: Row 5 makes 14 sc, but 13 is stated',
    ]);
  });

  test('leaves faults that do not follow from it told', () => {
    expect(said(`${mesh}Row 3: Ch 1, sc in each sc and in each ch-1 sp across, turn. (11 sc)`)).toEqual([
      wrong,
      'count/mismatch: Row 3 makes 12 sc, but 11 is stated',
    ]);
    expect(
      said(
        `${mesh}Row 3: Ch 1, sc in each sc and in each ch-1 sp across, turn. (12 sc)\nRow 4: Ch 1, sc in next 11 sts, turn.`,
      ),
    ).toEqual([wrong, 'row/unworked: Row 4 leaves 1 of the 12 stitches below unworked']);
  });
});
