/** A face -> the file that pages fetch it from whole, to set a booklet in the browser. */

import type { Face } from '../scene/scene.ts';

export const FONT_FACES: readonly Face[] = ['text', 'text-bold', 'text-italic', 'title', 'title-bold'];

export function fontFileName(face: Face): string {
  return `booklet-${face}.ttf`;
}
