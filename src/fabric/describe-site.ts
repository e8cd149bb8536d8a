/** A place of the row below named in a maker's words and the pattern's own terms, for faults. */

import { abbreviation, spaceName } from '../notation/describe-what.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { NONE } from './fabric.ts';
import type { Site } from './site.ts';

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
    case 'stem':
      return `stem of ${abbreviation(site.id, terms)}`;
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
