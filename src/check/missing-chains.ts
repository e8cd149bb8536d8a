/** Among rows that rise with a chain before the same stitch, one that does not. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Line } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import { stitchById } from '../stitches/table.ts';
import type { Publication } from './publication.ts';

/** How a row begins: with a chain or without, and what stitch of the table comes first. */
interface Beginning {
  readonly line: Line;
  readonly chain: boolean;
  readonly stitch: string;
}

export function missingChains({ pattern }: Publication): Diagnostic[] {
  return pattern.parts.flatMap(({ instructions }) => {
    // The first row goes into the foundation, from which its chain has been made already.
    const rows = instructions.lines.filter(isNumbered).slice(1);
    const beginnings = rows.flatMap((line) => beginningOf(line) ?? []);
    const by = new Map<string, { readonly with: number; readonly without: readonly Line[] }>();
    for (const { line, chain, stitch } of beginnings) {
      const { with: chained, without } = by.get(stitch) ?? { with: 0, without: [] };
      // One slip among many is told; several without are a habit.
      const kept = without.length > 1 ? without : [...without, line];
      by.set(stitch, chain ? { with: chained + 1, without } : { with: chained, without: kept });
    }
    const first: Line | undefined = [...by.values()].flatMap(({ with: chained, without }) => {
      const [only, second] = without;
      return only === undefined || second !== undefined || chained < 2 ? [] : [only];
    })[0];
    if (first === undefined || risesBefore(instructions.lines, first)) return [];
    const where = { file: pattern.source.file, span: first.label?.span ?? first.span };
    return [diagnose('chain/left-out', where, {})];
  });
}

function isNumbered({ label }: Line): boolean {
  return label !== null && label.kind !== 'named';
}

/** Null where it cannot be told: a special stitch may have a chain of its own, and a new yarn stands without one. */
function beginningOf(line: Line): Beginning | null {
  let chain = false;
  for (const step of line.steps) {
    if (step.kind === 'yarn' && step.action === 'join') return null;
    if (step.kind === 'repeat rows') return null;
    if (step.kind === 'chain') chain = true;
    const id = firstStitch(step);
    if (id === null) continue;
    if (!chain && hangsInLoop(step)) return null;
    return id === '' ? null : { line, chain, stitch: stitchById(id).legOf };
  }
  return null;
}

/** A single crochet over a loop, where slip stitches led or a scallop begins: many work it with no chain before. */
function hangsInLoop(step: Step): boolean {
  if (!('place' in step) || step.place === null || !('what' in step.place)) return false;
  return step.place.what.kind === 'space' && firstStitch(step) === 'sc';
}

/** The table's stitch a step begins with; '' for one that is no stitch of the table, null for a step without. */
function firstStitch(step: Step): string | null {
  if (step.kind === 'work') {
    if (step.stitch.kind !== 'stitch') return '';
    // Slip stitches that move the yarn along come before the chain.
    return step.stitch.id === 'sl-st' ? null : step.stitch.id;
  }
  if (!('body' in step)) return null;
  const [inside] = step.body;
  return inside === undefined || inside.kind === 'chain' ? '' : (firstStitch(inside) ?? '');
}

/** `…, ch 1, turn.` before it: the chain is made already. */
function risesBefore(lines: readonly Line[], line: Line): boolean {
  const before = lines[lines.indexOf(line) - 1];
  const last = before?.steps.findLast(({ kind }) => kind !== 'turn' && kind !== 'note');
  return last?.kind === 'chain';
}
