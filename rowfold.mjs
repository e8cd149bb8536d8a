/**
 * Starts Rowfold: the words behind it are those of a command. Its TypeScript is made into JavaScript once, kept beside it
 * in .cache/, and made anew when a file has changed, so that a command does not wait for that each time. Where nothing can
 * be kept, it runs as it stands.
 */

import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import module from 'node:module';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const HERE = path.dirname(fileURLToPath(import.meta.url));
const KEPT = path.join(HERE, '.cache/rowfold');
/** What the program is made from. */
const FROM = ['src', 'shared', 'eleventy.config.ts', 'package-lock.json', 'rowfold.mjs', 'bundle.mjs'];

const made = path.join(KEPT, stamp());
try {
  if (!existsSync(made)) await make(made);
} catch (fault) {
  if (!(fault instanceof Error && 'code' in fault)) throw fault;
  // A folder that may not be written to.
  const { register } = await import('tsx/esm/api');
  register();
}
const isMade = existsSync(made);
// From Node.js 22 on, what it makes of the JavaScript is kept beside it as well.
if (isMade) module.enableCompileCache?.(path.join(made, 'compiled'));
await import(pathToFileURL(isMade ? path.join(made, 'cli.js') : path.join(HERE, 'src/cli.ts')).href);

/** How many files there are, how large, and when the last of them was changed. */
function stamp() {
  let files = 0;
  let bytes = 0;
  let newest = 0;
  const look = (name) => {
    const { mtimeMs, size } = statSync(name);
    files += 1;
    bytes += size;
    newest = Math.max(newest, mtimeMs);
  };
  for (const name of FROM) {
    const whole = path.join(HERE, name);
    if (!statSync(whole).isDirectory()) look(whole);
    else
      for (const entry of readdirSync(whole, { recursive: true, withFileTypes: true }))
        if (entry.isFile()) look(path.join(entry.parentPath ?? entry.path, entry.name));
  }
  return [files, bytes, Math.round(newest)].map((n) => n.toString(36)).join('-');
}

async function make(folder) {
  const { bundle } = await import('./bundle.mjs');
  // In a folder of its own first: another command may be at it at the same time.
  const making = `${folder}.${process.pid}`;
  mkdirSync(making, { recursive: true });
  await bundle('src/cli.ts', making);
  const old = readdirSync(KEPT).filter((name) => !name.includes('.') && name !== path.basename(folder));
  try {
    renameSync(making, folder);
  } catch {
    // The other one was quicker.
    rmSync(making, { recursive: true, force: true });
  }
  for (const name of old) rmSync(path.join(KEPT, name), { recursive: true, force: true });
}
