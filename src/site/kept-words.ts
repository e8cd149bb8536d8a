/**
 * Words shaped in one run, kept for the next on this computer: the tables by which a font sets letters together take longer
 * to read than all else a booklet needs. What is kept belongs to these fonts and to the library that shapes.
 */

import { createHash } from 'node:crypto';
import { appendFileSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { putShaped, type ShapedWord, shapedWords } from '../paint/fonts.ts';
import type { FontBytes } from '../paint/text-width.ts';
import type { Face } from '../scene/scene.ts';
import { PROJECT_FOLDER } from './project-folder.ts';

const STORE = path.join(PROJECT_FOLDER, '.cache/words');

/** A line of the file: of each glyph its number, its width, how far the pen goes on, how far it is moved right and up, and what it stands for. */
type Written = readonly [face: Face, word: string, glyphs: readonly (readonly number[])[]];

const FACES: readonly Face[] = ['text', 'text-bold', 'text-italic', 'title', 'title-bold'];

/** How many words of each face are in the file. */
const inFile = new WeakMap<FontBytes, Readonly<Record<Face, number>>>();

/** Before anything is set in the fonts, which are those of the packages. What is not there, or cannot be read, is shaped anew. */
export function recallWords(fonts: FontBytes, store = STORE): void {
  if (inFile.has(fonts)) return;
  for (const [face, word, glyphs] of writtenWords(fileIn(store))) putShaped(fonts[face], word, read(glyphs));
  inFile.set(fonts, counts(fonts));
}

/** When a booklet is done. Where nothing can be written, nothing is kept. */
export function keepWords(fonts: FontBytes, store = STORE): void {
  const before = inFile.get(fonts);
  const lines = FACES.flatMap((face) =>
    [...shapedWords(fonts[face])]
      .slice(before?.[face] ?? 0)
      .map(([word, shaped]) => written(face, word, shaped)),
  );
  if (lines.length === 0) return;
  try {
    mkdirSync(store, { recursive: true });
    appendFileSync(fileIn(store), lines.map((line) => `${JSON.stringify(line)}\n`).join(''));
    inFile.set(fonts, counts(fonts));
  } catch {
    return;
  }
}

function counts(fonts: FontBytes): Readonly<Record<Face, number>> {
  const of = (face: Face): number => shapedWords(fonts[face]).size;
  return {
    text: of('text'),
    'text-bold': of('text-bold'),
    'text-italic': of('text-italic'),
    title: of('title'),
    'title-bold': of('title-bold'),
  };
}

/** Its name says which fonts, and which library shaped: the packages are named with their versions. */
function fileIn(store: string): string {
  const packages = readFileSync(path.join(PROJECT_FOLDER, 'package.json'));
  return path.join(store, `${createHash('sha1').update(packages).digest('hex').slice(0, 16)}.jsonl`);
}

/** A file that two wrote at once, or that is cut short, is begun anew. */
function writtenWords(file: string): readonly Written[] {
  let lines = '';
  try {
    lines = readFileSync(file, 'utf8');
    const found: unknown = JSON.parse(`[${lines.trimEnd().replaceAll('\n', ',')}]`);
    if (Array.isArray(found) && found.every(isWritten)) return found;
  } catch {
    if (lines === '') return [];
  }
  rmSync(file, { force: true });
  return [];
}

function isWritten(line: unknown): line is Written {
  if (!Array.isArray(line)) return false;
  const [face, word, glyphs] = line;
  return (
    FACES.includes(face) &&
    typeof word === 'string' &&
    Array.isArray(glyphs) &&
    glyphs.every(
      (glyph) => Array.isArray(glyph) && glyph.length > LEAST_NUMBERS && glyph.every(Number.isFinite),
    )
  );
}

/** Before what a glyph stands for, which is one character at least. */
const LEAST_NUMBERS = 5;

function written(face: Face, word: string, shaped: ShapedWord): Written {
  const glyphs = shaped.map(({ id, advanceWidth, xAdvance, xOffset, yOffset, codePoints }) => [
    id,
    advanceWidth,
    xAdvance,
    xOffset,
    yOffset,
    ...codePoints,
  ]);
  return [face, word, glyphs];
}

function read(glyphs: Written[2]): ShapedWord {
  return glyphs.map(([id = 0, advanceWidth = 0, xAdvance = 0, xOffset = 0, yOffset = 0, ...codePoints]) => ({
    id,
    advanceWidth,
    codePoints,
    xAdvance,
    xOffset,
    yOffset,
  }));
}
