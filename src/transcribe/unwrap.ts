/** Lines as they were pasted in; lines that were only broken to fit a page or an email joined again out. */

import { fileOffset } from '../source/mapped-text.ts';
import { joinSpans } from '../source/span.ts';
import { findHeading } from './headings.ts';
import { isInstruction } from './instruction-words.ts';
import { insertedText, joinTexts } from './mapped-pieces.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

/** Widths that texts are broken to: emails at 72 or so, pages narrower. */
const NARROWEST = 45;
const WIDEST = 100;

/** `sc = single crochet`: a list, whose lines end where they end. */
const ENTRY = /^[^\s=:;,]{1,14}(?: [^\s=:;,]{1,10}){0,2}\s*(?:=|:|\s[–—-])\s/;

export function unwrap(lines: readonly TextLine[]): TextLine[] {
  const width = wrappedWidth(lines);
  const groups: TextLine[][] = [];
  // A list of abbreviations goes on to the first blank line that is not right under its heading.
  let inList = false;
  let underHeading = false;
  for (const line of lines) {
    const group = groups.at(-1);
    const heading = findHeading(line.text.text);
    if (heading !== null) inList = heading.section === 'abbreviations' && heading.restAt === null;
    else if (line.gap && !underHeading) inList = false;
    underHeading = heading !== null;
    if (group !== undefined && goesOn(group, line, width, inList)) group.push(line);
    else groups.push([line]);
  }
  return groups.map(together);
}

/** The width the text was broken to, or 0 where its lines end as they like. */
function wrappedWidth(lines: readonly TextLine[]): number {
  const lengths = lines.map(({ text }) => text.text.length);
  const longest = lengths.reduce((most, length) => Math.max(most, length), 0);
  if (longest < NARROWEST || longest > WIDEST) return 0;
  return lengths.filter((length) => length > longest - 12).length >= 4 ? longest : 0;
}

/** Whether a line goes on with those above it. */
function goesOn(group: readonly TextLine[], line: TextLine, width: number, inList: boolean): boolean {
  const [first, last] = [group[0], group.at(-1)];
  if (first === undefined || last === undefined) return false;
  if (line.gap || line.mark !== null || line.isRule || first.isRule || first.mark === 'heading') return false;
  if (line.quoted !== first.quoted || line.cells.length > 1 || first.cells.length > 1) return false;
  const [opening, above, text] = [first.text.text, last.text.text, line.text.text];
  if (rowLabel(text) !== null || (findHeading(text) !== null && !/^[a-z]/.test(text))) return false;
  const label = rowLabel(opening);
  if (label !== null && group.length === 1 && opening.slice(label.end).trim() === '') return true;
  const isRow =
    label !== null || (!inList && isInstruction(opening) && /[\d,;*]/.test(opening) && !ENTRY.test(opening));
  if (ENTRY.test(text) && !/^[*(]/.test(text)) return false;
  if (isRow && isCount(text)) return true;
  if (isRow && /[.)\]}]$/.test(above) && AGAIN.test(text)) return false;
  const wraps = width > 0 && above.length + 1 + (text.split(' ', 1)[0] ?? '').length > width;
  const heading = group.length > 1 ? null : findHeading(opening);
  if (wraps && (heading === null || heading.restAt !== null)) return true;
  return isRow && !/[.!?)\]}:]$/.test(above) && /^(?:[a-z0-9([*{]|.*\brep(?:eat)? from \*)/.test(text);
}

/** `Repeat last row 2 more times`, `Work even for 5 rows` under a finished row: rows of their own, however wide the lines are. */
const AGAIN = /^(?:Rep(?:eat)? (?:the )?(?:last|rows?|rnds?|rounds?)\b|Work (?:even|straight)\b)/;

/** `(24 sc)`, `[16 sts]`, `– 24 sts` on a line of its own. */
function isCount(text: string): boolean {
  return /^(?:[([{]\s*\d+[^.]{0,60}[)\]}]|[=–—-]\s*\d+\s*[a-z][^.]{0,40}|\d+\s*(?:sts?|stitches|sc|dc|hdc|tr|htr))\.?$/i.test(
    text,
  );
}

function together(group: readonly TextLine[]): TextLine {
  const [first, last] = [group[0], group.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no lines to put together');
  if (group.length === 1) return first;
  const texts = group.map((line) => line.text);
  // `last row` on a line of its own has no number that would end it.
  const end = first.text.text.length - 1;
  const head = /^(?:the )?(?:last|final) (?:row|rnd|round)$/i.test(first.text.text)
    ? [joinTexts([first.text, insertedText(':', fileOffset(first.text, end))], '')]
    : [first.text];
  const text = joinTexts([...head, ...texts.slice(1)], ' ');
  return { ...first, text, cells: [text], span: joinSpans(first.span, last.span) };
}
