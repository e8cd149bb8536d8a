/** A place in a list of tokens that the readers of the notation move forward, with what they need to know. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { MappedText } from '../source/mapped-text.ts';
import { fileSpan } from '../source/mapped-text.ts';
import type { Span } from '../source/span.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import type { Counts } from './chain-counts.ts';
import type { Found, FullName, Lexicon } from './lexicon.ts';
import { findName } from './lexicon.ts';
import type { StatedCount, Unit } from './line.ts';
import type { Num } from './num.ts';
import type { BlockShape } from './read-blocks.ts';
import type { Token, Tokens } from './token.ts';
import { END } from './token.ts';
import type { Step } from './tree.ts';
import type { WordSet } from './word-set.ts';

/** Another name of a yarn, word by word, and its letter. */
export interface YarnName {
  readonly words: readonly string[];
  readonly letter: string;
}

/** What the words are read against. */
export interface Context {
  /** Name of the file, for faults. */
  readonly file: string;
  readonly terms: Terms;
  /** How many sizes the pattern has. */
  readonly sizes: number;
  /** Their names, for headings such as `Sizes M and L only`. */
  readonly sizeNames?: readonly string[];
  /** Names of the special stitches the pattern defines. */
  readonly specials: readonly string[];
  /** Their names in full words, where they have one. */
  readonly fullNames?: readonly FullName[];
  /** Letters of the yarns the pattern lists. */
  readonly yarns: readonly string[];
  /** What blocks worked from corner to corner are made of, where they are written out. */
  readonly blocks?: BlockShape | null;
  /** What else rows may call them: their colours. */
  readonly yarnNames?: readonly YarnName[];
}

/** The same with nothing left out: all texts are read against one shape of it, which is quick to look into. */
export function wholeContext(given: Context): Context {
  return {
    file: given.file,
    terms: given.terms,
    sizes: given.sizes,
    sizeNames: given.sizeNames ?? NO_NAMES,
    specials: given.specials,
    fullNames: given.fullNames ?? NO_FULL_NAMES,
    yarns: given.yarns,
    blocks: given.blocks ?? null,
    yarnNames: given.yarnNames ?? NO_YARN_NAMES,
  };
}

const NO_NAMES: readonly string[] = [];
const NO_FULL_NAMES: readonly FullName[] = [];
const NO_YARN_NAMES: readonly YarnName[] = [];

/** What is said of rows that form a pattern. One for all lines of a text. */
export interface Pattern {
  /** How many rows form it, where a line before has said so; for `cont in patt`. */
  rows: number | null;
  /** Which row was labelled `Patt row`; 0 where none was. */
  row: number;
}

/** What is looked for in a text when it is first asked. */
export interface Part {
  /** What `R3` and a bare `3.` number here: the part is worked in rows or in rounds; null until a label does not say. */
  unit: Unit | null;
}

export interface Cursor {
  readonly mapped: MappedText;
  readonly tokens: readonly Token[];
  /** Where each of them begins in the text. */
  readonly starts: readonly number[];
  /** Index of the token that is read next. */
  at: number;
  readonly context: Context;
  readonly lexicon: Lexicon;
  readonly faults: Diagnostic[];
  /** Unknown words of the text so far, each with the known one that was offered for it. */
  readonly offered: Map<string, string | null>;
  /** What is found out of the whole text, for all of its lines. */
  readonly part: Part;
  /** Open brackets and asterisks that the reader is inside of, so that depth is bounded. */
  depth: number;
  /** Brackets alone among them: a closing one outside of all was never opened. */
  brackets: number;
  /** Where a stitch's name was looked for last, and what was found: many readers ask of the same word. */
  namedAt: number;
  named: Found | null;
  /** The length of the chain read last, for `first of these ch`. */
  chained: Num | null;
  /** Whether the line's label goes on to a height, `Rows 2 on:`, so that the row may say how high. */
  openEnded: boolean;
  /** Places of the sizes that the line is for, in their order; null for all of them. */
  scope: readonly number[] | null;
  /** The highest row or round that is numbered in the lines before. */
  readonly reached: number;
  readonly patt: Pattern;
  /** What a count at the end says of chains: `(24 tr, counting the 3 missed ch as 1 tr)`. */
  counting: Counts | null;
  /** `82 sc` of `82 sc evenly around the edge (2 in the end of each row)`: how many the row is to have. */
  spreadOver: StatedCount | null;
  /** Whether rows are repeated or counted anywhere in the line: most lines need not be looked through for them. */
  repeatsRows: boolean;
  /** What stood between the last pair of asterisks of this line, for `rep from * to *`. */
  marked: readonly Step[] | null;
  /** Reads the steps inside a bracket or a repeat; carried along so that the readers need not import each other in a ring. */
  readonly readSteps: (cursor: Cursor, until: Until) => StepsRead;
}

/** What the lines of a text have in common. */
export type Shared = Pick<
  Cursor,
  'mapped' | 'context' | 'lexicon' | 'faults' | 'offered' | 'part' | 'patt' | 'readSteps'
>;

/** A cursor at the first of the tokens, outside of every bracket. */
export function cursorOn(given: Shared, { list, starts }: Tokens, reached: number): Cursor {
  return {
    mapped: given.mapped,
    tokens: list,
    starts,
    at: 0,
    context: given.context,
    lexicon: given.lexicon,
    faults: given.faults,
    offered: given.offered,
    part: given.part,
    depth: 0,
    brackets: 0,
    namedAt: -1,
    named: null,
    chained: null,
    openEnded: false,
    scope: null,
    reached,
    patt: given.patt,
    counting: null,
    spreadOver: null,
    repeatsRows: false,
    marked: null,
    readSteps: given.readSteps,
  };
}

/** The same place in other tokens. Field by field: copies made in any other way are slow to read from, and so is all beside them. */
export function onTokens(cursor: Cursor, tokens: Tokens): Cursor {
  const inner = cursorOn(cursor, tokens, cursor.reached);
  inner.at = cursor.at;
  inner.depth = cursor.depth;
  inner.brackets = cursor.brackets;
  inner.chained = cursor.chained;
  inner.openEnded = cursor.openEnded;
  inner.scope = cursor.scope;
  inner.counting = cursor.counting;
  inner.spreadOver = cursor.spreadOver;
  inner.marked = cursor.marked;
  return inner;
}

/** What closes a run of steps: the end of the line, a closing bracket, or `rep from` this mark. */
export type Until = 'line' | 'bracket' | string;

export interface StepsRead {
  readonly steps: readonly Step[];
  /** How many steps stood before `**`; null when there is none. */
  readonly markAt: number | null;
  /** The same mark again closed what it opened: `*sc in next st*`. */
  readonly closedByMark: boolean;
  readonly stated: StatedCount | null;
}

/** The token `ahead` places on. */
export function peek(cursor: Cursor, ahead = 0): Token {
  const { tokens } = cursor;
  const at = cursor.at + ahead;
  // Asked first: an index outside of a list is slow to look up.
  return at >= 0 && at < tokens.length ? (tokens[at] ?? END) : END;
}

/** The lower-case word `ahead` places on, or '' when it is no word. */
export function wordAt(cursor: Cursor, ahead = 0): string {
  return peek(cursor, ahead).word;
}

export function take(cursor: Cursor): Token {
  const token = peek(cursor);
  if (token.kind !== 'end') cursor.at += 1;
  return token;
}

/** The longest name of a stitch that begins at the cursor, or null. */
export function nameHere(cursor: Cursor): Found | null {
  if (cursor.namedAt !== cursor.at) {
    cursor.named = findName(cursor.lexicon, cursor.tokens, cursor.at);
    cursor.namedAt = cursor.at;
  }
  return cursor.named;
}

/** Moves over the words if they all stand next, in order. Single parameters: a list made at each call costs more than the reading. */
export function takeWords(
  cursor: Cursor,
  first: string,
  second: string,
  third?: string,
  fourth?: string,
  fifth?: string,
): boolean {
  if (wordAt(cursor) !== first || wordAt(cursor, 1) !== second) return false;
  if (third !== undefined && wordAt(cursor, 2) !== third) return false;
  if (fourth !== undefined && wordAt(cursor, 3) !== fourth) return false;
  if (fifth !== undefined && wordAt(cursor, 4) !== fifth) return false;
  cursor.at += fifth !== undefined ? 5 : fourth !== undefined ? 4 : third !== undefined ? 3 : 2;
  return true;
}

/**
 * Moves over one word if it is among those given, and gives it; more than four of them are a set for `takeOneOf`. Words are
 * compared with nothing but words, because then the engine needs no more than to compare addresses.
 */
export function takeAny(
  cursor: Cursor,
  first: string,
  second = first,
  third = first,
  fourth = first,
): string | null {
  const word = wordAt(cursor);
  if (word !== first && word !== second && word !== third && word !== fourth) return null;
  cursor.at += 1;
  return word;
}

/** Moves over one word if it is in the set, and gives it. */
export function takeOneOf(cursor: Cursor, words: WordSet): string | null {
  const token = peek(cursor);
  if (!words.holds(token)) return null;
  cursor.at += 1;
  return token.word;
}

/** Where the tokens from `from` up to the cursor stand in the file. */
export function spanSince(cursor: Cursor, from: number): Span {
  return fileSpan(cursor.mapped, startOf(cursor, from), endOf(cursor, lastSince(cursor, from)));
}

function lastSince({ at, starts }: Cursor, from: number): number {
  const last = at - 1;
  return last > from && last < starts.length ? last : from;
}

/** Where the token at an index stands in the file. */
export function spanAt(cursor: Cursor, at: number): Span {
  return fileSpan(cursor.mapped, startOf(cursor, at), endOf(cursor, at));
}

/** Where the token at an index begins in the text. */
export function startOf({ starts }: Cursor, at: number): number {
  return at >= 0 && at < starts.length ? (starts[at] ?? 0) : 0;
}

/** Where the token at an index ends in the text. */
export function endOf({ tokens, starts }: Cursor, at: number): number {
  return at >= 0 && at < starts.length ? (starts[at] ?? 0) + (tokens[at] ?? END).length : 0;
}

/** The characters of a token and of those behind it up to another, as they stand in the text. */
export function writtenAt(cursor: Cursor, first: number, last = first): string {
  return cursor.mapped.text.slice(startOf(cursor, first), endOf(cursor, last));
}

/** The words of the tokens from `from` up to the cursor, as written. */
export function textSince(cursor: Cursor, from: number): string {
  const last = lastSince(cursor, from);
  const text = writtenAt(cursor, from, last);
  return isEven(cursor, from, last) ? text : text.replace(/\s+/g, ' ');
}

/** Whether nothing but one blank stands between two tokens: most texts are so, and to look is quicker than to replace. */
function isEven(cursor: Cursor, first: number, last: number): boolean {
  const { starts } = cursor;
  const { text } = cursor.mapped;
  for (let at = first; at < last; at += 1) {
    const end = endOf(cursor, at);
    const gap = (starts[at + 1] ?? end) - end;
    if (gap > 1 || (gap === 1 && text.charCodeAt(end) !== BLANK)) return false;
  }
  return true;
}

const BLANK = 32;

/** Leaves out the faults told since there were so many: what was tried is read another way. */
export function forgetSince({ faults }: Cursor, before: number): void {
  // Asked first, because to set the length of a list is slow.
  if (faults.length > before) faults.length = before;
}

/** Moves on to what ends a step. */
export function skipToBoundary(cursor: Cursor): void {
  while (!atBoundary(cursor)) cursor.at += 1;
}

/** True at what ends a step: a comma, a full stop, a closing bracket, the end. */
export function atBoundary(cursor: Cursor): boolean {
  const { kind } = peek(cursor);
  return (
    kind === 'comma' ||
    kind === 'semicolon' ||
    kind === 'stop' ||
    kind === 'end' ||
    kind === 'close' ||
    kind === 'newline'
  );
}
