/** A pattern as its file gives it, before any size is worked: values checked, instructions read, places kept. */

import type { Instructions } from '../notation/line.ts';
import type { Step } from '../notation/tree.ts';
import type { Source, Span } from '../source/span.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import type { Film } from './film.ts';
import type { Photograph } from './photograph.ts';

/** Craft Yarn Council project levels. */
export const SKILLS = ['basic', 'easy', 'intermediate', 'complex'] as const;
export type Skill = (typeof SKILLS)[number];

/** Whose forms of chart symbols there are: see `symbols/symbols.ts`. */
export const SYMBOL_SETS = ['CYC', 'JIS'] as const;

/** What the thing is for where cautions follow from it; `shared/cautions.json` holds the words. */
export const USES = ['infant', 'toy', 'child clothing', 'cords', 'heat', 'nightwear'] as const;
export type Use = (typeof USES)[number];

export interface Gauge {
  readonly stitches: number;
  /** Pattern repeats that those stitches are, where repeats were counted. */
  readonly repeats?: number;
  /** Null where only stitches were counted: row heights are then those that are usual for the stitches. */
  readonly rows: number | null;
  /** The measure stitches are counted over, in mm. */
  readonly overMm: number;
  /** The measure rows are counted up, in mm: the same unless a swatch was measured both ways, `15.2 x 14 cm`. */
  readonly upMm: number;
  /** Before blocking, over the same measures; null where it was not counted. */
  readonly before: { readonly stitches: number; readonly rows: number } | null;
  /** What a swatch of that measure took, unravelled or weighed, in metres; null where it was not. */
  readonly tookM: number | null;
  /** `shell pattern`; what was measured. */
  readonly of: string | null;
  readonly after: 'blocking' | null;
}

export interface Yarn {
  /** `A`. */
  readonly letter: string;
  /** The designer's name for the colour: `reed`. */
  readonly colour: string;
  /** Six-digit sRGB for pictures, `#7a8b4f`; null when the file gives none. */
  readonly hex: string | null;
  /** Craft Yarn Council weight, 0 to 7. */
  readonly weight: number;
  readonly fibre: string;
  readonly ballLengthM: number | null;
  readonly ballMassG: number | null;
  /** Balls to buy as the designer lists them: one number for all sizes or one a size; null when not listed. */
  readonly balls: readonly number[] | null;
  /** What the designer used of it, size by size, as far as she weighed or measured it. */
  readonly used: readonly UsedYarn[];
}

export interface UsedYarn {
  /** Name of the size as written; null for the only one. */
  readonly size: string | null;
  /** Null where it was weighed and the ball's band, which would tell the length, is not given. */
  readonly lengthM: number | null;
}

/** A warning or note that the pattern silences. */
export interface Allowed {
  /** As written, known or not: `yarn/unused`. */
  readonly code: string;
  /** Empty where none is given. */
  readonly reason: string;
  readonly span: Span;
}

export interface Size {
  readonly name: string;
  /** Wanted finished size, where the repeats are to be found from the gauge. */
  readonly widthMm: number | null;
  readonly heightMm: number | null;
  /** Pattern repeats, for `a multiple of …`. */
  readonly repeats: number | null;
  /** Rows or rounds in all, for `… to height`. */
  readonly rows: number | null;
}

/** A special stitch of the pattern's own. */
export interface Special {
  /** As used in the instructions: `shell`, `beg cl`. */
  readonly name: string;
  /** In full words: `beginning cluster`; the name itself when the file gives none. */
  readonly fullName: string;
  /** What it is in stitches, worked at the place it is used: `5 dc in same st`. */
  readonly steps: readonly Step[];
  /** How to make it, as the designer words it; null when the stitches say it all. */
  readonly how: string | null;
  readonly span: Span;
}

/** What was mended or made otherwise in a version after the first. */
export interface Change {
  /** ISO date. */
  readonly date: string;
  readonly version: string | null;
  /** A sentence for makers who have an earlier one. */
  readonly what: string;
  /** Place in the file's list. */
  readonly index: number;
}

export interface Part {
  readonly name: string;
  /** The earlier part it goes on from, by name. */
  readonly onto: string | null;
  /** How many of it to make, `make 2`. */
  readonly make: number;
  readonly instructions: Instructions;
  readonly span: Span;
}

export interface Pattern {
  /** Its folder's name: the address of its pages. */
  readonly slug: string;
  readonly source: Source;
  readonly title: string;
  /** A sentence or two for the list and the cover. */
  readonly about: string;
  readonly designer: string | null;
  readonly terms: Terms;
  readonly skill: Skill | null;
  readonly gauge: Gauge | null;
  readonly hookMm: number | null;
  /** The US letter or number written beside the millimetres, `H-8`; null where there is none. */
  readonly hookUs: string | null;
  readonly yarns: readonly Yarn[];
  readonly notions: readonly string[];
  readonly sizes: readonly Size[];
  readonly specials: readonly Special[];
  readonly notes: readonly string[];
  readonly parts: readonly Part[];
  readonly finishing: readonly string[];
  readonly uses: readonly Use[];
  /** Whose forms the charts draw. */
  readonly symbols: (typeof SYMBOL_SETS)[number];
  readonly licence: string | null;
  readonly version: string | null;
  /** ISO date of this version, `2026-11-24`; also the creation date of its booklets. */
  readonly date: string | null;
  /** The newest first. */
  readonly changes: readonly Change[];
  /** What she filmed of it, with the times of its rows. */
  readonly films: readonly Film[];
  /** The first is the cover's. */
  readonly photographs: readonly Photograph[];
  readonly allowed: readonly Allowed[];
  /** Span of every value by its path: `gauge.stitches`, `sizes.0.width`. */
  readonly places: ReadonlyMap<string, Span>;
}
