/**
 * What a pasted text says of its filet squares, `A space is 2 ch, miss 2 sts, 1 tr into next tr`, `Bl over sp: 2 dc in sp,
 * dc in next dc`, in whatever order and however many sentences, in; one line for a space and one for a block, each over
 * both, out: `sp: ch 2, sk next 2 sts or next ch-2 sp, dc in next dc`.
 */

import { fileOffset, fileSpan, type MappedText } from '../source/mapped-text.ts';
import { joinSpans } from '../source/span.ts';
import { type Square, squareIn } from './filet-words.ts';
import { insertedText, joinTexts, sliceText, trimText } from './mapped-pieces.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

const NAME =
  '(?:(?:open|closed|solid|filled|empty|filet|beg|beginning|first)\\s+)?(?:spaces?|sps?|blocks?|blks?|bls?|mesh|squares?)';
/** `Sp over sp:`, `Block (blk) —`, `A space is`. */
const BEGINS = new RegExp(
  `(?<=^|[.;]\\s+)(?:(?:an?|one|each)\\s+)?["“'‘]?(${NAME}(?:\\s*\\([a-z]{1,5}\\))?)["”'’]?(?:\\s+over\\s+(?:an?\\s+)?(${NAME}))?\\s*(?::|=|,?\\s+[–—-]|\\s+(?:is|are|means|consists of)(?=\\s))\\s*`,
  'gi',
);
const MENTIONS = /\b(?:blocks?|blks?|bls?|mesh|squares?|spaces?|sps?)\b/i;

interface Told {
  readonly line: number;
  /** From its first word to just behind its last. */
  readonly start: number;
  readonly end: number;
  readonly name: MappedText;
  readonly square: Square;
}

/** The lines themselves where they tell of no squares, or of such as do not fit one another. */
export function withSquares(lines: readonly TextLine[]): readonly TextLine[] {
  const told = lines.flatMap((line, index) => toldIn(line, index));
  const [first] = told;
  if (first === undefined || !told.every(({ square }) => fits(square, first.square))) return lines;
  const whole = new Set(told.map(sortOf).filter((sort) => isWhole(told, sort)));
  const kept = told.filter((one) => whole.has(sortOf(one)));
  if (kept.length === 0) return lines;
  const words = lines
    .filter(({ text, cells }) => cells.length > 1 || rowLabel(text.text) !== null)
    .map(({ text }) => text.text)
    .join('\n');
  const named = kept.map((one) => ({ ...one, name: nameInRows(one, words) }));
  return together(lines.flatMap((line, index) => taken(line, index, named)));
}

/** `space (sp)` where the rows have `7 sps` and no `7 spaces`: the trade's short words need no list. */
function nameInRows({ name, square }: Told, words: string): MappedText {
  const counted = (word: string): boolean => new RegExp(`\\d\\s*${word}s?(?![a-z])`, 'i').test(words);
  const own: readonly string[] = name.text.toLowerCase().match(/[a-z]+(?: [a-z]+)*/g) ?? [];
  const short = SHORT[square.filled ? 'filled' : 'open'].find(counted);
  if (square.begins !== null || short === undefined || own.some(counted) || own.includes(short)) return name;
  return joinTexts([name, insertedText(` (${short})`, fileOffset(name, 0))], '');
}

const SHORT: Readonly<Record<'open' | 'filled', readonly string[]>> = { open: ['sp'], filled: ['bl', 'blk'] };

function toldIn({ text: line, cells, isRule }: TextLine, index: number): Told[] {
  if (cells.length > 1 || isRule || !MENTIONS.test(line.text)) return [];
  return [...line.text.matchAll(BEGINS)].flatMap((found) => {
    const [said, name = '', over] = found;
    const from = found.index + said.length;
    const end = from + (/(?:[.;](?=\s+(?:\p{Lu}|an?\s))|\.?$)/u.exec(line.text.slice(from))?.index ?? 0);
    const square = squareIn(line.text.slice(from, end), over ?? null);
    if (square === null) return [];
    const at = line.text.indexOf(name, found.index);
    const stop = /[.;]/.test(line.text.charAt(end)) ? 1 : 0;
    const word = sliceText({ ...line, text: line.text.toLowerCase() }, at, at + name.length);
    return [{ line: index, start: found.index, end: end + stop, name: word, square }];
  });
}

function fits(square: Square, other: Square): boolean {
  return square.chains === other.chains && square.stitch.toLowerCase() === other.stitch.toLowerCase();
}

/** Spaces and blocks, and those that a row begins with, are told apart. */
function sortOf({ square: { filled, begins } }: Told): string {
  return `${filled ? 'block' : 'space'} ${begins ?? ''}`;
}

/** Told of both that it may go over, or of either in one. */
function isWhole(told: readonly Told[], sort: string): boolean {
  const over = told.filter((one) => sortOf(one) === sort).map(({ square }) => square.over);
  return over.includes('both') || (over.includes('space') && over.includes('block'));
}

interface Taken extends TextLine {
  /** Of a square told over one thing after the other, the first time it is told. */
  readonly again?: boolean;
}

/** A line's squares as lines of their own, with what stands before, between and behind them. */
function taken(line: TextLine, index: number, kept: readonly Told[]): Taken[] {
  const here = kept.filter((one) => one.line === index);
  if (here.length === 0) return [line];
  const parts: Taken[] = [];
  const keep = (start: number, end: number): void => {
    const text = trimText(sliceText(line.text, start, end));
    if (text.text !== '')
      parts.push({ ...line, text, cells: [text], span: fileSpan(text, 0, text.text.length) });
  };
  let at = 0;
  for (const told of here) {
    keep(at, told.start);
    const span = fileSpan(line.text, told.start, told.end);
    const text = joinTexts(
      [told.name, insertedText(`: ${wordsOf(told.square)}`, fileOffset(told.name, 0))],
      '',
    );
    const again = kept.findIndex((one) => sortOf(one) === sortOf(told)) < kept.indexOf(told);
    parts.push({
      ...line,
      text,
      cells: [text],
      span,
      mark: null,
      gap: line.gap && at === 0,
      tellsStitch: true,
      again,
    });
    at = told.end;
  }
  keep(at, line.text.text.length);
  return parts;
}

/** What is told a second time over the other belongs to what stands right before it. */
function together(lines: readonly Taken[]): TextLine[] {
  const out: TextLine[] = [];
  for (const { again, ...line } of lines) {
    const before = out.at(-1);
    if (again === true && before !== undefined)
      out[out.length - 1] = { ...before, span: joinSpans(before.span, line.span) };
    else out.push(line);
  }
  return out;
}

function wordsOf({ filled, chains, stitch, skip, begins }: Square): string {
  const sts = chains === 1 ? 'next st' : `next ${chains} sts`;
  const first = begins === null ? '' : `ch ${begins} (counts as ${stitch}), `;
  const over = begins === null ? `${chains}` : `${begins} (counts as ${stitch} and ch ${chains})`;
  const inside = filled
    ? `${first}${stitch} in ${sts} or ${chains} ${stitch} in next ch-${chains} sp`
    : `ch ${over}, ${skip} ${sts} or next ch-${chains} sp`;
  return `${inside}, ${stitch} in next ${stitch}`;
}
