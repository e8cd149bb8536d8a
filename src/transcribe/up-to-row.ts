/** `through Row 42 (45, 48)` in; the lines up to that row of each size out, rows told together cut where it ends them. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import type { WorkLine } from './sorted-lines.ts';

const SIZES = String.raw`(\d+)(\s*\([\d\s,:/–-]+\))?`;
const ROW = new RegExp(
  String.raw`^(?:(?:the\s+)?end of\s+)?(?:the\s+)?(?:rows?|rnds?|rounds?)\s+(${SIZES})(?:\s+(?:is|has been|have been|inclusive)(?:\s+(?:complete|completed|worked|done|made))?)?$`,
  'i',
);
const DASH = String.raw`\s*(?:[–—-]|to|through)\s*`;
/** `Rows 3`, `Rows 3 (4)-5 (6)`, `Rows 3-5 (4-6)`. */
const LABEL = new RegExp(
  String.raw`^((?:rows?|rnds?|rounds?)\s+)(?:(\d+${DASH}\d+)\s*\(((?:\s*\d+${DASH}\d+[\s,:/]*)+)\)|(${SIZES})(?:${DASH}(${SIZES}))?)`,
  'i',
);

/** Null where no row is named, or where the piece has it not in every size. */
export function upToRow(lines: readonly WorkLine[], until: string): readonly WorkLine[] | null {
  const named = ROW.exec(until)?.[1];
  if (named === undefined) return null;
  const said = numbersIn(named);
  for (const [at, line] of lines.entries()) {
    const label = labelOf(line.text.text);
    if (label === null) continue;
    const sizes = Math.max(said.length, label.from.length, label.to.length);
    const within = (i: number): boolean => of(label.from, i) <= of(said, i) && of(said, i) <= of(label.to, i);
    if (!everySize(sizes, within)) continue;
    const before = lines.slice(0, at);
    if (everySize(sizes, (i) => of(said, i) === of(label.to, i))) return [...before, line];
    const only = everySize(sizes, (i) => of(said, i) === of(label.from, i));
    const rows = only ? listed(said) : `${listed(label.from)}-${listed(said)}`;
    const text = joinTexts(
      [insertedText(label.unit + rows, fileOffset(line.text, 0)), sliceText(line.text, label.end)],
      '',
    );
    return [...before, { ...line, text }];
  }
  return null;
}

export interface Label {
  readonly unit: string;
  readonly from: readonly number[];
  readonly to: readonly number[];
  /** Where it ends in its line. */
  readonly end: number;
}

/** Null for a line that no numbered row begins. */
export function labelOf(text: string): Label | null {
  const found = LABEL.exec(text);
  if (found === null) return labelNth(text);
  const [label, unit = '', range, ranges = '', first = '', , , last = first] = found;
  // `Round 1 – 6 dc into a magic ring`: the stroke is the label's end, and 6 no round.
  const one = ONE_ROW.exec(text);
  if (one !== null && range === undefined && !/^\s*[:.)–—-]/.test(text.slice(label.length)))
    return { unit, from: numbersIn(first), to: numbersIn(first), end: one[0].length };
  const each = range === undefined ? [] : numbersIn(`${range} ${ranges}`);
  const from = range === undefined ? numbersIn(first) : each.filter((_, i) => i % 2 === 0);
  const to = range === undefined ? numbersIn(last) : each.filter((_, i) => i % 2 === 1);
  return { unit, from, to, end: label.length };
}

const ONE_ROW = /^(?:row|rnd|round)\s+\d+(?=\s[–—-]\s)/i;

/** `2nd row`, `1st to 3rd rows`. */
function labelNth(text: string): Label | null {
  const [label, first, last = first, unit = ''] = NTH_LABEL.exec(text) ?? [];
  if (label === undefined || first === undefined) return null;
  return { unit: `${unit} `, from: [Number(first)], to: [Number(last)], end: label.length };
}

const NTH_LABEL =
  /^(\d+)(?:st|nd|rd|th)(?:\s*(?:[-–—&]|to|and|through)\s*(\d+)(?:st|nd|rd|th))?\s+(rows?|rnds?|rounds?)\b/i;

/** The same lines, the last of them with the count that is told behind the words that ask for them. */
export function withCount(lines: readonly WorkLine[], count: MappedText): readonly WorkLine[] {
  const last = lines.at(-1);
  if (last === undefined) return lines;
  const own = OWN_COUNT.exec(last.text.text);
  const row = own === null ? last.text : sliceText(last.text, 0, own.index);
  return [
    ...lines.slice(0, -1),
    { ...last, text: joinTexts([row, count], row.text.endsWith('.') ? ' ' : '. ') },
  ];
}

/** `63 (70, 77) hdc.`, `(24 sts)`, `(256 dc, 4 ch-2 sps)` behind a full stop or in brackets at the end of a row. */
const OWN_COUNT =
  /\s*\(\d+\s+[^()]*\)\.?$|\s*[=–—]\s*\d+(?:\s*\([\d\s,:/–-]+\))?\s*[a-z][a-z0-9]*\.?$|(?:(?<=\.)\s+|\s*(?=\())\(?\d+(?:\s*\([\d\s,:/–-]+\))?\s*[a-z][a-z0-9]*\)?\.?$/i;

function numbersIn(words: string): number[] {
  return (words.match(/\d+/g) ?? []).map(Number);
}

/** `42 (45, 48)`. */
function listed([first, ...rest]: readonly number[]): string {
  return rest.length === 0 ? `${first}` : `${first} (${rest.join(', ')})`;
}

/** One number stands for every size. */
function of(numbers: readonly number[], size: number): number {
  return (numbers.length === 1 ? numbers[0] : numbers[size]) ?? Number.NaN;
}

function everySize(sizes: number, holds: (size: number) => boolean): boolean {
  return Array.from({ length: sizes }, (_, i) => i).every(holds);
}
