/** One mistake made in a pattern: whether it is reported, and if not, what it changes. */

import type { CompiledPattern } from '../../src/compiled.ts';
import { compileText, type Original } from './collections.ts';
import { applyEdit } from './seed/edit.ts';
import type { SeededEdit } from './seed/seed-pattern.ts';
import { brokenCount } from './stated-truth.ts';
import { workSignature } from './work-signature.ts';

export type Verdict =
  /** An error or a warning that the pattern did not have. */
  | 'caught'
  /** No report, and the same work in every size. */
  | 'equivalent'
  /** No report, other work, and all that the pattern states still holds: a design that is right in itself. */
  | 'right in itself'
  /** No report, and what the pattern says of itself is no longer so. */
  | 'silent';

export interface Tried {
  readonly original: Original;
  readonly edit: SeededEdit;
  readonly verdict: Verdict;
  /** Why it should have been reported. */
  readonly because: string | null;
}

export function tryEdit(original: Original, before: string, edit: SeededEdit): Tried {
  const after = compileText(applyEdit(original.text, edit));
  const known = new Set(original.compiled.diagnostics.map(toldOf));
  if (after.diagnostics.some((diagnostic) => !known.has(toldOf(diagnostic))))
    return { original, edit, verdict: 'caught', because: null };
  if (workSignature(after) === before) return { original, edit, verdict: 'equivalent', because: null };
  const because = contradiction(original.compiled, after, edit);
  return { original, edit, verdict: because === null ? 'right in itself' : 'silent', because };
}

function toldOf({ code, message, sizes }: CompiledPattern['diagnostics'][number]): string {
  return `${code} ${message} ${sizes.join()}`;
}

/** What makes the publication contradict itself, or null where it is another pattern that is right in itself. */
function contradiction(before: CompiledPattern, after: CompiledPattern, { kind }: SeededEdit): string | null {
  if (kind === 'a stated count one off') return 'the count stated is not the count made';
  if (kind === 'a row numbered wrong') return rowsContradict(before, after);
  if (kind === 'a join dropped') return 'the round is left open';
  if (kind === 'a yarn that is not there') return 'the yarn is not among the materials';
  return brokenCount(before, after) ?? shapeContradicts(before, after);
}

/** Numbers of rows that no longer follow one another; a range with more or fewer rows may be meant. */
function rowsContradict(before: CompiledPattern, after: CompiledPattern): string | null {
  for (const [index, { fabric }] of after.sizes.entries()) {
    for (const [at, row] of fabric.rows.entries()) {
      const last = fabric.rows[at - 1];
      if (row.number === null || last?.number == null || last.part !== row.part || last.unit !== row.unit)
        continue;
      const expected = row.number === 1 || row.number === last.number + 1;
      if (!expected) return `${row.label} stands after ${last.label}`;
    }
    if (
      fabric.rows.length < (before.sizes[index]?.fabric.rows.length ?? 0) &&
      brokenCount(before, after) !== null
    )
      return brokenCount(before, after);
  }
  return brokenCount(before, after);
}

/** Corners or a closed round that the piece no longer has. */
function shapeContradicts(before: CompiledPattern, after: CompiledPattern): string | null {
  for (const [index, { fabric }] of after.sizes.entries()) {
    const was = before.sizes[index]?.fabric;
    for (const [at, { corners, name }] of fabric.parts.entries()) {
      const had = was?.parts[at]?.corners ?? 0;
      if (had > 0 && corners !== had) return `${name} had ${had} corners and has ${corners}`;
    }
    for (const [at, row] of fabric.rows.entries()) {
      const had = was?.rows[at];
      if (had?.closing === 'joined' && row.closing !== 'joined') return `${row.label} no longer closes`;
    }
  }
  return null;
}
