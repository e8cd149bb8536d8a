/** A fabric and its yarns' colours in; a picture for covers and lists out: its own stitches as strands of yarn on toned paper. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Ink, Scene, Shape } from '../scene/scene.ts';
import { pieces, rowsOfParts } from './chart-parts.ts';
import { stitchRows } from './elements.ts';
import { fabricPicture, UNKNOWN } from './fabric-picture.ts';
import { emptyLayout, type Layout } from './layout.ts';
import { U_MM } from './metrics.ts';
import { placePiece } from './place-part.ts';
import type { PlacedRow } from './place-row.ts';
import { contrast } from './row-pens.ts';
import { runsStraight } from './track.ts';

/** A paper for dark yarns and one for pale ones. */
const PAPERS = { pale: '#f0eadf', dark: '#45423f' } as const;

/** Of rows, a piece this many stitches wide shows the pattern; a round piece is shown whole up to this size. */
const ROWS_SHOWN_U = 15;
const ROUND_SHOWN_U = 46;
/** Paper left round the picture, as a share of its shorter side. */
const EDGE = 0.07;

/** Null when no stitch was worked. */
export function coverScene(
  fabric: Fabric,
  yarnHex: Readonly<Record<string, string | null>>,
  widthMm: number,
  heightMm: number,
): Scene | null {
  const rows = stitchRows(fabric);
  const layout = emptyLayout(fabric.count);
  const parts = largestPiece(fabric);
  if (parts === null) return null;
  const placed = placePiece(fabric, rows, layout, parts);
  // Of a hat or a basket the ring is the picture; its wall laid out above it would only make it small.
  const wall = new Set(placed.wall === null ? [] : placed.rows.filter(isLaidOut).map(({ row }) => row));
  const stitches = rowsOfParts(fabric, parts).flatMap((row) => {
    if (wall.has(row)) return [];
    const { first, end } = fabric.rows[row] ?? { first: 0, end: 0 };
    return Array.from({ length: end - first }, (_, k) => first + k).filter((i) => layout.placed[i] === 1);
  });
  if (stitches.length === 0) return null;
  const isRound = fabric.parts[parts[0] ?? 0]?.shape === 'round';
  const window = windowOn(layout, stitches, widthMm, heightMm, isRound ? ROUND_SHOWN_U : ROWS_SHOWN_U);
  const inks = fabric.yarns.map((letter): Ink => hexInk(yarnHex[letter]) ?? UNKNOWN);
  const inside = stitches.filter((i) => window.holds(layout, i));
  const shapes = fabricPicture({ fabric, rows, layout, inks }, inside);
  const scale = window.mmPerU / U_MM;
  const background: Shape = {
    kind: 'path',
    parts: [['M', 0, 0], ['L', widthMm, 0], ['L', widthMm, heightMm], ['L', 0, heightMm], ['Z']],
    stroke: null,
    fill: paperFor(inks),
  };
  return {
    widthMm,
    heightMm,
    title: 'The stitches of the pattern',
    alternative:
      'Part of the fabric as it looks, drawn stitch by stitch in the colours of the yarn, as decoration.',
    symbols: {},
    shapes: [
      background,
      {
        kind: 'group',
        transform: [
          scale,
          0,
          0,
          scale,
          widthMm / 2 - window.x * window.mmPerU,
          heightMm / 2 + window.y * window.mmPerU,
        ],
        shapes,
      },
    ],
  };
}

function isLaidOut({ track }: PlacedRow): boolean {
  return runsStraight(track);
}

function largestPiece(fabric: Fabric): readonly number[] | null {
  let best: readonly number[] | null = null;
  let most = 0;
  for (const parts of pieces(fabric)) {
    const count = rowsOfParts(fabric, parts).reduce(
      (sum, row) => sum + (fabric.rows[row]?.end ?? 0) - (fabric.rows[row]?.first ?? 0),
      0,
    );
    if (count > most) {
      best = parts;
      most = count;
    }
  }
  return best;
}

interface Window {
  /** Its middle, in stitch units. */
  readonly x: number;
  readonly y: number;
  readonly mmPerU: number;
  readonly holds: (layout: Layout, i: number) => boolean;
}

/** What of the piece fits the picture, from its middle. */
function windowOn(
  layout: Layout,
  stitches: readonly number[],
  widthMm: number,
  heightMm: number,
  shownU: number,
): Window {
  let left = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.POSITIVE_INFINITY;
  let top = Number.NEGATIVE_INFINITY;
  for (const i of stitches) {
    left = Math.min(left, layout.footX[i] ?? 0, layout.headX[i] ?? 0);
    right = Math.max(right, layout.footX[i] ?? 0, layout.headX[i] ?? 0);
    bottom = Math.min(bottom, layout.footY[i] ?? 0, layout.headY[i] ?? 0);
    top = Math.max(top, layout.footY[i] ?? 0, layout.headY[i] ?? 0);
  }
  const x = (left + right) / 2;
  const y = (bottom + top) / 2;
  const edgeMm = EDGE * Math.min(widthMm, heightMm);
  // Room for what a stitch draws beside its foot and head.
  const across = Math.min(shownU, right - left) + 0.9;
  const up = Math.min(shownU, top - bottom) + 0.9;
  const mmPerU = Math.min((widthMm - 2 * edgeMm) / across, (heightMm - 2 * edgeMm) / up);
  const halfWide = (widthMm / 2 - edgeMm) / mmPerU - 0.4;
  const halfHigh = (heightMm / 2 - edgeMm) / mmPerU - 0.4;
  const within = (atX: number, atY: number): boolean =>
    Math.abs(atX - x) <= halfWide && Math.abs(atY - y) <= halfHigh;
  return {
    x,
    y,
    mmPerU,
    holds: ({ footX, footY, headX, headY }, i) =>
      within(footX[i] ?? 0, footY[i] ?? 0) && within(headX[i] ?? 0, headY[i] ?? 0),
  };
}

function hexInk(hex: string | null | undefined): Ink | null {
  return hex && /^#[0-9a-f]{6}$/i.test(hex) ? `#${hex.slice(1)}` : null;
}

/** The paper that the yarn nearest to it stands out from most. */
function paperFor(inks: readonly Ink[]): Ink {
  const least = (paper: string): number => Math.min(...inks.map((ink) => contrast(ink, paper)));
  return least(PAPERS.dark) > least(PAPERS.pale) ? PAPERS.dark : PAPERS.pale;
}
