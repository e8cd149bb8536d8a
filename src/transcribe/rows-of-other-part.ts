/** `Rows 1 and 2: Work same as Back.`, `Rnd 2: Work as for Rnd 2 of Front. (256 dc)` in, those rows of the other piece out. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import type { NamedLines } from './as-other-part.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import type { WorkLine } from './sorted-lines.ts';
import { labelOf, withCount } from './up-to-row.ts';

const UNIT = '(?:rows?|rnds?|rounds?)';
const RANGE = String.raw`(\d+)(?:\s*(?:[-–—&]|to|and|through)\s*(\d+))?`;
const ASKS = new RegExp(
  String.raw`^(${UNIT})\s+${RANGE}\s*(?:\([^()\d]*\)\s*)?[:.–—-]\s*(?:work(?:ed)?\s+)?(?:exactly\s+)?(?:(?:the\s+)?same\s+as(?:\s+for)?|as(?:\s+given)?(?:\s+for)?|rep(?:eat)?)\s+(?:${UNIT}\s+${RANGE}\s+(?:of|for|from|on)\s+)?(?:the\s+)?(\p{L}[\p{L} ]*?)(?:\s*[.:;,]\s*|\s+(?=\())(\(?\d.*)?$`,
  'iu',
);

const NTH = String.raw`(\d+)(?:st|nd|rd|th)(?:\s*(?:[-–—&]|to|and|through)\s*(\d+)(?:st|nd|rd|th))?`;
/** `2nd row: As 2nd row of Edging.`, `1st to 3rd rows.—As the 1st to 3rd rows of the edging.` */
const ASKS_NTH = new RegExp(
  String.raw`^${NTH}\s+(${UNIT})\s*[:.–—-]+\s*(?:work(?:ed)?\s+)?(?:(?:the\s+)?same\s+as(?:\s+for)?|as(?:\s+given)?(?:\s+for)?)\s+(?:the\s+)?${NTH}\s+${UNIT}\s+(?:of|for|from|on)\s+(?:the\s+)?(\p{L}[\p{L} ]*?)(?:\s*[.:;,]\s*|\s+(?=\()|$)(\(?\d.*)?$`,
  'iu',
);

/** What a line asks for, by numbers and by name. */
function asked(text: string): readonly (string | undefined)[] {
  const byUnit = ASKS.exec(text);
  if (byUnit !== null) return byUnit.slice(1);
  const [, first, last, unit, from, to, words, count] = ASKS_NTH.exec(text) ?? [];
  return [unit, first, last, from, to, words, count];
}

/** Null for a line that asks for no rows of another piece, or for rows that it has not. */
export function rowsAsked(line: WorkLine, parts: readonly NamedLines[]): readonly WorkLine[] | null {
  const [unit = '', first, last = first, from = first, to = from === first ? last : from, words, count] =
    asked(line.text.text);
  const part = words === undefined ? undefined : partCalled(words, parts);
  if (part === undefined) return null;
  const shift = Number(first) - Number(from);
  if (Number(to) + shift !== Number(last)) return null;
  const rows = rowsFrom(part.lines, Number(from), Number(to), { unit, shift, asking: line });
  if (rows === null || count === undefined) return rows;
  return withCount(rows, sliceText(line.text, line.text.text.length - count.length));
}

/** `Work Rounds 1 to 6 of the large basket = 36 dc`: those rows, under the numbers they have there. */
const WORKED = new RegExp(
  String.raw`^(?:work|make|rep(?:eat)?|follow|crochet)\s+(${UNIT})\s+${RANGE}\s+(?:as\s+(?:given\s+)?for|of|for|from)\s+(?:the\s+)?(\p{L}[\p{L} ]*?)(?:\s*[.:;,=–—-]+\s*|\s+(?=\()|$)(\(?\d.*)?$`,
  'iu',
);

/** Null for a line that asks for no rows of another piece by their numbers, or for rows that it has not. */
export function rowsWorked(asking: WorkLine, parts: readonly NamedLines[]): readonly WorkLine[] | null {
  const [, unit = '', first, last = first, words, count] = WORKED.exec(asking.text.text) ?? [];
  const part = words === undefined ? undefined : partCalled(words, parts);
  if (part === undefined) return null;
  const rows = rowsFrom(part.lines, Number(first), Number(last), { unit, shift: 0, asking });
  if (rows === null || count === undefined) return rows;
  return withCount(rows, sliceText(asking.text, asking.text.text.length - count.length));
}

const ROW_OF = new RegExp(
  String.raw`\b(?:(?:\d+(?:st|nd|rd|th)\s+(?:(?:and|to)\s+\d+(?:st|nd|rd|th)\s+)?${UNIT})|(?:${UNIT}\s+${RANGE}))(\s+of\s+(?:the\s+)?(\p{L}[\p{L} ]*?))(?=[.,;:]|\s+(?:once|twice|again|\d|another)\b|$)`,
  'giu',
);

/** `Work 2nd row of the picot end once more` under the heading `Picot ends`: of the piece in hand it need not be said. */
export function withoutOwnName(words: MappedText, name: string): MappedText {
  const own = singular(name);
  for (const found of words.text.matchAll(ROW_OF)) {
    const [whole, , , of = '', called = ''] = found;
    if (singular(called) !== own) continue;
    const at = found.index + whole.length - of.length;
    return joinTexts([sliceText(words, 0, at), sliceText(words, at + of.length)], '');
  }
  return words;
}

function singular(name: string): string {
  return name.trim().toLowerCase().replace(/^the /, '').replace(/s$/, '');
}

function partCalled(words: string, parts: readonly NamedLines[]): NamedLines | undefined {
  const name = words.trim().toLowerCase();
  const called = (own: string): boolean => own.toLowerCase().replace(/^the /, '') === name;
  // `Round 1 of the large basket`, which is told under headings of its own: its first piece has them.
  return (
    parts.findLast((part) => called(part.name)) ??
    parts.find(({ within }) => within !== undefined && called(within))
  );
}

/** The lines of the rows from one number to another, cut where one line tells more rows; null where one is missing. */
function rowsFrom(
  lines: readonly WorkLine[],
  from: number,
  to: number,
  given: { readonly unit: string; readonly shift: number; readonly asking: WorkLine },
): readonly WorkLine[] | null {
  const found: WorkLine[] = [];
  let reached = from;
  for (const line of lines) {
    const label = line.kind === 'note' ? null : labelOf(line.text.text);
    const [first, more] = label?.from ?? [];
    const [last = first, most] = label?.to ?? [];
    // Rows that are numbered otherwise in another size are not told by one number.
    if (label === null || first === undefined || last === undefined || more !== undefined) continue;
    if (first > reached || last < reached || reached > to) continue;
    if (most !== undefined && last < to) return null;
    const end = Math.min(last, to);
    found.push({
      ...line,
      text: relabelled(end < last ? unfastened(line.text) : line.text, label.end, reached, end, given),
      number: reached + given.shift,
    });
    reached = end + 1;
  }
  return reached === to + 1 ? found : null;
}

/** Rows that are left off before the last of their line are not fastened off as that is. */
function unfastened(row: MappedText): MappedText {
  const end = row.text.search(/\s*\b(?:fasten|break|finish) off\.?\s*$/i);
  return end < 0 ? row : sliceText(row, 0, end);
}

function relabelled(
  row: MappedText,
  labelEnd: number,
  first: number,
  last: number,
  { unit, shift }: { readonly unit: string; readonly shift: number },
): MappedText {
  const one = unit.replace(/s$/i, '');
  const label = first === last ? `${one} ${first + shift}` : `${one}s ${first + shift}-${last + shift}`;
  return joinTexts([insertedText(label, fileOffset(row, 0)), sliceText(row, labelEnd)], '');
}
