/** A transcript in, the lines and words of the pasted text that are nowhere in what was made of it out. */

import type { PieceKind, Transcript } from '../../src/transcribe/transcript.ts';

interface TextLine {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Lines with anything on them that can be seen. */
export function linesWithWords(text: string): TextLine[] {
  const lines: TextLine[] = [];
  let start = 0;
  for (const line of text.split(/(?<=\r\n|\r(?!\n)|[\n\v\f\u0085\u2028\u2029])/)) {
    // A mark of quoting alone is a blank line of an email; what has no width is not seen.
    if (line.replace(/[\p{Cc}\p{Cf}\s]|\ufe0e|\ufe0f/gu, '').replace(/^>+/, '') !== '')
      lines.push({ start, end: start + line.length, text: line });
    start += line.length;
  }
  return lines;
}

/** Lines that no piece touches. */
export function uncovered({ source, pieces }: Transcript): string[] {
  return linesWithWords(source.text)
    .filter(({ start, end }) => !pieces.some(({ span }) => span.start < end && span.end > start))
    .map(({ text }) => text);
}

/** What is kept in the designer's own words, wherever it goes. */
const WORD_FOR_WORD: readonly PieceKind[] = [
  'row',
  'kept',
  'note',
  'finishing',
  'about',
  'licence',
  'yarn',
  'hook',
  'notion',
  'gauge',
];

/** Words of pieces kept word for word that the pattern file does not have. */
export function wordsLost({ source, pieces }: Transcript, file: string): string[] {
  const kept = new Set(wordsIn(file));
  return pieces
    .filter(({ kind }) => WORD_FOR_WORD.includes(kind))
    .flatMap(({ span }) => wordsIn(source.text.slice(span.start, span.end)))
    .filter((word) => word !== 'and' && !kept.has(word));
}

/** The letter o with a blank behind it is a bullet of word processors; "and" parts the entries of a list, as a comma does. */
function wordsIn(text: string): string[] {
  return (
    text
      .replace(/(?![\s\u200c\u200d])[\p{Cc}\p{Cf}]/gu, '')
      .replace(/^[\s>]*o\s/gim, '')
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}
