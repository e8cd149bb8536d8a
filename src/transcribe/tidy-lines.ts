/** A pasted text in; its lines with words on them out, white space, bullets and marks of quoting tidied away. */

import type { MappedText, Run } from '../source/mapped-text.ts';
import type { Span } from '../source/span.ts';
import { sliceText, trimText } from './mapped-pieces.ts';

export interface TextLine {
  /** The words, without bullet or marks of quoting. */
  readonly text: MappedText;
  /** The words as cells of a table where tabs or upright strokes part them; else one cell. */
  readonly cells: readonly MappedText[];
  /** Where the line stands in the file, from its first mark to its last. */
  readonly span: Span;
  /** A bullet before it, or signs that make it a heading. */
  readonly mark: 'bullet' | 'heading' | null;
  /** How often it was quoted in an email. */
  readonly quoted: number;
  /** It opens the text, or a blank line or a rule stands above it. */
  readonly gap: boolean;
  /** It tells what a special stitch is, wherever it stands. */
  readonly tellsStitch?: true;
  /** No letter and no figure on it: a rule, stars, an ornament. */
  readonly isRule: boolean;
}

const LINE_ENDS = /\r\n|[\n\r\v\f\u0085\u2028\u2029]/g;

/** Characters without width or shape: soft hyphens, marks of direction, controls. */
const UNSEEN = /(?![\s\u200c\u200d])[\p{Cc}\p{Cf}]|\ufe0e|\ufe0f/u;

const BULLET =
  /^(?:[•‣◦▪▫●○■□▢☐☑☒✓✔✗➤►▸▶·⁃]\s*|[–—-]\s+(?=\S)(?!\d+\s*(?:sts?|stitches|sc|hdc|dc|htr|tr)\W*$)|o\s(?=\S))/i;
/** `~ materials ~`, `== GAUGE ==`, `- Body -`: signs before and behind a few words. */
const SET_OFF = /^([~=+]{1,5}|[–—-]{1,5})\s*[\p{L}’']+(?:[ /&]+[\p{L}’']+){0,4}(?:\s*\([\p{L} ,]+\))?\s*\1$/u;

/** Pictures are ornament; the signs of copyright and trade are not. */
const ORNAMENT = /^(?:(?![©®™‼⁉↔↕])\p{Extended_Pictographic}[\u200d\u{1f3fb}-\u{1f3ff}]*\s*)+/u;
const ORNAMENT_BEHIND = /(?:\s*(?![©®™‼⁉↔↕])\p{Extended_Pictographic}[\u200d\u{1f3fb}-\u{1f3ff}]*)+$/u;

export function tidyLines(text: string): TextLine[] {
  const lines: TextLine[] = [];
  let gap = true;
  for (const [start, end] of lineEnds(text)) {
    const line = tidyLine(text, start, end, gap);
    if (line === null) {
      gap = true;
      continue;
    }
    const above = lines.at(-1);
    // A rule of - or = right below a line makes that line a heading.
    if (line.isRule && !line.gap && above !== undefined && /^[=~_-]{3,}$/.test(line.text.text))
      lines[lines.length - 1] = { ...above, mark: 'heading' };
    lines.push(line);
    gap = line.isRule;
  }
  return lines;
}

/** Words without the pictures before and behind them. */
export function withoutOrnament(text: string): string {
  return text.replace(ORNAMENT, '').replace(ORNAMENT_BEHIND, '').trim();
}

function* lineEnds(text: string): Generator<[number, number]> {
  let start = 0;
  for (const found of text.matchAll(LINE_ENDS)) {
    yield [start, found.index];
    start = found.index + found[0].length;
  }
  yield [start, text.length];
}

function tidyLine(text: string, start: number, end: number, gap: boolean): TextLine | null {
  const quotes = /^(?:\s*>)+/.exec(text.slice(start, end))?.[0] ?? '';
  const from = start + quotes.length;
  const whole = tidyText(text, from, end);
  if (whole.text === '') {
    // A quoted blank line parts paragraphs as any other does.
    return null;
  }
  const cells = cellEnds(text, from, end)
    .map(([first, last]) => tidyText(text, first, last))
    .filter((cell) => cell.text !== '');
  const { words, mark } = withoutMarks(cells.length > 1 ? whole : (cells[0] ?? whole));
  const first = whole.runs[0]?.offset ?? from;
  const raw = text.slice(start, end);
  return {
    text: words,
    cells: cells.length > 1 ? cells : [words],
    span: { start: Math.min(first, start + raw.search(/\S|$/)), end: start + raw.trimEnd().length },
    mark,
    quoted: quotes.replace(/\s/g, '').length,
    gap,
    isRule: !/[\p{L}\p{N}]/u.test(words.text),
  };
}

/** White space of every kind becomes one blank, and none at the ends. */
function tidyText(text: string, start: number, end: number): MappedText {
  let out = '';
  const runs: Run[] = [];
  let blankAt = -1;
  const put = (character: string, offset: number): void => {
    const last = runs.at(-1);
    if (last === undefined || offset - last.offset !== out.length - last.at)
      runs.push({ at: out.length, offset });
    out += character;
  };
  for (let at = start; at < end; at += 1) {
    const character = text.charAt(at);
    if (UNSEEN.test(character)) continue;
    if (/\s/.test(character)) {
      if (blankAt === -1) blankAt = at;
      continue;
    }
    if (blankAt !== -1 && out !== '') put(' ', blankAt);
    blankAt = -1;
    put(isHalf(text, at) ? '\ufffd' : character, at);
  }
  return { text: out, runs: runs.length === 0 ? [{ at: 0, offset: start }] : runs };
}

/** Half of a character that is written in two, without its other half. */
function isHalf(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  if (code < 0xd800 || code > 0xdfff) return false;
  if (code <= 0xdbff) return !(text.charCodeAt(at + 1) >= 0xdc00 && text.charCodeAt(at + 1) <= 0xdfff);
  return !(text.charCodeAt(at - 1) >= 0xd800 && text.charCodeAt(at - 1) <= 0xdbff);
}

/** One stroke alone parts the cells of a table whose first column numbers its rows. */
const OF_TWO_CELLS = /^\s*(?:(?:rows?|rnds?|rounds?)(?:\s*\d{1,3})?|\d{1,3}(?:\s*[–-]\s*\d{1,3})?)\s*\|/i;

function cellEnds(text: string, start: number, end: number): [number, number][] {
  const line = text.slice(start, end);
  const strokes = line.split('|').length > 2 || OF_TWO_CELLS.test(line);
  const parts = line.matchAll(strokes ? /[^|\t]+/g : /[^\t]+/g);
  return [...parts].map((part) => [start + part.index, start + part.index + part[0].length]);
}

function withoutMarks(text: MappedText): { words: MappedText; mark: TextLine['mark'] } {
  const setOff = SET_OFF.exec(text.text);
  const signs = setOff?.[1]?.length ?? 0;
  if (signs > 0)
    return { words: trimText(sliceText(text, signs, text.text.length - signs)), mark: 'heading' };
  let words = text;
  let mark: TextLine['mark'] = null;
  const strip = (found: RegExpExecArray | null, as: TextLine['mark']): void => {
    if (found === null || found[0] === '') return;
    words = trimText(sliceText(words, found[0].length));
    mark ??= as;
  };
  strip(ORNAMENT.exec(words.text), 'bullet');
  strip(BULLET.exec(words.text), 'bullet');
  // A star with a blank behind it is a bullet unless the line has a repeat to begin with it.
  if (/^\*\s/.test(words.text) && !/\*|\brep/i.test(words.text.slice(1)))
    strip(/^\*\s+/.exec(words.text), 'bullet');
  strip(/^#{1,6}\s+/.exec(words.text), 'heading');
  return withoutBold(words, mark);
}

/** `**Materials**`, `__Materials__`, and the bold label of `**Row 1:** Ch 1, …`. */
function withoutBold(
  words: MappedText,
  mark: TextLine['mark'],
): { words: MappedText; mark: TextLine['mark'] } {
  const found = /^(\*\*|__)([^*_]{1,60}?)\1(.*)$/.exec(words.text);
  if (found === null) return { words, mark };
  const [, sign = '', bold = '', rest = ''] = found;
  const labelled = /:$/.test(bold.trim()) || /^\s*[:.–-]/.test(rest);
  if (rest !== '' && !labelled) return { words, mark };
  const label = sliceText(words, sign.length, sign.length + bold.length);
  if (rest === '') return { words: trimText(label), mark: 'heading' };
  const after = sliceText(words, 2 * sign.length + bold.length);
  return {
    words: {
      text: label.text + after.text,
      runs: [...label.runs, ...shifted(after.runs, label.text.length)],
    },
    mark,
  };
}

function shifted(runs: readonly Run[], by: number): Run[] {
  return runs.map(({ at, offset }) => ({ at: at + by, offset }));
}
