/** Pasted texts in several houses' styles beside the pattern files they become and what is told of them. */

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkPattern, compilePattern, compileText } from '../../src/compile.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { renderDiagnostics } from '../../src/diagnostics/render.ts';
import { fileOffset } from '../../src/source/mapped-text.ts';
import { lineColumn, type Source } from '../../src/source/span.ts';
import { listing } from '../../src/transcribe/listing.ts';
import { askedOfText, patternFileText } from '../../src/transcribe/pattern-file-text.ts';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { linesWithWords, uncovered, wordsLost } from './nothing-lost.ts';

/** Words that do not stand in the text: those that make a note of a line, a heading's yarn, or a row of a table's. */
const INSERTED = /^Note: |^With [A-Z]+\d?\.$|^Rnds? \d+(?:-\d+)?: .*\(\d+\)$/;

const folder = `${import.meta.dirname}/texts`;
const names = readdirSync(folder);

function pasted(name: string): Source {
  return { file: 'input.txt', text: readFileSync(`${folder}/${name}/input.txt`, 'utf8') };
}

function fileOf(name: string): Source {
  const text = patternFileText(transcribe(pasted(name)), name, (source) => checkPattern(source, name));
  return { file: 'pattern.yaml', text };
}

/** Faults of the rows and their words, which do not hang on the form the text is kept in. */
function faultsOfWork({ diagnostics }: CompiledPattern): string[] {
  return diagnostics
    .filter(({ code }) => !/^(?:file|text|booklet)\//.test(code))
    .map(({ code, message, sizes }) => `${code} ${sizes.join(' ')} ${message}`)
    .sort();
}

test('there are texts in at least eight styles', () => expect(names.length).toBeGreaterThanOrEqual(8));

describe.each(names)('%s', (name) => {
  test('becomes the pattern file and the listing that were read and found right', async () => {
    const source = pasted(name);
    const transcript = transcribe(source);
    const file = fileOf(name);
    await expect(file.text).toMatchFileSnapshot(`${folder}/${name}/pattern.yaml`);
    const texts = new Map([source, file].map((one) => [one.file, one.text]));
    const faults = renderDiagnostics([...askedOfText(transcript), ...checkPattern(file, name)], texts);
    await expect(`${listing(transcript)}\n\n${faults}`).toMatchFileSnapshot(`${folder}/${name}/listing.txt`);
  });

  test('loses no line: each is recognised or kept', () => {
    const transcript = transcribe(pasted(name));
    expect(linesWithWords(transcript.source.text).length).toBeGreaterThan(1);
    expect(uncovered(transcript)).toEqual([]);
    expect(wordsLost(transcript, fileOf(name).text)).toEqual([]);
  });

  test('has the same faults as pasted and as a pattern file', () => {
    expect(faultsOfWork(compileText(pasted(name), name))).toEqual(
      faultsOfWork(compilePattern(fileOf(name), name)),
    );
  });

  test('has its faults placed in its own lines, and none of its ornaments', () => {
    const source = pasted(name);
    for (const { code, file, span } of compileText(source, name).diagnostics) {
      expect(code).not.toBe('booklet/character');
      expect(file).toBe('input.txt');
      expect(span.end).toBeLessThanOrEqual(source.text.length);
      expect(source.text.slice(span.start, span.end).trim()).not.toBe('');
    }
  });

  test('keeps the place of every character of its rows', () => {
    const { source, parts } = transcribe(pasted(name));
    const rows = parts.flatMap(({ lines }) => lines).filter((row) => !INSERTED.test(row.text));
    for (const row of rows) {
      const there = [...row.text].map((_, i) => source.text.charAt(fileOffset(row, i)));
      expect(there.join('').replace(/[\s>]/g, ' ')).toBe(row.text);
    }
    expect(rows.length > 0 || name === 'no-rows').toBe(true);
  });

  test('has the lines named that its faults stand on once the file is written', () => {
    const file = fileOf(name);
    const told = [...file.text.matchAll(/# (?:error|warning|note) on line (\d+): /g)].map((found) =>
      Number(found[1]),
    );
    const found = checkPattern(file, name).map(({ span }) => lineColumn(file.text, span.start).line);
    expect(told.sort((a, b) => a - b)).toEqual(found.sort((a, b) => a - b));
  });
});
