/** A pattern file and a size of it -> what a script is made from. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import type { Terms } from '../../src/stitches/stitch-row.ts';
import type { Lesson } from '../../src/teach/lesson.ts';

export const ROOT = path.join(import.meta.dirname, '../..');

export function compiledFile(file: string): CompiledPattern {
  const text = readFileSync(path.join(ROOT, file), 'utf8');
  return compilePattern({ file, text }, path.basename(path.dirname(file)));
}

export function lessonOf(compiled: CompiledPattern, size: number, terms?: Terms): Lesson {
  const { pattern, sizes } = compiled;
  const one = sizes[size];
  if (pattern === null || one === undefined) throw new Error(`${compiled.slug} has no such size`);
  return {
    pattern,
    index: size,
    fabric: one.fabric,
    accounts: one.accounts,
    fabrics: sizes.map(({ fabric }) => fabric),
    terms: terms ?? pattern.terms,
  };
}

/** A pattern of the test's own, in one part. */
export function lessonFrom(work: string, more = '', terms: Terms = 'US'): Lesson {
  const lines = work
    .trim()
    .split('\n')
    .map((line) => `      ${line.trim()}`)
    .join('\n');
  const text = `title: Test\nterms: ${terms}\n${more}parts:\n  - name: Piece\n    work: |\n${lines}\n`;
  const compiled = compilePattern({ file: 'test.yaml', text }, 'test');
  const errors = compiled.diagnostics.filter(({ severity }) => severity === 'error');
  if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join('\n'));
  return lessonOf(compiled, 0);
}
