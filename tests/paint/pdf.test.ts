import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { paintPdf } from '../../src/paint/pdf.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import type { Scene, Shape } from '../../src/scene/scene.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { ptFromMm } from '../../src/units.ts';
import { readPdf } from '../booklet/read-pdf.ts';
import { granny, shells } from '../chart/samples.ts';
import { onlyChart, textsOf } from '../chart/work-text.ts';

const fonts = readFontFiles();
const options = {
  title: 'Eelgrass & co',
  author: 'A. Maker',
  language: 'en-GB',
  createdAt: new Date('2026-11-24T00:00:00Z'),
  fonts,
};
const folder = mkdtempSync(path.join(tmpdir(), 'paint-'));
afterAll(() => rmSync(folder, { recursive: true }));

function saved(name: string, bytes: Uint8Array): string {
  const file = path.join(folder, name);
  writeFileSync(file, bytes);
  return file;
}

/** The file with its streams opened, as text. */
function opened(name: string, bytes: Uint8Array): string {
  const out = path.join(folder, `${name}.open.pdf`);
  execFileSync('qpdf', ['--qdf', '--object-streams=disable', saved(name, bytes), out]);
  return execFileSync('cat', [out]).toString('latin1');
}

const PAGE: Scene = {
  widthMm: 100,
  heightMm: 60,
  title: 't',
  alternative: 'a',
  symbols: {},
  shapes: [
    { kind: 'text', x: 10, y: 20, text: 'Row 1', sizeMm: 4, face: 'text', align: 'start', ink: 'ink' },
    {
      kind: 'text',
      x: 90,
      y: 30,
      text: 'anticlockwise',
      sizeMm: 4,
      face: 'title-bold',
      align: 'end',
      ink: 'second',
    },
    {
      kind: 'group',
      transform: [2, 0, 0, 2, 20, 10],
      shapes: [
        {
          kind: 'text',
          x: 15,
          y: 15,
          text: 'centre',
          sizeMm: 2,
          face: 'text-italic',
          align: 'middle',
          ink: 'faint',
        },
      ],
    },
    {
      kind: 'link',
      href: 'https://example.org/',
      shapes: [{ kind: 'circle', x: 50, y: 50, r: 3, stroke: null, fill: 'second' }],
    },
  ],
};

describe('scenes painted as PDF', () => {
  test('a page is as large as its scene, and its texts stand where the scene says', async () => {
    const { pages, title, author, language } = await readPdf(
      await paintPdf([PAGE, { ...PAGE, widthMm: 60 }], options),
    );
    expect({ title, author, language }).toEqual({
      title: 'Eelgrass & co',
      author: 'A. Maker',
      language: 'en-GB',
    });
    expect(pages.map(({ widthPt }) => widthPt)).toEqual([
      expect.closeTo(ptFromMm(100), 1),
      expect.closeTo(ptFromMm(60), 1),
    ]);
    const [start, end, middle] = pages[0]?.texts ?? [];
    const ruler = textRuler(fonts);
    expect(start).toMatchObject({
      text: 'Row 1',
      x: expect.closeTo(ptFromMm(10), 1),
      y: expect.closeTo(ptFromMm(40), 1),
    });
    const endLeft = 90 - ruler.measureText('anticlockwise', 'title-bold', 4);
    expect(end).toMatchObject({
      text: 'anticlockwise',
      x: expect.closeTo(ptFromMm(endLeft), 1),
      y: expect.closeTo(ptFromMm(30), 1),
    });
    const middleLeft = 20 + 2 * (15 - ruler.measureText('centre', 'text-italic', 2) / 2);
    expect(middle).toMatchObject({
      text: 'centre',
      x: expect.closeTo(ptFromMm(middleLeft), 1),
      y: expect.closeTo(ptFromMm(20), 1),
    });
  });

  test('charts are sound files with all their words, by two independent readers', async () => {
    const scene = onlyChart(shells());
    const bytes = await paintPdf([scene], options);
    expect(execFileSync('qpdf', ['--check', saved('shells.pdf', bytes)]).toString()).toContain(
      'No syntax or stream encoding errors found',
    );
    const { pages } = await readPdf(bytes);
    const words = (pages[0]?.texts ?? []).map(({ text }) => text);
    expect(words.sort()).toEqual(textsOf(scene).sort());
  });

  test('painted twice it is the same file, byte for byte', async () => {
    const scene = onlyChart(granny());
    const [one, two] = [await paintPdf([scene], options), await paintPdf([scene], options)];
    expect(Buffer.from(one).equals(Buffer.from(two))).toBe(true);
    const later = await paintPdf([scene], { ...options, createdAt: new Date('2027-01-01T00:00:00Z') });
    expect(Buffer.from(one).equals(Buffer.from(later))).toBe(false);
  });

  test('a chart of two hundred thousand marks is painted as one of two', async () => {
    const dot: Shape = { kind: 'circle', x: 5, y: 5, r: 1, stroke: null, fill: 'ink' };
    const chart = { ...PAGE, shapes: new Array<Shape>(200_000).fill(dot) };
    expect((await readPdf(await paintPdf([chart], options))).pages).toHaveLength(1);
  });

  test('a symbol is defined once, however often and on however many pages it is used', async () => {
    const scene = onlyChart(granny());
    const text = opened('granny', await paintPdf([scene, scene], options));
    const used = new Set(
      scene.shapes.flatMap((shape) => JSON.stringify(shape).match(/"symbol":"[^"]*"/g) ?? []),
    );
    expect(text.match(/\/Subtype \/Form/g)).toHaveLength(used.size);
    const uses = JSON.stringify(scene.shapes).match(/"symbol":/g)?.length ?? 0;
    expect(text.match(/\/Symbol\d+ Do/g)).toHaveLength(2 * uses);
    expect(text).not.toContain('/Subtype /Image');
  });

  test('every font is embedded, and none of the built-in ones is named', async () => {
    const text = opened('fonts', await paintPdf([PAGE], options));
    const named = text.match(/\/Type \/FontDescriptor/g)?.length ?? 0;
    expect(named).toBe(3);
    expect(text.match(/\/FontFile\d? /g)).toHaveLength(named);
    expect(text).not.toContain('Helvetica');
  });

  test('a link covers what is drawn inside it', async () => {
    const text = opened('link', await paintPdf([PAGE], options));
    const rect = /\/Rect \[\s*([\d.]+)\s+([\d.]+)\s+([\d.]+)\s+([\d.]+)\s*\]/.exec(text);
    const [left = 0, low = 0, right = 0, high = 0] = (rect ?? []).slice(1).map(Number);
    expect([Math.min(left, right), Math.max(left, right)]).toEqual([
      expect.closeTo(ptFromMm(47), 1),
      expect.closeTo(ptFromMm(53), 1),
    ]);
    expect([Math.min(low, high), Math.max(low, high)]).toEqual([
      expect.closeTo(ptFromMm(7), 1),
      expect.closeTo(ptFromMm(13), 1),
    ]);
    expect(text).toContain('https://example.org/');
  });

  test('bookmarks lead to sections, and to parts inside them', async () => {
    const outline = [
      { title: 'Materials', level: 1, page: 0 },
      { title: 'Instructions', level: 1, page: 0 },
      { title: 'Square', level: 2, page: 1 },
    ] as const;
    const { outline: sections } = await readPdf(await paintPdf([PAGE, PAGE], { ...options, outline }));
    expect(sections).toEqual(['Materials', 'Instructions']);
    expect(opened('outline', await paintPdf([PAGE, PAGE], { ...options, outline }))).toContain('(Square)');
  });

  test('a symbol with words in it is refused', async () => {
    const words = {
      kind: 'text',
      x: 0,
      y: 0,
      text: 'A',
      sizeMm: 3,
      face: 'text',
      align: 'start',
      ink: 'ink',
    } as const;
    const scene: Scene = {
      ...PAGE,
      symbols: { a: [words] },
      shapes: [{ kind: 'use', symbol: 'a', transform: [1, 0, 0, 1, 5, 5], ink: 'ink' }],
    };
    await expect(paintPdf([scene], options)).rejects.toThrow('A symbol cannot hold a text.');
  });
});
