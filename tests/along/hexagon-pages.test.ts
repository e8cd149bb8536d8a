/** An along of hexagons as it is published: nothing of a week before its hour, and the pages and the book speak of hexagons. */

import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { type AlongOnDisk, readAlongs } from '../../src/site/read-alongs.ts';
import type { SiteFile } from '../../src/site/site-file.ts';
import { releasedFiles, saysOf, shownOf } from './released-files.ts';

const TOP = 'comb-blanket';
/** Words that stand in one week only. */
const WEEKS = [/wax.cell/i, /clover.cell|thyme.cell|meadow/i, /brood.cell|nursery/i] as const;

let along: AlongOnDisk;
let all: ReadonlyMap<string, SiteFile['content']>;

beforeAll(async () => {
  const [found] = await readAlongs(path.join(import.meta.dirname, 'hexagons'));
  if (found?.worked == null) throw new Error('the along could not be read');
  along = found;
  all = await releasedFiles([along], null);
}, 120_000);

async function namesAndWords(files: ReadonlyMap<string, SiteFile['content']>): Promise<string> {
  const said = await Promise.all(
    [...files].map(async ([file, content]) => `${file}\n${await saysOf(content)}`),
  );
  return said.join('\n');
}

test.each([0, 1])(
  'with %i more than one week out, nothing of the next ones is found in the last second before',
  async (week) => {
    const hour = along.worked?.along.weeks[week + 1]?.releaseMs ?? 0;
    const words = await namesAndWords(await releasedFiles([along], hour - 1000));
    WEEKS.forEach((own, i) => {
      if (i <= week) expect(words).toMatch(own);
      else expect(words).not.toMatch(own);
    });
  },
  120_000,
);

describe('all of it', () => {
  const page = async (name: string) => shownOf(await saysOf(all.get(`${TOP}/${name}`) ?? ''), 'x.html');

  test('speaks of hexagons, not of squares', async () => {
    for (const name of [
      'index.html',
      'joining-and-border/index.html',
      'planner/index.html',
      'week-2/index.html',
    ]) {
      const shown = await page(name);
      expect(shown, name).toMatch(/hexagon/i);
      expect(
        shown.replace(/"shape":"squares"|"squares":/g, '').replace(/&quot;squares&quot;/g, ''),
        name,
      ).not.toMatch(/squares?\b/i);
    }
    expect(await page('index.html')).toMatch(/4 rows of 3, 12 in all/);
  });

  test('the book holds joining and border in the order they are worked', async () => {
    const book = await saysOf(all.get(`${TOP}/${TOP}-whole-book-a4.pdf`) ?? '');
    const at = ['Row 1', 'Row 4', 'Rows 1 and 2', 'Rows 3 and 4', 'topmost right-hand corner'].map((words) =>
      book.indexOf(words),
    );
    expect(at).toEqual(at.toSorted((a, b) => a - b));
    expect(at[0]).toBeGreaterThan(0);
    expect(book).not.toMatch(/squares?\b/i);
  });

  test('the picture of the blanket has a place for each of twelve', async () => {
    const html = await saysOf(all.get(`${TOP}/index.html`) ?? '');
    expect(html.match(/href="#hexagon-outline"/g)).toHaveLength(12);
    expect(html.match(/clip-path="url\(#hexagon-place\)"/g)).toHaveLength(12);
  });
});
