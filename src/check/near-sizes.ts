/**
 * A pattern and a measure in, the sizes near it out: repeats across, rows up, or rounds, each with what it measures and
 * how far that is off. A table to choose from, where `plan-size.ts` chooses the nearest.
 */

import { openEnd } from '../fabric/open-end.ts';
import { workSize } from '../fabric/work.ts';
import { measure, sizesByRow } from '../measure/measure.ts';
import type { Pattern, Size } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { planSize } from './plan-size.ts';

export interface NearSize {
  /** Repeats, rows or rounds. */
  readonly count: number;
  readonly mm: number;
  /** Larger than wanted where it is more than 0. */
  readonly offMm: number;
  readonly nearest: boolean;
}

export interface NearSizes {
  /** By pattern repeats across; null where the width is fixed or none is wanted. */
  readonly repeats: readonly NearSize[] | null;
  /** By rows, where the pattern goes on to a height. */
  readonly rows: readonly NearSize[] | null;
  /** By rounds after which a flat round piece could be stopped. */
  readonly rounds: readonly NearSize[] | null;
}

/** How many are shown on either side of the nearest. */
const BESIDE = 2;
/** How far from the nearest others are looked for that the pattern's rules allow. */
const LOOKED_AT = 60;

export function nearSizes(
  pattern: Pattern,
  index: number,
  wanted: { readonly widthMm: number | null; readonly heightMm: number | null },
): NearSizes {
  const none = { repeats: null, rows: null, rounds: null };
  const size = pattern.sizes[index];
  if (size === undefined || pattern.gauge === null) return none;
  const asked: Size = {
    ...size,
    ...(wanted.widthMm === null ? {} : { widthMm: wanted.widthMm, repeats: null }),
    ...(wanted.heightMm === null ? {} : { heightMm: wanted.heightMm, rows: null }),
  };
  const trial: Pattern = { ...pattern, sizes: pattern.sizes.map((one, i) => (i === index ? asked : one)) };
  const { plan } = planSize(trial, index);
  if (plan === null) return none;
  const measured = (repeats: number, rows: number | null): ReturnType<typeof measure> | null => {
    const { fabric, whole } = workSize(trial, index, { repeats, rows });
    return whole ? measure(trial, fabric) : null;
  };
  const open =
    pattern.parts.map((part) => openEnd(part.instructions.lines, index)).find((end) => end !== null) ?? null;
  const { widthMm, heightMm } = wanted;
  return {
    repeats:
      widthMm === null || firstMultiple(pattern) === null
        ? null
        : around(plan.repeats, widthMm, (n) => measured(n, plan.rows)?.widthMm ?? null),
    rows:
      heightMm === null || open === null || plan.rows === null
        ? null
        : around(plan.rows, heightMm, (n) =>
            open.allows(n) ? (measured(plan.repeats, n)?.heightMm ?? null) : null,
          ),
    rounds: widthMm === null ? null : byRounds(trial, index, plan, widthMm),
  };
}

function around(
  best: number,
  targetMm: number,
  measureAt: (count: number) => number | null,
): readonly NearSize[] {
  const found: { readonly count: number; readonly mm: number }[] = [];
  const look = (step: 1 | -1, from: number): void => {
    let more = 0;
    for (let n = from; n >= 1 && Math.abs(n - best) <= LOOKED_AT && more <= BESIDE; n += step) {
      const mm = measureAt(n);
      if (mm === null) continue;
      found.push({ count: n, mm });
      more += 1;
    }
  };
  look(1, best);
  look(-1, best - 1);
  return withNearest(found, targetMm);
}

/** After which rounds the piece would be how wide, as long as it lies flat and grows. */
function byRounds(
  pattern: Pattern,
  index: number,
  plan: { readonly repeats: number; readonly rows: number | null },
  targetMm: number,
): readonly NearSize[] | null {
  const { fabric } = workSize(pattern, index, plan);
  const [root, ...others] = fabric.parts.filter(({ onto }) => onto === null);
  if (root === undefined || others.length > 0 || root.shape !== 'round') return null;
  const found = sizesByRow(pattern, fabric).flatMap(({ row, widthMm }) => {
    const { closing = 'flat', number = null } = fabric.rows[row] ?? {};
    return closing === 'flat' || number === null || widthMm === null ? [] : [{ count: number, mm: widthMm }];
  });
  const growing = found.filter(({ mm }, i) => mm > (found[i - 1]?.mm ?? 0));
  // Of what stands up as a wall, more rounds make it no wider.
  if (growing.length < found.length || found.length === 0) return null;
  return withNearest(found, targetMm);
}

/** In order, the nearest of them marked; of two as near the smaller. No more than a few on either side of it. */
export function withNearest(
  found: readonly { readonly count: number; readonly mm: number }[],
  targetMm: number,
): readonly NearSize[] {
  const inOrder = found.toSorted((a, b) => a.count - b.count);
  let at = -1;
  for (const [i, { mm }] of inOrder.entries())
    if (at < 0 || Math.abs(mm - targetMm) < Math.abs((inOrder[at]?.mm ?? 0) - targetMm)) at = i;
  return inOrder
    .map(({ count, mm }, i) => ({ count, mm, offMm: mm - targetMm, nearest: i === at }))
    .filter((_, i) => Math.abs(i - at) <= BESIDE);
}
