/** Rows that could not be checked because of one before them in, told once for each such row out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Span } from '../source/span.ts';

export interface HungRow {
  readonly label: string;
  readonly span: Span;
  /** The row they hang on, as the pattern writes it; nothing for words outside of rows. */
  readonly cause: string;
}

export function hangFaults(
  hung: readonly HungRow[],
  { file, size }: { readonly file: string; readonly size: string },
): Diagnostic[] {
  const runs: HungRow[][] = [];
  // Words outside of rows have no name to be told by.
  for (const row of hung.filter(({ label }) => label !== '')) {
    const run = runs[runs.length - 1];
    if (run !== undefined && run[0]?.cause === row.cause) run.push(row);
    else runs.push([row]);
  }
  return runs.flatMap((run) => {
    const [first] = run;
    const last = run[run.length - 1];
    if (first === undefined || last === undefined) return [];
    const rows = new Set(run.map(({ label }) => label)).size;
    const facts = { first: first.label, last: last.label, rows, cause: first.cause };
    return [diagnose('row/hangs-on', { file, span: first.span, sizes: [size] }, facts)];
  });
}
