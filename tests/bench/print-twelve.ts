/** The booklet of twelve pages as our own PDF: laid out and painted, nothing kept from the time before but fonts and widths. */

import { layOutBooklet } from '../../src/booklet/booklet-pages.ts';
import { paintPdf } from '../../src/paint/pdf.ts';
import { rulerFor } from '../../src/print-booklet.ts';
import { readFontFiles } from '../../src/site/font-files.ts';
import { PAGES, twelvePages } from './twelve-pages.ts';

export async function printTwelve(): Promise<Uint8Array> {
  const fonts = readFontFiles();
  const { pages, outline } = layOutBooklet(twelvePages(), 'A4', rulerFor(fonts).measureText);
  if (pages.length !== PAGES) throw new Error(`The booklet has ${pages.length} pages, not ${PAGES}.`);
  return paintPdf(pages, {
    title: 'Twelve pages',
    author: null,
    language: 'en-US',
    createdAt: new Date('2026-11-24T00:00:00Z'),
    fonts,
    outline,
    tagged: true,
  });
}
