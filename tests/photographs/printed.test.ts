/** Booklets with photographs: in their place, fine enough to print, said to those who do not see them, and nothing of the camera. */

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { CompiledPattern } from '../../src/compiled.ts';
import type { BookletChoice } from '../../src/print-booklet.ts';
import { bookletFile } from '../../src/site/booklet-file.ts';
import { compilePatterns } from '../../src/site/compile-patterns.ts';
import { readPatterns } from '../../src/site/read-patterns.ts';
import { elementsIn, readStructure } from '../booklet/read-structure.ts';
import { GOOD, removeFolder, rowfold, scratchFolder, writePattern } from '../commands/run-rowfold.ts';
import {
  onItsSide,
  photograph,
  photographLines,
  savePhotographs,
  TELLTALES,
  withPlace,
} from './take-photographs.ts';

const top = scratchFolder();
afterAll(() => removeFolder(top));

const SHOWN = ['The square, red over blue', 'The square seen from its side', 'The edge of the square'];

async function compiled(name: string, lines: string): Promise<CompiledPattern> {
  writePattern(top, name, `${GOOD}${lines}`);
  const [file] = compilePatterns(await readPatterns([path.join(top, 'patterns', name)]));
  if (file === undefined) throw new Error(`${name} is not there`);
  return file.compiled;
}

let pictured: CompiledPattern;
let plain: CompiledPattern;
beforeAll(async () => {
  savePhotographs(path.join(top, 'patterns/grey-square'), {
    'cover.jpg': await withPlace(await photograph(2400, 1600)),
    'side.jpg': await onItsSide(await photograph(1500, 1000)),
    'edge.png': await photograph(300, 200),
  });
  pictured = await compiled(
    'grey-square',
    photographLines({
      'cover.jpg': `shows: "${SHOWN[0]}", by: A Friend`,
      'side.jpg': `shows: ${SHOWN[1]}`,
      'edge.png': `shows: ${SHOWN[2]}, part: Square`,
    }),
  );
  plain = await compiled('plain-square', '');
});

async function booklet(of: CompiledPattern, choice: Partial<BookletChoice> = {}) {
  const [size] = of.sizes;
  if (size === undefined) throw new Error('no size');
  return Buffer.from(await bookletFile(of, size, { dialect: 'us', paper: 'A4', ...choice }));
}

interface Printed {
  readonly page: number;
  readonly dots: string;
  readonly perInch: number;
}

/** As poppler lists them. */
function picturesIn(bytes: Buffer): Printed[] {
  const file = path.join(top, 'listed.pdf');
  writeFileSync(file, bytes);
  const lines = execFileSync('pdfimages', ['-list', file], { encoding: 'utf8' }).split('\n').slice(2);
  return lines
    .filter((line) => line.trim() !== '')
    .map((line) => line.trim().split(/\s+/))
    .map((found) => ({
      page: Number(found[0]),
      dots: `${found[3]}x${found[4]} ${found[8]}`,
      perInch: Number(found[12]),
    }));
}

describe('a booklet with photographs', () => {
  test('has the cover on its first page and the others in their places, between 150 and 320 dots to the inch', async () => {
    const found = picturesIn(await booklet(pictured));
    expect(found.map(({ dots }) => dots)).toEqual(['1360x907 jpeg', '780x520 jpeg', '300x200 jpeg']);
    expect(found[0]?.page).toBe(1);
    for (const { perInch } of found) {
      expect(perInch).toBeGreaterThanOrEqual(149);
      expect(perInch).toBeLessThanOrEqual(320);
    }
  });

  test('says what each shows, in figures of the order of the pages, and who took them', async () => {
    const { pages, artifacts } = await readStructure(await booklet(pictured));
    const figures = pages.flatMap((page) => elementsIn(page)).filter(({ role }) => role === 'Figure');
    const said = figures.map(({ alternative }) => alternative);
    expect(said.filter((words) => SHOWN.includes(words ?? ''))).toEqual(SHOWN);
    expect(JSON.stringify(pages)).toContain('Photographs: A Friend.');
    expect(JSON.stringify(artifacts)).not.toContain('Friend');
  });

  test('comes in large print and folded, and is sound', async () => {
    for (const form of ['large print', 'folded'] as const) {
      const bytes = await booklet(pictured, { form });
      expect(
        picturesIn(bytes).map(({ dots }) => dots),
        form,
      ).toContain('1360x907 jpeg');
      const file = path.join(top, 'sound.pdf');
      writeFileSync(file, bytes);
      expect(execFileSync('qpdf', ['--check', file], { encoding: 'utf8' })).toContain('No syntax');
    }
  });

  test('has none with little ink or in words only', async () => {
    for (const choice of [{ lowInk: true }, { holds: 'words' }] as const) {
      const bytes = await booklet(pictured, choice);
      expect(picturesIn(bytes)).toEqual([]);
      expect(JSON.stringify((await readStructure(bytes)).pages)).not.toContain('Photograph');
    }
  });

  test('is the same bytes twice, and holds nothing that the camera wrote', async () => {
    const bytes = await booklet(pictured);
    expect(bytes.equals(await booklet(pictured))).toBe(true);
    expect(TELLTALES.filter((word) => bytes.includes(word))).toEqual([]);
  });

  test('is larger than one without by little more than its photographs', async () => {
    const [withThem, without] = [await booklet(pictured), await booklet(plain)];
    expect(withThem.length - without.length).toBeLessThan(60_000);
    expect(picturesIn(without)).toEqual([]);
  });
});

test('without a photograph the cover keeps its drawing', async () => {
  const onCover = async (of: CompiledPattern) => {
    const [first] = (await readStructure(await booklet(of))).pages;
    return first === undefined ? [] : elementsIn(first).flatMap(({ alternative }) => alternative ?? []);
  };
  expect(await onCover(pictured)).toEqual([SHOWN[0]]);
  expect((await onCover(plain)).join()).toContain('fabric as it looks');
});

test('the command tells of a broken photograph and makes no booklet', async () => {
  savePhotographs(path.join(top, 'patterns/broken-square'), {
    'cover.jpg': (await withPlace(await photograph(2400, 1600))).subarray(0, 3000),
  });
  writePattern(top, 'broken-square', `${GOOD}${photographLines({ 'cover.jpg': `shows: ${SHOWN[1]}` })}`);
  const { code, out, err } = await rowfold(['booklet', 'patterns/broken-square', '--size', 'small'], top);
  expect(code).toBe(1);
  expect(err).toContain('photograph/broken');
  expect(out).toBe('');
});

test('a booklet in a size of her own has them as well', async () => {
  const asked = [
    'booklet',
    'patterns/grey-square',
    '--size',
    'small',
    '--width',
    '30 cm',
    '--out',
    'own.pdf',
  ];
  expect((await rowfold(asked, top)).code).toBe(0);
  const lines = execFileSync('pdfimages', ['-list', path.join(top, 'own.pdf')], { encoding: 'utf8' });
  expect(lines).toContain('1360');
});
