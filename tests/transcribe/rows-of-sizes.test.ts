/** A round's number on a line of its own, and under it a line for some of the sizes and another for the rest. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const HAT = `Lantern Hat
US terms

SIZES
Baby (Child, Adult)

NOTE
Every round begins with ch 2, which does not count as a stitch, and ends with a sl st in the first dc. I don't repeat this each time.

CROWN
Round 1. Work 12 dc in a magic ring. (12 dc)
Round 2. 2 dc in each dc around. (24 dc)
Round 3.
Baby: *Dc in next 3 dc, 2 dc in next dc; rep from * 5 more times. (30 dc)
Child and Adult: *Dc in next dc, 2 dc in next dc; rep from * 11 more times. (36 dc)
Round 4.
Baby and Child: Dc in each dc around. (30 (36) dc)
Adult: *Dc in next 5 dc, 2 dc in next dc; rep from * 5 more times. (42 dc)

SIDES
Rounds 5-7 (8, 9). Dc in each dc around. (30 (36, 42) dc)
Fasten off.
`;

const codesOf = (from: string, to: string) => {
  expect(HAT).toContain(from);
  return workedText(HAT.replace(from, to)).codes;
};

test('each size has its own round, and all have those behind', () => {
  const { codes, rows } = workedText(HAT);
  expect(codes).toEqual([]);
  expect(rows.map((size) => size.slice(2))).toEqual([
    [3, 4, 5, 6, 7].map((n) => `Round ${n}: 30`),
    [3, 4, 5, 6, 7, 8].map((n) => `Round ${n}: 36`),
    ['Round 3: 36', ...[4, 5, 6, 7, 8, 9].map((n) => `Round ${n}: 42`)],
  ]);
});

describe('read', () => {
  test.each([
    ['Child and Adult:', 'Child & Adult:'],
    ['Child and Adult:', 'Sizes Child and Adult:'],
    ['Round 3.\n', 'Round 3:\n'],
    ['2 dc in next dc; rep from * 11 more', '2 dc in next dc;\nrep from * 11 more'],
  ])('%s: %s', (from, to) => expect(codesOf(from, to)).toEqual([]));
});

describe('told where', () => {
  test.each([
    ['one size has another count', '5 more times. (30 dc)', '5 more times. (32 dc)', 'count/mismatch'],
    ['one size has too many stitches', 'next 5 dc, 2 dc', 'next 6 dc, 2 dc', 'row/used-up'],
    ['a size is named twice', 'Baby and Child: Dc', 'Baby, Child and Adult: Dc', 'size/list-length'],
    ['a size has no such round', 'Child and Adult: *', 'Child: *', 'row/out-of-order'],
    ['a size is not of the list', 'Child and Adult: *', 'Child and Women: *', 'word/unknown'],
  ])('%s', (_, from, to, code) => expect(codesOf(from, to)).toContain(code));
});

describe('a round told once for each size, its name behind the number', () => {
  const slipper = (rounds: string) =>
    workedText(
      `Slipper\nUK terms\nSizes: S (M, L) to fit a foot 23 (25, 27) cm long\nHook: 5 mm\n\nTOE\nWork in a spiral without joining.\nRound 1: 6 dc into a magic ring. (6)\nRound 2: 2 dc in each st. (12)\n${rounds}\nRound 4: 1 dc in each st. (12 (15, 18))\nFasten off.\n`,
    );
  const ROUNDS =
    'Round 3, size S: 1 dc in each st. (12)\nRound 3, size M: (1 dc in each of next 3 sts, 2 dc in next st) 3 times. (15)\nRound 3, size L: (1 dc in next st, 2 dc in next st) 6 times. (18)';

  test.each([
    ROUNDS,
    ROUNDS.replaceAll(/, size (\w)/g, ' (size $1)'),
    ROUNDS.replaceAll(/, size (\w)/g, ' for $1 only'),
  ])('%s', (rounds) => {
    const { codes, rows } = slipper(rounds);
    expect(codes).toEqual([]);
    expect(rows.map((size) => size.at(-1))).toEqual(['Round 4: 12', 'Round 4: 15', 'Round 4: 18']);
    expect(slipper(rounds.replace('(18)', '(17)')).codes).toContain('count/mismatch');
    expect(slipper(rounds.replace('3 times', '4 times')).codes).not.toEqual([]);
  });
});
