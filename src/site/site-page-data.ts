/** The data of every page of the site, list by list, as Eleventy is given it. */

import type { AlongPages } from './along-page-data.ts';
import type { ListPage, OwnPage, PatternPage, SizePage, StitchPage } from './page-data.ts';

export interface SitePages {
  readonly alongs: AlongPages;
  readonly list: ListPage;
  readonly stitches: StitchPage;
  readonly patterns: readonly PatternPage[];
  readonly sizes: readonly SizePage[];
  readonly own: readonly OwnPage[];
}
