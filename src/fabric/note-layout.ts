/** Notes to the maker that a border comes back to: how squares are laid out. */

import type { Worker } from './worker.ts';

const NUMBERS = 'two three four five six seven eight nine ten eleven twelve'.split(' ');
const NUMBER = `(\\d{1,2}|${NUMBERS.join('|')})`;
const LAYOUT = new RegExp(
  `\\b(?:squares|motifs|blocks|tiles|granny squares)\\b[^.]*?\\b${NUMBER}(?:\\s+rows\\s+of\\s+|\\s*(?:x|×|by)\\s*)${NUMBER}\\b`,
  'i',
);

/** `3 across and 4 down`. */
const ACROSS = new RegExp(
  `\\b(?:squares|motifs|granny squares)\\b[^.]*?\\b${NUMBER} (?:squares )?(?:across|wide)(?:,? and|,| by| x) ${NUMBER} (?:squares )?(?:down|high|tall|long|up|deep)\\b`,
  'i',
);

/** `Lay out the squares in 4 rows of 5`, `Sew the motifs together, 6 by 8`. */
export function noteLayout(worker: Worker, text: string): void {
  const [, rows, across] = LAYOUT.exec(text) ?? [];
  if (rows !== undefined && across !== undefined) worker.layout = [numberOf(across), numberOf(rows)];
  const [, wide, deep] = ACROSS.exec(text) ?? [];
  if (wide !== undefined && deep !== undefined) worker.layout = [numberOf(wide), numberOf(deep)];
}

function numberOf(word: string): number {
  const told = NUMBERS.indexOf(word.toLowerCase());
  return told < 0 ? Number(word) : told + 2;
}
