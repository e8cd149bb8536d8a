/** Faults found size by size in, each once with all the sizes it touches out. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';

/**
 * The words are those of the first size it was found in; a fault that names no size holds for all. Where there is
 * only one size its name says nothing.
 */
export function mergeSizes(diagnostics: readonly Diagnostic[], sizes: number): Diagnostic[] {
  const merged = new Map<string, Diagnostic>();
  for (const diagnostic of diagnostics) {
    const key = `${diagnostic.code} ${diagnostic.span.start} ${diagnostic.span.end}`;
    const before = merged.get(key);
    if (before === undefined) merged.set(key, diagnostic);
    else merged.set(key, { ...before, sizes: [...new Set([...before.sizes, ...diagnostic.sizes])] });
  }
  const all = [...merged.values()];
  return sizes > 1 ? all : all.map((diagnostic) => ({ ...diagnostic, sizes: [] }));
}
