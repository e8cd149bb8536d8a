/** The folders of patterns and alongs -> the pattern files that can lie on the desk, read and written for their designer. */

import { createHash } from 'node:crypto';
import { mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { CompiledPattern } from '../compiled.ts';
import { fragment } from '../site/addresses.ts';
import { compilePatterns } from '../site/compile-patterns.ts';
import { MOST_BYTES } from '../site/disk-faults.ts';
import { looksOf } from '../site/look-at-photographs.ts';
import { alongFolders } from '../site/read-alongs.ts';
import { PATTERN_FILE, patternPaths, type ReadPattern, readPatterns } from '../site/read-patterns.ts';

export interface PatternFolders {
  readonly patterns: string;
  readonly alongs: string;
}

/** Patterns first, in the order of their folders, then the squares of alongs. */
export async function patternFiles({ patterns, alongs }: PatternFolders): Promise<readonly string[]> {
  return patternPaths([patterns, ...(await alongFolders(alongs))]);
}

/** Null where the file is gone. */
export async function readOne(file: string): Promise<ReadPattern | null> {
  const [one] = await readPatterns([file]);
  return one === undefined || (one.kind === 'unread' && one.fault.code === 'path/missing') ? null : one;
}

/** As files are called in the choice of one; read again only when they are changed. */
export class Titles {
  private readonly known = new Map<string, { readonly when: string; readonly title: string }>();

  async of(file: string): Promise<string> {
    const there = await stat(file).catch(() => null);
    const when = there === null || there.size > MOST_BYTES ? 'unread' : `${there.size} ${there.mtimeMs}`;
    const known = this.known.get(file);
    if (known?.when === when) return known.title;
    const text = when === 'unread' ? '' : await readFile(file, 'utf8').catch(() => '');
    const title = titleIn(text) ?? path.basename(path.dirname(path.resolve(file)));
    this.known.set(file, { when, title });
    return title;
  }
}

/** As it stands on its own line: a choice of files need not wait for every pattern to be worked. */
export function titleIn(text: string): string | null {
  const said = /^title:[ \t]*(.+?)[ \t]*\r?$/m.exec(text)?.[1];
  const plain = said?.replace(/\s+#.*$/, '').replace(/^(["'])(.*)\1$/, '$2');
  return plain === undefined || plain === '' ? null : plain;
}

/** Stands for a text: the same for the same text. */
export function stampOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 22);
}

/** Patterns as they were last worked, so that one that did not change is not worked again. */
export class WorkedPatterns {
  private readonly worked = new Map<string, { readonly by: string; readonly compiled: CompiledPattern }>();

  /** `text` may be what is being written, and not be in the file yet. */
  async of(one: ReadPattern, text?: string): Promise<CompiledPattern> {
    if (one.kind === 'unread' || text === undefined || text === one.source.text) return this.compiled(one);
    const source = { ...one.source, text };
    return this.compiled({ ...one, source, looks: await looksOf(source) });
  }

  private compiled(one: ReadPattern): CompiledPattern {
    const file = one.kind === 'read' ? one.source.file : one.file;
    const by =
      one.kind === 'read' ? JSON.stringify([one.source.text, [...(one.looks ?? [])]]) : one.fault.code;
    const known = this.worked.get(file);
    if (known?.by === by) return known.compiled;
    const [made] = compilePatterns([one]);
    if (made === undefined) throw new Error(`${file} was not compiled`);
    this.worked.delete(file);
    this.worked.set(file, { by, compiled: made.compiled });
    // A fabric is large: those of the last few files are enough.
    for (const oldest of [...this.worked.keys()].slice(0, -MOST_WORKED)) this.worked.delete(oldest);
    return made.compiled;
  }
}

const MOST_WORKED = 4;

export type Saved =
  | { readonly kind: 'saved'; readonly stamp: string }
  /** The file holds something else than what was last seen of it. */
  | { readonly kind: 'changed' };

/** Writes only over the text that `stamp` stands for. Lines end as they did in the file. */
export async function savePattern(one: ReadPattern, text: string, stamp: string): Promise<Saved> {
  if (one.kind === 'unread' || stampOf(one.source.text) !== stamp) return { kind: 'changed' };
  const before = one.source.text;
  const lines = text.replace(/\r\n?/g, '\n');
  const ended = /\r\n/.test(before) ? lines.replaceAll('\n', '\r\n') : lines;
  await writeFile(one.source.file, ended);
  return { kind: 'saved', stamp: stampOf(ended) };
}

/** A new pattern in a folder of its own; null where there is one already, which is left as it is. */
export async function keepNewPattern(patterns: string, name: string, text: string): Promise<string | null> {
  if (name === '' || name !== fragment(name)) throw new Error(`${name} is no name of a folder`);
  const folder = path.join(patterns, name);
  const file = path.join(folder, PATTERN_FILE);
  await mkdir(folder, { recursive: true });
  try {
    await writeFile(file, text, { flag: 'wx' });
  } catch (fault) {
    if (!(fault instanceof Error && 'code' in fault && fault.code === 'EEXIST')) throw fault;
    return null;
  }
  return file.split(path.sep).join('/');
}
