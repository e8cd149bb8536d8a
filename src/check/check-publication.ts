/** A pattern with its worked sizes in, what a reader would stumble over out. One rule a file. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Fabric } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { cutRepeats } from './cut-repeats.ts';
import { listedRows } from './listed-rows.ts';
import { missingJoins } from './missing-joins.ts';
import { missingTurns } from './missing-turns.ts';
import { statedGrowth } from './stated-growth.ts';
import { unevenCorners } from './uneven-corners.ts';
import { unusedSpecials } from './unused-specials.ts';
import { unusedYarns } from './unused-yarns.ts';

type Rule = (pattern: Pattern, fabrics: readonly Fabric[]) => readonly Diagnostic[];

const RULES: readonly Rule[] = [
  missingTurns,
  missingJoins,
  unevenCorners,
  cutRepeats,
  listedRows,
  statedGrowth,
  unusedYarns,
  unusedSpecials,
];

export function checkPublication(pattern: Pattern, fabrics: readonly Fabric[]): Diagnostic[] {
  return RULES.flatMap((rule) => rule(pattern, fabrics));
}
