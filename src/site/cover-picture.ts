/** A size -> its picture: a scene for the file beside its page, and where pages find it. Decoration only. */

import { coverPicture } from '../chart/cover-picture.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { ownName } from '../pattern/own-name.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Scene } from '../scene/scene.ts';
import { linkTo, type PagePlace } from './addresses.ts';

/** Null when no stitch was worked. */
export function coverOf(pattern: Pattern, size: CompiledSize): Scene | null {
  return coverPicture(pattern, size.fabric);
}

export function coverFileName(pattern: string, size: string): string {
  return `${ownName(pattern)}-${size}-cover.svg`;
}

/** The address of a size's picture from a page; null where there is none, or no size. */
export function coverLink(
  compiled: CompiledPattern,
  pattern: Pattern,
  size: CompiledSize | undefined,
  from: PagePlace,
): string | null {
  if (size === undefined || coverOf(pattern, size) === null) return null;
  return linkTo(from, [compiled.slug, size.slug], coverFileName(compiled.slug, size.slug));
}
