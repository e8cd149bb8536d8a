/** Rounds begun and worked in the spaces between stitches, pairs and groups, as granny coasters tell them. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const FIRST = 'Rnd 1: With A, make a magic ring. Ch 3 (counts as dc throughout), 11 dc in ring. (12 dc)';
const PAIRS = [
  FIRST,
  'Rnd 2: Join B in any sp between 2 dc. Ch 3, dc in same sp, 2 dc in each sp between dc around. (24 dc)',
];

const coaster = (...rounds: readonly string[]) =>
  workedText(
    ['Coaster', 'US terms', 'Yarn: worsted cotton A, B, C', '']
      .concat(rounds.map((round) => round.replace(/ \(\d+ dc\)$/, ' Join with a sl st to top of ch 3.$&')))
      .join('\n'),
  );

test.each([
  'Join B with a sl st in any sp between 2 dc. Ch 3, dc in same sp, 2 dc in each sp between dc around.',
  'Join B in sp between any 2 dc. Ch 3, dc in same sp, [2 dc in next sp between dc] 11 times.',
  'Join B in any space between two dc. Ch 3, dc in same space, 2 dc in each space between sts around.',
  'Sl st in sp between first and 2nd dc, ch 3, dc in same sp, *2 dc in next sp between dc; rep from * around.',
])('%s', (words) => {
  expect(coaster(FIRST, `Rnd 2: ${words} (24 dc)`).codes).toEqual([]);
  expect(coaster(FIRST, `Rnd 2: ${words} (26 dc)`).codes).toContain('count/mismatch');
});

test.each([
  'Join C in any sp between two 2-dc groups. Ch 3, 2 dc in same sp, [3 dc in next sp between groups] 11 times.',
  'Join C in any sp between two pairs of dc. Ch 3, 2 dc in same sp, 3 dc in each sp between pairs around.',
  'Join C in any sp between 2 groups of 2. Ch 3, 2 dc in same sp, 3 dc in each sp between groups around.',
  'Sl st in next dc, sl st in next sp between pairs, ch 3, 2 dc in same sp, 3 dc in each sp between groups around.',
])('%s', (words) => {
  expect(coaster(...PAIRS, `Rnd 3: ${words} (36 dc)`).codes).toEqual([]);
  expect(coaster(...PAIRS, `Rnd 3: ${words} (39 dc)`).codes).toContain('count/mismatch');
});

test('a space between stitches is no stitch, and not there twice too often', () => {
  const [, second = ''] = PAIRS;
  expect(coaster(FIRST, second.replace('in same sp', 'in same dc')).codes).toContain('place/not-there');
  expect(
    coaster(
      ...PAIRS,
      'Rnd 3: Join C in any sp between pairs. Ch 3, 2 dc in same sp, [3 dc in next sp between pairs] 12 times. (39 dc)',
    ).codes,
  ).toContain('row/used-up');
  expect(
    coaster(...PAIRS, 'Rnd 3: Join C in any sp between groups of 3. Ch 3, 2 dc in same sp. (3 dc)').codes,
  ).toContain('row/used-up');
});

test('yarn is joined to a stitch of any group of so many', () => {
  const joined = (n: number) =>
    coaster(
      ...PAIRS,
      `Rnd 3: Join C in first dc of any group of ${n}. Ch 3, dc in next dc and in each dc around. (24 dc)`,
    );
  expect(joined(2).codes).toEqual([]);
  expect(joined(4).codes).toContain('row/used-up');
});
