/**
 * Placed stitches and their yarns' colours in, the fabric as it looks out: posts as thick strands from where each stitch
 * is worked to where it ends, and over each the two strands of its top, which
 * the feet of the next row go under.
 */

import { type Fabric, targets } from '../fabric/fabric.ts';
import type { Ink, PathPart, Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { isLong } from './columns.ts';
import { postFace } from './foot-marks.ts';
import type { Layout } from './layout.ts';
import { U_MM } from './metrics.ts';
import { shaded } from './row-pens.ts';
import { legsInOnePlace } from './stitch-form.ts';

/** Widths in stitch units: a post nearly fills its place, as it does in the fabric. */
const POST_U = 0.56;
const RIM_U = 0.1;
const TWIST_U = 0.07;
/** Half the length and height of the top of a stitch. */
const TOP_U = { long: 0.47, high: 0.2 } as const;
/** How far a cluster's outer legs stand off its middle. */
const BULGE_U = 0.34;
/** Slashes across a post, one for each yarn over. */
const TWIST_HALF_U = 0.2;
/** Control points of a quarter of an ellipse. */
const ROUND = 0.5523;

export interface Worked {
  readonly fabric: Fabric;
  readonly rows: readonly StitchRow[];
  readonly layout: Layout;
  /** By the fabric's own numbering of its yarns. */
  readonly inks: readonly Ink[];
}

/** `stitches` in the order worked; those of one row and one yarn share their paths. */
export function fabricPicture(worked: Worked, stitches: readonly number[]): Shape[] {
  const { fabric, inks } = worked;
  const shapes: Shape[] = [];
  let before: RowShapes = NOTHING;
  let now: RowShapes = NOTHING;
  let row = -1;
  // The tops of a row lie over the feet of the next, and over both lies what reaches down in front of them.
  const finishRow = (): void => {
    shapes.push(...now.posts, ...before.tops, ...now.inFront);
    before = now;
    now = NOTHING;
  };
  for (const run of runsOf(fabric, stitches)) {
    const [first = 0] = run;
    if (fabric.row[first] !== row) finishRow();
    row = fabric.row[first] ?? 0;
    const drawn = runShapes(worked, run, inks[fabric.yarn[first] ?? 0] ?? UNKNOWN);
    now = {
      posts: [...now.posts, ...drawn.posts],
      inFront: [...now.inFront, ...drawn.inFront],
      tops: [...now.tops, ...drawn.tops],
    };
  }
  finishRow();
  return [...shapes, ...before.tops];
}

interface RowShapes {
  readonly posts: readonly Shape[];
  readonly inFront: readonly Shape[];
  readonly tops: readonly Shape[];
}

const NOTHING: RowShapes = { posts: [], inFront: [], tops: [] };

function runShapes(worked: Worked, run: readonly number[], ink: Ink): RowShapes {
  const shades = { ink, rim: shaded(ink, 0, 0.45), gleam: shaded(ink, 255, 0.28) };
  const strands = run.map((i) => strandsOf(worked, i));
  const posts = (inFront: boolean): Shape[] => {
    const legs = strands.filter((strand) => strand.inFront === inFront).flatMap((strand) => strand.legs);
    // Every second over the ones between: stitches that fan out of one place are told apart at their foot.
    return [0, 1].flatMap((parity) =>
      postShapes(
        legs.filter((_, k) => k % 2 === parity),
        shades,
      ),
    );
  };
  const tops = topShapes(
    strands.flatMap(({ top }) => top),
    shades,
  );
  return { posts: posts(false), inFront: posts(true), tops };
}

/** A yarn whose file gives no colour. */
export const UNKNOWN: Ink = '#7d6f5e';

interface Shades {
  readonly ink: Ink;
  readonly rim: Ink;
  readonly gleam: Ink;
}

interface Strands {
  readonly legs: readonly { readonly leg: Leg; readonly yarnOvers: number }[];
  readonly top: readonly Leg[];
  /** Over the stitches it reaches down past: a spike, a stitch round the front of a post. */
  readonly inFront: boolean;
}

function strandsOf(worked: Worked, i: number): Strands {
  const row = worked.rows[worked.fabric.kind[i] ?? 0];
  const at = spanOf(worked.layout, i);
  if (row === undefined || row.lies === true || row.family === 'slip')
    return { legs: [], top: [at], inFront: false };
  const all = legsOf(worked, i, row);
  // In a cluster the legs lie too close for more than their rims.
  const legs = all.map((leg) => ({ leg, yarnOvers: all.length < 3 ? row.yarnOvers : 0 }));
  const inFront = isLong(worked.fabric, i) || postFace(worked, i) === 'front';
  return { legs, top: [topOf(at)], inFront };
}

function postShapes(posts: Strands['legs'], { ink, rim }: Shades): Shape[] {
  const stems = posts.flatMap(({ leg }) => bow(leg));
  return [
    ...stroked(stems, rim, POST_U + RIM_U),
    ...stroked(stems, ink, POST_U - RIM_U),
    ...stroked(
      posts.flatMap(({ leg, yarnOvers }) => slashes(leg, yarnOvers)),
      rim,
      TWIST_U,
    ),
  ];
}

function topShapes(tops: readonly Leg[], { ink, rim, gleam }: Shades): Shape[] {
  const outlines: PathPart[] = [];
  const partings: PathPart[] = [];
  for (const top of tops) oval(top, outlines, partings);
  return [...filled(outlines, ink, rim), ...stroked(partings, gleam, TWIST_U)];
}

/** Stitches one after another in one row and one yarn. */
function runsOf({ row, yarn }: Fabric, stitches: readonly number[]): number[][] {
  const runs: number[][] = [];
  for (const i of stitches) {
    const run = runs.at(-1);
    const before = run?.[0];
    if (run === undefined || before === undefined || row[before] !== row[i] || yarn[before] !== yarn[i])
      runs.push([i]);
    else run.push(i);
  }
  return runs;
}

interface Leg {
  readonly x: number;
  readonly y: number;
  readonly toX: number;
  readonly toY: number;
  /** How far its middle stands off to the side. */
  readonly bulge: number;
}

function spanOf({ footX, footY, headX, headY }: Layout, i: number): Leg {
  return { x: footX[i] ?? 0, y: footY[i] ?? 0, toX: headX[i] ?? 0, toY: headY[i] ?? 0, bulge: 0 };
}

/** Of a decrease one from each stitch it takes in, of a cluster as many as it has, side by side. */
function legsOf({ fabric, rows, layout }: Worked, i: number, row: StitchRow): Leg[] {
  const whole = spanOf(layout, i);
  const together = legsInOnePlace(fabric, rows, i);
  if (together > 1)
    return Array.from({ length: together }, (_, k) => ({
      ...whole,
      bulge: BULGE_U * ((2 * k) / (together - 1) - 1),
    }));
  if (row.uses < 2) return [whole];
  const feet = [...targets(fabric, i)].filter((target) => layout.placed[target] === 1);
  if (feet.length < 2) return [whole];
  return feet.map((target) => ({
    ...whole,
    x: layout.anchorX[target] ?? whole.x,
    y: layout.anchorY[target] ?? whole.y,
  }));
}

function bow({ x, y, toX, toY, bulge }: Leg): PathPart[] {
  if (bulge === 0)
    return [
      ['M', x * U_MM, -y * U_MM],
      ['L', toX * U_MM, -toY * U_MM],
    ];
  const [ax, ay] = sideways({ x, y, toX, toY, bulge });
  const at = (share: number): [number, number] => [
    (x + (toX - x) * share + ax * bulge) * U_MM,
    -(y + (toY - y) * share + ay * bulge) * U_MM,
  ];
  return [
    ['M', x * U_MM, -y * U_MM],
    ['C', ...at(0.25), ...at(0.75), toX * U_MM, -toY * U_MM],
  ];
}

/** Across a leg, of length 1. */
function sideways({ x, y, toX, toY }: Leg): [number, number] {
  const long = Math.hypot(toX - x, toY - y) || 1;
  return [-(toY - y) / long, (toX - x) / long];
}

function slashes(leg: Leg, yarnOvers: number): PathPart[] {
  const [ax, ay] = sideways(leg);
  const long = Math.hypot(leg.toX - leg.x, leg.toY - leg.y);
  const [ux, uy] = [(leg.toX - leg.x) / (long || 1), (leg.toY - leg.y) / (long || 1)];
  return Array.from({ length: yarnOvers }, (_, k): PathPart[] => {
    const share = (k + 1) / (yarnOvers + 1);
    const cx = leg.x + (leg.toX - leg.x) * share + ax * leg.bulge * 0.75;
    const cy = leg.y + (leg.toY - leg.y) * share + ay * leg.bulge * 0.75;
    const [dx, dy] = [(ax + ux * 0.6) * TWIST_HALF_U, (ay + uy * 0.6) * TWIST_HALF_U];
    return [
      ['M', (cx - dx) * U_MM, -(cy - dy) * U_MM],
      ['L', (cx + dx) * U_MM, -(cy + dy) * U_MM],
    ];
  }).flat();
}

/** Across the head of a post, as wide as its place. */
function topOf(post: Leg): Leg {
  const [ax, ay] = sideways(post);
  return {
    x: post.toX - ax * TOP_U.long,
    y: post.toY - ay * TOP_U.long,
    toX: post.toX + ax * TOP_U.long,
    toY: post.toY + ay * TOP_U.long,
    bulge: 0,
  };
}

/** Two strands lying side by side: their outline, and where they part. */
function oval(along: Leg, outlines: PathPart[], partings: PathPart[]): void {
  const { x, y, toX, toY } = along;
  const long = Math.hypot(toX - x, toY - y);
  if (long < 0.05) return;
  const [ux, uy] = [(toX - x) / long, (toY - y) / long];
  const [cx, cy] = [(x + toX) / 2, (y + toY) / 2];
  const at = (a: number, b: number): [number, number] => [
    (cx + ux * a - uy * b) * U_MM,
    -(cy + uy * a + ux * b) * U_MM,
  ];
  const [r, h] = [long / 2, TOP_U.high];
  outlines.push(
    ['M', ...at(-r, 0)],
    ['C', ...at(-r, h * ROUND), ...at(-r * ROUND, h), ...at(0, h)],
    ['C', ...at(r * ROUND, h), ...at(r, h * ROUND), ...at(r, 0)],
    ['C', ...at(r, -h * ROUND), ...at(r * ROUND, -h), ...at(0, -h)],
    ['C', ...at(-r * ROUND, -h), ...at(-r, -h * ROUND), ...at(-r, 0)],
    ['Z'],
  );
  partings.push(['M', ...at(-r * 0.55, 0)], ['L', ...at(r * 0.55, 0)]);
}

function stroked(parts: readonly PathPart[], ink: Ink, widthU: number): Shape[] {
  if (parts.length === 0) return [];
  return [{ kind: 'path', parts, stroke: { ink, widthMm: widthU * U_MM }, fill: 'none' }];
}

function filled(parts: readonly PathPart[], fill: Ink, rim: Ink): Shape[] {
  if (parts.length === 0) return [];
  return [{ kind: 'path', parts, stroke: { ink: rim, widthMm: RIM_U * 0.6 * U_MM }, fill }];
}
