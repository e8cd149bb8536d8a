/** What is said at the end of a row: counts with talk behind them, rows that lose blocks, a row as another but not turned; an old list's own picot. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const work = (...rows: readonly string[]) =>
  workedText(['Sample', 'US terms.', 'Yarn: cotton', '', 'PIECE', ...rows].join('\n'));
const codes = (...rows: readonly string[]) => work(...rows).codes.filter((code) => !code.startsWith('text/'));

describe('a count in a sentence, with talk behind it', () => {
  const first = (said: string) =>
    codes('Ch 21.', `Row 1: Sc in 2nd ch from hook and in each ch across. Turn. ${said}`);

  test.each([
    "That's 20 sc, not very impressive yet.",
    'So that’s 20 sc, but it grows quickly.',
    'You should have 20 sc, nice and even.',
    "When you stop after Row 1 you'll have 20 sc.",
    'So once you have finished Row 1 you have 20 sc.',
    'So when you are done with Row 1 there are 20 sc.',
  ])('%s', (said) => {
    expect(first(said)).toEqual([]);
    expect(first(said.replace('20', '21'))).toContain('count/mismatch');
  });

  test('behind it nothing is lost that may be work', () => {
    expect(first("That's 20 sc, now sc in each st.")).not.toEqual([]);
    expect(first("That's 20 sc, 5 more.")).not.toEqual([]);
  });

  const bag = (said: string) =>
    codes(
      'Rnd 1: 8 sc in magic ring, join with sl st in first sc. (8 sc)',
      'Rnd 2: Ch 1, 2 sc in each sc around, join with sl st in first sc. (16 sc)',
      `Rnd 3: Ch 1, sc in first 4 sc, ch 20, skip 4 sc, sc in next 4 sc, ch 20, skip 4 sc, join with sl st in first sc. ${said}`,
    );

  test.each(["So that's 8 sc and two big 20-chain loops.", 'That makes 8 sc and 2 long ch-20 loops.'])(
    '%s',
    (said) => {
      expect(bag(said)).toEqual([]);
      expect(bag(said.replace('8 sc', '9 sc'))).toContain('count/mismatch');
      expect(bag(said.replace(/20/, '25'))).toContain('count/mismatch');
      expect(bag(said.replace(/two|2 long/, '3'))).toContain('count/mismatch');
    },
  );
});

describe('rows that lose as many each', () => {
  const rows = (said: string) =>
    codes(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
      'Row 2: Ch 1, sc2tog, sc in each st across, turn. (9 sc)',
      `Rows 3-6: Same as Row 2, ${said}`,
    );

  test.each([
    "1 sc fewer every row, until there's 5 sc left.",
    'with one st less in each row, until 5 sc remain.',
    'one st fewer each row, until only 5 sc left.',
    'until you have 5 sc.',
    'ending with 5 sc.',
  ])('%s', (said) => {
    expect(rows(said)).toEqual([]);
    expect(rows(said.replace('5 sc', '4 sc'))).toContain('count/mismatch');
  });

  test('another number each row is none of theirs', () => {
    expect(rows('two sts fewer every row, ending with 5 sc.')).not.toEqual([]);
    expect(rows('one st more every row, ending with 5 sc.')).not.toEqual([]);
  });
});

describe('a row as another, but not turned', () => {
  const rows = (said: string, next = 'Row 4 (RS): Ch 1, sc in each sc across. (10 sc)') =>
    codes(
      'Ch 11.',
      'Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
      'Row 2: Ch 1, sc in each sc across, turn. (10 sc)',
      `Row 3 (RS): As Row 2${said}. (10 sc)`,
      next,
    );

  test.each([', but do not turn', ", but don't turn", ' but without turning', ', but omit the turn'])(
    '%s',
    (said) => {
      expect(rows(said)).toEqual([]);
      expect(rows(said, 'Row 4 (WS): Ch 1, sc in each sc across. (10 sc)')).not.toEqual([]);
    },
  );

  test('another change of it is not passed over', () => {
    expect(rows(', but work 2 sc in the first sc')).not.toEqual([]);
  });
});

describe('an abbreviation of her own, described in the list', () => {
  const old = (count: string, letter = 'p') =>
    workedText(
      `EDGING

English terms are used.

Abbreviations.—Ch., chain; d.c., double crochet; p., picot.

To make a picot: 3 ch., then a slip stitch into the first of them.

THE EDGING

Commence with 11 ch.

1st row.—1 d.c. in the second ch. from the hook, 1 d.c. in each ch. to end, turn. (10 d.c.)

2nd row.—1 ch., * 1 d.c. in the next d.c., 1 ${letter}., 1 d.c. in the next d.c.; repeat from * to end. Fasten off. (10 d.c., ${count} p.)
`,
    ).codes;

  test('is that stitch', () => {
    expect(old('5')).not.toContain('special/undefined');
    expect(old('5')).not.toContain('count/mismatch');
    expect(old('6')).toContain('count/mismatch');
    expect(old('5', 'q')).toContain('word/unknown');
  });
});

test('what is not worked is told to the maker', () => {
  const row = (said: string) =>
    codes('Ch 11.', `Row 1: ${said}Sc in 2nd ch from hook and in each ch across. (10 sc)`);
  expect(row("Don't ch 6 this time. ")).toEqual([]);
  expect(row('Do not ch 6 here. ')).toEqual([]);
  expect(row('Leave the yarn on, we need it. ')).toEqual([]);
  expect(row("Don't sc in next st. ")).not.toEqual([]);
  expect(row('Leave the yarn on, we sc in next ch. ')).not.toEqual([]);
});

test('numbers of rows before how often they are repeated are no comparison', () => {
  const rows = (said: string) =>
    work(
      'Ch 11.',
      'Row 1: Sc in 2nd ch from hook and in each ch across, turn. (10 sc)',
      'Row 2: Ch 1, sc in each st across, turn. (10 sc)',
      `Rows 3-6: ${said}`,
    );
  for (const said of ['Rep Rows 1 and 2 2 more times.', 'Rep Row 2 4 more times.'])
    expect(rows(said).codes.filter((code) => code.startsWith('phrase/'))).toEqual([]);
});
