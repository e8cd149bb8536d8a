/** Grannies whose rounds are told by their groups, and a border worked to the middle of each corner. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const GRANNY = `Granny Square

UK terms
Yarn: A: white, 5 x 50g balls (120m), B: blue, 5 x 50g balls (120m)
Hook: 5 mm

With A, ch4, ss in first ch to make a ring.

Rnd 1: ch3 (counts as 1tr here and throughout), 2tr in ring, ch2, (3tr in ring, ch2) 3 times, ss in top of ch3. [12 tr, 4 ch2-sp]
Rnd 2: ss in next 2tr, ss in ch2-sp, ch3, (2tr, ch2, 3tr) in same sp, ch1, *(3tr, ch2, 3tr) in next ch2-sp, ch1; rep from * 2 more times, ss in top of ch3. [24 tr, 4 ch2-sp, 4 ch1-sp]
Rnd 3: ss in next 2tr, ss in ch2-sp, ch3, (2tr, ch2, 3tr) in same sp, ch1, 3tr in next ch1-sp, ch1, *(3tr, ch2, 3tr) in next ch2-sp, ch1, 3tr in next ch1-sp, ch1; rep from * 2 more times, ss in top of ch3. Fasten off A. [36 tr, 4 ch2-sp, 8 ch1-sp]
Rnd 4: join B with ss in any ch2-sp, ch3, (2tr, ch2, 3tr) in same sp, ch1, (3tr in next ch1-sp, ch1) 2 times, *(3tr, ch2, 3tr) in next ch2-sp, ch1, (3tr in next ch1-sp, ch1) 2 times; rep from * 2 more times, ss in top of ch3. [48 tr, 4 ch2-sp, 12 ch1-sp]
Rnd 5: ss in next 2tr, ss in ch2-sp, ch3, (2tr, ch2, 3tr) in same sp, ch1, (3tr in next ch1-sp, ch1) 3 times, *(3tr, ch2, 3tr) in next ch2-sp, ch1, (3tr in next ch1-sp, ch1) 3 times; rep from * 2 more times, ss in top of ch3. [60 tr, 4 ch2-sp, 16 ch1-sp]
Rnds 6-9: carry on like this, with one more group of 3tr along each side on every rnd. You will have 9 groups along each side after Rnd 9. [108 tr, 4 ch2-sp, 32 ch1-sp]
Fasten off.

Border
Rnd 10: join A with ss in any ch2-sp, ch1 (does not count), 3dc in same sp, *1dc in each tr and in each ch1-sp to next ch2-sp, 3dc in ch2-sp; rep from * 2 more times, 1dc in each tr and in each ch1-sp to end, ss in first dc. [152 dc]
Rnd 11: ch1, 1dc in same place as ss, 3dc in next dc, *1dc in each dc to middle dc of next corner, 3dc in middle dc; rep from * 2 more times, 1dc in each dc to end, ss in first dc. [160 dc]
Fasten off.
`;

const codesOf = (from: string, to: string) => workedText(GRANNY.replace(from, to)).codes;

test('groups grow by one along each side, however the rounds above begin', () => {
  const { codes, rows } = workedText(GRANNY);
  expect(codes.filter((code) => !code.startsWith('size/'))).toEqual([]);
  expect(rows[0]?.slice(-6)).toEqual([
    'Rnd 6: 72',
    'Rnd 7: 84',
    'Rnd 8: 96',
    'Rnd 9: 108',
    'Rnd 10: 152',
    'Rnd 11: 160',
  ]);
});

const TOLD = 'with one more group of 3tr along each side on every rnd';

describe('read', () => {
  test.each([
    'working 1 more group of 3 tr on each side every round',
    'adding one extra 3-tr group to each side on each rnd',
    'but with 1 more 3tr group between the corners on every rnd',
    'making one more set of 3 tr along all four sides in every round',
    `${TOLD} and changing colour every 2 rnds`,
  ])('%s', (words) => expect(codesOf(TOLD, words)).toEqual([]));

  test.each([
    ['to centre dc of next corner', '3dc in centre dc'],
    ['to 2nd dc of next corner', '3dc in middle dc'],
    ['to the middle st of next 3-dc corner', '3dc in next dc'],
  ])('%s, %s', (stop, corner) => {
    const text = GRANNY.replace('to middle dc of next corner', stop).replace('3dc in middle dc', corner);
    expect(workedText(text).codes).toEqual([]);
  });
});

describe('told where', () => {
  test.each([
    ['two more are said', 'one more group of 3tr', '2 more groups of 3tr', 'phrase/unread'],
    ['the groups are of another size', 'one more group of 3tr', 'one more group of 2tr', 'phrase/unread'],
    ['the groups are of another stitch', 'one more group of 3tr', 'one more group of 3dtr', 'phrase/unread'],
    ['it is not said where', 'along each side on every rnd', 'on every rnd', 'phrase/unread'],
    ['the rounds above do not grow so', '3 times, *(3tr, ch2', '4 times, *(3tr, ch2', 'phrase/unread'],
    ['the groups come to another number', 'have 9 groups', 'have 10 groups', 'count/mismatch'],
    ['the stitches come to another number', '[108 tr,', '[112 tr,', 'count/mismatch'],
    ['a corner has too few', '3dc in middle dc', '2dc in middle dc', 'count/mismatch'],
    ['the middle has another number', 'middle dc of next corner', '3rd dc of next corner', 'phrase/unread'],
    ['the spaces are longer', '3dc in ch2-sp', '3dc in ch3-sp', 'place/not-there'],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));
});
