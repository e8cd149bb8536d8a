/** Borders whose sides are told by what they go along: squares sewn together, blocks from corner to corner. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const SIDE = '*1 tr in each dc along the edge, working 1 tr into each 2-ch sp either side of every join';
const CORNER = '(2 tr, 2 ch, 2 tr) into corner 2-ch sp; rep from * twice more';
const AGAIN = 'work along the last side in the same way, ss into top of 3 ch.';
const TOLD = '(540 tr: 116 along each short side and 154 along each long side)';

const blanket = (first: string, second = '(552 dc)') =>
  workedText(
    [
      'Blanket',
      'UK terms used.',
      'Note: 3 ch at the start of a round counts as 1 tr throughout. 1 ch does not count as a stitch.',
      'DK yarn: MC cream, A mustard',
      '',
      'The Square (make 48)',
      'With A, make 4 ch and join with a ss to form a ring.',
      'Round 1: 3 ch, 2 tr into ring, 2 ch, *3 tr into ring, 2 ch; rep from * twice more, ss into top of 3 ch. Fasten off. (12 tr, 4 x 2-ch corner sps)',
      '',
      'Border',
      `Round 1: Join MC with a ss in any corner 2-ch sp of the blanket. (3 ch, 1 tr, 2 ch, 2 tr) into same sp, ${first}`,
      `Round 2: 1 ch, 1 dc in each tr around, working 3 dc into each 2-ch corner sp, ss into first dc. ${second}`,
    ].join('\n'),
  ).codes;

test.each([
  `${SIDE}, ${CORNER}, ${AGAIN} ${TOLD}`,
  `*1 tr into each dc along the side, and 1 tr into each of the two 2-ch sps at every join, 2 tr, 2 ch, 2 tr into the corner sp; rep from * twice more, work the last side to match, ss into top of 3 ch. (540 tr: 116 on each short side, 154 on each long side)`,
  `${SIDE}, ${CORNER}, ${AGAIN} ${'(540 tr: 135 along each side)'}`,
])('%s', (round) => {
  expect(blanket(round)).toEqual([]);
  expect(blanket(round, '(548 dc)')).toContain('count/mismatch');
  expect(blanket(round.replace('540', '541'))).toContain('count/mismatch');
  expect(blanket(round.replace(/116|135/, '134'))).toContain('count/mismatch');
});

test('where no number is told there is one fault of the whole border', () => {
  const faults = blanket(`${SIDE}, ${CORNER}, ${AGAIN}`, '');
  expect(faults.filter((code) => code !== 'row/hangs-on')).toEqual(['place/no-edge']);
});

const CORNER_TO_CORNER = [
  'Row 1: Ch 6, dc in 4th ch from hook, dc in next 2 chs, turn. (1 block)',
  'Row 2: Ch 6, dc in 4th ch from hook, dc in next 2 chs, sl st in ch-3 sp of block from last row, ch 3, 3 dc in same ch-3 sp, turn. (2 blocks)',
  'Row 3: Ch 6, dc in 4th ch from hook, dc in next 2 chs, *sl st in ch-3 sp of next block, ch 3, 3 dc in same ch-3 sp; rep from * across, turn. (3 blocks)',
  'Row 4: Sl st in each of first 3 dc and in ch-3 sp of first block, ch 3, 3 dc in same ch-3 sp, *sl st in ch-3 sp of next block, ch 3, 3 dc in same ch-3 sp; rep from * to last block, sl st in ch-3 sp of last block, turn. (2 blocks)',
  'Row 5: Rep Row 4, ending with 1 block.',
];

const square = (side: string, stated: string) =>
  workedText(
    [
      'Square',
      'US terms.',
      '',
      'SQUARE',
      ...CORNER_TO_CORNER,
      '',
      'BORDER',
      `Rnd 1: Ch 1, *3 sc in corner, ${side}; rep from * 3 more times, join with sl st in first sc. (${stated})`,
    ].join('\n'),
  ).codes;

test.each([
  'work 3 sc along the edge of each block to the next corner',
  '3 sc in the side of each block to next corner',
  '3 sc in each block along the edge',
])('%s: three blocks a side', (side) => {
  expect(square(side, '48 sc')).toEqual([]);
  expect(square(side, '52 sc')).toContain('count/mismatch');
  expect(square(side.replace('3 sc', '2 sc'), '48 sc')).toContain('count/mismatch');
});

const cushion = (side: string, changes: Readonly<Record<string, string>> = {}) => {
  const text = [
    'Pillow',
    'US terms. Ch 1 at the start of a rnd does not count.',
    'A cream, B teal, worsted',
    '',
    'SQUARE (make 4 in A, 2 in B)',
    'Make a magic ring.',
    'Rnd 1: Ch 3 (counts as dc), 2 dc in ring, ch 2, (3 dc in ring, ch 2) 3 times; join with sl st in top of ch-3. (12 dc, 4 ch-2 sps)',
    'Rnd 2: Ch 1, sc in same st, sc in next 2 dc, *(sc, ch 2, sc) in next ch-2 sp, sc in next 3 dc; rep from * 2 more times, (sc, ch 2, sc) in last ch-2 sp; join with sl st in first sc. (20 sc, 4 ch-2 sps)',
    'Fasten off.',
    '',
    'FRONT',
    'Lay out the squares in 2 rows of 3. Sew them together, 5 sc on each side.',
    `Rnd 1: With right side facing, join A with sl st in any outer corner ch-2 sp, ch 1, (sc, ch 2, sc) in same sp, *${side} to next outer corner, (sc, ch 2, sc) in corner ch-2 sp; rep from * 2 more times, ${side} to end; join with sl st in first sc. (70 sc, 4 ch-2 sps)`,
    'Rnd 2: Sl st in next ch-2 sp, ch 1, 3 sc in same sp, *sc in each sc to next ch-2 sp, 3 sc in next ch-2 sp; rep from * 2 more times, sc in each sc to end; join with sl st in first sc. (82 sc)',
    'Fasten off.',
    '',
    'JOINING',
    'Place front and back with wrong sides together, front facing you, and work through both layers.',
    'Rnd 1: Join B with sl st in any sc, ch 1, sc in each sc around; join with sl st in first sc. (82 sc)',
  ].join('\n');
  return workedText(Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text))
    .codes;
};

test.each([
  'sc in each sc and in each of the 2 ch-2 sps at every join',
  'sc in each sc, working 1 sc in each ch-2 sp either side of each join',
  'sc in each st and in the ch-2 sps on both sides of every seam',
])('squares in rows of so many: %s', (side) => {
  expect(cushion(side)).toEqual([]);
  expect(cushion(side, { '70 sc': '72 sc' })).toContain('count/mismatch');
  expect(cushion(side, { '2 rows of 3': '2 rows of 4' })).toContain('count/mismatch');
  expect(cushion(side, { '2 rows of 3': 'two rows of three' })).toEqual([]);
  expect(cushion(side, { ' in 2 rows of 3': '' })).toContain('place/no-edge');
});

const front = (join: string, n: number, stated: string, make = 9) =>
  workedText(
    [
      'Cushion',
      'US terms.',
      '',
      `Square (make ${make})`,
      'Ch 4, join with sl st in first ch to form ring.',
      'Rnd 1: Ch 1, *3 sc in ring, ch 2; rep from * 3 more times, join with sl st in first sc. Fasten off. (12 sc, 4 ch-2 sps)',
      'Rnd 2: Join yarn in any ch-2 sp, ch 1, *3 sc in ch-2 sp, sc in next 3 sc; rep from * 3 more times, join with sl st in first sc. Fasten off. (24 sc)',
      '',
      'BORDER',
      `Rnd 1: With RS facing, ${join}, ch 1, *3 sc in corner st, sc in next ${n} sts; rep from * 3 more times, join with sl st in first sc. ${stated}`,
      `Rnd 2: Ch 1, sc in each sc around, join with sl st in first sc. ${stated}`,
      'Fasten off.',
    ].join('\n'),
  ).codes;

test.each([
  'join in the middle sc of any outer corner',
  'join yarn in center sc of any corner',
  'join with sl st in 2nd sc of any 3-sc corner',
  'join yarn with a sl st in the middle st of any corner of the blanket',
  'join in any corner',
])('%s', (join) => {
  expect(front(join, 19, '(88 sc)')).toEqual([]);
  expect(front(join, 18, '(88 sc)')).toContain('count/mismatch');
  expect(front(join, 19, '(92 sc)')).toContain('count/mismatch');
  // Of one square there is no such side.
  expect(front(join, 19, '(88 sc)', 1)).not.toEqual([]);
});
