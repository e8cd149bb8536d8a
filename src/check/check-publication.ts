/** A pattern with its worked sizes in, what a technical editor would say of it out. One rule a file. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { ballsPerSize } from './balls-per-size.ts';
import { chainHeights } from './chain-heights.ts';
import { chainsTwoWays } from './chains-two-ways.ts';
import { cutRepeats } from './cut-repeats.ts';
import { doubledChains } from './doubled-chains.ts';
import { edgingRatio } from './edging-ratio.ts';
import { facesFollow } from './faces-follow.ts';
import { fallingNumbers } from './falling-numbers.ts';
import { fallingSizes } from './falling-sizes.ts';
import { filmTimes } from './film-times.ts';
import { finishedSizes } from './finished-sizes.ts';
import { gaugeMissing } from './gauge-missing.ts';
import { gaugeOfWeight } from './gauge-of-weight.ts';
import { gaugeRepeats } from './gauge-repeats.ts';
import { hookLetter } from './hook-letter.ts';
import { hookOfWeight } from './hook-of-weight.ts';
import { lateChanges } from './late-changes.ts';
import { listedRows } from './listed-rows.ts';
import { missingChains } from './missing-chains.ts';
import { missingJoins } from './missing-joins.ts';
import { missingTurns } from './missing-turns.ts';
import { mixedTerms } from './mixed-terms.ts';
import { neverTurns } from './never-turns.ts';
import { openRings } from './open-rings.ts';
import { photographs } from './photographs.ts';
import type { Publication } from './publication.ts';
import { statedGrowth } from './stated-growth.ts';
import { tooLittleYarn } from './too-little-yarn.ts';
import { unevenCorners } from './uneven-corners.ts';
import { unusedSpecials } from './unused-specials.ts';
import { unusedYarns } from './unused-yarns.ts';
import { yarnUsed } from './yarn-used.ts';

type Rule = (publication: Publication) => readonly Diagnostic[];

const RULES: readonly Rule[] = [
  missingTurns,
  neverTurns,
  facesFollow,
  missingJoins,
  openRings,
  doubledChains,
  chainHeights,
  missingChains,
  cutRepeats,
  listedRows,
  unusedYarns,
  unusedSpecials,
  mixedTerms,
  chainsTwoWays,
  hookLetter,
  ballsPerSize,
  yarnUsed,
  gaugeRepeats,
  lateChanges,
  filmTimes,
  photographs,
];

/** Rules that weigh what was measured, which holds only where every row is worked as meant. */
const RULES_OF_SOUND_WORK: readonly Rule[] = [
  edgingRatio,
  unevenCorners,
  statedGrowth,
  gaugeMissing,
  gaugeOfWeight,
  hookOfWeight,
  fallingSizes,
  fallingNumbers,
  finishedSizes,
  tooLittleYarn,
];

export function checkPublication(publication: Publication): Diagnostic[] {
  const rules = publication.sound ? [...RULES, ...RULES_OF_SOUND_WORK] : RULES;
  return rules.flatMap((rule) => rule(publication));
}
