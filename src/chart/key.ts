/** What a chart draws in, its key out: each symbol with its abbreviation and name in the terms asked for, set in columns. */

import type { Shape } from '../scene/scene.ts';
import type { KeyEntry, KeyInput } from './key-entry.ts';
import { markEntries } from './key-marks.ts';
import { stitchEntries } from './key-stitches.ts';
import { KEY_MM } from './metrics.ts';

export interface Key {
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
  readonly widthMm: number;
}

/** Set to a width, from the origin down. */
export function chartKey(input: KeyInput, widthMm: number): Key {
  const entries = [...stitchEntries(input), ...markEntries(input)];
  const abbrMm =
    Math.max(0, ...entries.map(({ abbr }) => (abbr?.length ?? 0) * KEY_MM.size * BOLD_LETTER)) + 3;
  const textMm = Math.max(
    ...entries.map(({ abbr, words }) => (abbr === null ? 0 : abbrMm) + words.length * KEY_MM.size * LETTER),
  );
  const columnMm = KEY_MM.symbol + 2 + textMm;
  const columns = Math.max(
    1,
    Math.min(entries.length, Math.floor((widthMm + KEY_MM.gap) / (columnMm + KEY_MM.gap))),
  );
  const rows = Math.ceil(entries.length / columns);
  const shapes: Shape[] = [];
  let heightMm = 0;
  for (let row = 0; row < rows; row += 1) {
    // Down the columns, so that neighbours in height stand under one another.
    const inRow = Array.from({ length: columns }, (_, column) => entries[column * rows + row]);
    const tall = Math.max(KEY_MM.line, ...inRow.map((entry) => (entry?.heightMm ?? 0) + 2.6));
    const middle = heightMm + tall / 2;
    inRow.forEach((entry, column) => {
      if (entry === undefined) return;
      const x = column * (columnMm + KEY_MM.gap);
      shapes.push({
        kind: 'group',
        transform: [1, 0, 0, 1, x + KEY_MM.symbol / 2, middle + entry.heightMm / 2],
        shapes: entry.shapes,
      });
      shapes.push(...entryText(entry, x + KEY_MM.symbol + 2, middle + KEY_MM.size * 0.33, abbrMm));
    });
    heightMm += tall;
  }
  const used = Math.ceil(entries.length / Math.max(1, rows));
  return { shapes, heightMm, widthMm: used * columnMm + (used - 1) * KEY_MM.gap };
}

/** Width of a letter as a share of the type size, on average over such words in the text face; read from the fonts. */
const LETTER = 0.47;
const BOLD_LETTER = 0.53;

function entryText({ abbr, words }: KeyEntry, x: number, y: number, abbrMm: number): Shape[] {
  const text = (face: 'text' | 'text-bold', at: number, content: string): Shape => ({
    kind: 'text',
    x: at,
    y,
    text: content,
    sizeMm: KEY_MM.size,
    face,
    align: 'start',
    ink: 'ink',
  });
  return abbr === null
    ? [text('text', x, words)]
    : [text('text-bold', x, abbr), text('text', x + abbrMm, words)];
}
