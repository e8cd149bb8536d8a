/**
 * One string for one word: reading compares words all day, and the same string is compared by its address alone.
 *
 * Words are kept as a tree of letters, so that a word is known as soon as its last letter is passed. The tree has a
 * fixed size; when it is full, a word not yet met is made anew each time.
 */

const MOST_NODES = 1 << 13;
/** Places a node has for letters, a power of two. */
const WIDTH = 32;

/** Where no known word goes on; every letter leads back to it. */
const LOST = 0;
export const FIRST_LETTER = 1;

/** The node that a letter leads to from each node. */
const next = new Uint16Array(MOST_NODES * WIDTH);
/** The word that ends at each node; '' where none does. */
const words: string[] = new Array<string>(MOST_NODES).fill('');
let used = FIRST_LETTER + 1;

/** The place of an ASCII letter of either case in the alphabet, from 0; negative or past 25 for anything else. */
export function letterIndex(code: number): number {
  return (code | CASE_BIT) - FIRST_CODE;
}

const CASE_BIT = 0x20;
const FIRST_CODE = 97;

/** One letter on from a node. */
export function afterLetter(node: number, letter: number): number {
  return next[node * WIDTH + letter] ?? LOST;
}

/** The word that was followed letter by letter to a node, in lower case. */
export function wordAtNode(node: number, text: string, start: number, end: number): string {
  const met = words[node] ?? '';
  return met === '' ? learnt(text.slice(start, end).toLowerCase()) : met;
}

function learnt(word: string): string {
  if (used + word.length > MOST_NODES) return word;
  let node = FIRST_LETTER;
  for (let i = 0; i < word.length; i += 1) {
    const place = node * WIDTH + letterIndex(word.charCodeAt(i));
    if (next[place] === LOST) {
      next[place] = used;
      used += 1;
    }
    node = next[place] ?? LOST;
  }
  const kept = asName(word);
  words[node] = kept;
  return kept;
}

/** The name of a property is kept once by the engine, as the words in this program's own text are. */
function asName(word: string): string {
  return Object.keys({ [word]: true })[0] ?? word;
}
