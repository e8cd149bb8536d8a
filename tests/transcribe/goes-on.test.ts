/** Pieces that are still on the hook where the next heading stands, and numbers for the sizes that a heading names. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const MITT = `Plain Mitt
US terms
Sizes: Child (Woman, Man)

CUFF
Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch to end. Turn. 5 sc.
Row 2: Ch 1. Working in BLO, sc in each sc to end. Turn. 5 sc.
Rep Row 2 until 8 (12, 16) rows have been worked. Do not fasten off.

HAND
Rnd 1: Ch 1. Sc in each row end around. 8 (12, 16) sc.

Woman and Man only:
Rnd 2: Sc in next 5 (7) sc. 2 sc in each of next 2 sc. Sc in last 5 (7) sc. 14 (18) sc.

All sizes:
Next rnd: Sc in next 2 sc. Ch 2. Skip next 2 sc. Sc in each sc to end.
Next rnd: Sc in each sc and in each of 2 ch around. 8 (14, 18) sc.

Shape top:
Next rnd: *Sc2tog. Rep from * around. 4 (7, 9) sts.
Fasten off.
`;

const partsOf = (text: string) =>
  transcribe({ file: 'mitt.txt', text }).parts.map(({ name, onto }) => [name, onto]);

test('a cuff that is not fastened off goes on as the hand, and the hand as its top', () => {
  expect(partsOf(MITT)).toEqual([
    ['Cuff', null],
    ['Hand', 'Cuff'],
  ]);
  const { codes, rows } = workedText(MITT);
  expect(codes).toEqual([]);
  expect(rows.map((size) => size.at(-1))).toEqual(['Next rnd: 4', 'Next rnd: 7', 'Next rnd: 9']);
});

test('one that is fastened off does not', () => {
  expect(partsOf(MITT.replace('Do not fasten off', 'Fasten off'))).toContainEqual(['Hand', null]);
});

describe('told where it is wrong:', () => {
  test.each([
    ['14 (18) sc', '14 (20) sc', 'count/mismatch'],
    ['next 5 (7) sc', 'next 5 (7, 9) sc', 'row/too-few'],
    ['next 5 (7) sc', 'next 5 (7, 9, 11) sc', 'size/list-length'],
    ['each of 2 ch', 'each of 3 ch', 'place/not-there'],
    ['4 (7, 9) sts', '4 (7, 8) sts', 'count/mismatch'],
    ['8 (12, 16) sc.', '9 (12, 16) sc.', 'count/mismatch'],
  ])('%s, %s', (right, wrong, code) => {
    expect(workedText(MITT.replace(right, wrong)).codes).toContain(code);
  });
});

describe('round the opening of a thumb', () => {
  const THUMB = `${MITT}
THUMB
Rnd 1: Join yarn with sl st in first of 2 ch at thumb opening. Ch 1. Sc in each of 2 ch. Sc in each of 2 skipped sc. 4 sc.
Rnd 2: Sc in each sc around. 4 sc.
Fasten off.
`;

  test('the chains and the stitches that were skipped are worked', () => {
    const { codes, rows } = workedText(THUMB);
    expect(codes).toEqual([]);
    expect(rows.map((size) => size.at(-1))).toEqual(['Rnd 2: 4', 'Rnd 2: 4', 'Rnd 2: 4']);
  });

  test.each([
    ['each of 2 skipped sc', 'each of 1 skipped sc', 'row/unworked'],
    ['each of 2 skipped sc', 'each of 3 skipped sc', 'row/used-up'],
    ['Ch 1. Sc in each of 2 ch.', 'Ch 1.', 'count/mismatch'],
    ['skipped sc. 4 sc', 'skipped sc. 5 sc', 'count/mismatch'],
    ['Ch 2. Skip next 2 sc. Sc in each', 'Sc in each', 'place/no-edge'],
  ])('%s, %s', (right, wrong, code) => {
    expect(workedText(THUMB.replace(right, wrong)).codes).toContain(code);
  });

  const worked = (join: string, rnd: string) =>
    workedText(`${MITT}\nTHUMB\n${join}\nRnd 1: Ch 1, ${rnd}, join. 4 sc.\nFasten off.\n`);

  test.each([
    [
      'Join yarn with a sl st in the ch-2 at the thumb opening.',
      '2 sc in the ch-2 space, sc in each of the 2 skipped sts',
    ],
    ['Join yarn with sl st in first ch of thumb opening.', '2 sc in ch-2 sp, sc in each of 2 skipped sc'],
    [
      'Rejoin yarn in first of the 2 skipped sts.',
      'sc in each of 2 skipped sts, sc in each of 2 ch at inner edge',
    ],
    [
      'Join yarn with sl st in first skipped sc at thumb opening.',
      'sc in each of 2 skipped sc, sc in each of 2 ch',
    ],
  ])('%s %s', (join, rnd) => {
    const { codes, rows } = worked(join, rnd);
    expect(codes).toEqual([]);
    expect(rows.map((size) => size.at(-1))).toEqual(['Rnd 1: 4', 'Rnd 1: 4', 'Rnd 1: 4']);
  });

  test.each([
    [
      'Join yarn in first of the 3 skipped sts.',
      'sc in each of 2 skipped sts, sc in each of 2 ch',
      'place/not-there',
    ],
    ['Join yarn in first of the 2 skipped sts.', 'sc in each of 3 skipped sts, sc in next ch', 'row/used-up'],
    ['Join yarn in first of the 2 skipped sts.', 'sc in each of 2 skipped sts', 'row/unworked'],
    [
      'Join yarn with sl st in the ch-3 at the thumb opening.',
      '2 sc in ch-2 sp, sc in each of 2 skipped sc',
      'place/not-there',
    ],
    [
      'Join yarn with sl st in the ch-2 at the thumb opening.',
      '2 sc in ch-3 sp, sc in each of 2 skipped sc',
      'place/not-there',
    ],
    [
      'Join yarn with sl st in the ch-2 at the thumb opening.',
      '3 sc in ch-2 sp, sc in each of 2 skipped sc',
      'count/mismatch',
    ],
  ])('%s %s: %s', (join, rnd, code) => {
    expect(worked(join, rnd).codes).toContain(code);
  });
});

describe('a count that is missed', () => {
  const rows = (last: string) => `Strip
US terms

Ch 11.
Row 1: Sc in 2nd ch from hook and in each ch across, turn. 10 sc.
Row 2: Ch 1, 2 sc in first st, sc in each st across, turn. 12 sc.
Row 3: Ch 1, sc in each st across, turn.
Row 4: Ch 1, sc in first 6 sts, sc in last 6 sts, turn. ${last} sc.
`;

  test('is in doubt over the rows that work all there is, until another is stated', () => {
    expect(workedText(rows('12')).codes).toEqual(['count/mismatch']);
  });

  test('does not hide one that fits neither', () => {
    expect(workedText(rows('13')).codes).toEqual(['count/mismatch', 'row/too-few']);
  });
});
