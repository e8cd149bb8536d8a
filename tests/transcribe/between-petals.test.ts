/** Rounds behind petals, worked between this one and the next; the tip of a point, the stitch between two of them. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const flower = (round: string, more = '') =>
  workedText(
    `Flower\nUS terms\nHook: 4 mm\n\nCh 4, join with sl st to form ring.\nRnd 1: Ch 1, *sc in ring, ch 3; rep from * 4 more times, join with sl st in first sc. (5 sc, 5 ch-3 sps)\nRnd 2: Sl st in ch-3 sp, ch 1, (sc, hdc, 3 dc, hdc, sc) in same sp and in each ch-3 sp around, join with sl st in first sc. (5 petals, 35 sts)\nRnd 3: ${round}\n${more}`,
  ).codes;

describe('between petals', () => {
  test.each([
    '*Ch 5, sc in sp between this petal and the next; rep from * 4 more times, join with sl st in first ch. (5 sc, 5 ch-5 sps)',
    'Join yarn with sc in sp between any two petals, *ch 5, sc in sp between next 2 petals; rep from * 3 more times, ch 5, join with sl st in first sc. (5 sc, 5 ch-5 sps)',
    'Join yarn in the center dc of any petal, ch 1, sc in same st, ch 3, dc in sp between this petal and the next, ch 3, *sc in center dc of next petal, ch 3, dc between this petal and the next one, ch 3; rep from * around, join with sl st in first sc. (5 sc, 5 dc, 10 ch-3 sps)',
  ])('%s', (round) => {
    expect(flower(round)).not.toContainEqual(
      expect.stringMatching(/mismatch|unread|uneven|used-up|unworked/),
    );
    expect(flower(round.replace('(5 sc', '(6 sc'))).toContain('count/mismatch');
  });

  test('there are no more gaps than petals', () => {
    const round =
      'Join yarn with sc in sp between any two petals, *ch 5, sc in sp between next 2 petals; rep from * 4 more times, ch 5, join with sl st in first sc. (6 sc, 6 ch-5 sps)';
    expect(flower(round)).toContain('row/used-up');
  });
});

const star = (round: string) =>
  workedText(
    `Star\nUS terms\nHook: 4 mm\n\nCh 5, join with sl st to form ring.\nRnd 1: Ch 1, 10 sc in ring, join with sl st in first sc. (10 sc)\nRnd 2: *Ch 4, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, sk next sc, sl st in next sc; rep from * 4 more times. The last sl st is worked where the round began. (5 points)\nRnd 3: Ch 1, *${round}; rep from * 4 more times. (40 sc, 5 ch-2 sps)\n`,
  ).codes;

describe('round the points of a star', () => {
  test.each([
    'sc in the free loop of each of next 3 ch, (sc, ch 2, sc) in ch at tip of point, sc in each of next 3 sts, sl st in the sl st between the points',
    'sc in the unused loops of next 3 ch, (sc, ch 2, sc) in the ch at the tip, sc in next 3 sts, sl st in the sl st between this point and the next',
  ])('%s', (round) => {
    expect(star(round)).toEqual([]);
    expect(star(round.replace('next 3 sts', 'next 2 sts'))).not.toEqual([]);
    expect(star(round.replace('(sc, ch 2, sc)', '(sc, ch 2, 2 sc)'))).toContain('count/mismatch');
  });
});
