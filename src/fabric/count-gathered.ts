/** `16 cl`, `6 popcorns` of a count in, how many stitches of that name a row has out. */

import type { GatheredWord } from '../notation/line.ts';
import { stitchById } from '../stitches/table.ts';
import { countedId, groupOf } from './builder.ts';
import type { RowStretch } from './row-stretch.ts';

interface Kind {
  /** The end of the ids that the stitch table gives it. */
  readonly ending: string;
  /** The pattern's own names for one of it: `3-dc cl`, `beg cluster`. */
  readonly names: RegExp;
}

const KINDS: Readonly<Record<GatheredWord, Kind>> = {
  cluster: { ending: '-cl', names: /(?:^|[\s-])cl(?:uster)?$/i },
  bobble: { ending: '-bobble', names: /(?:^|[\s-])bob(?:ble)?(?: st)?$/i },
  popcorn: { ending: '-popcorn', names: /(?:^|[\s-])(?:pc|pop(?:corn)?)(?: st)?$/i },
  puff: { ending: '-puff', names: /(?:^|[\s-])puff(?: st| stitch)?$/i },
};

const BEGINS = /^beg/i;

/**
 * Those that have the name, the pattern's own or the table's; a first one that is written out, `ch 2, dc2tog in same
 * sp`, may be among them. Where none has the name, those of several legs that are called by their number: `dc3tog`.
 */
export function countGathered(word: GatheredWord, stretch: RowStretch, said: number): number {
  const { builder, first, end } = stretch;
  const { ending, names } = KINDS[word];
  const groups = new Set<object>();
  let named = 0;
  let others = 0;
  let begins = false;
  let onlyBegun = true;
  let any = false;
  for (let i = first; i < end; i += 1) {
    const id = countedId(builder, i);
    if (id === null) continue;
    const group = groupOf(builder, i);
    const special = group?.special ?? null;
    const own = special !== null && names.test(special);
    if (own && group !== null) {
      if (!groups.has(group)) named += 1;
      groups.add(group);
      onlyBegun &&= BEGINS.test(special);
    } else if (special === null && id.endsWith(ending)) {
      named += 1;
      onlyBegun = false;
    } else if (stitchById(id).family === 'together') {
      others += 1;
      begins ||= !any;
    }
    any = true;
  }
  if (named === 0) return others;
  // `beg cl in same dc, *tr3tog in next dc`: the first alone goes by the name, and all are such.
  if (onlyBegun) return named + others;
  return begins && named + 1 === said ? said : named;
}
