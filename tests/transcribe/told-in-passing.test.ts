/** What bloggers say in passing: other ways to begin, what a chain counts as, where a round joins, what a place just named is. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const BAG = [
  'Start with a magic ring (or chain 4 and join, whichever you like better).',
  'Round 1. Chain 3, that counts as a double crochet here and every other time, then put 11 double crochet into the ring. Slip stitch to the top of the chain 3. You have 12.',
  'Round 2. Chain 3, double crochet in that same stitch. Now 2 double crochet in every stitch all the way around, and slip stitch to the top of the chain 3. 24 stitches.',
  'Round 3. Chain 3, 2 dc in the next stitch, *dc in next stitch, 2 dc in next stitch*, repeat from * to * all the way around and join the same way. And now 36!',
  'Round 4. Chain 1, sc in the same stitch you joined in, *ch 5, skip 2 sts, sc in next st*, repeat from * to * until there are 2 stitches left, ch 5, skip those 2 and slip stitch in the first sc. Count your loops, there should be 12.',
  "Round 5. Slip stitch into the first 3 chains of the first loop so you're in the middle of it. Ch 1, sc in the loop, *ch 5, sc in the next loop*, repeat from * to * all the way round, ch 5, slip stitch in the first sc. (12 loops)",
];
const bag = (changes: Readonly<Record<string, string>> = {}) => {
  const text = `Bag\nUS terms\nHook: 5 mm\n\nBAG\n${BAG.join('\n')}\n`;
  return workedText(Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text))
    .codes;
};

describe('a bag told to friends', () => {
  test('reads clean', () => expect(bag()).toEqual([]));
  test.each([
    ['put 11 double', 'put 12 double', 'count/mismatch'],
    ['every stitch all the way around, and', 'every other stitch all the way around, and', 'count/mismatch'],
    ['And now 36!', 'And now 38!', 'count/mismatch'],
    ['skip those 2', 'skip those 3', 'row/used-up'],
    ['(12 loops)', '(13 loops)', 'count/mismatch'],
    ["so you're in the middle of it", "so you're in the next sc of it", 'phrase/unread'],
    ['and join the same way', 'and join the frobble way', 'phrase/unread'],
  ])('%s: %s', (from, to, code) => {
    const codes = bag({ [from]: to });
    expect(codes).not.toEqual([]);
    if (code !== 'row/used-up') expect(codes).toContain(code);
  });
});

const border = (place: string) =>
  workedText(
    `Square\nUS terms\nHook: 5 mm\n\nCh 4, join with sl st to form ring.\nRnd 1: Ch 1, *3 sc in ring, ch 2; rep from * 3 more times, join with sl st in first sc. (12 sc, 4 ch-2 sps)\nRnd 2: Ch 1, *sc in next 3 sc, 3 sc in ch-2 sp; rep from * around, join with sl st in first sc. (24 sc)\nRnd 3: Sl st in next 4 sc, ${place}. Ch 1, sc in each sc around, join with sl st in first sc. (24 sc)\n`,
  ).codes;

test.each([
  'which is the center sc of the corner',
  'the middle one of the corner',
  'the center sc of the corner',
])('what a place is, is no step: %s', (place) => {
  expect(border(place)).toEqual([]);
  expect(border(`${place} and sc in it`)).not.toEqual([]);
});

test('a loop may be closed where the last stitch was made', () => {
  const cloth = (loop: string) =>
    workedText(
      `Cloth\nUS terms\nHook: 5 mm\n\nCh 21.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (20 sc)\nRow 2: Ch 1, sc in each st across. (20 sc)\nfor the loop: ${loop}\n`,
    ).codes;
  expect(cloth('ch 14, sc in the last sc you made, fasten off.')).toEqual([]);
  expect(cloth('ch 14, dc in the last dc you made, fasten off.')).not.toEqual([]);
  expect(cloth('ch 14, sc in next sc, fasten off.')).not.toEqual([]);
});

test('what is counted within a part is told, beside what can be counted', () => {
  const round = (count: string) =>
    workedText(
      `Mitten\nUS terms\nHook: 5 mm\n\nRnd 1: 12 sc in magic ring. (12 sc)\nRnd 2: 2 sc in next st, sc in next st, 2 sc in next st, sc in each st around. (${count})\n`,
    ).codes;
  expect(round('14 sc, 5 in gusset')).toEqual(['count/not-checked']);
  expect(round('15 sc, 5 in gusset')).toContain('count/mismatch');
});
