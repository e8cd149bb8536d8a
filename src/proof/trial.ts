/** A part worked over a foundation of any number of chains, whatever its sizes say. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type OpenEnd, openEnd } from '../fabric/open-end.ts';
import { type Readings, workSize } from '../fabric/work.ts';
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
  /** Nothing was read in a way that only this width tells, and rows worked "to height" come round again. */
  readonly sure: boolean;
  /** Stitches made and steps gone through. */
  readonly effort: number;
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
  /** Rows the size has in all, for what goes on to height; null when nothing says. */
  readonly rows: number | null;
  /** How turning chains are read, as settled where a stated count told. */
  readonly readings: Readings;
}

/**
 * Works one part alone over so many chains. Stated counts are for the pattern's own sizes, so none is checked. What goes
 * on "to height" is worked for as many rows as show twice over all the rows it repeats, or fewer where the size has
 * fewer.
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
  const { sizeIndex, readings } = setting;
  const open = openEnd(part.instructions.lines, sizeIndex);
  const twice = open === null ? null : enoughRows(open);
  const rows = twice === null ? null : Math.min(twice, setting.rows ?? twice);
  const worked = workSize(alone, sizeIndex, { repeats: 1, rows, readings });
  const { fabric, diagnostics, whole, wavered, effort } = worked;
  const fault = diagnostics.find(({ severity }) => severity === 'error') ?? null;
  const flat = fabric.parts[0]?.shape === 'flat';
  const words = fault === null && whole ? rowWords(fabric, alphabet) : [];
  const goesOn = open === null || rows === setting.rows || comesRound(words, open.cycle);
  return { chains, fault, rows: words, flat, sure: !wavered && goesOn, effort };
}

/** Whether the last rows are worked just as those one round of the repeated rows before. */
function comesRound(rows: readonly RowWord[], cycle: number): boolean {
  return rows.slice(-cycle).every(({ stitches }, i) => {
    const before = rows[rows.length - 2 * cycle + i]?.stitches;
    return before?.length === stitches.length && before.every((sort, at) => sort === stitches[at]);
  });
}

/** The part over so many foundation chains, its counts left unstated. */
export function overChains(part: Part, foundation: Foundation, chains: number): Part {
  const { span } = foundation.chain;
  const step: Step = { ...foundation.chain, n: { values: [chains], span } };
  const lines = part.instructions.lines.map((line, i) => ({
    ...line,
    stated: null,
    steps: i === foundation.line ? line.steps.with(foundation.step, step) : line.steps,
  }));
  return { ...part, instructions: { lines } };
}

function enoughRows(open: OpenEnd): number {
  const least = open.from + 2 * open.cycle - 1;
  for (let rows = least; rows < least + open.cycle; rows += 1) if (open.allows(rows)) return rows;
  return least;
}
