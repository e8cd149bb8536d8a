/** Diagnostics in, the same in the order of their files and places out, each once. */

import type { Diagnostic } from './diagnostic.ts';

export function inFileOrder(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const seen = new Set<string>();
  return diagnostics
    .filter((diagnostic) => {
      const { file, span, code, message, sizes } = diagnostic;
      const key = JSON.stringify([file, span.start, span.end, code, message, sizes]);
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    })
    .sort((a, b) => compare(a.file, b.file) || a.span.start - b.span.start || a.span.end - b.span.end);
}

/** By character codes, so that the order is the same on every machine. */
function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
