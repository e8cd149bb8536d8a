import { describe, expect, test } from 'vitest';
import { targets } from '../../src/fabric/fabric.ts';
import {
  clusters,
  cornerStart,
  edged,
  granny,
  hexagon,
  longStitches,
  loveKnots,
  mesh,
  oval,
  posts,
  rows,
  shells,
  solidSquare,
  spiral,
  textured,
} from './samples.ts';
import { at, placed, rowNamed, stitchesOf, workText } from './work-text.ts';

const fall = (values: readonly number[]): boolean =>
  values.every((value, k) => k === 0 || value < (values[k - 1] ?? 0));
const rise = (values: readonly number[]): boolean => fall([...values].reverse());

describe('rows', () => {
  const fabric = rows();
  const layout = placed(fabric);
  const headsOf = (row: number): number[] => stitchesOf(fabric, row, 'sc').map((i) => at(layout.headX, i));

  test('right-side rows run right to left and wrong-side rows left to right', () => {
    expect(fall(headsOf(rowNamed(fabric, 'Row 1')))).toBe(true);
    expect(rise(headsOf(rowNamed(fabric, 'Row 2')))).toBe(true);
    expect(fall(headsOf(rowNamed(fabric, 'Row 3')))).toBe(true);
  });

  test('each stitch stands on the head of the one it is worked into', () => {
    for (const label of ['Row 2', 'Row 3', 'Row 4']) {
      for (const i of stitchesOf(fabric, rowNamed(fabric, label), 'sc')) {
        const [target = -1] = targets(fabric, i);
        expect(at(layout.footX, i)).toBeCloseTo(at(layout.headX, target));
        expect(at(layout.footY, i)).toBeCloseTo(at(layout.headY, target));
      }
    }
  });

  test('equal rows lie straight above one another, each row level', () => {
    const first = headsOf(1);
    const last = headsOf(4);
    expect(Math.max(...last)).toBeCloseTo(Math.max(...first), 1);
    expect(Math.min(...last)).toBeCloseTo(Math.min(...first), 1);
    const heights = stitchesOf(fabric, 4, 'sc').map((i) => at(layout.headY, i));
    expect(Math.max(...heights) - Math.min(...heights)).toBeLessThan(0.01);
  });

  test('the foundation is worked towards where row 1 begins', () => {
    const chains = stitchesOf(fabric, 0, 'ch').slice(0, 10);
    expect(rise(chains.map((i) => at(layout.headX, i)))).toBe(true);
  });
});

describe('shells', () => {
  const fabric = shells();
  const layout = placed(fabric);

  test('the five of a shell share one foot and their heads open out', () => {
    const [group] = fabric.groups.filter(({ special }) => special === 'shell');
    const shell = Array.from({ length: 5 }, (_, k) => (group?.first ?? 0) + k);
    expect(new Set(shell.map((i) => at(layout.footX, i))).size).toBe(1);
    const heads = shell.map((i) => at(layout.headX, i)).sort((a, b) => a - b);
    heads.slice(1).forEach((x, k) => {
      expect(x - (heads[k] ?? 0)).toBeGreaterThan(0.7);
    });
    // On an arc: the outer heads are lower than the middle one.
    expect(at(layout.headY, shell[0] ?? 0)).toBeLessThan(at(layout.headY, shell[2] ?? 0));
  });

  test('no row is wider than the foundation and no edge wanders', () => {
    const xs = fabric.rows.flatMap((_, row) =>
      ['sc', 'dc'].flatMap((id) => stitchesOf(fabric, row, id).map((i) => at(layout.headX, i))),
    );
    const chains = stitchesOf(fabric, 0, 'ch').map((i) => at(layout.headX, i));
    expect(Math.max(...xs)).toBeLessThan(Math.max(...chains));
    expect(Math.min(...xs)).toBeGreaterThan(Math.min(...chains) - 1.1);
  });
});

describe('a square of groups', () => {
  const fabric = granny();
  const layout = placed(fabric);
  const last = fabric.rows.length - 1;
  const stitches = stitchesOf(fabric, last, 'dc');

  test('every side of every round is straight: its heads lie on one of four lines', () => {
    for (const row of [1, 2, 3]) {
      const reach = stitchesOf(fabric, row, 'dc').map((i) =>
        Math.max(Math.abs(at(layout.headX, i)), Math.abs(at(layout.headY, i))),
      );
      expect(Math.max(...reach) - Math.min(...reach)).toBeLessThan(0.35);
    }
  });

  test('rounds go anticlockwise', () => {
    let turned = 0;
    stitches.slice(1).forEach((i, k) => {
      const before = stitches[k] ?? 0;
      const cross =
        at(layout.headX, before) * at(layout.headY, i) - at(layout.headY, before) * at(layout.headX, i);
      if (cross > 0) turned += 1;
    });
    expect(turned).toBe(stitches.length - 1);
  });

  test('the corner chains lie beyond the sides, on the diagonals', () => {
    const corners = fabric.spaces.filter(({ row, corner }) => row === last && corner);
    expect(corners).toHaveLength(4);
    for (const { first, end } of corners) {
      const x = (at(layout.footX, first) + at(layout.headX, end - 1)) / 2;
      const y = (at(layout.footY, first) + at(layout.headY, end - 1)) / 2;
      expect(Math.abs(Math.abs(x) - Math.abs(y))).toBeLessThan(0.1);
    }
  });

  test('stitches in a space stand apart, within its arch', () => {
    const [space] = fabric.spaces.filter(({ row, corner }) => row === last - 1 && corner);
    const into = stitches.filter((i) => targets(fabric, i)[0] === space?.first);
    expect(into.length).toBeGreaterThanOrEqual(5);
    const feet = into.map((i) => `${at(layout.footX, i).toFixed(2)} ${at(layout.footY, i).toFixed(2)}`);
    expect(new Set(feet).size).toBe(feet.length);
    const from = { x: at(layout.footX, space?.first ?? 0), y: at(layout.footY, space?.first ?? 0) };
    const to = { x: at(layout.headX, (space?.end ?? 1) - 1), y: at(layout.headY, (space?.end ?? 1) - 1) };
    const span = Math.hypot(to.x - from.x, to.y - from.y);
    for (const i of into) {
      const nearest = Math.min(
        Math.hypot(at(layout.footX, i) - from.x, at(layout.footY, i) - from.y),
        Math.hypot(at(layout.footX, i) - to.x, at(layout.footY, i) - to.y),
      );
      expect(nearest).toBeLessThan(span);
    }
  });
});

describe('other rounds', () => {
  test('a hexagon has six straight sides whose corners the corner chains turn', () => {
    const fabric = hexagon();
    const layout = placed(fabric);
    const last = fabric.rows.length - 1;
    const offsets = stitchesOf(fabric, last, 'dc').map((i) =>
      Math.max(
        ...[0, 1, 2, 3, 4, 5].map((k) => {
          const facing = Math.PI / 2 + (k * Math.PI) / 3;
          return at(layout.headX, i) * Math.cos(facing) + at(layout.headY, i) * Math.sin(facing);
        }),
      ),
    );
    expect(Math.max(...offsets) - Math.min(...offsets)).toBeLessThan(0.6);
  });

  test('three single crochet in one place at four even distances make a square', () => {
    const fabric = solidSquare();
    const layout = placed(fabric);
    const last = fabric.rows.length - 1;
    const reach = stitchesOf(fabric, last, 'sc').map((i) =>
      Math.max(Math.abs(at(layout.headX, i)), Math.abs(at(layout.headY, i))),
    );
    expect(Math.max(...reach) - Math.min(...reach)).toBeLessThan(0.45);
    const diagonal = stitchesOf(fabric, last, 'sc').filter(
      (i) => Math.abs(Math.abs(at(layout.headX, i)) - Math.abs(at(layout.headY, i))) < 0.05,
    );
    expect(diagonal).toHaveLength(4);
  });

  test('a round begun in the middle of a corner has that corner too', () => {
    const fabric = cornerStart();
    const layout = placed(fabric);
    const last = stitchesOf(fabric, fabric.rows.length - 1, 'sc');
    const diagonal = last.filter(
      (i) => Math.abs(Math.abs(at(layout.headX, i)) - Math.abs(at(layout.headY, i))) < 0.05,
    );
    expect(diagonal).toHaveLength(4);
    expect(diagonal).toContain(last[0]);
  });

  test.each([
    ['granny', granny],
    ['spiral', spiral],
    ['hexagon', hexagon],
    ['solid square', solidSquare],
  ] as const)('the last stitch of a round of the %s stands clear of its first', (_name, make) => {
    const fabric = make();
    const layout = placed(fabric);
    for (const row of fabric.rows) {
      if (row.closing === 'flat') continue;
      const counted = Array.from({ length: row.end - row.first }, (_, k) => row.first + k).filter(
        (i) => (fabric.countsAs[i] ?? -1) >= 0,
      );
      const [first = 0, last = 0] = [counted[0], counted.at(-1)];
      const apart = Math.hypot(
        at(layout.headX, last) - at(layout.headX, first),
        at(layout.headY, last) - at(layout.headY, first),
      );
      expect(apart, row.label).toBeGreaterThan(0.85);
    }
  });

  test('the joining dot lies on the side the round comes back from', () => {
    const fabric = hexagon();
    const layout = placed(fabric);
    for (const row of [1, 2, 3]) {
      const join = stitchesOf(fabric, row, 'sl-st').at(-1) ?? 0;
      const start = targets(fabric, join)[0] ?? 0;
      // Going anticlockwise from the dot one comes to the start.
      const turn =
        at(layout.footX, join) * at(layout.headY, start) - at(layout.footY, join) * at(layout.headX, start);
      expect(turn).toBeGreaterThan(0);
    }
  });

  test('a circle keeps every round at one distance, the next one further out', () => {
    const fabric = spiral();
    const layout = placed(fabric);
    const outs = [0, 1, 2].map((row) =>
      stitchesOf(fabric, row, 'sc').map((i) => Math.hypot(at(layout.headX, i), at(layout.headY, i))),
    );
    for (const out of outs) expect(Math.max(...out) - Math.min(...out)).toBeLessThan(0.01);
    expect(Math.min(...(outs[1] ?? []))).toBeGreaterThan(Math.max(...(outs[0] ?? [])) + 0.5);
    expect(Math.min(...(outs[2] ?? []))).toBeGreaterThan(Math.max(...(outs[1] ?? [])) + 0.5);
  });

  test('an oval goes along both sides of its chain and round its end', () => {
    const fabric = oval();
    const layout = placed(fabric);
    const stitches = stitchesOf(fabric, 1, 'sc');
    const above = stitches.slice(0, 5).map((i) => at(layout.headY, i));
    const below = stitches.slice(8, 12).map((i) => at(layout.headY, i));
    expect(Math.min(...above)).toBeGreaterThan(0.5);
    expect(Math.max(...below)).toBeLessThan(-0.5);
    const end = stitches[6] ?? 0;
    expect(at(layout.headX, end)).toBeLessThan(
      Math.min(...stitchesOf(fabric, 0, 'ch').map((i) => at(layout.footX, i))),
    );
  });
});

describe('stitches of their own kinds', () => {
  test('a decrease stands between the stitches it joins', () => {
    const fabric = clusters();
    const layout = placed(fabric);
    const decreases = stitchesOf(fabric, rowNamed(fabric, 'Row 3'), 'dc2tog');
    expect(decreases.length).toBeGreaterThan(2);
    for (const i of decreases) {
      const [a = 0, b = 0] = targets(fabric, i);
      const [low = 0, high = 0] = [at(layout.headX, a), at(layout.headX, b)].sort((x, y) => x - y);
      expect(at(layout.headX, i)).toBeGreaterThan(low - 0.4);
      expect(at(layout.headX, i)).toBeLessThan(high + 0.4);
    }
  });

  test('a long stitch reaches down to the row it is worked into and keeps its head level', () => {
    const fabric = longStitches();
    const layout = placed(fabric);
    const row = rowNamed(fabric, 'Row 3');
    const heads = stitchesOf(fabric, row, 'sc').map((i) => at(layout.headY, i));
    expect(Math.max(...heads) - Math.min(...heads)).toBeLessThan(0.05);
    const long = stitchesOf(fabric, row, 'sc').filter(
      (i) => fabric.row[targets(fabric, i)[0] ?? 0] === rowNamed(fabric, 'Row 1'),
    );
    expect(long).toHaveLength(4);
    for (const i of long) expect(at(layout.footY, i)).toBe(at(layout.headY, targets(fabric, i)[0] ?? 0));
  });

  test('chains between stitches touch, and a longer loop rises higher', () => {
    const fabric = mesh();
    const layout = placed(fabric);
    const loop = fabric.spaces.find(({ first, end }) => end - first === 5);
    const first = loop?.first ?? 0;
    for (let i = first + 1; i < first + 5; i += 1) {
      expect(
        Math.hypot(
          at(layout.footX, i) - at(layout.headX, i - 1),
          at(layout.footY, i) - at(layout.headY, i - 1),
        ),
      ).toBeLessThan(1e-9);
    }
    expect(at(layout.anchorY, first + 2)).toBeGreaterThan(at(layout.headY, first - 1) + 1);
  });

  test('chains skipped for a double crochet and chain 1 are drawn as one along, three up and one across', () => {
    const fabric = mesh();
    const layout = placed(fabric);
    const skipped = stitchesOf(fabric, 0, 'ch').slice(-5);
    const way = skipped.map((i) =>
      Math.abs(at(layout.headX, i) - at(layout.footX, i)) > 0.3 ? 'along' : 'up',
    );
    expect(way).toEqual(['along', 'up', 'up', 'up', 'along']);
    expect(at(layout.footY, skipped[4] ?? 0)).toBeGreaterThan(1.5);
  });

  test('two stitches in one row end stand apart along it', () => {
    const fabric = workText({
      Panel: `Foundation: Ch 8.
        Row 1 (RS): Dc in 4th ch from hook (skipped 3 ch count as dc) and in each ch across, turn. (6 dc)
        Row 2: Ch 3 (counts as dc), dc in next dc and in each dc across, turn. (6 dc)`,
      'Edging:Panel': 'Rnd 1 (RS): Ch 1, sc in each st across, work 4 sc evenly along row ends, turn.',
    });
    const layout = placed(fabric);
    const along = stitchesOf(fabric, fabric.rows.length - 1, 'sc').slice(-4);
    const feet = along.map((i) => at(layout.footY, i));
    expect(fall(feet)).toBe(true);
    feet.slice(1).forEach((y, k) => {
      expect((feet[k] ?? 0) - y).toBeGreaterThan(0.5);
    });
  });

  test('an edging goes round outside the panel, corners fanned', () => {
    const fabric = edged();
    const layout = placed(fabric);
    const panel = fabric.rows.flatMap((row, k) => (row.part === 0 ? stitchesOf(fabric, k, 'sc') : []));
    const left = Math.min(...panel.map((i) => at(layout.headX, i)));
    const right = Math.max(...panel.map((i) => at(layout.headX, i)));
    const top = Math.max(...panel.map((i) => at(layout.headY, i)));
    const edging = stitchesOf(fabric, rowNamed(fabric, 'Rnd 1'), 'sc');
    expect(edging).toHaveLength(42);
    for (const i of edging) {
      const x = at(layout.headX, i);
      const y = at(layout.headY, i);
      expect(x < left - 0.3 || x > right + 0.3 || y > top + 0.5 || y < -0.5, `stitch at ${x}, ${y}`).toBe(
        true,
      );
    }
    // The three in the last stitch of row 6: one foot, heads round the corner.
    const corner = edging.slice(13, 16);
    expect(new Set(corner.map((i) => at(layout.footX, i))).size).toBe(1);
    expect(fall(corner.map((i) => at(layout.headY, i)).slice(1))).toBe(true);
    expect(at(layout.headX, corner[1] ?? 0)).toBeLessThan(left);
    expect(at(layout.headY, corner[1] ?? 0)).toBeGreaterThan(top);
  });
});

describe('stitches that do not go into the top of another', () => {
  test('a foundation row lies level, its stitches a chain apart', () => {
    const fabric = posts();
    const layout = placed(fabric);
    const stitches = stitchesOf(fabric, 0, 'fdc');
    expect(new Set(stitches.map((i) => at(layout.footY, i))).size).toBe(1);
    const xs = stitches.map((i) => at(layout.headX, i));
    expect(fall(xs)).toBe(true);
    xs.slice(1).forEach((x, k) => {
      expect((xs[k] ?? 0) - x).toBeCloseTo(0.84);
    });
  });

  test('the chain a foundation row begins with stands upright beside it', () => {
    for (const [fabric, chains, tall] of [
      [posts(), 3, 1.5],
      [textured(), 2, 0.8],
    ] as const) {
      const layout = placed(fabric);
      const top = chains - 1;
      expect(at(layout.headX, top)).toBeCloseTo(at(layout.footX, 0));
      expect(at(layout.headY, top)).toBeGreaterThan(at(layout.footY, 0) + tall);
      expect(at(layout.headX, top)).toBeGreaterThan(at(layout.headX, top + 1));
    }
  });

  test('a post stitch stands over the stitch it goes round, as high as a plain one beside it', () => {
    const fabric = posts();
    const layout = placed(fabric);
    for (const i of stitchesOf(fabric, 1, 'fpdc')) {
      const [target = -1] = targets(fabric, i);
      expect(at(layout.headX, i)).toBeCloseTo(at(layout.headX, target));
      expect(at(layout.footY, i)).toBeCloseTo(at(layout.headY, target));
    }
    const heads = ['fpdc', 'bpdc'].map((id) => at(layout.headY, stitchesOf(fabric, 1, id)[0] ?? -1));
    expect(heads[0]).toBeCloseTo(heads[1] ?? Number.NaN);
  });

  test('a foot in a gap lies between the heads on both sides, under them', () => {
    const fabric = textured();
    const layout = placed(fabric);
    for (const i of stitchesOf(fabric, 3, 'dc')) {
      const [target = -1] = targets(fabric, i);
      const beside = [at(layout.headX, target), at(layout.headX, target - 1)];
      expect(at(layout.footX, i)).toBeGreaterThan(Math.min(...beside));
      expect(at(layout.footX, i)).toBeLessThan(Math.max(...beside));
      expect(at(layout.footY, i)).toBeLessThan(
        Math.max(at(layout.headY, target), at(layout.headY, target - 1)),
      );
    }
  });

  test('a popcorn is given the room it is drawn with', () => {
    const fabric = textured();
    const layout = placed(fabric);
    const [popcorn = -1] = stitchesOf(fabric, 2, 'dc5-popcorn');
    expect(at(layout.headX, popcorn) - at(layout.headX, popcorn + 1)).toBeGreaterThan(1);
    // Single crochet in single crochet stand closer.
    const [first = -1, second = -1] = stitchesOf(fabric, 1, 'sc');
    expect(Math.abs(at(layout.headX, first) - at(layout.headX, second))).toBeLessThan(0.9);
  });

  test('love knots are laid end to end, entered at the knot', () => {
    const fabric = loveKnots();
    const layout = placed(fabric);
    for (const i of stitchesOf(fabric, 0, 'love-knot')) {
      if (i > 0) expect(at(layout.footX, i)).toBeCloseTo(at(layout.headX, i - 1));
      const length = at(layout.headX, i) - at(layout.footX, i);
      const along = at(layout.anchorX, i) - at(layout.footX, i);
      expect(along / length).toBeCloseTo(0.91);
      expect(Math.abs(length)).toBeCloseTo(2.5);
    }
  });

  test('love knots between two stitches arch over, longer than as many chains would be', () => {
    const fabric = loveKnots();
    const layout = placed(fabric);
    const [one = -1, two = -1] = stitchesOf(fabric, 1, 'love-knot');
    const lengthOf = (i: number): number =>
      Math.hypot(at(layout.headX, i) - at(layout.footX, i), at(layout.headY, i) - at(layout.footY, i));
    expect(lengthOf(one)).toBeGreaterThan(1.5);
    expect(lengthOf(one)).toBeCloseTo(lengthOf(two), 1);
    expect(at(layout.headX, one)).toBeCloseTo(at(layout.footX, two));
    // Entered at the knot, nearer to where it ends.
    const toEnd = Math.abs(at(layout.anchorX, one) - at(layout.headX, one));
    expect(toEnd).toBeLessThan(Math.abs(at(layout.anchorX, one) - at(layout.footX, one)) / 2);
    expect(at(layout.headY, one)).toBeGreaterThan(at(layout.footY, one));
  });
});
