/** What the layouts are given: finished strings and lists, so that they only have to set them. */

import type { WatchLink } from '../film/watch-links.ts';
import type { Meaning } from '../wording/mark-words.ts';
import type { DialectKey } from '../wording/words.ts';

/** SVG or other markup of our own making, to be set without escaping. */
export type Markup = string;

export interface Link {
  readonly text: string;
  readonly href: string;
  /** This very page. */
  readonly current: boolean;
}

export interface Fact {
  readonly name: string;
  readonly value: string;
}

/** What every page has. */
export interface PageFrame {
  /** File under the site's folder. */
  readonly file: string;
  readonly root: string;
  /** For the browser's tab. */
  readonly title: string;
  readonly description: string;
  /** From the top of the site to the page above this one. */
  readonly trail: readonly Link[];
  /** Address of the page that says the same, or null. */
  readonly canonical: string | null;
  /** Shown where a link to the page is passed on; only where the site's address is known. */
  readonly linkPicture?: { readonly address: string; readonly alternative: string };
}

/** A photograph in several widths, for the browser to choose from. */
export interface PictureSet {
  /** A `srcset` of files with their widths. */
  readonly webp: string;
  /** How wide it is shown, in the words of the `sizes` attribute. */
  readonly sizes: string;
  /** The one JPEG, for all others. */
  readonly src: string;
  /** Its width and height in dots, for its place to be kept. */
  readonly width: string;
  readonly height: string;
  /** Higher than wide. */
  readonly tall: boolean;
  /** For those who do not see it. */
  readonly shows: string;
  readonly by: string | null;
  /** Fetched when it comes near. */
  readonly lazy: boolean;
}

export interface ListEntry {
  readonly title: string;
  readonly href: string;
  readonly about: string;
  readonly facts: readonly Fact[];
  /** Address of its picture, or null. */
  readonly cover: string | null;
  /** Shown in its place. */
  readonly photograph?: PictureSet | null;
}

/** One thing that readers look for a pattern by, with what of it there is in the list. */
export interface Finder {
  readonly name: string;
  readonly label: string;
  readonly options: readonly Choice[];
}

/** What an entry is found under, as the attributes of its element: `data-shape` -> `square hexagon`. */
export type FoundAttributes = readonly { readonly name: string; readonly values: string }[];

/** With what it is found under. */
export interface FoundEntry extends ListEntry {
  readonly found: FoundAttributes;
}

export interface ListPage extends PageFrame {
  readonly heading: string;
  /** Address of the page's script; null where there is nothing to choose between. */
  readonly script: string | null;
  readonly finders: readonly Finder[];
  /** The page of stitches. */
  readonly stitchesHref: string;
  readonly alongs: readonly FoundEntry[];
  readonly entries: readonly FoundEntry[];
}

export interface ChartFigure {
  readonly id: string;
  /** Inline SVG, or null where the chart is too large to stand in the page and is shown from its file. */
  readonly svg: Markup | null;
  readonly href: string;
  /** The same chart turned over for left-handed makers. */
  readonly leftHandedHref: string;
  readonly title: string;
  readonly alternative: string;
  /** A drawing's width and height in CSS pixels, for the picture's place to be kept. */
  readonly width: string;
  readonly height: string;
  /** Wider than a phone can show it. */
  readonly wide: boolean;
}

export interface RowLine {
  readonly id: string;
  readonly label: string | null;
  readonly words: Markup;
  /** Of the abbreviations and special stitches in it. */
  readonly meanings: readonly Meaning[];
  readonly count: string | null;
  /** Where it is shown being made. */
  readonly watch: readonly WatchLink[];
}

/** A film of the pattern: told of and linked to, never shown in the page. */
export interface FilmText {
  readonly heading: string;
  /** What it shows and where it stands. */
  readonly lines: readonly string[];
  readonly href: string;
  /** `Open the film at films.example.org`. */
  readonly link: string;
  readonly chapters: readonly WatchLink[];
}

export interface PartText {
  readonly id: string;
  readonly name: string;
  readonly make: string | null;
  readonly lines: readonly RowLine[];
  readonly chart: ChartFigure | null;
  readonly photographs: readonly PictureSet[];
}

export interface YarnLine {
  /** `A`. */
  readonly letter: string;
  /** Colour, weight and fibre. */
  readonly text: string;
  /** What this size takes; null on pages of all sizes. */
  readonly amount: string | null;
  readonly swatch: Markup | null;
}

export interface Materials {
  readonly yarns: readonly YarnLine[];
  readonly tools: readonly string[];
  readonly yarnNote: string | null;
  readonly gauge: string | null;
}

export interface Glossary {
  readonly abbreviations: readonly { readonly abbr: string; readonly meaning: string }[];
  readonly specials: readonly { readonly name: string; readonly how: string }[];
}

/** What the pattern's own page and the pages of its sizes share. */
export interface PatternText extends PageFrame {
  readonly heading: string;
  readonly about: string;
  readonly facts: readonly Fact[];
  readonly materials: Materials;
  readonly glossary: Glossary;
  readonly notes: readonly string[];
  readonly cautions: readonly string[];
  readonly safety: readonly string[];
  readonly parts: readonly PartText[];
  readonly finishing: readonly string[];
  /** What changed since the first version, each with its day. */
  readonly changes: readonly string[];
  readonly colophon: readonly string[];
  readonly terms: string;
}

export interface SizeTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly {
    readonly name: string;
    readonly href: string;
    readonly cells: readonly { readonly text: string; readonly column: string }[];
  }[];
}

export interface PatternPage extends PatternText {
  /** Address of its picture, or null. */
  readonly cover: string | null;
  /** Shown in its place. */
  readonly photograph: PictureSet | null;
  /** Those that belong to no one part. */
  readonly photographs: readonly PictureSet[];
  readonly sizeTable: SizeTable;
  /** How to read `35 (44, 53)`; null with a single size. */
  readonly sizesNote: string | null;
  /** Booklets of all sizes. */
  readonly downloads: readonly Download[];
  /** Null where there is nothing to make over. */
  readonly ownForm: OwnForm | null;
}

export interface Choice {
  readonly value: string;
  readonly text: string;
}

/** What a reader may ask for of a pattern made over; the words are what the pattern has, for her to see. */
export interface OwnForm {
  readonly action: string;
  readonly sizes: readonly Choice[];
  /** A width, or a height, can be asked for. */
  readonly across: boolean;
  readonly up: boolean;
  readonly stitches: string;
  readonly rows: string;
  readonly over: string;
  /** What the gauge is counted in: `shell pattern`. */
  readonly of: string | null;
  readonly hook: string;
  readonly ballLength: string;
  readonly ballWeight: string;
  /** The pattern's own first. */
  readonly terms: readonly Choice[];
}

export interface OwnPage extends PageFrame {
  /** What her rows are kept under in her browser; what she asked for comes behind it. */
  readonly keepAs: string;
  /** Address of the page's script, a module. */
  readonly module: string;
  readonly heading: string;
  readonly form: OwnForm;
  readonly sizeTable: SizeTable;
  /** The pattern as JSON, with nothing in it that could end the element it stands in. */
  readonly shipped: Markup;
  readonly cautions: readonly string[];
  readonly safety: readonly string[];
  readonly colophon: readonly string[];
}

export interface StitchName {
  readonly abbr: string;
  readonly name: string;
}

export interface StitchEntry {
  readonly id: string;
  readonly us: StitchName;
  readonly uk: StitchName;
  readonly svg: Markup;
  readonly how: string;
  /** `As tall as 3 chains.`; null where it is not compared. */
  readonly height: string | null;
}

export interface StitchPage extends PageFrame {
  readonly families: readonly {
    readonly id: string;
    readonly heading: string;
    readonly stitches: readonly StitchEntry[];
  }[];
}

export interface Download {
  readonly text: string;
  readonly href: string;
}

/** The outline of one piece with its measures. */
export interface Schematic {
  readonly svg: Markup;
  readonly title: string;
  /** The measures in words. */
  readonly words: string;
}

export interface SizePage extends PatternText {
  /** Address of the page's script. */
  readonly script: string;
  /** What its rows are kept under in a reader's browser: the same in all terms. */
  readonly keepAs: string;
  /** What its script follows her by, as JSON: see `following.ts`. */
  readonly following: Markup;
  /** JSON-LD for search engines; null on pages that say the same as another. */
  readonly howTo: Markup | null;
  /** At this address a reader's own terms may be shown instead. */
  readonly termsOpen: boolean;
  readonly sizeName: string;
  /** Address of its picture, or null. */
  readonly cover: string | null;
  /** Shown in its place. */
  readonly photograph: PictureSet | null;
  /** Those that belong to no one part, where the pattern has no page of its own to show them. */
  readonly photographs: readonly PictureSet[];
  readonly schematics: readonly Schematic[];
  readonly films: readonly FilmText[];
  readonly sizeLinks: readonly Link[];
  readonly termLinks: readonly (Link & { readonly terms: DialectKey })[];
  readonly sectionLinks: readonly Link[];
  readonly downloads: readonly Download[];
  /** The page on which it is made over; null where there is none. */
  readonly ownHref: string | null;
}
