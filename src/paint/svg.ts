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
    idOf: new Map(Object.keys(scene.symbols).map((name, k) => [name, `${idPrefix}-${k.toString(36)}`])),
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
  return drawing.svg().replace(EMPTY_ELEMENT, '/>');
}

/** `<use …></use>` as `<use …/>`. */
const EMPTY_ELEMENT = /><\/(?:use|path|circle)>/g;

interface Painter {
  readonly idPrefix: string;
  readonly colour: (ink: Ink) => string;
  /** Inside a symbol `ink` is the ink of its use. */
  readonly inSymbol: boolean;
  /** Short, since a chart names its symbols thousands of times: numbered in the order the scene defines them. */
  readonly idOf: ReadonlyMap<string, string>;
}

function defineSymbols(drawing: Svg, scene: Scene, painter: Painter): void {
  const defs = drawing.defs();
  for (const [name, shapes] of Object.entries(scene.symbols)) {
    // A plain group: a <symbol> would clip what is drawn left of and above its origin.
    const group = defs.group().id(painter.idOf.get(name) ?? '');
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
      paintText(parent, shape, { ...fontAttributes(shape), ...fillAttributes(shape.ink, painter) });
      return;
    }
    case 'picture':
      parent.element('image').attr({
        x: roundMm(shape.x),
        y: roundMm(shape.y),
        width: roundMm(shape.widthMm),
        height: roundMm(shape.heightMm),
        href: `data:image/jpeg;base64,${base64(shape.jpeg)}`,
      });
      return;
    case 'use':
      paintUse(parent, shape, painter, inherited, placeAttributes(shape.transform));
      return;
    case 'group': {
      const ink = commonInk(shape.shapes) ?? inherited;
      const group = parent.group().attr({
        ...(shape.transform === null ? {} : { transform: matrix(shape.transform) }),
        ...(ink === inherited ? {} : { color: paintedInk(ink, painter) }),
        ...dataAttributes(shape.data),
      });
      paintInLines(group, shape.shapes, painter, ink);
      return;
    }
    case 'link':
      paintShapes(parent.link(shape.href), shape.shapes, painter, inherited);
      return;
  }
}

type Use = Extract<Shape, { kind: 'use' }>;
type Text = Extract<Shape, { kind: 'text' }>;

function paintText(
  parent: Container,
  { x, y, align, text }: Text,
  letters: Record<string, string | number>,
): void {
  const anchor = ANCHORS[align];
  parent
    .element('text')
    .attr({
      x: roundMm(x),
      y: roundMm(y),
      ...letters,
      ...(anchor === null ? {} : { 'text-anchor': anchor }),
    })
    .words(text);
}

function fontAttributes({ sizeMm, face }: Text): Record<string, string | number> {
  return { 'font-size': roundMm(sizeMm), ...FONTS[face] };
}

function paintUse(
  parent: Container,
  shape: Use,
  painter: Painter,
  inherited: Ink,
  place: Record<string, string | number>,
): void {
  parent.element('use').attr({
    href: `#${painter.idOf.get(shape.symbol) ?? ''}`,
    ...place,
    ...(shape.ink === inherited ? {} : { color: paintedInk(shape.ink, painter) }),
  });
}

/** Fewer uses than this are not worth a group of their own. */
const FEWEST_IN_LINE = 3;

function addTo<T>(lists: Map<string, T[]>, key: string, one: T): void {
  const list = lists.get(key);
  if (list === undefined) lists.set(key, [one]);
  else list.push(one);
}

/**
 * Upright symbols at one height, as in most rows, share a group that says the height; each then says only where along it.
 * Words in one face and size share a group that says those.
 */
function paintInLines(parent: Container, shapes: readonly Shape[], painter: Painter, inherited: Ink): void {
  const lines = new Map<string, Use[]>();
  const faces = new Map<string, Text[]>();
  const others: Shape[] = [];
  for (const shape of shapes) {
    if (shape.kind === 'text') {
      const face = JSON.stringify(fontAttributes(shape));
      addTo(faces, face, shape);
      continue;
    }
    const line = shape.kind === 'use' ? lineOf(shape.transform) : null;
    if (shape.kind !== 'use' || line === null) others.push(shape);
    else addTo(lines, line, shape);
  }
  for (const [line, uses] of lines) {
    if (uses.length < FEWEST_IN_LINE) {
      paintShapes(parent, uses, painter, inherited);
      continue;
    }
    const group = parent.group().attr({ transform: line });
    for (const use of uses) paintUse(group, use, painter, inherited, { x: roundMm(use.transform[4]) });
  }
  paintShapes(parent, others, painter, inherited);
  for (const texts of faces.values()) {
    const [first] = texts;
    if (first === undefined) continue;
    const group = texts.length < FEWEST_IN_LINE ? null : parent.group().attr(fontAttributes(first));
    for (const text of texts) {
      const fill = fillAttributes(text.ink, painter);
      if (group === null) paintText(parent, text, { ...fontAttributes(text), ...fill });
      else paintText(group, text, fill);
    }
  }
}

/** What moves an upright symbol to its height and stretches it; null for symbols that lean. */
function lineOf([a, b, c, d, , f]: Transform): string | null {
  if (roundFactor(a) !== 1 || roundFactor(b) !== 0) return null;
  if (roundFactor(c) === 0 && roundFactor(d) === 1) return `translate(0 ${roundMm(f)})`;
  return matrix([1, 0, c, d, 0, f]);
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
  return `matrix(${numbers.map(short).join(' ')})`;
}

/** `-0.25` as `-.25`, as SVG allows. */
function short(value: number): string {
  return String(value).replace(/^(-?)0\./, '$1.');
}

function dataAttributes(data: Readonly<Record<string, string>> | undefined): Record<string, string> {
  return Object.fromEntries(Object.entries(data ?? {}).map(([name, value]) => [`data-${name}`, value]));
}

function base64(bytes: Uint8Array): string {
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
