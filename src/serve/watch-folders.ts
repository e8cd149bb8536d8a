/** Folders and what to do when something in them changes -> watching, until it is stopped. */

import { existsSync, watch } from 'node:fs';

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
  const watchers = folders
    .filter((folder) => existsSync(folder))
    .map((folder) => watch(folder, { recursive: true }, changed));
  if (first !== undefined) void run(first);
  return () => {
    if (timer !== null) clearTimeout(timer);
    for (const watcher of watchers) watcher.close();
  };
}
