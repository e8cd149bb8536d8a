/** Words shaped in one run, found again in the next. */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { shapedWords, wordShaper } from '../../src/paint/fonts.ts';
import type { FontBytes } from '../../src/paint/text-width.ts';
import { readFontFile } from '../../src/site/font-files.ts';
import { keepWords, recallWords } from '../../src/site/kept-words.ts';
import { removeFolder, scratchFolder } from '../commands/run-rowfold.ts';

const store = path.join(scratchFolder(), 'words');
afterAll(() => removeFolder(path.dirname(store)));

/** As another process has them: opened anew. */
function newFonts(): FontBytes {
  return {
    text: readFontFile('text'),
    'text-bold': readFontFile('text-bold'),
    'text-italic': readFontFile('text-italic'),
    title: readFontFile('title'),
    'title-bold': readFontFile('title-bold'),
  };
}

const WORDS = ['Row ', 'afford', 'AV', 'q\u0323\u0301', '½ ', 'ΐ'];
/** A space is shaped by itself. */
const SHAPED = ['Row', ' ', 'afford', 'AV', 'q\u0323\u0301', '½', 'ΐ'];
const lines = () =>
  readFileSync(path.join(store, readdirSync(store)[0] ?? ''), 'utf8')
    .trimEnd()
    .split('\n');
const spoil = (text: string) => writeFileSync(path.join(store, readdirSync(store)[0] ?? ''), text);

test('what was kept is as it was shaped, glyph for glyph', () => {
  const first = newFonts();
  recallWords(first, store);
  const shaped = WORDS.map((word) => [wordShaper(first.text)(word), wordShaper(first.title)(word)]);
  keepWords(first, store);
  const second = newFonts();
  recallWords(second, store);
  expect([...shapedWords(second.text).keys()]).toEqual(SHAPED);
  expect(WORDS.map((word) => [wordShaper(second.text)(word), wordShaper(second.title)(word)])).toEqual(
    shaped,
  );
  expect(lines()).toHaveLength(2 * SHAPED.length);
});

test('only what is new is added, and nothing twice', () => {
  const fonts = newFonts();
  recallWords(fonts, store);
  wordShaper(fonts.text)('Row ');
  wordShaper(fonts['text-italic'])('Row');
  keepWords(fonts, store);
  keepWords(fonts, store);
  expect(lines()).toHaveLength(2 * SHAPED.length + 1);
});

test.each([
  ['cut short', () => spoil(lines().join('\n').slice(0, -9))],
  ['of something else', () => spoil('["text","Row ",[[1,2]]]\n')],
  ['of numbers that are none', () => spoil('["text","Row ",[[1,2,3,0,null,82]]]\n')],
  ['of a face that is not known', () => spoil('["gothic","Row ",[[1,2,3,0,0,82]]]\n')],
])('a file %s is begun anew', (_, spoiled) => {
  const kept = newFonts();
  wordShaper(kept.text)('Row ');
  keepWords(kept, store);
  spoiled();
  const fonts = newFonts();
  recallWords(fonts, store);
  expect(shapedWords(fonts.text).size).toBe(0);
  expect(readdirSync(store)).toEqual([]);
});

test('where nothing can be written the booklet is made all the same', () => {
  const fonts = newFonts();
  recallWords(fonts, '/dev/null/words');
  wordShaper(fonts.text)('Row ');
  keepWords(fonts, '/dev/null/words');
  expect(wordShaper(fonts.text)('Row ').length).toBe(4);
});
