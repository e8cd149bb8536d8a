/** A booklet of twelve pages, its words and charts invented. */

import type { BookletInput } from '../../src/booklet/booklet-input.ts';
import { chartScene, shellBooklet } from '../booklet/sample-input.ts';

export const PAGES = 12;

export function twelvePages(): BookletInput {
  const base = shellBooklet();
  const [part] = base.words.parts;
  if (part === undefined) throw new Error('no part');
  const rows = Array.from({ length: 4 }, () => part.lines)
    .flat()
    .map((line, index) => ({ ...line, label: line.label === null ? null : `Row ${index + 1}` }));
  return {
    ...base,
    words: { ...base.words, parts: [{ ...part, lines: rows }] },
    charts: [1, 2].map((number) => ({ part: `Piece ${number}`, scene: chartScene(38, 26, 4), folded: [] })),
  };
}
