/** Notes to the maker that a later row comes back to: where a marker was placed. */

import { addFlag } from './builder.ts';
import { FLAG, NONE } from './fabric.ts';
import type { Worker } from './worker.ts';

/** `place marker in st just made`: the marker sits in the last stitch made. */
export function noteMarker(worker: Worker, text: string): void {
  if (!/^(?:place (?:a )?marker|pm|mark)\b.*\b(?:just made|last st made|it|this st|that st)\b/i.test(text))
    return;
  const { builder } = worker;
  for (let i = builder.kind.length - 1; i >= worker.rowFirst; i -= 1) {
    if ((builder.countsAs[i] ?? NONE) === NONE) continue;
    addFlag(builder, i, FLAG.marked);
    return;
  }
}
