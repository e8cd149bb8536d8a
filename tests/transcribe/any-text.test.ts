/** Whatever is pasted: nothing throws, nothing is lost, and the file that is written can be read. */

import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import { listing } from '../../src/transcribe/listing.ts';
import { patternFileText } from '../../src/transcribe/pattern-file-text.ts';
import { readTranscript } from '../../src/transcribe/read-transcript.ts';
import { transcribe } from '../../src/transcribe/transcribe.ts';
import { uncovered, wordsLost } from './nothing-lost.ts';

const folder = `${import.meta.dirname}/texts`;
const LINES = readdirSync(folder).flatMap((name) =>
  readFileSync(`${folder}/${name}/input.txt`, 'utf8').split(/\r?\n/),
);

/** Words and marks that mean something somewhere in a pattern, in any order. */
const FRAGMENTS = [
  ...[
    'Row 1:',
    'R2.',
    '1)',
    'Rnd 3 –',
    'ch 3',
    'sc',
    '(24 sts)',
    '*',
    '**',
    'rep from * across',
    ': ',
    ' = ',
    ' - ',
  ],
  ...[
    'Yarn',
    'A:',
    'MC',
    'hook',
    '5 mm',
    '10 cm',
    '14 sc',
    'Gauge:',
    'Size:',
    'S (M, L)',
    '35 (44, 53)',
    'make 2',
  ],
  ...[
    '#',
    '"',
    "'",
    '|',
    '\t',
    '>',
    '- ',
    '{',
    '}',
    '[',
    ']',
    '%',
    '&',
    '!',
    '@',
    '`',
    '\\',
    '~',
    '🧶',
    '©',
    '½',
    '–',
  ],
  ...[
    'by Ann',
    'UK terms',
    'Special stitches',
    'Abbreviations',
    'true',
    'null',
    '2026-01-01',
    '\u00a0',
    '\u200b',
  ],
  ...[
    '\ud83e',
    '\udd2f',
    '\ufffe',
    '\u0007',
    '\u2028',
    '\r\n',
    '\r',
    '\f',
    '\n',
    '\n\n',
    '   ',
    '---',
    '...',
    '? ',
  ],
];

const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.array(fc.constantFrom(...FRAGMENTS, ' '), { maxLength: 60 }).map((words) => words.join('')),
  fc.array(fc.constantFrom(...LINES), { maxLength: 40 }).map((lines) => lines.join('\n')),
);

/** Faults of a file that its designer has to put right; any other would be ours. */
const HONEST = /^(?:file\/(?:missing|out-of-range|lost-letters)|(?!yaml\/|file\/).*)$/;

test('any text at all is read without harm, and loses nothing', () => {
  fc.assert(
    fc.property(anyText, (text) => {
      const transcript = transcribe({ file: 'any.txt', text });
      expect(uncovered(transcript)).toEqual([]);
      const file = patternFileText(transcript, 'any');
      expect(wordsLost(transcript, file)).toEqual([]);
      const codes = readPattern({ file: 'pattern.yaml', text: file }, 'any').diagnostics.map(
        ({ code }) => code,
      );
      expect(codes.filter((code) => !HONEST.test(code))).toEqual([]);
      readTranscript(transcript, 'any');
      listing(transcript);
      for (const { span } of transcript.pieces) expect(span.start).toBeLessThanOrEqual(span.end);
    }),
    { numRuns: 500 },
  );
});

test('a word that is told on two printed lines breaks no line of the file that is written', () => {
  const text =
    'ch, chain; htr, half treble; tog, together\nCh 20, sc along the top of each triangle. Fasten off.';
  const file = patternFileText(transcribe({ file: 'any.txt', text }), 'any');
  const { diagnostics } = readPattern({ file: 'pattern.yaml', text: file }, 'any');
  expect(diagnostics.map(({ code }) => code).filter((code) => !HONEST.test(code))).toEqual([]);
});
