/** Numbers of rounds stand where they can be read: not on each other, and not on a stitch where there is room beside it. */

import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { chartParts } from '../../src/chart/chart-parts.ts';
import { LabelRoom } from '../../src/chart/label-room.ts';
import { emptyLayout, place } from '../../src/chart/layout.ts';
import { compilePattern } from '../../src/compile.ts';
import type { Shape } from '../../src/scene/scene.ts';
import { granny } from './samples.ts';

const ROOT = join(import.meta.dirname, '../..');
const FILES = ['patterns', 'tests/patterns'].flatMap((folder) =>
  readdirSync(join(ROOT, folder))
    .map((name) => ({ name, file: join(ROOT, folder, name, 'pattern.yaml') }))
    .filter(({ file }) => existsSync(file)),
);

describe.each(FILES)('the numbers in the chart of $name', ({ name, file }) => {
  test('do not stand on one another', () => {
    const fabric = compilePattern({ file: name, text: readFileSync(file, 'utf8') }, name).sizes[0]?.fabric;
    if (fabric === undefined) throw new Error(`${name} has no size`);
    for (const { scene } of chartParts(fabric, { terms: 'US', title: 'x', key: false })) {
      const numbers = numbersIn(scene.shapes);
      const over = numbers.flatMap((a, i) =>
        numbers
          .slice(i + 1)
          .filter((b) => Math.abs(a.x - b.x) < 1.2 && Math.abs(a.y - b.y) < 1.2)
          .map((b) => `${a.text} and ${b.text}`),
      );
      expect(over).toEqual([]);
    }
  });
});

interface Number {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

function numbersIn(shapes: readonly Shape[]): Number[] {
  return shapes.flatMap((shape) => {
    if (shape.kind === 'group') return numbersIn(shape.shapes);
    return shape.kind === 'text' && /^\d/.test(shape.text) ? [shape] : [];
  });
}

describe('room for a number', () => {
  // One stem from (0, 0) to (0, 3).
  const fabric = granny();
  const { first = 0 } = fabric.rows[1] ?? {};
  const layout = emptyLayout(fabric.count);
  place(layout, first + 3, { footX: 0, footY: 0, headX: 0, headY: 3, upX: 0, upY: 1 });
  const room = new LabelRoom(fabric, layout, [1]);

  test('is none on a stem, and more the further from it', () => {
    expect(room.around({ x: 0, y: 1.5 }, 1)).toBeLessThan(0);
    expect(room.around({ x: 1, y: 1.5 }, 1)).toBeGreaterThan(0);
    expect(room.around({ x: 2, y: 1.5 }, 1)).toBeGreaterThan(room.around({ x: 1, y: 1.5 }, 1));
    // Of two figures the nearer edge counts.
    expect(room.around({ x: 1, y: 1.5 }, 2)).toBeLessThan(room.around({ x: 1, y: 1.5 }, 1));
  });

  test('is found at the first place that has it, and else where there is most', () => {
    const [on, near, far] = [
      { x: 0, y: 1.5 },
      { x: 0.3, y: 1.5 },
      { x: 1, y: 1.5 },
    ];
    expect(room.roomiest([on, near, far], 1)).toBe(far);
    expect(room.roomiest([on, near], 1)).toBe(near);
    expect(room.roomiest([], 1)).toBeNull();
  });

  test('is none where another number stands', () => {
    const taken = new LabelRoom(fabric, layout, [1]);
    expect(taken.around({ x: 4, y: 1 }, 1)).toBeGreaterThan(1);
    taken.take({ x: 4, y: 1 }, 1);
    expect(taken.around({ x: 4, y: 1 }, 1)).toBeLessThan(0);
  });
});
