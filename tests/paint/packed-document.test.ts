/** A PDF packed is the same document, smaller: read by PDF.js, checked and unpacked again by qpdf. */

import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import PdfDocument from 'pdfkit';
import { afterAll, expect, test } from 'vitest';
import { openFont } from '../../src/paint/fonts.ts';
import { PackedDocument } from '../../src/paint/packed-document.ts';
import { PdfFace } from '../../src/paint/pdf-face.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { pageWords, readPdf } from '../booklet/read-pdf.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'packed-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Many small objects, and strings that hold the words objects are written with. */
function filled(document: PdfDocument, pages: number): void {
  const { text } = readFontFiles();
  document.registerFont('text', openFont(text));
  for (let page = 0; page < pages; page += 1) {
    document.addPage({ size: [200, 100], margin: 0 });
    const face = new PdfFace(document.font('text')._font, text);
    document.page.fonts[face.name] = face.reference;
    document.addContent(
      `BT /${face.name} 10 Tf 1 0 0 -1 20 20 Tm [<${face.codes(`page ${page}: endobj stream`, 10)}>] TJ ET`,
    );
    document.link(20, 20, 100, 10, `https://example.org/endstream/${page}`);
  }
}

const OPTIONS = {
  autoFirstPage: false,
  font: null,
  pdfVersion: '1.7',
  lang: 'en',
  displayTitle: true,
  info: { Title: 'A stream endobj (endstream) é', CreationDate: new Date('2026-11-24T00:00:00Z') },
} as const;

/** As the library writes it. */
function plainPdf(pages: number): Uint8Array {
  const chunks: (string | Uint8Array)[] = [];
  class PlainDocument extends PdfDocument {
    override _write(piece: string | Uint8Array): void {
      chunks.push(piece);
      super._write(piece);
    }
  }
  const document = new PlainDocument(OPTIONS);
  filled(document, pages);
  document.end();
  return Buffer.concat(
    chunks.map((piece) => (typeof piece === 'string' ? Buffer.from(`${piece}\n`, 'latin1') : piece)),
  );
}

function packedPdf(pages: number): Uint8Array {
  const document = new PackedDocument(OPTIONS);
  filled(document, pages);
  return document.packed();
}

test('the pages, words and title are the same, and the file is smaller', async () => {
  const plain = plainPdf(40);
  const packed = packedPdf(40);
  expect(packed.length).toBeLessThan(plain.length * 0.8);
  const [before, after] = [await readPdf(plain), await readPdf(packed)];
  expect(after).toEqual(before);
  expect(after.pages.map(pageWords)).toEqual(before.pages.map((_, page) => `page ${page}: endobj stream`));
});

test('more objects than go into one stream are spread over several', () => {
  const packed = packedPdf(400);
  const file = path.join(folder, 'many.pdf');
  writeFileSync(file, packed);
  expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain(
    'No syntax or stream encoding errors',
  );
  const opened = path.join(folder, 'opened.pdf');
  execFileSync('qpdf', ['--object-streams=disable', '--stream-data=uncompress', file, opened]);
  expect(readFileSync(opened, 'latin1').match(/\/Type \/Page\b/g)).toHaveLength(400);
  expect(packed).toEqual(packedPdf(400));
});

test('a document with something unfinished in it is refused, not half written', () => {
  const document = new PackedDocument(OPTIONS);
  filled(document, 1);
  document.ref({ Type: 'Left' });
  expect(() => document.packed()).toThrow(/never finished/);
});
