/** Two rows of one shape in, the one that comes so many rows after them out: each number goes on as it grew. */

import type { Line } from '../notation/line.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';

type More = NonNullable<RepeatRowsStep['more']>;

/** Null where the two do not differ just as it is said: by so many of that stitch, and in nothing else. */
export function grownLine(last: Line, before: Line, times: number, more: More): Line | null {
  const found = { grown: 0 };
  const steps = grown(last.steps, before.steps, { times, more, found, inside: null });
  return steps === undefined || found.grown === 0
    ? null
    : { ...last, steps: steps as Line['steps'], stated: null };
}

interface Growing {
  readonly times: number;
  readonly more: More;
  readonly found: { grown: number };
  /** The stitch of the step that is looked into. */
  readonly inside: string | null;
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
  const stitch = 'kind' in now && now.kind === 'work' ? stitchOf(now) : growing.inside;
  const made: Record<string, unknown> = {};
  for (const [key, value] of here) {
    if (!there.has(key)) return undefined;
    if (key === 'span') made[key] = value;
    else if (key === 'values') made[key] = goneOn(value, there.get(key), { ...growing, inside: stitch });
    else made[key] = grown(value, there.get(key), { ...growing, inside: stitch });
    if (made[key] === undefined) return undefined;
  }
  return made;
}

/** A number, size by size. */
function goneOn(now: unknown, then: unknown, { times, more, found, inside }: Growing): unknown {
  if (!Array.isArray(now) || !Array.isArray(then) || now.length !== then.length) return undefined;
  if (now.every((value, i) => value === then[i])) return now;
  const by = more.n.values;
  const as = now.every((value, i) => value - then[i] === (by.length === 1 ? by[0] : by[i]));
  if (!as || inside !== more.stitch) return undefined;
  found.grown += 1;
  return now.map((value, i) => value + times * (value - then[i]));
}

function stitchOf(step: object): string | null {
  const { stitch } = step as { stitch?: { id?: string } };
  return stitch?.id ?? null;
}
