/** `teach` run as its users run it: the script, the pauses, the chapters, and the files of all of them. */

import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readWebVtt } from '../teach/read-webvtt.ts';
import { copyFolder, type Ended, removeFolder, rowfold, scratchFolder } from './run-rowfold.ts';

const ROOT = path.join(import.meta.dirname, '../..');
let folder = '';
beforeAll(() => {
  folder = scratchFolder();
  copyFolder(path.join(ROOT, 'patterns'), path.join(folder, 'patterns'));
});
afterAll(() => removeFolder(folder));

const teach = (...words: string[]): Promise<Ended> => rowfold(['teach', ...words], folder);
const LANTERN = 'patterns/lantern-square';

describe('teach', () => {
  test('says a size in whole words; without --size the one that the film shows', async () => {
    const { code, out, err } = await teach(LANTERN);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('This is Lantern Square, in the size six rounds.');
    expect(out).toContain('All stitches have their US names.');
    expect(out).toContain('That gives you ninety-two single crochet and four chain-two spaces.');
    expect(out).toContain('    [pause] The yarn changes to yarn B, soot.');
  });

  test('speaks the other terms where they are asked for, and says so', async () => {
    const { out } = await teach('patterns/two-tides-square', '--size', 'large', '--terms', 'uk');
    expect(out).toContain('All stitches have their UK names.');
    expect(out).toContain('What I call double crochet is called single crochet in US terms.');
    expect(out).toContain('That gives you one hundred and forty-four stitches.');
    expect(out).not.toMatch(/then single crochet/);
  });

  test('lists the moments to pause, with their times', async () => {
    const { code, out } = await teach(LANTERN, '--pauses');
    expect(code).toBe(0);
    expect(out).toMatch(/^22:10 {2}Round 7 {5}A long round: 92 stitches to work\.$/m);
  });

  test('gives the chapters as a file and as a list', async () => {
    const file = await teach(LANTERN, '--chapters');
    expect(readWebVtt(file.out).map(({ title }) => title)).toEqual([
      'Yarn, hook and the two clusters',
      'Foundation',
      'Round 1',
      'Round 2',
      'Round 3',
      'Rounds 4 to 6',
      'Round 7',
      'Ends and pinning out',
    ]);
    const list = await teach('patterns/sandbar-square', '--size', 'small', '--list', '--film', 'left');
    expect(list.out).toBe('0:00 Beginning\n1:20 Square: Row 1\n6:40 Square: Row 2\n12:15 Square: Row 3\n');
    expect([file.err, list.err]).toEqual(['', '']);
  });

  test('gives all of it as JSON', async () => {
    const { out } = await teach(LANTERN, '--json');
    const read = JSON.parse(out);
    expect(read.script.blocks[1].after).toEqual([
      'That gives you eight clusters and eight chain-two spaces.',
    ]);
    expect(read.pauses[0]).toMatchObject({ kind: 'new stitch', label: 'Foundation', time: '1:35' });
    expect(read.chapters.at(-1)).toEqual({ seconds: 1725, endSeconds: 1880, title: 'Ends and pinning out' });
  });

  test('writes the files, one for each film', async () => {
    const { code, out } = await teach('patterns/sandbar-square', '--size', 'small', '--out', 'film');
    expect(code).toBe(0);
    const names = readdirSync(path.join(folder, 'film'));
    expect(names.toSorted()).toEqual([
      'sandbar-square-film-1-chapters.txt',
      'sandbar-square-film-1-chapters.vtt',
      'sandbar-square-film-2-chapters.txt',
      'sandbar-square-film-2-chapters.vtt',
      'sandbar-square-small-us-pauses.txt',
      'sandbar-square-small-us-script.html',
      'sandbar-square-small-us-script.txt',
    ]);
    expect(out.trimEnd().split('\n').toSorted()).toEqual(
      names.map((name) => path.join('film', name)).toSorted(),
    );
    for (const name of names.filter((one) => one.endsWith('.vtt')))
      readWebVtt(readFileSync(path.join(folder, 'film', name), 'utf8'));
  });
});

describe('what cannot be asked of teach', () => {
  test.each([
    [['patterns/pebble-basket'], 2, 'Say which size with --size: pebble-basket has small, large.'],
    [['patterns/pebble-basket', '--size', 'smal'], 2, 'Did you mean small?'],
    [['patterns/pebble-basket', '--size', 'small', '--list'], 2, 'pebble-basket has no film with times'],
    [[LANTERN, '--film', 'left'], 2, 'There is no film left. Its films are 1.'],
    [['patterns/sandbar-square', '--size', 'small', '--film', 'both'], 2, 'Its films are right, left.'],
    [[LANTERN, '--terms', 'us-full'], 2, '--terms takes us, uk, not us-full.'],
    [[LANTERN, '--list', '--pauses'], 2, '--pauses and --list do not go together'],
    [[LANTERN, '--json', '--out', 'there'], 2, '--json and --out do not go together'],
    [['patterns'], 2, 'teach takes one pattern'],
  ] as const)('rowfold teach %j', async (words, ends, says) => {
    const { code, out, err } = await teach(...words);
    expect([code, out]).toEqual([ends, '']);
    expect(err).toContain(says);
  });

  test('a pattern with an error is not said', async () => {
    const file = path.join(folder, 'patterns/quarry-hexagon/pattern.yaml');
    writeFileSync(file, readFileSync(file, 'utf8').replace('(36 dc,', '(37 dc,'));
    const { code, out, err } = await teach('patterns/quarry-hexagon', '--size', 'four rounds');
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain('count/');
  });

  test('a film of unknown length is given an end, and that is said', async () => {
    const file = path.join(folder, 'patterns/lantern-square/pattern.yaml');
    writeFileSync(file, readFileSync(file, 'utf8').replace('  length: "31:20"\n', ''));
    const { out, err } = await teach(LANTERN, '--chapters');
    expect(readWebVtt(out).at(-1)).toMatchObject({ start: 1725, end: 1725 + 600 });
    expect(err).toContain('10 minutes');
  });
});
