/** The checker checked: a mistake is made on purpose in a pattern that is right, and has to be told. */

import { describe, expect, test } from 'vitest';
import { readOriginals } from './collections.ts';
import { ALL, EVERYDAY, runMistakes } from './run-mistakes.ts';
import { applyEdit } from './seed/edit.ts';
import { seedPattern } from './seed/seed-pattern.ts';
import { explainedEntries } from './stated-truth.ts';
import { line, report, shareOfErrors, tally } from './tally.ts';
import type { Tried } from './try-edit.ts';

/** Set for a run of all of them, which takes some minutes. */
const long = process.env.ROWFOLD_LONG !== undefined;

const originals = readOriginals();
const run = runMistakes(originals, long ? ALL : EVERYDAY);

/**
 * Stated counts that a mistake makes untrue in one sense and true in another that the trade has too: a side told with
 * its corner or without, and the ch-1 of a mesh counted as a stitch or not.
 */
const TWO_SENSES = new Set([
  'cluster-hexagon 12 11',
  'moss-stitch miss next ch,  ',
  'moss-stitch 1 2',
  'moss-stitch next same',
]);

const keyOf = ({ original, edit }: Tried): string =>
  `${original.name} ${original.text.slice(edit.start, edit.end)} ${edit.put}`;

const untrue = /^the count stated|\bstates? \d|, which stated/;

describe('one mistake in a pattern that is right', () => {
  test('is told in at least 97 of 100 cases where a pattern written for this test contradicts itself by it', () => {
    const heldOut = tally(run.tried.filter(({ original }) => original.lot === 'held-out'));
    expect(heldOut.caught + heldOut.silent).toBeGreaterThan(500);
    expect(shareOfErrors(heldOut)).toBeGreaterThanOrEqual(0.97);
  });

  test('is always told where it makes a stated count untrue', () => {
    const passed = run.tried.filter(
      (one) => one.verdict === 'silent' && untrue.test(one.because ?? '') && !TWO_SENSES.has(keyOf(one)),
    );
    expect(passed.map(line)).toEqual([]);
  });

  test('is always told of a yarn that is not there, of a count one off, of a corner lost where counts are stated', () => {
    const sure = run.tried.filter(
      ({ edit }) =>
        edit.kind === 'a yarn that is not there' ||
        (edit.counted && (edit.kind === 'a stated count one off' || edit.kind === 'a corner lost')),
    );
    expect(sure.length).toBeGreaterThan(100);
    const passed = sure.filter((one) => one.verdict !== 'caught' && !TWO_SENSES.has(keyOf(one)));
    expect(passed.map(line)).toEqual([]);
  });

  test('is told or not as the report says', async () => {
    await expect(report(run)).toMatchFileSnapshot(long ? 'report.md' : 'report-everyday.md');
  });
});

describe('the mistakes themselves', () => {
  test('are each another text, in the instructions and nowhere else', () => {
    for (const original of originals)
      for (const edit of seedPattern(original)) {
        expect(applyEdit(original.text, edit)).not.toBe(original.text);
        expect(original.lines.some(({ span }) => edit.start >= span.start && edit.end <= span.end)).toBe(
          true,
        );
      }
  });

  test('are judged by counts of which nearly all are understood without the checker', () => {
    const all = originals.map(({ compiled }) => explainedEntries(compiled));
    const explained = all.reduce((sum, one) => sum + one.explained, 0);
    const stated = all.reduce((sum, one) => sum + one.all, 0);
    expect(stated).toBeGreaterThan(700);
    expect(explained / stated).toBeGreaterThan(0.97);
  });
});
