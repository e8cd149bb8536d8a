/** The squares of all weeks against the places of the blanket: whether every one is filled, whatever a maker chooses. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { listed } from '../diagnostics/listed.ts';
import type { Along } from './along.ts';
import { LIES, type Lie, placesOf } from './lies.ts';

export function gridFaults({ source, blanket, weeks, places }: Along): Diagnostic[] {
  const { file } = source;
  const uneven = weeks.flatMap(({ number, choices, span }) => {
    const fills = choices.map(({ make, covers }) => make * covers);
    if (new Set(fills).size <= 1) return [];
    const words = choices.map(({ pattern }, i) => `${pattern} ${fills[i]}`);
    return [diagnose('along/uneven-choices', { file, span }, { week: number, fills: listed(words, 'and') })];
  });
  const { across } = blanket;
  const wide = weeks.flatMap(({ number, choices }) =>
    choices.flatMap(({ pattern, covers, span }) =>
      covers <= across
        ? []
        : [diagnose('along/too-wide', { file, span }, { week: number, pattern, covers, across })],
    ),
  );
  if (uneven.length + wide.length > 0) return [...uneven, ...wide];
  const filled = weeks.reduce(
    (sum, { choices: [first] }) => sum + (first?.make ?? 0) * (first?.covers ?? 1),
    0,
  );
  const { lie, down } = blanket;
  const wanted = placesOf(lie, across, down);
  if (filled === wanted) return [];
  const span = places.get('blanket') ?? { start: 0, end: 1 };
  const facts = { pieces: LIES[lie].pieces, places: wanted, filled, offers: offers(lie, filled, wanted) };
  return [diagnose('along/grid', { file, span }, facts)];
}

/** `make 2 more in one of the weeks, or lay them 5 across and 8 down.` */
function offers(lie: Lie, filled: number, wanted: number): string {
  const off = Math.abs(wanted - filled);
  const change = `make ${off} ${wanted > filled ? 'more' : 'fewer'} in one of the weeks`;
  const grid = LIES[lie].fewer === 0 ? gridOf(filled) : gridOfUnlikeRows(lie, filled);
  return grid === null ? `${change}.` : `${change}, or lay them ${grid[0]} across and ${grid[1]} down.`;
}

/** A strip is no blanket. */
const LONGEST = 3;

function gridOf(filled: number): readonly [number, number] | null {
  const across = Array.from({ length: Math.floor(Math.sqrt(filled)) }, (_, i) => i + 1).findLast(
    (n) => filled % n === 0 && n > 1,
  );
  return across === undefined || filled / across > across * LONGEST ? null : [across, filled / across];
}

/** The nearest to as many across as down. */
function gridOfUnlikeRows(lie: Lie, filled: number): readonly [number, number] | null {
  let best: readonly [number, number] | null = null;
  for (let across = 2; across <= filled; across += 1)
    for (let down = 1; placesOf(lie, across, down) <= filled; down += 1)
      if (placesOf(lie, across, down) === filled && isNearer([across, down], best)) best = [across, down];
  return best;
}

function isNearer(
  [across, down]: readonly [number, number],
  best: readonly [number, number] | null,
): boolean {
  if (Math.max(across, down) > Math.min(across, down) * LONGEST) return false;
  return best === null || Math.abs(across - down) < Math.abs(best[0] - best[1]);
}
