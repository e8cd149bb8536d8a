/** Stitches that begin a round, described by the chain they rise by and what is worked beside it. */

import { describe, expect, test } from 'vitest';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { workedText } from './worked-text.ts';

const PUFF =
  'Puff st: (Yo, insert hook in sp, yo and pull up a loop) 3 times in same sp, yo and draw through all 7 loops on hook.';
const POPCORN =
  'Pc: 5 dc in same st, drop loop from hook, insert hook in first of these 5 dc, draw dropped loop through.';

const coaster = (special: string, second: string) =>
  `Coaster\nUS terms\n\nSpecial stitches\n${PUFF}\n${POPCORN}\n${special}\n\nCoaster\nRnd 1: Ch 4, join with sl st to form ring, ch 1, 12 sc in ring, join with sl st in first sc. (12 sc)\nRnd 2: ${second}\n`;

function workOf(special: string): string | undefined {
  const text = coaster(special, 'Beg st in same st.');
  return transcribe({ file: 'coaster.txt', text }).specials.at(-1)?.work?.text;
}

test.each([
  ['Ch 2, then work a puff st in same sp. The ch 2 does not count.', 'Ch 2 (does not count), puff st'],
  ['Ch 2 (does not count as a st) and work 1 puff st into the same sp.', null],
  ['Ch 4 (counts as dc, ch 1), dc in same st.', 'Ch 4 (counts as dc, ch 1), dc'],
  ['Ch 3 (counts as first dc), work 4 more dc in same sp.', 'Ch 3 (counts as first dc), 4 dc'],
  [
    'Ch 3, then work (dc, ch 2, 2 dc) in same sp. The ch 3 counts as a dc.',
    'Ch 3 (counts as a dc), (dc, ch 2, 2 dc)',
  ],
  [
    'Ch 3 (counts as dc), 4 dc in same st, drop loop from hook, insert hook from front to back in top of ch-3, pick up dropped loop and draw through.',
    'ch 3, 4-dc popcorn',
  ],
  [
    'Ch 3, 4 dc in same sp, remove hook from loop, insert hook in top of beginning ch-3, place loop back on hook and pull through.',
    'ch 3, 4-dc popcorn',
  ],
])('%s', (words, work) => {
  expect(workOf(`Beg st: ${words}`)).toBe(`${work ?? 'Ch 2 (does not count as a st), 1 puff st'} in same st`);
});

test.each([
  'Ch 3, 4 dc in same st, drop loop from hook, insert hook in top of ch-4, draw dropped loop through.',
  'Ch 2, wobble a puff st in same sp.',
])('%s: not told in stitches', (words) => {
  expect(workOf(`Beg st: ${words}`)).toBeUndefined();
});

describe('counts as one of those it begins, and is joined to by its own name', () => {
  const puffs = (n: number, join = 'beg puff st') =>
    workedText(
      coaster(
        'Beg puff st: Ch 2, then work a puff st in same sp. The ch 2 does not count.',
        `Beg puff st in same st, ch 1, *puff st in next st, ch 1; rep from * around, join with sl st in top of ${join}. (${n} puff sts, ${n} ch-1 sps)`,
      ),
    );
  test('as many as there are', () => {
    expect(puffs(12).codes).toEqual(['special/unused']);
    expect(puffs(12).rows).toEqual([['Foundation: 0', 'Rnd 1: 12', 'Rnd 2: 12']]);
  });

  test('no more', () => expect(puffs(13).codes).toContain('count/mismatch'));

  test('nor where the round begins with another', () => {
    expect(puffs(12, 'beg pc').codes).not.toEqual(puffs(12).codes);
  });
});

test('a beginning popcorn is one of the popcorns', () => {
  const popcorns = (n: number) =>
    workedText(
      coaster(
        'Beg pc: Ch 3, 4 dc in same st, drop loop from hook, insert hook in top of ch-3, draw dropped loop through.',
        `Beg pc in same st, ch 2, *sk next st, pc in next st, ch 2; rep from * to last st, sk last st, join with sl st in top of beg pc. (${n} pc)`,
      ),
    ).codes;
  expect(popcorns(6)).toEqual(['special/unused']);
  expect(popcorns(5)).toContain('count/mismatch');
});

test('where a round cannot be joined as it says, that is told, not that its repeat is uneven', () => {
  const { codes } = workedText(
    coaster(
      'Beg cl: Ch 2, dc2tog in same st.',
      'Beg cl in same st, ch 1, *puff st in next st, ch 1; rep from * around, join with sl st in first dc. (12 sts)',
    ),
  );
  expect(codes).toContain('join/not-there');
  expect(codes).not.toContain('repeat/uneven');
});
