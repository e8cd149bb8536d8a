/**
 * What instructions are made of: words, numbers and marks.
 *
 * A token is what stands somewhere, not where it stands: the same word is the same token wherever it is met, and is made
 * once. Where each stands is kept beside the list.
 */

export type TokenKind =
  | 'word'
  | 'number'
  /** `2nd`, `3rd`. */
  | 'ordinal'
  /** `*`, `**`, `†`, `‡`. */
  | 'mark'
  | 'open'
  | 'close'
  | 'comma'
  | 'semicolon'
  | 'stop'
  | 'colon'
  | 'dash'
  | 'newline'
  /** A character that instructions do not use. */
  | 'other'
  | 'end';

export interface Token {
  readonly kind: TokenKind;
  /** Lower case for words; the characters themselves otherwise. */
  readonly text: string;
  /** The text of a word, '' of anything else. */
  readonly word: string;
  /** The number of a word that is kept, by which sets of words know it; 0 of anything else. */
  readonly id: number;
  /** Value of a number or an ordinal, 0 otherwise. */
  readonly value: number;
  /** How many characters it takes. */
  readonly length: number;
  /** Nothing stands between it and the token before. */
  readonly glued: boolean;
}

/** The same with something before it and with nothing between. */
export interface Twins {
  readonly apart: Token;
  readonly glued: Token;
}

/** The tokens of a stretch of text in order, and the index into the text where each begins. */
export interface Tokens {
  readonly list: readonly Token[];
  readonly starts: readonly number[];
}

/** A token that is met too seldom to be kept. */
export function makeToken(
  kind: TokenKind,
  text: string,
  value: number,
  length: number,
  glued: boolean,
  id = 0,
): Token {
  return { kind, text, word: kind === 'word' ? text : '', id, value, length, glued };
}

export function makeTwins(kind: TokenKind, text: string, value = 0, id = 0): Twins {
  return {
    apart: makeToken(kind, text, value, text.length, false, id),
    glued: makeToken(kind, text, value, text.length, true, id),
  };
}

/** What stands behind the last of them. */
export const END: Token = makeToken('end', '', 0, 0, false);

/** The same word called by another name. */
export function called({ kind, value, length, glued }: Token, text: string): Token {
  return makeToken(kind, text, value, length, glued);
}

/** The tokens of one line, newlines left out, with an end behind them. */
export function closed({ list, starts }: Tokens, first: number, end: number): Tokens {
  const line: Token[] = [];
  const begins: number[] = [];
  for (let at = first; at < end; at += 1) {
    const token = list[at];
    if (token === undefined || token.kind === 'newline') continue;
    line.push(token);
    begins.push(starts[at] ?? 0);
  }
  return withEnd(line, begins);
}

/** The same where no newline is among them: `list` and `starts` are cut as they are. */
export function ended({ list, starts }: Tokens, first: number, end: number): Tokens {
  return withEnd(list.slice(first, end), starts.slice(first, end));
}

function withEnd(list: Token[], starts: number[]): Tokens {
  const last = list.length - 1;
  starts.push((starts[last] ?? 0) + (list[last]?.length ?? 0));
  list.push(END);
  return { list, starts };
}
