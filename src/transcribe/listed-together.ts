/** `ch, sc, dc as usual (chain, single crochet, double crochet)`: several abbreviations in, each with its own words out. */

import type { MappedText } from '../source/mapped-text.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchNamed } from './derive-work.ts';
import { sliceText, trimText } from './mapped-pieces.ts';

export interface NamedTogether {
  readonly name: MappedText;
  /** Empty where the words are told of none of them. */
  readonly words: MappedText;
}

const TOGETHER = /^([^()=:.]+?)(\s+as (?:usual|normal|standard|always)\b)?(?:\s*\(([^()]+)\))?\.?$/i;

/** Null where the names are not all stitches of the trade, or the brackets do not hold as many words. */
export function listedTogether(text: MappedText, terms: Terms): readonly NamedTogether[] | null {
  const [, names = '', usual, meanings] = TOGETHER.exec(text.text) ?? [];
  if (usual === undefined || !names.includes(',')) return null;
  const named = cut(text, 0, names.length);
  if (!named.every((name) => stitchNamed(name.text, terms) !== null)) return null;
  if (meanings === undefined) return named.map((name) => ({ name, words: sliceText(name, 0, 0) }));
  const at = text.text.indexOf('(') + 1;
  const words = cut(text, at, at + meanings.length);
  if (words.length !== named.length) return null;
  return named.map((name, i) => ({ name, words: words[i] ?? name }));
}

function cut(text: MappedText, start: number, end: number): MappedText[] {
  const pieces: MappedText[] = [];
  let from = start;
  for (const found of [...text.text.slice(start, end).matchAll(/,\s*(?:and\s+)?|\s+and\s+/g)]) {
    pieces.push(trimText(sliceText(text, from, start + found.index)));
    from = start + found.index + found[0].length;
  }
  pieces.push(trimText(sliceText(text, from, end)));
  return pieces;
}
