/**
 * Words that are looked for together, and what belongs to each of some words.
 *
 * Reading asks a thousand times a second whether a word is one of a few. A token carries the number of its word, and that
 * finds its bit or its place at once; the letters are not looked at.
 */

import { MOST_IDS } from './seen-words.ts';
import type { Token } from './token.ts';
import { wordId } from './tokens.ts';

export class WordSet extends Set<string> {
  /** One bit for each word there is. */
  private readonly bits = new Int32Array(MOST_IDS >> 5);

  constructor(words: Iterable<string>) {
    super(words);
    for (const word of this) {
      const id = wordId(word);
      // What is more than a word, or a number, would never be met.
      if (id === 0) throw new Error(`no word: ${word}`);
      this.bits[id >> 5] = (this.bits[id >> 5] ?? 0) | (1 << (id & 31));
    }
  }

  /** Whether the token is one of the words. */
  holds({ id }: Token): boolean {
    return (((this.bits[id >> 5] ?? 0) >> (id & 31)) & 1) === 1;
  }
}

export class WordMap<Value> extends Map<string, Value> {
  private readonly byId: (Value | undefined)[] = new Array<Value | undefined>(MOST_IDS).fill(undefined);

  constructor(entries: Iterable<readonly [string, Value]>) {
    super();
    for (const [word, value] of entries) {
      this.set(word, value);
      this.byId[wordId(word)] = value;
    }
  }

  /** What belongs to the word that the token is. */
  of({ id }: Token): Value | undefined {
    return this.byId[id];
  }
}
