/**
 * A pattern whose last rows repeat others to a number in, the same pattern with those going on to any height out:
 * `Rows 4-27: Rep Rows 2 and 3` may end after any Row 3. For a size of a maker's own.
 */

import type { Fabric } from '../fabric/fabric.ts';
import { openEnd, repeatedRow } from '../fabric/open-end.ts';
import type { Line } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RepeatRowsStep, Step } from '../notation/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';

/** Only of a pattern in one part whose repeated rows neither gain nor lose, so that more of them make it only higher. */
export function asOpen(pattern: Pattern, sizeIndex: number, fabric: Fabric): Pattern {
  const [part, more] = pattern.parts;
  if (part === undefined || more !== undefined) return pattern;
  const { lines } = part.instructions;
  if (openEnd(lines, sizeIndex) !== null) return pattern;
  const at = lines.findLastIndex(({ label }) => label !== null && label.kind !== 'named');
  const line = lines[at];
  const rep = line?.steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
  if (
    line?.label?.kind !== 'numbered' ||
    rep === undefined ||
    !isPlain(rep) ||
    line.label.others !== undefined
  )
    return pattern;
  const { from, to } = line.label;
  const first = numberForSize(from, sizeIndex);
  const last = to === null || to === 'on' ? null : numberForSize(to, sizeIndex);
  if (first === null || last === null || !isEven(fabric, at, rep.rows.length)) return pattern;
  const endingWith = repeatedRow(rep, last - first, sizeIndex) ?? null;
  const open: Line = {
    ...line,
    label: { ...line.label, to: 'on' },
    steps: line.steps.map(
      (step): Step => (step === rep ? { ...rep, until: { kind: 'height', endingWith } } : step),
    ),
  };
  return { ...pattern, parts: [{ ...part, instructions: { lines: lines.with(at, open) } }] };
}

function isPlain({ rows, last, even, atEdge, more, otherSide, until }: RepeatRowsStep): boolean {
  const odd = [last, even, atEdge, more, otherSide].some((given) => given !== undefined);
  return rows.length > 0 && !odd && until.kind === 'label';
}

/** Each row of the line has as many stitches as the one a cycle before it. */
function isEven(fabric: Fabric, line: number, cycle: number): boolean {
  const rows = fabric.rows.filter((row) => row.line === line);
  return (
    rows.length > cycle &&
    rows.every(({ stitches }, i) => i < cycle || stitches === rows[i - cycle]?.stitches)
  );
}
