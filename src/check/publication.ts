/** What the rules of a publication look at: a pattern, its worked sizes, and whether they are worked without an error. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Measures } from '../measure/measures.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { PhotographLooks } from '../pattern/photograph.ts';
import type { Span } from '../source/span.ts';

export interface WorkedSize {
  /** Its place in `pattern.sizes`. */
  readonly index: number;
  readonly fabric: Fabric;
  /** Reckoned when first asked for. */
  readonly measures: Measures;
}

export interface Publication {
  readonly pattern: Pattern;
  readonly sizes: readonly WorkedSize[];
  /** What was found on the disk of its photographs. */
  readonly looks: PhotographLooks;
  /** No error in the file, its words or its work: what is measured is what is meant. */
  readonly sound: boolean;
}

/** The span of the first of these paths that stands in the file; its beginning when none does. */
export function placeOf({ places }: Pattern, ...paths: readonly string[]): Span {
  for (const path of paths) {
    const span = places.get(path);
    if (span !== undefined) return span;
  }
  return { start: 0, end: 1 };
}
