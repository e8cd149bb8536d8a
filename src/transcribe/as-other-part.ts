/** `Work as for Back until all armhole decreases are complete` in, the lines of the other piece that it asks for out. */

import type { MappedText } from '../source/mapped-text.ts';
import { joinTexts, sliceText } from './mapped-pieces.ts';
import type { WorkLine } from './sorted-lines.ts';
import { upToRow, withCount } from './up-to-row.ts';

/** A piece as it was sorted, under the name it has by now. */
export interface NamedLines {
  readonly name: string;
  /** The heading over it and others, where it has one. */
  readonly within?: string;
  readonly lines: readonly WorkLine[];
}

const AS_FOR =
  /^(?:(?:work|make|begin|start)\s+)?(?:(?:exactly\s+)?(?:the\s+)?same as|as(?:\s+given)?\s+for|as)\s+(?:the\s+)?(?!rows?\b|rnds?\b|rounds?\b|foll|above|before)([\p{L}][\p{L} ]*?)(?:,?\s+(?:until|(?:up\s+)?to(?:\s+and\s+including)?|(?:up\s+)?through)\s+(.+?))?(?:,?\s+(?:and\s+)?(?:revers(?:e|ing)\s+(?:all\s+|the\s+)?shapings?|(?:then\s+)?turn(?:ing)?\s+(?:the\s+)?(?:piece|work|it)\s+over))?(?:\s*[.:;,–-]\s*(\(?\d+(?:\s*\([\d\s,:/–-]+\))?\s+[a-z][a-z0-9 ]*\)?))?\s*[.:]?$/iu;

/** Whether a line says that a piece is worked as one of those with these names. */
export function asksForOther(
  text: string,
  parts: readonly { readonly name: string | null; readonly within?: string }[],
): boolean {
  const words = AS_FOR.exec(text)?.[1]?.toLowerCase();
  return (
    words !== undefined &&
    parts.some(({ name, within }) => name?.toLowerCase() === words || within?.toLowerCase() === words)
  );
}

/** Null for a line that says nothing of another piece, its count at the end aside; its lines null where it is not plain which are meant. */
export function linesAsked(
  asking: MappedText,
  parts: readonly NamedLines[],
): { readonly lines: readonly WorkLine[] | null } | null {
  const [, words, until, count] = AS_FOR.exec(asking.text) ?? [];
  const called = words?.toLowerCase();
  // `BACK` over `Ribbing` and `Body`: what goes on counting under it is one piece.
  const part = parts.findLast(({ name }) => name.toLowerCase() === called) ?? wholeOf(parts, called);
  if (part === null) return null;
  const lines =
    until === undefined
      ? part.lines
      : (upToRow(part.lines, until) ?? upToMeasure(part.lines, asking) ?? upTo(part.lines, until));
  if (lines === null || count === undefined) return { lines };
  return { lines: withCount(lines, sliceText(asking, asking.text.lastIndexOf(count), asking.text.length)) };
}

/** The lines of all pieces under one heading; null where none stands under it. */
function wholeOf(parts: readonly NamedLines[], called: string | undefined): NamedLines | null {
  const under = parts.filter(({ within }) => within !== undefined && within.toLowerCase() === called);
  const [first] = under;
  return first === undefined ? null : { ...first, lines: under.flatMap(({ lines }) => lines) };
}

/** `until piece measures 19 (20, 21) in, ending with a WS row`: its rows to that measure; null where it goes on to none itself. */
function upToMeasure(lines: readonly WorkLine[], asking: MappedText): readonly WorkLine[] | null {
  const at = asking.text.search(TO_MEASURE);
  const last = lines.findLastIndex(({ kind, text }) => kind !== 'note' && TO_MEASURE.test(text.text));
  const line = lines[last];
  if (at < 0 || line === undefined) return null;
  const before = sliceText(line.text, 0, line.text.text.search(TO_MEASURE));
  return [...lines.slice(0, last), { ...line, text: joinTexts([before, sliceText(asking, at)], '') }];
}

const TO_MEASURE = /\buntil\s+(?:(?:the\s+)?[a-z]+\s+)?measures?\b[^.]*/i;

/** Null where it is not plain what is named. */
function upTo(lines: readonly WorkLine[], until: string): readonly WorkLine[] | null {
  const end = endOf(lines, until);
  return end === null ? null : lines.slice(0, end);
}

const FINISH =
  /^(?:finish|complete)\s+(?:(?:it\s+)?to\s+(?:match|correspond\s+with)|as(?:\s+given)?\s+for)\s+(?:the\s+)?([\p{L} ]+?)(?:,?\s+revers(?:e|ing)\s+(?:all\s+|the\s+)?shapings?)?\s*\.?$/iu;

/** `Finish to match the first side.` */
export function asksToMatch(text: string): boolean {
  return FINISH.test(text);
}

/** `Finish to match the first side.`: what stands there behind its first row, which this side has already; null where it is no such line. */
export function linesToMatch(text: string, parts: readonly NamedLines[]): readonly WorkLine[] | null {
  const words = FINISH.exec(text)?.[1]?.toLowerCase();
  const part = words === undefined ? undefined : parts.findLast(({ name }) => name.toLowerCase() === words);
  const first = part?.lines.findIndex(({ kind }) => kind !== 'note') ?? -1;
  return part === undefined || first < 0 ? null : part.lines.slice(first + 1);
}

const NAMED_ROW =
  /^work\s+(?:the\s+)?(?:in\s+)?(patt(?:ern)?\s+row)\s+as(?:\s+given)?\s+for\s+(?:the\s+)?([\p{L} ]+?)\s+(\d+)\s+times\b/iu;

/** `Work the patt row as given for Back 26 times`: that row of the other piece, and how often it comes again. */
export function rowAsked(
  text: string,
  parts: readonly NamedLines[],
): { readonly line: WorkLine; readonly again: number } | null {
  const [, row, words, times] = NAMED_ROW.exec(text) ?? [];
  const part = parts.findLast(({ name }) => name.toLowerCase() === words?.toLowerCase());
  const line = part?.lines.find((each) => /^patt(?:ern)?\s+row\s*:/i.test(each.text.text));
  return row === undefined || line === undefined ? null : { line, again: Number(times) - 1 };
}

/** How many of the lines come before what is named. */
function endOf(lines: readonly WorkLine[], until: string): number | null {
  if (/^\*+$/.test(until)) return starred(lines, until);
  const shaping = SHAPED.exec(until);
  if (shaping === null) return null;
  const [, where, decreases] = shaping;
  const from = where === undefined ? 0 : lines.findIndex((line) => heads(line, where));
  const shapes = decreases === undefined ? INCREASING : DECREASING;
  const first = Math.max(0, from);
  const next = lines.findIndex((line, at) => at > first && line.kind === 'note');
  const section = lines.slice(first, next < 0 || from < 0 ? undefined : next);
  const last = section.findLastIndex(({ text }) => shapes.test(text.text));
  if (last < 0) return null;
  const again = section
    .slice(last + 1)
    .findIndex(({ text }) => !/^rep(?:eat)?\s+(?:the\s+)?last\b/i.test(text.text));
  return first + (again < 0 ? section.length : last + 1 + again);
}

/** `to **`: the stars stand before a line or behind one. */
function starred(lines: readonly WorkLine[], stars: string): number | null {
  const before = lines.findIndex(({ text }) => text.text.startsWith(`${stars} `));
  if (before >= 0) return before;
  const behind = lines.findIndex(({ text }) => text.text.endsWith(` ${stars}`));
  return behind < 0 ? null : behind + 1;
}

/** `all armhole decreases are complete`, `increases have been worked`. */
const SHAPED =
  /^(?:all\s+)?(?:(?:the|of the)\s+)?(?:(\p{L}+)\s+)?(?:(decreases?)|increases?)\s+(?:is|are|have been|has been)\s+(?:all\s+)?(?:complete|completed|done|worked|finished|made)$/iu;
const DECREASING = /\d?tog\b|\bdec\b/i;
const INCREASING = /\binc\b|\b2 [a-z]{2,4} in\b/i;

/** `Shape Armholes` heads the armhole decreases. */
function heads({ kind, text }: WorkLine, where: string): boolean {
  return kind === 'note' && text.text.toLowerCase().includes(where.toLowerCase().replace(/s$/, ''));
}
