/** In rows or rounds that turn, one that does not say so. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Line } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import type { Part } from '../pattern/pattern.ts';
import type { Span } from '../source/span.ts';
import type { Publication } from './publication.ts';

/** A part that never says it turns leaves it to the notes, or to habit; one that does has to say it each time. */
export function missingTurns({ pattern, sizes }: Publication): Diagnostic[] {
  return pattern.parts.flatMap((part, index) => {
    const flat = sizes.some(({ fabric }) =>
      fabric.rows.some((row) => row.part === index && row.side !== null && row.closing === 'flat'),
    );
    const lines = part.instructions.lines.filter(isWorked);
    const rows = lines.filter(
      ({ label }) => label !== null && label.kind !== 'named' && label.unit === 'row',
    );
    const rounds = lines.filter(
      ({ label }) => label !== null && label.kind !== 'named' && label.unit === 'round',
    );
    // Rounds turn by way of exception: only where most do is one that does not a slip.
    const mostTurn = 2 * rounds.filter(({ steps }) => steps.some(turns)).length > rounds.length;
    return [
      ...(flat ? lackingIn(rows, part, pattern.source.file) : []),
      ...(mostTurn ? lackingIn(rounds, part, pattern.source.file) : []),
    ];
  });
}

function lackingIn(rows: readonly Line[], part: Part, file: string): Diagnostic[] {
  const example = rows.find((line) => line.steps.some(turns));
  if (example === undefined) return [];
  const { lines } = part.instructions;
  const all: LinesOfPart = { lines, places: new Map(lines.map((line, i) => [line, i])) };
  const [first, ...others] = rows.filter((line, i) => !ends(line) && needsTurn(line, rows[i + 1], all));
  if (first === undefined) return [];
  const labels = others.map((line) => ({ span: placeOfLabel(line), text: 'nor does this' }));
  const where = { file, span: placeOfLabel(first), labels };
  return [diagnose('row/no-turn', where, { row: nameOf(first), example: nameOf(example) })];
}

function isWorked({ steps }: Line): boolean {
  return steps.some(({ kind }) => WORKS.has(kind)) && !steps.some(repeatsRows);
}

/** `Rep Rows 2 and 3`, also `[Rep Rows 2-7] twice`: the rows it names say what is done at their ends. */
function repeatsRows(step: Step): boolean {
  if (step.kind === 'bracket' || step.kind === 'repeat') return step.body.some(repeatsRows);
  return step.kind === 'repeat rows';
}

/** A row of chains alone is a foundation, and nothing turns before the yarn is cut. */
const WORKS: ReadonlySet<Step['kind']> = new Set(['work', 'group', 'bracket', 'repeat']);

/** The yarn is cut, or it is said what is done instead. */
function ends({ steps }: Line): boolean {
  return steps.some(({ kind }) => kind === 'turn' || kind === 'fasten off');
}

interface LinesOfPart {
  readonly lines: readonly Line[];
  /** Where each of them stands. */
  readonly places: ReadonlyMap<Line, number>;
}

/** Nothing has to be said before the yarn is joined anew, nor where the next row turns first or goes on with the same side. */
function needsTurn(line: Line, next: Line | undefined, { lines, places }: LinesOfPart): boolean {
  if (next === undefined) return false;
  const between = lines.slice((places.get(line) ?? 0) + 1, places.get(next) ?? 0);
  if (between.some(({ steps }) => steps.some(({ kind }) => kind === 'fasten off' || kind === 'turn')))
    return false;
  const [first, second] = next.steps.filter(({ kind }) => kind !== 'note');
  const joins = first?.kind === 'yarn' && first.action === 'join';
  const turnsFirst = [first, second].some((step) => step !== undefined && turns(step));
  const sameSide = line.side !== null && line.side === next.side;
  return !joins && !turnsFirst && !sameSide;
}

function placeOfLabel({ label, span }: Line): Span {
  return label?.span ?? span;
}

function turns(step: Step): boolean {
  return step.kind === 'turn' && step.what === 'turn';
}

function nameOf({ label }: Line): string {
  if (label === null || label.kind === 'named') return '';
  return label.kind === 'next'
    ? `Next ${label.word.toLowerCase()}`
    : `${label.word} ${label.from.values[0] ?? ''}`;
}
