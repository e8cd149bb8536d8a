/** Yarn joined round a stitch of an earlier round, behind petals, with a raised stitch that the page itself describes. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const HOW = 'insert the hook from back to front to back around the stem of the stitch and work a dc.';
const flower = (third: string, how = HOW) =>
  workedText(
    [
      'Flower',
      'UK terms',
      'Yarn: DK cotton, A sand, B teal, C coral',
      '',
      'Special stitches:',
      `Back raised dc (Rdc) - ${how}`,
      '',
      'Round 1: With A, 1 ch (does not count), 12 dc into a magic ring, ss to first dc. (12 dc)',
      'Round 2: Join B in any dc. 1 ch (does not count), *1 dc in next dc, (1 htr, 1 tr, 1 htr) in next dc; rep from * 5 more times, ss to first dc. (24 sts)',
      `Round 3: ${third}`,
    ].join('\n'),
  ).codes.filter((code) => code !== 'chain/unstated');

const round = (n: number) =>
  `Join C around the stem of any dc of Round 1. 1 ch, Rdc around the same dc, 3 ch, miss 1 dc, *Rdc around next dc of Round 1, 3 ch, miss 1 dc; rep from * 4 more times, ss to first Rdc. (${n} Rdc, 6 3-ch sps)`;

test('yarn is joined round the stem of any stitch of a round that there is', () => {
  expect(flower(round(6))).toEqual([]);
  expect(flower(round(7))).toContain('count/mismatch');
  expect(flower(round(6).replace(/Round 1/g, 'Round 9'))).toContain('row/used-up');
  expect(flower(round(6).replace('any dc of', 'any tr of'))).not.toEqual([]);
});

test('a hook that goes another way makes another stitch, and one that goes no way none', () => {
  expect(flower(round(6), HOW.replace('back to front to back', 'front to back to front'))).toEqual([]);
  expect(flower(round(6), HOW.replace('back to front to back', 'back to front to front'))).toContain(
    'text/special-unread',
  );
});
