/** The folders of patterns and alongs -> the pattern files that can lie on the desk, read and written for their designer. */

import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { compilePattern } from '../compile.ts';
import type { CompiledPattern } from '../compiled.ts';
import { fragment } from '../site/addresses.ts';
import { compilePatterns } from '../site/compile-patterns.ts';
import { alongFolders } from '../site/read-alongs.ts';
import { PATTERN_FILE, type ReadPattern, readPatterns } from '../site/read-patterns.ts';

export interface PatternFolders {
  readonly patterns: string;
  readonly alongs: string;
}

/** Patterns first, in the order of their folders, then the squares of alongs. */
export async function patternFiles({ patterns, alongs }: PatternFolders): Promise<readonly ReadPattern[]> {
  const found = await readPatterns([patterns, ...(await alongFolders(alongs))]);
  return found.filter((one) => one.kind === 'read' || !MISSING.has(one.fault.code));
}

const MISSING: ReadonlySet<string> = new Set(['path/missing', 'path/no-pattern']);

export function fileOf(one: ReadPattern): string {
  return one.kind === 'read' ? one.source.file : one.file;
}

/** As it stands on its own line; for the choice of a file, which need not wait for every pattern to be worked. */
export function titleIn(one: ReadPattern): string {
  const said = one.kind === 'read' ? /^title:[ \t]*(.+?)[ \t]*\r?$/m.exec(one.source.text)?.[1] : undefined;
  const plain = said?.replace(/\s+#.*$/, '').replace(/^(["'])(.*)\1$/, '$2');
  return plain === undefined || plain === '' ? one.slug : plain;
}

/** Stands for a text: the same for the same text. */
export function stampOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 22);
}

/** Patterns as they were last worked, so that one that did not change is not worked again. */
export class WorkedPatterns {
  private readonly worked = new Map<string, { text: string; compiled: CompiledPattern }>();

  /** `text` may be what is being written, and not be in the file yet. */
  of(one: ReadPattern, text?: string): CompiledPattern {
    if (one.kind === 'unread') {
      const [{ compiled } = { compiled: null }] = compilePatterns([one]);
      if (compiled === null) throw new Error(`${one.file} was not compiled`);
      return compiled;
    }
    const { file } = one.source;
    const wanted = text ?? one.source.text;
    const known = this.worked.get(file);
    if (known?.text === wanted) return known.compiled;
    const compiled = compilePattern({ file, text: wanted }, one.slug);
    // A fabric is large: those of the last few files are enough.
    this.worked.delete(file);
    this.worked.set(file, { text: wanted, compiled });
    for (const oldest of [...this.worked.keys()].slice(0, -MOST_WORKED)) this.worked.delete(oldest);
    return compiled;
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
