/** Placed rows in, their numbers, arrows and start marks out. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Ink, Shape } from '../scene/scene.ts';
import { enlarged } from '../scene/transforms.ts';
import { arrowShapes } from './arrow.ts';
import type { Post } from './elements.ts';
import { LabelRoom } from './label-room.ts';
import { footOf, headOf, type Layout, type Point } from './layout.ts';
import { FIGURE_U, HALF_FIGURE, LABEL_MM, U_MM } from './metrics.ts';
import type { Ring } from './place-centre.ts';
import type { PlacedRow } from './place-row.ts';
import { ringCount } from './ring-count.ts';
import { rowLabel } from './row-label.ts';
import { startShapes } from './start-shapes.ts';
import type { SymbolBook } from './symbol-book.ts';
import { numberedWithin, runsStraight } from './track.ts';
import { wallLine } from './wall-line.ts';
import type { Wall } from './walls.ts';

export interface Labelling {
  readonly fabric: Fabric;
  readonly layout: Layout;
  readonly rows: readonly PlacedRow[];
  /** By row; the first ink where there is none. */
  readonly inks: readonly Ink[];
  /** Rounds laid out straight. */
  readonly wall: Wall | null;
  /** Chains in the middle. */
  readonly ring: Ring | null;
  readonly book: SymbolBook;
}

export interface Labels {
  readonly shapes: readonly Shape[];
  /** What of the marks was used, for the key. */
  readonly startMark: boolean;
  /** Arrows beside the numbers of rows, and of rounds that are laid out straight. */
  readonly rowArrows: boolean;
  readonly laidOutArrows: boolean;
  readonly wallLine: boolean;
  readonly roundArrow: boolean;
  /** Stands inside a ring of chains; no number of a row. */
  readonly ringCount: Extract<Shape, { kind: 'text' }> | null;
}

export function labelRows(labelling: Labelling): Labels {
  const { fabric, rows } = labelling;
  const isFlat = ({ row, track }: PlacedRow): boolean =>
    runsStraight(track) || (track.circle && fabric.rows[row]?.closing === 'flat');
  const flat = rows.filter(isFlat);
  const round = rows.filter((placed) => !isFlat(placed));
  // An edging covers where the piece under it began.
  const start = round.length > 0 ? [] : flatStart(labelling, flat);
  const around = round.filter(({ track }) => !numberedWithin(track));
  const sideways = flat.filter(({ track }) => track.point(0, 0, 0).upY === 0);
  const shapes = [
    ...flatLabels(labelling, flat, [...around, ...sideways]),
    ...start,
    ...roundLabels(labelling, round),
  ];
  const turned = new Set(round.map(({ way }) => way)).size > 1;
  const arrow = round.length > 0 && !turned ? roundArrow(round) : [];
  const { wall, ring } = labelling;
  const count = ring === null ? null : ringCount(fabric, labelling.layout, ring, labelling.inks);
  const line = wall === null ? [] : wallLine(wall, rowLabel(fabric, wall.onto));
  const numbered = flat.filter(({ row }) => fabric.rows[row]?.number !== null);
  return {
    shapes: [...line, ...shapes, ...arrow],
    startMark: start.length > 0,
    rowArrows: numbered.some(({ row }) => fabric.rows[row]?.closing === 'flat'),
    laidOutArrows: numbered.some(({ row }) => fabric.rows[row]?.closing !== 'flat'),
    wallLine: wall !== null,
    roundArrow: arrow.length > 0,
    ringCount: count,
  };
}

function flatLabels(labelling: Labelling, flat: readonly PlacedRow[], beside: readonly PlacedRow[]): Shape[] {
  return flat.flatMap((placed, k) => {
    const text = rowLabel(labelling.fabric, placed.row);
    if (text === '') return [];
    const onTrack = placed.track.point(placed.startS, placed.level, (placed.low + placed.high) / 2);
    const at =
      placed.chains === null ? onTrack : { ...onTrack, ...middleOf(labelling.layout, placed.chains) };
    const way = placed.way * placed.track.handed;
    const out = { x: at.upY * way, y: -at.upX * way };
    const reach = at.upX === 0 ? rowReach(at.x, out.x, flat.slice(Math.max(0, k - 2), k + 3), beside) : 0;
    const ink = labelling.inks[placed.row] ?? 'ink';
    const tip: [number, number] = [
      (at.x + out.x * reach) * U_MM + out.x * LABEL_MM.gap,
      -at.y * U_MM - out.y * LABEL_MM.gap,
    ];
    const tail: [number, number] = [tip[0] + out.x * LABEL_MM.arrow, tip[1] - out.y * LABEL_MM.arrow];
    return [
      labelling.book.use('row-arrow', rowArrow, {
        x: tip[0] / U_MM,
        y: -tip[1] / U_MM,
        upX: -out.y,
        upY: out.x,
        ink,
      }),
      {
        kind: 'text',
        x: tail[0] + out.x,
        // A number over or under its arrow needs half its own height more.
        y: tail[1] - out.y * (1 + LABEL_MM.size * 0.45) + LABEL_MM.size * HALF_FIGURE,
        text,
        sizeMm: LABEL_MM.size,
        face: 'text-bold',
        align: Math.abs(out.x) < 0.5 ? 'middle' : out.x > 0 ? 'start' : 'end',
        ink,
      },
    ];
  });
}

function middleOf(layout: Layout, { first, end }: Post): Point {
  const foot = footOf(layout, first);
  const head = headOf(layout, end - 1);
  return { x: (foot.x + head.x) / 2, y: (foot.y + head.y) / 2 };
}

/** Its point at the origin, its shaft to the right. */
function rowArrow(): readonly Shape[] {
  const points = [[LABEL_MM.arrow, 0] as const, [0, 0] as const];
  // The book takes stitch units.
  return enlarged(arrowShapes(points, 'ink'), 1 / U_MM);
}

/** From a row's start to clear of the rows near it, and of what is worked onto the edges of the piece. */
function rowReach(x: number, outX: number, near: readonly PlacedRow[], beside: readonly PlacedRow[]): number {
  const beyond = outX > 0 ? near.map(({ reach }) => reach.right) : near.map(({ reach }) => -reach.left);
  const edging = outX > 0 ? beside.map(({ reach }) => reach.right) : beside.map(({ reach }) => -reach.left);
  return Math.max(...beyond, ...edging.map((edge) => edge + 0.4)) - outX * x;
}

function flatStart({ fabric, layout, inks, book }: Labelling, flat: readonly PlacedRow[]): Shape[] {
  const first = flat.find(({ row }) => fabric.rows[row]?.number === null && fabric.rows[row]?.onto === null);
  if (first === undefined) return [];
  const i = fabric.rows[first.row]?.first ?? 0;
  const x = layout.footX[i] ?? 0;
  const y = layout.footY[i] ?? 0;
  const ux = Math.sign((layout.headX[i] ?? 0) - x) || 1;
  return startShapes(book, x * U_MM - ux * 3.2, -y * U_MM, ux, inks[first.row] ?? 'ink');
}

function roundLabels(labelling: Labelling, round: readonly PlacedRow[]): Shape[] {
  let outside = 0;
  const taken: { readonly point: Point; readonly figures: number }[] = [];
  return round.flatMap((placed, k): Shape[] => {
    const text = rowLabel(labelling.fabric, placed.row);
    if (text === '') return [];
    const within = standsWithin(placed, round);
    const places = within ? besideStart(placed, text.length) : beyond(placed, round, outside);
    const near = (within ? round.slice(Math.max(0, k - 1), k + 2) : round).map(({ row }) => row);
    const room = new LabelRoom(labelling.fabric, labelling.layout, near);
    for (const { point, figures } of taken) room.take(point, figures);
    const at = room.roomiest(places, text.length);
    if (at === null) return [];
    taken.push({ point: at, figures: text.length });
    if (!within) outside += 1;
    return [
      {
        kind: 'text',
        x: at.x * U_MM,
        y: -at.y * U_MM + LABEL_MM.size * HALF_FIGURE,
        text,
        sizeMm: LABEL_MM.size,
        face: 'text-bold',
        align: 'middle',
        ink: labelling.inks[placed.row] ?? 'ink',
      },
    ];
  });
}

function standsWithin(placed: PlacedRow, round: readonly PlacedRow[]): boolean {
  return numberedWithin(placed.track) && placed !== round.at(-1);
}

/** How far from where it stands best a number may move to find room: along the round and outwards, the nearest first. */
const MOVES = [-0.9, -0.6, -0.3, 0, 0.3, 0.6, 0.9, 1.2, 1.5]
  .flatMap((along) => [-0.6, -0.3, 0, 0.3, 0.6, 0.9, 1.2, 1.5].map((out) => ({ along, out })))
  .toSorted((a, b) => Math.hypot(a.along, a.out) - Math.hypot(b.along, b.out));

/** Where a round's number may stand: on the side of its start that it comes back from, under an arch that leads across. */
function besideStart(
  { track, level, startS, startHalfU, way, low, high, archOverSeam }: PlacedRow,
  figures: number,
): Point[] {
  const aside = startHalfU + 0.16 + (figures * FIGURE_U) / 2;
  const offset = labelOffset(low, high, archOverSeam);
  return MOVES.map(({ along, out }) => {
    const at = track.point(startS, level, offset + out);
    const back = (aside + along) * way * track.handed;
    return { x: at.x + at.upY * back, y: at.y - at.upX * back };
  });
}

/** Near the heads, where the gap is widest; lower where chains arch across it. */
function labelOffset(low: number, high: number, archOverSeam: boolean): number {
  if (!archOverSeam) return Math.max(low + 0.4, high - 0.58);
  return high - low > 1.2 ? low + (high - low) * 0.45 : low + 0.3;
}

/** Room between numbers that stand one outside another. */
const NUMBERS_APART_U = 0.95;

/** Room that the numbers outside these rounds take up, beyond that of one. */
export function outsideU(round: readonly PlacedRow[]): number {
  const outside = round.filter((placed) => !standsWithin(placed, round)).length;
  return Math.max(0, outside - 1) * NUMBERS_APART_U;
}

const MOVES_OUT = [0, 0.25, 0.5, 0.75, 1];

/** The last round is numbered outside it, and so are those of an edging, in the order they lie. */
function beyond(placed: PlacedRow, round: readonly PlacedRow[], before: number): Point[] {
  // Each line measures how far out it is in its own way.
  const alike = round.filter(({ track }) => track === placed.track);
  const outer = Math.max(...alike.map(({ level, high }) => Math.max(level, high)));
  const aside = numberedWithin(placed.track) ? 0 : 0.9;
  const out = 0.75 + before * NUMBERS_APART_U;
  return MOVES_OUT.map((further) =>
    placed.track.point(placed.startS + aside * placed.way, placed.level, outer + out + further),
  );
}

/** How long the arrow is that shows the way round, and how far outside the last round it runs. */
const ROUND_ARROW_U = { length: 3.4, out: 0.7 } as const;

function roundArrow(round: readonly PlacedRow[]): Shape[] {
  const last = round.at(-1);
  if (last === undefined) return [];
  const steps = 10;
  const outside = round.filter((placed) => !standsWithin(placed, round)).length;
  const offset = Math.max(last.level, last.high) + ROUND_ARROW_U.out + outside * NUMBERS_APART_U;
  // Along the middle of a straight side rather than round a corner.
  const { corners } = last.track;
  const from = corners > 0 ? last.track.around(last.level) / corners / 2 : last.startS;
  const points = Array.from({ length: steps + 1 }, (_, k): [number, number] => {
    const along = ((k / steps) * ROUND_ARROW_U.length - ROUND_ARROW_U.length * 0.3) * last.way;
    const at = last.track.point(from + along, last.level, offset);
    return [at.x * U_MM, -at.y * U_MM];
  });
  return arrowShapes(points, 'ink');
}
