/** `ch a multiple of 6 plus 2` in a line in, the chains each size really makes in their place out, from the fabrics. */

import { type Fabric, stitchId } from '../fabric/fabric.ts';
import type { Num } from '../notation/num.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { ChainStep, Step } from '../notation/tree.ts';

/** One fabric with the rows the line made in it, and the size's place in the list. */
export interface LineWork {
  readonly fabric: Fabric;
  readonly rows: readonly number[];
  readonly size: number;
}

/** The steps with the multiple made a number, or as they were when the fabrics do not tell. */
export function withChainNumbers(
  steps: readonly Step[],
  works: readonly LineWork[],
  sizes: number,
): readonly Step[] {
  const multiples = steps.filter((step) => step.kind === 'chain' && 'of' in step.n);
  if (multiples.length !== 1) return steps;
  return steps.map((step) => {
    if (step.kind !== 'chain' || !('of' in step.n)) return step;
    const n = numberOf(step, steps, works, sizes);
    return n === null ? step : { ...step, n };
  });
}

function numberOf(
  step: ChainStep,
  steps: readonly Step[],
  works: readonly LineWork[],
  sizes: number,
): Num | null {
  if (!('of' in step.n)) return null;
  const { of, plus, span } = step.n;
  const values: (number | null)[] = Array.from({ length: sizes }, () => null);
  for (const { fabric, rows, size } of works) {
    const made = chainsIn(fabric, rows) - otherChains(steps, size);
    if (made < plus || (made - plus) % of !== 0) return null;
    values[size] = made;
  }
  return works.length === 0 ? null : { values, span };
}

function chainsIn(fabric: Fabric, rows: readonly number[]): number {
  let chains = 0;
  for (const row of rows) {
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    for (let i = first; i < end; i += 1) if (stitchId(fabric, i) === 'ch') chains += 1;
  }
  return chains;
}

/** Chains that the line says beside the multiple, such as the `ch 1` of a first row on the same line. */
function otherChains(steps: readonly Step[], size: number): number {
  return steps.reduce(
    (sum, step) =>
      sum + (step.kind === 'chain' && 'values' in step.n ? (numberForSize(step.n, size) ?? 0) : 0),
    0,
  );
}
