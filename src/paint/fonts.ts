/** Font bytes in, opened fonts out, each opened once however many booklets it sets. */

import { create, type Font, type GlyphRun } from 'fontkit';

/** Bytes are not changed once read, so an opened font may be kept as long as they are. */
const opened = new WeakMap<Uint8Array, Font>();

export function openFont(bytes: Uint8Array): Font {
  const known = opened.get(bytes);
  if (known !== undefined) return known;
  const font = keepingRuns(create(bytes));
  opened.set(bytes, font);
  return font;
}

/** More words than any collection has; what is beyond them is a text that repeats nothing. */
const MOST_KEPT = 20_000;

/** Shaping a word takes longer than all else that is done to it, and booklets are made of the same few hundred words. */
function keepingRuns(font: Font): Font {
  const runs = new Map<string, GlyphRun>();
  const shape = font.layout.bind(font);
  font.layout = (text, features) => {
    if (features !== undefined) return shape(text, features);
    let run = runs.get(text);
    if (run === undefined) {
      run = shape(text);
      if (runs.size >= MOST_KEPT) runs.clear();
      runs.set(text, run);
    }
    // Whoever sets the run scales its positions in place.
    return Object.create(run, { positions: { value: run.positions.map((position) => ({ ...position })) } });
  };
  return font;
}
