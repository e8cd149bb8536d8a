import { describe, expect, test } from 'vitest';
import { codesOf, fabricOf, faultsOf, rowOf, tallyOf, workPiece } from './work-text.ts';

/** What a row makes, whatever the text leaves open. */
function made(work: string, row: string): string {
  const [fabric] = workPiece({ work }).fabrics;
  if (fabric === undefined) throw new Error('not worked');
  return tallyOf(fabric, row);
}

describe('chains of which it is not said whether they count', () => {
  test.each([
    // Habits of the trade: 3 for a dc counts, 1 for a sc never, 2 for a hdc varies and is taken not to.
    ['Ch 26.\nRow 1: Dc in 4th ch from hook and in each ch across.', '24 dc'],
    ['Ch 26.\nRow 1: Dc in 4th ch from hook and in each ch across. (24 dc)', '24 dc'],
    ['Ch 26.\nRow 1: Dc in 4th ch from hook and in each ch across. (23 dc)', '23 dc'],
    ['Ch 25.\nRow 1: Hdc in 3rd ch from hook and in each ch across.', '23 hdc'],
    ['Ch 25.\nRow 1: Hdc in 3rd ch from hook and in each ch across. (24 hdc)', '24 hdc'],
    ['Ch 26.\nRow 1: Hdc in 3rd ch from hook and in each ch across. (24 hdc)', '24 hdc'],
    ['Ch 27.\nRow 1: Tr in 5th ch from hook and in each ch across. (24 tr)', '24 tr'],
  ])('%j makes %s, as the count decides where there is one', (work, expected) => {
    expect(made(work, 'Row 1')).toBe(expected);
    expect(codesOf(work)).toEqual(['chain/unstated']);
  });

  test('before a sc nothing is open: it never counts', () => {
    expect(codesOf('Ch 25.\nRow 1: Sc in 2nd ch from hook and in each ch across. (24 sc)')).toEqual([]);
    expect(codesOf('Ch 25.\nRow 1: Sc in 2nd ch from hook and in each ch across. (25 sc)')).toEqual([
      'count/mismatch',
    ]);
  });

  const onSix = (row: string) => `Ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: ${row}`;
  test.each([
    ['Ch 3, dc in next 5 sts.', '6 dc', 'five more come out only if the chain counts'],
    ['Ch 3, dc in next 6 sts.', '6 dc', 'six come out only if it does not'],
    ['Ch 3, dc in each st across. (6 dc)', '6 dc', 'both come out: habit decides'],
    ['Ch 2, hdc in next 5 sts.', '6 hdc', 'also against the habit'],
    ['Ch 2, hdc in next 6 sts.', '6 hdc', 'and with it'],
    ['Ch 2, dc in next 6 sts.', '6 dc', 'a chain too short for the stitch does not count'],
  ])('%s: %s', (row, expected) => {
    expect(made(onSix(row), 'Row 2')).toBe(expected);
    expect(codesOf(onSix(row)).filter((code) => code !== 'chain/unstated')).toEqual([]);
  });

  test('what a chain is said to stand for is what it counts as', () => {
    const rows = (said: string): string =>
      `Ch 7.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nNote: Each row begins with 3 ch, ${said}.\nRow 2: Ch 3, dc in next 5 sts.`;
    expect(codesOf(rows('which stand for 1 dc'))).toEqual([]);
    expect(codesOf(rows('which stand up at its side'))).toEqual(['chain/unstated']);
    expect(codesOf(rows('which stand for 1 dc').replace('next 5', 'next 6'))).toContain('row/used-up');
  });

  test('what was taken is told once for each length of chain', () => {
    const text = onSix(
      'Ch 3, dc in each st across.\nRow 3: Ch 3, dc in each st across.\nRow 4: Ch 4, tr in each st across.',
    );
    expect(faultsOf(text).map((fault) => fault.split(';')[0])).toEqual([
      'chain/unstated: it is not said whether ch 3 counts as a dc',
      'chain/unstated: it is not said whether ch 4 counts as a tr',
    ]);
  });
});

describe('"rep from * 5 times" in its two senses', () => {
  const onSts = (n: number, repeat: string, count = '') =>
    `Ch ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. (${n} sc)\nRow 2: Ch 1, ${repeat}${count}`;
  const five = '*sc in next 2 sts, 2 sc in next st; rep from * 5 times.';
  test('5 in all where the row below has five repeats’ stitches', () => {
    expect(tallyOf(fabricOf(onSts(15, five)), 'Row 2')).toBe('20 sc');
  });
  test('5 more where it has six', () => {
    expect(tallyOf(fabricOf(onSts(18, five, ' (24 sc)')), 'Row 2')).toBe('24 sc');
  });
  test('what follows the repeat decides as well', () => {
    const text = onSts(17, '*sc in next 2 sts, 2 sc in next st; rep from * 5 times, sc in next 2 sts.');
    expect(tallyOf(fabricOf(text), 'Row 2')).toBe('22 sc');
  });
  test('into a ring only the count can decide', () => {
    const ring = (count: string) =>
      `Rnd 1: Ch 1, *2 sc in magic ring, ch 2; rep from * 3 times, join with sl st in first sc.${count}`;
    expect(rowOf(fabricOf(ring(' (8 sc)')), 'Rnd 1').stitches).toBe(8);
    expect(rowOf(fabricOf(ring(' (6 sc)')), 'Rnd 1').stitches).toBe(6);
    expect(codesOf(ring(''))).toEqual(['repeat/two-senses']);
  });
  test('neither comes out: both are told', () => {
    expect(faultsOf(onSts(16, five))).toEqual([
      'repeat/two-senses: "rep from * 5 times" in Row 2 can mean 5 or 6 in all, and neither comes out',
    ]);
  });
  test('"5 more times" and brackets "5 times" have one sense each', () => {
    const more = five.replace('5 times', '5 more times');
    const bracket = '[sc in next 2 sts, 2 sc in next st] 5 times.';
    expect(tallyOf(fabricOf(onSts(18, more)), 'Row 2')).toBe('24 sc');
    expect(codesOf(onSts(15, more))).toEqual(['row/used-up']);
    expect(tallyOf(fabricOf(onSts(15, bracket)), 'Row 2')).toBe('20 sc');
    expect(codesOf(onSts(18, bracket))).toEqual(['row/unworked']);
  });
});

describe('"across" leaves room for what follows it', () => {
  const row = (n: number, text: string) =>
    `Ch ${n + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across.\nRow 2: Ch 1, ${text}`;
  test.each([
    [21, 'sc in first st, *ch 1, sk next st, sc in next st; rep from * across.', '11 sc, 10 ch-1 sp'],
    [25, '*ch 1, sk next st, sc in next st; rep from * across, sc in last st.', '13 sc, 12 ch-1 sp'],
    [
      24,
      '*sc in next st, ch 1, sk next st; rep from * across to last 2 sts, dc in last 2 sts.',
      '11 sc, 2 dc, 11 ch-1 sp',
    ],
    [24, '[sc in next 4 sts, sc2tog] across.', '16 sc, 4 sc2tog'],
    [
      31,
      '*dc in next 3 sts, ch 2, sk next 2 sts**, tr in next st; rep from * across, ending last rep at **, dc in last 2 sts.',
      '17 dc, 4 tr, 5 ch-2 sp',
    ],
    [14, '*sc in next st; rep from * across, dc in last 9 sts.', '5 sc, 9 dc'],
  ])('over %i sts: %s', (n, text, expected) => {
    expect(tallyOf(fabricOf(row(n, text)), 'Row 2')).toBe(expected);
  });

  test.each([
    [
      24,
      '*sc in next st, ch 1, sk next st; rep from * across, sc in last st.',
      'it uses 2 stitches, so 11 times is 22, and with 1 for what follows 23 of 24, which leaves 1 over',
    ],
    [
      25,
      '*sc in next st, ch 1, sk next st; rep from * across.',
      'it uses 2 stitches, so 12 times is 24 of 25, which leaves 1 over',
    ],
    [
      25,
      '*sc in next st, ch 1, sk next st; rep from * to last 2 sts, sc in last 2 sts.',
      'it uses 2 stitches, so 11 times is 22 of the 23 before the last 2, which leaves 1 over',
    ],
    [
      32,
      '*dc in next 3 sts, ch 2, sk next 2 sts**, tr in next st; rep from * across, ending last rep at **, dc in last 2 sts.',
      'it uses 6 stitches, the last time 5, so 5 times is 29, and with 2 for what follows 31 of 32, which leaves 1 over',
    ],
  ])('over %i sts: %s', (n, text, expected) => {
    expect(faultsOf(row(n, text))).toEqual([
      `repeat/uneven: the repeat in Row 2 does not come out even: ${expected}`,
    ]);
  });

  test('a repeat that stops in the middle of what it works is not taken to be done', () => {
    const round = (row2: string) =>
      `Rnd 1: *2 sc in magic ring, ch 2; rep from * 3 more times, join with sl st in first sc. (8 sc, 4 ch-2 sps)\nRnd 2: Sl st in next sc and in next ch-2 sp, ch 3 (counts as dc), dc in same sp, ${row2}`;
    expect(
      codesOf(round('[dc in next 2 sc, 2 dc in next sp] around, join with sl st in top of beg ch-3.')),
    ).toEqual(['repeat/uneven']);
    expect(
      codesOf(
        round(
          '[dc in next 2 sc, 2 dc in next sp] around, dc in next 2 sc, join with sl st in top of beg ch-3. (16 dc)',
        ),
      ),
    ).toEqual([]);
    // Clusters in spaces pass over the stitches between them, at the end as anywhere.
    expect(codesOf(round('[3 dc in next sp] around, join with sl st in top of beg ch-3. (11 dc)'))).toEqual(
      [],
    );
  });
});
