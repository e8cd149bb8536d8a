/** Blankets against cases worked by hand, and a border's yarn against the border worked stitch by stitch. */

import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { alikePairs, arrange } from '../../src/along/arrange.ts';
import type { BlanketFigures } from '../../src/along/figures.ts';
import { longEdge } from '../../src/along/fit.ts';
import { defaultMake, mostOfAny, planSquares } from '../../src/along/plan-blanket.ts';
import { planBorder } from '../../src/along/plan-border.ts';
import { alongsAt } from '../../src/site/along-site.ts';
import { PROJECT_FOLDER } from '../../src/site/project-folder.ts';
import { type AlongOnDisk, readAlongs } from '../../src/site/read-alongs.ts';

/** Two squares across and three down, round numbers throughout. */
const figures: BlanketFigures = {
  lie: 'squares',
  across: 2,
  down: 3,
  sizeMm: 100,
  stitches: 20,
  yarns: [
    { letter: 'A', colour: 'chalk', hex: '#ffffff', ballM: 100 },
    { letter: 'B', colour: 'slate', hex: null, ballM: null },
  ],
  squares: [
    { id: 'plain', title: 'Plain', week: 1, covers: 1, make: 2, yarnM: { A: 10 } },
    { id: 'fancy', title: 'Fancy', week: 1, covers: 1, make: 2, yarnM: { A: 4, B: 9 } },
    { id: 'short', title: 'Short', week: 2, covers: 1, make: 4, yarnM: { B: 5 } },
    { id: 'wide', title: 'Wide', week: 2, covers: 2, make: 2, yarnM: { B: 12 } },
  ],
  seam: { letter: 'B', addsMm: 4, stitchM: 0.05, sewnM: 0, tailsM: 0.3 },
  border: {
    letter: 'A',
    stitches: 20,
    rounds: 2,
    edging: { of: 6, plus: 1 },
    heightMm: 20,
    stitchM: 0.1,
    roundM: 1,
    repeatM: 0.5,
    edgingM: 2,
    togetherM: [0, 0],
  },
};

describe('two across and three down', () => {
  const plan = planSquares(figures, { across: 2, down: 3, make: defaultMake(figures) });

  test('seams: two from side to side over 2 x 22 stitches, one from top to bottom over 3 x 22', () => {
    expect(plan.seams).toEqual([
      { count: 2, stitches: 88 },
      { count: 1, stitches: 66 },
    ]);
    expect(plan.seamStitches).toEqual([44, 66]);
  });

  test('the border: 2 x 20 + 2 at the seam is 42, 3 x 20 + 4 is 64; each round adds 2', () => {
    // 42 + 4 = 46 is 3 more than 43 = 7 x 6 + 1, and 3 less than 49; put in is better than taken out.
    // 64 + 4 = 68 is 1 more than 67 = 11 x 6 + 1.
    expect(plan.border).toEqual({
      edge: [42, 64],
      rounds: [
        [44, 66],
        [49, 67],
      ],
      adjust: [3, -1],
      repeats: [8, 11],
    });
  });

  test('yarn: squares, joining and border by colour, each rounded up', () => {
    // Joining: 154 stitches x 0.05 + 3 seams x 0.3 = 8.6. Border: (220 + 232) x 0.1 + 2 x 1 + 38 x 0.5 + 2 + 0.3 = 68.5.
    expect(plan.yarn).toEqual([
      { letter: 'A', colour: 'chalk', squaresM: 20, joiningM: 0, borderM: 69, allM: 89, balls: 1 },
      { letter: 'B', colour: 'slate', squaresM: 20, joiningM: 9, borderM: 0, allM: 29, balls: null },
    ]);
  });

  test('size: 2 x 100 + 4 + 2 x 20 by 3 x 100 + 2 x 4 + 2 x 20', () => {
    expect([plan.widthMm, plan.heightMm]).toEqual([244, 348]);
    expect([plan.places, plan.filled, plan.squares]).toEqual([6, 6, 6]);
  });

  test('enough for any mix is the dearest choice of every week, colour by colour', () => {
    // A: week 1 at most 2 x 10, and 69 for the border. B: 2 x 9 and 2 x 12, and 9 for the joining.
    expect([...mostOfAny(figures)]).toEqual([
      ['A', 89],
      ['B', 51],
    ]);
  });
});

test('an edge as long as so many squares', () => {
  expect([1, 2, 3].map((n) => longEdge(19, n))).toEqual([19, 40, 61]);
});

describe('a border comes out for every blanket', () => {
  test.each([
    [6, 5],
    [4, 0],
    [12, 7],
    [1, 0],
  ])('over a multiple of %i plus %i', (of, plus) => {
    for (let across = 1; across < 12; across += 1)
      for (let down = 1; down < 12; down += 1) {
        const { rounds, edge, adjust, repeats } = planBorder(
          { stitches: 19, rounds: 3, edging: { of, plus } },
          across,
          down,
        );
        const last = rounds[2] ?? [0, 0];
        for (const side of [0, 1] as const) {
          expect((last[side] - plus) % of).toBe(0);
          expect(repeats?.[side]).toBe((last[side] - plus) / of);
          expect(last[side]).toBe(edge[side] + 6 + adjust[side]);
          // The fewest: never more than half a repeat.
          if (edge[side] + 6 >= plus + of) expect(Math.abs(adjust[side]) * 2).toBeLessThanOrEqual(of);
        }
      }
  });
});

describe('the sample along', () => {
  let along: AlongOnDisk;
  beforeAll(async () => {
    const [found] = await readAlongs(path.join(PROJECT_FOLDER, 'alongs'));
    if (found === undefined) throw new Error('there is no sample along');
    along = found;
  });

  test('the yarn of its border is what the border takes when it is worked', () => {
    const { sites } = alongsAt([along], null);
    const site = sites[0];
    const worked = site?.border.size?.measures.yarn.find(({ letter }) => letter === 'B')?.lengthM ?? 0;
    const planned = site?.plan.yarn.find(({ letter }) => letter === 'B')?.borderM ?? 0;
    expect(worked).toBeGreaterThan(100);
    expect(Math.abs(planned - worked)).toBeLessThan(worked * 0.01);
  });

  test('the rounds of its border have the stitches that were planned', () => {
    const site = alongsAt([along], null).sites[0];
    const rows = site?.border.size?.fabric.rows.filter(({ part }) => part === 1) ?? [];
    const sums =
      site?.plan.shape === 'squares'
        ? site.plan.border.rounds.map(([across, down]) => 2 * (across + down))
        : [];
    expect(sums).toEqual([546, 554, 560]);
    expect(rows.slice(0, 3).map(({ stitches }) => stitches)).toEqual(sums);
  });
});

describe('squares are laid out', () => {
  test('with no two alike side by side where that can be', () => {
    const make = { plain: 6, fancy: 6, short: 6, wide: 0 };
    const { tiles, alike, over } = arrange(figures, { across: 3, down: 6, make, apart: true });
    expect([tiles.length, alike, over]).toEqual([18, 0, 0]);
    expect(alikePairs('squares', tiles)).toBe(0);
  });

  test('wide ones in two places of one row, none over another', () => {
    const make = { plain: 4, fancy: 0, short: 2, wide: 3 };
    const { tiles, over } = arrange(figures, { across: 3, down: 4, make, apart: true });
    const places = tiles.flatMap(({ x, y, covers }) =>
      Array.from({ length: covers }, (_, k) => `${x + k},${y}`),
    );
    expect(new Set(places).size).toBe(12);
    expect(places.length).toBe(12);
    expect(over).toBe(0);
  });

  test('and what finds no room is told', () => {
    const { over } = arrange(figures, { across: 1, down: 4, make: { wide: 2 }, apart: false });
    expect(over).toBe(2);
  });
});
