/** Where rows are given in lists (`Rnds 5, 7 and 9`), every number has to be there, and once. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Publication } from './publication.ts';

export function listedRows({ pattern, sizes }: Publication): Diagnostic[] {
  return pattern.parts.flatMap(({ instructions }, part) => {
    const lists = instructions.lines.filter(
      ({ label }) => label?.kind === 'numbered' && label.others !== undefined,
    );
    const [list] = lists;
    if (list === undefined) return [];
    for (const { fabric } of sizes) {
      const numbers = fabric.rows.filter((row) => row.part === part).flatMap(({ number }) => number ?? []);
      const word = list.label?.kind === 'numbered' ? list.label.word : 'Row';
      const where = { file: pattern.source.file, span: list.label?.span ?? list.span };
      const known = new Set<number>();
      const twice = numbers.find((number) => known.size === known.add(number).size);
      if (twice !== undefined) return [diagnose('row/doubled', where, { row: `${word} ${twice}` })];
      const lacking = numbers.find((number) => number > 1 && !known.has(number - 1));
      if (lacking !== undefined) return [diagnose('row/left-out', where, { row: `${word} ${lacking - 1}` })];
    }
    return [];
  });
}
