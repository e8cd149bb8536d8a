/** Lines of a list set with dots, `ch ... chain      sl st ... slip stitch`, in; each of its words as a line, `ch = chain`, out. */

import { fileOffset, fileSpan, type MappedText } from '../source/mapped-text.ts';
import { findHeading } from './headings.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import type { TextLine } from './tidy-lines.ts';

const LEADER = /\s*(?:\.{2,}|…)\s*/g;
/** A word that is explained, and what it is short for: sentences that trail off are longer. */
const ENTRY = /^([\p{L}\d][\p{L}\d() -]{0,11}?)\s*(?:\.{2,}|…)\s*(\p{L}[\p{L} ()-]{1,40})$/u;

export function withDottedLists(lines: readonly TextLine[]): readonly TextLine[] {
  return lines.flatMap((line) => (line.cells.length > 1 ? [line] : (entriesOf(line) ?? [line])));
}

/** Null where any part of the line is no such entry. */
function entriesOf(line: TextLine): TextLine[] | null {
  if (!/\.\.|…/.test(line.text.text)) return null;
  const headed = headedBy(line);
  if (headed !== null) return [headed];
  const parts = apart(line.text);
  const entries = parts.map((text) => entryOf(line, text));
  return entries.every((entry) => entry !== null) ? entries : null;
}

/** `yarn ........... sport weight cotton`: a heading with what it heads. */
function headedBy(line: TextLine): TextLine | null {
  const { text } = line.text;
  const found = /^(\p{L}[\p{L} ]{1,20}?)\s*(?:\.{3,}|…+)\s*(?=\S)/u.exec(text);
  const name = found?.[1];
  if (found === null || name === undefined || !(MAKES.test(name) || findHeading(name) !== null)) return null;
  const colon = insertedText(': ', fileOffset(line.text, name.length));
  const headed = joinTexts(
    [sliceText(line.text, 0, name.length), colon, sliceText(line.text, found[0].length)],
    '',
  );
  return { ...line, text: headed, cells: [headed] };
}

const MAKES = /^makes?$/i;

function entryOf(line: TextLine, text: MappedText): TextLine | null {
  const [, name, words] = ENTRY.exec(text.text) ?? [];
  if (name === undefined || words === undefined) return null;
  const equals = insertedText(' = ', fileOffset(text, name.length));
  const told = joinTexts(
    [sliceText(text, 0, name.length), equals, sliceText(text, text.text.length - words.length)],
    '',
  );
  return { ...line, text: told, cells: [told], span: fileSpan(text, 0, text.text.length) };
}

/** Where a wide gap, several blanks of the file, parts one entry from the next; blanks about the dots part nothing. */
function apart(text: MappedText): MappedText[] {
  const leaders = [...text.text.matchAll(LEADER)].map((found) => [
    found.index,
    found.index + found[0].length,
  ]);
  const pieces: MappedText[] = [];
  let from = 0;
  for (const blank of text.text.matchAll(/ /g)) {
    const wide = fileOffset(text, blank.index + 1) - fileOffset(text, blank.index) > 1;
    const ofLeader = leaders.some(([start = 0, end = 0]) => blank.index >= start && blank.index < end);
    if (!wide || ofLeader) continue;
    pieces.push(sliceText(text, from, blank.index));
    from = blank.index + 1;
  }
  return [...pieces, sliceText(text, from)];
}
