/**
 * Lines of pasted text in; paragraphs that hold a piece's heading and rows one after another, as magazines squeeze them,
 * taken apart into the lines they would be out: `TOE. Magic ring with 8 sc in it. Rnd 2, 2 sc in each st around.`
 */

import { fileOffset, fileSpan } from '../source/mapped-text.ts';
import { findHeading } from './headings.ts';
import { insertedText, joinTexts, sliceText, trimText } from './mapped-pieces.ts';
import { namesPiece } from './part-headings.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

export function splitParagraphs(lines: readonly TextLine[]): TextLine[] {
  return lines.flatMap(splitLine);
}

/** A paragraph is longer than this. */
const SHORTEST = 60;

function splitLine(line: TextLine): readonly TextLine[] {
  const { text } = line.text;
  if (text.length < SHORTEST || line.cells.length > 1 || line.isRule) return [line];
  const head = headIn(text);
  if (head === null && !holdsRows(text)) return [line];
  const cuts = [...new Set([head?.restAt ?? 0, ...rowStarts(text)])].sort((a, b) => a - b);
  const rows = sidesIn(cuts.map((start, i) => part(line, start, cuts[i + 1] ?? text.length, false)));
  return head === null ? rows : [part(line, head.start, head.end, true), ...rows];
}

function part(line: TextLine, start: number, end: number, isHead: boolean): TextLine {
  const text = trimText(sliceText(line.text, start, end));
  return {
    ...line,
    text,
    cells: [text],
    span: fileSpan(text, 0, text.text.length),
    mark: isHead ? 'heading' : start === 0 ? line.mark : null,
    gap: (isHead || start === 0) && line.gap,
  };
}

const SECOND = /^(?:Second|Other) side:\s+(?=\S)/;

/** Where a neck divides a piece the two sides are pieces of their own: one from the row that leaves the other its stitches. */
function sidesIn(rows: readonly TextLine[]): readonly TextLine[] {
  if (!rows.some(({ text }) => SECOND.test(text.text))) return rows;
  return rows.flatMap((row) => {
    const { text } = row.text;
    const second = SECOND.exec(text)?.[0].length ?? 0;
    if (second > 0) {
      const mark = text.indexOf(':');
      const rest = sliceText(row.text, second);
      const work = /^(?:next|\d+(?:st|nd|rd|th)|rows?) /i.test(rest.text)
        ? rest
        : joinTexts([insertedText('Next row: ', fileOffset(rest, 0)), rest], '');
      return [part(row, 0, mark, true), { ...row, text: work, cells: [work], mark: null, gap: false }];
    }
    if (!/\bon these (?:\d+ )?(?:sts|stitches)(?: only)? for the first side\b/i.test(text)) return [row];
    const name = insertedText('First side', fileOffset(row.text, 0));
    return [{ ...row, text: name, cells: [name], mark: 'heading', gap: true }, row];
  });
}

interface Head {
  readonly start: number;
  readonly end: number;
  /** Where what stands behind it begins. */
  readonly restAt: number;
}

const HEAD = /^(?:THE )?([A-Z]{2,}(?: [A-Z]{2,}){0,3})(?:\.\s?[–—-]\s*|[.:]?\s+)(?=\p{Lu}\p{Ll}|\d)/u;

/** `BACK The welt …`, `TOE. Magic ring …`, `THE HEADING.—Turn …`: the piece's name, with its work behind it. */
function headIn(text: string): Head | null {
  const found = HEAD.exec(text);
  const name = found?.[1];
  if (found === null || name === undefined || findHeading(text) !== null) return null;
  if (!namesPiece(name) && !OF_THE_TRADE.test(name)) return null;
  const rest = text.slice(found[0].length);
  if (!holdsRows(text) && !BEGINS.test(rest) && rowLabel(rest) === null) return null;
  const start = found[0].indexOf(name);
  return { start, end: start + name.length, restAt: found[0].length };
}

const OF_THE_TRADE = /\b(?:HEADING|INSERTION|LACE|FRINGE|FLOUNCE|WELT|SOLE|INSTEP)\b/;

/** What the work of a piece begins with. */
const BEGINS = /^(?:Ch(?:ain)?\s*\d|Make\s+\d|\d+\s*ch\b|Work\b|Join\b|Fold\b|Turn\b|With\b|Magic\b)/;

/** Labels of rows that stand behind the end of a sentence. */
const LABEL =
  '(?:(?:[Rr]ows?|[Rr](?:nd|ound)s?)\\s*\\d+(?:\\s*(?:[–-]|to|and)\\s*\\d+)?\\s*[:,.]|\\d+(?:st|nd|rd|th)(?:(?:\\s*[–-]\\s*|\\s+(?:to|and)\\s+)\\d+(?:st|nd|rd|th))?\\s+(?:rows?|rnds?|rounds?)\\s*[:.]|(?:Next|Foundation|Last)\\s+(?:row|rnd|round)\\s*[:.])';
/** Sentences that are rows of their own beside labelled ones. */
const SENTENCE =
  '(?:\\*\\*\\s+)?(?:Rep(?:eat)?\\s+(?:the\\s+|this\\s+|these\\s+)?(?:last|row|rows|rnd|\\d+(?:st|nd|rd|th))\\b|Work\\s+(?:straight|even|\\d+\\s+(?:more\\s+)?(?:rows?|rnds?))\\b|Make\\s+\\d+\\s+ch\\b|Shape\\s|Divide\\s|Dec\\s+1\\b|Inc\\s+1\\b|Now\\s+(?:work|you)\\b|Do not fasten off\\b|(?:Second|Other) side:|Fasten off\\b|The\\s|Finish\\s|Complete\\s)';

const STARTS = new RegExp(`(?<=[.!)\\]]\\s)(?:${LABEL}|${SENTENCE}|\\*\\*\\s+(?=\\p{Lu}))`, 'gu');
const LABELS = new RegExp(`(?<=[.!)\\]]\\s)${LABEL}`, 'gu');

/** Two rows at least, or one behind other work; or stars that another piece goes on to. */
function holdsRows(text: string): boolean {
  return text.search(LABELS) > 0 || /[.!)\]]\s\*\*\s+\p{Lu}/u.test(text);
}

function rowStarts(text: string): number[] {
  return [...text.matchAll(STARTS)].map(({ index }) => index);
}
