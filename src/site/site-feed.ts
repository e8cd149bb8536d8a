/** What is published, and where the site stands -> its feed after RFC 4287: patterns and weeks of alongs, the newest first. */

import { isoInstant } from '../along/clock-words.ts';
import { weeksOut } from '../along/release.ts';
import type { CompiledPattern } from '../compiled.ts';
import { escaped } from '../escaped.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { ALL_FEED, wholeAddress } from './addresses.ts';
import { weekFolder } from './along-pages.ts';
import type { AlongSite } from './along-site.ts';
import type { SiteFile } from './site-file.ts';
import type { SiteSettings } from './site-settings.ts';

interface Entry {
  readonly address: string;
  readonly title: string;
  readonly updatedMs: number;
  readonly summary: string;
  readonly author: string | null;
}

/**
 * A pattern stands in it by the day of its file or of its last change; one without a day is no news. Null where there is no
 * news at all: a feed has to say when it last changed.
 */
export function siteFeed(
  collection: readonly CompiledPattern[],
  alongs: readonly AlongSite[],
  { name, line }: Pick<SiteSettings, 'name' | 'line'>,
  top: string,
): SiteFile | null {
  const entries = [
    ...collection.flatMap(({ pattern }) => (pattern === null ? [] : (patternEntry(pattern, top) ?? []))),
    ...alongs.flatMap((along) => weekEntries(along, top)),
  ].sort((a, b) => b.updatedMs - a.updatedMs || a.address.localeCompare(b.address, 'en'));
  const [newest] = entries;
  if (newest === undefined) return null;
  const title = name ?? 'Crochet patterns';
  const content = `${[
    '<?xml version="1.0" encoding="utf-8"?>',
    '<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">',
    `<id>${escaped(top)}</id>`,
    `<title>${escaped(title)}</title>`,
    ...(line === null ? [] : [`<subtitle>${escaped(line)}</subtitle>`]),
    `<updated>${isoInstant(newest.updatedMs)}</updated>`,
    `<author><name>${escaped(title)}</name></author>`,
    `<link rel="self" type="application/atom+xml" href="${escaped(`${top}${ALL_FEED}`)}"/>`,
    `<link rel="alternate" type="text/html" href="${escaped(top)}"/>`,
    ...entries.flatMap(entryLines),
    '</feed>',
  ].join('\n')}\n`;
  return { file: ALL_FEED, content };
}

function patternEntry(pattern: Pattern, top: string): Entry | null {
  const days = [pattern.date, ...pattern.changes.map(({ date }) => date)].filter((day) => day !== null);
  const instants = days.map((day) => Date.parse(`${day}T00:00:00Z`)).filter(Number.isFinite);
  const address = wholeAddress(top, [pattern.slug]);
  if (instants.length === 0 || address === null) return null;
  const updatedMs = Math.max(...instants);
  const changed = pattern.changes
    .filter(({ date }) => Date.parse(`${date}T00:00:00Z`) === updatedMs)
    .map(({ what }) => `Changed: ${what}`);
  return {
    address,
    title: pattern.title,
    updatedMs,
    summary: [pattern.about, ...changed].filter((words) => words !== '').join(' '),
    author: pattern.designer,
  };
}

/** Of what is out, and of nothing else. */
function weekEntries({ released }: AlongSite, top: string): Entry[] {
  const { along } = released;
  return weeksOut(released).map(({ number, releaseMs, week, squares }) => ({
    address: wholeAddress(top, [along.slug, weekFolder(number)]) ?? top,
    title: `${along.title}, week ${number}: ${week.title}`,
    updatedMs: releaseMs,
    summary: squares.map(({ pattern }) => pattern.title).join(' or '),
    author: along.organiser,
  }));
}

function entryLines({ address, title, updatedMs, summary, author }: Entry): string[] {
  return [
    '<entry>',
    `<id>${escaped(address)}</id>`,
    `<title>${escaped(title)}</title>`,
    `<updated>${isoInstant(updatedMs)}</updated>`,
    ...(author === null ? [] : [`<author><name>${escaped(author)}</name></author>`]),
    `<link rel="alternate" type="text/html" href="${escaped(address)}"/>`,
    ...(summary === '' ? [] : [`<summary>${escaped(summary)}</summary>`]),
    '</entry>',
  ];
}
