/** What may be seen of an along in, its feed out: an entry for each week that is out, after RFC 4287. */

import { escaped } from '../escaped.ts';
import type { Told } from './calendar.ts';
import { isoInstant } from './clock-words.ts';
import { type ReleasedAlong, type WeekOut, weeksOut } from './release.ts';

/** Its name in the folder of the along. */
export const FEED_FILE = 'feed.xml';

export function feedText(released: ReleasedAlong, { mark, address }: Told): string {
  const { along } = released;
  const out = weeksOut(released).toReversed();
  const updatedMs = out[0]?.releaseMs ?? along.announcedMs;
  // Without an address the links are from the feed's own place, and whoever reads it knows where that is.
  const base = address === null ? '' : `${address}${encodeURIComponent(along.slug)}/`;
  const title = mark === null ? along.title : `${mark} ${along.title}`;
  return `${[
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">',
    `<id>${feedId(released)}</id>`,
    `<title>${escaped(title)}</title>`,
    ...(along.about === '' ? [] : [`<subtitle>${escaped(along.about)}</subtitle>`]),
    `<updated>${isoInstant(updatedMs)}</updated>`,
    `<author><name>${escaped(along.organiser ?? along.title)}</name></author>`,
    `<link rel="self" type="application/atom+xml" href="${escaped(`${base}${FEED_FILE}`)}"/>`,
    `<link rel="alternate" type="text/html" href="${escaped(base === '' ? './' : base)}"/>`,
    ...out.flatMap((week) => entry(released, week, base)),
    '</feed>',
  ].join('\n')}\n`;
}

function entry(
  released: ReleasedAlong,
  { number, releaseMs, week, squares }: WeekOut,
  base: string,
): string[] {
  const names = squares.map(({ pattern }) => pattern.title).join(' or ');
  return [
    '<entry>',
    `<id>${feedId(released)}:week-${number}</id>`,
    `<title>${escaped(`Week ${number}: ${week.title}`)}</title>`,
    `<updated>${isoInstant(releaseMs)}</updated>`,
    `<published>${isoInstant(releaseMs)}</published>`,
    `<link rel="alternate" type="text/html" href="${escaped(`${base}week-${number}/`)}"/>`,
    `<summary>${escaped([`${names}, ${week.make} to make.`, week.note].filter((words) => words !== null).join(' '))}</summary>`,
    '</entry>',
  ];
}

/** A tag URI (RFC 4151) of the announcing day: it stays the same wherever the site is moved. */
function feedId({ along }: ReleasedAlong): string {
  const day = new Date(along.announcedMs).toISOString().slice(0, 10);
  return `tag:rowfold.invalid,${day}:${encodeURIComponent(along.slug)}`;
}
