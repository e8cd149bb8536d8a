/** A sum as it is printed in, the number it comes to out: worked from the words alone, as a maker would. */

/** `ch 3 is 1, 2 in the first sc, (1 + 5) x 5 = 30, 3 in the last sc: 36 sts` -> its terms added, and what it claims. */
export function evaluateSum(words: string): { readonly adds: number; readonly claims: number } {
  const at = words.lastIndexOf(': ');
  const claims = Number.parseInt(words.slice(at + 2), 10);
  const adds = words
    .slice(0, at)
    .split(', ')
    .reduce((sum, term) => sum + termValue(term), 0);
  return { adds, claims };
}

function termValue(term: string): number {
  const counted = term.match(/^(?:ch \d+ is|the \d+ skipped ch are) (\d+)$/);
  if (counted !== null) return Number(counted[1]);
  const equal = term.match(/^(.*) = (\d+)$/);
  if (equal === null) return left(term);
  const value = Number(equal[2]);
  if (left(equal[1] ?? '') !== value) throw new Error(`${term} does not hold`);
  return value;
}

/** What stands before an equals sign, or a term without one. */
function left(words: string): number {
  const each = words.match(/^(\d+)(?: \([^()]*\))? in each of (?:the next )?(\d+)/);
  if (each !== null) return Number(each[1]) * Number(each[2]);
  const corners = words.match(/^(\d+) and (\d+) in each of (\d+) sps?$/);
  if (corners !== null) return Number(corners[1]) + Number(corners[2]) * Number(corners[3]);
  const over = words.match(/^(\d+) over each (\d+) of (\d+)/);
  if (over !== null) return (Number(over[1]) * Number(over[3])) / Number(over[2]);
  const more = words.match(/^(\d+) (and|less) (\d+)(?: more)?$/);
  if (more !== null) return Number(more[1]) + (more[2] === 'and' ? 1 : -1) * Number(more[3]);
  if (/^[\d()+x ]+$/.test(words)) return product(words);
  const plain = words.match(/^(\d+) \S/);
  if (plain === null) throw new Error(`cannot be added up: ${words}`);
  return Number(plain[1]);
}

/** `(2 + 3) x 7 + 3`. */
export function product(words: string): number {
  return words
    .replace(/\(([^()]*)\)/g, (_, inner: string) => String(product(inner)))
    .split(' + ')
    .reduce((sum, factors) => sum + factors.split(' x ').reduce((n, factor) => n * Number(factor), 1), 0);
}
