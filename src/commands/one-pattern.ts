/** Paths as typed -> the one pattern they name, its faults told; or the code that the command ends with. */

import type { CompiledFile } from '../site/compile-patterns.ts';
import { compilePatterns, hasErrors } from '../site/compile-patterns.ts';
import { readPatterns } from '../site/read-patterns.ts';
import { tellFaults } from './tell-faults.ts';
import type { ExitCode, Terminal } from './verb.ts';

export type OnePattern =
  | { readonly kind: 'one'; readonly file: CompiledFile; readonly faulty: boolean }
  | { readonly kind: 'not one'; readonly code: ExitCode };

export async function onePattern(
  verb: string,
  paths: readonly string[],
  terminal: Terminal,
): Promise<OnePattern> {
  const files = compilePatterns(await readPatterns(paths));
  const [file, more] = files;
  if (file === undefined || more !== undefined) {
    terminal.tell(`${verb} takes one pattern: name its folder.`);
    return { kind: 'not one', code: 2 };
  }
  tellFaults(files, terminal);
  return { kind: 'one', file, faulty: hasErrors(files) };
}
