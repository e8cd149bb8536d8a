/** A flat piece of several rows in which no word says that it turns. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Line } from '../notation/line.ts';
import { isWorked, placeOfLabel } from './lines-of-rows.ts';
import type { Publication } from './publication.ts';

/** Of fewer it is no habit yet. */
const FEWEST = 4;

export function neverTurns({ pattern, sizes }: Publication): Diagnostic[] {
  const told = [...pattern.notes, ...pattern.specials.map(({ how }) => how ?? '')];
  if (told.some((note) => /\bturn/i.test(note))) return [];
  return pattern.parts.flatMap(({ name, instructions }, index) => {
    const flat = sizes.some(({ fabric }) =>
      fabric.rows.some(({ part, side, closing }) => part === index && side !== null && closing === 'flat'),
    );
    const { lines } = instructions;
    const rows = lines.filter((line) => isWorked(line) && isRow(line));
    const [first] = rows;
    if (!flat || first === undefined || rows.length < FEWEST || lines.some(saysWhere)) return [];
    const where = { file: pattern.source.file, span: placeOfLabel(first) };
    return [diagnose('row/never-turns', where, { part: name })];
  });
}

function isRow({ label }: Line): boolean {
  return label !== null && label.kind !== 'named' && label.unit === 'row';
}

/** It turns, or says that it does not; faces are named, or each row begins with yarn of its own. */
function saysWhere({ side, steps }: Line): boolean {
  return (
    side !== null ||
    steps.some(
      (step) =>
        step.kind === 'turn' ||
        (step.kind === 'yarn' && step.action === 'join') ||
        (step.kind === 'note' && /\bturn/i.test(step.text)),
    )
  );
}
