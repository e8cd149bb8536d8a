/** A printed row in, the same out with its abbreviations and repeats marked, for a page that explains them where they stand. */

import { anyOf, wordFound } from './find-words.ts';
import type { WordedPattern } from './words.ts';

export type MarkedWords = readonly MarkedPiece[];

export type MarkedPiece =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'abbreviation'; readonly text: string; readonly meaning: string }
  /** What is worked again and again: all from the asterisk to the semicolon, or all in the brackets. */
  | { readonly kind: 'repeat'; readonly inside: MarkedWords };

export interface Meaning {
  readonly word: string;
  readonly meaning: string;
}

export interface MarkedText {
  readonly pieces: MarkedWords;
  /** Each abbreviation and special stitch that stands in it, once, in the order of the words. */
  readonly meanings: readonly Meaning[];
}

export type Marker = (text: string) => MarkedText;

/** Knows the abbreviations and special stitches that the pattern uses in one dialect. */
export function markerFor({
  abbreviations,
  specials,
}: Pick<WordedPattern, 'abbreviations' | 'specials'>): Marker {
  const meanings = new Map<string, string>();
  for (const { abbr, meaning } of abbreviations) meanings.set(abbr, meaning);
  for (const { called, how } of specials) meanings.set(called, how);
  const words = meanings.size === 0 ? null : anyOf([...meanings.keys()]);
  return (text) => {
    const found = new Map<string, string>();
    const marked = (part: string): MarkedPiece[] => {
      if (words === null) return part === '' ? [] : [{ kind: 'words', text: part }];
      const pieces: MarkedPiece[] = [];
      let done = 0;
      for (const match of part.matchAll(words)) {
        const word = wordFound(match[0], meanings);
        const meaning = word === null ? undefined : meanings.get(word);
        if (word === null || meaning === undefined) continue;
        found.set(word, meaning);
        if (match.index > done) pieces.push({ kind: 'words', text: part.slice(done, match.index) });
        pieces.push({ kind: 'abbreviation', text: match[0], meaning });
        done = match.index + match[0].length;
      }
      if (done < part.length) pieces.push({ kind: 'words', text: part.slice(done) });
      return pieces;
    };
    const pieces = withRepeats(text, marked);
    return { pieces, meanings: [...found].map(([word, meaning]) => ({ word, meaning })) };
  };
}

function withRepeats(text: string, marked: (part: string) => MarkedPiece[]): MarkedPiece[] {
  const pieces: MarkedPiece[] = [];
  let rest = text;
  for (let repeat = nextRepeat(rest); repeat !== null; repeat = nextRepeat(rest)) {
    const { from, to } = repeat;
    pieces.push(...marked(rest.slice(0, from)));
    // The asterisk or the bracket itself stays outside what is looked through again.
    const inside = rest.slice(from, to);
    pieces.push({
      kind: 'repeat',
      inside: [
        { kind: 'words', text: inside.slice(0, 1) },
        ...withRepeats(inside.slice(1, -1), marked),
        { kind: 'words', text: inside.slice(-1) },
      ],
    });
    rest = rest.slice(to);
  }
  pieces.push(...marked(rest));
  return pieces;
}

/** `*…;` that is taken up again by `rep from *`, and `[…]`; as `print-step.ts` prints them, so other brackets are left. */
function nextRepeat(text: string): { readonly from: number; readonly to: number } | null {
  const starts = /[*†‡[]/g;
  for (let start = starts.exec(text); start !== null; start = starts.exec(text)) {
    const from = start.index;
    // Where an earlier repeat is taken up again nothing begins.
    if (/ from $/.test(text.slice(0, from))) continue;
    const to = start[0] === '[' ? closingBracket(text, from) : takenUp(text, from, start[0]);
    if (to !== null) return { from, to };
    // An asterisk in `rep from *` and the two of `**` begin nothing.
    while (text.charAt(starts.lastIndex) === start[0]) starts.lastIndex += 1;
  }
  return null;
}

function closingBracket(text: string, from: number): number | null {
  let depth = 0;
  for (let i = from; i < text.length; i += 1) {
    if (text.charAt(i) === '[') depth += 1;
    if (text.charAt(i) === ']') depth -= 1;
    if (depth === 0) return i + 1;
  }
  return null;
}

function takenUp(text: string, from: number, mark: string): number | null {
  if (text.charAt(from + 1) === mark) return null;
  const again = [`; rep from ${mark} `, `; repeat from ${mark} `]
    .map((words) => text.indexOf(words, from))
    .filter((at) => at >= 0);
  return again.length === 0 ? null : Math.min(...again) + 1;
}
