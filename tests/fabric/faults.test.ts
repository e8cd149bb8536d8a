import { describe, expect, test } from 'vitest';
import { codesOf, faultsOf, patternText, workPiece } from './work-text.ts';

const HEAD = 'Ch 13.\nRow 1: Sc in 2nd ch from hook and in each ch across. (12 sc)\n';

describe('one fault is told once, and not again by what stands on it', () => {
  test.each([
    [
      'a row that cannot be worked, with rows after it',
      'Row 2: Ch 1, sc in next 13 sts.\nRow 3: Ch 1, sc in each st across.\nRow 4: Ch 1, sc in next 12 sts.',
      ['row/used-up', 'row/hangs-on'],
    ],
    [
      'a row that cannot be worked but states its count: the others are checked against that',
      'Row 2: Ch 1, sc in next 13 sts. (12 sc)\nRow 3: Ch 1, sc in next 12 sts. (12 sc)\nRow 4: Ch 1, sc in next 11 sts.',
      ['row/used-up', 'row/unworked'],
    ],
    [
      'a wrong count, and rows that are right for what was stated',
      'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st. (12 sc)\nRow 3: Ch 1, sc in next 12 sts. (12 sc)',
      ['count/mismatch'],
    ],
    [
      'a wrong count, and rows that are right for what was made',
      'Row 2: Ch 1, 2 sc in first st, sc in each st to last st, 2 sc in last st. (12 sc)\nRow 3: Ch 1, sc in next 14 sts. (14 sc)',
      ['count/mismatch'],
    ],
    [
      'a wrong count behind a repeat and its end, which is worked no otherwise for that',
      'Row 2: Ch 1, 2 sc in first st, sc in next 11 sts. (13 sc)\nRow 3: Ch 1, *sc in next st, ch 1, sk next st; rep from * across, sc in last st. (8 sc, 6 ch-1 sps)\nRow 4: Ch 1, sc in each sc and in each ch-1 sp across. (13 sc)',
      ['count/mismatch'],
    ],
    [
      'a row repeated ten times',
      'Row 2: Ch 1, sc in next 11 sts, 2 sc in next st. (12 sc)\nRows 3-12: Rep Row 2.',
      ['count/mismatch'],
    ],
    [
      'a word that is not known',
      'Row 2: Ch 1, scc in each st across.\nRow 3: Ch 1, sc in next 12 sts.',
      ['word/unknown', 'row/hangs-on'],
    ],
  ])('%s', (_what, rows, codes) => {
    expect(codesOf(HEAD + rows)).toEqual(codes);
  });

  test('a border on a piece that cannot be worked is not blamed', () => {
    const border =
      'Rnd 1: Ch 1, sc in each st across, work 5 sc evenly along row ends, join with sl st in first sc.';
    expect(codesOf({ work: `${HEAD}Row 2: Ch 1, sc in next 13 sts.`, border })).toEqual(['row/used-up']);
  });
});

describe('faults that have nothing to do with one another are all told', () => {
  test('two wrong counts', () => {
    expect(
      codesOf(
        `${HEAD}Row 2: Ch 1, sc in each st across. (11 sc)\nRow 3: Ch 1, sc in each st across. (12 sc)\nRow 4: Ch 1, sc in next 11 sts, 2 sc in last st. (12 sc)`,
      ),
    ).toEqual(['count/mismatch', 'count/mismatch']);
  });

  test('a wrong word and a wrong number in rows far apart, and a yarn nobody uses', () => {
    expect(
      codesOf({
        work: `${HEAD}Row 2: Ch 1, sc in each st across. (11 sc)\nRow 3: Ch 1, htr in each st across.\nRow 4: Ch 1, [sc in next st, ch 1.`,
        yarns: 'A',
      }),
    ).toEqual(expect.arrayContaining(['word/other-terms', 'bracket/unclosed', 'count/mismatch']));
    expect(
      codesOf({ work: `${HEAD}Row 2: With A, ch 1, sc in each st across. (11 sc)`, yarns: 'AB' }),
    ).toEqual(['count/mismatch', 'yarn/unused']);
  });

  test('of a count of several things only those that are wrong', () => {
    expect(
      faultsOf(`${HEAD}Row 2: Ch 1, *sc in next st, ch 1, sk next st; rep from * across. (7 sc, 6 ch-1 sps)`),
    ).toEqual(['count/mismatch: Row 2 makes 6 sc, but 7 is stated']);
  });
});

describe('what is named has to be there', () => {
  test.each([
    [
      'Row 2: Ch 1, sc in next dc.',
      'place/not-there: Row 2 goes into the next dc, but what comes next is a sc',
    ],
    [
      'Row 2: Ch 1, sc in next ch-2 sp.',
      'row/used-up: Row 2 asks for another ch-2 sp, but the row below has none left',
    ],
    [
      'Row 2: Ch 1, sc in next 12 sts, sc in next st.',
      'row/used-up: Row 2 asks for another st, but the row below has none left',
    ],
    ['Row 2: Ch 1, sc in next 11 sts.', 'row/unworked: Row 2 leaves 1 of the 12 stitches below unworked'],
    [
      'Row 2: Ch 1, sc in next 9 sts, sc in last st.',
      'row/passed-over: Row 2 goes to the last st with 2 stitches before it unworked',
    ],
    ['Row 2: Ch 1, sc3tog over next 4 sts.', 'stitch/legs: sc3tog draws 3 together, but is worked over 4'],
    ['Rows 2-4: Rep Row 7.', 'row/no-such: Row 2 repeats Row 7, which is not written'],
    [
      'Row 2: Ch 1, sc in next 11 sts, 99999 sc in last st.',
      'size/too-large: Row 2 asks for 99,999 stitches in one place; 1,000 is the most',
    ],
    ['Row 3: Ch 1, sc in each st across.', 'row/out-of-order: Row 3 stands where Row 2 should be'],
    [
      'Row 2: Ch 1, *ch 2; rep from * across.',
      'repeat/endless: the repeat in Row 2 uses up nothing, so it would never come to an end',
    ],
  ])('%s', (row, fault) => {
    expect(faultsOf(HEAD + row)).toEqual([fault]);
  });

  test('words outside of rows are "this line"', () => {
    expect(faultsOf(`${HEAD}Ch 1, sc in next 11 sts.`)).toEqual([
      'row/unworked: this line leaves 1 of the 12 stitches below unworked',
    ]);
  });

  test('a slip stitch before the yarn is cut leaves the rest, but a row of them does not', () => {
    expect(faultsOf(`${HEAD}Sl st in next st, fasten off.`)).toEqual([]);
    expect(faultsOf(`${HEAD}Row 2: Sl st in next 11 sts, fasten off.`)).toEqual([
      'row/unworked: Row 2 leaves 1 of the 12 stitches below unworked',
    ]);
  });

  test.each([
    ['Row 2: Ch 1, sc in next 10 sts, hdc in last 4 sts.', 'goes into the last 4 sts, but only 2 are left'],
    ['Row 2: Ch 1, hdc in last 20 sts.', 'goes into the last 20 sts, but only 12 are left'],
    [
      'Row 2: Ch 1, sc in next 11 sts, hdc in each st to last 3 sts, sc in last st.',
      'goes on to the last 3 sts, but only 1 is left',
    ],
    ['Row 2: Ch 1, sc in next 12 sts, hdc in last 2 sts.', 'goes into the last 2 sts, but none is left'],
  ])('%s', (row, fault) => {
    expect(faultsOf(HEAD + row)).toEqual([`row/too-few: Row 2 ${fault}`]);
    // What comes out is no fault.
    expect(
      faultsOf(`${HEAD}Row 2: Ch 1, sc in next 9 sts, hdc in each st to last 3 sts, sc in last 3 sts.`),
    ).toEqual([]);
  });

  test('in UK terms it is told in UK terms', () => {
    const work =
      '13 ch.\nRow 1: Dc in 2nd ch from hook and in each ch across. (12 dc)\nRow 2: 1 ch, dc in next tr.';
    expect(faultsOf({ work, terms: 'UK' })).toEqual([
      'place/not-there: Row 2 goes into the next tr, but what comes next is a dc',
    ]);
  });

  test('each fault lies at the words it is about', () => {
    const piece = { work: `${HEAD}Row 2: Ch 1, sc in next 12 sts, sc in next st.` };
    const text = patternText(piece);
    const { diagnostics } = workPiece(piece);
    expect(diagnostics.map(({ span }) => text.slice(span.start, span.end))).toEqual(['in next st']);
  });
});

describe('hostile numbers end in a fault', () => {
  test.each([
    ['Ch 250000.\nRow 1: Sc in 2nd ch from hook and in each ch across.', 'number/too-large'],
    ['Ch 100000.\nRow 1: 99999 sc in 2nd ch from hook and in each ch across.', 'size/too-large'],
    [
      'Ch 3.\nRow 1: [[[[sc in 2nd ch from hook] 1000 times] 1000 times] 1000 times] 1000 times.',
      'size/too-large',
    ],
    [
      'Ch 3.\nRow 1: Sc in 2nd ch from hook, [[[[[ch 1] 1 times] 9999 times] 9999 times] 9999 times] 9 times, sc in next ch.',
      'size/too-large',
    ],
    [
      'Rnd 1: 100 sc in magic ring.\nRnd 2: 100 sc in each st around.\nRnd 3: 100 sc in each st around.',
      'size/too-large',
    ],
    [
      'Ch 3.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRows 2-9999: Rep Row 9998.',
      'row/no-such',
    ],
  ])('%s', (work, code) => {
    expect(codesOf(work).filter((each) => each !== 'row/hangs-on')).toEqual([code]);
  });

  test('two hundred rows, each repeating the one before it, are two hundred rows or a fault', () => {
    const rows = Array.from({ length: 200 }, (_, i) => `Row ${i + 3}: Rep Row ${i + 2}.`).join('\n');
    const work = `Ch 3.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, sc in each st across.\n${rows}`;
    const { fabrics, diagnostics } = workPiece({ work });
    if (diagnostics.length > 0) expect(codesOf(work)).toEqual(['row/no-such']);
    else expect(fabrics[0]?.rows).toHaveLength(203);
  });
});
