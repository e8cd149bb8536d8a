/** Words in, one list of them out: `A, B or C`. */

export function listed(words: readonly string[], last: 'or' | 'and'): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}
