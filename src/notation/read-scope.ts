/** Headings that say which sizes the rows under them are for: `Sizes M and L only:`, `Mat only:`, `All sizes`. */

import type { Cursor } from './cursor.ts';
import { peek, takeAny, wordAt } from './cursor.ts';
import { tokenise } from './tokens.ts';
import { WordSet } from './word-set.ts';

export interface Scope {
  /** Places in the list of sizes; null for all of them. */
  readonly sizes: readonly number[] | null;
}

/** Reads a scope heading with its colon, or null with the cursor where it was. */
export function readScope(cursor: Cursor): Scope | null {
  const from = cursor.at;
  const names = cursor.context.sizeNames ?? [];
  if (names.length < 2 || NO_SIZES.holds(peek(cursor))) return null;
  const every = takeAny(cursor, 'all', 'both') !== null && takeAny(cursor, 'sizes') !== null;
  if (every) return closed(cursor, from, { sizes: null });
  cursor.at = from;
  const said = takeAny(cursor, 'size', 'sizes', 'for') !== null;
  if (said) takeAny(cursor, 'size', 'sizes');
  const sizes: number[] = [];
  for (;;) {
    const index = sizeAt(cursor, names);
    if (index === null) break;
    sizes.push(index);
    if (peek(cursor).kind === 'comma') cursor.at += 1;
    takeAny(cursor, 'and', 'or');
  }
  // `Adult size only`.
  if (sizes.length > 0) takeAny(cursor, 'size', 'sizes');
  const only = takeAny(cursor, 'only') !== null;
  if (sizes.length === 0 || !(only || said)) {
    cursor.at = from;
    return null;
  }
  return closed(cursor, from, { sizes: sizes.toSorted((a, b) => a - b) });
}

/** What nearly every line begins with. */
const NO_SIZES = new WordSet(['row', 'rows', 'rnd', 'rnds', 'round', 'rounds', 'ch', 'next']);

/** A heading ends at a colon or at the end of its line. */
function closed(cursor: Cursor, from: number, scope: Scope): Scope | null {
  takeAny(cursor, 'only');
  const { kind } = peek(cursor);
  if (kind === 'colon') {
    cursor.at += 1;
    return scope;
  }
  if (kind === 'end' || kind === 'newline') return scope;
  if (kind === 'stop') {
    cursor.at += 1;
    return scope;
  }
  cursor.at = from;
  return null;
}

/** Asked at each line, so what is made of a list of names is kept as long as the list is. */
function wordsOf(names: readonly string[]): readonly (readonly string[])[] {
  let words = WORDS.get(names);
  if (words === undefined) {
    words = names.map((name) =>
      tokenise(name)
        .list.slice(0, -1)
        .map(({ text }) => text.toLowerCase()),
    );
    WORDS.set(names, words);
  }
  return words;
}

const WORDS = new WeakMap<readonly string[], readonly (readonly string[])[]>();

/** The size whose name stands at the cursor, the longest first. */
function sizeAt(cursor: Cursor, names: readonly string[]): number | null {
  let best: { index: number; length: number } | null = null;
  for (const [index, words] of wordsOf(names).entries()) {
    const here = words.length > 0 && words.every((word, i) => peek(cursor, i).text.toLowerCase() === word);
    if (here && (best === null || words.length > best.length)) best = { index, length: words.length };
  }
  if (best === null || wordAt(cursor) === 'all') return null;
  cursor.at += best.length;
  return best.index;
}
