/** Pages typed as their makers talk: commas behind row numbers, "do that 4 times", gaps, remarks between rows. */

import { describe, expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const faultsOf = (text: string, changes: Readonly<Record<string, string>>): readonly string[] => {
  const changed = Object.entries(changes).reduce((all, [from, to]) => all.replace(from, to), text);
  const { codes, messages } = workedText(changed);
  return messages.filter((_, i) =>
    /^(?:count|row|phrase|word|special|repeat|bracket|text)\//.test(codes[i] ?? ''),
  );
};

const SOCK = `Little Slipper
US terms

Yarn: A: red wool, 1 ball

TOE. Magic ring with 8 sc in it (8 sts). Rnd 2, 2 sc in each st around (16 sts). Rnd 3, *sc in next 3 sts, 2 sc in next st*, do that 4 times (20 sts). Rnd 4, for the pretty bit: *sc in next 4 sts, 2 sc in next st*, 4 times (24 sts). Rnd 5, sc in each st around (24 sts). Rnds 6 to 8, the same as Rnd 5, so 3 more rounds. Try it on, it should come up to where your foot starts to bend.

FOOT. Now you go back and forth. Row 9, sc in next 18 sts and stop there, turn, the other 6 sts are the front of the opening (18 sts). Row 10, ch 1, sc in each st across, turn (18 sts).`;

describe('rows with a comma behind their number', () => {
  test('are rows', () => {
    expect(faultsOf(SOCK, {})).toEqual([]);
  });

  test.each([
    [{ 'do that 4 times': 'repeat that 4 times' }],
    [{ 'do that 4 times': '4 times' }],
    [{ 'do that 4 times': 'keep doing that around' }],
    [{ 'so 3 more rounds': '3 more rounds' }],
    [{ 'Try it on, it': 'Count your toes, there' }],
    [{ 'stop there': 'stop here' }],
  ])('may say it another way: %o', (changes) => {
    expect(faultsOf(SOCK, changes)).toEqual([]);
  });

  test.each([
    [{ 'Rnd 2, 2 sc': 'Rnd 2, 3 sc' }, /makes 24 sts, but 16/],
    [{ 'do that 4 times': 'do that 3 times' }, /leaves 4 of the 16/],
    [{ '8 sc in it (8 sts)': '7 sc in it (8 sts)' }, /makes 7 sts, but 8/],
    [{ 'so 3 more rounds': 'so 4 more rounds' }, /could not be read/],
    [{ 'next 18 sts and stop': 'next 17 sts and stop' }, /but 18/],
    [{ 'Rnd 4, for': 'Rnd 5, for' }, /stands where/],
    [{ 'Try it on, it': 'Try it, sc in next st, it' }, /not a stitch|could not be read/],
    [{ '2 sc in next st*, do': '2 pf in next st*, do' }, /"pf" is not/],
  ])('are held against their counts: %o', (changes, fault) => {
    expect(faultsOf(SOCK, changes).join('\n')).toMatch(fault);
  });

  test('an unknown stitch before the asterisk is one fault', () => {
    expect(faultsOf(SOCK, { '2 sc in next st*, do': 'pf in next st*, do' })).toHaveLength(1);
  });
});

const SCARF = `my scarf
US terms

medium yarn, 3 skeins

how to do it

chain 30

row 1
sc in the 2nd chain from the hook, *chain 1, skip 1 chain, sc in next chain* keep going from * to * to the end. turn. (15 sc and 14 gaps)

row 2
chain 1, sc in the first sc, sc in the first gap, *chain 1, skip the next sc, sc in next gap* repeat that to the last sc, sc in the last sc. turn. (16 sc and 13 gaps now)

row 3
chain 1, sc in the first sc, *chain 1, skip the next sc, sc in next gap* repeat that until theres 2 sc left, chain 1, skip the next sc, sc in the last sc, turn. (back to 15 sc and 14 gaps)

last row
chain 1, sc in every sc and every gap all the way across. (29 sc) cut your yarn and pull it through`;

describe('a first pattern in small letters', () => {
  test('is worked whole', () => {
    expect(faultsOf(SCARF, {})).toEqual([]);
  });

  test.each([
    ['until theres 2 sc left', 'until there are 2 sc left'],
    ['until theres 2 sc left', "until there's 2 sc left"],
    ['until theres 2 sc left', 'to last 2 sc'],
    ['last row', 'Final row:'],
    ['keep going from * to * to the end', 'repeat from * to * to the end'],
  ])('may say %s another way', (from, to) => {
    expect(faultsOf(SCARF, { [from]: to })).toEqual([]);
  });

  test.each([
    [{ '15 sc and 14 gaps)': '15 sc and 13 gaps)' }, /but 13/],
    [{ '16 sc and 13 gaps': '17 sc and 13 gaps' }, /but 17/],
    [{ 'back to 15 sc': 'back to 16 sc' }, /but 16/],
    [{ '(29 sc)': '(30 sc)' }, /but 30/],
    [{ 'theres 2 sc left': 'theres 3 sc left' }, /goes to the last/],
    [{ 'chain 30': 'chain 31' }, /./],
  ])('is held against its counts: %o', (changes, fault) => {
    expect(faultsOf(SCARF, changes).join('\n')).toMatch(fault);
  });
});
