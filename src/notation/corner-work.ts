/** What goes into corners, put together. */

import type { CornersStep, CornerWork } from './tree.ts';

/** What goes into corners, with what goes into those that were told before. */
export function withCornersOf(before: CornerWork | undefined, { body, what }: CornersStep): CornerWork {
  return before === undefined ? { body, what } : { ...before, also: { body, what } };
}
