/** Folders and what to do when something in them changes -> watching, until it is stopped. */

import { type FSWatcher, statSync, watch } from 'node:fs';

/** How often it is looked whether a folder came or went. */
const LOOK_AGAIN_MS = 1000;

/**
 * Acts when there has been quiet for so long after a change, and never runs twice at once: changes made meanwhile lead to
 * one more run. `first` is run at once, with changes heard while it goes on.
 */
export function watchFolders(
  folders: readonly string[],
  quietMs: number,
  act: () => Promise<void>,
  first?: () => Promise<void>,
): () => void {
  let timer: NodeJS.Timeout | null = null;
  let running = false;
  let again = false;
  const run = async (what: () => Promise<void>) => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    await what();
    while (again) {
      again = false;
      await act();
    }
    running = false;
  };
  const changed = () => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void run(act), quietMs);
  };
  const watched = new Map<string, { readonly watcher: FSWatcher; readonly place: string }>();
  const forget = (folder: string): void => {
    watched.get(folder)?.watcher.close();
    watched.delete(folder);
  };
  /** Whether one came or went. A folder of the same name in its place is another. */
  const watchThose = (): boolean => {
    let different = false;
    for (const folder of folders) {
      const there = statSync(folder, { throwIfNoEntry: false });
      const place = there === undefined ? null : `${there.ino} ${there.birthtimeMs}`;
      if (place === (watched.get(folder)?.place ?? null)) continue;
      different = true;
      forget(folder);
      if (place === null) continue;
      const watcher = watch(folder, { recursive: true }, changed);
      watcher.on('error', () => forget(folder));
      watched.set(folder, { watcher, place });
    }
    return different;
  };
  watchThose();
  // The folder of patterns may be made by the first pattern, or put away and back.
  const looking = setInterval(() => {
    if (watchThose()) changed();
  }, LOOK_AGAIN_MS);
  if (first !== undefined) void run(first);
  return () => {
    if (timer !== null) clearTimeout(timer);
    clearInterval(looking);
    for (const { watcher } of watched.values()) watcher.close();
  };
}
