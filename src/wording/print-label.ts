/** A line's label and side in, as printed out: `Row 2 (WS)`, `Rnds 5–8`, `Rows 4–27 (33, 39)`. */

import type { Label, Line, Unit } from '../notation/line.ts';
import { ownWords } from './own-words.ts';
import { form } from './print-name.ts';
import { isMany, printNumber, printValues } from './print-number.ts';
import type { Voice } from './voice.ts';

/** Null for a line that stands outside rows. */
export function printLabel(line: Line, voice: Voice): string | null {
  return line.label === null ? null : withSide(labelWords(line.label, voice), line.side, voice);
}

/** Row numbers worked out from the fabric: one pair a size, all sizes' or one's. */
export function printRange(
  unit: Unit,
  ranges: readonly { readonly from: number; readonly to: number }[],
  side: Line['side'],
  voice: Voice,
): string {
  const from = printValues(ranges.map((range) => range.from));
  const to = printValues(ranges.map((range) => range.to));
  const single = ranges.every((range) => range.from === range.to);
  const noun = form(unit === 'row' ? voice.phrases.row : voice.phrases.round, !single);
  return withSide(single ? `${noun} ${from}` : `${noun} ${from}–${to}`, side, voice);
}

function labelWords(label: Label, voice: Voice): string {
  if (label.kind === 'named') return ownWords(label.name, voice);
  const noun = label.unit === 'row' ? voice.phrases.row : voice.phrases.round;
  if (label.kind === 'next') {
    if (label.n === undefined) return `Next ${noun.one.toLowerCase()}`;
    return `Next ${printNumber(label.n, voice.numbers)} ${form(noun, isMany(label.n, voice.numbers)).toLowerCase()}`;
  }
  const from = printNumber(label.from, voice.numbers);
  if (label.others !== undefined) {
    const all = [from, ...label.others.map((other) => printNumber(other, voice.numbers))];
    return `${noun.many} ${all.slice(0, -1).join(', ')} and ${all[all.length - 1]}`;
  }
  if (label.to === null) return `${noun.one} ${from}`;
  if (label.to === 'on') return `${noun.many} ${from} on`;
  const to = printNumber(label.to, voice.numbers);
  // One size may have one row where another has several.
  if (from === to) return `${noun.one} ${from}`;
  return `${noun.many} ${from}–${to}`;
}

function withSide(words: string, side: Line['side'], voice: Voice): string {
  if (side === null) return words;
  return `${words} (${side === 'RS' ? voice.phrases.rightSide : voice.phrases.wrongSide})`;
}
