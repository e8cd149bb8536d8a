/** A script, or the moments to pause, in; plain text for a screen or a sheet of paper out. */

import type { Chapter } from '../film/chapters.ts';
import { clockTime } from '../pattern/film.ts';
import type { Pause } from './pauses.ts';
import type { Script, ScriptBlock } from './script.ts';

/** How a long line is broken. */
export type Wrap = (words: string, width: number) => readonly string[];

const SET_IN = '    ';

/** Every block with its moments to pause below it, set in, since they are not for reading aloud. */
export function scriptText(script: Script, pauses: readonly Pause[], wrap: Wrap, width: number): string {
  const { title, size, terms, opening, blocks, closing } = script;
  const said = (sentences: readonly string[]): string[] => sentences.flatMap((one) => [...wrap(one, width)]);
  const lines = [
    `${title} – size ${size}, to be read aloud in ${terms} terms`,
    '',
    ...said(opening),
    ...blocks.flatMap((block, i) => [
      '',
      ...(block.part === blocks[i - 1]?.part ? [] : [block.part.toUpperCase(), '']),
      ...(block.heading === null ? [] : [block.heading]),
      ...said(paragraphsOf(block)),
      ...pausesAt(block, pauses).flatMap(({ why }) =>
        wrap(`[pause] ${why}`, width - SET_IN.length).map((line) => SET_IN + line),
      ),
    ]),
    ...(closing.length === 0 ? [] : ['', ...said(closing)]),
  ];
  return lines.join('\n');
}

/** What is said in one go. */
export function paragraphsOf({ before, stitches, work, after }: ScriptBlock): string[] {
  return [before.join(' '), ...stitches, work.join(' '), after.join(' ')].filter((words) => words !== '');
}

export function pausesAt({ part, line }: ScriptBlock, pauses: readonly Pause[]): readonly Pause[] {
  return pauses.filter((pause) => pause.part === part && pause.line === line);
}

/** One moment a line, with the time in the film where the row has one. */
export function pausesText(pauses: readonly Pause[], chapters: readonly Chapter[]): string {
  const several = new Set(pauses.map(({ part }) => part)).size > 1;
  const cells = pauses.map((pause) => [
    timeOf(pause, chapters),
    `${several ? `${pause.part}: ` : ''}${pause.label ?? 'between rows'}`,
    pause.why,
  ]);
  const widths = [0, 1].map((i) => Math.max(0, ...cells.map((row) => row[i]?.length ?? 0)));
  return cells
    .map((row) =>
      row
        .map((cell, i) => (i < 2 ? cell.padEnd(widths[i] ?? 0) : cell))
        .filter((cell, i) => i > 0 || cell.trim() !== '' || (widths[0] ?? 0) > 0)
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** Where the row begins in the film, or nothing. */
export function timeOf({ part, line }: Pause, chapters: readonly Chapter[]): string {
  const chapter = chapters.find(({ rows }) => rows.some((row) => row.part === part && row.line === line));
  return chapter === undefined ? '' : clockTime(chapter.seconds);
}
