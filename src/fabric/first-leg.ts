/** `Ch 2, dc4tog over next 4 dc … *dc5tog over next 5 dc`: a chain that is the first leg of a round's first cluster. */

import type { Step } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';

/** The same steps, the stitch under that chain passed; others as they are. */
export function withFirstLeg(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex(({ kind }) => kind !== 'note' && kind !== 'yarn');
  const chain = steps[at];
  if (chain?.kind !== 'chain' || chain.counts !== null || 'of' in chain.n) return steps;
  // A single chain is the leg of nothing.
  if (chain.n.values.some((n) => n === null || n < 2)) return steps;
  const gathered = steps[at + 1];
  const legs = legsOf(gathered);
  if (legs === null || !steps.slice(at + 2).some((step) => holds(step, legs.of, legs.n + 1))) return steps;
  const counts = { as: null, plusChains: 0, throughout: false, span: chain.span };
  const n = { values: [1], span: chain.span };
  const passed: Step = { kind: 'skip', n, what: { kind: 'st' }, pick: 'first', span: chain.span };
  return [...steps.slice(0, at), { ...chain, counts }, passed, ...steps.slice(at + 1)];
}

/** How many legs of what, one in each of as many next stitches. */
function legsOf(step: Step | undefined): { readonly n: number; readonly of: string } | null {
  if (step?.kind !== 'work' || step.stitch.kind !== 'stitch') return null;
  const row = stitchById(step.stitch.id);
  if (row.family !== 'together' || step.place?.kind !== 'next' || step.place.n === null) return null;
  if (step.place.n.values.some((n) => n !== row.uses)) return null;
  return { n: row.uses, of: step.stitch.id.replace(/\d+tog$/, '') };
}

function holds(step: Step, of: string, legs: number): boolean {
  if ('body' in step) return step.body.some((inner) => holds(inner, of, legs));
  return step.kind === 'work' && step.stitch.kind === 'stitch' && step.stitch.id === `${of}${legs}tog`;
}
