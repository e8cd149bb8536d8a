/** A row's number with a line for some of the sizes under it, `Round 5.`, `Toddler: …`, in; a row for those sizes, out. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { joinSpans } from '../source/span.ts';
import { findHeading } from './headings.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import { sizesListed } from './read-sizes.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

/** `Child, Adult and Large: ` before the row of those sizes. */
interface Led {
  readonly names: readonly string[];
  readonly row: MappedText;
}

export function withRowsOfSizes(lines: readonly TextLine[]): readonly TextLine[] {
  const sizes = lines.flatMap(({ text }) => sizesListed(text.text));
  if (sizes.length === 0) return lines;
  const leads = leadOf(sizes);
  const named = namedOf(sizes);
  const read: TextLine[] = [];
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at];
    if (line === undefined) break;
    const end = isLabelAlone(line) ? endOfRows(lines, at, leads) : at + 1;
    const same = end === at + 1 ? sameRow(lines, at, named) : [];
    if (end > at + 2) read.push(...rowsOf(line, lines.slice(at + 1, end), leads));
    else if (same.length > 1) read.push(...ownRows(same));
    else read.push(...lines.slice(at, end));
    at = same.length > 1 ? at + same.length - 1 : end - 1;
  }
  return read;
}

/** The names, longest first, one or several of them before a colon. */
function leadOf(sizes: readonly string[]): RegExp {
  return new RegExp(`^(?:sizes?\\s+)?(${namesOf(sizes)})\\s*:\\s+(?=\\S)`, 'i');
}

/** `Round 6, size S: `, `Round 6 (M and L only): `: the number and the sizes before one colon. */
function namedOf(sizes: readonly string[]): RegExp {
  return new RegExp(
    `^((?:row|rnd|round)\\s+\\d+)\\s*[,(–—-]?\\s*(?:for\\s+)?(?:sizes?\\s+)?(${namesOf(sizes)})(?:\\s+only)?\\)?\\s*:\\s+(?=\\S)`,
    'i',
  );
}

function namesOf(sizes: readonly string[]): string {
  const name = sizes
    .toSorted((one, other) => other.length - one.length)
    .map((size) => size.replace(/[^\p{L}\p{N}\s]/gu, '\\$&'))
    .join('|');
  return `(?:${name})(?:\\s*(?:,\\s*and\\b|,|&|\\band\\b)\\s*(?:${name}))*`;
}

interface NamedRow extends Led {
  readonly line: TextLine;
  readonly label: MappedText;
}

/** Lines from one on that tell the same row for one size after another; none where only one does. */
function sameRow(lines: readonly TextLine[], from: number, named: RegExp): readonly NamedRow[] {
  const rows: NamedRow[] = [];
  for (const line of lines.slice(from)) {
    const found = line.cells.length > 1 ? null : named.exec(line.text.text);
    const [whole, label = '', names = ''] = found ?? [];
    const [first] = rows;
    const other = first !== undefined && label.toLowerCase() !== first.label.text.toLowerCase();
    if (whole === undefined || other) break;
    const row = sliceText(line.text, whole.length);
    rows.push({ line, label: sliceText(line.text, 0, label.length), names: namesIn(names), row });
  }
  return rows;
}

function namesIn(words: string): readonly string[] {
  return words.split(/\s*(?:,\s*and\b|,|&|\band\b)\s*/i);
}

function ownRows(rows: readonly NamedRow[]): readonly TextLine[] {
  const told = rows.flatMap(({ line, label, names, row }): readonly TextLine[] => {
    const text = joinTexts([label, insertedText(': ', fileOffset(row, 0)), row], '');
    return [
      heading(line, `${names.join(', ')} only:`, fileOffset(line.text, 0)),
      { ...line, text, cells: [text] },
    ];
  });
  const last = rows.at(-1)?.line;
  return last === undefined
    ? told
    : [...told, heading(last, 'All sizes.', fileOffset(last.text, last.text.text.length))];
}

function ledBy({ text, cells }: TextLine, leads: RegExp): Led | null {
  const found = cells.length > 1 ? null : leads.exec(text.text);
  if (found?.[1] === undefined) return null;
  return { names: namesIn(found[1]), row: sliceText(text, found[0].length) };
}

/** `Round 5.`, `Row 6:` and no more. */
function isLabelAlone({ text, cells }: TextLine): boolean {
  const label = cells.length > 1 ? null : rowLabel(text.text);
  return label !== null && !label.bare && label.end === text.text.length;
}

/** Past the last line of the sizes: rows that were broken to fit go on under them. */
function endOfRows(lines: readonly TextLine[], label: number, leads: RegExp): number {
  let end = label + 1;
  for (; end < lines.length; end += 1) {
    const line = lines[end];
    if (line === undefined || line.gap || rowLabel(line.text.text) !== null) break;
    if (ledBy(line, leads) !== null) continue;
    const above = lines[end - 1]?.text.text ?? '';
    if (end === label + 1 || /[.!)\]:]$/.test(above) || findHeading(line.text.text) !== null) break;
  }
  return end;
}

/** What is told of one size holds for no other, and behind them for all again. */
function rowsOf(label: TextLine, lines: readonly TextLine[], leads: RegExp): readonly TextLine[] {
  const words = sliceText(label.text, 0, label.text.text.replace(/[\s:.)–—-]+$/, '').length);
  const rows = lines.flatMap((line, i): readonly TextLine[] => {
    const led = ledBy(line, leads);
    if (led === null) return [line];
    const at = fileOffset(line.text, 0);
    const span = i === 0 ? joinSpans(label.span, line.span) : line.span;
    const row = joinTexts([words, insertedText(': ', fileOffset(led.row, 0)), led.row], '');
    return [
      heading({ ...line, span }, `${led.names.join(', ')} only:`, at),
      { ...line, text: row, cells: [row] },
    ];
  });
  const last = lines.at(-1) ?? label;
  return [...rows, heading(last, 'All sizes.', fileOffset(last.text, last.text.text.length))];
}

function heading(line: TextLine, words: string, at: number): TextLine {
  const text = insertedText(words, at);
  return { ...line, text, cells: [text], mark: null, gap: true };
}
