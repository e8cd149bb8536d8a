/** What a text tells of its stripes and the rows of its first piece in, stripes that come to another number of rows out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { fileSpan, type MappedText } from '../source/mapped-text.ts';
import { textFault } from './text-faults.ts';
import { labelOf } from './up-to-row.ts';

/** `2 rows A`, `2 rows in white`; not `2 more rows`. */
const STRIPE =
  /\b(\d{1,3})\s+(?:rows?|rnds?|rounds?)\s+(?:(?:in|of|with|each of)\s+)?(?!of\b|in\b|more\b|have\b|and\b)(\p{L}+)/giu;
/** `Work these 4 rows 6 times`, `repeat these 10 rows`. */
const AGAIN =
  /\b(?:work|rep(?:eat)?)\s+(?:these|the|this|last)\s+(?:last\s+)?(\d{1,3})[\s-]+(?:rows?|rnds?|rounds?)(?:\s+stripes?)?(?:\s+(?:sequence\s+)?(\d{1,3})\s+(more\s+)?times)?/i;
/** `then work 2 more rows in A`, `ending with 2 rows A`. */
const THEN =
  /\b(?:then|ending with|and)\s+(?:work\s+)?(\d{1,3})\s+(?:more\s+)?(?:rows?|rnds?|rounds?)\s+(?:in\s+)?\p{L}/iu;
/** `(62 rows)`, `62 rows in all`. */
const IN_ALL =
  /\((\d{1,3})\s+(?:rows?|rnds?|rounds?)(?: in (?:all|total))?\)|\b(\d{1,3})\s+(?:rows?|rnds?|rounds?) in (?:all|total)\b/i;

/** Each is told once, where the number stands that does not agree. */
export function stripeSums(
  file: string,
  said: readonly MappedText[],
  rows: readonly MappedText[],
): Diagnostic[] {
  return said.flatMap((text) => {
    const told = stripesIn(text.text);
    if (told === null) return [];
    const { sum, again, total, given } = told;
    if (again !== null && again.n !== sum)
      return [fault(file, text, again, { stripes: sum, other: again.n, of: 'repeat' })];
    if (given !== null && total !== null && given.n !== total)
      return [fault(file, text, given, { stripes: total, other: given.n, of: 'all' })];
    const all = given?.n ?? total;
    const piece = all === null ? null : rowsOf(rows);
    if (all === null || piece === null || piece === all) return [];
    return [fault(file, text, given ?? told.first, { stripes: all, other: piece, of: 'piece' })];
  });
}

interface Said {
  readonly n: number;
  readonly start: number;
  readonly end: number;
}

interface Stripes {
  readonly first: Said;
  /** How many rows the stripes have, once through. */
  readonly sum: number;
  /** How many are said to be repeated. */
  readonly again: Said | null;
  /** How many there are in all by what is said; null where that is left open. */
  readonly total: number | null;
  /** How many there are said to be in all. */
  readonly given: Said | null;
}

/** Null where fewer than two stripes are told one after the other. */
function stripesIn(text: string): Stripes | null {
  const stop = text.search(/[.;]|\b(?:work|rep(?:eat)?|ending|then)\b/i);
  const sequence = stop < 0 ? text : text.slice(0, stop);
  const stripes = [...sequence.matchAll(STRIPE)];
  const [first] = stripes;
  if (first === undefined || stripes.length < 2) return null;
  const sum = stripes.reduce((rows, [, n]) => rows + Number(n), 0);
  const rest = text.slice(sequence.length);
  const again = AGAIN.exec(rest);
  const times = again?.[2] === undefined ? null : Number(again[2]) + (again[3] === undefined ? 0 : 1);
  const behind = THEN.exec(again === null ? rest : rest.slice(again.index + again[0].length));
  const all = IN_ALL.exec(text);
  return {
    first: { n: Number(first[1]), start: first.index, end: first.index + first[0].length },
    sum,
    again: again === null ? null : saidAt(Number(again[1]), sequence.length + again.index, again[0]),
    total: times === null ? null : sum * times + Number(behind?.[1] ?? 0),
    given: all === null ? null : saidAt(Number(all[1] ?? all[2]), all.index, all[0]),
  };
}

function saidAt(n: number, start: number, words: string): Said {
  return { n, start, end: start + words.length };
}

/** The number of the last row; null where rows are repeated without a number, or are not as many in every size. */
function rowsOf(rows: readonly MappedText[]): number | null {
  let last = 0;
  for (const { text } of rows) {
    const label = labelOf(text);
    if (label === null && /\brep(?:eat)?\b|\bcont(?:inue)?\b|\bmore\b|\bnext\b/i.test(text)) return null;
    if (label === null) continue;
    if (label.from.length > 1 || label.to.length > 1) return null;
    last = Math.max(last, label.to[0] ?? 0);
  }
  return last === 0 ? null : last;
}

function fault(
  file: string,
  text: MappedText,
  { start, end }: Said,
  facts: { readonly stripes: number; readonly other: number; readonly of: 'repeat' | 'all' | 'piece' },
): Diagnostic {
  return textFault('text/stripes', file, fileSpan(text, start, end), facts);
}
