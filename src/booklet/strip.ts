/** The pieces a booklet flows: strips that stand one under another, and sheets that fill a page of their own. */

import type { Scene, Shape } from '../scene/scene.ts';
import type { Orientation, PageFormat } from './paper.ts';

export interface Bookmark {
  readonly title: string;
  /** 1 for a section, 2 for what stands inside one. */
  readonly level: 1 | 2;
}

/** A band across the text area that is never cut; x from the left of the text area, y from its own top. */
export interface Strip {
  readonly kind: 'strip';
  readonly heightMm: number;
  /** Left out at the head of a page. */
  readonly spaceBeforeMm: number;
  /** Not parted from the strip after it. */
  readonly keepWithNext: boolean;
  readonly shapes: readonly Shape[];
  readonly symbols?: Scene['symbols'];
  readonly bookmark?: Bookmark;
  /** A hairline across the text area in the middle of the space above; left out at the head of a page. */
  readonly ruleAbove?: boolean;
  /** Drawn above this strip again where it comes first on a page: the head of a table. */
  readonly headAgain?: Strip;
}

/** A page of its own, as large as its format says: shapes placed from the top left of the text area. */
export interface Sheet {
  readonly kind: 'sheet';
  readonly format: PageFormat;
  readonly orientation: Orientation;
  readonly shapes: readonly Shape[];
  /** Drawn in the coordinates of the whole page, under everything else. */
  readonly underPage: readonly Shape[];
  readonly symbols: Scene['symbols'];
  readonly bookmark?: Bookmark;
}

export type Flowing = Strip | Sheet;

/** Strips joined to their neighbours, so that none of them stands alone. */
export function keepTogether(strips: readonly Strip[], withNext = false): Strip[] {
  return strips.map((strip, index) => ({ ...strip, keepWithNext: index < strips.length - 1 || withNext }));
}

/** Lines of a paragraph: the first two and the last two stay together, so no line is left behind or carried over alone. */
export function noStrayLines(strips: readonly Strip[], withNext = false): Strip[] {
  const last = strips.length - 1;
  return strips.map((strip, index) => ({
    ...strip,
    keepWithNext: (index === 0 && last > 0) || index === last - 1 || (index === last && withNext),
  }));
}

/** The first strip with other space above it. */
export function withSpaceBefore(strips: readonly Strip[], spaceBeforeMm: number): Strip[] {
  return strips.map((strip, index) => (index === 0 ? { ...strip, spaceBeforeMm } : strip));
}

export function moved(shapes: readonly Shape[], xMm: number, yMm: number): Shape {
  return { kind: 'group', transform: [1, 0, 0, 1, xMm, yMm], shapes };
}
