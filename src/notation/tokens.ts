/** Instruction text in, words, numbers and marks out, each with its place in the text. */

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
  /** Value of a number or an ordinal, 0 otherwise. */
  readonly value: number;
  /** Indices into the text. */
  readonly start: number;
  readonly end: number;
  /** Nothing stands between it and the token before. */
  readonly glued: boolean;
}

const SINGLE: Readonly<Record<string, TokenKind>> = {
  '(': 'open',
  '[': 'open',
  '{': 'open',
  ')': 'close',
  ']': 'close',
  '}': 'close',
  ',': 'comma',
  ';': 'semicolon',
  '.': 'stop',
  ':': 'colon',
  '-': 'dash',
  '–': 'dash',
  '—': 'dash',
  '‑': 'dash',
  '−': 'dash',
  '†': 'mark',
  '‡': 'mark',
  '\n': 'newline',
};

/** Every character of the text lies in one token or in the white space between two. Never throws. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  let lastEnd = -1;
  const push = (kind: TokenKind, word: string, value: number, start: number, end: number): void => {
    tokens.push({ kind, text: word, value, start, end, glued: start === lastEnd });
    lastEnd = end;
  };
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (isBlank(code)) {
      at += 1;
      continue;
    }
    const start = at;
    if (isDigit(code)) {
      at += 1;
      while (isDigit(text.charCodeAt(at))) at += 1;
      const digitsEnd = at;
      const value = Number(text.slice(start, digitsEnd));
      const suffix = text.slice(at, at + 2).toLowerCase();
      if (
        (suffix === 'st' || suffix === 'nd' || suffix === 'rd' || suffix === 'th') &&
        isOrdinal(value, suffix) &&
        !isLetter(text.charCodeAt(at + 2))
      ) {
        at += 2;
        push('ordinal', text.slice(start, at), value, start, at);
      } else push('number', text.slice(start, digitsEnd), value, start, digitsEnd);
      continue;
    }
    const spaced = isLetter(code) ? endOfSpacedName(text, at) : at;
    if (spaced > at) {
      at = spaced;
      push('word', text.slice(start, at).replaceAll('.', '').toLowerCase(), 0, start, at);
      continue;
    }
    if (isLetter(code)) {
      at += 1;
      while (isLetter(text.charCodeAt(at)) || isApostropheInside(text, at)) at += 1;
      at = endOfTogether(text, at);
      push('word', text.slice(start, at).toLowerCase(), 0, start, at);
      continue;
    }
    const character = text.charAt(at);
    if (character === '*') {
      while (text.charAt(at) === '*') at += 1;
      push('mark', text.slice(start, at), 0, start, at);
      continue;
    }
    // A surrogate pair stays whole, so that a message can quote it.
    at += code >= 0xd800 && code <= 0xdbff ? 2 : 1;
    push(SINGLE[character] ?? 'other', text.slice(start, at), 0, start, at);
  }
  push('end', '', 0, text.length, text.length);
  return tokens;
}

/** `1st`, `2nd`, `3rd`, `4th`; but `2 st` glued as `2st` means two stitches. */
function isOrdinal(value: number, suffix: string): boolean {
  const teen = value % 100 >= 11 && value % 100 <= 13;
  const right = teen ? 'th' : (['th', 'st', 'nd', 'rd'][value % 10] ?? 'th');
  return suffix === right;
}

/** `d.c.` is the word `dc`; the last stop is left where it ends the sentence too. */
function endOfSpacedName(text: string, at: number): number {
  if (isLetter(text.charCodeAt(at - 1))) return at;
  const found = /^[a-z](?:\.[a-z]{1,2}){1,2}(?=\.)(?!\.[a-z])/i.exec(text.slice(at, at + 12))?.[0];
  if (found === undefined) return at;
  const end = at + found.length + 1;
  return /^\s*(?:$|\n|\s[A-Z])/.test(text.slice(end, end + 4)) ? end - 1 : end;
}

/** `dc2tog` is one word; `ch3` is a word and a number. */
function endOfTogether(text: string, at: number): number {
  let end = at;
  while (isDigit(text.charCodeAt(end))) end += 1;
  if (end === at || text.slice(end, end + 3).toLowerCase() !== 'tog' || isLetter(text.charCodeAt(end + 3)))
    return at;
  return end + 3;
}

function isBlank(code: number): boolean {
  return code === 32 || code === 9 || code === 13 || code === 0xa0;
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

function isLetter(code: number): boolean {
  return (
    (code >= 97 && code <= 122) ||
    (code >= 65 && code <= 90) ||
    (code >= 0xc0 && code <= 0x24f && code !== 0xd7 && code !== 0xf7)
  );
}

/** `maker's` is one word. */
function isApostropheInside(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return (code === 39 || code === 0x2019) && isLetter(text.charCodeAt(at + 1));
}
