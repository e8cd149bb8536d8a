/** The feed of the whole site, read back by a feed parser. */

import { parseFeed } from '@rowanmanning/feed-parser';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { siteFeed } from '../../src/site/site-feed.ts';

const TOP = 'https://example.org/crochet/';
const OWNER = { name: 'Salt & Sons', line: 'Squares <small>' };

function piece(slug: string, keys: string) {
  const text = `title: ${slug} & more\nabout: About "${slug}".\nterms: US\n${keys}\nparts:\n  - name: Piece\n    work: |\n      Foundation: Ch 5.\n`;
  return compilePattern({ file: `${slug}/pattern.yaml`, text }, slug);
}

const collection = [
  piece('older', 'date: 2026-01-05\ndesigner: A. Maker'),
  piece('undated', 'skill: easy'),
  piece(
    'mended',
    'version: "1.1"\ndate: 2025-03-01\nchanges:\n  - {date: 2026-02-10, what: Row 3 had one stitch too many.}',
  ),
];

describe('the feed', () => {
  const file = siteFeed(collection, [], OWNER, TOP);
  const feed = parseFeed(String(file?.content));

  test('has the patterns that have a day, what changed last first, with whole addresses', () => {
    expect(file?.file).toBe('feed.xml');
    expect(feed.title).toBe('Salt & Sons');
    expect(feed.description).toBe('Squares <small>');
    expect(feed.items.map(({ url }) => url)).toEqual([`${TOP}mended/`, `${TOP}older/`]);
    expect(feed.items.map(({ updated }) => updated?.toISOString())).toEqual([
      '2026-02-10T00:00:00.000Z',
      '2026-01-05T00:00:00.000Z',
    ]);
    expect(feed.updated?.toISOString()).toBe('2026-02-10T00:00:00.000Z');
  });

  test('says what was mended, and who made what', () => {
    expect(feed.items[0]?.description).toBe('About "mended". Changed: Row 3 had one stitch too many.');
    expect(feed.items[1]?.authors.map(({ name }) => name)).toEqual(['A. Maker']);
  });

  test('is not there while there is nothing with a day to tell of', () => {
    expect(siteFeed([piece('undated', 'skill: easy')], [], OWNER, TOP)).toBe(null);
  });
});
