/** What a chart draws in, its key out: each symbol with its abbreviation and name in the terms asked for, set in columns. */

import { type Fabric, INTO } from '../fabric/fabric.ts';
import type { Shape } from '../scene/scene.ts';
import type { StitchRow, Terms } from '../stitches/stitch-row.ts';
import { termsOf } from '../stitches/table.ts';
import { drawLens } from '../symbols/gathered.ts';
import { LOOP_MARKS } from '../symbols/loop-marks.ts';
import type { StitchSymbol } from '../symbols/stitch-symbol.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import { topBar } from '../symbols/tall-stitch.ts';
import { arrowShapes, startMark } from './arrow.ts';
import { isCluster, isLong } from './columns.ts';
import { loopMark } from './draw-stitch.ts';
import type { Labels } from './labels.ts';
import { KEY_MM, U_MM } from './metrics.ts';
import type { SymbolBook } from './symbol-book.ts';

export interface KeyInput {
  readonly fabric: Fabric;
  readonly rows: readonly StitchRow[];
  readonly book: SymbolBook;
  /** The stitches drawn, as runs of the fabric's arrays. */
  readonly drawn: readonly (readonly [first: number, end: number])[];
  readonly terms: Terms;
  readonly labels: Labels;
  readonly bareRing: boolean;
  readonly yarnLetters: boolean;
  readonly secondInk: boolean;
}

export interface Key {
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
  readonly widthMm: number;
}

interface Entry {
  /** Drawn with its foot at the origin, or round it, in mm. */
  readonly shapes: readonly Shape[];
  readonly heightMm: number;
  readonly abbr: string | null;
  readonly words: string;
}

/** Set to a width, from the origin down. */
export function chartKey(input: KeyInput, widthMm: number): Key {
  const entries = [...stitchEntries(input), ...markEntries(input)];
  const abbrMm =
    Math.max(0, ...entries.map(({ abbr }) => (abbr?.length ?? 0) * KEY_MM.size * BOLD_LETTER)) + 3;
  const textMm = Math.max(
    ...entries.map(({ abbr, words }) => (abbr === null ? 0 : abbrMm) + words.length * KEY_MM.size * LETTER),
  );
  const columnMm = KEY_MM.symbol + 2 + textMm;
  const columns = Math.max(
    1,
    Math.min(entries.length, Math.floor((widthMm + KEY_MM.gap) / (columnMm + KEY_MM.gap))),
  );
  const rows = Math.ceil(entries.length / columns);
  const shapes: Shape[] = [];
  let heightMm = 0;
  for (let row = 0; row < rows; row += 1) {
    // Down the columns, so that neighbours in height stand under one another.
    const inRow = Array.from({ length: columns }, (_, column) => entries[column * rows + row]);
    const tall = Math.max(KEY_MM.line, ...inRow.map((entry) => (entry?.heightMm ?? 0) + 2.6));
    const middle = heightMm + tall / 2;
    inRow.forEach((entry, column) => {
      if (entry === undefined) return;
      const x = column * (columnMm + KEY_MM.gap);
      shapes.push({
        kind: 'group',
        transform: [1, 0, 0, 1, x + KEY_MM.symbol / 2, middle + entry.heightMm / 2],
        shapes: entry.shapes,
      });
      shapes.push(...entryText(entry, x + KEY_MM.symbol + 2, middle + KEY_MM.size * 0.33, abbrMm));
    });
    heightMm += tall;
  }
  const used = Math.ceil(entries.length / Math.max(1, rows));
  return { shapes, heightMm, widthMm: used * columnMm + (used - 1) * KEY_MM.gap };
}

/** Width of a letter as a share of the type size, on average over such words in the text face; read from the fonts. */
const LETTER = 0.47;
const BOLD_LETTER = 0.53;

function entryText({ abbr, words }: Entry, x: number, y: number, abbrMm: number): Shape[] {
  const text = (face: 'text' | 'text-bold', at: number, content: string): Shape => ({
    kind: 'text',
    x: at,
    y,
    text: content,
    sizeMm: KEY_MM.size,
    face,
    align: 'start',
    ink: 'ink',
  });
  return abbr === null
    ? [text('text', x, words)]
    : [text('text-bold', x, abbr), text('text', x + abbrMm, words)];
}

function stitchEntries({ fabric, rows, book, drawn, terms }: KeyInput): Entry[] {
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
    .map(({ row, cluster, long }): Entry => {
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
      stroke: { ink, widthMm: 0.105 * U_MM },
      fill: 'none',
    });
  }
  return { shapes, heightMm: (foot + height) * U_MM };
}

function markEntries({ fabric, book, drawn, labels, bareRing, yarnLetters, secondInk }: KeyInput): Entry[] {
  const entries: Entry[] = [];
  if (bareRing) {
    const ring = book.use('magic-ring-firm-1', () => SYMBOLS['magic-ring'].draw(0, 'firm'), {
      x: 0,
      y: 0,
      upX: 0,
      upY: 1,
      ink: 'ink',
    });
    entries.unshift({ shapes: [ring], heightMm: 0, abbr: null, words: 'magic ring' });
  }
  for (const loop of ['back', 'front'] as const) {
    if (!someStitch(drawn, (i) => loopMark({ fabric }, i) === loop)) continue;
    const mark = book.use(`${loop}-loop-firm`, () => LOOP_MARKS[loop]('firm'), {
      x: 0,
      y: 0,
      upX: 0,
      upY: 1,
      ink: 'ink',
    });
    entries.push({
      shapes: [mark],
      heightMm: 0,
      abbr: null,
      words: `${loop} loop, seen from the right side`,
    });
  }
  if (someStitch(drawn, (i) => fabric.where[i] === INTO.space)) {
    // Two ways that feet may stand, worth telling apart.
    entries.push({
      shapes: spaceFeet(book),
      heightMm: 1.5 * U_MM,
      abbr: null,
      words: 'feet apart: into the space',
    });
  }
  if (labels.startMark)
    entries.push({ shapes: [startMark(-0.5, 0, 1, 0, 'ink')], heightMm: 0, abbr: null, words: 'start here' });
  if (labels.rowArrows) {
    entries.push({
      shapes: arrowShapes(
        [
          [2.6, 0],
          [-2.6, 0],
        ],
        'ink',
      ),
      heightMm: 0,
      abbr: null,
      words: 'row number and its direction',
    });
  }
  if (labels.roundArrow) {
    entries.push({
      shapes: arrowShapes(
        [
          [2.6, 0.5],
          [1, -0.1],
          [-1, -0.1],
          [-2.6, 0.5],
        ],
        'ink',
      ),
      heightMm: 0,
      abbr: null,
      words: 'direction of the rounds',
    });
  }
  if (yarnLetters)
    entries.push({
      shapes: letter(fabric.yarns.join(' ')),
      heightMm: 0,
      abbr: null,
      words: 'yarn, beside the number',
    });
  if (secondInk)
    entries.push({ shapes: twoPens(), heightMm: 0, abbr: null, words: 'inks only tell rows apart' });
  return entries;
}

function spaceFeet(book: SymbolBook): Shape[] {
  const symbol = SYMBOLS['half-double'];
  const stems = [-0.3, 0.3].map((x) =>
    book.stretched(
      'half-double-firm',
      (u) => symbol.draw(u, 'firm'),
      { footX: x, footY: 0.3, headX: x * 1.5, headY: 1.5 },
      'ink',
    ),
  );
  const chain = book.stretched(
    'chain-firm',
    (u) => SYMBOLS.chain.draw(u, 'firm'),
    { footX: -0.5, footY: 0.1, headX: 0.5, headY: 0.1 },
    'ink',
  );
  return [chain, ...stems];
}

function letter(text: string): Shape[] {
  return [
    {
      kind: 'text',
      x: 0,
      y: KEY_MM.size * 0.33,
      text,
      sizeMm: KEY_MM.size,
      face: 'text-bold',
      align: 'middle',
      ink: 'ink',
    },
  ];
}

function twoPens(): Shape[] {
  return [
    {
      kind: 'path',
      parts: [
        ['M', -3, -0.6],
        ['L', 3, -0.6],
      ],
      stroke: { ink: 'ink', widthMm: 0.105 * U_MM },
      fill: 'none',
    },
    {
      kind: 'path',
      parts: [
        ['M', -3, 0.8],
        ['L', 3, 0.8],
      ],
      stroke: { ink: 'second', widthMm: 0.085 * U_MM },
      fill: 'none',
    },
  ];
}

function someStitch(drawn: readonly (readonly [number, number])[], test: (i: number) => boolean): boolean {
  for (const [first, end] of drawn) for (let i = first; i < end; i += 1) if (test(i)) return true;
  return false;
}
