/** `each rnd adds 8 sts` is held against what the rounds make. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Fabric } from '../fabric/fabric.ts';
import { plainName } from '../fabric/special-name.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { NoteStep } from '../notation/tree.ts';
import type { Publication } from './publication.ts';

export function statedGrowth({ pattern, sizes }: Publication): Diagnostic[] {
  return pattern.parts.flatMap((part, index) =>
    part.instructions.lines.flatMap((line, at) => {
      const note = line.steps.find(
        (step): step is NoteStep => step.kind === 'note' && step.adds !== undefined,
      );
      if (note?.adds === undefined) return [];
      for (const { index: size, fabric } of sizes) {
        const said = numberForSize(note.adds, size);
        const wrong = said === null ? null : otherGrowth(fabric, index, at, said, note.addsOf ?? null);
        if (wrong !== null) {
          const where = {
            file: pattern.source.file,
            span: note.span,
            sizes: sizes.length > 1 ? [fabric.size] : [],
          };
          return [diagnose('row/adds', where, { ...wrong, said: said ?? 0 })];
        }
      }
      return [];
    }),
  );
}

/** The first row of a line that gains another number than is said, against the row before it. */
function otherGrowth(
  fabric: Fabric,
  part: number,
  line: number,
  said: number,
  special: string | null,
): {
  readonly row: string;
  readonly before: number;
  readonly made: number;
  /** The special stitch counted; null for all stitches. */
  readonly of: string | null;
} | null {
  for (const [i, row] of fabric.rows.entries()) {
    const before = fabric.rows[i - 1];
    if (row.part !== part || row.line !== line || before === undefined || before.part !== part) continue;
    const [was, is] =
      special === null ? [before.stitches, row.stitches] : [countIn(before, special), countIn(row, special)];
    if (was !== null && is !== null && is - was !== said)
      return { row: row.label, before: was, made: is, of: special };
  }
  return null;
}

/** Special stitches of that name, also those that begin a row; null in a row that has none. */
function countIn({ groups }: Fabric['rows'][number], special: string): number | null {
  const wanted = plainName(special).toLowerCase();
  const names = Object.keys(groups).filter((name) => plainName(name).toLowerCase() === wanted);
  return names.length === 0 ? null : names.reduce((sum, name) => sum + (groups[name] ?? 0), 0);
}
