/** A chart with a window of what repeats in, its marks and its words out: how often the window is worked, and up to which row. */

import type { Fabric } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import { LABEL_MM, U_MM } from './metrics.ts';
import type { PlacedRow } from './place-row.ts';
import type { Repeat } from './repeat-bracket.ts';

/** What of a part is drawn once for many: a window of its repeats, rows that stand for more rows. */
export interface Fold {
  /** The window, its chains and how often it is worked; and the repeats it holds. */
  readonly across: (Repeat & { readonly window: number }) | null;
  /** Numbers of the first and last row drawn of those worked over and over, and of the last so worked. */
  readonly up: RowFold | null;
}

export interface RowFold {
  readonly first: number;
  readonly last: number;
  readonly upTo: number;
}

const OUT_MM = 2.4;
const TICK_MM = 1.4;
const LINE_MM = 0.3;

/** `work these 2 repeats 16 times`, under the bracket. */
export function windowWords({ window, times }: NonNullable<Fold['across']>): string {
  return window === 1
    ? `work this repeat ${times} times in all`
    : `work these ${window} repeats ${times} times`;
}

/** For who reads about the chart: what is not drawn stitch for stitch. */
export function foldWords({ across, up }: Fold): string {
  const words = [
    ...(across === null ? [] : [`Over the bracket, ${windowWords(across)}.`]),
    ...(up === null ? [] : [`${workedOver(up)}, up to row ${up.upTo}.`]),
  ];
  return `Not every stitch is drawn. ${words.join(' ')}`;
}

function workedOver({ first, last }: RowFold): string {
  return last === first + 1
    ? `Rows ${first} and ${last} are worked in turn`
    : `Rows ${first} to ${last} are worked over and over`;
}

/** A bracket up the left of the rows that stand for more, and up to which row; `leftMm` is the leftmost of what is drawn. */
export function rowFoldMark(
  fabric: Fabric,
  placed: readonly PlacedRow[],
  fold: RowFold,
  leftMm: number,
): Shape[] {
  const rows = placed.filter(({ row }) => {
    const number = fabric.rows[row]?.number ?? 0;
    return number >= fold.first && number <= fold.last;
  });
  const ys = rows.flatMap(({ track, startS, level, low, high }) =>
    [low, high].map((offset) => -track.point(startS, level, offset).y * U_MM),
  );
  if (ys.length === 0) return [];
  const x = leftMm - OUT_MM;
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const middle = (top + bottom) / 2;
  return [
    {
      kind: 'path',
      parts: [
        ['M', x + TICK_MM, top],
        ['L', x, top],
        ['L', x, bottom],
        ['L', x + TICK_MM, bottom],
      ],
      stroke: { ink: 'ink', widthMm: LINE_MM },
      fill: 'none',
    },
    ...['work these rows', `up to row ${fold.upTo}`].map(
      (text, line): Shape => ({
        kind: 'text',
        x: x - 1.4,
        y: middle + (line - 0.2) * LABEL_MM.size * 1.25,
        text,
        sizeMm: LABEL_MM.size,
        face: 'text',
        align: 'end',
        ink: 'ink',
      }),
    ),
  ];
}
