/** The data of all pages, and where the site will stand -> the same with the one address each page goes by, and a map of the site. */

import { escaped } from '../escaped.ts';
import { wholeAddress } from './addresses.ts';
import type { LinkPicture } from './link-pictures.ts';
import type { PageFrame } from './page-data.ts';
import type { SiteFile } from './site-file.ts';
import type { SitePages } from './site-page-data.ts';

/** Unchanged where nobody knows yet where the site will stand. */
export function withWholeAddresses(
  pages: SitePages,
  top: string | null,
  pictures: readonly LinkPicture[] = [],
): SitePages {
  if (top === null) return pages;
  const whole = <T extends PageFrame>(page: T): T => ({
    ...page,
    canonical: canonicalOf(page, top),
    ...linkPictureOf(page, top, pictures),
  });
  const { alongs } = pages;
  return {
    site: pages.site,
    list: whole(pages.list),
    stitches: whole(pages.stitches),
    patterns: pages.patterns.map(whole),
    own: pages.own.map(whole),
    sizes: pages.sizes.map(whole),
    alongs: {
      alongs: alongs.alongs.map(whole),
      weeks: alongs.weeks.map(whole),
      joining: alongs.joining.map(whole),
      planners: alongs.planners.map(whole),
    },
  };
}

/** A page that says the same as another goes by the other's address; every other page by its own. */
function canonicalOf({ file, canonical }: PageFrame, top: string): string {
  return new URL(canonical ?? './', addressOf(file, top)).href;
}

/** Of the pictures of all folders it stands in, that of the innermost. */
function linkPictureOf(
  { file }: PageFrame,
  top: string,
  pictures: readonly LinkPicture[],
): Pick<PageFrame, 'linkPicture'> {
  const [nearest] = pictures
    .filter(({ folder }) => folder === '' || file.startsWith(`${folder}/`))
    .sort((a, b) => b.folder.length - a.folder.length);
  if (nearest === undefined) return {};
  const address = new URL(nearest.file.split('/').map(encodeURIComponent).join('/'), top).href;
  return { linkPicture: { address, alternative: nearest.words.alternative } };
}

/** A folder's page has the folder's address. */
function addressOf(file: string, top: string): string {
  return wholeAddress(top, file.split('/').slice(0, -1)) ?? top;
}

/** For search engines (the sitemaps protocol 0.9): every page once, by the address it goes by. */
export function siteMap(pages: SitePages, top: string): SiteFile {
  const { list, stitches, patterns, own, sizes, alongs } = pages;
  const frames: readonly PageFrame[] = [
    list,
    ...Object.values(alongs).flat(),
    ...patterns,
    ...sizes,
    ...own,
    stitches,
  ];
  const addresses = frames
    .filter((page) => page.canonical === addressOf(page.file, top))
    .map(({ canonical }) => `<url><loc>${escaped(canonical ?? '')}</loc></url>`);
  const content = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">',
    ...addresses,
    '</urlset>',
    '',
  ].join('\n');
  return { file: 'sitemap.xml', content };
}
