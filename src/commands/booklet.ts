/** `booklet`: one pattern, its size, paper, dialect and edition -> one PDF. */

import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { PAPERS } from '../booklet/paper.ts';
import type { CompiledPattern } from '../compiled.ts';
import type { BookletSizes } from '../print-booklet.ts';
import { ALL_SIZES, bookletFileName, wholeAddress } from '../site/addresses.ts';
import { ownDialect } from '../site/dialect-names.ts';
import { settingsOf } from '../site/read-settings.ts';
import { DIALECTS } from '../wording/words.ts';
import { findSize } from './find-size.ts';
import { oneOf } from './one-of.ts';
import { onePattern } from './one-pattern.ts';
import { OWN_FLAGS, ownSizeAsked } from './own-flags.ts';
import type { Flag, Verb } from './verb.ts';

const EDITION_FLAGS: readonly Flag[] = [
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
  { name: 'large-print', value: null, about: '18 point type and nothing under 16, in one column' },
  { name: 'low-ink', value: null, about: 'no picture, no tints, all type in black' },
  { name: 'words-only', value: null, about: 'no charts and no drawings' },
  {
    name: 'charts-only',
    value: null,
    about: 'no written rows but those of parts that no chart shows',
  },
  {
    name: 'for-testers',
    value: null,
    about: 'a sheet to fill in for those who test the pattern, one page a size, in place of a booklet',
  },
  { name: 'left-handed', value: null, about: 'with the charts drawn for left-handed makers' },
  {
    name: 'whole-charts',
    value: null,
    about: 'with every stitch of a large chart drawn, over as many sheets as it takes',
  },
];

export const booklet: Verb = {
  name: 'booklet',
  takes:
    'PATH --size NAME|--all-sizes [--paper A4|Letter] [--terms us|uk|us-full|uk-full] [--folded|--large-print] [--low-ink] [--words-only|--charts-only] [--left-handed] [--whole-charts] [--out FILE]',
  about: 'one size of one pattern, or all of them, as a PDF to print',
  least: 1,
  most: 1,
  flags: [
    { name: 'size', value: 'NAME', about: 'the size; may be left out where there is only one' },
    {
      name: 'all-sizes',
      value: null,
      about: 'all sizes in one booklet, the numbers of the others in brackets: 35 (44, 53)',
    },
    { name: 'paper', value: 'A4|Letter', about: 'the paper (A4)' },
    {
      name: 'terms',
      value: 'us|uk|us-full|uk-full',
      about: "the terms, abbreviated or in full words (the pattern's own)",
    },
    ...EDITION_FLAGS,
    ...OWN_FLAGS,
    { name: 'out', value: 'FILE', about: 'the file to write (named after pattern, size, paper and edition)' },
  ],
  teaches: `Sets one size of a pattern as a booklet, with its chart and its measures, and writes it as a PDF.

  npm run -s rowfold -- booklet patterns/my-square --size small
  npm run -s rowfold -- booklet patterns/my-square --size small --paper Letter --terms uk-full --out square.pdf
  npm run -s rowfold -- booklet patterns/my-square --size small --folded --folding-notes
  npm run -s rowfold -- booklet patterns/my-square --all-sizes --large-print
  npm run -s rowfold -- booklet patterns/my-square --for-testers

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
    const clash = flagsThatClash(flags, values);
    if (clash !== null) {
      terminal.tell(clash);
      return 2;
    }
    const read = await onePattern('booklet', paths, terminal);
    if (read.kind === 'not one') return read.code;
    const { compiled } = read.file;
    if (read.faulty || compiled.pattern === null) return 1;
    const all = flags.has('all-sizes') || (flags.has('for-testers') && !values.has('size'));
    const found = sizesAsked(compiled, all, values);
    if (found.kind === 'wrong') {
      terminal.tell(found.message);
      return 2;
    }
    // The settings of the site stand beside the patterns' folders.
    const site = await settingsOf(path.dirname(path.dirname(path.resolve(read.file.file))));
    if (site.kind === 'wrong') {
      terminal.tell(site.why);
      return 1;
    }
    const own = ownDialect(compiled.pattern);
    const set = {
      dialect: dialect?.value ?? own,
      paper: paper.kind === 'known' ? paper.value : 'A4',
      leftHanded: flags.has('left-handed'),
      wholeCharts: flags.has('whole-charts'),
      form: flags.has('folded') ? 'folded' : flags.has('large-print') ? 'large print' : 'flat',
      foldingNotes: flags.has('folding-notes'),
      lowInk: flags.has('low-ink'),
      address: wholeAddress(site.settings.address, [
        compiled.slug,
        ...(found.sizes !== 'all' && compiled.sizes.includes(found.sizes) ? [found.sizes.slug] : []),
      ]),
      holds: flags.has('words-only') ? 'words' : flags.has('charts-only') ? 'charts' : 'all',
    } as const;
    const size = found.sizes === 'all' ? ALL_SIZES : found.sizes.slug;
    const forTesters = flags.has('for-testers');
    const named = bookletFileName(compiled.slug, {
      ...set,
      size: forTesters ? `${size}-testers` : size,
      dialect: set.dialect === own ? null : set.dialect,
    });
    const out = values.get('out') ?? named;
    const { bookletFile, testerSheets } = await import('../site/booklet-file.ts');
    await mkdir(path.dirname(path.resolve(out)), { recursive: true });
    const bytes = forTesters
      ? await testerSheets(found.compiled, found.sizes === 'all' ? found.compiled.sizes : [found.sizes], set)
      : await bookletFile(found.compiled, found.sizes, set);
    await writeFile(out, bytes);
    const [{ keepWords }, { readFontFiles }] = await Promise.all([
      import('../site/kept-words.ts'),
      import('../site/font-files.ts'),
    ]);
    keepWords(readFontFiles());
    terminal.say(out);
    if (set.form === 'folded')
      terminal.tell(
        'This file is for printing and has no tags; for a screen reader make it without --folded.',
      );
    return 0;
  },
};

type SizesAsked =
  | { readonly kind: 'found'; readonly compiled: CompiledPattern; readonly sizes: BookletSizes }
  | { readonly kind: 'wrong'; readonly message: string };

function sizesAsked(
  compiled: CompiledPattern,
  all: boolean,
  values: ReadonlyMap<string, string>,
): SizesAsked {
  const [only, more] = compiled.sizes;
  if (all) {
    if (only !== undefined && compiled.allSizes !== null)
      return { kind: 'found', compiled, sizes: more === undefined ? only : 'all' };
    return { kind: 'wrong', message: `${compiled.slug} has no size that could be set.` };
  }
  const found =
    values.get('size') === undefined && only !== undefined && more === undefined
      ? { kind: 'found' as const, size: only }
      : findSize(compiled, values.get('size') ?? '');
  if (found.kind === 'unknown') return { kind: 'wrong', message: found.message };
  const asked = ownSizeAsked(values, compiled, found.size);
  if (asked.kind === 'wrong') return asked;
  return asked.kind === 'made'
    ? { kind: 'found', compiled: asked.compiled, sizes: asked.size }
    : { kind: 'found', compiled, sizes: found.size };
}

/** Each pair asks for two things that one booklet cannot be. */
const CLASHES: readonly (readonly [string, string, string])[] = [
  ['folded', 'large-print', 'half a page is too small for large print'],
  ['words-only', 'charts-only', 'nothing would be left'],
  ...['folded', 'large-print', 'words-only', 'charts-only', 'left-handed', 'whole-charts'].map(
    (other) => ['for-testers', other, 'a sheet for testers is a page of blanks to fill in'] as const,
  ),
];

function flagsThatClash(flags: ReadonlySet<string>, values: ReadonlyMap<string, string>): string | null {
  for (const [one, other, why] of CLASHES)
    if (flags.has(one) && flags.has(other)) return `--${one} and --${other} do not go together: ${why}.`;
  const ofOne = ['size', ...OWN_FLAGS.map(({ name }) => name)].find((name) => values.has(name));
  if (flags.has('all-sizes') && ofOne !== undefined)
    return `--all-sizes and --${ofOne} do not go together: --${ofOne} is for a booklet of one size.`;
  if (flags.has('folding-notes') && !flags.has('folded'))
    return '--folding-notes tells how to fold a booklet: add --folded.';
  return null;
}

function isPaper(word: string): word is keyof typeof PAPERS {
  return Object.hasOwn(PAPERS, word);
}

function isDialect(word: string): word is keyof typeof DIALECTS {
  return Object.hasOwn(DIALECTS, word);
}
