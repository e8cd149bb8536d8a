/** A heading spaced out letter by letter, `T A P E S T R Y   P O U C H`, in; its words out. */

import { fileOffset, type MappedText } from '../source/mapped-text.ts';
import { joinTexts, sliceText } from './mapped-pieces.ts';
import type { TextLine } from './tidy-lines.ts';

const SPACED = /^(?:[\p{Lu}\d&’'-] ){3,}[\p{Lu}\d!]$/u;

export function withoutSpacing(line: TextLine): TextLine {
  if (line.cells.length > 1 || !SPACED.test(line.text.text)) return line;
  const text = together(line.text);
  return { ...line, text, cells: [text] };
}

/** Several blanks of the file part one word from the next. */
function together(text: MappedText): MappedText {
  const pieces: MappedText[] = [];
  for (let at = 0; at < text.text.length; at += 2) {
    const wide = fileOffset(text, at + 1) + 1 < fileOffset(text, at + 2);
    pieces.push(sliceText(text, at, at + (wide ? 2 : 1)));
  }
  return joinTexts(pieces, '');
}
