/**
 * `Rows 4-10: Rep Rows 2 and 3` are 7 rows of a repeat of 2: the last pass is cut short, and nothing says so. Where it
 * says how many times, the numbers have to be as many.
 */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Fabric } from '../fabric/fabric.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { RepeatRowsStep } from '../notation/tree.ts';
import type { Publication } from './publication.ts';

export function cutRepeats({ pattern, sizes }: Publication): Diagnostic[] {
  return pattern.parts.flatMap(({ instructions }, part) =>
    instructions.lines.flatMap(({ label, steps, stated }, line) => {
      const repeat = steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
      const cycle = repeat?.last ?? repeat?.rows.length ?? 1;
      if (repeat === undefined || repeat.until.kind === 'height') return [];
      if (label?.kind !== 'numbered' || label.to === null || label.to === 'on') return [];
      for (const { index, fabric } of sizes) {
        const [from, to] = [numberForSize(label.from, index), numberForSize(label.to, index)];
        if (from === null || to === null || to < from) continue;
        const given = to - from + 1;
        const times = repeat.until.kind === 'times' ? numberForSize(repeat.until.n, index) : null;
        const differ = times !== null && times * cycle !== given;
        if (!differ && (given % cycle === 0 || (stated !== null && endsShaping(fabric, part, line))))
          continue;
        const where = {
          file: pattern.source.file,
          span: label.span,
          sizes: sizes.length > 1 ? [fabric.size] : [],
        };
        return differ
          ? [diagnose('row/times-differ', where, { given, times, cycle, word: label.word })]
          : [diagnose('row/cut-repeat', where, { rows: given, cycle, word: label.word })];
      }
      return [];
    }),
  );
}

/** The rows that end there are not as wide as each other: with the count that is told the row it stops at is plain. */
function endsShaping({ rows }: Fabric, part: number, line: number): boolean {
  const last = rows.findLastIndex((row) => row.part === part && row.line === line);
  const before = rows[last - 1];
  return before !== undefined && before.part === part && before.stitches !== rows[last]?.stitches;
}
