/** A line that stands under no heading of its own in; whether it explains a word of the rows, and as which, out. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { findAbbreviation } from '../stitches/abbreviations.ts';
import { stitchNamed } from './derive-work.ts';
import { isInstruction } from './instruction-words.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import { namesPiece } from './part-headings.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

export interface Definition {
  readonly bucket: 'specials' | 'abbreviations';
  /** Where the name begins: behind "With" of `With Shell (sh): 5 dc in same st`. */
  readonly at: number;
}

const SHAPE =
  /^((?:with\s+|to (?:make|work) an?\s+)?)([\p{L}][\p{L}\d -]{0,28}?(?:\s*\([\p{L}\d -]{1,24}\))?)\s*(:|=|\s[–—-]\s)\s*(\S.*)$/iu;

/** Told as a stitch is: where it goes, what is put together, how the hook moves. */
const AS_A_STITCH =
  /\b(?:same|next|indicated|specified|designated|one|1)\s+(?:st|sp|stitch|space|ch|loop|lp)\b|\d?tog(?:ether)?\b|\b(?:1st|first|2nd|3rd|4th|5th|second|third|fourth|fifth)\s+(?:of these\s+)?ch(?:ain)?\b|\b(?:insert|yo|yrh|yoh)\b|\bfirst of (?:them|these)\b|^\([^()]+\)\.?$|^\d+\s*(?:sc|hdc|dc|htr|tr|dtr)\.?$/i;
/** Told as a row is. */
const AS_A_ROW =
  /\b(?:across|turn|fasten off|to end|join with|rows?|rnds?|rounds?)\b|\baround(?!\s+(?:the\s+)?(?:post|next|stem|st))\b/i;

const ROW_NAME = /^R\d|\b(?:colou?r|yarn)\s+[A-Z]\b/;
/** Where the work stands rather than what is worked. */
const PLACES =
  /^(?:to (?:begin|start)|ring|start|foundation|base|set ?up|beginning|chain|ch|row|rnd|round|edge|joining|turning ch(?:ain)?)$/i;

/** Null for any other line. Among the rows, whose words `rows` are, a word has to be used to be one of them. */
export function definitionIn(text: string, rows: string, amongRows: boolean): Definition | null {
  const [, leading = '', name = '', mark = '', words = ''] = SHAPE.exec(text) ?? [];
  if (name === '' || name.split(' ').length > 5 || rowLabel(text) !== null) return null;
  const names = name.split(/\s*[()]\s*/).filter((one) => one !== '');
  // `C = Coral` under the yarns: which yarn, whatever C is short for elsewhere.
  const isYarn = /^[A-Z]$/.test(name) && !/\b(?:colou?rs?|contrast|main|chain|yarn)\b/i.test(words);
  if (mark.trim() === '=' && !isYarn && names.some(isKnown) && !/\d\s*(?:cm|in|mm|sts?|rows?)\b/i.test(words))
    return { bucket: 'abbreviations', at: leading.length };
  // `sk - skip`: a line of a list of abbreviations whose heading says something else.
  const isMeaning = /[–—-]/.test(mark) && /^[^\d:]{2,60}$/.test(words) && words.split(' ').length <= 6;
  if (isMeaning && !amongRows && names.some(isKnown)) return { bucket: 'abbreviations', at: leading.length };
  if (ROW_NAME.test(name) || !AS_A_STITCH.test(words) || AS_A_ROW.test(words)) return null;
  const isPiece = names.some((one) => PLACES.test(one) || namesPiece(one)) && !/\bsame\b/i.test(words);
  if (isPiece || (amongRows && !names.some((one) => isUsed(one, rows)))) return null;
  return { bucket: 'specials', at: leading.length };
}

/** `A shell is 2 dc, 2 ch, 2 dc, all in the same place.` */
const SENTENCE =
  /^(?:an?|each|one)\s+["“'‘]?([\p{L}][\p{L} -]{1,20}?)["”'’]?\s+(?:is|means|consists of)\s+((?:\(|\d).*\b(?:same|one)\s+(?:place|st|stitch|sp|space)\b.*)$/iu;

/** Its name and its words, as a list would have them; null for a sentence that explains nothing that the rows use. */
export function definingSentence(line: MappedText, rows: string): MappedText | null {
  const [, name = '', words = ''] = SENTENCE.exec(line.text) ?? [];
  if (name === '' || AS_A_ROW.test(words) || !isUsed(name, rows)) return null;
  const from = line.text.indexOf(name, line.text.indexOf(' '));
  const at = line.text.length - words.length;
  const colon = insertedText(': ', fileOffset(line, from + name.length));
  return joinTexts([sliceText(line, from, from + name.length), colon, sliceText(line, at)], '');
}

function isKnown(name: string): boolean {
  return (['US', 'UK'] as const).some(
    (terms) => stitchNamed(name, terms) !== null || findAbbreviation(name, terms) !== null,
  );
}

/** `…; s.s., slip stitch. A shell is 2 tr, 2 ch, 2 tr, all in one place.`: a list and a sentence behind it; null for a list alone. */
export function definitionBehind(
  list: MappedText,
  rows: string,
): { readonly before: MappedText; readonly told: MappedText } | null {
  const at = /\.\s+(?=(?:an?|each|one)\s+["“'‘]?\p{L})/iu.exec(list.text);
  if (at === null) return null;
  const told = definingSentence(sliceText(list, at.index + at[0].length), rows);
  return told === null ? null : { before: sliceText(list, 0, at.index), told };
}

/** As a stitch is: `sh in next st`, `2 shells`, `[picot, sc]`. */
function isUsed(name: string, rows: string): boolean {
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}])${escaped}(?:e?s)?(?![\\p{L}])`, 'iu').test(rows);
}

/** The words of every row and instruction, one a line. */
export function rowWords(lines: readonly TextLine[]): string {
  return lines
    .map(({ text }) => text.text)
    .filter((text) => rowLabel(text) !== null || (isInstruction(text) && !SHAPE.test(text)))
    .join('\n');
}
