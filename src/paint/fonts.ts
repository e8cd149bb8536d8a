/** Font bytes in, opened fonts and shaped words out: each font is opened once and each word shaped once, however many booklets they set. */

import { create, type Font, type GlyphRun } from 'fontkit';

interface Opened {
  readonly font: Font;
  readonly words: Map<string, GlyphRun>;
}

/** Bytes are not changed once read, so an opened font may be kept as long as they are. */
const opened = new WeakMap<Uint8Array, Opened>();

/** More words than any collection has; what is beyond them is a text that repeats nothing. */
const MOST_KEPT = 20_000;

export function openFont(bytes: Uint8Array): Font {
  return open(bytes).font;
}

/** What shapes words of one font. Shaping one takes longer than all else that is done to it, and booklets repeat the same few hundred. */
export function wordShaper(bytes: Uint8Array): (word: string) => GlyphRun {
  const { font, words } = open(bytes);
  return (word) => {
    let run = words.get(word);
    if (run === undefined) {
      run = font.layout(word);
      if (words.size >= MOST_KEPT) words.clear();
      words.set(word, run);
    }
    return run;
  };
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
  const made = { font: create(bytes), words: new Map<string, GlyphRun>() };
  opened.set(bytes, made);
  return made;
}
