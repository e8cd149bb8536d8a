/** Folders and what to do when something in them changes -> watching, until it is stopped. */

import { existsSync, watch } from 'node:fs';

/** Editors save in several steps; a change is acted on when it has been quiet for this long. */
const QUIET_MS = 120;

/** Never runs `act` twice at once: changes made meanwhile lead to one more run. */
export function watchFolders(folders: readonly string[], act: () => Promise<void>): () => void {
  let timer: NodeJS.Timeout | null = null;
  let running = false;
  let again = false;
  const run = async () => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    do {
      again = false;
      await act();
    } while (again);
    running = false;
  };
  const changed = () => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void run(), QUIET_MS);
  };
  const watchers = folders
    .filter((folder) => existsSync(folder))
    .map((folder) => watch(folder, { recursive: true }, changed));
  return () => {
    if (timer !== null) clearTimeout(timer);
    for (const watcher of watchers) watcher.close();
  };
}
