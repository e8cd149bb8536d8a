/**
 * A gauge against what is usual for the weight of the yarn.
 *
 * The Council counts single crochet (lace in double crochet). Other plain stitches are about as wide, within a tenth
 * (from memory), so they are held against the same figures; a pattern or a textured stitch is not. Toys are worked
 * tighter on purpose (common practice), so that the filling does not show.
 */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { inRange } from '../measure/yarn-weights.ts';
import { findStitch, termsOf } from '../stitches/table.ts';
import { type Publication, placeOf } from './publication.ts';
import { countedIn, rangeWords, statedWeights, weightWords, withNeighbours } from './weight-range.ts';

export function gaugeOfWeight({ pattern }: Publication): Diagnostic[] {
  const { gauge, terms, uses } = pattern;
  const stitch = gauge?.of == null ? null : findStitch(gauge.of, terms);
  if (gauge === null || stitch === null || stitch.family !== 'basic' || stitch.id === 'sl-st') return [];
  const weights = statedWeights(pattern);
  const per10Cm = (gauge.stitches * 100) / gauge.overMm;
  const fits = weights.some((weight) => {
    const wide = withNeighbours(
      weight,
      ({ gaugePer10Cm }) => gaugePer10Cm,
      ({ gaugeStitch }) => gaugeStitch === weight.gaugeStitch,
    );
    return inRange(per10Cm, uses.includes('toy') ? { ...wide, max: null } : wide);
  });
  const [first] = weights;
  if (first === undefined || fits) return [];
  const beside = withNeighbours(
    first,
    ({ gaugePer10Cm }) => gaugePer10Cm,
    ({ gaugeStitch }) => gaugeStitch === first.gaugeStitch,
  );
  const facts = {
    stitches: `${Math.round(per10Cm * 2) / 2} sts`,
    of: `of ${termsOf(stitch, terms).name}`,
    weight: weightWords(first, terms),
    usual: `${rangeWords(first.gaugePer10Cm, String)} in ${countedIn(first, terms)}`,
    beside: rangeWords(beside, String),
  };
  return [
    diagnose(
      'gauge/unlikely',
      { file: pattern.source.file, span: placeOf(pattern, 'gauge.stitches', 'gauge') },
      facts,
    ),
  ];
}
