/** A transcript in, what was recognised in it and what was not, line by line of the pasted text, out. */

import { lineMap, placeOf } from '../source/line-map.ts';
import type { Piece, Transcript } from './transcript.ts';

/** Pieces of the text that fared alike: recognised, kept as they stand, or left out. */
export interface ListedPieces {
  readonly title: string;
  readonly entries: readonly ListedPiece[];
}

export interface ListedPiece {
  /** `4` or `4-6`, of the pasted text; empty where it is of no one line. */
  readonly lines: string;
  /** What it was taken for; empty where it was not understood. */
  readonly kind: string;
  readonly words: string;
}

export function listing(transcript: Transcript): string {
  return listedPieces(transcript).map(section).join('\n\n');
}

/** Only what there is: a text that was understood whole has nothing under the other titles. */
export function listedPieces(transcript: Transcript): readonly ListedPieces[] {
  const { pieces, terms, parts } = transcript;
  const map = lineMap(transcript.source.text);
  const linesOf = ({ span }: Piece): string => {
    const first = placeOf(map, span.start).line;
    const last = placeOf(map, Math.max(span.start, span.end - 1)).line;
    return first === last ? `${first}` : `${first}-${last}`;
  };
  const listed = (piece: Piece, kind: string, words: string): ListedPiece => ({
    lines: linesOf(piece),
    kind,
    words,
  });
  const known = pieces.filter(
    ({ kind }) => kind !== 'kept' && kind !== 'left out' && kind !== 'row' && kind !== 'heading',
  );
  const rows = parts.map(({ name, lines }) => `${name} ${lines.length}`).join(', ');
  const untold = { lines: '', kind: 'terms', words: `${terms.value}, ${termsWords(transcript)}` };
  const kept = pieces.filter(({ kind }) => kind === 'kept');
  const leftOut = pieces.filter(({ kind }) => kind === 'left out');
  return [
    {
      title: 'Recognised',
      entries: [
        ...(terms.told === 'stated' ? [] : [untold]),
        ...known.map((piece) => listed(piece, piece.kind, shortened(piece.means))),
        ...(rows === '' ? [] : [{ lines: '', kind: 'lines of work', words: rows }]),
      ],
    },
    {
      title: 'Not understood, kept word for word among the notes',
      entries: kept.map((piece) => listed(piece, '', piece.means)),
    },
    { title: 'Left out', entries: leftOut.map((piece) => listed(piece, '', shortened(piece.means))) },
  ].filter(({ entries }) => entries.length > 0);
}

function termsWords({ terms }: Transcript): string {
  if (terms.told === 'not told') return 'which nothing in the text tells';
  return terms.by === null ? 'which read the same in both' : `told by "${terms.by}"`;
}

function section({ title, entries }: ListedPieces): string {
  const places = entries.map(({ lines }) =>
    lines === '' ? '' : `line${lines.includes('-') ? 's' : ''} ${lines}`,
  );
  const width = Math.max(...places.map((place) => place.length));
  const kinds = Math.max(...entries.map(({ kind }) => kind.length));
  return [
    title,
    ...entries.map(({ kind, words }, i) =>
      `  ${(places[i] ?? '').padEnd(width)}  ${kinds === 0 ? '' : `${kind.padEnd(kinds)}  `}${words}`.trimEnd(),
    ),
  ].join('\n');
}

function shortened(words: string): string {
  return words.length > 90 ? `${words.slice(0, 89)}…` : words;
}
