/** The squares of an along that are out -> their pages, as those of any pattern, under the along; and the along's line in the list. */

import { dayWords } from '../along/clock-words.ts';
import { weeksOut } from '../along/release.ts';
import { linkTo, type PagePlace } from './addresses.ts';
import { weekFolder } from './along-pages.ts';
import type { AlongSite } from './along-site.ts';
import { coverLink } from './cover-picture.ts';
import { allFound, type Found, patternFound } from './facets.ts';
import type { Link, ListEntry, SizePage } from './page-data.ts';
import { coverPhotograph, photographsOf } from './picture-set.ts';
import type { SiteSettings } from './site-settings.ts';
import { sizePages } from './size-page.ts';

export function squarePages({ released }: AlongSite, offered: SiteSettings): SizePage[] {
  const { along } = released;
  const done = new Set<string>();
  return weeksOut(released).flatMap(({ number, squares }) =>
    squares.flatMap(({ compiled, pattern, size }) => {
      const key = `${compiled.slug} ${size.slug}`;
      // A square that comes again keeps the page it has.
      if (done.has(key)) return [];
      done.add(key);
      return sizePages(compiled, pattern, offered).map((page): SizePage => {
        const [top, , ...below] = page.trail;
        const above: Link[] = [
          { text: along.title, href: linkTo(page, [along.slug]), current: false },
          { text: `Week ${number}`, href: linkTo(page, [along.slug, weekFolder(number)]), current: false },
        ];
        const photographs = photographsOf(compiled, null, page);
        return {
          ...page,
          photographs,
          ownHref: null,
          trail: [...(top === undefined ? [] : [top]), ...above, ...below],
        };
      });
    }),
  );
}

/** What is out of an along is found under what its squares are found under; when it runs, under the weeks that are out. */
export function alongFound({ released }: AlongSite): Found {
  const out = weeksOut(released);
  return {
    ...allFound(
      out.flatMap(({ squares }) => squares.map(({ compiled, pattern }) => patternFound(compiled, pattern))),
    ),
    time: [out.length === 0 ? 'to-come' : released.complete ? 'all-out' : 'under-way'],
  };
}

export function alongEntry({ released, photographs }: AlongSite, place: PagePlace): ListEntry {
  const { along, weeks } = released;
  const square = weeksOut(released)[0]?.squares[0];
  const first = weeks[0];
  return {
    title: along.title,
    href: linkTo(place, [along.slug]),
    about: along.about,
    facts: [
      ...(first === undefined ? [] : [{ name: 'Begins', value: dayWords(first.releaseMs, along.zone) }]),
      { name: 'Weeks', value: `${weeksOut(released).length} of ${weeks.length} out` },
      { name: 'Written in', value: `${along.terms} terms` },
    ],
    photograph: coverPhotograph({ slug: along.slug, photographs }, place, 'listed'),
    cover: square === undefined ? null : coverLink(square.compiled, square.pattern, square.size, place),
  };
}
