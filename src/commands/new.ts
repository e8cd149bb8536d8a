/** `new`: a name -> a starter pattern in a folder of that name; never writes over what is there. */

import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fragment } from '../site/addresses.ts';
import { PATTERN_FILE } from '../site/read-patterns.ts';
import { starterPattern } from './starter-pattern.ts';
import type { Verb } from './verb.ts';

export const newPattern: Verb = {
  name: 'new',
  takes: 'NAME [--patterns DIR]',
  about: 'a starter pattern that checks clean',
  least: 1,
  most: 1,
  flags: [{ name: 'patterns', value: 'DIR', about: 'where the patterns are (patterns)' }],
  teaches: `Makes a folder with a small finished pattern in it, for you to change line by line.

  npm run -s rowfold -- new my-square

The name becomes the address of the pattern's page, so it is written in small letters, digits and hyphens.
A pattern that is already there is left alone.`,
  run: async ({ paths: [name = ''], values }, terminal) => {
    const address = fragment(name);
    if (name !== address) {
      const offer = address === '' ? '' : ` Try: npm run -s rowfold -- new ${address}`;
      terminal.tell(
        `A pattern's name is small letters, digits and hyphens, as in my-square, not ${name}.${offer}`,
      );
      return 2;
    }
    const folder = path.join(values.get('patterns') ?? 'patterns', name);
    const file = path.join(folder, PATTERN_FILE);
    await mkdir(folder, { recursive: true });
    try {
      await writeFile(file, starterPattern(titled(name)), { flag: 'wx' });
    } catch (fault) {
      if (!(fault instanceof Error && 'code' in fault && fault.code === 'EEXIST')) throw fault;
      terminal.tell(`There is already a ${file}; it was left as it is.`);
      return 2;
    }
    terminal.say(`${file} is ready. Check it with: npm run -s rowfold -- check ${folder}`);
    return 0;
  },
};

/** `my-square` -> `My Square`. */
function titled(name: string): string {
  return name
    .split('-')
    .map((word) => word.charAt(0).toUpperCase() + word.slice(1))
    .join(' ');
}
