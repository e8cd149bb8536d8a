/** The stitches of a chart in, their entries in its key out: each kind once, as it is drawn, from low to tall. */

import type { Shape } from '../scene/scene.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { termsOf } from '../stitches/table.ts';
import { HOOK_DEPTH_U, HOOK_FROM_U, POST_HOOKS } from '../symbols/post-hook.ts';
import { FOOT_GAP_U, penStroke } from '../symbols/stitch-symbol.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import { topBar } from '../symbols/tall-stitch.ts';
import { isLong } from './columns.ts';
import { ownChainAt, postFace } from './foot-marks.ts';
import type { KeyEntry, KeyInput } from './key-entry.ts';
import { U_MM } from './metrics.ts';
import { legsInOnePlace, ownChainU, type StitchForm, stitchForm } from './stitch-form.ts';
import type { SymbolBook } from './symbol-book.ts';

/** A stitch as the chart draws it: worked into one place or several, into a row below, round a post. */
interface Drawn {
  readonly row: StitchRow;
  readonly legs: number;
  readonly long: boolean;
  /** Of the post it goes round, as seen from the right side. */
  readonly face: 'front' | 'back' | null;
}

export function stitchEntries(input: KeyInput): KeyEntry[] {
  const { fabric, rows, book, drawn, terms } = input;
  const kinds = new Map<string, Drawn>();
  for (const [first, end] of drawn) {
    for (let i = first; i < end; i += 1) {
      const kind = fabric.kind[i] ?? 0;
      const row = rows[kind];
      if (row === undefined) continue;
      const legs = legsInOnePlace(fabric, rows, i);
      const long = isLong(fabric, i);
      const face = postFace({ fabric, rows }, i);
      kinds.set(`${kind} ${legs} ${long} ${face}`, { row, legs, long, face });
    }
  }
  return [...kinds.values()]
    .sort((a, b) => orderOf(a) - orderOf(b))
    .map((kind): KeyEntry => {
      const { abbr, name } = termsOf(kind.row, terms);
      return {
        ...drawnEntry(book, kind),
        abbr,
        words: `${name}${kind.row.family === 'start' ? book.set.ringWords : howDrawn(kind)}`,
      };
    });
}

/** What its name does not say. */
function howDrawn({ row, legs, long, face }: Drawn): string {
  if (long) return ', into a row below';
  if (legs > 0 && row.inOnePlace !== true) return ', in one place';
  if (face === null) return '';
  const own = row.enters === 'front post' ? 'front' : row.enters === 'back post' ? 'back' : null;
  if (own === null) return ', round the post';
  // A chart shows the right side.
  return own === face ? '' : ', on wrong-side rows';
}

function orderOf({ row, legs, long, face }: Drawn): number {
  const start = row.family === 'start' ? -10 : 0;
  return (
    start +
    SYMBOLS[row.symbol].heightU * 10 +
    (row.family === 'chain' ? -9 : 0) +
    (row.uses > 1 ? row.uses : 0) +
    (row.legs ?? 0) +
    (legs > 0 ? 0.5 : 0) +
    (long ? 0.7 : 0) +
    (face === 'front' ? 0.2 : face === 'back' ? 0.3 : 0) +
    (row.enters === 'own chain' ? 0.1 : 0)
  );
}

/** Worked into one place, or the places that its name says, as it is drawn where nothing else is known of it. */
export function drawnAlone(book: SymbolBook, row: StitchRow): readonly Shape[] {
  const face = row.enters === 'front post' ? 'front' : row.enters === 'back post' ? 'back' : null;
  return drawnEntry(book, {
    row,
    legs: row.inOnePlace === true ? (row.legs ?? 0) : 0,
    long: row.reachesDown === true,
    face,
  }).shapes;
}

interface Picture {
  readonly shapes: Shape[];
  readonly heightMm: number;
}

function drawnEntry(book: SymbolBook, drawn: Drawn): Picture {
  const { row, legs } = drawn;
  if (row.lies === true) return lying(book, row);
  if (row.family === 'start') return centred(book, row);
  if (row.uses > 1 && legs === 0) return decrease(book, drawn);
  return standing(book, drawn, stitchForm(row, legs, book.set.symbols));
}

/** Lying down, as it mostly does. */
function lying(book: SymbolBook, row: StitchRow): Picture {
  const symbol = SYMBOLS[row.symbol];
  const half = symbol.heightU / 2;
  const at = { footX: -half, footY: 0, headX: half, headY: 0 };
  const shape = book.stretched(`${row.symbol}-firm`, (u) => symbol.draw(u, 'firm'), at, 'ink');
  return { shapes: [shape], heightMm: 0 };
}

function centred(book: SymbolBook, row: StitchRow): Picture {
  const at = { x: 0, y: 0, upX: 0, upY: 1, ink: 'ink' } as const;
  const shape = book.use(`${row.symbol}-firm-1`, () => book.set.symbols[row.symbol].draw(0, 'firm'), at);
  return { shapes: [shape], heightMm: 0 };
}

function decrease(book: SymbolBook, { row, face }: Drawn): Picture {
  const symbol = book.set.symbols[row.symbol];
  const foot = face === null ? 0 : HOOK_DEPTH_U;
  const head = foot + symbol.heightU;
  const apart = Math.min(0.8, 1.8 / (row.uses - 1));
  const feet = Array.from({ length: row.uses }, (_, k) => (k - (row.uses - 1) / 2) * apart);
  const shapes: Shape[] = feet.map((footX) => {
    const leg = { footX, footY: foot, headX: 0, headY: head };
    return book.stretched(`${row.symbol}-leg-firm`, (u) => symbol.leg(u, null, 'firm'), leg, 'ink');
  });
  if (symbol.barred)
    shapes.push(
      book.use('bar-firm', () => [topBar(0, 'firm')], { x: 0, y: head, upX: 0, upY: 1, ink: 'ink' }),
    );
  for (const x of feet) shapes.push(...hook(book, face, x, foot));
  return { shapes, heightMm: head * U_MM };
}

function standing(book: SymbolBook, { row, long, face }: Drawn, form: StitchForm): Picture {
  const chain = ownChainU(row);
  const base = face === null ? chain : HOOK_DEPTH_U;
  const foot = base + (long ? 1 : 0);
  const head = foot + form.heightU;
  const upright = { footX: 0, footY: foot, headX: 0, headY: head };
  const shapes: Shape[] = [
    book.stretched(`${form.name}-firm`, (u) => form.draw(u, 'firm'), upright, 'ink'),
    ...hook(book, face, 0, base),
  ];
  if (chain > 0) shapes.push(ownChainAt(book, { x: 0, y: 0 }, { x: 0, y: 1 }, { pen: 'firm', ink: 'ink' }));
  if (long) shapes.push(bow(foot, face === null ? base : base + HOOK_FROM_U));
  return { shapes, heightMm: head * U_MM };
}

function hook(book: SymbolBook, face: Drawn['face'], x: number, y: number): Shape[] {
  if (face === null) return [];
  return [
    book.use(`${face}-post-firm`, () => POST_HOOKS[face]('firm'), { x, y, upX: 0, upY: 1, ink: 'ink' }),
  ];
}

/** The stem of a long stitch, from where it stands in its row down to what it goes into. */
function bow(fromU: number, toU: number): Shape {
  const x = 0.6 * U_MM;
  const from = -fromU * U_MM;
  const to = -toU * U_MM;
  return {
    kind: 'path',
    parts: [
      ['M', 0, from - FOOT_GAP_U * U_MM],
      ['C', x, from + 0.2 * U_MM, x, to - 0.2 * U_MM, 0, to],
    ],
    stroke: { ink: 'ink', widthMm: penStroke('firm').widthMm * U_MM },
    fill: 'none',
  };
}
