/** `teach`: one size of a pattern -> a script to be read aloud, moments to pause, and the chapters of its film. */

import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { type Chapter, chaptersOf } from '../film/chapters.ts';
import type { Film } from '../pattern/film.ts';
import { ownName } from '../pattern/own-name.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { chapterList, LAST_CHAPTER_SECONDS, listDoubt, webVtt } from '../teach/chapters-file.ts';
import type { Lesson } from '../teach/lesson.ts';
import { pausesOf } from '../teach/pauses.ts';
import { scriptOf } from '../teach/script.ts';
import { scriptPage } from '../teach/script-page.ts';
import { pausesText, scriptText, timeOf } from '../teach/script-text.ts';
import { wrap } from './explain-table.ts';
import { findSize } from './find-size.ts';
import { oneOf } from './one-of.ts';
import { onePattern } from './one-pattern.ts';
import type { Verb } from './verb.ts';

/** Characters of a line that is read from a sheet of paper. */
const PAPER_WIDTH = 76;

/** What can be asked for in place of the script. */
const OTHERS = ['pauses', 'chapters', 'list', 'json'] as const;

export const teach: Verb = {
  name: 'teach',
  takes:
    'PATH [--size NAME] [--terms us|uk] [--pauses | --chapters | --list | --json] [--film NAME] [--out DIR]',
  about: 'a script to read aloud while you film, moments to pause, chapters of the film',
  least: 1,
  most: 1,
  flags: [
    { name: 'size', value: 'NAME', about: "the size you make (the film's, or the only one)" },
    { name: 'terms', value: 'us|uk', about: "whose names of stitches you speak (the pattern's own)" },
    { name: 'pauses', value: null, about: 'the moments at which a viewer has to stop the film, and why' },
    { name: 'chapters', value: null, about: 'the chapters of the film as a WebVTT file' },
    { name: 'list', value: null, about: 'the chapters as a list to paste below the film' },
    { name: 'film', value: 'NAME', about: 'which film, by its name, its hand or its number (the first)' },
    { name: 'json', value: null, about: 'script, pauses and chapters as JSON, for other programs' },
    { name: 'out', value: 'DIR', about: 'write them all as files into this folder' },
  ],
  teaches: `Says a pattern in whole spoken words, row by row with its counts, for you to read aloud while you film.

  npm run -s rowfold -- teach patterns/my-square --size small
  npm run -s rowfold -- teach patterns/my-square --size small --terms uk --pauses
  npm run -s rowfold -- teach patterns/my-square --size small --out my-film

Print the page ending in -script.html: large letters, one row to a block, and the pauses with it.

When the film is made, note in the pattern file when each row begins, in minutes and seconds:

  film:
    address: https://films.example.org/my-square
    length: "18:40"
    times:
      Row 1: "1:15"
      Row 2: "4:10"
    topics:
      Yarn and hook: "0:00"

Then each row on the pattern's page has a link to its place in the film, and --chapters and --list give what a player
and the place your film stands at make chapters of. Where sizes have different rows, size: below film: says which you
make; a pattern of several parts has its rows below the part's name. Write film: as a list for several films, each with
a name: or with hand: left or right.`,
  run: async ({ paths, flags, values }, terminal) => {
    const asked = OTHERS.filter((name) => flags.has(name));
    if (asked.length > 1 || (asked.length > 0 && values.has('out'))) {
      const [one, other = 'out'] = asked;
      terminal.tell(`--${one} and --${other} do not go together: ask for one of them at a time.`);
      return 2;
    }
    const terms = oneOf('terms', values.get('terms') ?? 'us', ['us', 'uk'], isTerms);
    if (terms.kind === 'unknown') {
      terminal.tell(terms.message);
      return 2;
    }
    const read = await onePattern('teach', paths, terminal);
    if (read.kind === 'not one') return read.code;
    const { compiled } = read.file;
    const { pattern } = compiled;
    if (read.faulty || pattern === null) return 1;
    const film = filmAsked(pattern, values.get('film'));
    if (film.kind === 'wrong') {
      terminal.tell(film.message);
      return 2;
    }
    const found = sizeAsked(compiled, values.get('size') ?? film.film?.size ?? null);
    if (found.kind === 'unknown') {
      terminal.tell(found.message);
      return 2;
    }
    const spoken = values.has('terms') ? (terms.value === 'uk' ? 'UK' : 'US') : pattern.terms;
    const taught = taughtOf(compiled, pattern, found.size, spoken, film.film);
    const [other] = asked;
    if ((other === 'chapters' || other === 'list') && taught.chapters.length === 0) {
      terminal.tell(
        `${compiled.slug} has no film with times; rowfold teach --help shows how they are noted in the pattern file.`,
      );
      return 2;
    }
    if (values.has('out')) {
      for (const file of await writeFiles(values.get('out') ?? '', compiled, pattern, found.size, spoken))
        terminal.say(file);
      return 0;
    }
    switch (other) {
      case 'pauses':
        terminal.say(pausesText(taught.pauses, taught.chapters));
        break;
      case 'chapters':
        terminal.say(webVtt(taught.chapters).trimEnd());
        if (taught.chapters.at(-1)?.endSeconds === null)
          terminal.tell(
            `The length of the film is not noted: its last chapter is taken to be ${LAST_CHAPTER_SECONDS / 60} minutes long. Write  length:  below film:`,
          );
        break;
      case 'list': {
        terminal.say(chapterList(taught.chapters).trimEnd());
        const doubt = listDoubt(taught.chapters);
        if (doubt !== null) terminal.tell(doubt);
        break;
      }
      case 'json':
        terminal.say(JSON.stringify(asJson(taught), null, 2));
        break;
      default:
        terminal.say(scriptText(taught.script, taught.pauses, wrap, Math.min(terminal.width, 100)));
    }
    return 0;
  },
};

interface Taught {
  readonly script: ReturnType<typeof scriptOf>;
  readonly pauses: ReturnType<typeof pausesOf>;
  readonly chapters: readonly Chapter[];
}

function taughtOf(
  { sizes }: CompiledPattern,
  pattern: Pattern,
  { fabric, accounts, size }: CompiledSize,
  terms: Terms,
  film: Film | null,
): Taught {
  const fabrics = sizes.map((one) => one.fabric);
  const lesson: Lesson = { pattern, index: pattern.sizes.indexOf(size), fabric, accounts, fabrics, terms };
  return {
    script: scriptOf(lesson),
    pauses: pausesOf(lesson),
    chapters: film === null ? [] : chaptersOf(film, pattern, fabrics),
  };
}

function asJson({ script, pauses, chapters }: Taught): object {
  return {
    script,
    pauses: pauses.map((pause) => ({ ...pause, time: timeOf(pause, chapters) || null })),
    chapters: chapters.map(({ seconds, endSeconds, title }) => ({ seconds, endSeconds, title })),
  };
}

type FilmAsked =
  | { readonly kind: 'film'; readonly film: Film | null }
  | { readonly kind: 'wrong'; readonly message: string };

function filmAsked({ films }: Pattern, asked: string | undefined): FilmAsked {
  if (asked === undefined) return { kind: 'film', film: films[0] ?? null };
  const film =
    films[Number(asked) - 1] ?? films.find((one) => namesOf(one).includes(asked.trim().toLowerCase()));
  if (film !== undefined) return { kind: 'film', film };
  const names = films.map((one, i) => namesOf(one)[0] ?? String(i + 1));
  const message = names.length === 0 ? 'The pattern names no film.' : `Its films are ${names.join(', ')}.`;
  return { kind: 'wrong', message: `There is no film ${asked}. ${message}` };
}

function namesOf({ name, hand }: Film): string[] {
  return [name, hand].filter((word) => word !== null).map((word) => word.toLowerCase());
}

function sizeAsked(compiled: CompiledPattern, asked: string | null): ReturnType<typeof findSize> {
  const [only, more] = compiled.sizes;
  if (asked === null && only !== undefined && more === undefined) return { kind: 'found', size: only };
  return findSize(compiled, asked ?? '');
}

/** The names of the files written. */
async function writeFiles(
  folder: string,
  compiled: CompiledPattern,
  pattern: Pattern,
  size: CompiledSize,
  terms: Terms,
): Promise<string[]> {
  const { script, pauses, chapters } = taughtOf(compiled, pattern, size, terms, pattern.films[0] ?? null);
  const name = `${ownName(compiled.slug)}-${size.slug}-${terms.toLowerCase()}`;
  const files: [string, string][] = [
    [`${name}-script.html`, scriptPage(script, pauses)],
    [`${name}-script.txt`, `${scriptText(script, pauses, wrap, PAPER_WIDTH)}\n`],
    [`${name}-pauses.txt`, `${pausesText(pauses, chapters)}\n`],
    ...pattern.films.flatMap((film, i): [string, string][] => {
      const own = taughtOf(compiled, pattern, size, terms, film).chapters;
      if (own.length === 0) return [];
      const which = pattern.films.length === 1 ? '' : `-film-${i + 1}`;
      const stem = `${ownName(compiled.slug)}${which}-chapters`;
      return [
        [`${stem}.vtt`, webVtt(own)],
        [`${stem}.txt`, chapterList(own)],
      ];
    }),
  ];
  await mkdir(folder, { recursive: true });
  for (const [file, content] of files) await writeFile(path.join(folder, file), content);
  return files.map(([file]) => path.join(folder, file));
}

function isTerms(word: string): word is 'us' | 'uk' {
  return word === 'us' || word === 'uk';
}
