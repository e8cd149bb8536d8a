/** Lines as they were pasted in; lines that were only broken to fit a page or an email joined again out. */

import { joinSpans } from '../source/span.ts';
import { findHeading } from './headings.ts';
import { isInstruction } from './instruction-words.ts';
import { joinTexts } from './mapped-pieces.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

/** Widths that texts are broken to: emails at 72 or so, pages narrower. */
const NARROWEST = 45;
const WIDEST = 100;

/** `sc = single crochet`: a list, whose lines end where they end. */
const ENTRY = /^[^\s=:;,]{1,14}(?: [^\s=:;,]{1,10}){0,2}\s*(?:=|:|\s[–—-])\s/;

export function unwrap(lines: readonly TextLine[]): TextLine[] {
  const width = wrappedWidth(lines);
  const joined: TextLine[] = [];
  let lastLength = 0;
  for (const line of lines) {
    const before = joined.at(-1);
    if (before !== undefined && goesOn(before, line, lastLength, width))
      joined[joined.length - 1] = together(before, line);
    else joined.push(line);
    lastLength = line.text.text.length;
  }
  return joined;
}

/** The width the text was broken to, or 0 where its lines end as they like. */
function wrappedWidth(lines: readonly TextLine[]): number {
  const lengths = lines.map(({ text }) => text.text.length);
  const longest = lengths.reduce((most, length) => Math.max(most, length), 0);
  if (longest < NARROWEST || longest > WIDEST) return 0;
  return lengths.filter((length) => length > longest - 12).length >= 4 ? longest : 0;
}

function goesOn(before: TextLine, line: TextLine, lastLength: number, width: number): boolean {
  if (line.gap || line.mark !== null || line.isRule || before.isRule || before.mark === 'heading')
    return false;
  if (line.quoted !== before.quoted || line.cells.length > 1 || before.cells.length > 1) return false;
  const [above, text] = [before.text.text, line.text.text];
  if (rowLabel(text) !== null || (findHeading(text) !== null && !/^[a-z]/.test(text))) return false;
  const label = rowLabel(above);
  if (label !== null && above.slice(label.end).trim() === '') return true;
  const isRow = label !== null || (isInstruction(above) && /[\d,;*]/.test(above) && !ENTRY.test(above));
  if (ENTRY.test(text) && !/^[*(]/.test(text)) return false;
  if (isRow && isCount(text)) return true;
  const wraps = width > 0 && lastLength + 1 + (text.split(' ')[0] ?? '').length > width;
  if (wraps && findHeading(above)?.restAt !== null) return true;
  if (wraps && findHeading(above) === null) return true;
  return isRow && !/[.!?)\]}:]$/.test(above) && /^(?:[a-z0-9([*{]|.*\brep(?:eat)? from \*)/.test(text);
}

/** `(24 sc)`, `[16 sts]`, `– 24 sts` on a line of its own. */
function isCount(text: string): boolean {
  return /^(?:[([{]\s*\d+[^.]{0,60}[)\]}]|[=–—-]\s*\d+\s*[a-z][^.]{0,40}|\d+\s*(?:sts?|stitches|sc|dc|hdc|tr|htr))\.?$/i.test(
    text,
  );
}

function together(before: TextLine, line: TextLine): TextLine {
  const text = joinTexts([before.text, line.text], ' ');
  return { ...before, text, cells: [text], span: joinSpans(before.span, line.span) };
}
