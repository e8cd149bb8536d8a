/** Paragraphs of several sizes in, one block of them out, each cut short after as many lines as it may have. */

import type { Shape, Tag } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import type { Run } from '../break-lines.ts';
import { type Place, type Setting, setText } from '../set-text.ts';
import { moved } from '../strip.ts';
import type { TypeSize } from '../type-sizes.ts';

export interface Block {
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
}

export interface Paragraph {
  readonly runs: readonly Run[];
  readonly type: TypeSize;
  readonly place: Place;
  readonly gapMm: number;
  /** A paragraph unless it is something else. */
  readonly tag?: Tag;
  /** Lines shown at most; an ellipsis ends what was cut. */
  readonly most: number;
}

export function cutStack(entries: readonly Paragraph[], setting: Setting): Block {
  const shapes: Shape[] = [];
  let heightMm = 0;
  for (const { runs, type, place, gapMm, most, tag } of entries) {
    const strips = setText(runs, type, place, setting, tag);
    if (strips.length === 0) continue;
    heightMm += gapMm;
    strips.slice(0, most).forEach((strip, index) => {
      const cut = index === most - 1 && strips.length > most;
      shapes.push(moved(cut ? withEllipsis(strip.shapes) : strip.shapes, 0, heightMm));
      heightMm += mmFromPt(type.linePt);
    });
  }
  return { shapes, heightMm };
}

function withEllipsis(shapes: readonly Shape[]): Shape[] {
  return shapes.map((shape, index) => {
    if (index < shapes.length - 1) return shape;
    if (shape.kind === 'group') return { ...shape, shapes: withEllipsis(shape.shapes) };
    return shape.kind === 'text' ? { ...shape, text: `${shape.text.replace(/\s?\S+$/, '')} …` } : shape;
  });
}
