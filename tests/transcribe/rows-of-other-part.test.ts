/** Rows that are told as those of another piece; a neck between shoulders that begin with decreases; a border that names its edges. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const tee = (rows: string, changes: Readonly<Record<string, string>> = {}) => {
  const text = [
    'Tee',
    'Sizes: S (M)',
    'US terms. Ch 2 at the start of a row does not count as a st.',
    '',
    'BACK',
    'Ch 32 (36).',
    'Row 1 (RS): Hdc in 3rd ch from hook, hdc in each ch across. 30 (34) hdc',
    'Rows 2-6: Ch 2, turn, hdc in each st across. 30 (34) hdc',
    'Fasten off.',
    '',
    'FRONT',
    'Ch 32 (36).',
    rows,
    'Rows 5-6: Ch 2, turn, hdc in each st across. 30 (34) hdc',
    '',
    'Left Neck',
    'Row 1: Ch 2, turn, hdc in next 8 (9) sts, hdc2tog, leave the remaining sts unworked. 9 (10) sts',
    'Row 2: Ch 2, turn, hdc2tog, hdc in each st across. 8 (9) sts',
    'Fasten off.',
    '',
    'Right Neck',
    'With RS facing, skip next 10 (12) sts of the last full row and join yarn with sl st in next st.',
    'Row 1: Ch 2, starting in same st as joining, hdc2tog, hdc in each st across. 9 (10) sts',
    'Row 2: Ch 2, turn, hdc in each st to last 2 sts, hdc2tog. 8 (9) sts',
    'Fasten off.',
  ].join('\n');
  return workedText(Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text));
};

describe('rows told as those of the back', () => {
  test.each([
    'Rows 1-4: Work same as Back. 30 (34) hdc',
    'Rows 1 to 4: Work as for Back. (30 (34) hdc)',
    'Rows 1–4: Same as Rows 1–4 of Back. 30 (34) hdc',
    'Rows 1 through 4: Repeat Rows 1 through 4 of the Back.',
    'Rows 1 and 2: Work same as Back. 30 (34) hdc\nRows 3 and 4: As Rows 2 and 3 of Back. 30 (34) hdc',
  ])('%s', (rows) => {
    const { codes, rows: worked } = tee(rows);
    expect(codes).toEqual([]);
    expect(worked.map((size) => size.slice(8, 14))).toEqual(
      [30, 34].map((n) => [1, 2, 3, 4, 5, 6].map((row) => `Row ${row}: ${n}`)),
    );
    if (rows.includes('34) hdc'))
      expect(tee(rows.replace('34) hdc', '35) hdc')).codes).toContain('count/mismatch');
    expect(tee(rows, { 'FRONT\nCh 32': 'FRONT\nCh 30' }).codes).toContain('count/mismatch');
  });

  test.each([
    'Rows 1-4: Work same as Sleeve. 30 (34) hdc',
    'Rows 1-4: As Rows 6-9 of Back. 30 (34) hdc',
    'Rows 1-4: As Rows 1-3 of Back.',
  ])('what the back has not is not made up: %s', (rows) =>
    expect(tee(rows).codes).toContain('phrase/unread'),
  );
});

test('a shoulder that begins with a decrease stands beside one that ended with one', () => {
  const rows = 'Rows 1-4: Work same as Back. 30 (34) hdc';
  expect(tee(rows, { 'skip next 10': 'skip next 9' }).codes).toContain('count/mismatch');
  expect(tee(rows, { 'skip next 10': 'skip next 11' }).codes).toContain('count/mismatch');
  expect(tee(rows, { 'starting in same st as joining': 'starting in next st' }).codes).toContain(
    'phrase/unread',
  );
});

const mat = (border: string, changes: Readonly<Record<string, string>> = {}) => {
  const text = [
    'Mat',
    'UK terms. 1ch does not count as a stitch.',
    'Yarn A: slate',
    'Yarn B: chalk',
    '',
    'MAT',
    'Using yarn A, make 21ch.',
    'Row 1 (RS): 1dc in 2nd ch from hook, 1dc in each ch to end, turn. (20 dc)',
    'Rows 2-20: 1ch, 1dc in each dc to end, turn. (20 dc)',
    'Fasten off yarn A.',
    '',
    'BORDER',
    'With RS facing, join yarn B with ss to first st of Row 20.',
    `Round 1: 1ch, 3dc in same st, 1dc in each of next 18 sts, 3dc in last st, 19dc evenly along row ends, ${border}, 19dc evenly along row ends, ss to first dc. (86 dc)`,
    'Round 2: 1ss in each dc around. Fasten off. (86 ss)',
  ].join('\n');
  return workedText(Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text))
    .codes;
};

test.each([
  '3dc in first foundation ch, 1dc in each of next 18 ch, 3dc in last ch',
  '3dc in first ch of foundation, 1dc in each of next 18 ch, 3dc in last ch',
  '3dc into first base ch, 1dc in each of next 18 ch, 3dc in last ch',
])('%s', (border) => {
  expect(mat(border)).toEqual([]);
  expect(mat(border, { '18 ch': '17 ch' })).not.toEqual([]);
  expect(mat(border, { '(86 dc)': '(84 dc)' })).toContain('count/mismatch');
  expect(mat(border, { 'of Row 20.': 'of Row 19.' })).toContain('row/used-up');
});

test('the foundation chain may be named where row 1 goes into it', () => {
  const cloth = (ch: number) =>
    workedText(
      `Cloth\nUS terms\n\nCh ${ch}.\nRow 1: Sc in 2nd ch from hook, sc in next 3 foundation ch, sc in each foundation ch across. (20 sc)`,
    ).codes;
  expect(cloth(21)).toEqual([]);
  expect(cloth(22)).toContain('count/mismatch');
});

describe('the first rows of another piece, by their numbers', () => {
  const baskets = (asks: string) =>
    workedText(
      `Baskets\nUS terms\nHook: 5 mm\n\nLARGE BASKET\nWorked in a spiral.\nRound 1: 6 sc in magic ring. (6 sc)\nRound 2: 2 sc in each st around. (12 sc)\nRounds 3-5: Sc in each st around. (12 sc)\nFasten off.\n\nSMALL BASKET\n${asks}\nRound 4: Sc in BLO of each st around. (12 sc)\nFasten off.\n`,
    );
  test.each([
    'Work Rounds 1 to 3 of the large basket = 12 sc',
    'Work Rounds 1-3 of Large Basket. (12 sc)',
    'Make Rounds 1-3 as for the large basket (12 sc)',
    'Repeat Rounds 1–3 from Large Basket.',
  ])('%s', (asks) => {
    const { codes, rows } = baskets(asks);
    expect(codes).toEqual([]);
    expect(rows[0]?.slice(5)).toEqual(['Round 1: 6', 'Round 2: 12', 'Round 3: 12', 'Round 4: 12']);
    if (asks.includes('12 sc'))
      expect(baskets(asks.replace('12 sc', '13 sc')).codes).toContain('count/mismatch');
  });

  test.each([
    'Work Rounds 1 to 6 of the large basket = 12 sc',
    'Work Rounds 1 to 3 of the tall basket = 12 sc',
  ])('not what is not there: %s', (asks) => expect(baskets(asks).codes).toContain('phrase/unread'));
});

test('rows of a piece told under headings of its own, each with its count behind a sign', () => {
  const baskets = (asks: string) =>
    workedText(
      `Baskets\nPattern: Wren Applegarth, Leeds\nUK terms\nHook: 5 mm\n\nLARGE BASKET\n\nBase\nRound 1 – 6 dc into a magic ring = 6 dc\nRound 2 – 2 dc in every st = 12 dc\nRound 3 – (1 dc in next st, 2 dc in next st) 6 times = 18 dc\n\nSides\nRound 4 – dc in every st = 18 dc\nFasten off.\n\nSMALL BASKET\n\n${asks}\nRound 4 – dc in every st = 18 dc\nFasten off.\n`,
    );
  const { codes, rows } = baskets('Work Rounds 1 to 3 of the large basket = 18 dc');
  expect(codes).toEqual([]);
  expect(rows[0]).toHaveLength(8);
  expect(baskets('Work Rounds 1 to 3 of the large basket = 19 dc').codes).toContain('count/mismatch');
});
