import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runCommand } from '../../src/commands/run-command.ts';
import { SHAPES, starterPattern } from '../../src/commands/starter-pattern.ts';
import { checkPattern, compilePattern } from '../../src/compile.ts';
import { removeFolder, rowfold, scratchFolder } from './run-rowfold.ts';

const folder = scratchFolder();
afterAll(() => removeFolder(folder));
const patterns = path.join(folder, 'patterns');
const fileOf = (name: string) => path.join(patterns, name, 'pattern.yaml');

/** Someone at the terminal who gives these answers, and then ends her typing. */
async function answering(answers: readonly string[], words: readonly string[]) {
  const left = [...answers];
  const asked: string[] = [];
  const told: string[] = [];
  const code = await runCommand(['new', ...words, '--patterns', patterns], {
    say: (line) => void told.push(line),
    tell: (line) => void told.push(line),
    ask: async (question) => {
      asked.push(question);
      return left.shift() ?? null;
    },
    over: null,
    colour: false,
    width: 80,
  });
  return { code, asked, told: told.join('\n') };
}

test('a starter pattern checks clean, without a warning, and is never written over', async () => {
  const made = await rowfold(['new', 'my-square'], folder);
  expect(made).toMatchObject({ code: 0, err: '' });
  expect(readFileSync(fileOf('my-square'), 'utf8')).toContain('title: "My Square"');

  const checked = await rowfold(['check', 'patterns/my-square', '--json'], folder);
  expect(JSON.parse(checked.out)).toEqual({ ok: true, faults: [] });

  const before = readFileSync(fileOf('my-square'));
  const again = await rowfold(['new', 'my-square'], folder);
  expect(again.err).toContain('left as it is');
  expect(again.code).toBe(2);
  expect(readFileSync(fileOf('my-square'))).toEqual(before);
});

describe.each(['US', 'UK'] as const)('in %s terms', (terms) => {
  describe.each(SHAPES)('worked %s', (shape) => {
    test.each([1, 2, 3, 5, 12])('in %i sizes it has no fault at all, and each size is larger', (count) => {
      const sizes = Array.from({ length: count }, (_, i) => (i === 0 ? 'S' : `${i} XL`));
      const text = starterPattern('One "More"', { terms, shape, sizes });
      expect(checkPattern({ file: 'pattern.yaml', text }, 'one')).toEqual([]);
      const compiled = compilePattern({ file: 'pattern.yaml', text }, 'one');
      expect(compiled.pattern).toMatchObject({ title: 'One "More"', terms });
      expect(compiled.sizes.map(({ size }) => size.name)).toEqual(sizes);
      const widths = compiled.sizes.map(({ measures }) => measures.widthMm ?? 0);
      expect(widths.every((width, i) => width > (widths[i - 1] ?? 0))).toBe(true);
      const closings = new Set(compiled.sizes[0]?.fabric.rows.slice(1).map(({ closing }) => closing));
      expect([...closings]).toEqual([shape === 'flat' ? 'flat' : 'joined']);
    });
  });
});

test('asks for what was not said, takes the usual where nothing is typed, and asks again what it did not understand', async () => {
  const made = await answering(
    ['Sea Glass', 'Australian', 'uk', 'in the round', 'baby, baby', 'baby, adult'],
    [],
  );
  expect(made.code).toBe(0);
  expect(made.asked.map((question) => question.split('?')[0])).toEqual([
    'What is the pattern called',
    'Do you write in US or UK terms',
    'Do you write in US or UK terms',
    'Is it worked flat or round',
    'Which sizes has it, with commas between',
    'Which sizes has it, with commas between',
  ]);
  expect(made.told).toContain('US, UK, not Australian');
  expect(made.told).toContain('Two sizes are called baby');
  expect(readFileSync(fileOf('sea-glass'), 'utf8')).toBe(
    starterPattern('Sea Glass', { terms: 'UK', shape: 'round', sizes: ['baby', 'adult'] }),
  );

  const usual = await answering(['', '', ''], ['plain-square']);
  expect(usual.asked).toHaveLength(3);
  expect(readFileSync(fileOf('plain-square'), 'utf8')).toBe(starterPattern('Plain Square'));
});

test('asks nothing that was said, and nobody where there is no terminal', async () => {
  const all = ['--title', 'Told', '--terms', 'UK', '--shape', 'round', '--sizes', 'one'];
  expect((await answering([], ['told', ...all])).asked).toEqual([]);
  const untold = await rowfold(['new', '--title', 'Wholly Told', '--shape', 'round'], folder);
  expect(untold).toMatchObject({ code: 0, err: '' });
  expect(readFileSync(fileOf('wholly-told'), 'utf8')).toContain('Rnd 1');
  expect((await rowfold(['new'], folder)).code).toBe(2);
});

test.each([
  [['square', '--terms', 'AU'], '--terms takes US, UK, not AU'],
  [['square', '--shape', 'oval'], '--shape takes flat, round, not oval'],
  [['square', '--sizes', 'small,,large'], 'Each size has a name'],
  [['square', '--sizes', 'a,b,c,d,e,f,g,h,i,j,k,l,m'], '12 sizes at most'],
  [['--title', '…'], "A folder's name cannot be made of"],
])('says what is wrong with %j, and writes nothing', async (words, message) => {
  const wrong = await answering(['', '', '', ''], words);
  expect(wrong.code).toBe(2);
  expect(wrong.told).toContain(message);
  expect(existsSync(fileOf('square'))).toBe(false);
});

test('leaves without writing when she ends it, and asks nothing for a pattern that is there', async () => {
  const left = await answering(['Half Done'], []);
  expect(left).toMatchObject({ code: 2, told: 'Nothing was written.' });
  expect(existsSync(fileOf('half-done'))).toBe(false);
  expect((await answering([], ['my-square'])).asked).toEqual([]);
});
