import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundsOf } from '../../src/scene/bounds.ts';
import { roundMm } from '../../src/scene/rounding.ts';
import type { Shape, Transform } from '../../src/scene/scene.ts';
import { applied, enlarged, joined, placedAt } from '../../src/scene/transforms.ts';

const LINE: Shape = {
  kind: 'path',
  parts: [
    ['M', 0, 0],
    ['L', 10, 0],
  ],
  stroke: { ink: 'ink', widthMm: 2 },
  fill: 'none',
};

const number = fc.double({ min: -50, max: 50, noNaN: true });
const transform: fc.Arbitrary<Transform> = fc.tuple(number, number, number, number, number, number);

describe('scenes', () => {
  test('one transform after another is the two joined', () => {
    fc.assert(
      fc.property(transform, transform, number, number, (outer, inner, x, y) => {
        const stepwise = applied(outer, ...applied(inner, x, y));
        const atOnce = applied(joined(outer, inner), x, y);
        expect(atOnce[0]).toBeCloseTo(stepwise[0], 4);
        expect(atOnce[1]).toBeCloseTo(stepwise[1], 4);
      }),
    );
  });

  test('a line fills its length and half its stroke on every side', () => {
    expect(boundsOf([LINE])).toEqual({ left: -1, top: -1, right: 11, bottom: 1 });
  });

  test('a symbol fills where its use puts it, twice as large if that is so', () => {
    const use: Shape = { kind: 'use', symbol: 'line', transform: placedAt(100, 50, 2), ink: 'ink' };
    expect(boundsOf([use], { line: [LINE] })).toEqual({ left: 98, top: 48, right: 122, bottom: 52 });
  });

  test('nothing fills nothing', () => {
    expect(boundsOf([{ kind: 'group', transform: null, shapes: [] }])).toBeNull();
  });

  test('enlarged shapes fill as much more, strokes and type too', () => {
    const text: Shape = {
      kind: 'text',
      x: 1,
      y: 2,
      text: 'sc',
      sizeMm: 3,
      face: 'text',
      align: 'end',
      ink: 'ink',
    };
    const moved: Shape = { kind: 'group', transform: placedAt(5, 5), shapes: [LINE, text] };
    for (const shape of [LINE, text, moved]) {
      const once = boundsOf([shape]);
      const thrice = boundsOf(enlarged([shape], 3));
      expect(thrice?.right).toBeCloseTo(3 * (once?.right ?? 0));
      expect(thrice?.top).toBeCloseTo(3 * (once?.top ?? 0));
    }
  });

  test('lengths are painted to a hundredth of a millimetre, never as minus nought', () => {
    expect(roundMm(1.005001)).toBe(1.01);
    expect(Object.is(roundMm(-0.001), 0)).toBe(true);
  });
});
