/** Places and stitches named in a maker's words and the pattern's own terms, for faults. */

import type { What } from '../notation/tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById, termsOf } from '../stitches/table.ts';
import { NONE } from './fabric.ts';
import type { Site } from './site.ts';

export function describeWhat(what: What, terms: Terms): string {
  switch (what.kind) {
    case 'st':
      return 'st';
    case 'stitch':
      return abbreviation(what.id, terms);
    case 'special':
      return what.name;
    case 'ch':
      return 'ch';
    case 'space':
      return `${what.corner ? 'corner ' : ''}${spaceName(what.chains, terms)}${what.of === undefined ? '' : ` of a ${what.of}`}`;
    case 'any-of':
      return what.of.map((each) => describeWhat(each, terms)).join(' or ');
    case 'group':
      return 'group';
    case 'marked':
      return 'marked st';
    case 'corner':
      return 'corner';
    case 'row-end':
      return 'row end';
  }
}

export function describeSite(site: Site, terms: Terms): string {
  if (site.space !== NONE) return spaceName(site.spaceChains, terms);
  switch (site.kind) {
    case 'stitch':
      return site.special === null
        ? abbreviation(site.id, terms)
        : `${abbreviation(site.id, terms)} of a ${site.special}`;
    case 'chain':
    case 'underside':
      return 'ch';
    case 'gap':
      return 'sp between sts';
    case 'ring':
      return 'ring';
    case 'row end':
      return 'row end';
    case 'unknown':
      return 'st';
  }
}

export function abbreviation(id: string, terms: Terms): string {
  return termsOf(stitchById(id), terms).abbr;
}

function spaceName(chains: number | null, terms: Terms): string {
  if (chains === null) return 'ch sp';
  return terms === 'US' ? `ch-${chains} sp` : `${chains}-ch sp`;
}
