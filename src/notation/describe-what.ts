/** What a place or a stitch is called in the pattern's own terms: `next corner ch-2 sp`, `sc`. */

import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import type { What } from './tree.ts';

export function describeWhat(what: What, terms: Terms): string {
  switch (what.kind) {
    case 'st':
      return 'st';
    case 'stitch':
      return `${what.alone === true ? 'single ' : ''}${abbreviation(what.id, terms)}`;
    case 'special':
      return what.name;
    case 'ch':
      return 'ch';
    case 'space':
      return `${what.corner ? 'corner ' : what.side === true ? 'side ' : ''}${spaceName(what.chains, terms)}${what.of === undefined ? '' : ` of a ${what.of}`}`;
    case 'any-of':
      return what.of.map((each) => describeWhat(each, terms)).join(' or ');
    case 'group':
      return 'group';
    case 'marked':
      return 'marked st';
    case 'corner':
      return what.of === undefined ? 'corner' : `corner ${abbreviation(what.of, terms)}`;
    case 'row-end':
      return 'row end';
  }
}

export function abbreviation(id: string, terms: Terms): string {
  return termsOf(stitchById(id), terms).abbr;
}

export function spaceName(chains: number | null, terms: Terms): string {
  if (chains === null) return 'ch sp';
  return terms === 'US' ? `ch-${chains} sp` : `${chains}-ch sp`;
}
