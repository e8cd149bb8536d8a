/** A hook against what is usual for the weight of the yarn; toys are worked with finer hooks on purpose (common practice). */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { inRange, type YarnWeight } from '../measure/yarn-weights.ts';
import { printMm } from '../units.ts';
import { type Publication, placeOf } from './publication.ts';
import { rangeWords, statedWeights, weightWords, withNeighbours } from './weight-range.ts';

export function hookOfWeight({ pattern }: Publication): Diagnostic[] {
  const { hookMm, uses, terms } = pattern;
  if (hookMm === null) return [];
  const wideOf = (weight: YarnWeight) => withNeighbours(weight, (other) => other.hookMm);
  const weights = statedWeights(pattern);
  const fits = weights.some((weight) =>
    inRange(hookMm, uses.includes('toy') ? { ...wideOf(weight), min: null } : wideOf(weight)),
  );
  const [first] = weights;
  if (first === undefined || fits) return [];
  const facts = {
    hook: printMm(hookMm),
    weight: weightWords(first, terms),
    usual: rangeWords(first.hookMm, printMm),
    beside: rangeWords(wideOf(first), printMm),
  };
  return [diagnose('hook/unlikely', { file: pattern.source.file, span: placeOf(pattern, 'hook') }, facts)];
}
