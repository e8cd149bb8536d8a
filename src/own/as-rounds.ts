/**
 * A piece worked round and round whose repeated rounds make it larger, as most squares and hexagons are, in; the same with
 * more or fewer of those rounds out: `Rnds 4–6: Rep Rnd 3`, then `Rnd 7` as its border, becomes `Rnds 4–9`, then `Rnd 10`.
 */

import type { Fabric } from '../fabric/fabric.ts';
import { workSize } from '../fabric/work.ts';
import { measure } from '../measure/measure.ts';
import type { Label, Line } from '../notation/line.ts';
import type { Num } from '../notation/num.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RepeatRowsStep, Step } from '../notation/tree.ts';
import type { Pattern } from '../pattern/pattern.ts';

/** The rounds that can be repeated more or less often. */
export interface GrowingRounds {
  /** Place of their line in the only part. */
  readonly line: number;
  /** First and last of them, as the designer has it. */
  readonly first: number;
  readonly last: number;
  /** Rounds in all, those after them included. */
  readonly total: number;
}

export interface RoundSize {
  /** Rounds in all. */
  readonly count: number;
  readonly mm: number;
}

/** Larger work than this is a tablecloth. */
const MOST_ROUNDS = 120;

/** Of a piece in one part, worked in rounds that lie flat; null for any other. */
export function growingRounds(pattern: Pattern, sizeIndex: number, fabric: Fabric): GrowingRounds | null {
  const [part, more] = pattern.parts;
  if (part === undefined || more !== undefined || fabric.parts[0]?.shape !== 'round') return null;
  const { lines } = part.instructions;
  const line = lines.findIndex((one) => isRepeated(one));
  const { label } = lines[line] ?? {};
  if (label?.kind !== 'numbered' || label.to === null || label.to === 'on') return null;
  const first = numberForSize(label.from, sizeIndex);
  const last = numberForSize(label.to, sizeIndex);
  const rows = fabric.rows.filter((row) => row.line === line);
  const before = fabric.rows.findLast((row) => row.number !== null && row.number < (first ?? 0));
  if (first === null || last === null || rows.length === 0 || before === undefined) return null;
  const grows = rows.every(({ stitches, spaces }, i) => {
    const below = rows[i - 1] ?? before;
    return stitches + spaces > below.stitches + below.spaces;
  });
  const total = Math.max(...fabric.rows.map(({ number }) => number ?? 0));
  return grows ? { line, first, last, total } : null;
}

/** `Rnds 4–6: Rep Rnd 3`, with nothing about it that says which of them is which. */
function isRepeated({ label, steps }: Line): boolean {
  const rep = steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
  if (rep === undefined || label?.kind !== 'numbered' || label.unit !== 'round') return false;
  const { last, even, atEdge, more, otherSide, until, rows } = rep;
  const odd = [last, even, atEdge, more, otherSide, label.others].some((given) => given !== undefined);
  return rows.length === 1 && !odd && until.kind === 'label';
}

/** The first of the repeated rounds goes by one that stands before it, so all of them may be left out. */
export function fewestRounds({ first, last, total }: GrowingRounds): number {
  return total - (last - first) - 1;
}

/** With so many rounds in all. Counts that are stated are the designer's own sizes' and are left out. */
export function withRounds(pattern: Pattern, growing: GrowingRounds, total: number): Pattern {
  const more = total - growing.total;
  const last = growing.last + more;
  const parts = pattern.parts.map((part) => {
    const lines = part.instructions.lines.flatMap((line, at): readonly Line[] => {
      const uncounted = { ...line, stated: null };
      if (at < growing.line) return [uncounted];
      if (at > growing.line) return [moved(uncounted, growing.last, more)];
      return last < growing.first ? [] : [{ ...uncounted, label: reaching(line.label, last) }];
    });
    return { ...part, instructions: { lines } };
  });
  return { ...pattern, parts };
}

/** The rounds near a width: that which comes nearest, and all others from the fewest on up to just past it. */
export function roundSizes(
  pattern: Pattern,
  growing: GrowingRounds,
  sizeIndex: number,
  upToMm: number,
): readonly RoundSize[] {
  const found: RoundSize[] = [];
  let past = 0;
  for (let count = fewestRounds(growing); count <= MOST_ROUNDS && past < PAST; count++) {
    const { fabric, whole } = workSize(withRounds(pattern, growing, count), sizeIndex, {
      repeats: 1,
      rows: null,
    });
    const { widthMm, aroundMm } = measure(pattern, fabric);
    if (!whole || widthMm === null || aroundMm !== null) continue;
    found.push({ count, mm: widthMm });
    if (widthMm >= upToMm) past += 1;
  }
  return found;
}

/** Shown larger than what was wanted. */
const PAST = 3;

function reaching(label: Label | null, last: number): Label | null {
  if (label?.kind !== 'numbered' || label.to === null || label.to === 'on') return label;
  return { ...label, to: { ...label.to, values: label.to.values.map(() => last) } };
}

/** A line after those rounds, its number and the rounds it names moved along. */
function moved(line: Line, after: number, more: number): Line {
  const along = (num: Num): Num => ({
    ...num,
    values: num.values.map((value) => (value === null || value <= after ? value : value + more)),
  });
  const { label } = line;
  const steps = line.steps.map(
    (step): Step => (step.kind === 'repeat rows' ? { ...step, rows: step.rows.map(along) } : step),
  );
  if (label?.kind !== 'numbered') return { ...line, steps };
  const { from, to, others } = label;
  return {
    ...line,
    steps,
    label: {
      ...label,
      from: along(from),
      to: to === null || to === 'on' ? to : along(to),
      ...(others === undefined ? {} : { others: others.map(along) }),
    },
  };
}
