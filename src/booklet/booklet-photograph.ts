/** A photograph scaled for paper in, the shape it is printed as out: no larger than its dots allow. */

import type { Scene, Shape } from '../scene/scene.ts';
import { mmFromIn } from '../units.ts';

export interface BookletPhotograph {
  /** For those who do not see it. */
  readonly shows: string;
  readonly by: string | null;
  /** The part it belongs to, by name; null for the piece as a whole. */
  readonly part: string | null;
  readonly widthPx: number;
  readonly heightPx: number;
  /** The file as it goes into the booklet. */
  readonly jpeg: Uint8Array;
}

/** Coarser than this a photograph looks it, at the distance a booklet is held; common practice. */
const LEAST_DOTS_PER_INCH = 150;

export interface PrintedSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** As large as the room allows, and its dots. */
export function printedSize(
  { widthPx, heightPx }: BookletPhotograph,
  roomWidthMm: number,
  roomHeightMm: number,
): PrintedSize {
  const scale = Math.min(roomWidthMm / widthPx, roomHeightMm / heightPx, mmFromIn(1) / LEAST_DOTS_PER_INCH);
  return { widthMm: widthPx * scale, heightMm: heightPx * scale };
}

export function printedShape(
  { jpeg }: BookletPhotograph,
  { widthMm, heightMm }: PrintedSize,
  x: number,
  y: number,
): Shape {
  return { kind: 'picture', x, y, widthMm, heightMm, jpeg };
}

/** The cover's, for whatever room a cover has. */
export function photographScene(photograph: BookletPhotograph): Scene {
  const size = printedSize(photograph, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY);
  return {
    ...size,
    title: photograph.shows,
    alternative: photograph.shows,
    symbols: {},
    shapes: [printedShape(photograph, size, 0, 0)],
  };
}
