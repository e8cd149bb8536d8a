/** Faults of words in, the same word's fault once with its other places named out. */

import type { Diagnostic, PlaceLabel } from '../diagnostics/diagnostic.ts';

/** A word that is wrong, or not known, is so wherever it stands: putting it right is one thing to do. */
const OF_WORDS: ReadonlySet<string> = new Set([
  'count/not-checked',
  'special/undefined',
  'terms/mixed',
  'word/other-terms',
  'word/unknown',
  'yarn/unlisted',
]);

export function mergeRepeated(diagnostics: readonly Diagnostic[]): Diagnostic[] {
  const merged: Diagnostic[] = [];
  const firstAt = new Map<string, number>();
  const others = new Map<number, PlaceLabel[]>();
  for (const diagnostic of diagnostics) {
    const key = `${diagnostic.code} ${diagnostic.message}`;
    const at = OF_WORDS.has(diagnostic.code) ? firstAt.get(key) : undefined;
    if (at === undefined) {
      firstAt.set(key, merged.length);
      merged.push(diagnostic);
    } else {
      const places = others.get(at) ?? [];
      places.push({ span: diagnostic.span, text: 'and here' });
      others.set(at, places);
    }
  }
  return merged.map((diagnostic, i) => {
    const places = others.get(i);
    return places === undefined ? diagnostic : { ...diagnostic, labels: [...diagnostic.labels, ...places] };
  });
}
