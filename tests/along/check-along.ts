/** An along's text -> every fault of it and of its squares; the patterns it may name lie beside this file. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ballFaults } from '../../src/along/ball-faults.ts';
import { readAlong } from '../../src/along/read-along.ts';
import { type WorkedAlong, workAlong } from '../../src/along/work-along.ts';
import { compilePattern } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import { inFileOrder } from '../../src/diagnostics/order.ts';

const folder = path.join(import.meta.dirname, 'squares');

/** Read once: they are the same for every along. */
const squares = new Map<string, CompiledPattern>(
  readdirSync(folder).map((file) => {
    const name = path.basename(file, '.yaml');
    const text = readFileSync(path.join(folder, file), 'utf8');
    return [name, compilePattern({ file, text }, `chalk-blanket/${name}`)];
  }),
);

export interface CheckedAlong {
  readonly worked: WorkedAlong | null;
  readonly diagnostics: readonly Diagnostic[];
}

export function checkAlong(
  text: string,
  file = 'along.yaml',
  patterns: ReadonlyMap<string, CompiledPattern> = squares,
): CheckedAlong {
  const { along, diagnostics } = readAlong({ file, text }, 'chalk-blanket');
  if (along === null) return { worked: null, diagnostics };
  const worked = workAlong(along, patterns);
  const ofWeeks = worked.weeks.flatMap(({ faults }) => faults);
  return {
    worked,
    diagnostics: inFileOrder([...diagnostics, ...worked.faults, ...ballFaults(worked), ...ofWeeks]),
  };
}

/** One of the squares with something in its text changed. */
export function changedSquare(name: string, from: string, to: string): Map<string, CompiledPattern> {
  const text = readFileSync(path.join(folder, `${name}.yaml`), 'utf8');
  if (!text.includes(from)) throw new Error(`${name} does not say ${from}`);
  const changed = compilePattern(
    { file: `${name}.yaml`, text: text.replace(from, to) },
    `chalk-blanket/${name}`,
  );
  return new Map([...squares, [name, changed]]);
}
