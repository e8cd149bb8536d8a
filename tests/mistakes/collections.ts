/** Every whole pattern there is, in two lots: those written for this test alone, and the demos and fixtures. */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import type { Line } from '../../src/notation/line.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';

export const LOTS = ['held-out', 'others'] as const;
export type Lot = (typeof LOTS)[number];

export interface Original {
  readonly name: string;
  readonly lot: Lot;
  readonly text: string;
  readonly compiled: CompiledPattern;
  readonly pattern: Pattern;
  readonly lines: readonly Line[];
}

const HERE = import.meta.dirname;
export const HELD_OUT = join(HERE, 'held-out');
const FOLDERS: readonly (readonly [Lot, string])[] = [
  ['held-out', HELD_OUT],
  ['others', join(HERE, '../../patterns')],
  ['others', join(HERE, '../patterns')],
];

export function readOriginals(): Original[] {
  return FOLDERS.flatMap(([lot, folder]) =>
    readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map(({ name }) => name)
      .sort()
      .map((name) => readOriginal(lot, folder, name)),
  );
}

function readOriginal(lot: Lot, folder: string, name: string): Original {
  const text = readFileSync(join(folder, name, 'pattern.yaml'), 'utf8');
  const compiled = compileText(text);
  const { pattern } = compiled;
  if (pattern === null) throw new Error(`${name} could not be read`);
  return {
    name,
    lot,
    text,
    compiled,
    pattern,
    lines: pattern.parts.flatMap(({ instructions }) => instructions.lines),
  };
}

/** The same file name for all, so that two compilations can be compared. */
export function compileText(text: string): CompiledPattern {
  return compilePattern({ file: 'pattern.yaml', text }, 'pattern');
}
