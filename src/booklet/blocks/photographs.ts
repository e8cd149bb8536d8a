/** Photographs in, strips out: two side by side, each with what it shows for those who do not see it, and who took it. */

import type { Shape } from '../../scene/scene.ts';
import { mmFromPt } from '../../units.ts';
import { type BookletPhotograph, printedShape, printedSize } from '../booklet-photograph.ts';
import { QUIET } from '../page-grid.ts';
import { type Place, type Setting, setText } from '../set-text.ts';
import { moved, type Strip } from '../strip.ts';
import { figureTag, tagged } from '../tags.ts';

const GAP_MM = 6;
/** Larger than this a photograph among words tells no more, and takes their room. */
const MOST_WIDE_MM = 85;
const MOST_HIGH_MM = 75;
const CREDIT_GAP_MM = 1;

export function photographStrips(
  photographs: readonly BookletPhotograph[],
  place: Place,
  setting: Setting,
): Strip[] {
  const strips: Strip[] = [];
  for (let from = 0; from < photographs.length; from += 2) {
    const pair = photographs.slice(from, from + 2);
    const roomMm = Math.min(
      MOST_WIDE_MM,
      photographs.length === 1 ? place.widthMm : (place.widthMm - GAP_MM) / 2,
    );
    const set = pair.map((photograph, index) =>
      onePhotograph(photograph, { xMm: place.xMm + index * (roomMm + GAP_MM), widthMm: roomMm }, setting),
    );
    strips.push({
      kind: 'strip',
      heightMm: Math.max(...set.map(({ heightMm }) => heightMm)),
      spaceBeforeMm: from === 0 ? 0 : GAP_MM,
      keepWithNext: false,
      shapes: set.flatMap(({ shapes }) => shapes),
    });
  }
  return strips;
}

function onePhotograph(
  photograph: BookletPhotograph,
  place: Place,
  setting: Setting,
): { readonly heightMm: number; readonly shapes: readonly Shape[] } {
  const size = printedSize(photograph, place.widthMm, Math.min(MOST_HIGH_MM, setting.grid.bodyHeightMm / 2));
  const figure = tagged([printedShape(photograph, size, place.xMm, 0)], figureTag(photograph.shows));
  if (photograph.by === null) return { heightMm: size.heightMm, shapes: [figure] };
  const type = setting.grid.type.small;
  const credit = setText(
    [{ text: `Photograph: ${photograph.by}`, face: 'text', ink: QUIET }],
    type,
    place,
    setting,
  );
  const lineMm = mmFromPt(type.linePt);
  const top = size.heightMm + CREDIT_GAP_MM;
  return {
    heightMm: top + credit.length * lineMm,
    shapes: [figure, ...credit.map(({ shapes }, index) => moved(shapes, 0, top + index * lineMm))],
  };
}
