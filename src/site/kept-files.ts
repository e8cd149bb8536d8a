/** What takes long to make -> the same out of a store on the disk when it was made before, under a name that says all it was made from. */

import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { PROJECT_FOLDER } from './project-folder.ts';

const STORE = path.join(PROJECT_FOLDER, '.cache/pictures');

/** What no build has asked for in so long is not asked for any more. */
const DAYS_KEPT = 60;
const DAY_MS = 24 * 60 * 60 * 1000;

export async function keptFile(
  name: string,
  make: () => Promise<Uint8Array>,
  store = STORE,
): Promise<Uint8Array> {
  const file = path.join(store, name);
  const kept = await readFile(file).catch(() => null);
  if (kept !== null) {
    const now = new Date();
    await utimes(file, now, now).catch(() => undefined);
    return kept;
  }
  const made = await make();
  // Two at once may make the same; whoever comes last puts the same bytes there. A full disk is no reason to stop.
  const unfinished = `${file}.${process.pid}-${unfinishedCount++}`;
  await mkdir(store, { recursive: true })
    .then(() => writeFile(unfinished, made))
    .then(() => rename(unfinished, file))
    .catch(() => rm(unfinished, { force: true }));
  return made;
}

let unfinishedCount = 0;

/** Takes out of the store what was last asked for long ago. */
export async function clearKept(store = STORE, nowMs = Date.now()): Promise<void> {
  for (const name of await readdir(store).catch(() => [])) {
    const file = path.join(store, name);
    const there = await stat(file).catch(() => null);
    if (there !== null && nowMs - there.mtimeMs > DAYS_KEPT * DAY_MS) await rm(file, { force: true });
  }
}
