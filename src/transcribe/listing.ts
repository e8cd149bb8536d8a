/** A transcript in, what was recognised in it and what was not, line by line of the pasted text, out. */

import { lineMap, placeOf } from '../source/line-map.ts';
import type { Piece, Transcript } from './transcript.ts';

export function listing(transcript: Transcript): string {
  const { pieces, terms, parts } = transcript;
  const map = lineMap(transcript.source.text);
  const linesOf = ({ span }: Piece): string => {
    const first = placeOf(map, span.start).line;
    const last = placeOf(map, Math.max(span.start, span.end - 1)).line;
    return first === last ? `${first}` : `${first}-${last}`;
  };
  const known = pieces.filter(
    ({ kind }) => kind !== 'kept' && kind !== 'left out' && kind !== 'row' && kind !== 'heading',
  );
  const rows = parts.map(({ name, lines }) => `${name} ${lines.length}`);
  const entries = known.map((piece): [string, string, string] => [
    linesOf(piece),
    piece.kind,
    shortened(piece.means),
  ]);
  const untold: [string, string, string][] =
    terms.told === 'stated' ? [] : [['', 'terms', `${terms.value}, ${termsWords(transcript)}`]];
  const kept = pieces.filter(({ kind }) => kind === 'kept');
  const leftOut = pieces.filter(({ kind }) => kind === 'left out');
  return [
    section('Recognised', [
      ...untold,
      ...entries,
      ...(rows.length === 0 ? [] : [['', 'lines of work', rows.join(', ')] as [string, string, string]]),
    ]),
    section(
      'Not understood, kept word for word among the notes',
      kept.map((piece) => [linesOf(piece), '', piece.means]),
    ),
    section(
      'Left out',
      leftOut.map((piece) => [linesOf(piece), '', shortened(piece.means)]),
    ),
  ]
    .filter((text) => text !== '')
    .join('\n\n');
}

function termsWords({ terms }: Transcript): string {
  if (terms.told === 'not told') return 'which nothing in the text tells';
  return terms.by === null ? 'which read the same in both' : `told by "${terms.by}"`;
}

function section(title: string, entries: readonly (readonly [string, string, string])[]): string {
  if (entries.length === 0) return '';
  const places = entries.map(([lines]) =>
    lines === '' ? '' : `line${lines.includes('-') ? 's' : ''} ${lines}`,
  );
  const width = Math.max(...places.map((place) => place.length));
  const kinds = Math.max(...entries.map(([, kind]) => kind.length));
  return [
    title,
    ...entries.map(([, kind, words], i) =>
      `  ${(places[i] ?? '').padEnd(width)}  ${kinds === 0 ? '' : `${kind.padEnd(kinds)}  `}${words}`.trimEnd(),
    ),
  ].join('\n');
}

function shortened(words: string): string {
  return words.length > 90 ? `${words.slice(0, 89)}…` : words;
}
