/** The outline of a piece in, a drawing of it with its measures in centimetres and inches out. */

import type { Fabric } from '../fabric/fabric.ts';
import { type Outline, type OutlinePoint, outlines } from '../measure/outlines.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { PathPart, Scene, Shape } from '../scene/scene.ts';
import { printCm, printIn } from '../units.ts';
import { stitchRows } from './elements.ts';
import { emptyLayout } from './layout.ts';
import { pieceOf } from './piece.ts';

const LONGEST_MM = 62;
const MARGIN_MM = 3;
const TYPE_MM = 3.1;
const AWAY_MM = 3;
/** Room for words beside the piece: `45.5 cm` over `18 in`. */
const WORDS_MM = 17;
const TICK_MM = 1.1;
const LINE_MM = 0.35;
const MEASURE_MM = 0.22;

export interface PartSchematic {
  /** Empty where the pattern has but one piece. */
  readonly part: string;
  readonly scene: Scene;
}

/** Of each piece whose rows lie straight: what goes up and down, round a ring or from corner to corner has another shape. */
export function schematics(pattern: Pattern, fabric: Fabric, title: string): PartSchematic[] {
  const rows = stitchRows(fabric);
  const several = fabric.parts.filter(({ onto }) => onto === null).length > 1;
  return outlines(pattern, fabric).flatMap((outline) => {
    const index = fabric.parts.findIndex(({ name }) => name === outline.part);
    const { fan, shape } = pieceOf(fabric, rows, emptyLayout(fabric.count), [index]);
    if (fan || shape.bends !== null || shape.blocks !== null) return [];
    const edged = fabric.parts.some(({ onto }) => onto === index);
    const part = several ? outline.part : '';
    const scene = schematic({ ...outline, part }, title);
    const alternative = edged
      ? `${scene.alternative} What is worked onto it comes to that.`
      : scene.alternative;
    return [{ part, scene: { ...scene, alternative } }];
  });
}

/** `title` names the pattern. */
function schematic({ part, points }: Outline, title: string): Scene {
  const high = points.at(-1)?.heightMm ?? 0;
  const wide = Math.max(...points.map(({ widthMm }) => widthMm));
  const scale = LONGEST_MM / Math.max(high, wide, 1);
  const bottomWords = 2 * TYPE_MM * 1.25 + AWAY_MM;
  const widthMm = wide * scale + AWAY_MM + WORDS_MM + 2 * MARGIN_MM;
  const heightMm = high * scale + 2 * bottomWords + 2 * MARGIN_MM;
  const middle = MARGIN_MM + (wide * scale) / 2;
  const bottom = MARGIN_MM + bottomWords + high * scale;
  const at = ({ heightMm: up, widthMm: across }: OutlinePoint, side: 1 | -1): [number, number] => [
    middle + (side * across * scale) / 2,
    bottom - up * scale,
  ];
  const right = points.map((point) => at(point, 1));
  const left = points.map((point) => at(point, -1)).reverse();
  const edge: PathPart[] = [...right, ...left].map(([x, y], k) => [k === 0 ? 'M' : 'L', x, y]);
  const measures = measured(points);
  return {
    widthMm,
    heightMm,
    title: `Measures of ${part === '' ? title : `${title}: ${part}`}`,
    alternative: `${measures.map(({ words, mm }) => `${words} ${inWords(mm)}`).join(', ')}.`,
    symbols: {},
    shapes: [
      { kind: 'path', parts: [...edge, ['Z']], stroke: { ink: 'ink', widthMm: LINE_MM }, fill: 'none' },
      ...across(points[0], middle, bottom + AWAY_MM, scale, 1),
      ...topMeasure(points, middle, bottom, scale),
      ...upright(middle + (wide * scale) / 2 + AWAY_MM, bottom, high, scale),
    ],
  };
}

interface Measured {
  readonly words: string;
  readonly mm: number;
}

/** In the order they are said: how wide below, where it is widest, how wide above, how high. */
function measured(points: readonly OutlinePoint[]): Measured[] {
  const first = points[0]?.widthMm ?? 0;
  const last = points.at(-1)?.widthMm ?? 0;
  const widest = Math.max(...points.map(({ widthMm }) => widthMm));
  const high = { words: 'height', mm: points.at(-1)?.heightMm ?? 0 };
  if (points.length === 2 && first === last) return [{ words: 'Width', mm: first }, high];
  return [
    { words: 'Width at the start', mm: first },
    ...(widest > Math.max(first, last) ? [{ words: 'at the widest', mm: widest }] : []),
    { words: 'at the end', mm: last },
    high,
  ];
}

function topMeasure(points: readonly OutlinePoint[], middle: number, bottom: number, scale: number): Shape[] {
  const [first] = points;
  const last = points.at(-1);
  if (first === undefined || last === undefined || (points.length === 2 && first.widthMm === last.widthMm))
    return [];
  return across(last, middle, bottom - last.heightMm * scale - AWAY_MM, scale, -1);
}

/** A line as long as the piece is wide, its words on the side away from it. */
function across(
  point: OutlinePoint | undefined,
  middle: number,
  y: number,
  scale: number,
  side: 1 | -1,
): Shape[] {
  if (point === undefined) return [];
  const half = (point.widthMm * scale) / 2;
  const first = side === 1 ? y + TYPE_MM * 1.1 : y - TYPE_MM * 1.45;
  return [
    line([
      ['M', middle - half, y - TICK_MM],
      ['L', middle - half, y + TICK_MM],
      ['M', middle - half, y],
      ['L', middle + half, y],
      ['M', middle + half, y - TICK_MM],
      ['L', middle + half, y + TICK_MM],
    ]),
    ...words(middle, first, point.widthMm, 'middle'),
  ];
}

function upright(x: number, bottom: number, mm: number, scale: number): Shape[] {
  const top = bottom - mm * scale;
  return [
    line([
      ['M', x - TICK_MM, top],
      ['L', x + TICK_MM, top],
      ['M', x, top],
      ['L', x, bottom],
      ['M', x - TICK_MM, bottom],
      ['L', x + TICK_MM, bottom],
    ]),
    ...words(x + TICK_MM + 1, (top + bottom) / 2, mm, 'start'),
  ];
}

function line(parts: readonly PathPart[]): Shape {
  return { kind: 'path', parts, stroke: { ink: 'faint', widthMm: MEASURE_MM }, fill: 'none' };
}

function words(x: number, y: number, mm: number, align: 'start' | 'middle'): Shape[] {
  return [printCm(mm), printIn(mm)].map((text, k) => ({
    kind: 'text',
    x,
    y: y + k * TYPE_MM * 1.2,
    text,
    sizeMm: TYPE_MM,
    face: k === 0 ? 'text-bold' : 'text',
    align,
    ink: 'ink',
  }));
}

function inWords(mm: number): string {
  return `${printCm(mm)} (${printIn(mm)})`;
}
