/** A pattern's instructions in, the yarns and special stitches they name out. */

import type { Step } from '../notation/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';

/** Stands for a yarn that is left to the maker: `join new color`. */
export const WHICHEVER = '';

export interface UsedNames {
  readonly yarns: ReadonlySet<string>;
  readonly specials: ReadonlySet<string>;
  /** Every line could be read; otherwise what is unused cannot be told. */
  readonly sure: boolean;
}

export function usedNames(pattern: Pattern): UsedNames {
  const yarns = new Set<string>();
  const specials = new Set<string>();
  let sure = true;
  for (const part of pattern.parts) {
    for (const line of part.instructions.lines) {
      if (!line.readable) sure = false;
      collect(line.steps, yarns, specials);
      for (const entry of line.stated?.entries ?? [])
        if (entry.what?.kind === 'special') specials.add(entry.what.name);
    }
  }
  // A special stitch may be made of others, and those of others again, in any order; they are used where it is.
  const opened = new Set<string>();
  for (;;) {
    const next = pattern.specials.find(({ name }) => specials.has(name) && !opened.has(name));
    if (next === undefined) break;
    opened.add(next.name);
    collect(next.steps, yarns, specials);
  }
  return { yarns, specials, sure };
}

/** Special stitches that steps work, in no order of their own. */
export function specialsIn(steps: readonly Step[]): ReadonlySet<string> {
  const specials = new Set<string>();
  collect(steps, new Set(), specials);
  return specials;
}

function collect(steps: readonly Step[], yarns: Set<string>, specials: Set<string>): void {
  for (const step of steps) {
    if (step.kind === 'yarn' || (step.kind === 'fasten off' && step.yarn !== null))
      yarns.add(step.yarn ?? WHICHEVER);
    if ('stitch' in step && step.stitch?.kind === 'special') specials.add(step.stitch.name);
    if ('body' in step) collect(step.body, yarns, specials);
    if (step.kind === 'work' && step.corners !== undefined) collect(step.corners.body, yarns, specials);
  }
}
