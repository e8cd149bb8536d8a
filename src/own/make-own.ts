/**
 * What a browser works when a maker asks for a size of her own: a pattern and her wishes in, the work, its measures and
 * the sizes beside it out. The checks of the publication are left to the builder of the site; those of the work are not.
 */

import type { NearSizes } from '../check/near-sizes.ts';
import { planSize } from '../check/plan-size.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type SizePlan, type Worked, workSize } from '../fabric/work.ts';
import { measure } from '../measure/measure.ts';
import type { Measures, ScaleOf } from '../measure/measures.ts';
import type { OwnSize } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { cannotBe } from './cannot-be.ts';
import { nearOwn, type Remakeable } from './own-pattern.ts';
import { settledPattern } from './settled-pattern.ts';

export interface OwnMade {
  readonly pattern: Pattern;
  /** Place of her size among those of the pattern. */
  readonly index: number;
  readonly plan: SizePlan;
  readonly worked: Worked;
  readonly measures: Measures;
}

export type OwnOutcome =
  | { readonly kind: 'made'; readonly made: OwnMade; readonly near: NearSizes }
  /** The pattern's own rules do not leave it open; of rounds the sizes beside it can still be told. */
  | { readonly kind: 'cannot'; readonly why: string; readonly near: NearSizes }
  | { readonly kind: 'faults'; readonly faults: readonly Diagnostic[] };

export function makeOwn(remakeable: Remakeable, own: OwnSize, scaleOf: ScaleOf): OwnOutcome {
  const near = nearOwn(remakeable, own);
  const why = cannotBe(own, remakeable);
  if (why !== null) return { kind: 'cannot', why, near };
  const pattern = settledPattern(remakeable, own);
  const { plan, faults } = planSize(pattern, own.from);
  if (plan === null) return { kind: 'faults', faults };
  const worked = workSize(pattern, own.from, plan);
  const wrong = worked.diagnostics.filter(({ severity }) => severity === 'error');
  if (wrong.length > 0) return { kind: 'faults', faults: wrong };
  const measures = measure(pattern, worked.fabric, scaleOf);
  return { kind: 'made', made: { pattern, index: own.from, plan, worked, measures }, near };
}
