import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { GOOD, removeFolder, rowfold, scratchFolder, WRONG, writePattern } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));

function filesOf(name: string): Map<string, string> {
  const top = path.join(folder, name);
  const names = readdirSync(top, { recursive: true, encoding: 'utf8' }).sort();
  return new Map(
    names.flatMap((file) => {
      try {
        return [[file, readFileSync(path.join(top, file)).toString('latin1')] as const];
      } catch {
        return []; // a folder
      }
    }),
  );
}

describe('build', () => {
  let first: Map<string, string>;
  beforeAll(async () => {
    writePattern(folder, 'grey-square', GOOD);
    const { code, out, err } = await rowfold(['build'], folder);
    expect(err).not.toMatch(/error/);
    expect(out).toMatch(/^1 pattern in 3 sizes: \d+ pages, \d+ charts, \d+ booklets in _site, [\d.]+ s\.\n$/);
    expect(code).toBe(0);
    first = filesOf('_site');
  });

  test('makes a page a pattern, a page a size and a page a dialect, with booklets and charts beside them', () => {
    const made = [...first.keys()];
    for (const file of [
      'index.html',
      '404.html',
      'pattern.schema.json',
      'site-files/site.css',
      'grey-square/index.html',
      'grey-square/small/index.html',
      'grey-square/large/uk-full/index.html',
      'grey-square/medium/grey-square-medium-a4.pdf',
      'grey-square/medium/grey-square-medium-letter.pdf',
      'grey-square/small/grey-square-small-chart-1-us.svg',
    ]) {
      expect(made).toContain(file);
    }
  });

  test('makes only the booklets that site.yaml asks for, and tells a fault in it', async () => {
    const file = path.join(folder, 'patterns/site.yaml');
    writeFileSync(file, 'booklets:\n  - {form: folded}\n  - {sizes: all}\n');
    expect((await rowfold(['build', '--out', 'chosen'], folder)).code).toBe(0);
    const booklets = [...filesOf('chosen').keys()].filter((name) => name.endsWith('.pdf'));
    expect(booklets.sort()).toEqual([
      'grey-square/grey-square-all-sizes-a4.pdf',
      'grey-square/large/grey-square-large-a4-folded.pdf',
      'grey-square/medium/grey-square-medium-a4-folded.pdf',
      'grey-square/small/grey-square-small-a4-folded.pdf',
    ]);
    writeFileSync(file, 'booklets:\n  - {form: boiled}\n');
    const { code, out, err } = await rowfold(['build'], folder);
    rmSync(file);
    expect([code, out]).toEqual([1, '']);
    expect(err).toMatch(/site\.yaml, line 2: "booklets form" may be flat, folded, large print/);
    expect(filesOf('_site')).toEqual(first);
  });

  test('gives the same bytes twice', async () => {
    expect((await rowfold(['build', '--out', 'again'], folder)).code).toBe(0);
    const again = filesOf('again');
    expect([...again.keys()]).toEqual([...first.keys()]);
    for (const [file, bytes] of first) expect(again.get(file) === bytes, file).toBe(true);
  });

  test('publishes nothing when one pattern has an error, and leaves the last good site as it was', async () => {
    writePattern(folder, 'wrong', WRONG);
    const { code, out, err } = await rowfold(['build'], folder);
    expect(err).toContain('count/mismatch');
    expect(err).toContain('Nothing was published');
    expect([code, out]).toEqual([1, '']);
    expect(filesOf('_site')).toEqual(first);
    removeFolder(path.join(folder, 'patterns/wrong'));
  });

  test('leaves no half-made folder behind', () => {
    expect(readdirSync(folder).sort()).toEqual(['_site', 'again', 'chosen', 'patterns']);
  });

  test('never replaces a folder that holds anything of the designer', async () => {
    mkdirSync(path.join(folder, 'letters'));
    writeFileSync(path.join(folder, 'letters/to-a-friend.txt'), 'Dear friend');
    const { code, err } = await rowfold(['build', '--out', 'letters'], folder);
    expect(err).toMatch(/letters holds files that rowfold did not make/);
    expect(code).toBe(2);
    expect(readFileSync(path.join(folder, 'letters/to-a-friend.txt'), 'utf8')).toBe('Dear friend');
  });

  test('a folder without patterns is a fault, and no empty site takes the place of a full one', async () => {
    const { code, err } = await rowfold(['build', '--patterns', 'elsewhere'], folder);
    expect(err).toContain('path/missing');
    expect(code).toBe(1);
    expect(filesOf('_site')).toEqual(first);
  });
});

describe('a site that knows where it stands', () => {
  const settings = (text: string): void => writeFileSync(path.join(folder, 'patterns/site.yaml'), text);
  afterAll(() => rmSync(path.join(folder, 'patterns/site.yaml')));

  test('has a feed that its pages name, a map, and leads on from old addresses; a preview has none of that', async () => {
    settings('address: https://example.org/shop/\nmoved: {old-grey: grey-square}\n');
    writePattern(folder, 'grey-square', `${GOOD}date: 2026-03-04\n`);
    expect((await rowfold(['build', '--out', 'led'], folder)).code).toBe(0);
    const led = filesOf('led');
    expect(led.get('feed.xml')).toContain(
      '<link rel="alternate" type="text/html" href="https://example.org/shop/grey-square/"/>',
    );
    expect(led.get('grey-square/small/index.html')).toMatch(
      /rel="alternate"[^>]* href="\.\.\/\.\.\/feed\.xml"/,
    );
    expect(led.get('sitemap.xml')).toContain('https://example.org/shop/grey-square/small/');
    expect(led.get('sitemap.xml')).not.toContain('old-grey');
    expect(led.get('old-grey/small/index.html')).toContain('url=../../grey-square/small/');
    expect((await rowfold(['build', '--preview', '--out', 'seen'], folder)).code).toBe(0);
    const seen = filesOf('seen');
    for (const file of ['feed.xml', 'sitemap.xml', 'old-grey/index.html'])
      expect([...seen.keys()]).not.toContain(file);
    expect(seen.get('index.html')).not.toContain('feed.xml');
    writePattern(folder, 'grey-square', GOOD);
  });

  test('is not built while an old address leads nowhere', async () => {
    settings('moved: {old-grey: gray-square}\n');
    const { code, err } = await rowfold(['build', '--out', 'lost'], folder);
    expect(code).not.toBe(0);
    expect(err).toMatch(
      /site\.yaml, moved, old-grey: there is no page at gray-square\/ .* did you mean grey-square\?/,
    );
  });
});
