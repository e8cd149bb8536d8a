/** Hexagons against what is agreed, and blankets of them against cases worked by hand and against the border worked stitch by stitch. */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { alikePairs, arrange, type Tile } from '../../src/along/arrange.ts';
import type { BlanketFigures } from '../../src/along/figures.ts';
import { blanketFigures } from '../../src/along/figures.ts';
import { fitOf } from '../../src/along/fit.ts';
import { halvesFolded, runsFolded } from '../../src/along/fold-runs.ts';
import { cornersInOrder, hexagonEdges } from '../../src/along/hexagon-edges.ts';
import { joiningWords } from '../../src/along/joining-words.ts';
import { type Lie, placesOf, rowPlaces, touch } from '../../src/along/lies.ts';
import { readState } from '../../src/along/page/planner-state.ts';
import { stepped } from '../../src/along/page/planner-steps.ts';
import { planHexagons } from '../../src/along/plan-blanket.ts';
import { mostRounds } from '../../src/along/plan-hexagons.ts';
import { releaseAt } from '../../src/along/release.ts';
import { addedBy, remedyFor } from '../../src/along/remedy.ts';
import { borderWords } from '../../src/along/work-border.ts';
import { changedSquare, checkAlong } from './check-along.ts';

const text = readFileSync(
  path.join(import.meta.dirname, '../diagnostics/along/other-shape/good.yaml'),
  'utf8',
);
const HEXAGONS = ['hexagons', 'hexagons, one fewer'] as const satisfies readonly Lie[];

function blanketOf(blanket: string, more: readonly (readonly [string, string])[] = []) {
  const changed = [['blanket: {shape: hexagons, across: 2, down: 4}', `blanket: ${blanket}`], ...more].reduce(
    (all, [from = '', to = '']) => {
      if (!all.includes(from)) throw new Error(`the along does not say ${from}`);
      return all.replace(from, to);
    },
    text,
  );
  return checkAlong(changed);
}

describe('whether a hexagon fits', () => {
  const faultsWith = (from: string, to: string, name = 'rough-hexagon') =>
    checkAlong(text, 'along.yaml', changedSquare(name, from, to)).diagnostics;

  test('six edges as agreed, and the size from side to side', () => {
    const { worked, diagnostics } = checkAlong(text);
    expect(diagnostics).toEqual([]);
    const edges = worked?.weeks.flatMap(({ squares }) => squares.map((square) => square.edges.counts));
    expect(edges).toEqual([
      [6, 6, 6, 6, 6, 6],
      [6, 6, 6, 6, 6, 6],
    ]);
  });

  test.each([
    ['one more', '2 sc in next dc, sc in next 3 dc', '6, 6, 6, 6, 6 and 7', 'make 1 fewer: work 2 together'],
    ['one fewer', 'sc2tog, sc in next 2 dc', '6, 6, 6, 6, 6 and 5', 'make 1 more: 2 sc in the 3rd stitch'],
  ])('%s on the sixth edge is told, with what to do', (_, side, counts, remedy) => {
    const round =
      '*(sc, ch 2, sc) in corner ch-2 sp, sc in BLO of each dc to next corner; rep from * around, join with sl st in first sc. (36 sc, 6 ch-2 sps)';
    const corner = '(sc, ch 2, sc) in corner ch-2 sp';
    const faults = faultsWith(
      round,
      `*${corner}, sc in next 4 dc; rep from * 4 more times, ${corner}, ${side}, join with sl st in first sc.`,
    );
    expect(faults.map(({ code }) => code)).toEqual(['along/edge']);
    expect(faults[0]?.message).toContain(`Rough Hexagon has ${counts} stitches`);
    expect(faults[0]?.try).toContain(
      `in Rnd 3, counting the sides from the first corner, on the 6th side ${remedy}`,
    );
    expect(faults[0]?.why).toContain('a hexagon with more or fewer');
  });

  test('one a round too small is put right by a round, and that round makes it fit', () => {
    const [fault] = checkAlong(text.replace('pattern: rough-hexagon', 'pattern: small-hexagon')).diagnostics;
    expect(fault?.code).toBe('along/edge');
    expect(fault?.try).toBe('work a round of sc round it, (sc, ch 2, sc) in each corner.');
    // `hexagon` is that very hexagon with such a round.
  });

  test('one of another size is told, measured from side to side', () => {
    const [fault] = checkAlong(text.replace('size: 5.6 cm', 'size: 7 cm')).diagnostics;
    expect(fault?.code).toBe('along/finished-size');
    expect(fault?.message).toContain('5.5 cm (2 ¼ in) from side to side');
  });

  test('one drawn out to a length is told, though its edges are alike', () => {
    const { worked } = checkAlong(text);
    const square = worked?.weeks[0]?.squares[0];
    if (worked == null || square === undefined) throw new Error('it was not worked');
    const { size, choice } = square;
    const drawnOut = { ...size, measures: { ...size.measures, widthMm: 80 } };
    // 80 / 1.1547 is 69 mm the other way.
    const faultsOf = (made: typeof size) =>
      fitOf(worked.along, 1, choice, 'Plain Hexagon', made).faults.map(({ code, message }) => [
        code,
        message,
      ]);
    expect(faultsOf(size)).toEqual([]);
    expect(faultsOf(drawnOut)).toEqual([
      [
        'along/finished-size',
        'week 1: Plain Hexagon comes out at 5.5 cm by 7 cm (2 ¼ in by 2 ¾ in) from side to side, and 5.5 cm (2 ¼ in) is agreed',
      ],
    ]);
  });

  test('a hexagon among squares is told as well', () => {
    const squares = blanketOf('{across: 2, down: 4}', [
      ['{pattern: hexagon}', '{pattern: plain}'],
      ['match: {stitches: 6, size: 5.6 cm', 'match: {stitches: 7, size: 3.5 cm'],
    ]);
    expect(squares.diagnostics.map(({ code, message }) => [code, message])).toEqual([
      ['along/other-shape', 'week 2: Rough Hexagon is a hexagon, and this is a blanket of squares'],
    ]);
  });

  test('what has other corners than four or six is told to have six', () => {
    const faults = faultsWith(
      'sc in BLO of each dc to next corner; rep from * around',
      'sc in next 4 dc; rep from * 4 more times, (sc, ch 2, sc) in corner ch-2 sp, sc in next dc, ch 2, sc in next 3 dc',
    );
    expect(faults[0]?.code).toMatch(/^along\/(corners|pattern-faulty)$/);
    const solid = checkAlong(text.replace('pattern: rough-hexagon', 'pattern: short-side')).diagnostics;
    expect(solid[0]?.code).toBe('along/other-shape');
  });

  test('rounds that are added widen a hexagon every second time', () => {
    expect([1, 2, 3, 4, 5].map((rounds) => addedBy(rounds, 6))).toEqual([2, 2, 4, 4, 6]);
    expect([1, 2, 3].map((rounds) => addedBy(rounds, 4))).toEqual([2, 4, 6]);
    const six = Array.from({ length: 6 }, () => 20);
    const words = remedyFor({
      round: 'Rnd 9',
      counts: six.map(() => 16),
      wanted: six,
      growMm: 30,
      toleranceMm: 3,
      roundMm: 5,
      terms: 'UK',
    });
    expect(words).toBe(
      'work 3 rounds of dc round it, (dc, ch 2, dc) in each corner of the first and of every second round after it; in the others, ch 2 over each corner space.',
    );
  });
});

test('a blanket that is not full is told with another way to lay them', () => {
  const { diagnostics } = blanketOf('{shape: hexagons, across: 3, down: 4, second-rows: one fewer}');
  // 3 + 2 + 3 + 2 places, and 3 + 2 + 3 hexagons.
  expect(diagnostics.map(({ message, try: offer }) => [message, offer])).toEqual([
    [
      'the hexagons of all weeks fill 8 places, and the blanket has 10',
      'make 2 more in one of the weeks, or lay them 3 across and 3 down.',
    ],
  ]);
});

describe('edges of a blanket of hexagons', () => {
  test('one alone, and two side by side', () => {
    expect(hexagonEdges('hexagons', 1, 1)).toEqual({
      inRows: 0,
      betweenRows: 0,
      free: 6,
      outer: 6,
      inner: 0,
    });
    // Two have 12 edges, of which one is joined to one: 10 are free. At either end of the seam the blanket goes in.
    expect(hexagonEdges('hexagons', 2, 1)).toEqual({
      inRows: 1,
      betweenRows: 0,
      free: 10,
      outer: 8,
      inner: 2,
    });
    expect(cornersInOrder('hexagons', 1, 1)).toBe('OOOOOO');
  });

  test('two across and two down', () => {
    // One seam in each row. The first of row 2 lies under both of row 1, the second under one: 3 between the rows.
    // 4 x 6 - 2 x 5 = 14 free; outer less inner is 6, together 14.
    expect(hexagonEdges('hexagons', 2, 2)).toEqual({
      inRows: 2,
      betweenRows: 3,
      free: 14,
      outer: 10,
      inner: 4,
    });
    // From the top of the right one of row 1: in between the two, over the left one and down its left side, in above the
    // first of row 2, round it, in between the two of row 2, round the second and up, in below the right one of row 1.
    expect(cornersInOrder('hexagons', 2, 2)).toBe('OIOOOIOOIOOOIO');
  });

  test('three, two, three', () => {
    // 2 + 1 + 2 in the rows; either of row 2 touches two above and two below: 8. 8 x 6 - 2 x 13 = 22.
    expect(hexagonEdges('hexagons, one fewer', 3, 3)).toEqual({
      inRows: 5,
      betweenRows: 8,
      free: 22,
      outer: 14,
      inner: 8,
    });
    // Row 2 is in at both ends: between two inner corners lies one edge of it on either side.
    expect(cornersInOrder('hexagons, one fewer', 3, 3)).toBe('OIOIOOOIIOOOIOIOOOIIOO');
  });

  test.each(HEXAGONS)('of any size, counted one by one: %s', (lie) => {
    for (let across = 2; across < 8; across += 1)
      for (let down = 1; down < 8; down += 1) {
        const tiles = Array.from({ length: down }, (_, y) =>
          Array.from({ length: rowPlaces(lie, across, y) }, (_, x): Tile => ({ id: 'a', x, y, covers: 1 })),
        ).flat();
        const { inRows, betweenRows, free, outer, inner } = hexagonEdges(lie, across, down);
        expect(tiles.length).toBe(placesOf(lie, across, down));
        expect(alikePairs(lie, tiles)).toBe(inRows + betweenRows);
        const corners = cornersInOrder(lie, across, down);
        expect(corners.length).toBe(free);
        expect([...corners].filter((corner) => corner === 'O').length).toBe(outer);
        expect(outer + inner).toBe(free);
      }
  });

  test('six neighbours and no more', () => {
    const middle = { x: 2, y: 3, covers: 1 };
    const near: string[] = [];
    for (let y = 0; y < 6; y += 1)
      for (let x = 0; x < 6; x += 1)
        if (touch('hexagons', middle, { x, y, covers: 1 })) near.push(`${x},${y}`);
    // Row 4 from the top lies half a hexagon to the right: it touches the same number and the next one.
    expect(near).toEqual(['2,2', '3,2', '1,3', '3,3', '2,4', '3,4']);
  });
});

/** Round numbers throughout; 100 mm from side to side. */
const figures: BlanketFigures = {
  lie: 'hexagons',
  across: 2,
  down: 3,
  sizeMm: 100,
  stitches: 10,
  yarns: [{ letter: 'A', colour: 'chalk', hex: '#ffffff', ballM: 100 }],
  squares: [
    { id: 'plain', title: 'Plain', week: 1, covers: 1, make: 3, yarnM: { A: 10 } },
    { id: 'rough', title: 'Rough', week: 2, covers: 1, make: 3, yarnM: { A: 12 } },
  ],
  seam: { letter: 'A', addsMm: 4, stitchM: 0.05, sewnM: 0, tailsM: 0.3 },
  border: {
    letter: 'A',
    stitches: 10,
    rounds: 3,
    edging: null,
    heightMm: 15,
    stitchM: 0.1,
    roundM: 1,
    repeatM: 0,
    edgingM: 0,
    togetherM: [0.2, 0.3],
  },
};

describe('two across and three down', () => {
  const plan = planHexagons(figures, { across: 2, down: 3, make: { plain: 3, rough: 3 } });

  test('seams: three within the rows of 12 stitches, two zigzags over 3 edges of 12', () => {
    expect(plan.seams).toEqual([
      { count: 3, stitches: 36 },
      { count: 2, stitches: 72 },
    ]);
    expect(plan.seamStitches).toEqual([12, 36]);
    expect([plan.places, plan.filled, plan.squares]).toEqual([6, 6, 6]);
  });

  test('the border', () => {
    // 6 x 6 - 2 x 9 = 18 free edges, 12 outer corners and 6 inner ones.
    // 18 x 10 + 12 x 3 + 6 x 1 = 222; then 6 x 2 fewer; then 12 x 2 more.
    expect(plan.border.rounds).toEqual([
      { stitches: 222, together: 6, of: 2 },
      { stitches: 210, together: 6, of: 3 },
      { stitches: 234, together: 0, of: 3 },
    ]);
  });

  test('yarn', () => {
    // Joining: 108 x 0.05 + 5 seams x 0.3 = 6.9. Border: (216 + 204 + 234) x 0.1 + 6 x 0.2 + 6 x 0.3 + 3 x 1 + 0.3 = 71.7.
    expect(plan.yarn).toEqual([
      { letter: 'A', colour: 'chalk', squaresM: 66, joiningM: 7, borderM: 72, allM: 145, balls: 2 },
    ]);
  });

  test('sewn, it is the length of the seams that counts', () => {
    const sewn = { ...figures, seam: { ...figures.seam, stitchM: 0, sewnM: 0.0035, tailsM: 0 } };
    // 9 edges of 100 / 1.732 = 57.7 mm are 519.6 mm, times 3.5 is 1.82 m.
    expect(planHexagons(sewn, { across: 2, down: 3, make: {} }).yarn[0]?.joiningM).toBe(2);
  });

  test('size: from hexagon to hexagon 104, from row to row 104 x 0.866', () => {
    // Two and a half hexagons less the seam that the last has not got: 260 - 4, and 2 x 15.
    expect(plan.widthMm).toBeCloseTo(286, 6);
    // 2 x 90.07 from the middle of row 1 to that of row 3, and a hexagon of 130 from corner to corner: (100 + 30) / 0.866.
    expect(plan.heightMm).toBeCloseTo(2 * 90.0666 + 150.1111, 3);
  });

  test('with one fewer in every second row the sides are alike, and half a hexagon less wide', () => {
    const narrow = planHexagons({ ...figures, lie: 'hexagons, one fewer' }, { across: 2, down: 3, make: {} });
    expect(narrow.widthMm).toBeCloseTo(234, 6);
    expect([narrow.places, narrow.rows]).toEqual([5, [2, 1, 2]]);
  });
});

describe('the border, worked stitch by stitch', () => {
  const CASES = [
    ['{shape: hexagons, across: 2, down: 4}', 5],
    ['{shape: hexagons, across: 8, down: 1}', 3],
    ['{shape: hexagons, across: 1, down: 8}', 2],
    ['{shape: hexagons, across: 3, down: 3, second-rows: one fewer}', 4],
    ['{shape: hexagons, across: 2, down: 5, second-rows: one fewer}', 1],
  ] as const;

  test.each(CASES)('%s with %i rounds has the stitches and the yarn that are planned', (blanket, rounds) => {
    const { worked, diagnostics } = blanketOf(blanket, [['rounds: 2', `rounds: ${rounds}`]]);
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
    if (worked === null) throw new Error('it was not worked');
    const { released } = releaseAt(worked, null);
    const own = blanketFigures(released, worked.border.figures);
    const plan = planHexagons(own, { ...own, make: {} });
    const rows = worked.border.size?.fabric.rows.filter(({ part }) => part === 1) ?? [];
    expect(rows.map(({ stitches }) => stitches).filter((n) => n > 0)).toEqual(
      plan.border.rounds.map(({ stitches }) => stitches),
    );
    const edge = worked.border.size?.fabric.rows.find(({ label, part }) => part === 0 && label === 'Rnd 1');
    expect(edge?.stitches).toBe(plan.edges.free * own.stitches + plan.edges.inner);
    const inkM = worked.border.size?.measures.yarn.find(({ letter }) => letter === 'A')?.lengthM ?? 0;
    const planned = plan.border.rounds.length === 0 ? 0 : (plan.yarn[0]?.borderM ?? 0);
    expect(inkM).toBeGreaterThan(5);
    // Up to a whole metre, and the tails, which a pattern's own yarn is told without.
    expect(planned - inkM).toBeGreaterThan(0);
    expect(planned - inkM).toBeLessThan(1.4 + inkM * 0.02);
  });

  test('no round has fewer stitches than leave one between two inner corners', () => {
    expect([6, 7, 10].map(mostRounds)).toEqual([5, 7, 9]);
  });

  test('is told in words, also in UK terms', () => {
    const { worked } = blanketOf('{shape: hexagons, across: 2, down: 4}');
    if (worked === null) throw new Error('it was not worked');
    const us = borderWords(worked.border, 'us').map((line) => line.text);
    expect(us[0]).toMatch(/in topmost right-hand corner ch-2 sp, ch 1, \*3 sc in next corner ch-2 sp/);
    expect(us[1]).toMatch(/sc3tog/);
    expect(borderWords(worked.border, 'uk')[1]?.text).toMatch(/dc3tog/);
  });
});

test('the seams that are told come to what is planned', () => {
  const { worked } = blanketOf('{shape: hexagons, across: 3, down: 3, second-rows: one fewer}');
  if (worked === null) throw new Error('it was not worked');
  const { released } = releaseAt(worked, null);
  const own = blanketFigures(released, worked.border.figures);
  const plan = planHexagons(own, { ...own, make: {} });
  const { seams, before } = joiningWords(released.along, plan, 'US');
  expect(seams.map(({ label, count }) => [label, count])).toEqual([
    ['Row 1', '16 sc'],
    ['Row 2', '8 sc'],
    ['Row 3', '16 sc'],
    ['Rows 1 and 2', '32 sc'],
    ['Rows 2 and 3', '32 sc'],
  ]);
  expect(plan.seams[0].stitches + plan.seams[1].stitches).toBe(104);
  expect(before[0]).toContain('3 rows, 3 in rows 1 and 3 and 2 in row 2, half a hexagon in at either end.');
});

describe('hexagons are laid out', () => {
  const layOut = (lie: Lie, across: number, down: number, make: Readonly<Record<string, number>>) => {
    const ids = Object.keys(make);
    const squares = ids.map((id) => ({ id, title: id, week: 1, covers: 1, make: 1, yarnM: {} }));
    return arrange({ squares, lie }, { across, down, make, apart: true });
  };

  test.each([
    ['hexagons', 4, 5, { a: 8, b: 7, c: 5 }],
    ['hexagons', 6, 6, { a: 9, b: 9, c: 9, d: 9 }],
    ['hexagons', 6, 7, { a: 12, b: 7, c: 7, d: 6, e: 10 }],
    ['hexagons, one fewer', 4, 5, { a: 8, b: 5, c: 5 }],
    ['hexagons, one fewer', 6, 7, { a: 9, b: 10, c: 10, d: 10 }],
  ] as const)('%s, %i across and %i down with no two alike side by side', (lie, across, down, make) => {
    const { tiles, alike, over } = layOut(lie, across, down, make);
    expect([tiles.length, over, alike]).toEqual([placesOf(lie, across, down), 0, 0]);
    const counts = Object.keys(make).map((id) => tiles.filter((tile) => tile.id === id).length);
    expect(counts).toEqual(Object.values(make));
  });

  test('as near to it as can be where there are only two', () => {
    const { alike } = layOut('hexagons', 4, 4, { a: 8, b: 8 });
    // Of three that meet in a corner two are always alike.
    expect(alike).toBeGreaterThan(0);
    expect(alike).toBeLessThan(15);
  });
});

describe('in the planner', () => {
  const narrow = { ...figures, lie: 'hexagons, one fewer' } as const;

  test('an address cannot ask for rows with nothing in them', () => {
    expect(readState('1x5;apart;;;', figures)?.across).toBe(1);
    expect(readState('1x5;apart;;;', narrow)?.across).toBe(2);
  });

  test('the arrow keys find the next row from the end of a longer one', () => {
    const make = { plain: 4, rough: 4 };
    const { tiles } = arrange(narrow, { across: 3, down: 3, make, apart: false });
    expect(tiles.map(({ x, y }) => `${x},${y}`)).toEqual([
      '0,0',
      '1,0',
      '2,0',
      '0,1',
      '1,1',
      '0,2',
      '1,2',
      '2,2',
    ]);
    const steps = [
      [2, 'ArrowDown', 4],
      [4, 'ArrowDown', 6],
      [0, 'ArrowUp', null],
      [7, 'ArrowUp', 4],
      [4, 'ArrowRight', null],
    ] as const;
    for (const [from, key, to] of steps)
      expect(stepped(narrow.lie, tiles, from, key), `${from} ${key}`).toBe(to);
  });
});

test('what comes again is put into brackets, and says the same', () => {
  expect(runsFolded(['a', 'b', 'a', 'b', 'c'])).toBe('[a, b] 2 times, c');
  expect(runsFolded(['a', 'a', 'b'])).toBe('[a] 2 times, b');
  expect(runsFolded(['a', 'b', 'c'])).toBe('a, b, c');
  expect(halvesFolded(['a', 'b', 'c', 'a', 'b', 'c'])).toBe('*a, b, c; rep from * once more');
  expect(halvesFolded(['a', 'b', 'c', 'a', 'b', 'd'])).toBe('a, b, c, a, b, d');
});
