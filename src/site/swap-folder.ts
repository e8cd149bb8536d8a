/** Files of a finished site -> the published folder, changed in one move so that no half-made site is ever there. */

import { existsSync, readdirSync, renameSync } from 'node:fs';
import { copyFile, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { SiteFile } from './site-file.ts';

/** Marks a folder as one that the next build may replace whole. */
const MARK = 'made-by-rowfold.txt';
const MARK_TEXT =
  'This folder is made by "rowfold build", which replaces all of it each time. Keep nothing else here.\n';

const OLD = '-old';

/** Why a folder must not be replaced, or null when it may be. */
export function whyNotReplace(folder: string): string | null {
  if (!existsSync(folder)) return null;
  let names: string[];
  try {
    names = readdirSync(folder);
  } catch {
    return `${folder} is not a folder`;
  }
  if (names.length === 0 || names.includes(MARK)) return null;
  return `${folder} holds files that rowfold did not make, and a build would replace them`;
}

/** A new folder beside the published one, on the same disk so that renaming is one step. */
export async function startFolder(published: string): Promise<string> {
  await mkdir(path.dirname(path.resolve(published)), { recursive: true });
  const folder = await mkdtemp(`${path.resolve(published)}${startedBy(process.pid)}`);
  await writeFile(path.join(folder, MARK), MARK_TEXT);
  return folder;
}

function startedBy(process: number): string {
  return `.new-${process}-`;
}

/** Takes away what a process that was ended in the middle of a build left beside the published folder. */
export async function clearStarted(published: string, process: number): Promise<void> {
  const { dir, base } = path.parse(path.resolve(published));
  if (!existsSync(dir)) return;
  const left = readdirSync(dir).filter((name) => name.startsWith(`${base}${startedBy(process)}`));
  for (const name of left) {
    // Ended between the two renames: the last good site goes back.
    if (name.endsWith(OLD) && !existsSync(published)) renameSync(path.join(dir, name), published);
    else await rm(path.join(dir, name), { recursive: true, force: true });
  }
}

export async function writeFiles(folder: string, files: readonly SiteFile[]): Promise<void> {
  const folders = new Set(files.map(({ file }) => path.dirname(path.join(folder, file))));
  for (const needed of folders) await mkdir(needed, { recursive: true });
  for (const { file, content } of files) await writeFile(path.join(folder, file), content);
}

/** The file of the published site as it is; false where it is not there. */
export async function keepFile(published: string, fresh: string, file: string): Promise<boolean> {
  const to = path.join(fresh, file);
  await mkdir(path.dirname(to), { recursive: true });
  return copyFile(path.join(published, file), to).then(
    () => true,
    () => false,
  );
}

/** Puts the new folder in the old one's place. Both renames run without a pause, so a server never finds none. */
export async function swapFolder(fresh: string, published: string): Promise<void> {
  const old = `${fresh}${OLD}`;
  const hadOld = existsSync(published);
  if (hadOld) renameSync(published, old);
  try {
    renameSync(fresh, published);
  } catch (fault) {
    if (hadOld) renameSync(old, published);
    throw fault;
  }
  await rm(old, { recursive: true, force: true });
}
