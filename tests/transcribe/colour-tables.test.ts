/** Rounds of colours in a table, with what holds for all of them said above it. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const POUCH = `P A T C H   P O U C H

  yarn ........... sport weight cotton: A cream 60 yds / B rust 35 yds / C gold 6 yds
  hook ........... 3 mm
  terms .......... American

ch chain / sc single crochet / st stitch / sk skip / sp space / sl st slip stitch

>> base, all in A

1: 6 sc in magic ring = 6 sc
2: 2 sc in each st around = 12 sc
3: sc in each st around = 12 sc
4: same as 3

>> patches, every line is worked 3 times around, sc in every st, 12 sc every round

rnd     | first | then | then
5       | 1 A   | 2 B  | 1 A
6       | 1 A   | 2 C  | 1 B

>> top

7: with A, *ch 1, sk next st, sc in next 3 sts* 3 times = 9 sc, 3 ch-1 sps
8: sl st in each sc and each ch-1 sp around, cut the yarn
`;

const changed = (from: string, to: string) => {
  expect(POUCH).toContain(from);
  return workedText(POUCH.replace(from, to));
};

const faults = (codes: readonly string[]) => codes.filter((code) => code !== 'text/abbreviation-unlisted');

test('are worked as often as is said, in the stitch that is said', () => {
  const { codes, rows } = workedText(POUCH);
  expect(faults(codes)).toEqual([]);
  expect(rows[0]?.slice(-5).map((row) => row.replace(/^\D+/, ''))).toEqual([
    '4: 12',
    '5: 12',
    '6: 12',
    '7: 9',
    '8: 12',
  ]);
});

describe('may also', () => {
  test.each([
    ['1 A   | 2 B  | 1 A', 'A 1   | B 2  | A 1'],
    ['rnd     | first | then | then', 'Round | Colors | then | then'],
    ['worked 3 times around', 'repeated 3 times around'],
    ['4: same as 3', '4: same as rnd 3'],
  ])('%s be written %s', (from, to) => expect(faults(changed(from, to).codes)).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['a line has too few', '1 A   | 2 B  | 1 A', '1 A   | 1 B  | 1 A', 'row/unworked'],
    ['a line has too many', '1 A   | 2 B  | 1 A', '1 A   | 3 B  | 1 A', 'row/used-up'],
    ['it is worked too often', 'worked 3 times', 'worked 4 times', 'row/used-up'],
    ['the count of all is wrong', '12 sc every round', '13 sc every round', 'count/mismatch'],
    ['a colour is none of those listed', '2 C', '2 D', 'word/unknown'],
    ['a hole is missing from a count', '3 ch-1 sps', '4 ch-1 sps', 'count/mismatch'],
  ])('%s', (_, from, to, code) => expect(changed(from, to).codes).toContain(code));
});
