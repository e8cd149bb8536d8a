/**
 * What one maker asks for in, the pattern written out for her: repeats and rows found, edgings fitted to her sides, counts
 * told. Everything after it, in a browser as in the terminal, works it as it works any pattern.
 */

import { withOwnEdging } from '../check/own-edging.ts';
import { planSize } from '../check/plan-size.ts';
import { type SizePlan, type Worked, workSize } from '../fabric/work.ts';
import { edgeSides } from '../measure/edge-sides.ts';
import { asksSize, type OwnSize } from '../pattern/own-size.ts';
import type { Pattern, Size } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { ownPattern, type Remakeable } from './own-pattern.ts';
import { recounted } from './recount.ts';

export function settledPattern(remakeable: Remakeable, own: OwnSize): Pattern {
  const asked = ownPattern(remakeable, own);
  const { pattern: designers, fabric } = remakeable;
  const { plan } = planSize(asked, own.from);
  if (plan === null || fabric === null) return asked;
  const { pattern, worked } = withEdging(asked, plan, remakeable, own);
  return planned(recounted(pattern, worked.fabric, { pattern: designers, fabric }, own.from), plan, own.from);
}

interface Tried {
  readonly pattern: Pattern;
  readonly worked: Worked;
}

/** With the first edging that can be worked; the nearest where none can, for its fault is worth telling. */
function withEdging(asked: Pattern, plan: SizePlan, { pattern, fabric }: Remakeable, own: OwnSize): Tried {
  const attempt = (one: Pattern): Tried => ({ pattern: one, worked: workSize(one, own.from, plan) });
  const plain = attempt(asked);
  // What is more than can be worked is that with any edging.
  const tooLarge = plain.worked.diagnostics.some(({ code }) => /too-(?:large|many)$/.test(code));
  if (fabric === null || !asksSize(own) || tooLarge) return plain;
  const sides = [edgeSides(pattern, fabric), edgeSides(asked, plain.worked.fabric)] as const;
  let nearest: Tried | null = null;
  for (const edged of withOwnEdging(asked, own.from, ...sides)) {
    const tried = attempt(edged);
    nearest ??= tried;
    if (!tried.worked.diagnostics.some(({ severity }) => severity === 'error')) return tried;
  }
  return nearest ?? plain;
}

/** Whoever works it next need not look for them again, and is not led astray by counts of other widths. */
function planned(pattern: Pattern, { repeats, rows }: SizePlan, index: number): Pattern {
  const across = firstMultiple(pattern) === null ? {} : { widthMm: null, repeats };
  const up = rows === null ? {} : { heightMm: null, rows };
  const sizes = pattern.sizes.map((size, i): Size => (i === index ? { ...size, ...across, ...up } : size));
  return { ...pattern, sizes };
}
