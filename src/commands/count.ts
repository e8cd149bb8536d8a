/** `count`: one pattern -> the stitch count of every row or round of every size. */

import { countJson } from './count-json.ts';
import { countTable } from './count-table.ts';
import { findSize } from './find-size.ts';
import { onePattern } from './one-pattern.ts';
import { OWN_FLAGS, ownSizeAsked } from './own-flags.ts';
import type { Verb } from './verb.ts';

export const count: Verb = {
  name: 'count',
  takes: 'PATH [--size NAME] [--width MEASURE] [--height MEASURE] [--gauge GAUGE] [--json]',
  about: 'the stitch count of every row or round of every size',
  least: 1,
  most: 1,
  flags: [
    { name: 'size', value: 'NAME', about: 'only this size' },
    ...OWN_FLAGS,
    { name: 'json', value: null, about: 'the counts as JSON, for other programs' },
  ],
  teaches: `Works the pattern and lists what each row makes: stitches, chain spaces, and how many of each stitch.

  npm run -s rowfold -- count patterns/my-square
  npm run -s rowfold -- count patterns/my-square --size large
  npm run -s rowfold -- count patterns/my-square --width "12 in" --gauge "18 sts and 20 rows over 10 cm"
  npm run -s rowfold -- count pasted.txt

A pattern with faults is not counted past the fault; the faults are told and the command ends with 1.`,
  run: async ({ paths, flags, values }, terminal) => {
    const read = await onePattern('count', paths, terminal);
    if (read.kind === 'not one') return read.code;
    const { file, faulty } = read;
    const { compiled, text } = file;
    const wanted = values.get('size');
    const found = wanted === undefined ? null : findSize(compiled, wanted);
    if (found?.kind === 'unknown' && compiled.sizes.length > 0) {
      terminal.tell(found.message);
      return 2;
    }
    const asked = faulty ? null : ownSizeAsked(values, compiled, found?.kind === 'found' ? found.size : null);
    if (asked?.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const sizes =
      asked?.kind === 'made' ? [asked.size] : found?.kind === 'found' ? [found.size] : compiled.sizes;
    if (flags.has('json')) terminal.say(JSON.stringify(countJson(compiled, text, sizes), null, 2));
    else
      terminal.say(
        [
          compiled.pattern?.title ?? compiled.slug,
          ...sizes.map((size) => countTable(size, compiled.pattern?.terms ?? 'US')),
        ].join('\n\n'),
      );
    return faulty ? 1 : 0;
  },
};
