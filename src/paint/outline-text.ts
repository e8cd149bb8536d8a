/** A scene and font bytes in, the same scene with its letters as outlines out: painted the same where no font is at hand. */

import type { Scene, Shape } from '../scene/scene.ts';
import { placedAt } from '../scene/transforms.ts';
import { openFont } from './fonts.ts';
import type { FontBytes } from './text-width.ts';

type Text = Extract<Shape, { kind: 'text' }>;
type Path = Extract<Shape, { kind: 'path' }>;
type Part = Path['parts'][number];

export function outlineText(scene: Scene, fonts: FontBytes): Scene {
  return { ...scene, shapes: scene.shapes.map((shape) => outlined(shape, fonts)) };
}

function outlined(shape: Shape, fonts: FontBytes): Shape {
  if (shape.kind === 'text') return outlines(shape, fonts);
  if (shape.kind !== 'group' && shape.kind !== 'link') return shape;
  return { ...shape, shapes: shape.shapes.map((inner) => outlined(inner, fonts)) };
}

/** Glyphs are drawn with y upwards, in units of their own. */
function outlines({ text, x, y, sizeMm, face, align, ink }: Text, fonts: FontBytes): Shape {
  const font = openFont(fonts[face]);
  const { glyphs, positions, advanceWidth } = font.layout(text);
  const scale = sizeMm / font.unitsPerEm;
  const parts: Part[] = [];
  let penX = align === 'start' ? 0 : align === 'end' ? -advanceWidth : -advanceWidth / 2;
  glyphs.forEach(({ path }, index) => {
    const place = positions[index];
    const at = { x: penX + (place?.xOffset ?? 0), y: place?.yOffset ?? 0, scale };
    parts.push(...partsOf(path.commands, at));
    penX += place?.xAdvance ?? 0;
  });
  const letters: Path = { kind: 'path', parts, stroke: null, fill: ink };
  return { kind: 'group', transform: placedAt(x, y), shapes: [letters] };
}

interface Pen {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

interface Command {
  readonly command: string;
  readonly args: readonly number[];
}

function partsOf(commands: readonly Command[], pen: Pen): Part[] {
  const parts: Part[] = [];
  let [fromX, fromY] = [0, 0];
  for (const { command, args } of commands) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = args.map((value, index) =>
      index % 2 === 0 ? (pen.x + value) * pen.scale : -(pen.y + value) * pen.scale,
    );
    if (command === 'moveTo') parts.push(['M', a, b]);
    else if (command === 'lineTo') parts.push(['L', a, b]);
    else if (command === 'bezierCurveTo') parts.push(['C', a, b, c, d, e, f]);
    // A curve of the second degree is one of the third as well.
    else if (command === 'quadraticCurveTo')
      parts.push([
        'C',
        fromX + (2 / 3) * (a - fromX),
        fromY + (2 / 3) * (b - fromY),
        c + (2 / 3) * (a - c),
        d + (2 / 3) * (b - d),
        c,
        d,
      ]);
    else parts.push(['Z']);
    if (args.length >= 2)
      [fromX, fromY] = [
        [a, b],
        [c, d],
        [e, f],
      ][args.length / 2 - 1] as [number, number];
  }
  return parts;
}
