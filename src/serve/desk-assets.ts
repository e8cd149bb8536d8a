/** The files that the pages of the desk ask for: its style sheet and scripts, and the site's own style sheet, fonts and marks. */

import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { pageFiles } from '../site/page-files.ts';
import { closedScript } from '../site/page-scripts.ts';
import { PROJECT_FOLDER } from '../site/project-folder.ts';
import type { SiteFile } from '../site/site-file.ts';

/** Scripts of `src/desk-page/`, without their ending. */
const SCRIPTS = ['desk', 'paste', 'follow'] as const;

let made: Promise<ReadonlyMap<string, SiteFile['content']>> | null = null;

/** By the name they are asked for under the desk's address. They need no site to be built. */
export function deskAssets(): Promise<ReadonlyMap<string, SiteFile['content']>> {
  made ??= make();
  return made;
}

async function make(): Promise<ReadonlyMap<string, SiteFile['content']>> {
  const scripts = SCRIPTS.map(
    async (name) => [`${name}.js`, await closedScript(`src/desk-page/${name}.ts`)] as const,
  );
  const styles = path.join(PROJECT_FOLDER, 'layouts/desk');
  const sheets = (await readdir(styles)).sort().map((name) => readFile(path.join(styles, name), 'utf8'));
  const shared = (await pageFiles()).map(
    ({ file, content }) => [path.posix.basename(file), content] as const,
  );
  return new Map([
    ...shared,
    ...(await Promise.all(scripts)),
    ['desk.css', (await Promise.all(sheets)).join('\n')] as const,
  ]);
}
