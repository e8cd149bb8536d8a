/**
 * What someone who does not see the pages is told: the conditions of PDF/UA-1 (ISO 14289-1) that a program can hold, read
 * back by PDF.js and poppler. No validator of the standard is at hand; what needs a person is looked at by one.
 */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { printBooklet } from '../../src/print-booklet.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { readPdf } from './read-pdf.ts';
import { elementsIn, type ReadStructure, readStructure, spoken } from './read-structure.ts';

const fonts = readFontFiles();
const collection = compilePatterns(
  await readPatterns(['patterns', 'tests/booklet/large'].map((folder) => path.join(PROJECT_FOLDER, folder))),
);
const folder = mkdtempSync(path.join(tmpdir(), 'tagged-'));
afterAll(() => rmSync(folder, { recursive: true }));

const CASES = collection.flatMap(({ compiled }) => {
  const [size] = compiled.sizes;
  if (size === undefined) return [];
  return (['flat', 'large print'] as const).flatMap((form) =>
    ([size, 'all'] as const).map((sizes) => ({
      compiled,
      sizes,
      form,
      name: `${compiled.slug}, ${sizes === 'all' ? 'all sizes' : size.size.name}, ${form}`,
    })),
  );
});

describe.each(CASES)('$name', ({ compiled, sizes, form }) => {
  const file = path.join(folder, `${compiled.slug}-${sizes === 'all' ? 'all' : 'one'}-${form}.pdf`);
  let read: ReadStructure;
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await printBooklet(compiled, sizes, { dialect: 'us', paper: 'A4', form }, fonts);
    writeFileSync(file, bytes);
    read = await readStructure(bytes);
  });

  test('says that it is tagged, shows its title, and names the standard it keeps to', async () => {
    expect(read).toMatchObject({ marked: true, displaysTitle: true, accessiblePart: '1' });
    expect(read.metadataTitle).toBe((await readPdf(bytes)).title);
  });

  test('every text is in the structure, but running heads, page numbers, numbers to tick and heads said before', () => {
    const inside = read.pages.map(spoken);
    expect(inside.join('').length).toBeGreaterThan(400);
    read.artifacts.forEach((texts, index) => {
      for (const text of texts) {
        const running = index > 0 || read.pages.length === 1;
        const tick = /^\d+$/.test(text.trim());
        const said = inside.join(' ').includes(text.trim());
        const foot = /^(\d+ of \d+|Version .*|Size .*|All sizes.*|US terms.*)$/.test(text.trim());
        expect(tick || said || (running && foot), text).toBe(true);
      }
    });
  });

  test('headings go down one step at a time, and the title is the only one of the first', () => {
    const levels = read.pages
      .flatMap(elementsIn)
      .filter(({ role }) => /^H\d$/.test(role))
      .map(({ role }) => Number(role.slice(1)));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.slice(1).forEach((level, index) => {
      expect(level - (levels[index] ?? 0)).toBeLessThanOrEqual(1);
    });
  });

  test('every figure says what it shows', () => {
    const figures = read.pages.flatMap(elementsIn).filter(({ role }) => role === 'Figure');
    expect(figures.length).toBeGreaterThan(0);
    for (const { alternative } of figures) expect(alternative?.trim().length ?? 0).toBeGreaterThan(8);
  });

  test('lists hold items of a label and a body, tables rows of cells', () => {
    const within = { L: ['LI'], LI: ['Lbl', 'LBody'], Table: ['TR'], TR: ['TH', 'TD'] };
    for (const element of read.pages.flatMap(elementsIn)) {
      const may = Object.entries(within).find(([role]) => role === element.role)?.[1];
      if (may === undefined) continue;
      for (const child of element.children)
        expect(may).toContain(typeof child === 'string' ? `text "${child}"` : child.role);
    }
  });

  test('each row is read whole and in its turn, its label before it and its count behind', () => {
    const told = read.pages.map(spoken).join(' ').replace(/\s+/g, ' ');
    const words = sizes === 'all' ? compiled.allSizes?.us : sizes.words.us;
    let from = 0;
    for (const { label, text, count } of words?.parts.flatMap(({ lines }) => lines) ?? []) {
      const line = [label, text, count]
        .filter((word) => word !== null)
        .join(' ')
        .replace(/\s+/g, ' ');
      const at = told.indexOf(line, from);
      expect(at, line).toBeGreaterThanOrEqual(0);
      from = at + line.length;
    }
  });

  test('cells that head others say which way (poppler)', () => {
    const tree = execFileSync('pdfinfo', ['-struct', file], { encoding: 'utf8' });
    const heads = tree
      .split('\n')
      .flatMap((line, index, all) => (/^\s*TH/.test(line) ? [all[index + 1] ?? ''] : []));
    for (const after of heads) expect(after).toMatch(/\/Scope \/(Column|Row)/);
    expect(heads.length > 0).toBe(/^\s*Table/m.test(tree));
  });

  test('figures, and tables on one page, say where they stand, and it is on the page (poppler)', async () => {
    const tree = execFileSync('pdfinfo', ['-struct', file], { encoding: 'utf8' }).split('\n');
    const { pages } = await readPdf(bytes);
    const widest = Math.max(...pages.map(({ widthPt }) => widthPt));
    const highest = Math.max(...pages.map(({ heightPt }) => heightPt));
    const figures = tree.flatMap((line, index) =>
      /^\s*Figure/.test(line) ? [tree.slice(index + 1, index + 4).join(' ')] : [],
    );
    expect(figures.length).toBeGreaterThan(0);
    const placed = tree.flatMap((line) => {
      const found = /\/BBox \[\s*([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+)\s*\]/.exec(line);
      return found === null ? [] : [found.slice(1).map(Number)];
    });
    for (const after of figures) expect(after).toContain('/BBox');
    for (const [left = -1, bottom = -1, right = 1e9, top = 1e9] of placed) {
      expect(left).toBeGreaterThanOrEqual(-1);
      expect(bottom).toBeGreaterThanOrEqual(-1);
      expect(right).toBeLessThanOrEqual(widest + 1);
      expect(top).toBeLessThanOrEqual(highest + 1);
      expect(right).toBeGreaterThan(left);
      expect(top).toBeGreaterThan(bottom);
    }
  });

  test('the place of a table is where its texts stand', async () => {
    const tree = execFileSync('pdfinfo', ['-struct', file], { encoding: 'utf8' }).split('\n');
    const at = tree.findIndex((line) => /^\s*Table/.test(line));
    if (at < 0) return;
    const found = /\/BBox \[\s*([-\d.]+) ([-\d.]+) ([-\d.]+) ([-\d.]+)/.exec(
      tree.slice(at, at + 4).join(' '),
    );
    const [left = 0, bottom = 0, right = 0, top = 0] = found?.slice(1).map(Number) ?? [];
    const [head] = read.pages
      .flatMap(elementsIn)
      .filter(({ role }) => role === 'TH')
      .flatMap(({ children }) => children);
    const text = (await readPdf(bytes)).pages
      .flatMap(({ texts }) => texts)
      .find((each) => each.text.trim() === String(head).trim());
    expect(text?.x).toBeGreaterThanOrEqual(left - 1);
    expect(text?.x).toBeLessThanOrEqual(right);
    expect(text?.y).toBeGreaterThanOrEqual(bottom - 1);
    expect(text?.y).toBeLessThanOrEqual(top + 1);
  });

  test('qpdf finds nothing wrong, and every font is embedded and maps to characters', () => {
    expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
      'No syntax or stream encoding errors',
    );
    const [, , ...lines] = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n');
    for (const line of lines) expect(line).toMatch(/\byes yes yes\b/);
  });
});

test('a folded booklet has no structure and claims none', async () => {
  const { compiled } = CASES[0] ?? {};
  const [size] = compiled?.sizes ?? [];
  if (compiled === undefined || size === undefined) throw new Error('no pattern');
  const bytes = await printBooklet(compiled, size, { dialect: 'us', paper: 'A4', form: 'folded' }, fonts);
  expect(await readStructure(bytes)).toMatchObject({ marked: false, accessiblePart: null });
});

test('a title with signs that XML keeps for itself stands in the metadata as it is written', async () => {
  const { compiled } = CASES[0] ?? {};
  const [size] = compiled?.sizes ?? [];
  if (!compiled?.pattern || size === undefined) throw new Error('no pattern');
  const pattern = { ...compiled.pattern, title: 'Salt & Pepper <square>' };
  const choice = { dialect: 'us', paper: 'A4' } as const;
  const bytes = await printBooklet({ ...compiled, pattern }, size, choice, fonts);
  const { metadataTitle } = await readStructure(bytes);
  expect(metadataTitle).toContain('Salt & Pepper <square>');
  expect((await readPdf(bytes)).title).toContain('Salt & Pepper <square>');
});
