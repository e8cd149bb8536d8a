/** Texts taken out of a file in; parts of them, or several as one, out, each character with its place in the file kept. */

import type { Run } from '../source/mapped-text.ts';
import { fileOffset, type MappedText } from '../source/mapped-text.ts';

/** A stretch of a text, by its indices. */
export function sliceText(mapped: MappedText, start: number, end = mapped.text.length): MappedText {
  const within = mapped.runs
    .filter(({ at }) => at > start && at < end)
    .map(({ at, offset }) => ({ at: at - start, offset }));
  return {
    text: mapped.text.slice(start, end),
    runs: [{ at: 0, offset: fileOffset(mapped, start) }, ...within],
  };
}

/** The same without white space at its ends. */
export function trimText(mapped: MappedText): MappedText {
  const { text } = mapped;
  const start = text.length - text.trimStart().length;
  const end = Math.max(start, text.trimEnd().length);
  return start === 0 && end === text.length ? mapped : sliceText(mapped, start, end);
}

/** Words that do not stand in the file, put where `offset` is. */
export function insertedText(text: string, offset: number): MappedText {
  return { text, runs: [{ at: 0, offset }] };
}

/** Several texts one after another; the separator lies where the text before it ends. */
export function joinTexts(texts: readonly MappedText[], separator: string): MappedText {
  let text = '';
  const runs: Run[] = [];
  let end = 0;
  for (const [index, piece] of texts.entries()) {
    if (index > 0 && separator !== '') {
      runs.push({ at: text.length, offset: end });
      text += separator;
    }
    const before = text.length;
    for (const { at, offset } of piece.runs) runs.push({ at: at + before, offset });
    text += piece.text;
    end = fileOffset(piece, Math.max(0, piece.text.length - 1)) + 1;
  }
  return { text, runs: runs.length === 0 ? [{ at: 0, offset: 0 }] : runs };
}
