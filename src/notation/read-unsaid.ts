/** Brackets that say neither where nor how often, and only hold together what is worked once. */

import type { Cursor } from './cursor.ts';
import { lastOf } from './last-of.ts';
import type { BracketStep, Step } from './tree.ts';

/** `(ch 3, sl st in 3rd ch from hook)`: a picot, which goes back to its own chain and needs no place. */
export function closesOnItself(body: readonly Step[]): boolean {
  const last = lastOf(body);
  if (body.length < 2 || body[0]?.kind !== 'chain' || last?.kind !== 'work') return false;
  if (last.stitch.kind !== 'stitch' || !CLOSING.has(last.stitch.id)) return false;
  const place = last.place?.kind;
  return place === 'from-hook' || place === 'last-made';
}

const CLOSING = new Set(['sl-st', 'sc']);

/**
 * `(1 sc, inc), 4 sc, (1 sc, inc) x3, 4 sc, (1 sc, inc) x2 (26)`: once, where the same is worked several times elsewhere
 * on the row, and the count of the row will tell. Takes back what was told of such brackets.
 */
export function workedOnce(
  cursor: Cursor,
  before: number,
  steps: readonly Step[],
  counted: boolean,
): readonly Step[] {
  const { faults } = cursor;
  if (!counted || !faults.slice(before).every(({ code }) => code === 'bracket/no-use')) return steps;
  const unsaid = new Set(faults.slice(before).map(({ span }) => span.start));
  const told = steps.filter((step) => step.kind === 'bracket' && !unsaid.has(step.span.start));
  const once = steps.filter(
    (step) =>
      step.kind === 'bracket' &&
      unsaid.has(step.span.start) &&
      told.some((other) => other.kind === 'bracket' && alike(step, other)),
  );
  if (once.length < unsaid.size) return steps;
  faults.length = before;
  return steps.flatMap((step) => (step.kind === 'bracket' && once.includes(step) ? step.body : [step]));
}

/** The same stitches in the same order, whatever their numbers. */
function alike(one: BracketStep, other: BracketStep): boolean {
  return (
    one.body.length === other.body.length &&
    one.body.every((step, i) => {
      const beside = other.body[i];
      if (step.kind !== beside?.kind) return false;
      return step.kind !== 'work' || (beside.kind === 'work' && nameOf(step) === nameOf(beside));
    })
  );
}

function nameOf({ stitch }: Extract<Step, { kind: 'work' }>): string {
  return stitch.kind === 'stitch' ? stitch.id : stitch.name;
}
