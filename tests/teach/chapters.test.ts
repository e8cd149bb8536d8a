/** Chapters of a film -> a WebVTT file that a strict reader takes, and a list that begins at 0:00. */

import { describe, expect, test } from 'vitest';
import type { Chapter } from '../../src/film/chapters.ts';
import { chaptersOf } from '../../src/film/chapters.ts';
import { chapterList, LAST_CHAPTER_SECONDS, listDoubt, webVtt } from '../../src/teach/chapters-file.ts';
import { compiledFile } from './lesson.ts';
import { readWebVtt } from './read-webvtt.ts';

const chapter = (seconds: number, endSeconds: number | null, title: string): Chapter => ({
  seconds,
  endSeconds,
  title,
  rows: [],
});

describe('the reader of these tests', () => {
  test.each([
    ['no header', '1\n00:00.000 --> 00:01.000\nA\n'],
    ['no empty line below the header', 'WEBVTT\n00:00.000 --> 00:01.000\nA\n'],
    ['times with a comma', 'WEBVTT\n\n00:00,000 --> 00:01,000\nA\n'],
    ['one figure for the minutes', 'WEBVTT\n\n0:00.000 --> 0:01.000\nA\n'],
    ['an end before its beginning', 'WEBVTT\n\n00:02.000 --> 00:01.000\nA\n'],
    ['a bare and sign', 'WEBVTT\n\n00:00.000 --> 00:01.000\nA & B\n'],
    ['a chapter within another', 'WEBVTT\n\n00:00.000 --> 00:09.000\nA\n\n00:01.000 --> 00:02.000\nB\n'],
    ['no title', 'WEBVTT\n\n00:00.000 --> 00:01.000\n'],
  ])('refuses %s', (_, text) => expect(() => readWebVtt(text)).toThrow());
});

test('a file has a cue for each chapter, from its time to the next', () => {
  const text = webVtt([
    chapter(0, 64.25, 'Yarn & hook <3'),
    chapter(64.25, 3725, 'Round 1 --> 2'),
    chapter(3725, null, 'Ends'),
  ]);
  expect(text).toContain('00:00:00.000 --> 00:01:04.250\nYarn &amp; hook &lt;3\n');
  expect(readWebVtt(text)).toEqual([
    { id: '1', start: 0, end: 64.25, title: 'Yarn & hook <3' },
    { id: '2', start: 64.25, end: 3725, title: 'Round 1 --> 2' },
    { id: '3', start: 3725, end: 3725 + LAST_CHAPTER_SECONDS, title: 'Ends' },
  ]);
});

test.each(['lantern-square', 'sandbar-square'])('the films of %s have chapters without a gap', (slug) => {
  const { pattern, sizes } = compiledFile(`patterns/${slug}/pattern.yaml`);
  for (const film of pattern?.films ?? []) {
    if (pattern === null) throw new Error('no pattern');
    const chapters = chaptersOf(
      film,
      pattern,
      sizes.map(({ fabric }) => fabric),
    );
    const cues = readWebVtt(webVtt(chapters));
    expect(cues.length).toBeGreaterThan(3);
    expect(cues[0]?.start).toBe(0);
    expect(cues.at(-1)?.end).toBe(film.lengthSeconds);
    for (const [i, { end }] of cues.slice(0, -1).entries()) expect(cues[i + 1]?.start).toBe(end);
    const list = chapterList(chapters).trimEnd().split('\n');
    expect(list).toHaveLength(cues.length);
    expect(list[0]).toMatch(/^0:00 \S/);
    for (const line of list) expect(line).toMatch(/^(?:\d:)?\d?\d:\d\d \S.*\S$/);
    expect(listDoubt(chapters)).toBeNull();
  }
});

test('a list that many places would make no chapters of is doubted', () => {
  expect(listDoubt([chapter(0, 60, 'A'), chapter(60, null, 'B')])).toMatch(/only of 3/);
  expect(listDoubt([chapter(0, 60, 'A'), chapter(60, 65, 'B'), chapter(65, null, 'C')])).toMatch(/"B"/);
  expect(listDoubt([chapter(0, 60, 'A'), chapter(60, 75, 'B'), chapter(75, null, 'C')])).toBeNull();
});
