/** A size -> its picture, as inline SVG. Decoration only: everything it shows stands in words beside it. */

import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import type { Markup } from './page-data.ts';

export function coverMarkup(_compiled: CompiledPattern, _size: CompiledSize): Markup | null {
  return null;
}
