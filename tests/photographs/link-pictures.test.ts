/** The pictures shown where a link is passed on: of the right size, the same everywhere, and before a week's hour without it. */

import { cpSync, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { outlineText } from '../../src/paint/outline-text.ts';
import { paintSvg } from '../../src/paint/svg.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import { boundsOf } from '../../src/scene/bounds.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';
import { type AlongSite, alongsAt, squaresOut } from '../../src/site/along-site.ts';
import { coverOf } from '../../src/site/cover-picture.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { linkPictureFile, linkPictureScene, linkPictures } from '../../src/site/link-pictures.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { type AlongOnDisk, readAlongs } from '../../src/site/read-alongs.ts';
import { USUAL_SETTINGS } from '../../src/site/site-settings.ts';
import { GOOD, removeFolder, rowfold, scratchFolder, writePattern } from '../commands/run-rowfold.ts';
import { photograph, photographLines, savePhotographs, TELLTALES, withPlace } from './take-photographs.ts';

const top = scratchFolder();
afterAll(() => removeFolder(top));

const fonts = readFontFiles();

function textsIn(shapes: readonly Shape[]): Extract<Shape, { kind: 'text' }>[] {
  return shapes.flatMap((shape) =>
    shape.kind === 'text' ? [shape] : 'shapes' in shape ? textsIn(shape.shapes) : [],
  );
}

describe('letters as outlines', () => {
  const scene = (text: string): Scene => ({
    widthMm: 400,
    heightMm: 100,
    title: 't',
    alternative: 'a',
    symbols: {},
    shapes: [
      { kind: 'text', x: 20, y: 70, text, sizeMm: 50, face: 'title-bold', align: 'start', ink: 'ink' },
    ],
  });

  test('stand where the letters would, as wide as they are measured', () => {
    const made = outlineText(scene('Hohl'), fonts);
    expect(textsIn(made.shapes)).toEqual([]);
    const box = boundsOf(made.shapes, {});
    if (box === null) throw new Error('nothing is drawn');
    const width = textRuler(fonts).measureText('Hohl', 'title-bold', 50);
    // Letters have a little room to their left and right.
    expect(box.left).toBeGreaterThan(20);
    expect(box.right).toBeLessThan(20 + width);
    expect(box.right - box.left).toBeGreaterThan(width * 0.93);
    // Capitals stand on the line and are some two thirds of the size high.
    expect(box.bottom).toBeGreaterThan(69.5);
    expect(box.bottom).toBeLessThan(72);
    expect(70 - box.top).toBeGreaterThan(30);
    expect(70 - box.top).toBeLessThan(42);
  });

  test('need no font to be painted', () => {
    expect(paintSvg(outlineText(scene('Hohl'), fonts), { idPrefix: 'x' })).not.toMatch(/<text|font-family/);
    expect(paintSvg(scene('Hohl'), { idPrefix: 'x' })).toContain('<text');
  });
});

const ADDRESS = 'https://example.org/crochet/';

describe('a site whose address is known', () => {
  let pages: Map<string, string>;
  const folder = () => path.join(top, '_site');
  beforeAll(async () => {
    const lines = photographLines({ 'cover.jpg': 'shows: "The square, red over blue"' });
    writePattern(top, 'grey-square', `${GOOD}${lines}`);
    writePattern(top, 'plain-square', GOOD.replace('Grey Square', 'A “Plain” & <Simple> Square'));
    savePhotographs(path.join(top, 'patterns/grey-square'), {
      'cover.jpg': await withPlace(await photograph(2400, 1600)),
    });
    writeFileSync(
      path.join(top, 'patterns/site.yaml'),
      `address: ${ADDRESS}\nname: Hook & Tide\nbooklets: []\n`,
    );
    expect((await rowfold(['build'], top)).code).toBe(0);
    pages = new Map(
      readdirSync(folder(), { recursive: true, encoding: 'utf8' })
        .filter((file) => file.endsWith('index.html'))
        .map((file) => [file, readFileSync(path.join(folder(), file), 'utf8')]),
    );
  });

  const property = (html: string, name: string): string | undefined =>
    new RegExp(`<meta property="og:${name}" content="([^"]*)">`).exec(html)?.[1];

  test('names on every page a picture that is there, 1200 by 630 dots, and says what it shows', async () => {
    expect(pages.size).toBeGreaterThan(20);
    const seen = new Set<string>();
    for (const [file, html] of pages) {
      const address = property(html, 'image') ?? '';
      expect(address.startsWith(ADDRESS), file).toBe(true);
      expect(property(html, 'image:alt')?.length, file).toBeGreaterThan(10);
      expect(property(html, 'url'), file).toMatch(/^https:\/\/example\.org\/crochet\//);
      expect(property(html, 'site_name'), file).toBe('Hook &amp; Tide');
      seen.add(address.slice(ADDRESS.length));
    }
    expect([...seen].sort()).toEqual([
      'grey-square/grey-square-link.png',
      'plain-square/plain-square-link.png',
      'site-files/link.png',
    ]);
    for (const file of seen) {
      const bytes = readFileSync(path.join(folder(), file));
      expect(await sharp(bytes).metadata()).toMatchObject({ format: 'png', width: 1200, height: 630 });
      expect(bytes.length, file).toBeLessThan(400_000);
      expect(
        TELLTALES.filter((word) => bytes.includes(word)),
        file,
      ).toEqual([]);
    }
  });

  test('shows the photograph where there is one, and says so', async () => {
    const html = pages.get('grey-square/small/index.html') ?? '';
    expect(property(html, 'image:alt')).toBe('Grey Square: The square, red over blue');
    const { data } = await sharp(path.join(folder(), 'grey-square/grey-square-link.png'))
      .removeAlpha()
      .extract({ left: 300, top: 100, width: 1, height: 1 })
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect((data[0] ?? 0) > (data[2] ?? 0) + 50).toBe(true);
  });

  test('gives the same bytes from two builds', async () => {
    expect((await rowfold(['build', '--out', 'again'], top)).code).toBe(0);
    for (const file of ['site-files/link.png', 'grey-square/grey-square-link.png'])
      expect(
        readFileSync(path.join(top, 'again', file)).equals(readFileSync(path.join(folder(), file))),
      ).toBe(true);
  });

  test('has none in a preview, nor where the address is not known', async () => {
    expect((await rowfold(['build', '--preview', '--out', 'preview'], top)).code).toBe(0);
    writeFileSync(path.join(top, 'patterns/site.yaml'), 'booklets: []\n');
    expect((await rowfold(['build', '--out', 'unknown'], top)).code).toBe(0);
    for (const out of ['preview', 'unknown']) {
      expect(readFileSync(path.join(top, out, 'grey-square/index.html'), 'utf8')).not.toContain('og:image');
      expect(existsSync(path.join(top, out, 'site-files/link.png'))).toBe(false);
      expect(statSync(path.join(top, out, 'grey-square')).isDirectory()).toBe(true);
    }
  });
});

test('long titles and words are set inside the picture', async () => {
  const titles = [
    'A',
    'The Very Long Title of a Blanket in Twelve Squares for the Evenings of a Whole Winter by the Sea and Then Some More of It',
    'Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft',
  ];
  for (const title of titles) {
    const settings = { ...USUAL_SETTINGS, name: title };
    const [site] = linkPictures([], [], settings);
    if (site === undefined) throw new Error('no picture');
    const scene = outlineText(await linkPictureScene(site, settings), fonts);
    const box = boundsOf(scene.shapes, {});
    expect(box?.left).toBeGreaterThanOrEqual(0);
    expect(box?.right).toBeLessThanOrEqual(1200);
    expect(box?.bottom).toBeLessThanOrEqual(630);
  }
});

describe('of an along', () => {
  let alongs: AlongOnDisk[];
  let hours: number[];
  beforeAll(async () => {
    alongs = await readAlongs(path.join(PROJECT_FOLDER, 'alongs'));
    hours = siteAt(Date.parse('2030-01-01')).released.weeks.map(({ releaseMs }) => releaseMs);
    expect(hours.length).toBeGreaterThan(3);
  });
  const siteAt = (at: number, from = alongs): AlongSite => {
    const [site] = alongsAt(from, () => at).sites;
    if (site === undefined) throw new Error('no along');
    return site;
  };
  const pictureAt = (site: AlongSite) => {
    const slug = site.released.along.slug;
    const all = linkPictures([], [site], USUAL_SETTINGS);
    return { all, own: all.find(({ folder }) => folder === slug) };
  };

  test('there are drawings and names of nothing but what is out, in the last second before each hour', async () => {
    const titles =
      alongs[0]?.worked?.weeks.map(({ squares }) => squares.map(({ pattern }) => pattern.title)) ?? [];
    for (const [week, hour] of hours.entries()) {
      const site = siteAt(hour - 1000);
      const { all, own } = pictureAt(site);
      if (own === undefined) throw new Error('no picture');
      const out = squaresOut(site);
      expect(all).toHaveLength(2 + out.length);
      const images = await own.images();
      if (images.kind !== 'drawings') throw new Error('a photograph');
      const drawings = new Set(
        out.map(({ pattern, compiled }) => {
          const [size] = compiled.sizes;
          return size === undefined ? '' : JSON.stringify(coverOf(pattern, size));
        }),
      );
      expect(images.scenes.every((scene) => drawings.has(JSON.stringify(scene)))).toBe(true);
      expect(images.scenes.length > 0).toBe(week > 0);
      const said = JSON.stringify(all.map(({ file, words }) => [file, words]));
      for (const title of titles.slice(week).flat())
        expect(said.toLowerCase(), `before week ${week + 1}`).not.toContain(title.toLowerCase());
    }
  });

  test('the bytes are the same whatever the weeks to come are', async () => {
    const copy = path.join(top, 'alongs');
    cpSync(path.join(PROJECT_FOLDER, 'alongs'), copy, { recursive: true });
    const last = alongs[0]?.worked?.weeks.at(-1)?.squares[0]?.choice.pattern ?? '';
    const file = path.join(copy, 'salt-marsh-blanket', last, 'pattern.yaml');
    const text = readFileSync(file, 'utf8');
    writeFileSync(
      file,
      text.replace(/^title: .*$/m, 'title: Another Name').replace(/hex: "#[0-9a-f]{6}"/, 'hex: "#ff00ff"'),
    );
    expect(readFileSync(file, 'utf8')).not.toBe(text);
    const changed = await readAlongs(copy);
    const at = (hours[2] ?? 0) + 1000;
    const bytes = [];
    for (const from of [alongs, changed]) {
      const { own } = pictureAt(siteAt(at, from));
      if (own === undefined) throw new Error('no picture');
      bytes.push(Buffer.from((await linkPictureFile(own, USUAL_SETTINGS)).content).toString('base64'));
    }
    expect(bytes[0]).toBe(bytes[1]);
  });
});
