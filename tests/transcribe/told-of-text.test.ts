/** No fault of a pasted text speaks of the keys of a file that its reader does not have. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { checkPattern, compileText } from '../../src/compile.ts';
import { allCodes } from '../../src/diagnostics/catalogue.ts';
import { toldOfText } from '../../src/transcribe/told-of-text.ts';

const KEY =
  /\b(?:special|yarn|sizes|notes|parts|onto|gauge|height|width|repeats|rows|terms|allow|work|hook):/;
/** Faults of the file's form come only of files. */
const OF_FILES = /^(?:yaml|file|allow)\//;

test('whatever the fault', () => {
  let spoken = 0;
  for (const code of allCodes().filter((each) => !OF_FILES.test(each))) {
    const text = readFileSync(`${import.meta.dirname}/../diagnostics/${code}/bad.yaml`, 'utf8');
    for (const found of checkPattern({ file: 'bad.yaml', text }, 'square')) {
      if (OF_FILES.test(found.code)) continue;
      if (KEY.test(found.try)) spoken += 1;
      const { message, why, try: attempt } = toldOfText(found);
      expect([message, why, attempt].filter((words) => KEY.test(words))).toEqual([]);
    }
  }
  expect(spoken).toBeGreaterThan(5);
});

const told = (rows: string) =>
  compileText(
    {
      file: 'mat.txt',
      text: `Mat\nUS terms\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12)\n${rows}\n`,
    },
    'mat',
  ).diagnostics;

test('a stitch that is not explained is asked for in a line of the text', () => {
  const [found] = told('Row 2: Ch 1, sc in first st, shell in next st, sc in each st across. (12)');
  expect(found?.try).toBe('explain it on a line above the instructions, such as "shell: 5 dc in same st".');
});

test.each([
  ['ch 1, sc in next 11 sts, turn.', 'this line leaves 1 of the 12 stitches below unworked'],
  [
    'ch 1, *2 sc in next st, sc in next 4 sts; rep from * across, turn.',
    'the repeat in this line does not come out even',
  ],
])('a line without a label has a name in what is said of it: %s', (row, message) => {
  expect(told(row)[0]?.message).toContain(message);
});

test('a word that the list leaves out is shown where it is used', () => {
  const text =
    'Mat\nUS terms\n\nAbbreviations\nch = chain\nsc = single crochet\nst(s) = stitch(es)\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12)\nRow 2: Ch 2, hdc in each st across. (12)\n';
  const found = compileText({ file: 'mat.txt', text }, 'mat').diagnostics.find(
    ({ code }) => code === 'text/abbreviation-unlisted',
  );
  expect(text.slice(found?.span.start, found?.span.end)).toBe('hdc');
});

test.each([
  ['st(s) = stitch(es)', 'note', 'the rows use rep and RS'],
  ['RS = right side\nrep = repeat', 'note', 'the rows use st'],
  ['', 'warning', 'the rows use hdc, rep, RS and st'],
])('what every maker knows is left out of a list with a note: %s', (line, severity, message) => {
  const hdc = line === '' ? 'sk = skip' : 'hdc = half double crochet';
  const text = `Mat\nUS terms\n\nAbbreviations\nch = chain\nsc = single crochet\n${hdc}\n${line}\n\nCh 13.\nRow 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (12)\nRow 2: Ch 2, *hdc in next st; rep from * across. (12)\n`;
  const found = compileText({ file: 'mat.txt', text }, 'mat').diagnostics.filter(
    ({ code }) => code === 'text/abbreviation-unlisted',
  );
  expect(found.map((each) => [each.severity, each.message.split(', which')[0]])).toEqual([
    [severity, message],
  ]);
});

test.each([
  ['sl st = slip stitch', []],
  ['sk = skip', ['text/abbreviation-unlisted', 'text/abbreviation-unused']],
])('what "st" is, is said with the slip stitch: %s', (line, codes) => {
  const text = `Mat\nUS terms\n\nAbbreviations\nch = chain\nsc = single crochet\nrep = repeat\n${line}\n\nCh 13.\nRow 1: Sc in 2nd ch from hook and in each ch across, turn. (12 sc)\nRow 2: Ch 1, sc in first st, *sc in next st; rep from * across. Sl st in side of last sc. (12 sc)\n`;
  const found = compileText({ file: 'mat.txt', text }, 'mat').diagnostics.map(({ code }) => code);
  expect(found.filter((code) => code.startsWith('text/abbreviation')).toSorted()).toEqual(codes);
});

test.each([
  ['6 clusters', []],
  ['7 clusters', ['count/mismatch']],
])('a stitch described as "3-dc cluster (cl)" is counted as a cluster: %s', (count, codes) => {
  const text = `Mat\nUS terms\n\nSpecial stitches\n3-dc cluster (cl): [Yo, insert hook in st, yo, pull up a loop, yo, pull through 2 loops] 3 times in same st, yo, pull through all 4 loops on hook.\n\nRnd 1: 6 sc in magic ring, join with sl st in first sc. (6 sc)\nRnd 2: Ch 2, *cl in next sc, ch 2; rep from * around, join with sl st in first cl. [${count}, 6 ch-2 sps]\n`;
  const found = compileText({ file: 'mat.txt', text }, 'mat').diagnostics;
  expect(found.filter(({ severity }) => severity === 'error').map(({ code }) => code)).toEqual(codes);
});
