/** Instructions of one flat part in, what is proved of its foundation out. */

import { planSize } from '../../src/check/plan-size.ts';
import { workSize } from '../../src/fabric/work.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import type { PartMultiple } from '../../src/proof/part-multiple.ts';
import { partMultiples } from '../../src/proof/part-multiple.ts';
import type { Piece } from '../fabric/work-text.ts';
import { patternText } from '../fabric/work-text.ts';

export function patternOf(piece: Piece): Pattern {
  const { pattern, diagnostics } = readPattern({ file: 'test', text: patternText(piece) }, 'test');
  const [fault] = diagnostics;
  if (pattern === null || fault !== undefined) throw new Error(fault?.message ?? 'no pattern');
  return pattern;
}

/** What is found of a pattern's first part. */
export function multipleOf(pattern: Pattern): PartMultiple {
  const { plan } = planSize(pattern, 0);
  if (plan === null) throw new Error('no size');
  const [first] = partMultiples(
    pattern,
    [{ index: 0, plan, readings: workSize(pattern, 0, plan).readings }],
    true,
  );
  if (first === undefined) throw new Error('nothing is found');
  return first;
}
