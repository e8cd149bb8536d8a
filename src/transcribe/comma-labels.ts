/** Rows with a comma behind their number in, `Rnd 2, 2 sc in each st around.`, the same with a colon out. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { isInstruction } from './instruction-words.ts';
import { insertedText, joinTexts, sliceText } from './mapped-pieces.ts';
import type { TextLine } from './tidy-lines.ts';

/** One row, or a range of them: `Rows 3, 5 and 7:` is a list, and its comma no end. */
const LABEL = /^(?:(?:row|rnd|round)\s+\d+|(?:rows|rnds|rounds)\s+\d+\s*(?:to|[–-])\s*\d+),\s+/i;
/** `for the pretty bit on top: `, between the number and the row. */
const WHAT_FOR = /^(?:for|to make)\s+[\p{L} ’']{3,40}:\s+/iu;

export function withColons(line: TextLine): TextLine {
  const found = LABEL.exec(line.text.text)?.[0];
  if (found === undefined || line.cells.length > 1) return line;
  const label = found.trimEnd().slice(0, -1);
  const behind = sliceText(line.text, found.length);
  const why = WHAT_FOR.exec(behind.text)?.[0] ?? '';
  const row = behind.text.slice(why.length);
  if (!isInstruction(row) && !/^(?:\*|(?:the )?same as\b)/i.test(row)) return line;
  const text = joinTexts(
    [
      sliceText(line.text, 0, label.length),
      ...(why === '' ? [] : bracketed(sliceText(behind, 0, why.search(/:\s+$/)))),
      insertedText(': ', fileOffset(line.text, label.length)),
      sliceText(behind, why.length),
    ],
    '',
  );
  return { ...line, text, cells: [text] };
}

function bracketed(words: MappedText): readonly MappedText[] {
  const at = fileOffset(words, 0);
  return [insertedText(' (', at), words, insertedText(')', at)];
}
