/** One line of the instructions -> what the layouts set: its words with abbreviations and repeats marked, and what they mean. */

import { escaped } from '../escaped.ts';
import type { MarkedPiece, Marker } from '../wording/mark-words.ts';
import type { WordedLine } from '../wording/words.ts';
import type { Markup, RowLine } from './page-data.ts';

export type Printed = Pick<WordedLine, 'label' | 'text' | 'count'>;

export function rowLine({ label, text, count }: Printed, id: string, marker: Marker): RowLine {
  const { pieces, meanings } = marker(text);
  return { id, label, words: pieces.map(markup).join(''), meanings, count, watch: [] };
}

function markup(piece: MarkedPiece): Markup {
  switch (piece.kind) {
    case 'words':
      return escaped(piece.text);
    case 'abbreviation':
      return `<abbr title="${escaped(piece.meaning)}">${escaped(piece.text)}</abbr>`;
    case 'repeat':
      return `<span class="again">${piece.inside.map(markup).join('')}</span>`;
  }
}
