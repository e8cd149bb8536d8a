/** One mistake made in a pattern: whether it is reported, and if not, what it changes. */

import { planSize } from '../../src/check/plan-size.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { workSize } from '../../src/fabric/work.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { compileText, type Original } from './collections.ts';
import { applyEdit } from './seed/edit.ts';
import type { SeededEdit } from './seed/seed-pattern.ts';
import { brokenCount } from './stated-truth.ts';
import { stitchSignature, workSignature } from './work-signature.ts';

export type Verdict =
  /** An error or a warning that the pattern did not have. */
  | 'caught'
  /** No report, and the same work in every size. */
  | 'equivalent'
  /** The same, but for the length of a chain that only turns or rises: nothing else in the pattern tells what it is. */
  | 'turning chain'
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
  if (because !== null) return { original, edit, verdict: 'silent', because };
  const turning = stitchSignature(after) === stitchSignature(original.compiled);
  return { original, edit, verdict: turning ? 'turning chain' : 'right in itself', because };
}

function toldOf({ code, message, sizes }: CompiledPattern['diagnostics'][number]): string {
  return `${code} ${message} ${sizes.join()}`;
}

/** What makes the publication contradict itself, or null where it is another pattern that is right in itself. */
function contradiction(before: CompiledPattern, after: CompiledPattern, { kind }: SeededEdit): string | null {
  if (kind === 'a stated count one off') return 'the count stated is not the count made';
  if (kind === 'a join dropped') return 'the round is left open';
  if (kind === 'a yarn that is not there') return 'the yarn is not among the materials';
  return (
    brokenCount(before, after) ??
    numbersContradict(after) ??
    rangesContradict(after) ??
    multiplesContradict(before, after) ??
    shapeContradicts(before, after)
  );
}

/** Numbers of rows that no longer follow one another. */
function numbersContradict(after: CompiledPattern): string | null {
  for (const { fabric } of after.sizes) {
    for (const [at, row] of fabric.rows.entries()) {
      const last = fabric.rows[at - 1];
      if (row.number === null || last?.number == null || last.part !== row.part || last.unit !== row.unit)
        continue;
      if (row.number !== 1 && row.number !== last.number + 1)
        return `${row.label} stands after ${last.label}`;
    }
  }
  return null;
}

/** `Rows 6-16: Rep Rows 2-5 three times`: eleven rows are no three times four. */
function rangesContradict(after: CompiledPattern): string | null {
  for (const [part, { instructions }] of (after.pattern?.parts ?? []).entries()) {
    for (const [index, line] of instructions.lines.entries()) {
      const rep = line.steps.find((step) => step.kind === 'repeat rows');
      if (rep?.kind !== 'repeat rows' || rep.until.kind === 'height' || rep.rows.length === 0) continue;
      for (const [sizeIndex, { fabric }] of after.sizes.entries()) {
        const worked = fabric.rows.filter((row) => row.part === part && row.line === index).length;
        const times = rep.until.kind === 'times' ? rep.until.n.values : [];
        const said = times.length > 1 ? times[sizeIndex] : times[0];
        if (worked % rep.rows.length !== 0 || (said != null && worked !== said * rep.rows.length))
          return `${worked} rows are worked where ${rep.rows.length} are repeated`;
      }
    }
  }
  return null;
}

/** `ch a multiple of 6 plus 2` that comes out at the size in hand only. */
function multiplesContradict(before: CompiledPattern, after: CompiledPattern): string | null {
  const from = before.pattern;
  const to = after.pattern;
  if (from === null || to === null || !/multiple of \d/.test(worksOf(from))) return null;
  for (const index of from.sizes.keys()) {
    for (const more of [1, 2]) {
      if (worksAt(from, index, more) && !worksAt(to, index, more))
        return 'it does not come out at every multiple';
    }
  }
  return null;
}

function worksOf({ source, parts }: Pattern): string {
  return parts
    .flatMap(({ instructions }) => instructions.lines)
    .map(({ span }) => source.text.slice(span.start, span.end))
    .join('\n');
}

function worksAt(pattern: Pattern, index: number, more: number): boolean {
  const { plan } = planSize(pattern, index);
  if (plan === null) return false;
  const { diagnostics, whole } = workSize(pattern, index, { ...plan, repeats: plan.repeats + more });
  // Numbers that belong to the size, such as stitches along a side, are no fault of the multiple.
  return whole && diagnostics.every(({ code }) => code === 'count/mismatch');
}

/** Corners or a closed round that the piece no longer has. */
function shapeContradicts(before: CompiledPattern, after: CompiledPattern): string | null {
  for (const [index, { fabric }] of after.sizes.entries()) {
    const was = before.sizes[index]?.fabric;
    for (const [at, { corners, name }] of fabric.parts.entries()) {
      const had = was?.parts[at]?.corners ?? 0;
      if (had > 0 && corners !== had) return `${name} had ${had} corners and has ${corners}`;
    }
    if (was?.rows.length !== fabric.rows.length) continue;
    for (const [at, row] of fabric.rows.entries())
      if (was.rows[at]?.closing === 'joined' && row.closing !== 'joined')
        return `${row.label} no longer closes`;
  }
  return null;
}
