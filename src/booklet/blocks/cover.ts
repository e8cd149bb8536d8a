/** A pattern and its picture in, the cover out: a page of its own where there is a picture. */

import type { Scene, Shape } from '../../scene/scene.ts';
import type { BookletInput } from '../booklet-input.ts';
import { coarse } from '../coarse.ts';
import { scaledShapes } from '../draw-lines.ts';
import type { Setting } from '../set-text.ts';
import { type Bookmark, type Flowing, moved, type Strip } from '../strip.ts';
import { figureTag, tagged } from '../tags.ts';
import { coverFacts } from './cover-facts.ts';
import { coverWords } from './cover-words.ts';
import type { Block } from './cut-stack.ts';

const PICTURE_GAP_MM = 10;
/** Below this a picture is left out rather than drawn too small to show anything. */
const PICTURE_LEAST_MM = 35;

export function cover(input: BookletInput, setting: Setting): Flowing {
  const { grid } = setting;
  const head = coverWords(input, setting);
  const foot = coverFacts(input, setting);
  const footY = grid.bodyHeightMm - foot.heightMm;
  const bookmark = { title: input.pattern.title, level: 1 as const };
  const picture = input.cover
    ? placePicture(input.cover, head.heightMm + PICTURE_GAP_MM, footY - PICTURE_GAP_MM, grid.bodyWidthMm)
    : null;
  if (!picture) return opening(head, foot, bookmark);
  return {
    kind: 'sheet',
    format: grid.format,
    orientation: 'portrait',
    shapes: [...head.shapes, picture, moved(foot.shapes, 0, footY)],
    underPage: [],
    symbols: input.cover?.symbols ?? {},
    bookmark,
  };
}

/** Without a picture a cover would be an empty page: title and facts then open the first page of text. */
function opening(head: Block, foot: Block, bookmark: Bookmark): Strip {
  const gapMm = foot.heightMm > 0 ? PICTURE_GAP_MM : 0;
  return {
    kind: 'strip',
    heightMm: head.heightMm + gapMm + foot.heightMm,
    spaceBeforeMm: 0,
    keepWithNext: false,
    shapes: [...head.shapes, moved(foot.shapes, 0, head.heightMm + gapMm)],
    bookmark,
  };
}

/** As large as the room allows, in the middle of the page, a little above the middle of its room. */
function placePicture(scene: Scene, topMm: number, bottomMm: number, widthMm: number): Shape | null {
  const heightMm = bottomMm - topMm;
  const scale = Math.min(widthMm / scene.widthMm, heightMm / scene.heightMm);
  if (scene.heightMm * scale < PICTURE_LEAST_MM && scene.widthMm * scale < PICTURE_LEAST_MM) return null;
  const xMm = (widthMm - scene.widthMm * scale) / 2;
  const yMm = topMm + (heightMm - scene.heightMm * scale) / 2;
  return tagged([scaledShapes(coarse(scene.shapes), scale, xMm, yMm)], figureTag(scene.alternative));
}
