/** A title, some words and pictures -> the scene of the picture that is shown where a link to a page is passed on. */

import { breakLines, type MeasureText, type SetLine } from '../booklet/break-lines.ts';
import type { Face, Ink, Scene, Shape } from '../scene/scene.ts';
import { placedAt } from '../scene/transforms.ts';
import type { Scheme } from './palette.ts';

/** In dots; what those who show such pictures ask for. A millimetre of the scene is one dot. */
export const LINK_PICTURE = { widthPx: 1200, heightPx: 630 } as const;

const SIDE = LINK_PICTURE.heightPx;
const MARGIN = 64;
const TITLE_SIZES = [70, 60, 50, 42, 36] as const;
const MOST_LINES = 4;
const LINE_SIZE = 29;
const FOOT_SIZE = 27;

export interface LinkPictureWords {
  readonly title: string;
  readonly line: string;
  /** The name of the site, or nothing. */
  readonly foot: string;
  readonly alternative: string;
}

/** Drawings, all square; or a photograph cut square. */
export type LinkPictureImages =
  | { readonly kind: 'drawings'; readonly scenes: readonly Scene[] }
  | { readonly kind: 'photograph'; readonly jpeg: Uint8Array };

export function drawLinkPicture(
  words: LinkPictureWords,
  images: LinkPictureImages,
  scheme: Scheme,
  measure: MeasureText,
): Scene {
  const { widthPx, heightPx } = LINK_PICTURE;
  const { shapes, symbols, widthMm } = drawn(images);
  const left = widthMm + MARGIN;
  const room = widthPx - left - MARGIN;
  return {
    widthMm: widthPx,
    heightMm: heightPx,
    title: words.title,
    alternative: words.alternative,
    symbols,
    shapes: [
      box(0, 0, widthPx, heightPx, scheme.paper),
      ...shapes,
      ...titleAndLine(words, left, room, scheme, measure),
      ...chain(left, room, scheme.madder),
      ...(words.foot === '' ? [] : [letters(words.foot, left, 578, FOOT_SIZE, 'title-bold', scheme.madder)]),
    ],
  };
}

/** One fills the height; from four on, four of them do. */
function drawn(images: LinkPictureImages): Pick<Scene, 'shapes' | 'symbols' | 'widthMm'> {
  if (images.kind === 'photograph') {
    const { jpeg } = images;
    const picture: Shape = { kind: 'picture', x: 0, y: 0, widthMm: SIDE, heightMm: SIDE, jpeg };
    return { shapes: [picture], symbols: {}, widthMm: SIDE };
  }
  const many = images.scenes.length >= 4;
  const shown = images.scenes.slice(0, many ? 4 : 1);
  const side = many ? SIDE / 2 : SIDE;
  const shapes = shown.map(({ shapes: inner, widthMm }, index): Shape => {
    const [x, y] = [(index % 2) * side, Math.floor(index / 2) * side];
    return { kind: 'group', transform: placedAt(x, y, side / widthMm), shapes: inner };
  });
  const symbols = Object.assign({}, ...shown.map((scene) => scene.symbols)) as Scene['symbols'];
  return { shapes, symbols, widthMm: shown.length === 0 ? 0 : SIDE };
}

function titleAndLine(
  { title, line }: LinkPictureWords,
  x: number,
  room: number,
  scheme: Scheme,
  measure: MeasureText,
): Shape[] {
  const { size, lines } = titleLines(title, room, measure);
  const shapes: Shape[] = [];
  let y = 96 + size * 0.7;
  for (const set of lines) {
    shapes.push(
      ...set.pieces.map((piece) => letters(piece.text, x + piece.xMm, y, size, 'title-bold', scheme.ink)),
    );
    y += size * 1.14;
  }
  y += LINE_SIZE * 0.55;
  const below = breakLines([{ text: line, face: 'text' }], LINE_SIZE, room, measure);
  for (const set of below) {
    // What does not fit above the foot is left out.
    if (y > 480) break;
    shapes.push(
      ...set.pieces.map((piece) => letters(piece.text, x + piece.xMm, y, LINE_SIZE, 'text', scheme.soft)),
    );
    y += LINE_SIZE * 1.4;
  }
  return shapes;
}

/** As large as it can stand on a few lines; a title that cannot is cut. */
function titleLines(
  title: string,
  room: number,
  measure: MeasureText,
): { readonly size: number; readonly lines: readonly SetLine[] } {
  const set = (size: number) => breakLines([{ text: title, face: 'title-bold' }], size, room, measure);
  for (const size of TITLE_SIZES) {
    const lines = set(size);
    if (lines.length <= MOST_LINES && !lines.some(({ cut }) => cut)) return { size, lines };
  }
  const size = TITLE_SIZES[TITLE_SIZES.length - 1] ?? 36;
  return { size, lines: set(size).slice(0, MOST_LINES + 2) };
}

/** The crocheted chain that stands under the head of every page. */
function chain(x: number, room: number, ink: Ink): Shape[] {
  const [linkPx, high, y] = [31, 7, 522];
  const count = Math.floor(room / linkPx);
  return Array.from({ length: count }, (_, index): Shape => {
    const middle = x + linkPx * (index + 0.5);
    return {
      kind: 'path',
      parts: ellipse(middle, y, linkPx * 0.56, high),
      stroke: { ink, widthMm: 2.6 },
      fill: 'none',
    };
  });
}

/** Four curves, each within a thousandth of the true quarter. */
function ellipse(x: number, y: number, rx: number, ry: number): Extract<Shape, { kind: 'path' }>['parts'] {
  const [kx, ky] = [rx * 0.5523, ry * 0.5523];
  return [
    ['M', x - rx, y],
    ['C', x - rx, y - ky, x - kx, y - ry, x, y - ry],
    ['C', x + kx, y - ry, x + rx, y - ky, x + rx, y],
    ['C', x + rx, y + ky, x + kx, y + ry, x, y + ry],
    ['C', x - kx, y + ry, x - rx, y + ky, x - rx, y],
    ['Z'],
  ];
}

function letters(text: string, x: number, y: number, sizeMm: number, face: Face, ink: Ink): Shape {
  return { kind: 'text', x, y, text, sizeMm, face, align: 'start', ink };
}

function box(x: number, y: number, width: number, height: number, fill: Ink): Shape {
  return {
    kind: 'path',
    parts: [['M', x, y], ['L', x + width, y], ['L', x + width, y + height], ['L', x, y + height], ['Z']],
    stroke: null,
    fill,
  };
}
