/** A row whose stitches are placed in; its chains that arch from one to the next placed out. */

import { targets } from '../fabric/fabric.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { archOver } from './arch.ts';
import { isColumn } from './columns.ts';
import type { ChartContext } from './context.ts';
import type { RowElement } from './elements.ts';
import { anchorOf, headOf, type Layout, type Point, place } from './layout.ts';
import { PITCH_U } from './metrics.ts';
import type { RowReading } from './read-row.ts';
import { chainsLong, enteredShare } from './stitch-form.ts';
import type { Track } from './track.ts';

interface ArchSetting {
  readonly track: Track;
  readonly level: number;
  readonly way: 1 | -1;
  readonly closed: boolean;
  readonly along: Float64Array;
  readonly heads: Float64Array;
  /** An arch at its end leads to the row after it. */
  readonly onNext: boolean;
}

export function placeArches(
  context: ChartContext,
  { elements, columns }: RowReading,
  setting: ArchSetting,
): void {
  const { layout } = context;
  let column = -1;
  elements.forEach((element, e) => {
    if (isColumn(element)) column += 1;
    if (element.kind !== 'arch') return;
    const k = Math.max(0, column);
    const before = columns[k];
    const isLast = column + 1 >= columns.length;
    const after = isLast ? columns[0] : columns[column + 1];
    if (before === undefined || after === undefined) return;
    const from = headOf(layout, before.stitch);
    const s0 = setting.along[k] ?? 0;
    let s1 = setting.along[isLast ? 0 : column + 1] ?? 0;
    let to: Point = headOf(layout, after.stitch);
    const around = setting.closed ? setting.track.around(setting.level) : 0;
    // Round and round: what comes next lies ahead.
    if (setting.closed && (s1 - s0) * setting.way <= 0) s1 += setting.way * around;
    if (isLast && setting.closed) {
      const join = elements.slice(e + 1).find((next) => next.kind === 'dot');
      const joined = join?.kind === 'dot' ? targets(context.fabric, join.stitch)[0] : undefined;
      if (joined !== undefined && layout.placed[joined]) to = anchorOf(layout, joined);
    } else if (isLast && setting.onNext) {
      return;
    } else if (isLast) {
      const length = lengthsOf(context, element.first, element.end).reduce((a, b) => a + b, 0);
      s1 = s0 + setting.way * length;
      to = setting.track.point(s1, setting.level, setting.heads[k] ?? 0);
    }
    const offset = ((setting.heads[k] ?? 0) + (setting.heads[isLast ? k : column + 1] ?? 0)) / 2;
    const crest = setting.track.point((s0 + s1) / 2, setting.level, offset);
    placeArch(context, element.first, element.end, from, to, {
      ...crest,
      tops: skippedTops(context, before.stitch, after.stitch),
    });
  });
}

/** The chains at the end of a foundation that lead across to the first stitch of the row on it. */
export function placeLastArch(context: ChartContext, foundation: RowReading, onIt: RowReading): void {
  const { layout } = context;
  const arch = foundation.elements.at(-1);
  const before = foundation.columns.at(-1);
  const after = onIt.columns[0];
  if (arch?.kind !== 'arch' || before === undefined || after === undefined) return;
  const from = headOf(layout, before.stitch === arch.end - 1 ? arch.first - 1 : before.stitch);
  const to = headOf(layout, after.stitch);
  placeArch(context, arch.first, arch.end, from, to, {
    x: (from.x + to.x) / 2,
    y: (from.y + to.y) / 2,
    upX: 0,
    upY: 1,
    tops: [],
  });
  aliasPosts(layout, foundation.elements);
}

/** Air between an arch and the heads it hangs between, at most and as a share of the distance. */
const ARCH_END_U = 0.34;
const ARCH_END_SHARE = 0.17;
/** A chain is never drawn longer than this many times its length. */
const LONGEST_CHAIN = 1.15 / PITCH_U.chain;

/** Which way an arch bows, and the tops of the stitches it leads over. */
interface Crest extends Point {
  readonly upX: number;
  readonly upY: number;
  readonly tops: readonly Point[];
}

/** Tops of the stitches of the row below between those that two stitches are worked into. */
function skippedTops({ fabric, layout }: ChartContext, a: number, b: number): Point[] {
  const intoA = targets(fabric, a)[0] ?? 0;
  const intoB = targets(fabric, b)[0] ?? 0;
  if (fabric.row[intoA] !== fabric.row[intoB]) return [];
  const tops: Point[] = [];
  for (let i = Math.min(intoA, intoB) + 1; i < Math.max(intoA, intoB); i += 1)
    if (layout.placed[i]) tops.push(anchorOf(layout, i));
  return tops;
}

/** Of each chain, or what else lies there. */
function lengthsOf({ fabric, rows }: ChartContext, first: number, end: number): number[] {
  return Array.from(
    { length: end - first },
    (_, k) => PITCH_U.chain * chainsLong(rows[fabric.kind[first + k] ?? 0]),
  );
}

function placeArch(
  context: ChartContext,
  first: number,
  end: number,
  from: Point,
  to: Point,
  crest: Crest,
): void {
  const { layout } = context;
  const lengths = lengthsOf(context, first, end);
  const length = lengths.reduce((a, b) => a + b, 0);
  const chord = Math.hypot(to.x - from.x, to.y - from.y) || 1e-6;
  const trim = Math.min(ARCH_END_U, chord * ARCH_END_SHARE) / chord;
  const fromX = from.x + (to.x - from.x) * trim;
  const fromY = from.y + (to.y - from.y) * trim;
  const toX = to.x + (from.x - to.x) * trim;
  const toY = to.y + (from.y - to.y) * trim;
  // Round a centre it bows at least as far as the round itself.
  const round = (crest.x - (from.x + to.x) / 2) * crest.upX + (crest.y - (from.y + to.y) / 2) * crest.upY;
  const least = Math.max(Math.min(round, chord), chord * (length >= 3 * PITCH_U.chain ? 0.17 : 0.05));
  const at = archOver(
    { fromX, fromY, toX, toY, upX: crest.upX, upY: crest.upY, length, leastBow: least },
    crest.tops,
  );
  // Few chains over a long way keep their size and lie in the middle of it.
  const share = Math.min(1, (length * LONGEST_CHAIN) / Math.max(1e-6, Math.hypot(toX - fromX, toY - fromY)));
  const along = (t: number): number => 0.5 + (t - 0.5) * share;
  let before = 0;
  for (const [k, own] of lengths.entries()) {
    const start = at(along(before / length));
    const stop = at(along((before + own) / length));
    const entered = enteredShare(context.rows[context.fabric.kind[first + k] ?? 0]);
    const middle = at(along((before + own * entered) / length));
    before += own;
    place(layout, first + k, {
      footX: start.x,
      footY: start.y,
      headX: stop.x,
      headY: stop.y,
      anchorX: middle.x + (middle.upX * CHAIN_THICKNESS_U) / 2,
      anchorY: middle.y + (middle.upY * CHAIN_THICKNESS_U) / 2,
      upX: middle.upX,
      upY: middle.upY,
    });
  }
}

/** A chain that counts as the post it goes on from is worked into at the top of the post. */
export function aliasPosts(layout: Layout, elements: readonly RowElement[]): void {
  for (const element of elements) {
    if (element.kind !== 'post' || element.counted < element.end) continue;
    layout.anchorX[element.counted] = layout.headX[element.end - 1] ?? 0;
    layout.anchorY[element.counted] = layout.headY[element.end - 1] ?? 0;
  }
}
