import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { BookletInput } from '../../src/booklet/booklet-input.ts';
import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { SAFE_MARGIN_MM } from '../../src/booklet/page-grid.ts';
import type { PaperName } from '../../src/booklet/paper.ts';
import { paintPdf } from '../../src/paint/pdf.ts';
import { textRuler } from '../../src/paint/text-width.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { ptFromMm } from '../../src/units.ts';
import { pageWords, type ReadPage, type ReadPdf, readPdf } from './read-pdf.ts';
import { bareBooklet, chartScene, grannyBooklet, longBooklet, shellBooklet } from './sample-input.ts';

const fonts = readFontFiles();
const ruler = textRuler(fonts);
const SAMPLES = { bare: bareBooklet, granny: grannyBooklet, shell: shellBooklet, long: longBooklet } as const;
const CASES = Object.keys(SAMPLES).flatMap((name) =>
  (['A4', 'Letter'] as const).map((paper) => ({ name: name as keyof typeof SAMPLES, paper })),
);

/** ISO 216 gives A4 as 210 by 297 mm; US Letter is 8.5 by 11 in. A point is 1/72 in (ISO 32000). */
const SHEET_PT = { A4: [(210 / 25.4) * 72, (297 / 25.4) * 72], Letter: [8.5 * 72, 11 * 72] } as const;

function bookletBytes(input: BookletInput, paper: PaperName): Promise<Uint8Array> {
  const { pages, outline } = layOutBooklet(input, paper, ruler.measureText);
  return paintPdf(pages, {
    title: input.pattern.title,
    author: input.pattern.designer,
    language: 'en-US',
    createdAt: new Date('2026-11-24T00:00:00Z'),
    fonts,
    outline,
  });
}

const bytes = new Map<string, Uint8Array>();
const read = new Map<string, ReadPdf>();
const folder = mkdtempSync(path.join(tmpdir(), 'booklet-'));

function file(name: string, paper: PaperName): string {
  return path.join(folder, `${name}-${paper}.pdf`);
}

function pdfOf(name: string, paper: PaperName): ReadPdf {
  const found = read.get(`${name} ${paper}`);
  if (!found) throw new Error(`no booklet ${name} on ${paper}`);
  return found;
}

beforeAll(async () => {
  for (const { name, paper } of CASES) {
    const made = await bookletBytes(SAMPLES[name](), paper);
    bytes.set(`${name} ${paper}`, made);
    writeFileSync(file(name, paper), made);
    read.set(`${name} ${paper}`, await readPdf(made));
  }
});

afterAll(() => rmSync(folder, { recursive: true }));

/** How often a text stands in another, spaces evened out. */
function times(text: string, within: string): number {
  return within.split(text.replace(/\s+/g, ' ')).length - 1;
}

/** A chart over several sheets repeats a strip at its edges on purpose; its texts are not the row's. */
function isTextPage(page: ReadPage): boolean {
  return !/Sheet \d+ of \d+: row/.test(pageWords(page));
}

describe.each(CASES)('the $name booklet on $paper', ({ name, paper }) => {
  test('every sheet has the size of its paper, upright or turned', () => {
    const { pages } = pdfOf(name, paper);
    const [shortPt, longPt] = SHEET_PT[paper];
    expect(pages.length).toBeGreaterThan(0);
    for (const { widthPt, heightPt } of pages) {
      expect(Math.min(widthPt, heightPt)).toBeCloseTo(shortPt, 1);
      expect(Math.max(widthPt, heightPt)).toBeCloseTo(longPt, 1);
    }
  });

  test('no text comes nearer to an edge than a home printer reaches', () => {
    const least = ptFromMm(SAFE_MARGIN_MM);
    for (const page of pdfOf(name, paper).pages.filter(isTextPage)) {
      for (const { x, y, width, height, text } of page.texts) {
        expect(x, text).toBeGreaterThanOrEqual(least);
        expect(x + width, text).toBeLessThanOrEqual(page.widthPt - least);
        expect(y - height * 0.25, text).toBeGreaterThanOrEqual(least);
        expect(y + height * 0.8, text).toBeLessThanOrEqual(page.heightPt - least);
      }
    }
  });

  test('every row stands in the booklet once, its count on the page where it ends', () => {
    const pages = pdfOf(name, paper).pages.filter(isTextPage).map(pageWords);
    const all = pages.join(' ');
    const rows = SAMPLES[name]()
      .words.parts.flatMap((part) => part.lines)
      .filter((line) => line.label);
    for (const line of rows) {
      expect(times(`${line.label} `, `${all} `), line.label ?? '').toBeGreaterThanOrEqual(1);
      const ending = `${line.text.slice(-24)}${line.count ? ` ${line.count}` : ''}`;
      const holding = pages.filter((page) => page.includes(ending));
      expect(holding.length, `${line.label}: ${ending}`).toBeGreaterThanOrEqual(1);
    }
    const whole = rows.filter((line) => line.text.length < 1000);
    for (const { label, text, count } of whole) {
      const printed = [label, text, count].filter((word) => word !== null).join(' ');
      const found = pages.filter((page) => times(printed, page) === 1);
      expect(found, printed).toHaveLength(1);
    }
  });

  test('page numbers count up to the number of pages', () => {
    const { pages } = pdfOf(name, paper);
    pages.slice(1).forEach((page, index) => {
      expect(pageWords(page)).toContain(`${index + 2} of ${pages.length}`);
    });
  });

  test('title, designer, language and the sections stand in the file for a reader to find', () => {
    const { title, author, language, outline } = pdfOf(name, paper);
    const { pattern } = SAMPLES[name]();
    expect(title).toBe(pattern.title);
    expect(author).toBe(pattern.designer ?? '');
    expect(language).toBe('en-US');
    expect(outline[0]).toBe(pattern.title);
    expect(outline).toContain('Instructions');
  });

  test('qpdf finds nothing wrong with the file', () => {
    expect(execFileSync('qpdf', ['--check', file(name, paper)], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
  });

  test('every font is embedded, cut to what is used, and maps back to characters', () => {
    const [, , ...fontLines] = execFileSync('pdffonts', [file(name, paper)], { encoding: 'utf8' })
      .trim()
      .split('\n');
    expect(fontLines.length).toBeGreaterThanOrEqual(2);
    for (const line of fontLines) expect(line).toMatch(/^[A-Z]{6}\+\S+\s.*\byes yes yes\b/);
  });

  test('made twice it is the same file, byte for byte', async () => {
    const again = await bookletBytes(SAMPLES[name](), paper);
    expect(Buffer.compare(again, bytes.get(`${name} ${paper}`) ?? new Uint8Array())).toBe(0);
  });
});

describe('what a booklet holds', () => {
  test('hundreds of rows and forty sizes come out whole', () => {
    const { pages } = pdfOf('long', 'A4');
    const all = pages.map(pageWords).join(' ');
    for (const size of longBooklet().sizes) expect(all).toContain(size.name);
    expect(times('marker number', all)).toBe(
      longBooklet().words.parts[0]?.lines.filter(({ text }) => text.includes('marker number')).length,
    );
    for (let row = 322; row <= 721; row += 1)
      expect(times(` ${row} `, ` ${all} `), String(row)).toBeGreaterThanOrEqual(1);
  });

  test('the sections stand in the order makers know', () => {
    expect(pdfOf('shell', 'A4').outline).toEqual([
      'Eelgrass Square',
      'Finished size',
      'Materials',
      'Gauge',
      'Abbreviations',
      'Special stitches',
      'Notes',
      'Instructions',
      'Chart',
      'Measures',
      'Finishing',
      'For safety',
      'License',
    ]);
    expect(pdfOf('granny', 'A4').outline).toContain('Tension');
  });

  test('no heading is the last thing on a page, however the text before it runs', () => {
    const headings = [
      'Abbreviations',
      'Special stitches',
      'Notes',
      'Instructions',
      'Square',
      'Make 1 on each square.',
      'Chart',
      'Finishing',
      'For safety',
      'License',
    ];
    const base = shellBooklet();
    for (let length = 0; length < 40; length += 1) {
      const notes = Array.from({ length }, (_, index) => `Note ${index + 1}.`);
      const parts = base.words.parts.map((part) => ({
        ...part,
        lines: part.lines.slice(0, 2 + (length % 26)),
      }));
      const input = { ...base, pattern: { ...base.pattern, notes }, words: { ...base.words, parts } };
      for (const { alternative } of layOutBooklet(input, 'A4', ruler.measureText).pages) {
        expect(headings.filter((heading) => alternative.trim().endsWith(heading))).toEqual([]);
      }
    }
  });

  test('cautions follow from what the thing is for', () => {
    const words = (name: keyof typeof SAMPLES): string => pdfOf(name, 'A4').pages.map(pageWords).join(' ');
    expect(words('granny')).toContain('under 12 months');
    expect(words('shell')).not.toContain('under 12 months');
  });

  test('a chart too wide to read upright is printed on a sheet turned on its side', async () => {
    const input = {
      ...shellBooklet(),
      charts: [{ part: 'Square', scene: chartScene(90, 40, 4), folded: [] }],
    };
    const { pages } = await readPdf(await bookletBytes(input, 'A4'));
    const turned = pages.filter((page) => page.widthPt > page.heightPt);
    expect(turned).toHaveLength(1);
    expect(pageWords(turned[0] ?? { widthPt: 0, heightPt: 0, texts: [] })).toContain('double crochet (dc)');
  });

  test('the width a text is given is the width the reader measures', () => {
    for (const page of pdfOf('shell', 'A4').pages) {
      for (const { text, width } of page.texts.filter((found) => found.text.startsWith('Join B with'))) {
        const sizeMm = (10.5 / 72) * 25.4;
        expect(width).toBeCloseTo(ptFromMm(ruler.measureText(text, 'text', sizeMm)), 1);
      }
    }
  });
});
