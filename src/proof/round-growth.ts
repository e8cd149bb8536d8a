/** A pattern in, by how many stitches each of its repeated rounds grows out, for as many rounds as anyone works. */

import { workSize } from '../fabric/work.ts';
import type { Num } from '../notation/num.ts';
import type { RepeatRowsStep, Step } from '../notation/tree.ts';
import type { Part, Pattern } from '../pattern/pattern.ts';
import { rowGrowsEvenly } from './inserted.ts';
import type { PlannedSize } from './part-multiple.ts';
import type { RowWord } from './row-word.ts';
import { rowWords } from './row-word.ts';

export interface RoundGrowth {
  readonly part: string;
  /** As published, the first row or round it works: `Rnd 4`. */
  readonly from: string;
  /** After how many rounds the same ones come again. */
  readonly cycle: number;
  /** Stitches gained by each whole cycle. */
  readonly adds: number;
}

/** Cycles worked: the first may still differ from all that follow. */
const CYCLES = 4;

/** Stitches and steps spent on all lines together; what is not found by then is not looked for further. */
const MOST_EFFORT = 1_000_000;

/** Only what is proved is given: growth that differs from cycle to cycle is none. */
export function roundGrowths(pattern: Pattern, { index, plan, readings }: PlannedSize): RoundGrowth[] {
  let effort = 0;
  return pattern.parts.flatMap((part) =>
    part.instructions.lines.flatMap((line, at) => {
      const repeat = line.steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
      if (part.onto !== null || repeat === undefined || effort > MOST_EFFORT) return [];
      const cycle = Math.max(1, repeat.last ?? repeat.rows.length);
      const longer = { ...pattern, parts: [goingOn(part, at, repeat, cycle * CYCLES)] };
      const worked = workSize(longer, index, { ...plan, readings });
      const { fabric, whole, wavered } = worked;
      effort += worked.effort;
      const rows = rowWords(fabric, new Map()).filter((_, i) => fabric.rows[i]?.line === at);
      return whole && !wavered && rows.length === cycle * CYCLES ? growthOf(part.name, rows, cycle) : [];
    }),
  );
}

function growthOf(part: string, rows: readonly RowWord[], cycle: number): RoundGrowth[] {
  const last = rows.slice(-3 * cycle);
  const even = last.slice(0, cycle).every((row, i) => {
    const [second, third] = [last[i + cycle], last[i + 2 * cycle]];
    return second !== undefined && third !== undefined && rowGrowsEvenly(row, second, third);
  });
  const from = rows[0]?.label;
  if (!even || from === undefined) return [];
  const counts = last.map(({ counted }) => counted);
  return [{ part, from, cycle, adds: (counts[cycle] ?? 0) - (counts[0] ?? 0) }];
}

/** The part up to a line, and that line for so many rows. */
function goingOn(part: Part, at: number, repeat: RepeatRowsStep, rows: number): Part {
  const lines = part.instructions.lines.slice(0, at + 1).map((line, i) => {
    // The lines before are worked at their own numbers, which their counts help to read.
    if (i !== at) return line;
    const times: Num = { values: [rows / Math.max(1, repeat.last ?? repeat.rows.length)], span: repeat.span };
    const steps = line.steps.map(
      (step): Step =>
        step === repeat ? { ...repeat, until: { kind: 'times', n: times, more: true } } : step,
    );
    const label = line.label?.kind === 'numbered' ? { ...line.label, to: null } : line.label;
    return { ...line, label, steps, stated: null };
  });
  return { ...part, instructions: { lines } };
}
