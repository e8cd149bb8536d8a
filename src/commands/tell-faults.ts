/** Compiled patterns -> their faults as the terminal shows them, with a line of totals, or as other programs read them. */

import { type JsonReport, renderDiagnostics, toJson } from '../diagnostics/render.ts';
import type { ToldFile } from '../site/compile-patterns.ts';

export function faultText(files: readonly ToldFile[], colour: boolean): string {
  return renderDiagnostics(faultsOf(files), textsOf(files), { colour }).trimEnd();
}

export function faultJson(files: readonly ToldFile[]): JsonReport {
  return toJson(faultsOf(files), textsOf(files));
}

/** Says nothing where there is nothing to say. */
export function tellFaults(
  files: readonly ToldFile[],
  terminal: { readonly tell: (line: string) => void; readonly colour: boolean },
): void {
  if (faultsOf(files).length > 0) terminal.tell(faultText(files, terminal.colour));
}

function faultsOf(files: readonly ToldFile[]) {
  return files.flatMap(({ compiled }) => compiled.diagnostics);
}

/** A file that could not be read has no text to show a line of. */
function textsOf(files: readonly ToldFile[]): ReadonlyMap<string, string> {
  return new Map(files.flatMap(({ file, text }) => (text === '' ? [] : [[file, text] as const])));
}
