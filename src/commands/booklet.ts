/** `booklet`: one pattern, size, paper and dialect -> one PDF. */

import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { PAPERS } from '../booklet/paper.ts';
import { bookletFileName } from '../site/addresses.ts';
import { ownDialect } from '../site/dialect-names.ts';
import { DIALECTS } from '../wording/words.ts';
import { findSize } from './find-size.ts';
import { oneOf } from './one-of.ts';
import { onePattern } from './one-pattern.ts';
import { OWN_FLAGS, ownSizeAsked } from './own-flags.ts';
import type { Verb } from './verb.ts';

export const booklet: Verb = {
  name: 'booklet',
  takes:
    'PATH --size NAME [--paper A4|Letter] [--terms us|uk|us-full|uk-full] [--folded] [--left-handed] [--whole-charts] [--out FILE]',
  about: 'one size of one pattern as a PDF to print',
  least: 1,
  most: 1,
  flags: [
    { name: 'size', value: 'NAME', about: 'the size; may be left out where there is only one' },
    { name: 'paper', value: 'A4|Letter', about: 'the paper (A4)' },
    {
      name: 'terms',
      value: 'us|uk|us-full|uk-full',
      about: "the terms, abbreviated or in full words (the pattern's own)",
    },
    {
      name: 'folded',
      value: null,
      about: 'pages of half a sheet, two a side in the order to print on both sides, fold and staple',
    },
    {
      name: 'folding-notes',
      value: null,
      about: 'with --folded: a first sheet that tells how to print, fold and staple the others',
    },
    { name: 'left-handed', value: null, about: 'with the charts drawn for left-handed makers' },
    {
      name: 'whole-charts',
      value: null,
      about: 'with every stitch of a large chart drawn, over as many sheets as it takes',
    },
    ...OWN_FLAGS,
    { name: 'out', value: 'FILE', about: 'the file to write (named after pattern, size and paper)' },
  ],
  teaches: `Sets one size of a pattern as a booklet, with its chart and its measures, and writes it as a PDF.

  npm run -s rowfold -- booklet patterns/my-square --size small
  npm run -s rowfold -- booklet patterns/my-square --size small --paper Letter --terms uk-full --out square.pdf
  npm run -s rowfold -- booklet patterns/my-square --size small --left-handed

A chart that would pass one sheet is drawn with a window of what repeats, and says how often to work it;
--whole-charts draws it stitch for stitch over sheets to lay together.

--folded makes a booklet of half the paper's size: print it on both sides, turned over on the short edge, fold the
stack once and staple it in the fold. For a screen reader take the booklet without it.`,
  run: async ({ paths, flags, values }, terminal) => {
    const paper = oneOf('paper', values.get('paper') ?? 'A4', Object.keys(PAPERS), isPaper);
    const terms = values.get('terms');
    const dialect = terms === undefined ? null : oneOf('terms', terms, Object.keys(DIALECTS), isDialect);
    for (const choice of [paper, dialect]) {
      if (choice?.kind !== 'unknown') continue;
      terminal.tell(choice.message);
      return 2;
    }
    const read = await onePattern('booklet', paths, terminal);
    if (read.kind === 'not one') return read.code;
    const { file, faulty } = read;
    const { compiled } = file;
    if (faulty || compiled.pattern === null) return 1;
    const found =
      values.get('size') === undefined && compiled.sizes[0] !== undefined && compiled.sizes.length === 1
        ? { kind: 'found' as const, size: compiled.sizes[0] }
        : findSize(compiled, values.get('size') ?? '');
    if (found.kind === 'unknown') {
      terminal.tell(found.message);
      return 2;
    }
    const asked = ownSizeAsked(values, compiled, found.size);
    if (asked.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const made = asked.kind === 'made' ? asked : { compiled, size: found.size };
    const own = ownDialect(compiled.pattern);
    const set = {
      dialect: dialect?.value ?? own,
      paper: paper.kind === 'known' ? paper.value : 'A4',
      leftHanded: flags.has('left-handed'),
      wholeCharts: flags.has('whole-charts'),
      form: flags.has('folded') ? 'folded' : 'flat',
      foldingNotes: flags.has('folding-notes'),
    } as const;
    const named = bookletFileName(
      compiled.slug,
      made.size.slug,
      set.paper,
      set.dialect === own ? null : set.dialect,
      set.leftHanded,
      set.form,
    );
    const out = values.get('out') ?? named;
    const { bookletFile } = await import('../site/booklet-file.ts');
    await mkdir(path.dirname(path.resolve(out)), { recursive: true });
    await writeFile(out, await bookletFile(made.compiled, made.size, set));
    terminal.say(out);
    return 0;
  },
};

function isPaper(word: string): word is keyof typeof PAPERS {
  return Object.hasOwn(PAPERS, word);
}

function isDialect(word: string): word is keyof typeof DIALECTS {
  return Object.hasOwn(DIALECTS, word);
}
