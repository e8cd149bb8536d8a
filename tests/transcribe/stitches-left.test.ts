/** Stitches that a round left, between the row ends on both sides of them; the face that rows worked as others show; stripes in turn. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const bonnet = (edge: string, changes: Readonly<Record<string, string>> = {}) => {
  const text = [
    'Bonnet',
    'UK terms. 1 ch does not count as a st.',
    'Baby DK, 50 g',
    '',
    'CROWN',
    'Make 4 ch and join into a ring with ss in first ch.',
    '1st round: 3 ch (counts as 1 tr throughout), 11 tr into ring, ss in top of 3 ch. (12 tr)',
    '2nd round: 3 ch, 1 tr in same place as ss, 2 tr in each tr to end, ss in top of 3 ch. (24 tr)',
    '3rd row (RS): 3 ch, 1 tr in each of next 17 tr, turn, leaving last 6 tr unworked. (18 tr)',
    '4th row: 3 ch, miss first tr, 1 tr in each tr to end, working last tr in top of 3 ch, turn. (18 tr)',
    '5th to 9th rows: As 4th row. (18 tr)',
    '10th row (WS): 1 ch, 1 dc in first tr, 1 dc in each of next 16 tr, 1 dc in top of 3 ch. Fasten off. (18 dc)',
    '',
    'NECK EDGE',
    'With RS facing, join yarn with ss to front corner of neck edge.',
    `1st row: 1 ch, ${edge}, turn. (34 dc)`,
    '2nd row: 1 ch, 1 dc in each dc to end. (34 dc)',
  ].join('\n');
  return workedText(Object.entries(changes).reduce((changed, [from, to]) => changed.replace(from, to), text));
};

const EDGES = [
  'work 14 dc evenly along row ends, 1 dc in each of 6 unworked tr, work 14 dc evenly along row ends',
  'work 14 dc evenly along row ends, 1 dc in each of the 6 tr left unworked, work 14 dc evenly along row ends',
  '14 dc along the row ends, dc in the 6 sts we left, 14 dc along the other row ends',
  'work 14 dc down the row ends, dc in next 6 unworked sts, work 14 dc up the second row ends',
];

test.each(EDGES)('%s', (edge) => {
  const { codes, rows } = bonnet(edge);
  expect(codes).toEqual([]);
  expect(rows[0]?.slice(-2)).toEqual(['Row 1: 34', 'Row 2: 34']);
  expect(bonnet(edge.replace('6', '5')).codes).toContain('row/passed-over');
  expect(bonnet(edge.replace('6', '7')).codes).toContain('row/used-up');
  expect(bonnet(edge.replace('14', '15')).codes).toContain('count/mismatch');
});

test('where a round left none there are none to work into', () => {
  const changes = { 'next 17 tr, turn, leaving last 6 tr unworked. (18 tr)': 'next 23 tr, turn. (24 tr)' };
  expect(bonnet(EDGES[0] ?? '', changes).codes).not.toEqual([]);
});

describe('the face of a row behind rows worked as another', () => {
  test('is held against them', () => {
    const { codes, messages } = bonnet(EDGES[0] ?? '', { '10th row (WS)': '10th row (RS)' });
    expect(codes).toEqual(['row/faces']);
    expect(messages).toEqual(['Row 10 is called RS, but Row 9 is RS and is turned']);
  });

  test('follows from how many they are', () => {
    const changes = { '5th to 9th rows': '5th to 8th rows', '10th row (WS)': '9th row (RS)' };
    expect(bonnet(EDGES[0] ?? '', changes).codes).toEqual([]);
  });

  test('what comes out on neither side is told of as it stands', () => {
    const changes = { '10th row (WS)': '10th row (RS)', 'next 16 tr': 'next 15 tr' };
    expect(bonnet(EDGES[0] ?? '', changes).codes).toContain('row/faces');
    expect(bonnet(EDGES[0] ?? '', changes).codes.length).toBeGreaterThan(1);
  });
});

const slipper = (cuff: string) =>
  workedText(
    [
      'Slipper',
      'US terms.',
      '',
      'TOE. Magic ring with 8 sc in it (8 sts). Rnd 2, 2 sc in each st around (16 sts).',
      '',
      'FOOT. Row 3, sc in next 12 sts and stop there, turn (12 sts). Rows 4 to 8, ch 1, sc in each st across, turn (12 sts).',
      '',
      'HEEL. Fold Row 8 in half with the RS together and sl st through both sides, 6 sl sts. Cut the yarn, turn it right side out.',
      '',
      'CUFF. Join the yarn at the back of the heel with RS facing.',
      `Rnd 1, ch 1, ${cuff}, sl st to first sc (18 sts).`,
      'Rnd 2, ch 1, sc in each st around, sl st to first sc (18 sts).',
    ].join('\n'),
  );

test('round an opening that was left', () => {
  const cuff = 'work 7 sc along the row ends, sc in the 4 sts we left, 7 sc along the other row ends';
  expect(slipper(cuff).codes).toEqual([]);
  expect(slipper(cuff.replace('4 sts', '5 sts')).codes).toContain('row/used-up');
  expect(slipper(cuff.replace('7 sc', '8 sc')).codes).toContain('count/mismatch');
});

const scarf = (rows: string, edging = '1 ch, 2 dc into each row end to next corner. 24 dc.') =>
  workedText(
    [
      'Scarf',
      'UK terms. 1 ch does not count as a st.',
      'DK wool: 3 balls in navy (A)',
      '2 balls in sea green (B)',
      '2 balls in cream (C)',
      '',
      'SCARF',
      'Using A, make 21 ch.',
      '1st row: 1 dc into 2nd ch from hook and each ch to end, turn. 20 dc.',
      '2nd row: 1 ch, 1 dc into each dc to end, turn. 20 dc.',
      `3rd to 12th rows: As 2nd row, ${rows}. 20 dc.`,
      'Fasten off.',
      '',
      'SIDE EDGINGS (both alike)',
      `1st row: With RS facing, join A with ss to corner of one long edge, ${edging}`,
      'Fasten off. Work the other long edge in the same way.',
    ].join('\n'),
  ).codes;

test.each([
  'working 2 rows A, 2 rows B and 2 rows C in turn, ending with 2 rows C',
  'working 2 rows in B, 2 rows in C and 2 rows in A throughout',
  'alternating 1 row A and 1 row B',
])('%s', (rows) => {
  const unsaid = (codes: readonly string[]) => codes.filter((code) => code !== 'yarn/unused');
  expect(unsaid(scarf(rows))).toEqual([]);
  expect(scarf(rows.replace(/rows? (in )?B/, 'rows $1D'))).not.toEqual(scarf(rows));
  expect(scarf(rows.replace(/rows? (in )?B/, 'dc B'))).toContain('phrase/unread');
  expect(scarf(rows, '1 ch, 2 dc into each row end to next corner. 26 dc.')).toContain('count/mismatch');
});
