/** A pattern's special stitches in, those that come back to themselves and so never come down to stitches out. */

import type { Step } from '../notation/tree.ts';
import type { Special } from '../pattern/pattern.ts';

export function circularSpecials(specials: readonly Special[]): Special[] {
  const uses = new Map(specials.map(({ name, steps }) => [name, namesIn(steps)]));
  return specials.filter(({ name }) => comesBack(name, uses));
}

function comesBack(name: string, uses: ReadonlyMap<string, readonly string[]>): boolean {
  const seen = new Set<string>();
  const open = [...(uses.get(name) ?? [])];
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (next === name) return true;
    if (seen.has(next)) continue;
    seen.add(next);
    open.push(...(uses.get(next) ?? []));
  }
  return false;
}

function namesIn(steps: readonly Step[]): string[] {
  return steps.flatMap((step) => {
    if ('body' in step) return namesIn(step.body);
    return 'stitch' in step && step.stitch?.kind === 'special' ? [step.stitch.name] : [];
  });
}
