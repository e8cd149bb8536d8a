/** Pieces that go on from the one before without a word of it: round its row ends, beside what a front left, behind a seam. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const mitten = (thumb: string, hand = '1 sc in each row end around the cuff') =>
  `Mitten\nUS terms\nHook: 5 mm\n\nCuff\nCh 9.\nRow 1 - Sc in 2nd ch from hook and in each ch across, turn. 8 sc.\nRow 2 - Ch 1, sc blo in each st across, turn. 8 sc.\nRows 3-28 - Rep Row 2.\nBring the short ends together and sl st through both. Turn the cuff so the seam is inside.\n\nHand\nRnd 1 - Ch 1, ${hand}. Do not join. 28 sc.\nRnd 2 - Sc in first 2 sts, ch 5, sk next 5 sts for the thumb, sc in next 21 sts. 23 sc and 5 ch.\nRnd 3 - Sc in each sc and in each ch around. 28 sc.\nCut yarn.\n\nThumb\nRnd 1 - ${thumb}\nRnd 2 - Sc in each st around. 12 sc.\nCut yarn.\n`;
const THUMB =
  'Join yarn in first skipped st, ch 1, sc in each of the 5 skipped sts, 1 sc in the corner, sc in the underside of each of the 5 ch, 1 sc in the corner. Do not join. 12 sc.';

describe('a mitten on its cuff', () => {
  test('goes round the row ends, and its thumb round the hole', () => {
    expect(workedText(mitten(THUMB)).codes).toEqual([]);
  });
  test.each([
    [THUMB.replace('each of the 5 ch', 'each of the 4 ch')],
    [THUMB.replace(', 1 sc in the corner. Do', '. Do')],
    [THUMB.replace('1 sc in the corner, sc', '2 sc in the corner, sc')],
    [
      THUMB.replace(
        'Join yarn in first skipped st, ch 1, sc',
        'Join yarn in first skipped st, ch 1, 1 sc in the corner, sc',
      ),
    ],
  ])('%s: told', (thumb) => expect(workedText(mitten(thumb)).codes).not.toEqual([]));
  test('and another number of row ends is told', () =>
    expect(workedText(mitten(THUMB).replace('28 sc.\nRnd 2', '27 sc.\nRnd 2')).codes).toContain(
      'count/mismatch',
    ));
});

describe('a back beside the front that left its stitches', () => {
  const cardigan = (miss: string) =>
    `Cardigan\nUK terms\n\nBODY\nMake 42 ch.\nRow 1 (RS): 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 41 dc.\nRow 2: 1 ch, 1 dc in each dc to end, turn. 41 dc.\n\nRIGHT FRONT\nRow 1 (RS): 1 ch, 1 dc in each of first 9 sts, turn. Leave remaining sts. 9 dc.\nFasten off.\n\nBACK\nWith RS facing, ${miss} and rejoin yarn to next st.\nRow 1 (RS): 1 ch, 1 dc in same st and in each of next 18 sts, turn. Leave remaining sts. 19 dc.\nFasten off.\n\nLEFT FRONT\nWith RS facing, miss 2 sts for underarm and rejoin yarn to next st.\nRow 1 (RS): 1 ch, 1 dc in same st and in each st to end, turn. 9 dc.\nFasten off.\n`;
  test.each([
    'miss 2 sts of last row of body for underarm',
    'miss next 2 sts for underarm',
    'miss 2 sts of the body',
  ])('%s', (miss) => {
    const text = cardigan(miss);
    expect(transcribe({ file: 'c.txt', text }).parts.map(({ onto }) => onto)).toEqual([
      null,
      'Body',
      'Body',
      'Body',
    ]);
    expect(workedText(text).codes).toEqual([]);
    expect(workedText(cardigan(miss.replace('2 sts', '3 sts'))).codes).toContain('count/mismatch');
  });
});

test('a back whose first row turns without a word of what it leaves, before a left front beside it', () => {
  const cardigan = (n: number) =>
    `Cardigan\nUK terms\n\nBODY\nMake 42 ch.\nRow 1 (RS): 1 dc in 2nd ch from hook, 1 dc in each ch to end, turn. 41 dc.\nRow 2: 1 ch, 1 dc in each dc to end, turn. 41 dc.\n\nRIGHT FRONT\nRow 1 (RS): 1 ch, 1 dc in each of first 9 sts, turn. Leave remaining sts. 9 dc.\nFasten off.\n\nBACK\nWith RS facing, miss 2 sts for underarm and rejoin yarn to next st.\nRow 1 (RS): 1 ch, 1 dc in same st and in each of next ${n} sts, turn. 19 dc.\nFasten off.\n\nLEFT FRONT\nWith RS facing, miss 2 sts for underarm and rejoin yarn to next st.\nRow 1 (RS): 1 ch, 1 dc in same st and in each st to end, turn. 9 dc.\nFasten off.\n\nBAND\nRow 1: With RS facing, rejoin yarn at lower edge of right front, 1 ch, work dc evenly up right front, 3 dc in corner, dc evenly round neck, 3 dc in corner, dc evenly down left front, turn. Work the same number of dc on both fronts.\n`;
  expect(workedText(cardigan(18)).codes.filter((code) => code !== 'count/not-checked')).toEqual([]);
  expect(workedText(cardigan(17)).codes).toContain('count/mismatch');
});

describe('a heel closed with slip stitches on the way', () => {
  const slipper = (seam: string) =>
    `Slipper\nUK terms\nHook: 5 mm\n\nFoot\nRound 1: 6 dc into a magic ring. (6)\nRound 2: 2 dc in each st. (12)\nRow 1: 1 dc in each of next 8 sts, turn. Leave the other 4 sts for the instep. (8)\nRows 2-6: 1 ch, 1 dc in each st to end, turn. (8)\nDo not fasten off. ${seam} Fasten off.\nAnkle\nRound 1: Join yarn at the heel seam, 1 ch, work 6 dc along the row ends of the first side, 1 dc in each of the 4 instep sts, 6 dc along the row ends of the second side, ss to first dc. (16)\n`;
  test.each([
    'Fold the last row in half with right sides together and join the heel with 4 ss through both thicknesses.',
    'Fold in half and ss through both layers.',
  ])('%s', (seam) => {
    expect(workedText(slipper(seam)).codes.filter((code) => code !== 'text/assembly')).toEqual([]);
    expect(workedText(slipper(seam).replace('(16)', '(17)')).codes).toContain('count/mismatch');
    expect(workedText(slipper(seam).replace('the 4 instep', 'the 5 instep')).codes).not.toEqual([]);
  });
  test('what is worked through both is no seam alone', () =>
    expect(workedText(slipper('Fold in half and work 1 dc in each st through both layers.')).codes).toContain(
      'text/not-worked',
    ));
});
