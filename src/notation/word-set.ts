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
  /** Words that have no number, for a program that has met thousands before it made this set. */
  private readonly unnumbered = new Set<string>();

  constructor(words: Iterable<string>) {
    super(words);
    for (const word of this) {
      const id = numberOf(word);
      if (id === 0) this.unnumbered.add(word);
      else this.bits[id >> 5] = (this.bits[id >> 5] ?? 0) | (1 << (id & 31));
    }
  }

  /** Whether the token is one of the words. */
  holds({ id, text }: Token): boolean {
    if (id === 0) return this.unnumbered.size > 0 && this.unnumbered.has(text);
    return (((this.bits[id >> 5] ?? 0) >> (id & 31)) & 1) === 1;
  }
}

export class WordMap<Value> extends Map<string, Value> {
  private readonly byId: (Value | undefined)[] = new Array<Value | undefined>(MOST_IDS).fill(undefined);

  constructor(entries: Iterable<readonly [string, Value]>) {
    super();
    for (const [word, value] of entries) {
      const id = numberOf(word);
      this.set(word, value);
      if (id !== 0) this.byId[id] = value;
    }
  }

  /** What belongs to the word that the token is. */
  of({ id, word }: Token): Value | undefined {
    return id === 0 && word !== '' ? this.get(word) : this.byId[id];
  }
}

/** What is more than a word, or a number, would never be met. */
function numberOf(word: string): number {
  const id = wordId(word);
  if (id === null) throw new Error(`no word: ${word}`);
  return id;
}
