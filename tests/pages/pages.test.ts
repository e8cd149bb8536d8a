/**
 * Whole pages of instructions typed as designers, magazines and old books type them, all invented for this test and
 * worked by hand by whoever wrote them: beside each stands in `.expect` what is truly odd about it. `told.txt` says what
 * the checker tells of each page, so that a page that is read better or worse shows. Those of `first` were read while
 * the reader was made to read them; those of the others were
 * kept back until the end of that, and read better since.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { compileText } from '../../src/compile.ts';

const FOLDERS = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth'];

function toldOf(folder: string, name: string): string {
  const file = join(import.meta.dirname, folder, name);
  const text = readFileSync(`${file}.txt`, 'utf8');
  const odd = readFileSync(`${file}.expect`, 'utf8').trim().split('\n');
  const { diagnostics } = compileText({ file: `${name}.txt`, text }, 'page');
  const told = diagnostics
    .filter(({ severity }) => severity !== 'note')
    .map(({ severity, code, message, span }) => {
      const line = text.slice(0, span.start).split('\n').length;
      return `  ${severity} ${code}, line ${line}: ${message}`;
    });
  return [`${folder}/${name}`, ...odd.map((line) => `  truly: ${line}`), ...told].join('\n');
}

test('what is told of each page', async () => {
  const pages = FOLDERS.flatMap((folder) =>
    readdirSync(join(import.meta.dirname, folder))
      .filter((file) => file.endsWith('.txt'))
      .map((file) => toldOf(folder, file.replace(/\.txt$/, ''))),
  );
  expect(pages).toHaveLength(192);
  await expect(`${pages.join('\n\n')}\n`).toMatchFileSnapshot(join(import.meta.dirname, 'told.txt'));
});

test.each(['moss-washcloth', 'mandala', 'oval-rug', 'ribbed-beanie', 'baby-booties', 'tapestry-basket'])(
  'nothing false is told of %s',
  (name) => {
    expect(toldOf('first', name)).toBe(`first/${name}\n  truly: clean`);
  },
);

test.each([
  'rainy-dishcloth',
  'tidy-basket',
  'dumpling-booties',
  'foggy-mitts',
  'woodsmoke-beanie',
  'deckchair-ripple',
  'saltwater-scarf',
])('no error is told of %s, which has none', (name) => {
  expect(toldOf('third', name)).not.toContain('  error ');
});

test.each([
  'basketweave-hot-pad',
  'copper-creek-beanie',
  'harbor-ripple',
  'honey-hexagon-coaster',
  'lakeside-basket',
  'pebble-washcloth',
  'sunburst-mandala',
  'willow-shell-scarf',
])('nothing false is told of %s, which was kept back', (name) => {
  expect(toldOf('fourth', name)).toBe(`fourth/${name}\n  truly: clean`);
});

test.each(['frost-star', 'my-first-scarf'])('nothing is told of %s but what is left out', (name) => {
  expect(toldOf('fourth', name)).not.toMatch(/\n {2}(?:error|warning) /);
});

test('of a slipover in paragraphs only its wrong count is told', () => {
  const told = toldOf('fourth', 'heathland-slipover').split('\n').slice(2);
  expect(told).toEqual(['  error count/mismatch, line 13: Row 98 makes 62 htr, but 66 is stated']);
});

test.each(['corner-cushion', 'flower-brooch', 'triangle-shawl'])(
  'nothing false is told of the flat %s',
  (name) => {
    expect(toldOf('fifth', name)).toBe(`fifth/${name}\n  truly: clean`);
  },
);

test('nothing false is told of a cushion of squares', () => {
  expect(toldOf('fifth', 'patchwork-cushion')).toBe('fifth/patchwork-cushion\n  truly: clean');
});

test.each(['chevron-scarf', 'granny-square-tote', 'moss-stitch-blanket', 'tea-towel-edging'])(
  'nothing false is told of the edges of %s',
  (name) => {
    expect(toldOf('sixth', name)).toBe(`sixth/${name}\n  truly: clean`);
  },
);

test.each([
  ['baby-bonnet', 'warning row/faces'],
  ['boxy-tee', 'error count/mismatch'],
  ['lemon-peel-placemat', 'error repeat/uneven'],
])('of %s only what is truly odd is told', (name, told) => {
  const [, , only, ...more] = toldOf('sixth', name).split('\n');
  expect([only?.trim().startsWith(told), more]).toEqual([true, []]);
});

test.each([
  'crunch-dishcloth',
  'hearthside-slippers',
  'heather-vstitch-shawl',
  'jacaranda-ripple',
  'lazy-sunday-pullover',
  'low-tide-mandala',
  'mitered-mat',
  'parlor-doily',
  'tidy-basket',
  'woodshed-mittens',
])('nothing false is told of %s, whoever typed it', (name) => {
  expect(toldOf('eighth', name)).toBe(`eighth/${name}\n  truly: clean`);
});

test.each([
  'aunt-wyns-potholder',
  'earwarmer-forum',
  'granny-stripe-lapghan',
  'harbour-mesh-stole',
  'long-drive-wristers',
  'slouchy-hdc-beanie',
  'sofa-arm-caddy',
  'tray-cloth-edging',
])('nothing false is told of %s by now', (name) => {
  expect(toldOf('ninth', name)).toBe(`ninth/${name}\n  truly: clean`);
});

test.each([
  ['lullaby-shell-blanket', ['error repeat/uneven']],
  ['pocket-whale', ['error row/unworked', 'error count/mismatch']],
  ['six-point-coasters', ['error count/mismatch']],
])('of %s what is truly odd is told, and nothing else', (name, codes) => {
  const told = toldOf('ninth', name).split('\n').slice(2);
  expect(told.map((line) => line.trim().split(',')[0])).toEqual(codes);
});
