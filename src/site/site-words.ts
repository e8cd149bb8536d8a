/** The settings of a site -> what is the designer's own on its pages: name, words, links, picture, colours. */

import { FILES_FOLDER, pagePlace } from './addresses.ts';
import type { PictureSet } from './page-data.ts';
import type { Palette } from './palette.ts';
import { pictureSet } from './picture-set.ts';
import type { SiteSettings } from './site-settings.ts';

export interface SiteWords {
  readonly name: string | null;
  readonly line: string | null;
  readonly about: readonly string[];
  readonly portrait: PictureSet | null;
  readonly links: readonly { readonly text: string; readonly to: string }[];
  readonly footer: readonly string[];
  readonly palette: Palette;
  /** There is a feed of all that is new, which pages name to browsers. */
  readonly hasFeed: boolean;
}

/** The portrait is linked from the top of the site: it stands on the list of patterns. */
export function siteWords({
  name,
  line,
  about,
  seenPortrait,
  links,
  footer,
  palette,
}: SiteSettings): SiteWords {
  const portrait =
    seenPortrait === null ? null : pictureSet(FILES_FOLDER, seenPortrait, pagePlace([]), 'portrait');
  return { name, line, about, portrait, links, footer, palette, hasFeed: false };
}
