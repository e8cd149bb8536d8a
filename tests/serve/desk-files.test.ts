import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  keepNewPattern,
  patternFiles,
  readOne,
  savePattern,
  stampOf,
  Titles,
} from '../../src/serve/desk-files.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { copyFolder, GOOD, removeFolder, scratchFolder, writePattern } from '../commands/run-rowfold.ts';

let folder: string;
beforeEach(() => {
  folder = scratchFolder();
});
afterEach(() => removeFolder(folder));

const folders = () => ({ patterns: path.join(folder, 'patterns'), alongs: path.join(folder, 'alongs') });
const oneFile = async () => {
  const [file = ''] = await patternFiles(folders());
  const one = await readOne(file);
  if (one === null) throw new Error('no pattern');
  return one;
};

describe('the files that can lie on the desk', () => {
  test('are those of patterns and of the squares of alongs, also one that cannot be read', async () => {
    writePattern(folder, 'grey-square', GOOD);
    writePattern(folder, 'letters', new Uint8Array([0xff, 0xfe, 0x00]));
    copyFolder(
      path.join(PROJECT_FOLDER, 'alongs/salt-marsh-blanket'),
      path.join(folder, 'alongs/salt-marsh-blanket'),
    );
    const names = (await patternFiles(folders())).map((file) => path.relative(folder, file));
    expect(names.slice(0, 2)).toEqual(['patterns/grey-square/pattern.yaml', 'patterns/letters/pattern.yaml']);
    expect(names).toContain('alongs/salt-marsh-blanket/eelpath/pattern.yaml');
  });

  test('are none where there is no folder yet', async () => {
    expect(await patternFiles(folders())).toEqual([]);
  });

  test.each([
    ['title: Reed', 'Reed'],
    ['title: "Reed"  # for now', 'Reed'],
    ["about: a\ntitle:   'Reed Square' \r\nterms: US", 'Reed Square'],
    ['terms: US', 'grey-square'],
  ])('are called by their titles: %j', async (text, title) => {
    writePattern(folder, 'grey-square', text);
    const [file = ''] = await patternFiles(folders());
    expect(await new Titles().of(file)).toBe(title);
  });
});

describe('a file is saved', () => {
  test('over the text that was seen of it and no other', async () => {
    const file = writePattern(folder, 'grey-square', GOOD);
    const seen = await oneFile();
    expect(await savePattern(seen, 'mine\n', stampOf(GOOD))).toEqual({
      kind: 'saved',
      stamp: stampOf('mine\n'),
    });
    expect(readFileSync(path.join(folder, file), 'utf8')).toBe('mine\n');
    writeFileSync(path.join(folder, file), 'theirs\n');
    expect(await savePattern(await oneFile(), 'mine again\n', stampOf('mine\n'))).toEqual({
      kind: 'changed',
    });
    expect(readFileSync(path.join(folder, file), 'utf8')).toBe('theirs\n');
  });

  test('with its lines ending as they did', async () => {
    const before = 'title: Reed\r\nterms: US\r\n';
    const file = writePattern(folder, 'grey-square', before);
    await savePattern(await oneFile(), 'title: Sedge\nterms: US\n', stampOf(before));
    expect(readFileSync(path.join(folder, file), 'utf8')).toBe('title: Sedge\r\nterms: US\r\n');
  });

  test('never where it was not text', async () => {
    writePattern(folder, 'letters', new Uint8Array([0xff, 0xfe, 0x00]));
    expect(await savePattern(await oneFile(), 'text', stampOf(''))).toEqual({ kind: 'changed' });
  });
});

test('a new pattern is kept where there is none, and never leaves the folder of patterns', async () => {
  const { patterns } = folders();
  expect(await keepNewPattern(patterns, 'reed', GOOD)).toMatch(/patterns\/reed\/pattern\.yaml$/);
  expect(await keepNewPattern(patterns, 'reed', 'other')).toBeNull();
  expect(readFileSync(path.join(patterns, 'reed/pattern.yaml'), 'utf8')).toBe(GOOD);
  for (const name of ['', '..', '../reed', 'Reed', 'a/b'])
    await expect(keepNewPattern(patterns, name, GOOD)).rejects.toThrow();
});
