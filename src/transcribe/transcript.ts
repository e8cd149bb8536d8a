/** What was recognised in a pasted text: every value with its place, and what was kept without being understood. */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Skill } from '../pattern/pattern.ts';
import type { MappedText } from '../source/mapped-text.ts';
import type { Source, Span } from '../source/span.ts';
import type { Terms } from '../stitches/stitch-row.ts';

/** A value and where it stands in the text. */
export interface Given<T> {
  readonly value: T;
  readonly span: Span;
}

export interface TranscribedTerms {
  readonly value: Terms;
  /** Whether the text says so, its words or the heights of its stitches tell, or nothing does. */
  readonly told: 'stated' | 'words' | 'heights' | 'not told';
  /** The words that tell: `US terms`, `sc`. */
  readonly by: string | null;
  readonly span: Span | null;
}

export interface TranscribedGauge {
  /** Null where pattern repeats are counted in their place. */
  readonly stitches: number | null;
  readonly repeats: number | null;
  readonly rows: number;
  /** `10 cm`. */
  readonly over: string;
  readonly of: string | null;
  readonly afterBlocking: boolean;
  /** What was counted over the same measure before blocking, where that is told too. */
  readonly before: { readonly stitches: number; readonly rows: number } | null;
  readonly words: string;
  readonly span: Span;
}

export interface TranscribedYarn {
  readonly letter: string;
  readonly colour: string | null;
  /** Craft Yarn Council number. */
  readonly weight: number | null;
  readonly fibre: string | null;
  readonly ballLength: string | null;
  readonly ballMass: string | null;
  /** Balls to buy, one number or one for each size; null where the text does not say. */
  readonly balls: readonly number[] | null;
  /** False for a yarn that only the rows name. */
  readonly described: boolean;
  readonly span: Span;
}

export interface TranscribedSize {
  readonly name: string;
  readonly width: string | null;
  readonly height: string | null;
  readonly span: Span;
}

export interface TranscribedSpecial {
  readonly name: string;
  readonly fullName: string | null;
  /** What it is in stitches; null where its words could not be told in stitches. */
  readonly work: MappedText | null;
  /** The designer's words, where the stitches do not say them all. */
  readonly how: string | null;
  readonly span: Span;
}

export interface TranscribedNote {
  readonly text: string;
  readonly span: Span;
  /** False for words that were not understood and are kept as they stand. */
  readonly understood: boolean;
}

export interface TranscribedPart {
  readonly name: string;
  readonly make: number;
  readonly onto: string | null;
  /** Each a line of the part's instructions, as the designer wrote it. */
  readonly lines: readonly MappedText[];
  readonly span: Span;
}

/** One stretch of the text and what it was taken for. */
export interface Piece {
  readonly kind: PieceKind;
  readonly span: Span;
  /** What was made of it, in a few words. */
  readonly means: string;
}

export type PieceKind =
  | 'title'
  | 'designer'
  | 'about'
  | 'terms'
  | 'skill'
  | 'gauge'
  | 'hook'
  | 'yarn'
  | 'notion'
  | 'sizes'
  | 'abbreviation'
  | 'special stitch'
  | 'note'
  | 'part'
  | 'row'
  | 'finishing'
  | 'licence'
  | 'version'
  | 'date'
  | 'heading'
  /** Of the page or the email, not of the pattern: left out. */
  | 'left out'
  /** Not understood: kept word for word as a note. */
  | 'kept';

export interface Transcript {
  readonly source: Source;
  readonly title: Given<string> | null;
  readonly designer: Given<string> | null;
  readonly about: Given<string> | null;
  readonly terms: TranscribedTerms;
  readonly skill: Given<Skill> | null;
  readonly gauge: TranscribedGauge | null;
  /** `5 mm`, and `5 mm (I-9)` where the letter is another hook's. */
  readonly hook: Given<string> | null;
  readonly yarns: readonly TranscribedYarn[];
  /** The lines that tell of yarn and hook, as they stand. */
  readonly supplyLines: readonly Given<string>[];
  readonly notions: readonly Given<string>[];
  readonly sizes: readonly TranscribedSize[];
  readonly specials: readonly TranscribedSpecial[];
  readonly notes: readonly TranscribedNote[];
  readonly parts: readonly TranscribedPart[];
  readonly finishing: readonly Given<string>[];
  readonly licence: Given<string> | null;
  readonly version: Given<string> | null;
  readonly date: Given<string> | null;
  /** Every line with words on it is in one at least; in the order of the text. */
  readonly pieces: readonly Piece[];
  /** What the designer has to settle, as nothing in the text does. */
  readonly questions: readonly Diagnostic[];
}
