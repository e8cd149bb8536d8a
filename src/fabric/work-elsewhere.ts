/** Stitches along an edge that is not worked here in, made as many as their words say: a towel's hem, the neck of pieces sewn together. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { EvenlyStep, Step } from '../notation/tree.ts';
import { MOST_STITCHES } from './builder.ts';
import { NONE } from './fabric.ts';
import { passPlace } from './find-site.ts';
import { makeNamed } from './make-stitch.ts';
import { plainSite } from './site.ts';
import type { Worker } from './worker.ts';
import { stuck, valueFor } from './worker.ts';

/** Each place is taken to be there: how many there are is not known. */
export function workElsewhere(worker: Worker, step: EvenlyStep): boolean {
  const n = valueFor(worker, step.n.values) ?? 0;
  if (worker.builder.kind.length + n > MOST_STITCHES)
    return stuck(worker, { kind: 'too many', span: step.span });
  const place = plainSite('unknown', NONE, '');
  const { sites, next } = worker;
  const places = Array.from({ length: n }, () => place);
  worker.sites = sites === null ? places : [...sites.slice(0, next), ...places, ...sites.slice(next)];
  for (let made = 0; made < n; made += 1) {
    if (!makeNamed(worker, step.stitch, place, step.span)) return false;
    passPlace(worker, next + made);
  }
  return true;
}

/** A row that stands on nothing that was worked begins. */
export function standElsewhere(worker: Worker): void {
  worker.sites = [];
  worker.next = 0;
  worker.last = -1;
  worker.round = false;
  worker.edging = false;
}

/** Whether all that a row works lies along such edges: then it stands on nothing that was worked. */
export function liesElsewhere(steps: readonly Step[]): boolean {
  let elsewhere = false;
  for (const step of steps) {
    if (step.kind === 'repeat' || step.kind === 'bracket') {
      if (!liesElsewhere(step.body)) return false;
      elsewhere = true;
    } else if (step.kind === 'evenly' && step.edge === 'elsewhere') elsewhere = true;
    else if (step.kind === 'evenly' || step.kind === 'along' || step.kind === 'group' || step.kind === 'skip')
      return false;
    // `1 sc in same st as join`: where the yarn was joined.
    else if (step.kind === 'work' && step.place?.kind !== 'same') return false;
  }
  return elsewhere;
}

/** For each such edge that a row goes along, that nothing tells whether its number is right. */
export function edgeNotes(
  steps: readonly Step[],
  { file, size }: { readonly file: string; readonly size: string },
): Diagnostic[] {
  return steps.flatMap((step) => {
    if (step.kind === 'repeat' || step.kind === 'bracket') return edgeNotes(step.body, { file, size });
    if (step.kind !== 'evenly' || step.edge !== 'elsewhere') return [];
    const said = step.side?.said ?? '';
    const thing = step.side?.of === undefined ? said : `in the sts ${said}`;
    return [diagnose('count/not-checked', { file, span: step.span, sizes: [size] }, { thing, edge: true })];
  });
}
