/** A line that repeats rows and then others in, `Rep Rows 2 and 3 4 times, then Row 2 once`; a line for each repeat out. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Line } from './line.ts';
import type { Step } from './tree.ts';

/** What stands behind the first repeat goes with it; the count at the end belongs to the last. */
export function splitRepeats(line: Line, file: string, faults: Diagnostic[]): readonly Line[] {
  const parted = behindItsRow(line);
  if (parted !== null) return [parted[0], ...splitRepeats(parted[1], file, faults)];
  if (!repeatsTwice(line.steps)) return [line];
  const starts = line.steps.flatMap(({ kind }, at) => (kind === 'repeat rows' ? [at] : []));
  const second = line.steps[starts[1] ?? line.steps.length];
  if (second === undefined) return [line];
  const { label } = line;
  if (label?.kind === 'next' || (label?.kind === 'numbered' && label.to !== null && label.to !== 'on')) {
    // The label numbers all of the rows, and it is not said which of them are which.
    const expected = 'a line of its own for each repeat';
    faults.push(diagnose('phrase/unread', { file, span: second.span }, { words: 'then …', expected }));
    return [{ ...line, steps: [], readable: false }];
  }
  return starts.map((at, i): Line => {
    const steps = line.steps.slice(i === 0 ? 0 : at, starts[i + 1]);
    const last = i === starts.length - 1;
    const span = {
      start: i === 0 ? line.span.start : startOf(steps, line),
      end: last ? line.span.end : endOf(steps, line),
    };
    const stated = last ? line.stated : null;
    return i === 0
      ? { ...line, steps, stated, span }
      : { ...line, label: null, side: null, steps, stated, span };
  });
}

/**
 * `Row 4: Sc in each st across, turn. Rep Rows 2-4 5 times.`: the row, and the rows that come after it; null for a line
 * of one or the other. A colour or a chain before what is repeated goes with it. Without a label the turn ends the row:
 * `work 1 dc into each ch (37 dc), turn and work 2nd row once more`.
 */
function behindItsRow(line: Line): readonly [Line, Line] | null {
  const { label, steps } = line;
  const at = steps.findIndex(({ kind }) => kind === 'repeat rows');
  if (at < 1) return null;
  const rep = steps[at];
  if (rep?.kind !== 'repeat rows' || rep.until.kind === 'label') return null;
  const one = label !== null && (label.kind === 'numbered' ? label.to === null : label.kind === 'next');
  const row = steps.slice(0, at);
  const turned = label === null && steps[at - 1]?.kind === 'turn';
  if (!(one || turned) || !row.some(({ kind }) => WORKS.has(kind))) return null;
  const rest = steps.slice(at);
  const end = endOf(row, line);
  const ofRow = line.stated !== null && line.stated.span.end <= rep.span.start;
  const [stated, behind] = ofRow ? [line.stated, null] : [null, line.stated];
  const span = { start: rep.span.start, end: line.span.end };
  return [
    { ...line, steps: row, stated, span: { start: line.span.start, end } },
    { ...line, label: null, side: null, steps: rest, stated: behind, span },
  ];
}

const WORKS: ReadonlySet<Step['kind']> = new Set<Step['kind']>([
  'work',
  'group',
  'repeat',
  'bracket',
  'evenly',
  'join',
]);

/** Asked of every line there is. */
function repeatsTwice(steps: readonly Step[]): boolean {
  let repeats = 0;
  for (const { kind } of steps) if (kind === 'repeat rows') repeats += 1;
  return repeats > 1;
}

function startOf(steps: readonly Step[], { span }: Line): number {
  return steps[0]?.span.start ?? span.start;
}

function endOf(steps: readonly Step[], { span }: Line): number {
  return steps.at(-1)?.span.end ?? span.end;
}
