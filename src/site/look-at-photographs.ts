/** A pattern's file in, what stands on the disk under the names of its photographs out: measured, and read to its end once. */

import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { open, readdir, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import { MOST_MEGABYTES, MOST_MEGAPIXELS } from '../diagnostics/catalogue/photographs.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { leadsOut, NOBODY_LOOKED, type PhotographLook, type PhotographLooks } from '../pattern/photograph.ts';
import { readPattern } from '../pattern/read-pattern.ts';
import type { Source } from '../source/span.ts';
import { keptFile } from './kept-files.ts';
import { loadSharp, OPENED } from './load-sharp.ts';

/** The library that reads pictures is not even loaded for a pattern that names none. */
export async function looksOf(source: Source): Promise<PhotographLooks> {
  if (!/^["']?photographs["']?\s*:/m.test(source.text)) return NOBODY_LOOKED;
  const names = readPattern(source, '').pattern?.photographs.map(({ file }) => file) ?? [];
  return lookAtPhotographs(names, path.dirname(source.file));
}

export async function lookAtPhotographs(names: readonly string[], folder: string): Promise<PhotographLooks> {
  const looks = new Map<string, PhotographLook>();
  // One after the other: two large ones at once would take twice the memory.
  for (const name of new Set(names)) if (!leadsOut(name)) looks.set(name, await lookAtOne(name, folder));
  return looks;
}

/** Part of the names in the store: a change of what is looked for makes every look anew. */
const RECIPE = '1';

async function lookAtOne(name: string, folder: string): Promise<PhotographLook> {
  const file = path.join(folder, name);
  const there = await stat(file).catch(() => null);
  if (!there?.isFile() || !(await namedJustSo(name, folder)))
    return { kind: 'missing', near: await nearName(name, folder) };
  if (!(await liesWithin(file, folder))) return { kind: 'outside' };
  // Reading one to its end takes a quarter of a second: what was found holds as long as the file is not changed.
  const key = [RECIPE, path.resolve(file), there.size, there.mtimeMs, there.ctimeMs].join(' ');
  const unchanged = createHash('sha256').update(key).digest('hex').slice(0, 32);
  const kept = await keptFile(`${unchanged}-look.json`, async () =>
    Buffer.from(JSON.stringify(await openOne(file, there.size))),
  );
  return JSON.parse(Buffer.from(kept).toString('utf8')) as PhotographLook;
}

async function openOne(file: string, bytes: number): Promise<PhotographLook> {
  const megabytes = Math.round(bytes / 1e6);
  if (megabytes > MOST_MEGABYTES) return { kind: 'too large', megapixels: null, megabytes };
  const kind = await kindOf(file);
  if (!kind.read) return { kind: 'no picture', given: kind.called };
  const sharp = await loadSharp();
  const facts = await sharp(file, { limitInputPixels: false })
    .metadata()
    .catch(() => null);
  if (facts === null) return { kind: 'broken' };
  const { width, height } = facts.autoOrient;
  const megapixels = Math.round((width * height) / 1e6);
  if (megapixels > MOST_MEGAPIXELS) return { kind: 'too large', megapixels, megabytes };
  // Scaled down while it is read, so that it never stands in memory whole; what is broken is found out on the way.
  const whole = await sharp(file, OPENED)
    .resize(48, 48, { fit: 'inside' })
    .raw()
    .toBuffer()
    .catch(() => null);
  if (whole === null) return { kind: 'broken' };
  return { kind: 'picture', widthPx: width, heightPx: height, hash: await hashOf(file) };
}

async function hashOf(file: string): Promise<string> {
  const hash = createHash('sha256');
  for await (const chunk of createReadStream(file)) hash.update(chunk);
  return hash.digest('hex').slice(0, 16);
}

interface Kind {
  readonly called: string | null;
  readonly read: boolean;
}

/** By the first bytes, which do not lie; the end of a file's name may. */
const KINDS: readonly (Kind & { readonly begins: RegExp })[] = [
  { called: 'JPEG', read: true, begins: /^\xff\xd8\xff/ },
  { called: 'PNG', read: true, begins: /^\x89PNG\r\n/ },
  { called: 'WebP', read: true, begins: /^RIFF.{4}WEBP/s },
  { called: 'TIFF', read: true, begins: /^(?:II\*\0|MM\0\*)/ },
  { called: 'AVIF', read: true, begins: /^.{4}ftypavi[fs]/s },
  {
    called: 'a HEIC, as some phones save their photographs',
    read: false,
    begins: /^.{4}ftyp(?:hei|hev|mif|msf)/s,
  },
  { called: 'a film', read: false, begins: /^.{4}ftyp/s },
  { called: 'a GIF, which has too few colours for a photograph', read: false, begins: /^GIF8/ },
  { called: 'a PDF', read: false, begins: /^%PDF/ },
  { called: 'a drawing or a page of the web', read: false, begins: /^(?:\xef\xbb\xbf)?\s*</ },
];

async function kindOf(file: string): Promise<Kind> {
  const handle = await open(file).catch(() => null);
  if (handle === null) return { called: null, read: false };
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(32), 0, 32, 0);
    const begin = buffer.subarray(0, bytesRead).toString('latin1');
    return KINDS.find(({ begins }) => begins.test(begin)) ?? { called: null, read: false };
  } finally {
    await handle.close();
  }
}

/** Some disks find `cover.jpg` under `Cover.JPG`, and the host of the site may not. */
async function namedJustSo(name: string, folder: string): Promise<boolean> {
  return (await namesBeside(name, folder)).includes(path.basename(name));
}

async function nearName(name: string, folder: string): Promise<string | null> {
  const near = nearest(path.basename(name), await namesBeside(name, folder));
  return near === null ? null : path.join(path.dirname(name), near).split(path.sep).join('/');
}

async function namesBeside(name: string, folder: string): Promise<readonly string[]> {
  return readdir(path.dirname(path.join(folder, name))).catch(() => []);
}

async function liesWithin(file: string, folder: string): Promise<boolean> {
  const [place, top] = await Promise.all([realpath(file), realpath(folder)]);
  return place.startsWith(`${top}${path.sep}`);
}
