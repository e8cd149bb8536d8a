/** The stitches of a chart in, their entries in its key out: each kind once, as it is drawn, from low to tall. */

import type { Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { termsOf } from '../stitches/table.ts';
import { drawLens } from '../symbols/gathered.ts';
import { penStroke, type StitchSymbol } from '../symbols/stitch-symbol.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import { topBar } from '../symbols/tall-stitch.ts';
import { isCluster, isLong } from './columns.ts';
import type { KeyEntry, KeyInput } from './key-entry.ts';
import { U_MM } from './metrics.ts';
import type { SymbolBook } from './symbol-book.ts';

export function stitchEntries({ fabric, rows, book, drawn, terms }: KeyInput): KeyEntry[] {
  const kinds = new Map<
    string,
    { readonly row: StitchRow; readonly cluster: boolean; readonly long: boolean }
  >();
  for (const [first, end] of drawn) {
    for (let i = first; i < end; i += 1) {
      const kind = fabric.kind[i] ?? 0;
      const row = rows[kind];
      if (row === undefined) continue;
      const cluster = row.uses > 1 && isCluster(fabric, rows, i);
      const long = isLong(fabric, i);
      kinds.set(`${kind} ${cluster} ${long}`, { row, cluster, long });
    }
  }
  return [...kinds.values()]
    .sort((a, b) => orderOf(a) - orderOf(b))
    .map(({ row, cluster, long }): KeyEntry => {
      const symbol = SYMBOLS[row.symbol];
      const { abbr, name } = termsOf(row, terms);
      const words = long ? `${name}, into a row below` : cluster ? `${name}, in one place` : name;
      return { ...drawnEntry(book, row, symbol, cluster, long), abbr, words };
    });
}

function orderOf({ row, cluster, long }: { row: StitchRow; cluster: boolean; long: boolean }): number {
  const start = row.family === 'start' ? -10 : 0;
  return (
    start +
    SYMBOLS[row.symbol].heightU * 10 +
    (row.family === 'chain' ? -9 : 0) +
    (row.uses > 1 ? row.uses : 0) +
    (cluster ? 0.5 : 0) +
    (long ? 0.7 : 0)
  );
}

function drawnEntry(
  book: SymbolBook,
  row: StitchRow,
  symbol: StitchSymbol,
  cluster: boolean,
  long: boolean,
): { shapes: Shape[]; heightMm: number } {
  const ink = 'ink';
  const height = symbol.heightU;
  if (row.family === 'chain') {
    // Lying down, as it mostly does.
    const lying = { footX: -height / 2, footY: 0, headX: height / 2, headY: 0 };
    return {
      shapes: [book.stretched(`${row.symbol}-firm`, (u) => symbol.draw(u, 'firm'), lying, ink)],
      heightMm: 0,
    };
  }
  if (row.family === 'start') {
    return {
      shapes: [
        book.use(`${row.symbol}-firm-1`, () => symbol.draw(0, 'firm'), { x: 0, y: 0, upX: 0, upY: 1, ink }),
      ],
      heightMm: 0,
    };
  }
  if (cluster) {
    const upright = { footX: 0, footY: 0, headX: 0, headY: height };
    const make = (u: number): readonly Shape[] => drawLens(symbol, row.uses, u, 'firm');
    return {
      shapes: [book.stretched(`${row.symbol}-${row.uses}-firm`, make, upright, ink)],
      heightMm: height * U_MM,
    };
  }
  if (row.uses > 1) {
    const apart = Math.min(0.8, 1.8 / (row.uses - 1));
    const legs = Array.from({ length: row.uses }, (_, k) => {
      const leg = { footX: (k - (row.uses - 1) / 2) * apart, footY: 0, headX: 0, headY: height };
      return book.stretched(`${row.symbol}-leg-firm`, (u) => symbol.leg(u, null, 'firm'), leg, ink);
    });
    const bar = book.use('bar-firm', () => [topBar(0, 'firm')], { x: 0, y: height, upX: 0, upY: 1, ink });
    return { shapes: symbol.barred ? [...legs, bar] : legs, heightMm: height * U_MM };
  }
  const foot = long ? 1 : 0;
  const upright = { footX: 0, footY: foot, headX: 0, headY: foot + height };
  const shapes: Shape[] = [book.stretched(`${row.symbol}-firm`, (u) => symbol.draw(u, 'firm'), upright, ink)];
  if (long) {
    const x = 0.6 * U_MM;
    shapes.push({
      kind: 'path',
      parts: [
        ['M', 0, -1.16 * U_MM],
        ['C', x, -0.8 * U_MM, x, -0.2 * U_MM, 0, 0],
      ],
      stroke: { ink, widthMm: penStroke('firm').widthMm * U_MM },
      fill: 'none',
    });
  }
  return { shapes, heightMm: (foot + height) * U_MM };
}
