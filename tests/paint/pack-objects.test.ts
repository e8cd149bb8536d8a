/** A PDF packed is the same document, smaller: read by PDF.js, checked and unpacked again by qpdf. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import PdfDocument from 'pdfkit';
import { afterAll, expect, test } from 'vitest';
import { openFont } from '../../src/paint/fonts.ts';
import { packObjects } from '../../src/paint/pack-objects.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { pageWords, readPdf } from '../booklet/read-pdf.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'packed-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Many small objects, and strings that hold the words objects are written with. */
function plainPdf(pages: number): Promise<Uint8Array> {
  const document = new PdfDocument({
    autoFirstPage: false,
    font: null,
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    info: { Title: 'A stream endobj (endstream)', CreationDate: new Date('2026-11-24T00:00:00Z') },
  });
  const chunks: Uint8Array[] = [];
  const done = new Promise<Uint8Array>((resolve) => {
    document.on('data', (bytes) => chunks.push(bytes));
    document.on('end', () => resolve(Buffer.concat(chunks)));
  });
  document.registerFont('text', openFont(readFontFiles().text));
  for (let page = 0; page < pages; page += 1) {
    document.addPage({ size: [200, 100], margin: 0 });
    document.font('text').fontSize(10);
    document.text(`page ${page}: endobj stream`, 20, 20, { lineBreak: false, baseline: 'alphabetic' });
    document.link(20, 20, 100, 10, `https://example.org/endstream/${page}`);
  }
  document.end();
  return done;
}

test('the pages, words and title are the same, and the file is smaller', async () => {
  const plain = await plainPdf(40);
  const packed = packObjects(plain);
  expect(packed.length).toBeLessThan(plain.length * 0.8);
  const [before, after] = [await readPdf(plain), await readPdf(packed)];
  expect(after).toEqual(before);
  expect(after.pages.map(pageWords)).toEqual(before.pages.map((_, page) => `page ${page}: endobj stream`));
});

test('more objects than go into one stream are spread over several', async () => {
  const packed = packObjects(await plainPdf(400));
  const file = path.join(folder, 'many.pdf');
  writeFileSync(file, packed);
  expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
    'No syntax or stream encoding errors',
  );
  const opened = path.join(folder, 'opened.pdf');
  execFileSync('qpdf', ['--object-streams=disable', '--stream-data=uncompress', file, opened]);
  expect(readFileSync(opened, 'latin1').match(/\/Type \/Page\b/g)).toHaveLength(400);
  expect(packed.toString()).toBe(packObjects(await plainPdf(400)).toString());
});

test('what is no such file is refused, not guessed at', () => {
  expect(() => packObjects(new TextEncoder().encode('%PDF-1.7\nnothing'))).toThrow(/table of places/);
});
