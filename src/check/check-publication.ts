/** A pattern with its worked sizes in, what a reader would stumble over out. One rule a file. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Fabric } from '../fabric/fabric.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { statedGrowth } from './stated-growth.ts';
import { unusedSpecials } from './unused-specials.ts';
import { unusedYarns } from './unused-yarns.ts';

type Rule = (pattern: Pattern, fabrics: readonly Fabric[]) => readonly Diagnostic[];

const RULES: readonly Rule[] = [unusedYarns, unusedSpecials, statedGrowth];

export function checkPublication(pattern: Pattern, fabrics: readonly Fabric[]): Diagnostic[] {
  return RULES.flatMap((rule) => rule(pattern, fabrics));
}
