/** `check`: pattern files -> every fault with its place, why it matters and what to try. */

import { compilePatterns, hasErrors } from '../site/compile-patterns.ts';
import { readPatterns } from '../site/read-patterns.ts';
import { faultJson, faultText } from './tell-faults.ts';
import type { Verb } from './verb.ts';

export const check: Verb = {
  name: 'check',
  takes: '[PATH…] [--json]',
  about: 'every fault with its place, why it matters, what to try',
  least: 0,
  most: Number.POSITIVE_INFINITY,
  flags: [{ name: 'json', value: null, about: 'the faults as JSON, for other programs' }],
  teaches: `Reads each pattern, works every stitch of every size, and says where the counts do not agree.

  npm run -s rowfold -- check                       every pattern under patterns/
  npm run -s rowfold -- check patterns/my-square    one pattern, by its folder or its file
  npm run -s rowfold -- check pasted.txt            instructions as pasted, faults in their own lines

A fault is shown with its file, line and column, then why it matters and one thing to try. An error makes the
work wrong and ends the command with 1. A warning is something a reader may stumble over, a note is worth
knowing; with warnings and notes alone it ends with 0.`,
  run: async ({ paths, flags }, terminal) => {
    const files = compilePatterns(await readPatterns(paths.length === 0 ? ['patterns'] : paths));
    if (flags.has('json')) terminal.say(JSON.stringify(faultJson(files), null, 2));
    else terminal.say(`${faultText(files, terminal.colour)} ${checked(files.length)}`);
    return hasErrors(files) ? 1 : 0;
  },
};

function checked(patterns: number): string {
  return patterns === 1 ? '1 pattern checked.' : `${patterns} patterns checked.`;
}
