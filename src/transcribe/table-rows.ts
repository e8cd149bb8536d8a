/** A line of a pasted table in, the row of a pattern it stands for out. */

import type { MappedText } from '../source/mapped-text.ts';
import { isInstruction } from './instruction-words.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import { tableUnit } from './page-lines.ts';
import { rowLabel } from './row-labels.ts';
import type { TextLine } from './tidy-lines.ts';

/** The rows of a table under its head, `Row | Work`, as lines of their own. */
export function withTableRows(lines: readonly TextLine[]): readonly TextLine[] {
  let table: string | null = null;
  return lines.map((line) => {
    if (line.isRule) return line;
    const head = line.cells.length > 1 ? tableUnit(line.cells.map((cell) => cell.text)) : null;
    if (head !== null || line.cells.length < 2) {
      table = head;
      return line;
    }
    const text = table === null ? line.text : asTableRow(line, table);
    return text === line.text ? line : { ...line, text, cells: [text] };
  });
}

/** A table's row as the line it would be: its label, a colon, the instruction, its count in brackets. */
export function asTableRow(line: TextLine, table: string | null): MappedText {
  const [first, ...rest] = line.cells;
  const second = rest[0];
  if (first === undefined || second === undefined) return line.text;
  const at = first.runs[0]?.offset ?? 0;
  const unit = table ?? '';
  const numbered = /^\d{1,3}(?:\s*[–-]\s*\d{1,3})?[.:)]?$/.test(first.text);
  const labelled = numbered || rowLabel(first.text)?.end === first.text.length;
  if (!labelled || (numbered && table === null && !isInstruction(second.text))) return line.text;
  const bare = first.text.replace(/[.:)]+$/, '');
  const range = /[–-]/.test(bare);
  const word = numbered && unit !== '' ? `${unit}${range ? 's' : ''} ` : '';
  const label = joinTexts(
    [
      insertedText(word, at),
      sliceText(first, 0, bare.length),
      insertedText(numbered && unit === '' ? '.' : ':', at),
    ],
    '',
  );
  const count = rest.length > 1 ? rest.at(-1) : undefined;
  const isCount = count !== undefined && /^[([]?\d{1,4}(?:\s*[a-z]{1,8})?[)\]]?$/i.test(count.text);
  const middle = rest.slice(0, isCount ? -1 : undefined);
  const counted =
    isCount && !/^[([]/.test(count.text)
      ? [
          joinTexts(
            [
              insertedText('(', count.runs[0]?.offset ?? at),
              count,
              insertedText(')', count.runs[0]?.offset ?? at),
            ],
            '',
          ),
        ]
      : isCount
        ? [count]
        : [];
  return joinTexts([label, ...middle, ...counted], ' ');
}
