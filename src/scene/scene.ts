/**
 * A drawing described once: a few kinds of shape, painted as SVG and as PDF by `src/paint/`. All lengths are mm,
 * origin top left, y down, rounded to 0.01 when painted.
 */

/** Ink by what it is for, so that a painter or a style sheet may choose the colour; `#rrggbb` is taken as it is. */
export type Ink = 'ink' | 'second' | 'faint' | 'paper' | 'none' | `#${string}`;

export interface Stroke {
  readonly ink: Ink;
  readonly widthMm: number;
  readonly dashMm?: readonly number[];
}

/** Row-major 2 by 3: x' = a x + c y + e, y' = b x + d y + f. */
export type Transform = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

export type PathPart =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

export type Shape =
  | {
      readonly kind: 'path';
      readonly parts: readonly PathPart[];
      readonly stroke: Stroke | null;
      readonly fill: Ink;
    }
  | {
      readonly kind: 'circle';
      readonly x: number;
      readonly y: number;
      readonly r: number;
      readonly stroke: Stroke | null;
      readonly fill: Ink;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      /** Of the baseline. */
      readonly y: number;
      readonly text: string;
      readonly sizeMm: number;
      readonly face: Face;
      readonly align: 'start' | 'middle' | 'end';
      readonly ink: Ink;
    }
  | {
      readonly kind: 'group';
      readonly transform: Transform | null;
      readonly shapes: readonly Shape[];
      /** Kept as an attribute in SVG (`data-row="3"`), for scripts and tests; ignored on paper. */
      readonly data?: Readonly<Record<string, string>>;
      /** What the shapes are to someone who does not see them; kept in PDF, ignored in SVG. */
      readonly tag?: Tag;
    }
  /** A symbol defined once in `Scene.symbols`, placed by a transform. */
  | {
      readonly kind: 'use';
      readonly symbol: string;
      readonly transform: Transform;
      readonly ink: Ink;
      readonly data?: Readonly<Record<string, string>>;
    }
  /** A photograph. */
  | {
      readonly kind: 'picture';
      readonly x: number;
      readonly y: number;
      readonly widthMm: number;
      readonly heightMm: number;
      /** The whole file; the same bytes stand in a PDF once, however often they are drawn. */
      readonly jpeg: Uint8Array;
    }
  | { readonly kind: 'link'; readonly href: string; readonly shapes: readonly Shape[]; readonly tag?: Tag };

/**
 * A thing in the structure of a document, named as in ISO 32000-1 (14.8.4). The same object is the same thing: lines of one
 * paragraph, on whichever pages they stand, share it.
 */
export interface Tag {
  readonly kind:
    | 'H1'
    | 'H2'
    | 'H3'
    | 'P'
    | 'L'
    | 'LI'
    | 'Lbl'
    | 'LBody'
    | 'Table'
    | 'TR'
    | 'TH'
    | 'TD'
    | 'Figure'
    | 'Link';
  readonly within: Tag | null;
  /** Of a figure or a link: what is said in its place. */
  readonly alternative?: string;
  /** Of a cell that heads others. */
  readonly heads?: 'Column' | 'Row';
}

/** Faces of the two families in `src/paint/fonts.ts`. */
export type Face = 'text' | 'text-bold' | 'text-italic' | 'title' | 'title-bold';

export interface Scene {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Short title and full text alternative, for screen readers. */
  readonly title: string;
  readonly alternative: string;
  /** Shapes drawn by `use`, in the ink of the use ('ink' inside a symbol means the ink of its use). */
  readonly symbols: Readonly<Record<string, readonly Shape[]>>;
  readonly shapes: readonly Shape[];
}
