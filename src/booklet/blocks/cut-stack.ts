/** Paragraphs of several sizes in, one block of them out, each cut short after as many lines as it may have. */

import type { Shape } from '../../scene/scene.ts';
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
  /** Lines shown at most; an ellipsis ends what was cut. */
  readonly most: number;
}

export function cutStack(entries: readonly Paragraph[], setting: Setting): Block {
  const shapes: Shape[] = [];
  let heightMm = 0;
  for (const { runs, type, place, gapMm, most } of entries) {
    const strips = setText(runs, type, place, setting);
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
  return shapes.map((shape, index) =>
    index === shapes.length - 1 && shape.kind === 'text'
      ? { ...shape, text: `${shape.text.replace(/\s?\S+$/, '')} …` }
      : shape,
  );
}
