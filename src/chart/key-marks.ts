/** The marks of a chart that are no stitches in, their entries in its key out. */

import { INTO } from '../fabric/fabric.ts';
import type { Ink, Shape } from '../scene/scene.ts';
import { type Pen, penStroke } from '../symbols/stitch-symbol.ts';
import { SYMBOLS } from '../symbols/symbols.ts';
import { arrowShapes } from './arrow.ts';
import { crossedStitch } from './draw-stitch.ts';
import { loopMark } from './foot-marks.ts';
import type { KeyEntry, KeyInput } from './key-entry.ts';
import { KEY_MM, U_MM } from './metrics.ts';
import { bracketSample, upBracketSample } from './repeat-bracket.ts';
import { startShapes } from './start-shapes.ts';
import type { SymbolBook } from './symbol-book.ts';
import { wallSample } from './wall-line.ts';
import { yarnMarkSample } from './yarn-marks.ts';

export function markEntries(input: KeyInput): KeyEntry[] {
  const { fabric, book, labels, bareRing, secondInk } = input;
  const entries: KeyEntry[] = [];
  if (bareRing)
    entries.push(
      mark(`magic ring${book.set.ringWords}`, [
        upright(book, 'magic-ring-firm-1', book.set.symbols['magic-ring'].draw(0, 'firm')),
      ]),
    );
  if (labels.ringCount !== null)
    entries.push(mark('how many chains the ring has', letters(labels.ringCount.text, 'text')));
  for (const loop of ['back', 'front'] as const) {
    if (!someStitch(input, (i) => loopMark({ fabric }, i) === loop)) continue;
    entries.push(
      mark(`${loop} loop, seen from the right side`, [
        upright(book, `${loop}-loop-firm`, book.set.loopMarks[loop]('firm')),
      ]),
    );
  }
  if (someStitch(input, (i) => fabric.where[i] === INTO.space)) {
    // Two ways that feet may stand, worth telling apart.
    entries.push({ ...mark('feet apart: into the space', spaceFeet(book)), heightMm: 1.5 * U_MM });
  }
  if (someStitch(input, (i) => fabric.where[i] === INTO.between)) {
    entries.push({
      ...mark('foot in the gap between two stitches', betweenFeet(book)),
      heightMm: 1.7 * U_MM,
    });
  }
  if (input.broken)
    entries.push({ ...mark('crossed: the broken stem lies behind', crossedStems(book)), heightMm: 2 * U_MM });
  if (someStitch(input, (i) => fabric.where[i] === INTO.stem))
    entries.push({ ...mark('foot on a stem: half way up that stitch', armOnStem(book)), heightMm: 2 * U_MM });
  if (labels.startMark) entries.push(mark('start here', startShapes(book, -0.5, 0, 1, 'ink')));
  if (input.yarnMarks.has('join')) entries.push(mark('yarn joined', [yarnMarkSample('join')]));
  if (input.yarnMarks.has('cut')) entries.push(mark('yarn cut', [yarnMarkSample('cut')]));
  if (labels.rowArrows) entries.push(mark('row number and its direction', arrowShapes(ROW_ARROW, 'ink')));
  if (labels.laidOutArrows)
    entries.push(mark('round laid out straight, and its direction', arrowShapes(ROW_ARROW, 'ink')));
  if (labels.wallLine) entries.push(mark('top of the last round of the ring', wallSample()));
  if (input.bracket) {
    const words = input.folded.across
      ? 'drawn once: work what stands over it as often as it says'
      : 'one repeat, and how often it is worked';
    entries.push(mark(words, bracketSample()));
  }
  if (input.folded.up)
    entries.push(mark('rows drawn once: work them up to the row it says', upBracketSample()));
  if (labels.roundArrow) entries.push(mark('direction of the rounds', arrowShapes(ROUND_ARROW, 'ink')));
  entries.push(...yarnEntries(input));
  if (secondInk)
    entries.push(
      mark('inks only tell rows apart', [...sample('firm', 'ink', -0.6), ...sample('light', 'second', 0.8)]),
    );
  return entries;
}

const ROW_ARROW = [
  [2.6, 0],
  [-2.6, 0],
] as const;

const ROUND_ARROW = [
  [2.6, 0.5],
  [1, -0.1],
  [-1, -0.1],
  [-2.6, 0.5],
] as const;

/** Colour is never the only sign of a yarn: its letter stands beside the number of each row. */
function yarnEntries({ fabric, yarnInks }: KeyInput): KeyEntry[] {
  if (fabric.yarns.length < 2) return [];
  if (yarnInks.every((inks) => inks === null))
    return [mark('yarn, beside the number', letters(fabric.yarns.join(' ')))];
  return fabric.yarns.map((letter, yarn) => {
    const inks = yarnInks[yarn] ?? { firm: 'ink', light: 'second' };
    return mark(`yarn ${letter}`, [...sample('firm', inks.firm, -0.6), ...sample('light', inks.light, 0.8)]);
  });
}

function mark(words: string, shapes: readonly Shape[]): KeyEntry {
  return { shapes, heightMm: 0, abbr: null, words };
}

function upright(book: SymbolBook, name: string, shapes: readonly Shape[]): Shape {
  return book.use(name, () => shapes, { x: 0, y: 0, upX: 0, upY: 1, ink: 'ink' });
}

function spaceFeet(book: SymbolBook): Shape[] {
  const stem = (u: number): readonly Shape[] => SYMBOLS['half-double'].draw(u, 'firm');
  const chain = (u: number): readonly Shape[] => SYMBOLS.chain.draw(u, 'firm');
  return [
    book.stretched('chain-firm', chain, { footX: -0.5, footY: 0.1, headX: 0.5, headY: 0.1 }, 'ink'),
    ...[-0.3, 0.3].map((x) =>
      book.stretched('half-double-firm', stem, { footX: x, footY: 0.3, headX: x * 1.5, headY: 1.5 }, 'ink'),
    ),
  ];
}

function crossedStems(book: SymbolBook): Shape[] {
  const form = { name: 'double', draw: SYMBOLS.double.draw };
  const rear = { footX: 0.5, footY: 0, headX: -0.5, headY: 2 };
  const before = { footX: -0.5, footY: 0, headX: 0.5, headY: 2 };
  return [
    crossedStitch(book, form, [0.5], rear, { pen: 'firm', ink: 'ink' }),
    crossedStitch(book, form, [], before, { pen: 'firm', ink: 'ink' }),
  ];
}

function armOnStem(book: SymbolBook): Shape[] {
  const stem = (u: number): readonly Shape[] => SYMBOLS.double.draw(u, 'firm');
  return [
    book.stretched('double-firm', stem, { footX: -0.4, footY: 0, headX: -0.4, headY: 2 }, 'ink'),
    book.stretched(
      'half-double-firm',
      (u) => SYMBOLS['half-double'].draw(u, 'firm'),
      { footX: -0.5, footY: 0.9, headX: 0.5, headY: 2 },
      'ink',
    ),
  ];
}

function betweenFeet(book: SymbolBook): Shape[] {
  const stem = (u: number): readonly Shape[] => SYMBOLS['half-double'].draw(u, 'firm');
  return [
    ...[-0.42, 0.42].map((x) =>
      book.stretched('half-double-firm', stem, { footX: x, footY: 0, headX: x, headY: 0.6 }, 'ink'),
    ),
    book.stretched('half-double-firm', stem, { footX: 0, footY: 0.3, headX: 0, headY: 1.7 }, 'ink'),
  ];
}

function letters(text: string, face: 'text' | 'text-bold' = 'text-bold'): Shape[] {
  const y = KEY_MM.size * 0.33;
  return [{ kind: 'text', x: 0, y, text, sizeMm: KEY_MM.size, face, align: 'middle', ink: 'ink' }];
}

/** A length of line in an ink, as wide as the pen draws it. */
function sample(pen: Pen, ink: Ink, y: number): Shape[] {
  const stroke = { ink, widthMm: penStroke(pen).widthMm * U_MM };
  return [
    {
      kind: 'path',
      parts: [
        ['M', -3, y],
        ['L', 3, y],
      ],
      stroke,
      fill: 'none',
    },
  ];
}

function someStitch({ drawn }: KeyInput, test: (i: number) => boolean): boolean {
  for (const [first, end] of drawn) for (let i = first; i < end; i += 1) if (test(i)) return true;
  return false;
}
