/** A Scene in, SVG text out: one drawing with a title and a description, symbols defined once. */

import type { Container, Svg } from '@svgdotjs/svg.js';
import { roundFactor, roundMm } from '../scene/rounding.ts';
import type { Face, Ink, Scene, Shape, Stroke, Transform } from '../scene/scene.ts';
import { colourOf, themedColourOf } from './inks.ts';
import { pathData } from './path-data.ts';
import { emptyDrawing } from './svg-document.ts';

export interface SvgOptions {
  /** Begins every id, so that two drawings may share a page: `eelgrass-small-square`. */
  readonly idPrefix: string;
  /** Colours as style sheet variables with the house colours behind them (the default), or plain. */
  readonly colours?: 'themed' | 'plain';
}

const FONTS: Readonly<Record<Face, Readonly<Record<string, string>>>> = {
  text: { 'font-family': "'Source Sans 3', sans-serif" },
  'text-bold': { 'font-family': "'Source Sans 3', sans-serif", 'font-weight': '700' },
  'text-italic': { 'font-family': "'Source Sans 3', sans-serif", 'font-style': 'italic' },
  title: { 'font-family': 'Literata, serif' },
  'title-bold': { 'font-family': 'Literata, serif', 'font-weight': '700' },
};

const ANCHORS = { start: null, middle: 'middle', end: 'end' } as const;

export function paintSvg(scene: Scene, options: SvgOptions): string {
  const { idPrefix } = options;
  const drawing = emptyDrawing();
  const width = roundMm(scene.widthMm);
  const height = roundMm(scene.heightMm);
  const painter: Painter = {
    idPrefix,
    colour: options.colours === 'plain' ? colourOf : themedColourOf,
    inSymbol: false,
  };
  drawing.attr({
    viewBox: `0 0 ${width} ${height}`,
    width: `${width}mm`,
    height: `${height}mm`,
    role: 'img',
    'aria-labelledby': `${idPrefix}-title ${idPrefix}-desc`,
    fill: 'none',
    'stroke-linecap': 'round',
    'stroke-linejoin': 'round',
    color: painter.colour('ink'),
  });
  drawing.element('title').id(`${idPrefix}-title`).words(scene.title);
  drawing.element('desc').id(`${idPrefix}-desc`).words(scene.alternative);
  defineSymbols(drawing, scene, painter);
  paintShapes(drawing, scene.shapes, painter, 'ink');
  return drawing.svg();
}

interface Painter {
  readonly idPrefix: string;
  readonly colour: (ink: Ink) => string;
  /** Inside a symbol `ink` is the ink of its use. */
  readonly inSymbol: boolean;
}

function defineSymbols(drawing: Svg, scene: Scene, painter: Painter): void {
  const defs = drawing.defs();
  for (const [name, shapes] of Object.entries(scene.symbols)) {
    // A plain group: a <symbol> would clip what is drawn left of and above its origin.
    const group = defs.group().id(`${painter.idPrefix}-${name}`);
    paintShapes(group, shapes, { ...painter, inSymbol: true }, 'ink');
  }
}

/** `inherited` is the ink that uses have if none is set on them. */
function paintShapes(parent: Container, shapes: readonly Shape[], painter: Painter, inherited: Ink): void {
  for (const shape of shapes) paintShape(parent, shape, painter, inherited);
}

function paintShape(parent: Container, shape: Shape, painter: Painter, inherited: Ink): void {
  switch (shape.kind) {
    case 'path':
      parent.element('path').attr({
        d: pathData(shape.parts),
        ...strokeAttributes(shape.stroke, painter),
        ...fillAttributes(shape.fill, painter),
      });
      return;
    case 'circle':
      parent.element('circle').attr({
        cx: roundMm(shape.x),
        cy: roundMm(shape.y),
        r: roundMm(shape.r),
        ...strokeAttributes(shape.stroke, painter),
        ...fillAttributes(shape.fill, painter),
      });
      return;
    case 'text': {
      const anchor = ANCHORS[shape.align];
      parent
        .element('text')
        .attr({
          x: roundMm(shape.x),
          y: roundMm(shape.y),
          'font-size': roundMm(shape.sizeMm),
          ...FONTS[shape.face],
          ...fillAttributes(shape.ink, painter),
          ...(anchor === null ? {} : { 'text-anchor': anchor }),
        })
        .words(shape.text);
      return;
    }
    case 'use':
      parent.element('use').attr({
        href: `#${painter.idPrefix}-${shape.symbol}`,
        ...placeAttributes(shape.transform),
        ...(shape.ink === inherited ? {} : { color: paintedInk(shape.ink, painter) }),
        ...dataAttributes(shape.data),
      });
      return;
    case 'group': {
      const ink = commonInk(shape.shapes) ?? inherited;
      const group = parent.group().attr({
        ...(shape.transform === null ? {} : { transform: matrix(shape.transform) }),
        ...(ink === inherited ? {} : { color: paintedInk(ink, painter) }),
        ...dataAttributes(shape.data),
      });
      paintShapes(group, shape.shapes, painter, ink);
      return;
    }
    case 'link':
      paintShapes(parent.link(shape.href), shape.shapes, painter, inherited);
      return;
  }
}

/** The ink of the symbols in a group when they share one: it is then said once, on the group. */
function commonInk(shapes: readonly Shape[]): Ink | null {
  let ink: Ink | null = null;
  for (const shape of shapes) {
    const own = shape.kind === 'use' ? shape.ink : shape.kind === 'group' ? commonInk(shape.shapes) : null;
    if (own === null) continue;
    if (ink !== null && own !== ink) return null;
    ink = own;
  }
  return ink;
}

function paintedInk(ink: Ink, painter: Painter): string {
  return painter.inSymbol && ink === 'ink' ? 'currentColor' : painter.colour(ink);
}

function strokeAttributes(stroke: Stroke | null, painter: Painter): Record<string, string | number> {
  if (stroke === null || stroke.ink === 'none') return {};
  const attributes = { stroke: paintedInk(stroke.ink, painter), 'stroke-width': roundMm(stroke.widthMm) };
  return stroke.dashMm
    ? { ...attributes, 'stroke-dasharray': stroke.dashMm.map(roundMm).join(' ') }
    : attributes;
}

function fillAttributes(fill: Ink, painter: Painter): Record<string, string> {
  return fill === 'none' ? {} : { fill: paintedInk(fill, painter) };
}

function placeAttributes([a, b, c, d, e, f]: Transform): Record<string, string | number> {
  const unturned =
    roundFactor(a) === 1 && roundFactor(b) === 0 && roundFactor(c) === 0 && roundFactor(d) === 1;
  return unturned ? { x: roundMm(e), y: roundMm(f) } : { transform: matrix([a, b, c, d, e, f]) };
}

function matrix([a, b, c, d, e, f]: Transform): string {
  const numbers = [roundFactor(a), roundFactor(b), roundFactor(c), roundFactor(d), roundMm(e), roundMm(f)];
  return `matrix(${numbers.join(' ')})`;
}

function dataAttributes(data: Readonly<Record<string, string>> | undefined): Record<string, string> {
  return Object.fromEntries(Object.entries(data ?? {}).map(([name, value]) => [`data-${name}`, value]));
}
