/** Two rows of one shape in, the one that comes so many rows after them out: each number goes on as it grew. */

import type { Line } from '../notation/line.ts';
import type { RepeatRowsStep, Step, StitchName } from '../notation/tree.ts';

type More = NonNullable<RepeatRowsStep['more']>;

/** On each side of the middle. */
const SIDES = 2;

/**
 * Null where the two do not differ just as it is said: by so many of that stitch or group, and in nothing else. How a
 * round begins before its first chain, at which corner and in which yarn, may differ. Groups may be told without their
 * number, `3 tr in each ch-1 sp to corner`: `counted` where a count tells whether they grow.
 */
export function grownLine(
  last: Line,
  before: Line,
  times: number,
  more: More,
  counted: boolean,
): Line | null {
  const found = { grown: 0 };
  const [now, then] = [cut(last.steps), cut(before.steps)];
  const steps = grown(now.round, then.round, { times, more, found, inside: null });
  const enough =
    'group' in more
      ? found.grown >= SIDES || (found.grown === 0 && counted)
      : found.grown > 0 || ('special' in more && counted);
  if (steps === undefined || !enough) return null;
  const lead = now.lead.some(isYarn) ? then.lead : now.lead;
  return { ...last, steps: [...lead, ...(steps as Line['steps'])], stated: null };
}

/** What stands before the first chain, and the round itself, without the yarn that is cut at its end. */
function cut(steps: Line['steps']): { readonly lead: Line['steps']; readonly round: Line['steps'] } {
  const first = Math.max(
    0,
    steps.findIndex(({ kind }) => kind === 'chain'),
  );
  const end = steps.findLastIndex((step) => !isYarn(step)) + 1;
  return { lead: steps.slice(0, first), round: steps.slice(first, end) };
}

function isYarn({ kind }: Step): boolean {
  return kind === 'yarn' || kind === 'fasten off';
}

interface Growing {
  readonly times: number;
  readonly more: More;
  readonly found: { grown: number };
  /** The step that is looked into: a stitch, or what is repeated. */
  readonly inside: Step | null;
}

/** Undefined where two parts of the rows are not of one shape. */
function grown(now: unknown, then: unknown, growing: Growing): unknown {
  if (typeof now !== 'object' || now === null || typeof then !== 'object' || then === null)
    return now === then ? now : undefined;
  if (Array.isArray(now)) {
    if (!Array.isArray(then) || now.length !== then.length) return undefined;
    const all = now.map((one, i) => grown(one, then[i], growing));
    return all.every((one, i) => one !== undefined || now[i] === undefined) ? all : undefined;
  }
  const [here, there] = [Object.entries(now), new Map(Object.entries(then))];
  if (here.length !== there.size) return undefined;
  const inside = isStep(now) ? now : growing.inside;
  const made: Record<string, unknown> = {};
  for (const [key, value] of here) {
    if (!there.has(key)) return undefined;
    if (key === 'span') made[key] = value;
    else if (key === 'values') made[key] = goneOn(value, there.get(key), { ...growing, inside });
    else made[key] = grown(value, there.get(key), { ...growing, inside });
    if (made[key] === undefined) return undefined;
  }
  return made;
}

/** A number, size by size. */
function goneOn(now: unknown, then: unknown, { times, more, found, inside }: Growing): unknown {
  if (!Array.isArray(now) || !Array.isArray(then) || now.length !== then.length) return undefined;
  if (now.every((value, i) => value === then[i])) return now;
  const by = more.n.values;
  const sign = 'special' in more && more.fewer === true ? -1 : 1;
  const as = now.every((value, i) => sign * (value - then[i]) === (by.length === 1 ? by[0] : by[i]));
  if (!as || inside === null || !isMeant(inside, more)) return undefined;
  found.grown += 1;
  return now.map((value, i) => value + times * (value - then[i]));
}

function isStep(node: object): node is Step {
  const { kind } = node as { kind?: unknown };
  return kind === 'work' || kind === 'bracket' || kind === 'repeat';
}

function nameOf(stitch: StitchName): string {
  return stitch.kind === 'special' ? stitch.name : stitch.id;
}

/** A stitch whose number may grow, or a bracket round one group and nothing else that is a stitch. */
function isMeant(step: Step, more: More): boolean {
  if ('special' in more)
    return (
      (step.kind === 'bracket' || step.kind === 'repeat') &&
      step.body.some((one) => one.kind === 'work' && nameOf(one.stitch) === more.special)
    );
  if (!('group' in more))
    return step.kind === 'work' && step.stitch.kind === 'stitch' && step.stitch.id === more.stitch;
  if (step.kind !== 'bracket' && step.kind !== 'repeat') return false;
  const [work, other] = step.body.filter(({ kind }) => kind !== 'chain');
  if (work?.kind !== 'work' || other !== undefined || work.stitch.kind !== 'stitch') return false;
  const { group } = more;
  const size = work.times?.values[0] ?? 1;
  return group === null || (work.stitch.id === group.stitch && size === group.size);
}
