/** A pattern and one of its sizes in, how many repeats and rows it has out: given, or found from the gauge. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { MOST_STITCHES } from '../fabric/builder.ts';
import { openEnd } from '../fabric/open-end.ts';
import type { SizePlan } from '../fabric/work.ts';
import { workSize } from '../fabric/work.ts';
import { measure } from '../measure/measure.ts';
import type { Measures } from '../measure/measures.ts';
import { solveSize } from '../measure/solve-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';

export interface Planned {
  /** Null when the size does not say how large it is. */
  readonly plan: SizePlan | null;
  readonly faults: readonly Diagnostic[];
}

export function planSize(pattern: Pattern, index: number): Planned {
  const size = pattern.sizes[index];
  const multiple = firstMultiple(pattern);
  const open =
    pattern.parts.map((part) => openEnd(part.instructions.lines, index)).find((end) => end !== null) ?? null;
  if (size === undefined) return { plan: null, faults: [] };
  const measurable = pattern.gauge !== null;
  let tooLarge = false;
  const measureAt = (repeats: number | null, rows: number | null): Measures | null => {
    // Once it has come to more than can be worked, looking further would only take longer.
    if (tooLarge) return null;
    if (rows !== null && open !== null && !open.allows(rows)) return null;
    const { fabric, whole, diagnostics } = workSize(pattern, index, { repeats: repeats ?? 1, rows });
    tooLarge = diagnostics.some(({ code }) => code === 'size/too-large' || code === 'row/too-many');
    return whole || lenient ? measure(pattern, fabric) : null;
  };
  let lenient = false;
  const wanted = {
    widthMm: measurable && multiple !== null ? size.widthMm : null,
    heightMm: measurable && open !== null ? size.heightMm : null,
    repeats: size.repeats,
    rows: size.rows,
  };
  let solved = solveSize(wanted, measureAt);
  if (
    (wanted.widthMm !== null && solved.repeats === null) ||
    (wanted.heightMm !== null && solved.rows === null)
  ) {
    // A pattern with a fault at every size is still best worked near the size it is meant for.
    lenient = true;
    solved = solveSize(wanted, measureAt);
  }
  if (tooLarge) {
    const span = multiple?.span ?? pattern.parts[0]?.span ?? { start: 0, end: 1 };
    const facts = { row: `size ${size.name}`, limit: MOST_STITCHES };
    const where = { file: pattern.source.file, span, sizes: [size.name] };
    return { plan: null, faults: [diagnose('size/too-large', where, facts)] };
  }
  if (multiple !== null && solved.repeats === null) {
    // A pattern that cannot be worked at any number of repeats has its own fault: work one to find it.
    if (wanted.widthMm !== null)
      return { plan: { repeats: 1, rows: solved.rows ?? open?.from ?? null }, faults: [] };
    const fault = diagnose(
      'size/no-repeats',
      { file: pattern.source.file, span: multiple.span, sizes: [size.name] },
      { size: size.name },
    );
    return { plan: null, faults: [fault] };
  }
  const rows = solved.rows ?? (wanted.heightMm !== null && open !== null ? open.from : null);
  return { plan: { repeats: solved.repeats ?? 1, rows }, faults: [] };
}
