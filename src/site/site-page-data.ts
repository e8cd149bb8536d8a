/** The data of every page of the site, list by list, as Eleventy is given it. */

import type { AlongPages } from './along-page-data.ts';
import type { ListPage, OwnPage, PatternPage, SizePage, StitchPage } from './page-data.ts';
import type { SiteWords } from './site-words.ts';

export interface SitePages {
  /** What every page says of the designer. */
  readonly site: SiteWords;
  readonly alongs: AlongPages;
  readonly list: ListPage;
  readonly stitches: StitchPage;
  readonly patterns: readonly PatternPage[];
  readonly sizes: readonly SizePage[];
  readonly own: readonly OwnPage[];
}
