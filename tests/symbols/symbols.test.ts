import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/scene/bounds.ts';
import type { PathPart, Shape } from '../../src/scene/scene.ts';
import { STITCHES } from '../../src/stitches/table.ts';
import { drawLens } from '../../src/symbols/gathered.ts';
import { SYMBOLS } from '../../src/symbols/symbols.ts';

/** Straight strokes of a drawing, as [x1, y1, x2, y2]. */
function strokes(shapes: readonly Shape[]): number[][] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'path') return [];
    return shape.parts.flatMap((part, k) => {
      const before: PathPart | undefined = shape.parts[k - 1];
      return part[0] === 'L' && before?.[0] === 'M' ? [[before[1], before[2], part[1], part[2]]] : [];
    });
  });
}

const isSlash = ([x1 = 0, y1 = 0, x2 = 0, y2 = 0]: number[]): boolean => x1 !== x2 && y1 !== y2;
const isAcross = ([x1 = 0, y1 = 0, x2 = 0, y2 = 0]: number[]): boolean => x1 !== x2 && y1 === y2;

describe('chart symbols', () => {
  test.each(STITCHES.map((row) => [row.id, row] as const))(
    '%s has a symbol that draws something',
    (_id, row) => {
      expect(boundsOf(SYMBOLS[row.symbol].draw(1, 'firm'))).not.toBeNull();
    },
  );

  // Slashes count yarn overs from double crochet up; half double is a T without one (Craft Yarn Council chart symbols).
  const tall = STITCHES.filter((row) => ['basic', 'extended'].includes(row.family) && row.yarnOvers > 0);
  test.each(tall.map((row) => [row.us.name, row] as const))(
    '%s is a T with a slash for each yarn over after the first stitch that has none',
    (_name, row) => {
      const { heightU, draw } = SYMBOLS[row.symbol];
      const drawn = strokes(draw(heightU, 'firm'));
      const half = row.legOf === 'hdc' || row.legOf === 'ehdc';
      expect(drawn.filter(isSlash)).toHaveLength(half ? 0 : row.yarnOvers);
      expect(drawn.filter(isAcross).map(([, y]) => y)).toEqual([-heightU]);
    },
  );

  test('single crochet is an upright cross of two equal strokes', () => {
    const drawn = strokes(SYMBOLS.single.draw(0.72, 'firm'));
    expect(drawn).toHaveLength(2);
    const lengths = drawn.map(([x1 = 0, y1 = 0, x2 = 0, y2 = 0]) => Math.hypot(x2 - x1, y2 - y1));
    expect(Math.abs((lengths[0] ?? 0) - (lengths[1] ?? 0))).toBeLessThan(0.05);
  });

  test('a taller stitch is drawn taller', () => {
    const basic = STITCHES.filter(({ family }) => family === 'basic');
    const heights = basic.map(({ symbol }) => SYMBOLS[symbol].heightU);
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
    expect(new Set(heights).size).toBe(heights.length);
  });

  test('every stem reaches its head however far it is stretched', () => {
    for (const id of ['double', 'treble', 'single', 'extended-double'] as const) {
      for (const length of [0.9, 2, 3.7]) {
        const box = boundsOf(SYMBOLS[id].draw(length, 'light'));
        expect(box?.top, `${id} at ${length}`).toBeGreaterThan(-length - 0.1);
        expect(box?.top, `${id} at ${length}`).toBeLessThan(-length + 0.1);
        expect(box?.bottom, `${id} at ${length}`).toBeLessThan(0.1);
      }
    }
  });

  test('slashes keep their angle and length when the stem is stretched', () => {
    const slashOf = (length: number): number[] => {
      const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] =
        strokes(SYMBOLS.double.draw(length, 'firm')).find(isSlash) ?? [];
      return [x2 - x1, y2 - y1].map((span) => Math.round(span * 1000) / 1000);
    };
    expect(slashOf(3)).toEqual(slashOf(2));
  });

  test('a cluster is a lens: its legs meet at foot and head, under one bar', () => {
    const lens = drawLens(SYMBOLS.double, 3, 2, 'firm');
    const ends = lens.flatMap((shape) => {
      const first = shape.kind === 'path' ? shape.parts[0] : undefined;
      const second = shape.kind === 'path' ? shape.parts[1] : undefined;
      return first?.[0] === 'M' && second?.[0] === 'C' ? [[first[1], second[5], second[6]]] : [];
    });
    expect(ends).toEqual([
      [0, 0, -2],
      [0, 0, -2],
    ]);
    expect(strokes(lens).filter(isAcross)).toHaveLength(1);
    expect(strokes(lens).filter(isSlash)).toHaveLength(3);
  });

  test('the two pens differ enough to tell rows apart in grey', () => {
    const width = (pen: 'firm' | 'light'): number => {
      const shape = SYMBOLS.double.draw(2, pen)[0];
      return shape?.kind === 'path' ? (shape.stroke?.widthMm ?? 0) : 0;
    };
    expect(width('firm') / width('light')).toBeGreaterThan(1.2);
  });
});
