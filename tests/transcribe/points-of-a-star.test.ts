/** Points made on chains of their own and gone round after: up the chains' free loops, over the tip, down the stitches. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const STAR = `Star
US terms
Hook: 1.65 mm

STAR
Rnd 1: Make a magic ring, 5 sc in ring, join with sl st in first sc. (5 sc)
Rnd 2: Ch 1, 2 sc in each sc around, join with sl st in first sc. (10 sc)
Rnd 3: Ch 1, *sc in next sc, 2 sc in next sc, rep from * 4 more times, join with sl st in first sc. (15 sc)
Rnd 4: *Ch 6, sl st in 2nd ch from hook, sc in next ch, hdc in next ch, dc in next ch, tr in last ch, sk next 2 sc, sl st in next sc, rep from * 4 more times. (5 points)
Rnd 5: *Working in free loops of ch, sc in next 5 ch, (sc, ch 2, sc) in tip of point, sc in next 5 sts, sl st in next sl st, rep from * 4 more times. (60 sc, 5 ch-2 sps)
Fasten off.
`;

const codesOf = (from: string | RegExp, to: string) => workedText(STAR.replace(from, to)).codes;

test('has five chains, a tip and five stitches to each point', () => {
  expect(STAR).toContain('tip of point');
  expect(workedText(STAR)).toMatchObject({ codes: [], rows: [expect.arrayContaining(['Rnd 5: 65'])] });
});

describe('read', () => {
  test.each([
    ['Working in free loops of ch', 'Working in the free lps of the chain'],
    ['Working in free loops of ch', 'Working along other side of ch'],
    ['tip of point', 'tip of next point'],
    ['tip of point', 'next ch'],
    [', sc in next 5 sts', ', sc in next sl st, sc in next sc, sc in next hdc, sc in next dc, sc in next tr'],
  ])('%s: %s', (from, to) => expect(codesOf(from, to)).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['the count is another', '60 sc', '55 sc', 'count/mismatch'],
    ['a chain is left out', 'sc in next 5 ch', 'sc in next 4 ch', 'place/not-there'],
    ['a chain too many is worked', 'sc in next 5 ch', 'sc in next 7 ch', 'place/not-there'],
    ['a stitch is left out', 'sc in next 5 sts', 'sc in next 4 sts', 'place/not-there'],
    ['it is not said to go along the chains', 'Working in free loops of ch, ', '', 'place/not-there'],
    [
      'the round below has no points',
      /(?<=Rnd 4: ).*/,
      'Ch 1, sc in each sc around. (15 sc)',
      'place/no-edge',
    ],
    ['a tip is of something else', 'tip of point', 'tip of nose', 'phrase/unread'],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));
});
