/** What a pattern is for and what its yarns are made of in, the cautions to print with it out. */

import table from '../../shared/cautions.json' with { type: 'json' };
import { USES, type Use } from './pattern.ts';

/** The cautions of one use, or of the yarn, or of all crochet. */
export interface CautionGroup {
  /** The use, `acrylic`, or `general`. */
  readonly of: Use | 'acrylic' | 'general';
  readonly texts: readonly string[];
  /** Whose rules come before these. */
  readonly localRules: string;
}

/** Groups in the order of USES, then acrylic yarn, then what holds for every pattern. */
export function cautionGroups(uses: readonly Use[], fibres: readonly string[]): readonly CautionGroup[] {
  const wanted: CautionGroup['of'][] = USES.filter((use) => uses.includes(use));
  if (fibres.some((fibre) => /acrylic/i.test(fibre))) wanted.push('acrylic');
  wanted.push('general');
  return wanted.map((of) => ({
    of,
    texts: table.cautions[of].texts.map(({ text }) => text),
    localRules: table.cautions[of].localRules,
  }));
}

/** The same as one list of sentences, each group's closed by whose rules come first. */
export function cautionsFor(uses: readonly Use[], fibres: readonly string[]): readonly string[] {
  return cautionGroups(uses, fibres).flatMap(({ texts, localRules }) => [...texts, localRules]);
}
