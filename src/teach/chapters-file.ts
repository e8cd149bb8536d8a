/** Chapters of a film in, a WebVTT file for a player and the list that goes below a film out. */

import type { Chapter } from '../film/chapters.ts';
import { clockTime } from '../pattern/film.ts';

/** How long the last chapter is where nobody said how long the film is: a cue must have an end. Our own choice. */
export const LAST_CHAPTER_SECONDS = 600;

/** W3C WebVTT: The Web Video Text Tracks Format, as a `chapters` track. */
export function webVtt(chapters: readonly Chapter[]): string {
  const cues = chapters.map(
    ({ seconds, endSeconds, title }, i) =>
      `${i + 1}\n${stamp(seconds)} --> ${stamp(endSeconds ?? seconds + LAST_CHAPTER_SECONDS)}\n${cueText(title)}`,
  );
  return `${['WEBVTT', ...cues].join('\n\n')}\n`;
}

/** `00:04:10.000` */
function stamp(seconds: number): string {
  const thousandths = Math.round(seconds * 1000);
  const two = (n: number): string => String(Math.floor(n)).padStart(2, '0');
  const whole = Math.floor(thousandths / 1000);
  return `${two(whole / 3600)}:${two((whole / 60) % 60)}:${two(whole % 60)}.${String(thousandths % 1000).padStart(3, '0')}`;
}

/** In a cue `&` and `<` begin something else, and `>` would make a line look like times. */
function cueText(title: string): string {
  return title.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** What places that show films make chapters of, as far as common use goes: from 0:00 on, each on a line of its own. */
export function chapterList(chapters: readonly Chapter[]): string {
  return `${chapters.map(({ seconds, title }) => `${clockTime(seconds)} ${title}`).join('\n')}\n`;
}

/** Common use asks for three chapters at least, ten seconds long each. From memory. */
export const LIST_WANTS = { chapters: 3, seconds: 10 } as const;

/** Why such a place may not make chapters of the list; null when nothing speaks against it. */
export function listDoubt(chapters: readonly Chapter[]): string | null {
  if (chapters.length < LIST_WANTS.chapters)
    return `Many places make chapters only of ${LIST_WANTS.chapters} times or more; here ${chapters.length === 1 ? 'is' : 'are'} ${chapters.length}.`;
  const short = chapters.find(
    ({ seconds, endSeconds }) => endSeconds !== null && endSeconds - seconds < LIST_WANTS.seconds,
  );
  return short === undefined
    ? null
    : `Many places make no chapters where one is shorter than ${LIST_WANTS.seconds} seconds, as "${short.title}" is.`;
}
