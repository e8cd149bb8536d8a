/** A YAML scalar as it stands in the file in, its text with the way back to the file out. */

import type { MappedText, Run } from './mapped-text.ts';

/** Text gathered piece by piece, each piece with the place it came from. */
interface Gathering {
  text: string;
  readonly runs: Run[];
}

/** After `|`: each line of the value is a line of the file without its indentation. */
export function literalText(value: string, raw: string, offset: number): MappedText {
  const runs: Run[] = [];
  const rawLines = raw.split('\n');
  let rawStart = offset;
  let at = 0;
  value.split('\n').forEach((line, index) => {
    const rawLine = rawLines[index] ?? '';
    const bare = rawLine.endsWith('\r') && !line.endsWith('\r') ? rawLine.slice(0, -1) : rawLine;
    runs.push({ at, offset: rawStart + Math.max(0, bare.length - line.length) });
    at += line.length + 1;
    rawStart += rawLine.length + 1;
  });
  return { text: value, runs };
}

/** After `>`: lines are joined, so only the characters that are not blank keep their order. */
export function foldedText(value: string, raw: string, offset: number): MappedText {
  const runs: Run[] = [];
  let rawAt = 0;
  for (let at = 0; at < value.length; at++) {
    if (/\s/.test(value.charAt(at))) continue;
    while (rawAt < raw.length && /\s/.test(raw.charAt(rawAt))) rawAt++;
    pushRun(runs, at, offset + rawAt);
    rawAt++;
  }
  if (runs[0]?.at !== 0) runs.unshift({ at: 0, offset });
  return { text: value, runs };
}

/** Text without quotes, in one line or several. */
export function plainScalarText(raw: string, offset: number): MappedText {
  return readFlow(raw, offset, () => null);
}

/** What stands between single quotes, `raw` being without them. */
export function singleQuotedText(raw: string, offset: number): MappedText {
  return readFlow(raw, offset, (at) => (raw.startsWith("''", at) ? { text: "'", length: 2 } : null));
}

/** What stands between double quotes, `raw` being without them. */
export function doubleQuotedText(raw: string, offset: number): MappedText {
  return readFlow(raw, offset, (at) => (raw.charAt(at) === '\\' ? readEscape(raw, at) : null));
}

/** A piece of the file that stands for other text. */
interface Escape {
  readonly text: string;
  readonly length: number;
}

function readFlow(raw: string, offset: number, escapeAt: (at: number) => Escape | null): MappedText {
  const gathered: Gathering = { text: '', runs: [] };
  let at = 0;
  while (at < raw.length) {
    const piece = escapeAt(at) ?? blanksAt(raw, at) ?? { text: raw.charAt(at), length: 1 };
    const verbatim = piece.text === raw.slice(at, at + piece.length);
    for (let index = 0; index < piece.text.length; index++) {
      pushRun(gathered.runs, gathered.text.length + index, offset + at + (verbatim ? index : 0));
    }
    gathered.text += piece.text;
    at += piece.length;
  }
  if (gathered.runs.length === 0) gathered.runs.push({ at: 0, offset });
  return gathered;
}

/** Blanks within a line stand for themselves; with a line's end they become a space, and each further end a line's end. */
function blanksAt(raw: string, at: number): Escape | null {
  let end = at;
  while (end < raw.length && /[ \t\r\n]/.test(raw.charAt(end))) end++;
  if (end === at) return null;
  const blanks = raw.slice(at, end);
  const lineEnds = blanks.split('\n').length - 1;
  const text = lineEnds === 0 ? blanks : lineEnds === 1 ? ' ' : '\n'.repeat(lineEnds - 1);
  return { text, length: blanks.length };
}

/** YAML 1.2, section 5.7. */
const escapes: Readonly<Record<string, string>> = {
  '0': '\0',
  a: '\x07',
  b: '\b',
  t: '\t',
  '\t': '\t',
  n: '\n',
  v: '\v',
  f: '\f',
  r: '\r',
  e: '\x1b',
  ' ': ' ',
  '"': '"',
  '/': '/',
  '\\': '\\',
  N: '\x85',
  _: '\xa0',
  L: '\u2028',
  P: '\u2029',
};

const escapeDigits: Readonly<Record<string, number>> = { x: 2, u: 4, U: 8 };

function readEscape(raw: string, at: number): Escape {
  const lineEnd = /\\\r?\n[ \t]*/y;
  lineEnd.lastIndex = at;
  const continued = lineEnd.exec(raw);
  if (continued !== null) return { text: '', length: continued[0].length };
  const letter = raw.charAt(at + 1);
  const digits = escapeDigits[letter] ?? 0;
  if (digits > 0) {
    const code = Number.parseInt(raw.slice(at + 2, at + 2 + digits), 16);
    if (code >= 0 && code <= 0x10ffff) return { text: String.fromCodePoint(code), length: 2 + digits };
  }
  const text = escapes[letter];
  // An escape YAML does not have is kept as written, and reported where mistakes are gathered.
  return text === undefined ? { text: '\\', length: 1 } : { text, length: 2 };
}

/** Adds the place of one character, unless it follows on from the run before. */
function pushRun(runs: Run[], at: number, offset: number): void {
  const last = runs.at(-1);
  if (last !== undefined && offset - last.offset === at - last.at) return;
  runs.push({ at, offset });
}
