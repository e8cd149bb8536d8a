/**
 * Nothing of a week may be found before its hour. The sample along is made as it is published in the last second
 * before each hour of a release and once all is out, and every file is searched for words, numbers and names of later weeks.
 */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { alongJsonSchema } from '../../src/along/schema.ts';
import { alongsAt } from '../../src/site/along-site.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { type AlongOnDisk, readAlongs } from '../../src/site/read-alongs.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { runEleventy } from '../../src/site/run-eleventy.ts';
import type { SiteFile } from '../../src/site/site-file.ts';
import { sitePages } from '../../src/site/site-pages.ts';
import { sizeFiles } from '../../src/site/size-files.ts';
import { pageWords, readPdf } from '../booklet/read-pdf.ts';
import { numbersIn, releasedFiles, saysOf, shownOf, wordsIn } from './released-files.ts';

const MINUTES = 60_000;
const folder = path.join(PROJECT_FOLDER, 'alongs/salt-marsh-blanket');

interface Told {
  readonly words: ReadonlySet<string>;
  readonly numbers: ReadonlySet<string>;
}

interface State {
  readonly out: number;
  readonly at: string;
  readonly files: ReadonlyMap<string, SiteFile['content']>;
}

let along: AlongOnDisk;
const states: State[] = [];

/** What the file and the patterns say of each week, with what is worked out of them; its teaser is for everyone. */
function sourcesOfWeeks(): Told[] {
  const blocks = readFileSync(path.join(folder, 'along.yaml'), 'utf8')
    .split(/^ {2}- (?=title:)/m)
    .slice(1)
    .map((block) => block.replace(/^ *teaser:.*$/m, ''));
  return (along.worked?.weeks ?? []).map(({ squares }, i) => {
    const patterns = squares.map(({ choice }) =>
      readFileSync(path.join(folder, choice.pattern, 'pattern.yaml'), 'utf8'),
    );
    const worked = squares.flatMap(({ size }) => [
      ...size.fabric.rows.flatMap(({ stitches, spaces }) => [stitches, spaces]),
      ...size.measures.yarn.map(({ lengthM }) => Math.ceil(lengthM)),
      size.measures.stitches,
    ]);
    const text = [blocks[i], ...patterns, ...squares.map(({ choice }) => choice.pattern)].join('\n');
    return {
      words: wordsIn(text),
      numbers: numbersIn(`${text.replace(/#[0-9a-f]{6}/g, '')}\n${worked.join('\n')}`),
    };
  });
}

/** A number that stands on the pages of another week's squares as well, as a length in yards may, is not this week's own. */
function withOwnPages(weeks: readonly Told[], files: ReadonlyMap<string, Told>): Told[] {
  return weeks.map(({ words, numbers }, i) => {
    const own = (along.worked?.weeks[i]?.squares ?? []).map(({ compiled }) => `${compiled.slug}/`);
    const pages = [...files].filter(([file]) => own.some((folder) => file.startsWith(folder)));
    return { words, numbers: new Set([...numbers, ...pages.flatMap(([, page]) => [...page.numbers])]) };
  });
}

/** What only this week says: said neither by another week nor by what is public before the first. */
function peculiar(weeks: readonly Told[], open: Told, i: number): Told {
  const others = weeks.filter((_, k) => k !== i);
  const only = (of: keyof Told) =>
    new Set(
      [...(weeks[i]?.[of] ?? [])].filter(
        (word) => !open[of].has(word) && !others.some((week) => week[of].has(word)),
      ),
    );
  return { words: only('words'), numbers: only('numbers') };
}

async function told(files: ReadonlyMap<string, SiteFile['content']>): Promise<Map<string, Told>> {
  const found = new Map<string, Told>();
  for (const [file, content] of files) {
    const says = await saysOf(content);
    found.set(file, {
      // Also in the name of the file, and in whatever of it is not shown.
      words: wordsIn(`${file}\n${says}`),
      numbers: numbersIn(shownOf(says, file)),
    });
  }
  return found;
}

/** Pages and charts of patterns that are no part of the along. */
async function otherPages(): Promise<Map<string, SiteFile['content']>> {
  const names = ['lantern-square', 'two-tides-square'];
  const read = await readPatterns(names.map((name) => path.join(PROJECT_FOLDER, 'patterns', name)));
  const compiled = compilePatterns(read).map((file) => file.compiled);
  const pages = await runEleventy(sitePages(compiled));
  const found = new Map(pages.map(({ file, content }) => [file, content]));
  for (const one of compiled) {
    const files = one.pattern === null ? [] : sizeFiles(one, one.pattern);
    // One booklet says what all say.
    const booklet = files.find(({ file }) => file.endsWith('.pdf'));
    for (const each of files)
      if (each === booklet || each.file.endsWith('.svg')) found.set(each.file, await each.content());
  }
  return found;
}

async function keepState(out: number, ms: number): Promise<void> {
  states.push({ out, at: new Date(ms).toISOString(), files: await releasedFiles([along], ms) });
}

/** Which weeks are out, as everything that is made is given it. */
function outAt(ms: number): number[] {
  const { sites } = alongsAt([along], () => ms);
  return sites.flatMap(({ released }) =>
    released.weeks.flatMap(({ kind, number }) => (kind === 'out' ? [number] : [])),
  );
}

beforeAll(async () => {
  const [found] = await readAlongs(folder);
  if (found?.worked == null) throw new Error('the sample along cannot be read');
  along = found;
  const hours = found.worked.along.weeks.map(({ releaseMs }) => releaseMs);
  const last = hours.length - 1;
  for (const [i, hour] of hours.entries()) await keepState(i, hour - 1000);
  await keepState(last + 1, hours[last] ?? 0);
}, 10 * MINUTES);

describe('in the second before every release, and at the last', () => {
  let weeks: Told[];
  let open: Told;
  let only: Told[];
  beforeAll(async () => {
    weeks = withOwnPages(sourcesOfWeeks(), await told(states.at(-1)?.files ?? new Map()));
    // What is said on the page of any pattern tells nothing of these.
    const first = await told(new Map([...(states[0]?.files ?? []), ...(await otherPages())]));
    open = {
      // The keys of the file are no secret: its schema is published.
      words: new Set([
        ...wordsIn(JSON.stringify(alongJsonSchema)),
        ...[...first.values()].flatMap(({ words }) => [...words]),
      ]),
      numbers: new Set([...first.values()].flatMap(({ numbers }) => [...numbers])),
    };
    only = weeks.map((_, i) => peculiar(weeks, open, i));
  }, 10 * MINUTES);

  test('each week has words and numbers of its own to look for', () => {
    for (const { words, numbers } of only) {
      expect(words.size).toBeGreaterThan(4);
      expect(numbers.size).toBeGreaterThan(0);
    }
    expect([...(only[4]?.words ?? [])]).toEqual(
      expect.arrayContaining(['lapwing', 'saltpan', 'crystals', 'quills']),
    );
  });

  test('a week is out from its hour to the second, and not a millisecond sooner', () => {
    const hours = (along.worked?.along.weeks ?? []).map(({ releaseMs }) => releaseMs);
    expect(hours.map((hour) => [outAt(hour - 1).length, outAt(hour).length])).toEqual(
      hours.map((_, i) => [i, i + 1]),
    );
  });

  test('before the first nothing is said of any', async () => {
    // What is public before the first is taken for harmless above, so it is looked at here by what no page may say.
    const secret = (along.worked?.weeks ?? []).flatMap(({ week, squares }) => [
      week.title,
      ...(week.note === null ? [] : [week.note]),
      ...(week.video === null ? [] : [week.video]),
      ...squares.flatMap(({ pattern, choice }) => [pattern.title, pattern.about, choice.pattern]),
    ]);
    expect(secret.length).toBeGreaterThan(40);
    for (const [file, content] of states[0]?.files ?? []) {
      const says = `${file}\n${await saysOf(content)}`.toLowerCase();
      expect(
        secret.filter((words) => says.includes(words.toLowerCase())),
        file,
      ).toEqual([]);
      expect(file).not.toMatch(/\.(?:pdf|svg)$/);
    }
  });

  test(
    'nothing of a later week is in any file, nor in the name of one',
    async () => {
      for (const { out, at, files } of states) {
        const later = only.slice(out);
        for (const [file, { words, numbers }] of await told(files)) {
          const where = `${file} at ${at}`;
          expect(
            later.flatMap((week) => [...week.words].filter((word) => words.has(word))),
            where,
          ).toEqual([]);
          expect(
            later.flatMap((week) => [...week.numbers].filter((n) => numbers.has(n))),
            where,
          ).toEqual([]);
        }
      }
    },
    MINUTES * 5,
  );

  test(
    'what is due is there, so the search would find it',
    async () => {
      for (const [i, { words, numbers }] of only.entries()) {
        const state = states.find(({ out }) => out === i + 1);
        const found = [...(await told(state?.files ?? new Map())).values()];
        expect(
          [...words].filter((word) => found.some((file) => file.words.has(word))).length,
        ).toBeGreaterThan(4);
        expect([...numbers].some((n) => found.some((file) => file.numbers.has(n)))).toBe(true);
      }
    },
    MINUTES * 5,
  );

  test('the whole book is there at the end and no sooner', () => {
    const books = states.map(({ out, files }) => [
      out,
      [...files.keys()].filter((file) => file.includes('whole-book')).length,
    ]);
    expect(books).toEqual(states.map(({ out }) => [out, out === 6 ? 2 : 0]));
  });

  test('its pages are numbered from the first to the last, through all its squares', async () => {
    const [name = ''] = [...(states.at(-1)?.files.keys() ?? [])].filter((file) =>
      file.endsWith('whole-book-a4.pdf'),
    );
    const content = states.at(-1)?.files.get(name);
    expect(content).toBeDefined();
    const { pages } = await readPdf(Buffer.from(content ?? ''));
    expect(pages.length).toBeGreaterThan(20);
    const numbers = pages.map(
      (page) => /(\d+) of (\d+)/.exec(pageWords(page))?.slice(1, 3).join('/') ?? null,
    );
    // The covers of the squares bear no number, and count.
    for (const [i, number] of numbers.entries())
      if (number !== null) expect(number).toBe(`${i + 1}/${pages.length}`);
    expect(numbers.filter((number) => number !== null).length).toBeGreaterThan(pages.length / 2);
  });
});
