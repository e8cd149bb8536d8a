/** The house rules that a test can hold: who may import whom, how large a file may grow, what stands where. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/** The map of `src/`: a place imports only from itself and from those above it. */
const ORDER = [
  'units.ts',
  'escaped.ts',
  'source',
  'diagnostics',
  'stitches',
  'notation',
  'pattern',
  'explain',
  'fabric',
  'film',
  'proof',
  'measure',
  'check',
  'transcribe',
  'wording',
  'own',
  'teach',
  'scene',
  'symbols',
  'chart',
  'booklet',
  'paint',
  'once.ts',
  'part-repeats.ts',
  'fold-part.ts',
  'size-charts.ts',
  'compiled.ts',
  'row-table',
  'compile-size.ts',
  'compile-read.ts',
  'compile-own.ts',
  'compile.ts',
  'print-booklet.ts',
  'along',
  'site',
  'reader',
  'desk',
  'desk-page',
  'serve',
  'commands',
  'cli.ts',
];

/** Places that draw or print: the shapes are all they know. */
const ONLY_FROM: Readonly<Record<string, readonly string[]>> = {
  paint: ['paint', 'scene', 'units.ts'],
  scene: ['scene', 'units.ts'],
};

/** Only these touch the disk, the clock and the process. */
const IMPURE = ['site', 'reader', 'desk-page', 'serve', 'commands', 'cli.ts'];

const TOP_LEVEL = [
  '.ci',
  '.gitignore',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'alongs',
  'bundle.d.mts',
  'bundle.mjs',
  'eleventy.config.ts',
  'layouts',
  'package-lock.json',
  'package.json',
  'patterns',
  'rowfold.mjs',
  'shared',
  'src',
  'tests',
  'tsconfig.json',
];

/** Made by tools, and kept out of the repository. */
const UNTRACKED = /^(?:node_modules|_site.*|\.cache|\.git)$/;

const MOST_LINES = 400;

function filesUnder(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (UNTRACKED.test(entry.name)) return [];
    return entry.isDirectory() ? filesUnder(join(folder, entry.name)) : [join(folder, entry.name)];
  });
}

/** Paths are told from the top of the repository. */
const named = (file: string) => relative(root, file);
const read = (file: string) => readFileSync(file, 'utf8');

const sources = filesUnder(join(root, 'src')).filter((file) => file.endsWith('.ts'));
const writings = filesUnder(root).filter((file) => /\.(?:ts|js|css|njk|html|md|json|ya?ml|txt)$/.test(file));

interface Import {
  readonly from: string;
  readonly to: string;
}

function importsOf(file: string): Import[] {
  const found = read(file).matchAll(
    /^(?:import|export)\b[^'";]*?\bfrom\s+'([^']+)'|^import\s+'([^']+)'|\bimport\('([^']+)'\)/gm,
  );
  return [...found].map((match) => ({ from: file, to: match[1] ?? match[2] ?? match[3] ?? '' }));
}

const imports = sources.flatMap(importsOf);
const inner = imports.flatMap(({ from, to }) =>
  to.startsWith('.') ? [{ from, to: resolve(dirname(from), to) }] : [],
);

/** `pattern` for `src/pattern/read-pattern.ts`, `cli.ts` for `src/cli.ts`. */
const placeOf = (file: string) => relative(join(root, 'src'), file).split('/')[0] ?? '';

const told = ({ from, to }: Import) => `${named(from)} -> ${named(to)}`;

describe('imports', () => {
  test('are found', () => expect(inner.length).toBeGreaterThan(50));

  test('every place in src has its place in the order', () => {
    expect([...new Set(sources.map(placeOf))].filter((place) => !ORDER.includes(place))).toEqual([]);
  });

  test('go only upwards in the order', () => {
    const down = inner.filter(({ from, to }) => ORDER.indexOf(placeOf(to)) > ORDER.indexOf(placeOf(from)));
    expect(down.map(told)).toEqual([]);
  });

  test('never leave src, and always name the file with its ending', () => {
    // Data for other programs to read stands in shared/; the site starts Eleventy with the settings at the top.
    const allowed = /^(?:src\/|shared\/[a-z-]+\.json$|eleventy\.config\.ts$)/;
    const astray = inner.filter(({ to }) => !allowed.test(named(to)));
    expect(astray.map(told)).toEqual([]);
    expect(inner.filter(({ to }) => !/\.(?:ts|json)$/.test(to)).map(told)).toEqual([]);
  });

  test('of the painters and the scene are only shapes and units', () => {
    const beyond = inner.filter(({ from, to }) => ONLY_FROM[placeOf(from)]?.includes(placeOf(to)) === false);
    expect(beyond.map(told)).toEqual([]);
  });

  test('of the booklet know no PDF library', () => {
    const pdf = imports.filter(({ from, to }) => placeOf(from) === 'booklet' && /^pdf/.test(to));
    expect(pdf.map(told)).toEqual([]);
  });

  test('of the pure stages touch neither disk, process nor network', () => {
    const impure = imports.filter(
      ({ from, to }) => to.startsWith('node:') && !IMPURE.includes(placeOf(from)),
    );
    expect(impure.map(({ from, to }) => `${named(from)} -> ${to}`)).toEqual([]);
    const asks = /\b(?:Date\.now\(|new Date\(\)|Math\.random\(|process\.|fetch\(|performance\.)/;
    const asking = sources.filter((file) => !IMPURE.includes(placeOf(file)) && asks.test(read(file)));
    expect(asking.map(named)).toEqual([]);
  });

  test('of the commands load no writer of PDFs before it is asked for: a check would wait for it', () => {
    const loaded = loadedBy('src/cli.ts');
    expect(loaded.size).toBeGreaterThan(100);
    expect(loaded).not.toContain('pdfkit');
  });

  test('of what makes a size of her own load no reader of words: her page is sent none that are to be read', () => {
    const loaded = loadedBy('src/compile-own.ts');
    expect(loaded.size).toBeGreaterThan(100);
    expect(
      [...loaded].filter((file) => /src\/notation\/(?:read-|cursor\.ts|tokenize)/.test(file)).map(named),
    ).toEqual([]);
  });

  test('run in no ring', () => expect(ringsIn(inner)).toEqual([]));
});

/** Every file of ours, by its whole name, and every library that a file has loaded before its first line runs. */
function loadedBy(start: string): ReadonlySet<string> {
  const loaded = new Set<string>();
  const load = (file: string): void => {
    if (loaded.has(file) || !file.endsWith('.ts')) return;
    loaded.add(file);
    for (const [, to = ''] of read(file).matchAll(
      /^(?:import|export)\s(?!type\b)[^'";]*?\bfrom\s+'([^']+)'/gm,
    )) {
      if (to.startsWith('.')) load(resolve(dirname(file), to));
      else loaded.add(to);
    }
  };
  load(join(root, start));
  return loaded;
}

/** Every way that leads back to where it began, told once from each file where it closes. */
function ringsIn(arrows: readonly Import[]): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of arrows) next.set(from, [...(next.get(from) ?? []), to]);
  const done = new Set<string>();
  const rings: string[] = [];
  const follow = (file: string, way: readonly string[]): void => {
    if (way.includes(file)) rings.push([...way.slice(way.indexOf(file)), file].map(named).join(' -> '));
    if (way.includes(file) || done.has(file)) return;
    for (const to of next.get(file) ?? []) follow(to, [...way, file]);
    done.add(file);
  };
  for (const file of next.keys()) follow(file, []);
  return rings;
}

test('a ring of imports would be found', () => {
  const arrow = (from: string, to: string) => ({ from: join(root, from), to: join(root, to) });
  expect(ringsIn([arrow('a', 'b'), arrow('b', 'c'), arrow('c', 'b'), arrow('a', 'c')])).toEqual([
    'b -> c -> b',
  ]);
});

describe('files', () => {
  test(`hold no more than ${MOST_LINES} lines, tables of stitches and tests excepted`, () => {
    const long = [...sources, ...filesUnder(join(root, 'layouts')), join(root, 'eleventy.config.ts')]
      .filter((file) => !named(file).startsWith('src/stitches/'))
      .filter((file) => read(file).trimEnd().split('\n').length > MOST_LINES);
    expect(long.map(named)).toEqual([]);
  });

  test('of the source begin with a sentence that says what they are for', () => {
    expect(sources.filter((file) => !/^(?:#!.*\n)?(?:\/\*\*|\/\/)/.test(read(file))).map(named)).toEqual([]);
  });

  test('have names in small letters and hyphens, and none that could hold anything', () => {
    const names = sources.filter((file) => !/^[a-z0-9]+(?:-[a-z0-9]+)*(?:\.d)?\.ts$/.test(basename(file)));
    expect(names.map(named)).toEqual([]);
    const loose = /(?:^|[/-])(?:utils?|helpers?|common|misc|index|manager)(?:[/-]|\.ts$)/;
    expect(sources.filter((file) => loose.test(named(file))).map(named)).toEqual([]);
  });

  test('export by name, and leave no type open', () => {
    const open = /^export default\b|(?::|\bas|<|\|)\s*any\b(?!\s+[a-z])/m;
    expect(sources.filter((file) => open.test(withoutComments(read(file)))).map(named)).toEqual([]);
  });

  test('leave nothing for later and name no place on one machine', () => {
    // Put together here, so that this file does not hold them.
    const words = [
      'TO' + 'DO',
      'FIX' + 'ME',
      'XX' + 'X',
      '/wo' + 'rk/',
      '/ro' + 'ot/',
      '/ho' + 'me/',
      '/t' + 'mp/',
    ];
    const found = writings
      .filter((file) => basename(file) !== 'package-lock.json')
      .flatMap((file) =>
        words.filter((word) => read(file).includes(word)).map((word) => `${named(file)}: ${word}`),
      );
    expect(found).toEqual([]);
  });
});

function withoutComments(text: string): string {
  return text
    .replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '')
    .replace(/'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/g, "''");
}

test('the top of the repository holds what it should and nothing else', () => {
  const entries = readdirSync(root).filter((entry) => !UNTRACKED.test(entry));
  expect(entries.toSorted()).toEqual(TOP_LEVEL);
});

test('every folder of src is named in DEVELOPERS.md', () => {
  const guide = existsSync(join(root, 'DEVELOPERS.md')) ? read(join(root, 'DEVELOPERS.md')) : '';
  const folders = ORDER.filter((place) => existsSync(join(root, 'src', place)));
  expect(folders.filter((place) => !guide.includes(place.endsWith('.ts') ? place : `${place}/`))).toEqual([]);
});
