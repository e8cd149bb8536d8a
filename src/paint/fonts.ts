/** Font bytes in, opened fonts and shaped words out: each font is opened once and each word shaped once, however many booklets they set. */

import { create, type Font, type GlyphRun } from 'fontkit';

/** In units of the font. */
export interface ShapedGlyph {
  readonly id: number;
  readonly advanceWidth: number;
  /** What it stands for. */
  readonly codePoints: readonly number[];
  /** How far the pen goes on, kerned. */
  readonly xAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
}

export type ShapedWord = readonly ShapedGlyph[];

interface Opened {
  readonly font: Font;
  readonly words: Map<string, ShapedWord>;
}

/** Bytes are not changed once read, so an opened font may be kept as long as they are. */
const opened = new WeakMap<Uint8Array, Opened>();

/** More words than any collection has; what is beyond them is a text that repeats nothing. */
const MOST_KEPT = 20_000;

/** Latin letters with whatever accents they have a sign for, figures, points and marks; not accents by themselves. */
const PLAIN =
  /^[\x20-\x7e\u00a0-\u00a7\u00a9-\u00ae\u00b0-\u00b3\u00b5-\u017f\u2010-\u2043\u2150-\u22ff\u25a0-\u25ff]*$/;

/** What a font does to accents put on letters, and to other scripts; to plain words nothing, but reading how takes long. */
const NOT_FOR_PLAIN = Object.fromEntries(
  ['calt', 'ccmp', 'clig', 'locl', 'mark', 'mkmk', 'rclt', 'rlig'].map((feature) => [feature, false]),
);

export function openFont(bytes: Uint8Array): Font {
  return open(bytes).font;
}

/** What shapes words of one font. Shaping one takes longer than all else that is done to it, and booklets repeat the same few hundred. */
export function wordShaper(bytes: Uint8Array): (word: string) => ShapedWord {
  const { font, words } = open(bytes);
  const shape = (word: string): ShapedWord => {
    // Nothing is kerned with a space, and most words are met with one behind them and without.
    if (word.length > 1 && word.endsWith(' ')) return [...shape(word.slice(0, -1)), ...shape(' ')];
    let shaped = words.get(word);
    if (shaped === undefined) {
      const run = PLAIN.test(word) ? font.layout(word, NOT_FOR_PLAIN) : font.layout(word);
      shaped = shapedWord(word, run, font);
      if (words.size >= MOST_KEPT) words.clear();
      words.set(word, shaped);
    }
    return shaped;
  };
  return shape;
}

/** The words of a font shaped so far. */
export function shapedWords(bytes: Uint8Array): ReadonlyMap<string, ShapedWord> {
  return open(bytes).words;
}

/** A word shaped before, by the same library from the same font: it is not shaped again. */
export function putShaped(bytes: Uint8Array, word: string, shaped: ShapedWord): void {
  const { font, words } = open(bytes);
  words.set(word, shaped);
  // The library keeps each glyph as it was first asked for, and is asked for it without this when it is embedded.
  for (const { id, codePoints } of shaped) font.getGlyph(id, codePoints);
}

export function advanceOf(word: ShapedWord): number {
  return word.reduce((sum, { xAdvance }) => sum + xAdvance, 0);
}

function shapedWord(word: string, { glyphs, positions }: GlyphRun, font: Font): ShapedWord {
  const standsFor = meanings(word, glyphs, font);
  return glyphs.map(({ id, advanceWidth }, index) => {
    const { xAdvance = advanceWidth, xOffset = 0, yOffset = 0 } = positions[index] ?? {};
    return { id, advanceWidth, codePoints: standsFor[index] ?? [], xAdvance, xOffset, yOffset };
  });
}

/**
 * What each glyph stands for. The library tells it as it was when it first met the glyph, and is silent of one that it met
 * as a part of another, such as the letter under an accent: so it is asked only for those that no single letter comes to.
 */
function meanings(word: string, glyphs: GlyphRun['glyphs'], font: Font): (readonly number[])[] {
  const characters = Array.from(word, (character) => character.codePointAt(0) ?? 0);
  if (characters.length === glyphs.length) return characters.map((character) => [character]);
  const single = new Map(characters.map((character) => [font.glyphForCodePoint(character).id, character]));
  return glyphs.map(({ id, codePoints }) => {
    const character = single.get(id);
    return character === undefined ? codePoints : [character];
  });
}

/** Each word with the space after it: they are shaped one by one, so that nothing is kerned across a space. */
export function wordsApart(text: string): string[] {
  const words: string[] = [];
  let from = 0;
  while (from < text.length) {
    const space = text.indexOf(' ', from);
    const end = space < 0 ? text.length : space + 1;
    words.push(text.slice(from, end));
    from = end;
  }
  return words;
}

function open(bytes: Uint8Array): Opened {
  const known = opened.get(bytes);
  if (known !== undefined) return known;
  const made = { font: create(bytes), words: new Map<string, ShapedWord>() };
  opened.set(bytes, made);
  return made;
}
