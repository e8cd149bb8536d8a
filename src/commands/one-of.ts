/** A flag's value and the words it may be -> the word, or the sentence that says which there are. */

import { nearest } from '../diagnostics/nearest.ts';

export type OneOf<T extends string> =
  | { readonly kind: 'known'; readonly value: T }
  | { readonly kind: 'unknown'; readonly value?: undefined; readonly message: string };

/** Capitals do not matter: `a4` is A4. */
export function oneOf<T extends string>(
  flag: string,
  given: string,
  words: readonly string[],
  is: (word: string) => word is T,
): OneOf<T> {
  const word = words.find((one) => one.toLowerCase() === given.toLowerCase());
  if (word !== undefined && is(word)) return { kind: 'known', value: word };
  const near = nearest(given, words);
  const offer = near === null ? '' : ` Did you mean ${near}?`;
  return { kind: 'unknown', message: `--${flag} takes ${words.join(', ')}, not ${given}.${offer}` };
}
