/** The squares of all weeks against the places of the blanket: whether every one is filled, whatever a maker chooses. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { listed } from '../diagnostics/listed.ts';
import type { Along } from './along.ts';

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
  const wanted = blanket.across * blanket.down;
  if (filled === wanted) return [];
  const span = places.get('blanket') ?? { start: 0, end: 1 };
  const facts = { places: wanted, filled, offers: offers(filled, wanted) };
  return [diagnose('along/grid', { file, span }, facts)];
}

/** `make 2 more in one of the weeks, or lay them 5 across and 8 down.` */
function offers(filled: number, wanted: number): string {
  const off = Math.abs(wanted - filled);
  const change = `make ${off} ${wanted > filled ? 'more' : 'fewer'} in one of the weeks`;
  const across = Array.from({ length: Math.floor(Math.sqrt(filled)) }, (_, i) => i + 1).findLast(
    (n) => filled % n === 0 && n > 1,
  );
  // A strip is no blanket.
  return across === undefined || filled / across > across * 3
    ? `${change}.`
    : `${change}, or lay them ${across} across and ${filled / across} down.`;
}
