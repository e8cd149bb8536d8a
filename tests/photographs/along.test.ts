/** Photographs of an along and of its squares: its own are there from the first build on, a square's come out with it. */

import { cpSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { lookAtPhotographs } from '../../src/site/look-at-photographs.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { GOOD, removeFolder, rowfold, scratchFolder, writePattern } from '../commands/run-rowfold.ts';
import { photograph, photographLines, savePhotographs, TELLTALES, withPlace } from './take-photographs.ts';

const top = scratchFolder();
afterAll(() => removeFolder(top));

const folder = path.join(top, 'alongs/salt-marsh-blanket');
const file = path.join(folder, 'along.yaml');
/** Of the third week. */
const SQUARE = 'mudflat';
const SECRET = 'What nobody may know of before its hour';

let plain: string;
let secretHash: string;

beforeAll(async () => {
  writePattern(top, 'grey-square', GOOD);
  cpSync(path.join(PROJECT_FOLDER, 'alongs'), path.join(top, 'alongs'), { recursive: true });
  plain = readFileSync(file, 'utf8');
  const lines = photographLines({
    'wool.jpg': 'shows: The wool of the blanket in a basket, by: A Friend',
    'marsh.jpg': 'shows: The marsh at low tide',
  });
  writeFileSync(file, `${plain}\n${lines}`);
  savePhotographs(folder, {
    'wool.jpg': await withPlace(await photograph(1800, 1200)),
    'marsh.jpg': await withPlace(await photograph(1500, 1000)),
  });
  const square = path.join(folder, SQUARE, 'pattern.yaml');
  writeFileSync(
    square,
    `${readFileSync(square, 'utf8')}\n${photographLines({ 'square.jpg': `shows: ${SECRET}`, 'close.jpg': 'shows: Its edge from close by' })}`,
  );
  savePhotographs(path.join(folder, SQUARE), {
    'square.jpg': await withPlace(await photograph(1400, 1400)),
    'close.jpg': await withPlace(await photograph(1200, 900)),
  });
  const look = (await lookAtPhotographs(['square.jpg'], path.join(folder, SQUARE))).get('square.jpg');
  if (look?.kind !== 'picture') throw new Error('it cannot be seen');
  secretHash = look.hash;
});

function filesOf(name: string): Map<string, Buffer> {
  const out = path.join(top, name);
  return new Map(
    readdirSync(out, { recursive: true, encoding: 'utf8' })
      .filter((one) => statSync(path.join(out, one)).isFile())
      .map((one) => [one, readFileSync(path.join(out, one))]),
  );
}

describe('as published', () => {
  test('before the hour of a week nothing of its photographs is anywhere, and those of the along are', async () => {
    writeFileSync(path.join(top, 'patterns/site.yaml'), 'address: https://example.org/\nbooklets: []\n');
    const asked = ['build', '--as-of', '2026-11-01T00:00-03:00', '--out', 'before'];
    expect((await rowfold(asked, top)).code).toBe(0);
    const files = filesOf('before');
    const names = [...files.keys()];
    expect(
      names.filter((one) => /^salt-marsh-blanket\/salt-marsh-blanket-[0-9a-f]{16}-/.test(one)),
    ).toHaveLength(8);
    for (const [one, bytes] of files) {
      expect(one).not.toContain(secretHash);
      expect(bytes.includes(secretHash) || bytes.includes(SECRET), one).toBe(false);
    }
    const page = files.get('salt-marsh-blanket/index.html')?.toString() ?? '';
    expect(page).toMatch(/<img class="cover photograph"[^>]* alt="The wool of the blanket in a basket"/);
    expect(page).toContain('alt="The marsh at low tide"');
    expect(page).toContain('content="Salt Marsh Blanket: The wool of the blanket in a basket"');
    const list = files.get('index.html')?.toString() ?? '';
    expect(list).toContain('alt="The wool of the blanket in a basket"');
  });

  test('with its week it is on the page of the square, on that of the week, and in its book', async () => {
    const asked = ['build', '--as-of', '2026-12-30T00:00-04:00', '--out', 'after'];
    expect((await rowfold(asked, top)).code).toBe(0);
    const files = filesOf('after');
    const page = (name: string): string =>
      files.get(`salt-marsh-blanket/${name}/index.html`)?.toString() ?? '';
    expect(page(`${SQUARE}/one-size`)).toContain(`alt="${SECRET}"`);
    expect(page(`${SQUARE}/one-size`)).toContain('alt="Its edge from close by"');
    expect(page('week-3')).toContain(`alt="${SECRET}"`);
    expect([...files.keys()].filter((one) => one.includes(secretHash))).toHaveLength(4);
    const book = files.get('salt-marsh-blanket/week-3/salt-marsh-blanket-week-3-a4.pdf');
    expect(book?.includes('/DCTDecode')).toBe(true);
    const other = files.get('salt-marsh-blanket/week-1/salt-marsh-blanket-week-1-a4.pdf');
    expect(other?.includes('/DCTDecode')).toBe(false);
    for (const [one, bytes] of files)
      if (!/\.(?:woff|ttf|js)$/.test(one))
        expect(
          TELLTALES.filter((word) => bytes.includes(word)),
          one,
        ).toEqual([]);
  });
});

test('a photograph of the along that cannot be shown is told at its place, and nothing is built', async () => {
  const lines = photographLines({ 'wool.jgp': 'shows: The wool', 'marsh.jpg': 'shows: Marsh' });
  writeFileSync(file, `${plain}\n${lines}`);
  const { code, out } = await rowfold(['check', 'alongs/salt-marsh-blanket', '--json'], top);
  expect(code).toBe(1);
  const { faults } = JSON.parse(out) as { faults: { code: string; line: number }[] };
  const first = plain.split('\n').length + 1;
  expect(faults.map((fault) => `${fault.code} ${fault.line - first}`)).toEqual([
    'photograph/missing 1',
    'photograph/says-nothing 2',
  ]);
  expect((await rowfold(['build', '--out', 'faulty'], top)).code).toBe(1);
});
