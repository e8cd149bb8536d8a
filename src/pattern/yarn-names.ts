/** Yarns in; the names that rows may call them by besides their letters, out: the colour's own, "main colour" for `MC`. */

import type { YarnName } from '../notation/cursor.ts';
import { tokenise } from '../notation/tokens.ts';

interface Named {
  readonly letter: string;
  readonly colour: string | null;
}

const MAIN = ['main colour', 'main color', 'main yarn'];
const CONTRAST = ['contrast colour', 'contrast color', 'contrasting colour', 'contrasting color', 'contrast'];
const OF_LETTERS: ReadonlyMap<string, readonly string[]> = new Map([
  ['MC', MAIN],
  ['M', MAIN],
  ['CC', CONTRAST],
  ['CC1', CONTRAST.map((name) => `${name} 1`)],
  ['CC2', CONTRAST.map((name) => `${name} 2`)],
  ['CC3', CONTRAST.map((name) => `${name} 3`)],
]);

/** A colour that two yarns share names neither. */
export function yarnNames(yarns: readonly Named[]): YarnName[] {
  const named = yarns.flatMap(({ letter, colour }) =>
    [...(colour === null ? [] : [colour]), ...(OF_LETTERS.get(letter) ?? [])].map((name) => ({
      letter,
      words: wordsIn(name),
    })),
  );
  const keys = named.map(({ words }) => words.join(' '));
  return named.filter(
    ({ words }, i) => words.length > 0 && keys.filter((key) => key === keys[i]).length === 1,
  );
}

function wordsIn(name: string): string[] {
  return tokenise(name).list.flatMap(({ kind, text }) => (kind === 'end' ? [] : [text]));
}
