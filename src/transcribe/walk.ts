/** The state of the one walk over a pasted text's lines: what was put where, and what the lines above opened. */

import { fileSpan, type MappedText } from '../source/mapped-text.ts';
import { rowWords } from './definition-lines.ts';
import type { Heading, Section } from './headings.ts';
import { rowLabel } from './row-labels.ts';
import { linesBeforeRows } from './rows-ahead.ts';
import type { Bucket, Item, PartDraft } from './sorted-lines.ts';
import type { TextLine } from './tidy-lines.ts';

export type State = Exclude<Section, 'instructions'> | 'front' | 'part';

export interface Walk {
  readonly lines: readonly TextLine[];
  readonly buckets: Record<Bucket, Item[]>;
  readonly parts: PartDraft[];
  readonly headings: Item[];
  readonly leftOut: { span: Item['span']; what: string; text: string }[];
  state: State;
  heading: Heading | null;
  /** The unit of the table the rows stand in: `Rnd`, '' where its head names none, null outside a table. */
  table: string | null;
  /** A heading of a piece whose rows have not come yet. */
  pending: PartDraft | null;
  /** The line above is of an email's head. */
  inEmailHead: boolean;
  /** Lines after which rows still come. */
  readonly beforeRows: ReadonlySet<TextLine>;
  readonly beforeOwnRows: ReadonlySet<TextLine>;
  /** Sentences that join what is worked, with whether more rows of the same piece come behind. */
  readonly assembly: { readonly span: Item['span']; readonly rowsFollow: boolean }[];
  /** The rows were quoted in an email: what is not quoted is the letter around them. */
  readonly quotedWork: boolean;
  /** The words of all rows and instructions. */
  readonly rowWords: string;
  /** No line of the text has a row's label: instructions are known by their words alone. */
  readonly unlabelled: boolean;
}

export function newWalk(lines: readonly TextLine[]): Walk {
  const { anywhere, ofPiece } = linesBeforeRows(lines);
  return {
    lines,
    buckets: emptyBuckets(),
    parts: [],
    headings: [],
    leftOut: [],
    state: 'front',
    heading: null,
    table: null,
    pending: null,
    inEmailHead: false,
    beforeRows: anywhere,
    beforeOwnRows: ofPiece,
    assembly: [],
    quotedWork: lines.some(({ text, quoted }) => quoted > 0 && rowLabel(text.text) !== null),
    rowWords: rowWords(lines),
    unlabelled: !lines.some(({ text }) => rowLabel(text.text) !== null),
  };
}

export function put(walk: Walk, bucket: Bucket, item: Item): void {
  walk.buckets[bucket].push(item);
}

/** Where short lines follow one another that are no headings. */
export function isListState(state: State): boolean {
  return (
    state === 'materials' ||
    state === 'abbreviations' ||
    state === 'specials' ||
    state === 'sizes' ||
    state === 'gauge'
  );
}

/** True, for a line that is dealt with by this. */
export function leaveOut(walk: Walk, line: TextLine, what: string): boolean {
  walk.leftOut.push({ span: line.span, what, text: line.text.text });
  return true;
}

export function itemOf(line: TextLine, text: MappedText, heading: Heading | null = null): Item {
  const cells = text === line.text ? line.cells : [text];
  return {
    text,
    cells,
    span: text === line.text || text.text === '' ? line.span : fileSpan(text, 0, text.text.length),
    heading: heading?.words ?? null,
    field: heading?.field ?? null,
    line,
  };
}

function emptyBuckets(): Record<Bucket, Item[]> {
  return {
    title: [],
    designer: [],
    about: [],
    terms: [],
    skill: [],
    sizes: [],
    materials: [],
    gauge: [],
    abbreviations: [],
    specials: [],
    notes: [],
    finishing: [],
    licence: [],
    version: [],
    date: [],
    kept: [],
  };
}
