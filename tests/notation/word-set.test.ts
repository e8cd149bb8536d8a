/** Sets of words, also in a program that has met more words than it numbers. */

import { expect, test } from 'vitest';
import { MOST_IDS } from '../../src/notation/seen-words.ts';
import { tokenise } from '../../src/notation/tokens.ts';
import { WordMap, WordSet } from '../../src/notation/word-set.ts';

const tokenOf = (word: string) => {
  const [token] = tokenise(word).list;
  if (token === undefined) throw new Error('no token');
  return token;
};
const early = new WordSet(['chain', 'dc2tog', '3rd']);
const readers = new WordMap([['chain', 1]]);

test('a set holds its words and no others', () => {
  for (const word of ['chain', 'CHAIN', 'dc2tog', '3rd']) expect(early.holds(tokenOf(word)), word).toBe(true);
  for (const word of ['chains', 'dc', '3', '*', ',']) expect(early.holds(tokenOf(word)), word).toBe(false);
  expect(readers.of(tokenOf('chain'))).toBe(1);
  expect(readers.of(tokenOf('*'))).toBeUndefined();
});

test('what is no single word is refused: it would never be met', () => {
  for (const words of ['right-hand', '4', 'two words', ''])
    expect(() => new WordSet([words]), words).toThrow('no word');
});

test('a set made after thousands of words were met holds its own all the same, and only those', () => {
  const letters = (n: number) =>
    [...n.toString(26).padStart(4, '0')]
      .map((c) => String.fromCharCode(97 + Number.parseInt(c, 26)))
      .join('');
  const met = Array.from({ length: 2 * MOST_IDS }, (_, k) => `${letters(k)}${k % 3 === 0 ? "'s" : 'q'}`);
  tokenise(met.join(' '));
  const late = new WordSet(['gusset', "hook's", 'chain']);
  const lateReaders = new WordMap([['gusset', 2]]);
  expect(tokenOf('gusset').id).toBe(0);
  for (const word of ['gusset', "hook's", 'chain']) expect(late.holds(tokenOf(word)), word).toBe(true);
  for (const word of ['placket', 'yoke', '*']) expect(late.holds(tokenOf(word)), word).toBe(false);
  expect(lateReaders.of(tokenOf('gusset'))).toBe(2);
  expect(lateReaders.of(tokenOf('placket'))).toBeUndefined();
  expect(early.holds(tokenOf('chain'))).toBe(true);
});
