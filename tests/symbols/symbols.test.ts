import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/scene/bounds.ts';
import type { PathPart, Shape } from '../../src/scene/scene.ts';
import { STITCHES } from '../../src/stitches/table.ts';
import { drawLens } from '../../src/symbols/gathered.ts';
import { drawPopcorn, popcornWidthU } from '../../src/symbols/popcorn.ts';
import { HOOK_DEPTH_U, POST_HOOKS } from '../../src/symbols/post-hook.ts';
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

  test('a puff is a lens without slashes, however many its legs', () => {
    for (const legs of [3, 5]) {
      const drawn = strokes(drawLens(SYMBOLS['half-double'], legs, 1.4, 'firm'));
      expect(drawn.filter(isSlash)).toHaveLength(0);
      expect(drawn.filter(isAcross)).toHaveLength(1);
    }
  });

  // An oval with its lines going down from it: a published list of symbols.
  test('a popcorn stands on one foot, its legs apart at the head under an open oval', () => {
    const drawn = drawPopcorn(SYMBOLS.double, 5, 2.2, 'firm');
    const [cap, ...legs] = [...drawn].reverse();
    expect(legs).toHaveLength(5);
    const heads = legs.map((leg) => {
      if (leg.kind !== 'group' || leg.transform === null) throw new Error('a leg that does not lean');
      // The foot stays at the origin, and leaning neither stretches nor shrinks a leg.
      expect(leg.transform.slice(4)).toEqual([0, 0]);
      expect(Math.hypot(leg.transform[0], leg.transform[1])).toBeCloseTo(1);
      return leg.transform[1];
    });
    expect(new Set(heads).size).toBe(5);
    const oval = boundsOf(cap === undefined ? [] : [cap]);
    expect((oval?.right ?? 0) - (oval?.left ?? 0)).toBeGreaterThan(
      3 * ((oval?.bottom ?? 0) - (oval?.top ?? 0)),
    );
    expect(oval?.top).toBeCloseTo(-2.2, 0);
  });

  test('a popcorn is never drawn wider than the room it asks for', () => {
    for (let legs = 2; legs <= 7; legs += 1) {
      const cap = drawPopcorn(SYMBOLS['half-double'], legs, 1.6, 'light').at(-1);
      const box = boundsOf(cap === undefined ? [] : [cap]);
      expect((box?.right ?? 0) - (box?.left ?? 0)).toBeLessThan(popcornWidthU(legs) + 0.1);
    }
  });

  test('post hooks are mirror images, and the one for the front opens to the right', () => {
    const ends = (['front', 'back'] as const).map((face) => {
      const [shape] = POST_HOOKS[face]('firm');
      const points = shape?.kind === 'path' ? shape.parts.map((part) => part.slice(1).map(Number)) : [];
      return points;
    });
    const [front = [], back = []] = ends;
    expect(back).toEqual(front.map((point) => point.map((value, k) => (k % 2 === 0 ? 0 - value : value))));
    const tip = front.at(-1)?.slice(-2) ?? [];
    expect(tip[0]).toBeGreaterThan(0);
    // It ends below the bar of the stitch it goes round, and above its own lowest point.
    expect(tip[1]).toBeGreaterThan(0.2);
    expect(tip[1]).toBeLessThan(HOOK_DEPTH_U);
  });

  test('the crab stitch has a wave over a cross, the loop stitch a loop', () => {
    for (const id of ['reverse-single', 'looped-single'] as const) {
      const { heightU, draw } = SYMBOLS[id];
      const shapes = draw(heightU, 'firm');
      expect(strokes(shapes)).toHaveLength(2);
      const box = boundsOf(shapes.slice(1));
      expect(box?.bottom, id).toBeLessThan(-heightU / 2);
      expect(box?.top, id).toBeGreaterThan(-heightU - 0.15);
    }
  });

  test('linked stitches are tied level to both sides as often as plain ones are slashed', () => {
    for (const [id, links] of [
      ['linked-double', 1],
      ['linked-treble', 2],
    ] as const) {
      const { heightU, draw, widthU } = SYMBOLS[id];
      const drawn = strokes(draw(heightU, 'firm'));
      expect(drawn.filter(isSlash)).toHaveLength(0);
      const ties = drawn.filter(isAcross).filter(([, y]) => y !== -heightU);
      expect(ties).toHaveLength(links);
      // Long enough to meet those of a neighbour that stands as close as it may.
      for (const [x1 = 0, , x2 = 0] of ties) expect(x2 - x1).toBeGreaterThan(widthU * 0.87);
    }
  });

  test('a bullion has wraps and no slashes, more of them the taller it is', () => {
    const curves = (length: number): number =>
      SYMBOLS.bullion
        .draw(length, 'firm')
        .flatMap((shape) => (shape.kind === 'path' ? shape.parts : []))
        .filter(([kind]) => kind === 'C').length;
    expect(curves(2)).toBeGreaterThanOrEqual(5);
    expect(curves(3)).toBeGreaterThan(curves(2));
    expect(strokes(SYMBOLS.bullion.draw(2, 'firm')).filter(isSlash)).toHaveLength(0);
  });

  test('a love knot is a long loop with its knot at the end', () => {
    const { heightU, draw, enteredAt } = SYMBOLS['love-knot'];
    const [loop, knot] = draw(heightU, 'firm').map((shape) => boundsOf([shape]));
    expect((loop?.bottom ?? 0) - (loop?.top ?? 0)).toBeGreaterThan(
      3 * ((loop?.right ?? 0) - (loop?.left ?? 0)),
    );
    expect(knot?.bottom).toBeLessThan((loop?.top ?? 0) + 0.2);
    expect(-heightU * (enteredAt ?? 0)).toBeLessThan(loop?.top ?? 0);
  });
});
