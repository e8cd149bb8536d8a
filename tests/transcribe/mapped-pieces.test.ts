import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fileOffset, type MappedText } from '../../src/source/mapped-text.ts';
import { insertedText, joinTexts, sliceText, trimText } from '../../src/transcribe/mapped-pieces.ts';
import { tidyLines } from '../../src/transcribe/tidy-lines.ts';

/** What stands in the file where each character of the text is said to be. */
const there = (file: string, mapped: MappedText) =>
  [...mapped.text].map((_, i) => file.charAt(fileOffset(mapped, i))).join('');

const FILE = 'Row 1:  sc\tin   next  st,\u00a0 turn.';

test('a stretch of a line, however it is cut and joined, leads back to its own characters', () => {
  const [line] = tidyLines(FILE);
  const text = line?.text ?? insertedText('', 0);
  expect(text.text).toBe('Row 1: sc in next st, turn.');
  fc.assert(
    fc.property(fc.nat(text.text.length), fc.nat(text.text.length), (a, b) => {
      const [start, end] = [Math.min(a, b), Math.max(a, b)];
      const piece = trimText(sliceText(text, start, end));
      expect(piece.text).toBe(text.text.slice(start, end).trim());
      expect(there(FILE, piece).replace(/\s/g, ' ')).toBe(piece.text);
      const joined = joinTexts([piece, text], ' ');
      expect(joined.text).toBe(`${piece.text} ${text.text}`);
      expect(there(FILE, sliceText(joined, piece.text.length + 1)).replace(/\s/g, ' ')).toBe(text.text);
    }),
  );
});
