/** A part worked over a foundation of any number of chains, whatever its sizes say. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { openEnd } from '../fabric/plan-rows.ts';
import { workSize } from '../fabric/work.ts';
import type { ChainStep, Step } from '../notation/tree.ts';
import type { Part, Pattern } from '../pattern/pattern.ts';
import type { Alphabet, RowWord } from './row-word.ts';
import { rowWords } from './row-word.ts';

export interface Trial {
  /** Chains of the foundation. */
  readonly chains: number;
  /** The first thing that does not come out; null when all of it does. */
  readonly fault: Diagnostic | null;
  /** Empty when there is a fault. */
  readonly rows: readonly RowWord[];
  /** Rows go to and fro, not round. */
  readonly flat: boolean;
}

export interface Foundation {
  readonly line: number;
  readonly step: number;
  readonly chain: ChainStep;
}

/** The chain a part begins with, when it is not joined into a ring; null when it begins otherwise. */
export function foundationOf(part: Part): Foundation | null {
  if (part.onto !== null) return null;
  for (const [line, { steps }] of part.instructions.lines.entries()) {
    const step = steps.findIndex(({ kind }) => kind !== 'yarn' && kind !== 'note');
    const chain = steps[step];
    if (chain === undefined) continue;
    const next = steps[step + 1];
    return chain.kind === 'chain' && next?.kind !== 'join' && next?.kind !== 'ring'
      ? { line, step, chain }
      : null;
  }
  return null;
}

export interface TrialSetting {
  readonly sizeIndex: number;
  /** How unstated turning chains are read, as settled where a stated count told. */
  readonly settled: ReadonlyMap<number, boolean>;
}

/**
 * Works one part alone over so many chains. Stated counts are for the pattern's own sizes, so none is checked. What goes
 * on "to height" is worked for as many rows as show twice over all the rows it repeats.
 */
export function workTrial(
  pattern: Pattern,
  part: Part,
  foundation: Foundation,
  chains: number,
  setting: TrialSetting,
  alphabet: Alphabet,
): Trial {
  const alone = { ...pattern, parts: [overChains(part, foundation, chains)] };
  const { sizeIndex, settled } = setting;
  const rows = enoughRows(part, sizeIndex);
  const { fabric, diagnostics, whole } = workSize(alone, sizeIndex, { repeats: 1, rows, settled });
  const fault = diagnostics.find(({ severity }) => severity === 'error') ?? null;
  const flat = fabric.parts[0]?.shape === 'flat';
  return { chains, fault, rows: fault === null && whole ? rowWords(fabric, alphabet) : [], flat };
}

function overChains(part: Part, foundation: Foundation, chains: number): Part {
  const { span } = foundation.chain;
  const step: Step = { ...foundation.chain, n: { values: [chains], span } };
  const lines = part.instructions.lines.map((line, i) => ({
    ...line,
    stated: null,
    steps: i === foundation.line ? line.steps.with(foundation.step, step) : line.steps,
  }));
  return { ...part, instructions: { lines } };
}

function enoughRows(part: Part, sizeIndex: number): number | null {
  const open = openEnd(part.instructions.lines, sizeIndex);
  if (open === null) return null;
  const least = open.from + 2 * open.cycle - 1;
  for (let rows = least; rows < least + open.cycle; rows += 1) if (open.allows(rows)) return rows;
  return least;
}
