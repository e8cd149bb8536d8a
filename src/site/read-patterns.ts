/** Paths on the disk -> the pattern files they mean, each with its text or with what is wrong with the file. */

import { readdir, readFile, stat } from 'node:fs/promises';
import path from 'node:path';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { PhotographLooks } from '../pattern/photograph.ts';
import type { Source } from '../source/span.ts';
import { fragment } from './addresses.ts';
import { diskFault, MOST_BYTES } from './disk-faults.ts';
import { looksOf } from './look-at-photographs.ts';

export const PATTERN_FILE = 'pattern.yaml';

export type ReadPattern =
  | {
      readonly kind: 'read';
      readonly slug: string;
      readonly source: Source;
      readonly looks?: PhotographLooks;
    }
  | { readonly kind: 'unread'; readonly slug: string; readonly file: string; readonly fault: Diagnostic };

/** Instructions as they were pasted, rather than a pattern's file of keys. */
export function isPlainText(file: string): boolean {
  return /\.te?xt$/i.test(file);
}

/** A path may be a pattern's file, its folder, or a folder of such folders. Each file is given once. */
export async function readPatterns(paths: readonly string[]): Promise<ReadPattern[]> {
  const found = (await Promise.all(paths.map(findPattern))).flat();
  const once = new Map(found.map((entry) => [path.resolve(entry.file), entry]));
  return Promise.all([...once.values()].map(readFound));
}

/** The files alone, none of them read. */
export async function patternPaths(paths: readonly string[]): Promise<string[]> {
  const found = (await Promise.all(paths.map(findPattern))).flat();
  return [...new Set(found.flatMap(({ kind, file }) => (kind === 'found' ? [file] : [])))];
}

type Found =
  | { readonly kind: 'found'; readonly file: string }
  | { readonly kind: 'fault'; readonly file: string; readonly fault: Diagnostic };

async function findPattern(given: string): Promise<Found[]> {
  const shown = slashed(path.normalize(given)).replace(/(.)\/$/, '$1');
  const there = await stat(given).catch(() => null);
  if (there === null) return [{ kind: 'fault', file: shown, fault: diskFault('path/missing', shown) }];
  if (!there.isDirectory()) return [{ kind: 'found', file: shown }];
  const own = path.join(given, PATTERN_FILE);
  if (await isFile(own)) return [{ kind: 'found', file: slashed(own) }];
  const within = await patternsIn(given);
  if (within.some(({ kind }) => kind === 'found')) return within;
  const missing = slashed(own);
  return [{ kind: 'fault', file: missing, fault: diskFault('path/no-pattern', missing) }];
}

/** The pattern files of a folder's folders, in the order of their names; a folder without one is remarked on. */
async function patternsIn(folder: string): Promise<Found[]> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  const names = entries
    .filter((entry) => !entry.isFile() && !entry.name.startsWith('.') && entry.name !== 'node_modules')
    .map((entry) => entry.name)
    .sort();
  return Promise.all(
    names.map(async (name): Promise<Found> => {
      const own = path.join(folder, name, PATTERN_FILE);
      const file = slashed(own);
      if (await isFile(own)) return { kind: 'found', file };
      return { kind: 'fault', file, fault: diskFault('path/no-pattern', file, 'warning') };
    }),
  );
}

async function readFound(found: Found): Promise<ReadPattern> {
  const { file } = found;
  const slug = patternSlug(file);
  if (found.kind === 'fault') return { kind: 'unread', slug, file, fault: found.fault };
  const size = await stat(file).catch(() => null);
  if (size !== null && size.size > MOST_BYTES)
    return { kind: 'unread', slug, file, fault: diskFault('path/too-large', file) };
  const bytes = await readFile(file).catch(() => null);
  if (bytes === null) return { kind: 'unread', slug, file, fault: diskFault('path/unreadable', file) };
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
    const source = { file, text };
    return { kind: 'read', slug, source, looks: await looksOf(source) };
  } catch {
    return { kind: 'unread', slug, file, fault: diskFault('path/not-text', file) };
  }
}

/** The folder's name is the pattern's address; a plain text is named after its file. */
function patternSlug(file: string): string {
  if (isPlainText(file)) return fragment(path.basename(file).replace(/\.[^.]*$/, ''));
  return path.basename(path.dirname(path.resolve(file)));
}

async function isFile(file: string): Promise<boolean> {
  return (await stat(file).catch(() => null))?.isFile() ?? false;
}

function slashed(file: string): string {
  return file.split(path.sep).join('/');
}
