/** Balls that makers are told to buy against what the blanket takes, whatever they choose. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { blanketFigures } from './figures.ts';
import { mostOfAny } from './plan-blanket.ts';
import { releaseAt } from './release.ts';
import type { WorkedAlong } from './work-along.ts';

/** Nothing is said before every week is sound: what is missing takes yarn too. */
export function ballFaults(worked: WorkedAlong): Diagnostic[] {
  const { along, border } = worked;
  const { released } = releaseAt(worked, null);
  if (!released.complete || border.fault !== null) return [];
  const most = mostOfAny(blanketFigures(released, border.figures));
  return along.yarns.flatMap(({ letter, colour, ballLengthM, balls }) => {
    const [listed] = balls ?? [];
    const needed = ballLengthM === null ? 0 : Math.ceil((most.get(letter) ?? 0) / ballLengthM);
    if (listed === undefined || listed >= needed) return [];
    const span = along.places.get(`yarn.${letter}.balls`) ?? { start: 0, end: 1 };
    const facts = { letter, colour, listed: ballWords(listed), needed: ballWords(needed) };
    return [diagnose('along/balls', { file: along.source.file, span }, facts)];
  });
}

function ballWords(balls: number): string {
  return balls === 1 ? '1 ball' : `${balls} balls`;
}
