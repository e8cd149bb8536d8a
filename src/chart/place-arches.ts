/** A row whose stitches are placed in; its chains that arch from one to the next placed out. */

import { targets } from '../fabric/fabric.ts';
import { CHAIN_THICKNESS_U } from '../symbols/chain.ts';
import { archPoints } from './arch.ts';
import { isColumn } from './columns.ts';
import type { ChartContext } from './context.ts';
import type { RowElement } from './elements.ts';
import { anchorOf, headOf, type Layout, type Point, place } from './layout.ts';
import { PITCH_U } from './metrics.ts';
import type { RowReading } from './read-row.ts';
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
    const chains = element.end - element.first;
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
      s1 = s0 + setting.way * chains * PITCH_U.chain;
      to = setting.track.point(s1, setting.level, setting.heads[k] ?? 0);
    }
    const offset = ((setting.heads[k] ?? 0) + (setting.heads[isLast ? k : column + 1] ?? 0)) / 2;
    const crest = setting.track.point((s0 + s1) / 2, setting.level, offset);
    placeArch(layout, element.first, element.end, from, to, crest);
  });
}

/** The chains at the end of a foundation that lead across to the first stitch of the row on it. */
export function placeLastArch(layout: Layout, foundation: RowReading, onIt: RowReading): void {
  const arch = foundation.elements.at(-1);
  const before = foundation.columns.at(-1);
  const after = onIt.columns[0];
  if (arch?.kind !== 'arch' || before === undefined || after === undefined) return;
  const from = headOf(layout, before.stitch === arch.end - 1 ? arch.first - 1 : before.stitch);
  const to = headOf(layout, after.stitch);
  placeArch(layout, arch.first, arch.end, from, to, {
    x: (from.x + to.x) / 2,
    y: (from.y + to.y) / 2,
    upX: 0,
    upY: 1,
  });
  aliasPosts(layout, foundation.elements);
}

/** Air between an arch and the heads it hangs between, at most and as a share of the distance. */
const ARCH_END_U = 0.34;
const ARCH_END_SHARE = 0.17;
/** A chain is never drawn longer than this. */
const LONGEST_CHAIN_U = 1.15;

function placeArch(
  layout: Layout,
  first: number,
  end: number,
  from: Point,
  to: Point,
  crest: Point & { upX: number; upY: number },
): void {
  const chains = end - first;
  const chord = Math.hypot(to.x - from.x, to.y - from.y) || 1e-6;
  const trim = Math.min(ARCH_END_U, chord * ARCH_END_SHARE) / chord;
  const fromX = from.x + (to.x - from.x) * trim;
  const fromY = from.y + (to.y - from.y) * trim;
  const toX = to.x + (from.x - to.x) * trim;
  const toY = to.y + (from.y - to.y) * trim;
  // Round a centre it bows at least as far as the round itself.
  const round = (crest.x - (from.x + to.x) / 2) * crest.upX + (crest.y - (from.y + to.y) / 2) * crest.upY;
  const least = Math.max(Math.min(round, chord), chord * (chains >= 3 ? 0.17 : 0.05));
  const at = archPoints({
    fromX,
    fromY,
    toX,
    toY,
    upX: crest.upX,
    upY: crest.upY,
    length: chains * PITCH_U.chain,
    leastBow: least,
  });
  // Few chains over a long way keep their size and lie in the middle of it.
  const share = Math.min(
    1,
    (chains * LONGEST_CHAIN_U) / Math.max(1e-6, Math.hypot(toX - fromX, toY - fromY)),
  );
  const along = (t: number): number => 0.5 + (t - 0.5) * share;
  for (let k = 0; k < chains; k += 1) {
    const start = at(along(k / chains));
    const stop = at(along((k + 1) / chains));
    const middle = at(along((k + 0.5) / chains));
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
