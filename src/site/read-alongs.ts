/** A folder of alongs on the disk -> every along read, its patterns compiled, its squares held against one another. */

import { readdir, readFile, realpath, stat } from 'node:fs/promises';
import path from 'node:path';
import type { Along } from '../along/along.ts';
import { ballFaults } from '../along/ball-faults.ts';
import { readAlong } from '../along/read-along.ts';
import { type WorkedAlong, workAlong } from '../along/work-along.ts';
import { pictureFaults } from '../check/photographs.ts';
import { compilePattern } from '../compile.ts';
import type { CompiledPattern } from '../compiled.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { inFileOrder } from '../diagnostics/order.ts';
import { type PhotographLooks, type SeenPhotograph, seenPhotographs } from '../pattern/photograph.ts';
import type { ToldFile } from './compile-patterns.ts';
import { diskFault, MOST_BYTES } from './disk-faults.ts';
import { lookAtPhotographs, looksOf } from './look-at-photographs.ts';
import { PATTERN_FILE } from './read-patterns.ts';

export const ALONG_FILE = 'along.yaml';

export interface AlongOnDisk {
  readonly folder: string;
  readonly file: string;
  /** Empty where the file could not be read. */
  readonly text: string;
  /** Null where the file has faults. */
  readonly worked: WorkedAlong | null;
  /** Its own, the cover's first; those of its squares stand with them. */
  readonly photographs: readonly SeenPhotograph[];
  /** Of the file, and of the along as a whole; those of a week stand with the week. */
  readonly faults: readonly Diagnostic[];
  /** Files of the patterns it names, by their real place on the disk. */
  readonly patternFiles: ReadonlyMap<string, string>;
  /** Texts of those files, to show lines of. */
  readonly patternTexts: ReadonlyMap<string, string>;
}

/** Where alongs are looked for: in the folder beside that of the patterns. */
export function alongsBeside(patterns: string): string {
  return path.join(path.dirname(path.normalize(patterns)), 'alongs');
}

/** Everything there is to tell of an along's own file, whichever weeks are out. */
export function alongFaults({ file, text, worked, faults }: AlongOnDisk): ToldFile {
  const ofWeeks = worked?.weeks.flatMap((week) => week.faults) ?? [];
  return { file, text, compiled: { diagnostics: inFileOrder([...faults, ...ofWeeks]) } };
}

/** A path may be an along's file, its folder, or a folder of such folders; a folder that is not there holds none. */
export async function readAlongs(given: string): Promise<AlongOnDisk[]> {
  const files = await alongFiles(given);
  return Promise.all(files.map(readOne));
}

/** Folders that hold an along, with its squares in folders of theirs. */
export async function alongFolders(given: string): Promise<readonly string[]> {
  return (await alongFiles(given)).map((file) => path.dirname(file));
}

async function alongFiles(given: string): Promise<string[]> {
  if (path.basename(given) === ALONG_FILE) return [given];
  const own = path.join(given, ALONG_FILE);
  if (await isFile(own)) return [own];
  const entries = await readdir(given, { withFileTypes: true }).catch(() => []);
  const names = entries
    .filter((entry) => !entry.isFile() && !entry.name.startsWith('.'))
    .map(({ name }) => name);
  const found = names.sort().map((name) => path.join(given, name, ALONG_FILE));
  const there = await Promise.all(found.map(isFile));
  return found.filter((_, i) => there[i]);
}

async function readOne(file: string): Promise<AlongOnDisk> {
  const shown = file.split(path.sep).join('/');
  const folder = path.dirname(shown);
  const nothing = { folder, worked: null, photographs: [], patternFiles: new Map(), patternTexts: new Map() };
  const text = await readText(file);
  if (typeof text !== 'string')
    return { file: shown, text: '', faults: [{ ...text, file: shown }], ...nothing };
  const slug = path.basename(path.dirname(path.resolve(file)));
  const { along, diagnostics } = readAlong({ file: shown, text }, slug);
  if (along === null) return { file: shown, text, faults: diagnostics, ...nothing };
  const read = await readPatternsOf(along, path.dirname(file));
  const worked = workAlong(along, read.compiled);
  const looks = await lookAtPhotographs(
    along.photographs.map(({ file: name }) => name),
    path.dirname(file),
  );
  return {
    folder,
    file: shown,
    text,
    worked,
    photographs: seenPhotographs(along.photographs, looks),
    faults: [...diagnostics, ...worked.faults, ...ballFaults(worked), ...photographFaults(along, looks)],
    patternFiles: read.files,
    patternTexts: read.texts,
  };
}

function photographFaults(along: Along, looks: PhotographLooks): Diagnostic[] {
  return along.photographs.flatMap((photograph, index) => {
    const at = (key: string) => ({
      file: along.source.file,
      span: along.places.get(`photographs.${index}.${key}`) ?? { start: 0, end: 1 },
    });
    return pictureFaults(photograph, looks, at('file'), at('shows'));
  });
}

async function readPatternsOf(along: Along, folder: string) {
  const compiled = new Map<string, CompiledPattern | null>();
  const files = new Map<string, string>();
  const texts = new Map<string, string>();
  const named = new Set(along.weeks.flatMap(({ choices }) => choices.map(({ pattern }) => pattern)));
  for (const name of named) {
    const file = path.join(folder, name, PATTERN_FILE);
    const shown = file.split(path.sep).join('/');
    const text = await readText(file);
    if (typeof text !== 'string') {
      compiled.set(name, null);
      continue;
    }
    files.set(name, await realpath(file).catch(() => path.resolve(file)));
    texts.set(shown, text);
    const square = path.basename(path.dirname(path.resolve(file)));
    const source = { file: shown, text };
    compiled.set(name, compilePattern(source, `${along.slug}/${square}`, await looksOf(source)));
  }
  return { compiled, files, texts };
}

/** The text, or why there is none. */
async function readText(file: string): Promise<string | Diagnostic> {
  const size = await stat(file).catch(() => null);
  if (size === null) return diskFault('path/missing', file);
  if (size.size > MOST_BYTES) return diskFault('path/too-large', file);
  const bytes = await readFile(file).catch(() => null);
  if (bytes === null) return diskFault('path/unreadable', file);
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: false }).decode(bytes);
  } catch {
    return diskFault('path/not-text', file);
  }
}

async function isFile(file: string): Promise<boolean> {
  return (await stat(file).catch(() => null))?.isFile() ?? false;
}
