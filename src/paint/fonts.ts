/** Font bytes in, opened fonts out, each opened once however many booklets it sets. */

import { create, type Font } from 'fontkit';

/** Bytes are not changed once read, so an opened font may be kept as long as they are. */
const opened = new WeakMap<Uint8Array, Font>();

export function openFont(bytes: Uint8Array): Font {
  const known = opened.get(bytes);
  if (known !== undefined) return known;
  const font = create(bytes);
  opened.set(bytes, font);
  return font;
}
