/** Lines as old books print them, `1 tr. in the 4th ch. from the hook, 2 ch., miss 2 ch.`, in; the same without those stops out. */

import type { MappedText } from '../source/mapped-text.ts';
import { joinTexts, sliceText } from './mapped-pieces.ts';
import type { TextLine } from './tidy-lines.ts';

/** A stop behind an abbreviation with the sentence going on: a comma or a small letter comes next. */
const STOPPED =
  /(?<![\p{L}.])(?:[ds]\.\s?c|s\.\s?s|h\.\s?tr|d\.\s?tr|chs?|tr|[ds]c|hdc|htr|dtr|ss|sl|sts?|sps?|blk?s?|lps?|rep|beg|inc|dec|rnds?)\.(?=[,;:)]|\s+\((?:to\s+)?(?:counts?|stands?|for)\b|\s+\p{Ll})/gu;

/** The line itself where it has none. */
export function withoutStops(line: TextLine): TextLine {
  if (!line.text.text.includes('.')) return line;
  const text = unstopped(line.text);
  if (text === line.text) return line;
  return { ...line, text, cells: line.cells.length > 1 ? line.cells.map(unstopped) : [text] };
}

function unstopped(words: MappedText): MappedText {
  const pieces: MappedText[] = [];
  let from = 0;
  for (const found of words.text.matchAll(STOPPED)) {
    for (const stop of found[0].matchAll(/\.\s?/g)) {
      const at = found.index + stop.index;
      pieces.push(sliceText(words, from, at));
      from = at + stop[0].length;
    }
  }
  return from === 0 ? words : joinTexts([...pieces, sliceText(words, from)], '');
}
