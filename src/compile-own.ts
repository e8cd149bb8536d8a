/** A pattern and what one maker asks of it in, the pattern in a size of her own out, checked as any other. */

import { compileRead } from './compile-read.ts';
import type { CompiledPattern } from './compiled.ts';
import type { Remakeable } from './own/own-pattern.ts';
import { settledPattern } from './own/settled-pattern.ts';
import type { OwnSize } from './pattern/own-size.ts';

/** The same pattern in one size of a maker's own. Yarn goes by what is known of the designer's, at the maker's gauge. */
export function compileOwnSize(compiled: CompiledPattern, own: OwnSize): CompiledPattern {
  const remakeable = remakeableFrom(compiled, own.from);
  if (remakeable === null) return compiled;
  const { slug, scaleOf, photographs } = compiled;
  return compileRead({ pattern: settledPattern(remakeable, own), diagnostics: [] }, slug, {
    only: own.from,
    scaleOf,
    looks: new Map(photographs.map((seen) => [seen.file, { kind: 'picture', ...seen }])),
  });
}

/** What is needed to make it over from one of its sizes; null where the file is no pattern. */
export function remakeableFrom(compiled: CompiledPattern, from: number): Remakeable | null {
  const { pattern } = compiled;
  if (pattern === null) return null;
  const name = pattern.sizes[from]?.name;
  const fabric = compiled.sizes.find(({ size }) => size.name === name)?.fabric ?? null;
  return {
    pattern,
    fabric,
    get multiples() {
      return compiled.multiples;
    },
  };
}
