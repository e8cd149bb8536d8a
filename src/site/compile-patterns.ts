/** Pattern files as read -> every pattern compiled; a file that could not be read is a pattern with one fault. */

import { compilePattern, compileText } from '../compile.ts';
import type { CompiledPattern } from '../compiled.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { byFigures } from '../measure/yarn-scale.ts';
import { isPlainText, type ReadPattern } from './read-patterns.ts';

export interface CompiledFile {
  readonly file: string;
  /** Empty where the file could not be read. */
  readonly text: string;
  readonly compiled: CompiledPattern;
}

/** `begin` is told of each before it is worked. */
export function compilePatterns(
  read: readonly ReadPattern[],
  begin: (entry: ReadPattern, i: number) => void = () => undefined,
): CompiledFile[] {
  return read.map((entry, i) => {
    begin(entry, i);
    return entry.kind === 'read'
      ? {
          file: entry.source.file,
          text: entry.source.text,
          compiled: isPlainText(entry.source.file)
            ? compileText(entry.source, entry.slug)
            : compilePattern(entry.source, entry.slug, entry.looks),
        }
      : { file: entry.file, text: '', compiled: unreadPattern(entry.slug, entry.fault) };
  });
}

/** A pattern's file, or an along's: what there is to tell of it. */
export interface ToldFile {
  readonly file: string;
  /** Empty where the file could not be read. */
  readonly text: string;
  readonly compiled: { readonly diagnostics: readonly Diagnostic[] };
}

export function hasErrors(files: readonly ToldFile[]): boolean {
  return files.some(({ compiled }) => compiled.diagnostics.some(({ severity }) => severity === 'error'));
}

function unreadPattern(slug: string, fault: Diagnostic): CompiledPattern {
  return {
    slug,
    pattern: null,
    sizes: [],
    allSizes: null,
    multiples: [],
    growths: [],
    scaleOf: byFigures,
    photographs: [],
    diagnostics: [fault],
  };
}
