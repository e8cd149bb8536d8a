/** Photographs on a real disk: what is found, what is told of those that cannot be shown, and how much memory that takes. */

import { execFileSync } from 'node:child_process';
import { existsSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildSite } from '../../src/site/build-site.ts';
import { lookAtPhotographs } from '../../src/site/look-at-photographs.ts';
import { GOOD, removeFolder, rowfold, scratchFolder, writePattern } from '../commands/run-rowfold.ts';
import { onItsSide, photograph, photographLines, savePhotographs, withPlace } from './take-photographs.ts';

const top = scratchFolder();
const folder = path.join(top, 'patterns/grey-square');
const look = async (name: string) => (await lookAtPhotographs([name], folder)).get(name);
afterAll(() => removeFolder(top));

let whole: Buffer;
beforeAll(async () => {
  whole = await withPlace(await photograph(1500, 1000));
  const grain = await sharp({
    create: {
      width: 900,
      height: 600,
      channels: 3,
      background: '#888',
      noise: { type: 'gaussian', mean: 128, sigma: 40 },
    },
  })
    .png()
    .toBuffer();
  const begun = (bytes: Buffer): Buffer => bytes.subarray(0, Math.round(bytes.length / 2));
  savePhotographs(folder, {
    'whole.jpg': whole,
    'side.jpg': await onItsSide(await photograph(1500, 1000)),
    'png-called.jpg': await sharp(whole).png().toBuffer(),
    'whole.webp': await sharp(whole).webp().toBuffer(),
    'begun.jpg': begun(await sharp(grain).jpeg().toBuffer()),
    'begun-fine.jpg': begun(await sharp(grain).jpeg({ progressive: true }).toBuffer()),
    'begun.png': begun(grain),
    'begun.webp': begun(await sharp(grain).webp().toBuffer()),
    'head-only.jpg': whole.subarray(0, 40),
    'words.jpg': 'This is a letter to my aunt.',
    'page.jpg': '<svg xmlns="http://www.w3.org/2000/svg"><rect width="9" height="9"/></svg>',
    'phone.jpg': Buffer.from('\0\0\0\x18ftypheic\0\0\0\0mif1heic', 'latin1'),
    'empty.jpg': '',
    'small.jpg': await sharp(await photograph(640, 480))
      .jpeg()
      .toBuffer(),
    'huge.jpg': await sharp({ create: { width: 14_000, height: 10_000, channels: 3, background: '#a86' } })
      .jpeg()
      .toBuffer(),
  });
  writeFileSync(path.join(top, 'elsewhere.jpg'), whole);
  symlinkSync(path.join(top, 'elsewhere.jpg'), path.join(folder, 'way-out.jpg'));
});

describe('on the disk', () => {
  test('a photograph is measured the way it is looked at, and told by its bytes and not by its name', async () => {
    expect(await look('whole.jpg')).toMatchObject({ kind: 'picture', widthPx: 1500, heightPx: 1000 });
    expect(await look('side.jpg')).toMatchObject({ kind: 'picture', widthPx: 1500, heightPx: 1000 });
    expect((await sharp(path.join(folder, 'side.jpg')).metadata()).width).toBe(1000);
    expect(await look('png-called.jpg')).toMatchObject({ kind: 'picture', widthPx: 1500 });
    expect(await look('whole.webp')).toMatchObject({ kind: 'picture', widthPx: 1500 });
  });

  test.each(['begun.jpg', 'begun-fine.jpg', 'begun.png', 'begun.webp', 'head-only.jpg'])(
    '%s, of which a part is missing, is broken',
    async (name) => {
      expect(await look(name)).toEqual({ kind: 'broken' });
    },
  );

  test('what is no photograph is called what it is', async () => {
    expect(await look('words.jpg')).toEqual({ kind: 'no picture', given: null });
    expect(await look('empty.jpg')).toEqual({ kind: 'no picture', given: null });
    expect(await look('page.jpg')).toEqual({ kind: 'no picture', given: 'a drawing or a page of the web' });
    expect(await look('phone.jpg')).toEqual({
      kind: 'no picture',
      given: 'a HEIC, as some phones save their photographs',
    });
  });

  test('a name that is not there gets the nearest, and a link that leads out of the folder is not followed', async () => {
    expect(await look('Whole.jpg')).toEqual({ kind: 'missing', near: 'whole.jpg' });
    expect(await look('nothing-like-it.tif')).toEqual({ kind: 'missing', near: null });
    expect(await look('way-out.jpg')).toEqual({ kind: 'outside' });
  });

  test('more than a hundred and twenty million dots are not scaled down', async () => {
    expect(await look('huge.jpg')).toMatchObject({ kind: 'too large', megapixels: 140 });
  });

  test.each([false, true])(
    'a hundred million dots are read and scaled within 700 MB, fine from the first line or getting finer: %j',
    async (progressive) => {
      const name = `large-${progressive}.jpg`;
      const large = sharp({ create: { width: 11_547, height: 8660, channels: 3, background: '#a86' } });
      savePhotographs(folder, { [name]: await large.jpeg({ progressive }).toBuffer() });
      // In a process of its own, which tells at its end what it took at the most.
      const code = `
        const { lookAtPhotographs } = await import(${JSON.stringify(import.meta.resolve('../../src/site/look-at-photographs.ts'))});
        const look = (await lookAtPhotographs([${JSON.stringify(name)}], ${JSON.stringify(folder)})).values().next().value;
        console.log(JSON.stringify({ ...look, mostKb: process.resourceUsage().maxRSS }));`;
      const words = ['--import', import.meta.resolve('tsx'), '--input-type=module', '-e', code];
      const said = JSON.parse(execFileSync(process.execPath, words, { encoding: 'utf8' }));
      expect(said).toMatchObject({ kind: 'picture', widthPx: 11_547, heightPx: 8660 });
      expect(said.mostKb).toBeLessThan(700_000);
    },
  );

  test('a photograph that is changed is looked at anew', async () => {
    const name = 'changing.jpg';
    savePhotographs(folder, { [name]: whole });
    const before = await look(name);
    savePhotographs(folder, { [name]: await withPlace(await photograph(1200, 900)) });
    expect(await look(name)).toMatchObject({ widthPx: 1200 });
    expect(await look(name)).not.toEqual(before);
  });
});

test('a photograph that goes while the site is built stops the build in words, and the old site stays', async () => {
  const other = path.join(top, 'other');
  const lines = photographLines({ 'going.jpg': 'shows: The square on a chair' });
  writePattern(other, 'grey-square', `${GOOD}${lines}`);
  const going = path.join(other, 'patterns/grey-square/going.jpg');
  // With a name behind it that no other run has, so that nothing made of it is in the store.
  writeFileSync(going, Buffer.concat([await withPlace(await photograph(1200, 800)), Buffer.from(other)]));
  const out = path.join(other, '_site');
  const result = await buildSite({
    patterns: path.join(other, 'patterns'),
    alongs: path.join(other, 'alongs'),
    asOf: () => 0,
    out,
    progress: (words) => {
      if (words === 'setting the pages') rmSync(going, { force: true });
    },
  });
  expect(result).toEqual({
    kind: 'settings',
    why: 'the photograph "going.jpg" was changed or taken away while it was read; try once more',
  });
  expect(existsSync(out)).toBe(false);
});

interface Told {
  readonly faults: readonly { readonly code: string; readonly line: number }[];
}

test('the check tells every fault at its place, and a warning can be silenced', async () => {
  const lines = photographLines({
    'whole.jpg': 'shows: The square on a chair',
    'begun.jpg': 'shows: The square on a table',
    'phone.jpg': 'shows: The square on a bench',
    'way-out.jpg': 'shows: The square on a wall',
    '../../elsewhere.jpg': 'shows: The square on a gate',
    'small.jpg': 'shows: The square on a shelf',
    'Whole.jpg': 'by: Nobody',
  });
  writePattern(top, 'grey-square', `${GOOD}${lines}`);
  const { code, out } = await rowfold(['check', '--json'], top);
  expect(code).toBe(1);
  const { faults } = JSON.parse(out) as Told;
  const first = GOOD.split('\n').length + 1;
  const told = faults.map((fault) => `${fault.code} ${fault.line - first}`);
  // Without what one shows, the file is not read any further: its other photographs are looked at when that is mended.
  expect(told).toContain('file/missing 6');
  writePattern(top, 'grey-square', `${GOOD}${lines.replace('by: Nobody', 'shows: The square on a hook')}`);
  const mended = JSON.parse((await rowfold(['check', '--json'], top)).out) as Told;
  expect(mended.faults.map((fault) => `${fault.code} ${fault.line - first}`)).toEqual([
    'photograph/broken 1',
    'photograph/kind 2',
    'photograph/outside 3',
    'photograph/outside 4',
    'photograph/small 5',
    'photograph/missing 6',
  ]);
  const only = photographLines({ 'small.jpg': 'shows: The square on a shelf' });
  writePattern(top, 'grey-square', `${GOOD}${only}allow: {photograph/small: It is all I have of it.}\n`);
  expect(JSON.parse((await rowfold(['check', '--json'], top)).out)).toEqual({ ok: true, faults: [] });
});
