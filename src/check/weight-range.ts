/**
 * A yarn weight in, what is usual with it and with the weights beside it out.
 *
 * The ranges are the Craft Yarn Council's. Hands differ by more than one weight's range (the same hook and yarn give
 * different gauges), so only what lies outside the neighbours' ranges too is called unusual: our own choice.
 */

import { type Range, YARN_WEIGHTS, type YarnWeight, yarnWeight } from '../measure/yarn-weights.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById } from '../stitches/table.ts';

/** The range of a weight and of those one lighter and one heavier, as one. */
export function withNeighbours(
  weight: YarnWeight,
  rangeOf: (weight: YarnWeight) => Range,
  alike: (weight: YarnWeight) => boolean = () => true,
): Range {
  const ranges = YARN_WEIGHTS.filter(
    (other) => Math.abs(other.number - weight.number) <= 1 && alike(other),
  ).map(rangeOf);
  const open = (ends: readonly (number | null)[], pick: (...ends: number[]) => number): number | null =>
    ends.some((end) => end === null) ? null : pick(...ends.filter((end) => end !== null));
  return {
    min: open(
      ranges.map(({ min }) => min),
      Math.min,
    ),
    max: open(
      ranges.map(({ max }) => max),
      Math.max,
    ),
  };
}

/** The weights that the file itself gives, each once; none where strands are held together. */
export function statedWeights({ yarns, places, notes }: Pattern): readonly YarnWeight[] {
  if (notes.some((note) => /\bheld (?:double|together)\b|\bstrands?\b/i.test(note))) return [];
  const numbers = yarns
    .filter(({ letter }) => places.has(`yarn.${letter}.weight`))
    .map(({ weight }) => weight);
  return [...new Set(numbers)].map(yarnWeight).filter((weight) => weight !== null);
}

/** `light (3)`, in UK terms `DK (3)`. */
export function weightWords(weight: YarnWeight, terms: Terms): string {
  return `${terms === 'US' ? weight.name.toLowerCase() : weight.ukName} (${weight.number})`;
}

/** `12 to 17`, `5 and fewer`, `16 and more`. */
export function rangeWords({ min, max }: Range, print: (n: number) => string): string {
  if (min === null) return max === null ? 'any' : `${print(max)} and less`;
  return max === null ? `${print(min)} and more` : `${print(min)} to ${print(max)}`;
}

/** The stitch a weight's gauge is counted in, as the pattern's terms name it. */
export function countedIn(weight: YarnWeight, terms: Terms): string {
  const row = stitchById(weight.gaugeStitch);
  return terms === 'US' ? row.us.name : row.uk.name;
}
