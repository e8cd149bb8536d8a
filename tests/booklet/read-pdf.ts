/** PDF bytes -> what an independent reader (PDF.js) finds on each page: its size in points and every text with its place. */

import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

export interface ReadText {
  readonly text: string;
  /** Left end of the baseline, from the bottom left of the page, in points. */
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface ReadPage {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly texts: readonly ReadText[];
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[];
  readonly title: string;
  readonly author: string;
  readonly language: string | null;
  readonly outline: readonly string[];
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const reader = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const pdf = await reader.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const page = await pdf.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const content = await page.getTextContent();
    const texts = content.items.flatMap((item) =>
      'str' in item && item.str.trim()
        ? [
            {
              text: item.str,
              x: item.transform[4],
              y: item.transform[5],
              width: item.width,
              height: item.height,
            },
          ]
        : [],
    );
    pages.push({ widthPt: width, heightPt: height, texts });
  }
  const { info } = await pdf.getMetadata();
  const read = {
    pages,
    title: 'Title' in info ? String(info.Title) : '',
    author: 'Author' in info ? String(info.Author) : '',
    language: 'Language' in info && info.Language ? String(info.Language) : null,
    outline: ((await pdf.getOutline()) ?? []).map(({ title }) => title),
  };
  await reader.destroy();
  return read;
}

/** All the words of a page, spaces evened out: what stands broken over lines reads on. */
export function pageWords(page: ReadPage): string {
  return page.texts
    .map(({ text }) => text)
    .join(' ')
    .replace(/\s+/g, ' ');
}
