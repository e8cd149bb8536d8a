/**
 * An along on the disk and an instant -> every file that is published of it at that instant, made as a build makes them, and
 * the words in them. Style sheet, fonts and scripts, which are made without knowing of any along, are left out.
 */

import { createHash } from 'node:crypto';
import { alongFiles } from '../../src/site/along-files.ts';
import { alongsAt } from '../../src/site/along-site.ts';
import type { AlongOnDisk } from '../../src/site/read-alongs.ts';
import { runEleventy } from '../../src/site/run-eleventy.ts';
import type { SiteFile } from '../../src/site/site-file.ts';
import { sitePages } from '../../src/site/site-pages.ts';
import { USUAL_SETTINGS } from '../../src/site/site-settings.ts';
import { pageWords, readPdf } from '../booklet/read-pdf.ts';

export async function releasedFiles(
  alongs: readonly AlongOnDisk[],
  asOf: number | null,
): Promise<ReadonlyMap<string, SiteFile['content']>> {
  const { sites } = alongsAt(alongs, asOf === null ? null : () => asOf);
  const pages = await runEleventy(sitePages([], USUAL_SETTINGS, sites));
  const made = new Map(pages.map(({ file, content }) => [file, content]));
  for (const site of sites)
    for (const { file, content } of alongFiles(site, USUAL_SETTINGS)) made.set(file, await content());
  return made;
}

/** Texts of booklets already read, by what is in them: the same bytes say the same. */
const read = new Map<string, string>();

/** All that a file says: a text as it is, a booklet's words on every page, its title and its bookmarks. */
export async function saysOf(content: SiteFile['content']): Promise<string> {
  if (typeof content === 'string') return content;
  if (Buffer.from(content).toString('latin1', 0, 5) !== '%PDF-') return Buffer.from(content).toString('utf8');
  const hash = createHash('sha256').update(content).digest('hex');
  const known = read.get(hash);
  if (known !== undefined) return known;
  const text = await pdfText(content);
  read.set(hash, text);
  return text;
}

async function pdfText(content: Uint8Array): Promise<string> {
  const { pages, title, author, outline } = await readPdf(content);
  return [title, author, ...outline, ...pages.map(pageWords)].join('\n');
}

/** Words of three letters and more, in small letters. */
export function wordsIn(text: string): ReadonlySet<string> {
  return new Set(text.toLowerCase().match(/\p{L}{3,}/gu) ?? []);
}

/** Numbers of two digits and more, and every number with the word behind it: `48`, `48 dc`. */
export function numbersIn(text: string): ReadonlySet<string> {
  const alone = text.match(/(?<![\d.])\d{2,}(?![\d.]*\d)/g) ?? [];
  const named = [...text.matchAll(/(?<![\d.])(\d+)\s+([a-z]\S*[a-z\d])/g)].map(
    ([, n, word]) => `${n} ${word}`,
  );
  return new Set([...alone, ...named]);
}

/** What a reader sees of a page or a picture, and what a page's script is given: no addresses, no lines of a drawing. */
export function shownOf(says: string, file: string): string {
  if (!/\.(?:html|svg|js)$/.test(file)) return says;
  const given = [
    ...says.matchAll(/data-figures="([^"]*)"|alt="([^"]*)"|content="([^"]*)"|aria-label="([^"]*)"/g),
  ];
  const attributes = given.map((found) => found.slice(1).join(' ')).join('\n');
  return `${says.replace(/<style[\s\S]*?<\/style>/g, '').replace(/<[^>]*>/g, ' ')}\n${attributes}`;
}
