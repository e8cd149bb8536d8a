/** A row that is worked again with something else in its corners or spaces: `As Row 2, working 2 dc in each 2-ch sp`. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { withCornersOf } from '../notation/corner-work.ts';
import type { CornersStep, Step } from '../notation/tree.ts';

/** The steps of the row with those behind it; null where the row has no stitch that goes into each of something. */
export function withCorners(steps: readonly Step[], behind: readonly Step[]): readonly Step[] | null {
  const corners = behind.find((step): step is CornersStep => step.kind === 'corners');
  if (corners === undefined) return behind.length === 0 ? steps : [...steps, ...behind];
  const at = steps.findLastIndex((step) => step.kind === 'work' && step.place?.kind === 'each');
  const each = steps[at];
  if (each?.kind !== 'work' || each.corners?.also !== undefined) return null;
  const changed = { ...each, corners: withCornersOf(each.corners, corners) };
  return [
    ...steps.slice(0, at),
    changed,
    ...steps.slice(at + 1),
    ...behind.filter((step) => step !== corners),
  ];
}

/** `working 2 dc in each 2-ch sp` of a row that works into each of nothing. */
export function noneToChange(after: readonly Step[], file: string): Diagnostic {
  const span = after.find(({ kind }) => kind === 'corners')?.span ?? { start: 0, end: 0 };
  const facts = { words: 'working … in each', expected: 'a row with a stitch worked in each st before it,' };
  return diagnose('phrase/unread', { file, span }, facts);
}
