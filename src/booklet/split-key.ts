/** A chart in, its drawing without the key and the entries of the key out, so that each can have its own scale. */

import { boundsOf } from '../scene/bounds.ts';
import type { Scene, Shape } from '../scene/scene.ts';

/** A symbol and its words, shapes as in the chart's own mm, with the places that matter to set it anew. */
export interface KeyEntry {
  readonly shapes: readonly Shape[];
  /** Where its symbol stands, across. */
  readonly symbolXMm: number;
  readonly topMm: number;
  readonly rightMm: number;
  readonly heightMm: number;
}

export interface SplitChart {
  readonly drawing: Scene;
  readonly entries: readonly KeyEntry[];
}

/** The key is the group marked as such at the foot of a chart; a chart without one is left as it is. */
export function splitKey(scene: Scene): SplitChart {
  const key = scene.shapes.find((shape) => shape.kind === 'group' && shape.data?.labels === 'key');
  if (key?.kind !== 'group') return { drawing: scene, entries: [] };
  const shapes = scene.shapes.filter((shape) => shape !== key);
  const drawn = boundsOf(shapes, scene.symbols);
  const margin = Math.max(0, Math.min(drawn?.top ?? 0, scene.heightMm));
  const left = Math.max(0, (drawn?.left ?? 0) - margin);
  const right = Math.min(scene.widthMm, (drawn?.right ?? scene.widthMm) + margin);
  const drawing: Scene = {
    ...scene,
    widthMm: right - left,
    heightMm: Math.min(scene.heightMm, (drawn?.bottom ?? scene.heightMm) + margin),
    shapes: [{ kind: 'group', transform: [1, 0, 0, 1, -left, 0], shapes }],
  };
  return { drawing, entries: keyEntries(key.shapes, scene.symbols) };
}

/** Each entry is a drawing and the words after it. */
function keyEntries(shapes: readonly Shape[], symbols: Scene['symbols']): KeyEntry[] {
  const entries: Shape[][] = [];
  for (const shape of shapes) {
    const open = entries.at(-1);
    if (shape.kind === 'text' && open) open.push(shape);
    else entries.push([shape]);
  }
  const boxed = entries.flatMap((entry): KeyEntry[] => {
    const box = boundsOf(entry, symbols);
    if (!box) return [];
    const { left, top, right, bottom } = box;
    const symbol = entry[0];
    const symbolXMm = symbol?.kind === 'group' && symbol.transform ? symbol.transform[4] : left;
    return [{ shapes: entry, symbolXMm, topMm: top, rightMm: right, heightMm: bottom - top }];
  });
  // As a reader goes: down each column, the left one first.
  return boxed.sort((a, b) => Math.round(a.symbolXMm - b.symbolXMm) || a.topMm - b.topMm);
}
