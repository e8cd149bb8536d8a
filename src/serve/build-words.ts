/** What the server and the process that builds its site say to one another. */

import type { BuildResult } from '../site/build-site.ts';
import type { ToldFile } from '../site/compile-patterns.ts';

export interface BuildOrder {
  readonly patterns: string;
  readonly alongs: string;
  readonly out: string;
}

export type BuildReport =
  | { readonly kind: 'progress'; readonly words: string }
  | { readonly kind: 'done'; readonly result: BuildResult }
  /** A fault of ours, in its own words. */
  | { readonly kind: 'failed'; readonly why: string };

/** Only what is told of patterns goes from one process to the other: a worked pattern is large. */
export function tellable(result: BuildResult): BuildResult {
  switch (result.kind) {
    case 'built':
      return { ...result, files: result.files.map(toldFile), late: result.late.map(toldFile) };
    case 'faults':
      return { ...result, files: result.files.map(toldFile) };
    case 'refused':
    case 'settings':
    case 'stopped':
      return result;
  }
}

function toldFile({ file, text, compiled: { diagnostics } }: ToldFile): ToldFile {
  return { file, text, compiled: { diagnostics } };
}
