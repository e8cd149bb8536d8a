/** What the booklets of the demo patterns tell is what their pages tell, and no row is torn from its end. */

import { beforeAll, expect, test } from 'vitest';
import { paperPhotographs } from '../../src/site/make-pictures.ts';
import { pageWords, readPdf } from '../booklet/read-pdf.ts';
import { type DemoSite, demoSite } from './demo-site.ts';

let site: DemoSite;
beforeAll(async () => {
  site = await demoSite();
});

/** Of all patterns, whoever wrote them. */
const sizes = () => site.collection.flatMap(({ compiled }) => compiled.sizes).length;

/** Yarn lengths in the order they stand: `41 m (45 yd)`. */
function lengthsIn(words: string): string[] {
  return [...words.matchAll(/\b(\d+ m \(\d+ yd\))(?! and)/g)].map((match) => match[1] ?? '');
}

/** The words of each page of every size's booklet on A4, in its pattern's own terms. */
async function booklets(): Promise<{ folder: string; pages: string[] }[]> {
  const made = [...site.sizeFiles].filter(([file]) => /-a4\.pdf$/.test(file) && !/-u[ks]-a4/.test(file));
  return Promise.all(
    made.map(async ([file, content]) => {
      const bytes = await content();
      if (typeof bytes === 'string') throw new Error(`${file} is no PDF`);
      const { pages } = await readPdf(bytes);
      return { folder: file.slice(0, file.lastIndexOf('/')), pages: pages.map(pageWords) };
    }),
  );
}

test('a booklet asks for the same lengths of yarn as the page', async () => {
  const all = await booklets();
  expect(all.length).toBe(sizes());
  let yarns = 0;
  for (const { folder, pages } of all) {
    const page = site.pages.get(`${folder}/index.html`) ?? '';
    // What search engines read is no part of what is read here.
    const shown = page.replaceAll(/<script[^>]*>[^<]*<\/script>/g, '');
    const told = [...shown.matchAll(/about (\d+ m \(\d+ yd\))/g)].map((match) => match[1]);
    yarns += told.length;
    expect(lengthsIn(pages.join(' ')), folder).toEqual(told);
  }
  expect(yarns).toBeGreaterThan(0);
});

test('no page of a booklet begins with the end of a row that stands on the page before', async () => {
  for (const { folder, pages } of await booklets())
    for (const words of pages.slice(2)) {
      const head = words.replace(/^.*?(?:US|UK) terms\s*/, '');
      expect(head, folder).not.toMatch(/^Fasten off/);
    }
});

test('no booklet is larger than 100 kB, its fonts included, and what its photographs take', async () => {
  const made = [...site.sizeFiles].filter(([file]) => file.endsWith('.pdf'));
  // On two papers.
  expect(made.length).toBe(2 * sizes());
  const pictured = new Map<string, number>();
  for (const { compiled } of site.collection) {
    if (compiled.pattern === null) continue;
    const printed = await paperPhotographs(compiled.photographs, compiled.pattern);
    pictured.set(
      compiled.slug,
      printed.reduce((sum, { jpeg }) => sum + jpeg.length, 0),
    );
  }
  for (const [file, content] of made) {
    const photographs = pictured.get(file.slice(0, file.indexOf('/'))) ?? 0;
    expect(photographs, file).toBeLessThan(150_000);
    expect((await content()).length - photographs, file).toBeLessThan(100_000);
  }
});
