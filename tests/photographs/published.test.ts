/** A site with photographs, built twice: what stands in its files, what does not, and that they are the same each time. */

import { readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { clearKept, keptFile } from '../../src/site/kept-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { GOOD, removeFolder, rowfold, scratchFolder, writePattern } from '../commands/run-rowfold.ts';
import {
  onItsSide,
  photograph,
  photographLines,
  savePhotographs,
  TELLTALES,
  withPlace,
} from './take-photographs.ts';

const top = scratchFolder();
afterAll(() => removeFolder(top));

const STORE = path.join(PROJECT_FOLDER, '.cache/pictures');

function filesOf(name: string): Map<string, Buffer> {
  const folder = path.join(top, name);
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  return new Map(
    names
      .filter((file) => statSync(path.join(folder, file)).isFile())
      .map((file) => [file, readFileSync(path.join(folder, file))] as const),
  );
}

let site: Map<string, Buffer>;
const pictures = () => [...site].filter(([file]) => /^grey-square\/.*\.(?:jpg|webp)$/.test(file));

beforeAll(async () => {
  const folder = path.join(top, 'patterns/grey-square');
  const lines = photographLines({
    'cover.jpg': 'shows: "The square, red over blue", by: A Friend',
    'side.jpg': 'shows: The square seen from its side',
    'edge.png': 'shows: The edge of the square, part: Square',
  });
  writePattern(top, 'grey-square', `${GOOD}${lines}`);
  savePhotographs(folder, {
    'cover.jpg': await withPlace(await photograph(2400, 1600)),
    'side.jpg': await onItsSide(await photograph(1500, 1000)),
    'edge.png': await photograph(1100, 800),
  });
  writeFileSync(
    path.join(top, 'patterns/site.yaml'),
    `name: Hook & Tide
line: Squares of one kind
about: "My own words.\\n\\nAnd more."
portrait: {file: me.jpg, shows: Me at the window}
links:
  - {text: My shop, to: "https://example.org/shop"}
footer: Made by hand.
colours: {accent: "#1d5b4f"}
booklets: []
`,
  );
  savePhotographs(path.join(top, 'patterns'), { 'me.jpg': await withPlace(await photograph(600, 800)) });
  const { err, code } = await rowfold(['build'], top);
  expect(err).not.toMatch(/error/);
  expect(code).toBe(0);
  site = filesOf('_site');
});

describe('the files of a photograph', () => {
  test('are three widths of WebP and one JPEG, none wider than what the camera gave', async () => {
    const found = await Promise.all(
      pictures().map(async ([file, bytes]) => {
        const { format, width, height } = await sharp(bytes).metadata();
        return `${file.replace(/-[0-9a-f]{16}-/, '-HASH-')} ${format} ${width}x${height}`;
      }),
    );
    expect(found.sort()).toEqual([
      'grey-square/grey-square-HASH-1100.webp webp 1100x800',
      'grey-square/grey-square-HASH-1500.webp webp 1500x1000',
      'grey-square/grey-square-HASH-1600.webp webp 1600x1067',
      ...['349', '320', '320']
        .map((height) => `grey-square/grey-square-HASH-480.webp webp 480x${height}`)
        .sort(),
      ...['698', '640', '640']
        .map((height) => `grey-square/grey-square-HASH-960.jpg jpeg 960x${height}`)
        .sort(),
      ...['698', '640', '640']
        .map((height) => `grey-square/grey-square-HASH-960.webp webp 960x${height}`)
        .sort(),
    ]);
  });

  test('stand upright, however the camera was held', async () => {
    for (const [file, bytes] of pictures()) {
      const { data, info } = await sharp(bytes).removeAlpha().raw().toBuffer({ resolveWithObject: true });
      const at = (y: number): number[] => [
        ...data.subarray(
          (y * info.width + (info.width >> 1)) * 3,
          (y * info.width + (info.width >> 1)) * 3 + 3,
        ),
      ];
      const [above, below] = [at(Math.round(info.height * 0.2)), at(Math.round(info.height * 0.8))];
      expect((above[0] ?? 0) > (above[2] ?? 0), `${file}: red above`).toBe(true);
      expect((below[2] ?? 0) > (below[0] ?? 0), `${file}: blue below`).toBe(true);
    }
  });

  test('tell nothing of place, day and camera, nor does anything else of the site', async () => {
    const original = readFileSync(path.join(top, 'patterns/grey-square/cover.jpg'));
    expect(TELLTALES.filter((word) => original.includes(word))).toContain('Secret Maker 3000');
    expect(TELLTALES.filter((word) => original.includes(word))).toContain('2019:03:04');
    expect((await sharp(original).metadata()).exif).toBeDefined();
    for (const [file, bytes] of site) {
      if (/\.(?:woff|ttf|js)$/.test(file)) continue;
      expect(
        TELLTALES.filter((word) => bytes.includes(word)),
        file,
      ).toEqual([]);
      // Names that the camera gave.
      if (file.endsWith('.html')) expect(bytes.includes('cover.jpg'), file).toBe(false);
    }
    for (const [file, bytes] of pictures()) {
      const { exif, xmp, iptc, icc, orientation } = await sharp(bytes).metadata();
      expect({ exif, xmp, iptc, icc, orientation }, file).toEqual({});
    }
  });

  test('are the same each time, with and without what was kept from the last', async () => {
    const builds = [];
    for (const out of ['again', 'afresh']) {
      if (out === 'afresh') forgetPictures();
      expect((await rowfold(['build', '--out', out], top)).code).toBe(0);
      builds.push(filesOf(out));
    }
    for (const built of builds) {
      expect([...built.keys()]).toEqual([...site.keys()]);
      for (const [file, bytes] of site) expect(built.get(file)?.equals(bytes), file).toBe(true);
    }
  });
});

function forgetPictures(): void {
  const hashes = new Set(pictures().map(([file]) => /-([0-9a-f]{16})-/.exec(file)?.[1] ?? 'none'));
  expect(hashes.size).toBe(3);
  const kept = readdirSync(STORE).filter((name) => hashes.has(name.slice(0, 16)));
  // Booklets of the same photographs are kept there as well.
  expect(kept.length).toBeGreaterThanOrEqual(pictures().length);
  for (const name of kept) rmSync(path.join(STORE, name));
}

describe('the pages', () => {
  const page = (file: string): string => site.get(file)?.toString('utf8') ?? '';

  test('show the cover with what it shows, and keep its place', () => {
    for (const file of ['grey-square/index.html', 'grey-square/small/index.html', 'index.html']) {
      const [image = ''] = /<img class="cover photograph"[^>]*>/.exec(page(file)) ?? [];
      expect(image, file).toContain('alt="The square, red over blue"');
      expect(image, file).toContain('width="960" height="640"');
      expect(image.includes('loading="lazy"'), file).toBe(file === 'index.html');
    }
  });

  test('set the others in a section of their own or with their part, and name who took them', () => {
    const pattern = page('grey-square/index.html');
    expect(pattern).toMatch(/id="photographs"[\s\S]*alt="The square seen from its side"/);
    expect(pattern.match(/alt="The edge of the square"/g)).toHaveLength(1);
    const size = page('grey-square/large/index.html');
    expect(size).toMatch(/part-head[\s\S]*alt="The edge of the square"/);
    expect(size).not.toContain('The square seen from its side');
    expect(size).toContain('Photographs: A Friend.');
  });
});

describe("the designer's own", () => {
  const page = (file: string): string => site.get(file)?.toString('utf8') ?? '';

  test('name is over the list and every page, her line and words on the list, her links at the foot of all', () => {
    const list = page('index.html');
    expect(list).toContain('<h1>Hook &amp; Tide</h1>');
    expect(list).toContain('<title>Hook &amp; Tide – crochet patterns</title>');
    expect(list).toContain('Squares of one kind');
    expect(list).toMatch(/<p>My own words\.<\/p>\s*<p>And more\.<\/p>/);
    expect(list).toMatch(/<img class="photograph portrait"[^>]* alt="Me at the window"/);
    for (const file of ['index.html', 'grey-square/index.html', 'grey-square/small/us/index.html']) {
      expect(page(file), file).toContain('<a href="https://example.org/shop" rel="noreferrer">My shop</a>');
      expect(page(file), file).toContain('<p>Made by hand.</p>');
      if (file !== 'index.html')
        expect(page(file), file).toMatch(/class="site-name"><a href="(?:\.\.\/)+">Hook &amp; Tide<\/a>/);
    }
  });

  test('colours are in the style sheet and on the page of a missing address', () => {
    for (const file of ['site-files/site.css', '404.html']) {
      expect(page(file), file).toContain('#1d5b4f');
      expect(page(file), file).not.toContain('#7d1f2d');
    }
  });

  test('picture lies with the files of the site, and tells nothing of the camera either', () => {
    const made = [...site].filter(([file]) => /^site-files\/.*\.(?:jpg|webp)$/.test(file));
    expect(made).toHaveLength(3);
    for (const [file, bytes] of made)
      expect(
        TELLTALES.filter((word) => bytes.includes(word)),
        file,
      ).toEqual([]);
  });

  test.each([
    ['{file: nobody.jpg, shows: Me at the window}', 'there is no file "nobody.jpg" beside this one'],
    ['{file: ../me.jpg, shows: Me at the window}', 'leads out of the folder'],
    ['{file: me.jpg, shows: me}', 'does not say what the photograph shows'],
  ])('portrait %s is told with its line, and nothing is built', async (portrait, words) => {
    const other = path.join(top, 'other');
    writePattern(other, 'grey-square', GOOD);
    savePhotographs(path.join(other, 'patterns'), { 'me.jpg': await photograph(1200, 900) });
    writeFileSync(path.join(other, 'patterns/site.yaml'), `name: Hook\nportrait: ${portrait}\n`);
    const { code, err } = await rowfold(['build'], other);
    expect(code).toBe(1);
    expect(err).toContain('site.yaml, line 2: ');
    expect(err).toContain(words);
  });
});

describe('what is kept between builds', () => {
  const store = path.join(top, 'store');

  test('is made once, and goes when no build has asked for it in two months', async () => {
    let made = 0;
    const make = async () => {
      made++;
      return Buffer.from('picture');
    };
    expect(Buffer.from(await keptFile('one', make, store)).toString()).toBe('picture');
    expect(Buffer.from(await keptFile('one', make, store)).toString()).toBe('picture');
    expect(made).toBe(1);
    const day = 24 * 60 * 60 * 1000;
    await clearKept(store, Date.now() + 50 * day);
    expect(readdirSync(store)).toEqual(['one']);
    await clearKept(store, Date.now() + 70 * day);
    expect(readdirSync(store)).toEqual([]);
  });
});
