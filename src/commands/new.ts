/** `new`: a name, or the answers to a few questions -> a starter pattern in a folder; never writes over what is there. */

import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fragment } from '../site/addresses.ts';
import { PATTERN_FILE } from '../site/read-patterns.ts';
import { askStarter, STARTER_FLAGS } from './ask-starter.ts';
import { starterPattern } from './starter-pattern.ts';
import type { Terminal, Verb } from './verb.ts';

export const newPattern: Verb = {
  name: 'new',
  takes: '[NAME] [--title WORDS] [--terms US|UK] [--shape flat|round] [--sizes NAMES] [--patterns DIR]',
  about: 'a starter pattern that checks clean',
  least: 0,
  most: 1,
  flags: [...STARTER_FLAGS, { name: 'patterns', value: 'DIR', about: 'where the patterns are (patterns)' }],
  teaches: `Makes a folder with a small finished pattern in it, for you to change line by line.

  npm run -s rowfold -- new
  npm run -s rowfold -- new my-square
  npm run -s rowfold -- new my-square --terms UK --shape round --sizes "small, large"

In a terminal it asks for what you did not say: the title, the terms you write in, whether it is worked flat or round,
and the sizes. Enter takes what stands in brackets.

The folder's name becomes the address of the pattern's page, so it is written in small letters, digits and hyphens.
A pattern that is already there is left alone.`,
  run: async ({ paths: [name], values }, terminal) => {
    const patterns = values.get('patterns') ?? 'patterns';
    if (name !== undefined && !isName(name, terminal)) return 2;
    // Before anyone answers questions for nothing.
    if (name !== undefined && isThere(patterns, name, terminal)) return 2;
    if (name === undefined && !values.has('title') && terminal.ask === null) {
      terminal.tell('new needs NAME.\nnpm run -s rowfold -- new --help shows how it is used.');
      return 2;
    }
    const asked = await askStarter(values, name === undefined ? null : titled(name), terminal);
    if (asked.kind === 'left') {
      terminal.tell('Nothing was written.');
      return 2;
    }
    if (asked.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const folder = name ?? fragment(asked.title);
    if (folder === '') {
      terminal.tell(
        `A folder's name cannot be made of ${asked.title}. Give one: npm run -s rowfold -- new my-square --title "${asked.title}"`,
      );
      return 2;
    }
    if (isThere(patterns, folder, terminal)) return 2;
    const file = path.join(patterns, folder, PATTERN_FILE);
    await mkdir(path.dirname(file), { recursive: true });
    await writeFile(file, starterPattern(asked.title, asked.choice), { flag: 'wx' });
    terminal.say(
      `${file} is ready. See it on your desk with: npm start\nCheck it with: npm run -s rowfold -- check ${path.dirname(file)}`,
    );
    return 0;
  },
};

function isName(name: string, terminal: Terminal): boolean {
  const address = fragment(name);
  if (name === address) return true;
  const offer = address === '' ? '' : ` Try: npm run -s rowfold -- new ${address}`;
  terminal.tell(
    `A pattern's name is small letters, digits and hyphens, as in my-square, not ${name}.${offer}`,
  );
  return false;
}

function isThere(patterns: string, folder: string, terminal: Terminal): boolean {
  const file = path.join(patterns, folder, PATTERN_FILE);
  if (!existsSync(file)) return false;
  terminal.tell(`There is already a ${file}; it was left as it is.`);
  return true;
}

/** `my-square` -> `My Square`. */
function titled(name: string): string {
  return name
    .split('-')
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join(' ');
}
