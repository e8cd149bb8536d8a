/** Pieces of every sort that a chart must draw. */

import { type Fabric, FLAG, INTO } from '../../src/fabric/fabric.ts';
import { buildFabric, times, type Worked, type WorkedRow } from '../measure/build-fabric.ts';
import { workText } from './work-text.ts';

export const rows = (): Fabric =>
  workText({
    Panel: `Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (10 sc)
      Rows 2-4: Ch 1, sc in each sc across, turn. (10 sc)`,
  });

export const shells = (): Fabric =>
  workText(
    {
      Panel: `Foundation: Ch a multiple of 6 plus 2.
      Row 1 (RS): Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.
      Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn.
      Row 3: Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn.
      Rows 4 on: Rep Rows 2 and 3 to height.`,
    },
    'special:\n  shell: 5 dc in same st\n',
  );

export const granny = (): Fabric =>
  workText({
    Square: `Foundation: Ch 4, join with sl st in first ch to form ring.
      Rnd 1 (RS): Ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st in top of beg ch-3.
      Rnd 2: Sl st in next 2 dc, sl st in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same ch-2 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 2 more times, join with sl st in top of beg ch-3.
      Rnd 3: Sl st in next 2 dc, sl st in next ch-2 sp, ch 3 (counts as dc), (2 dc, ch 2, 3 dc) in same ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1, *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * 2 more times, join with sl st in top of beg ch-3.`,
  });

export const spiral = (): Fabric =>
  workText({
    Circle: `Rnd 1 (RS): 6 sc in magic ring, do not join. (6 sc)
      Rnd 2: 2 sc in each st around. (12 sc)
      Rnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18 sc)
      Rnd 4: *Sc in next st, sc2tog; rep from * around.`,
  });

export const hexagon = (): Fabric =>
  workText({
    Hexagon: `Foundation: Ch 5, join with sl st in first ch to form ring.
      Rnd 1 (RS): Ch 3 (counts as dc), 11 dc in ring, join with sl st in top of beg ch-3. (12 dc)
      Rnd 2: Ch 3 (counts as dc), *(dc, ch 1, dc) in next dc, dc in next dc; rep from * 4 more times, (dc, ch 1, dc) in next dc, join with sl st in top of beg ch-3.
      Rnd 3: Ch 3 (counts as dc), dc in next dc, *(dc, ch 1, dc) in next ch-1 sp, dc in next 3 dc; rep from * 4 more times, (dc, ch 1, dc) in next ch-1 sp, dc in next dc, join with sl st in top of beg ch-3.`,
  });

export const solidSquare = (): Fabric =>
  workText({
    Square: `Foundation: Ch 5, join with sl st in first ch to form ring.
      Rnd 1 (RS): Ch 1, 8 sc in ring, join with sl st in first sc. (8 sc)
      Rnd 2: Ch 1, sc in same st, 3 sc in next sc, *sc in next sc, 3 sc in next sc; rep from * 2 more times, join with sl st in first sc.
      Rnd 3: Ch 1, sc in same st, sc in next st, 3 sc in next st, *sc in next 3 sts, 3 sc in next st; rep from * 2 more times, sc in next st, join with sl st in first sc.`,
  });

/** Eight single crochet in a ring, then a square whose round starts in the middle of a corner and comes back to it. */
export function cornerStart(): Fabric {
  const chains: Worked[] = Array.from({ length: 5 }, () => ({ id: 'ch' }));
  const join = (into: number): Worked => ({ id: 'sl-st', into: [into], flags: FLAG.join });
  const inRing: Worked[] = Array.from({ length: 8 }, () => ({
    id: 'sc',
    into: [0, 1, 2, 3, 4],
    where: INTO.ring,
  }));
  // The ring is stitches 0 to 5, round 1 is 6 to 13 and its join 14.
  const round2 = [6, 6, 7, 8, 8, 8, 9, 10, 10, 10, 11, 12, 12, 12, 13, 6].map(
    (into): Worked => ({ id: 'sc', into: [into] }),
  );
  const round = { unit: 'round', side: 'RS', closing: 'joined' } as const;
  return buildFabric(
    [
      { work: [...chains, join(0)], label: 'Foundation', onto: null },
      { ...round, work: [...inRing, join(6)], label: 'Rnd 1', number: 1 },
      { ...round, work: [...round2, join(15)], label: 'Rnd 2', number: 2 },
    ],
    [{ name: 'Square', firstRow: 0, endRow: 3, shape: 'round', start: 'chain ring' }],
  );
}

export const clusters = (): Fabric =>
  workText({
    Panel: `Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (10 sc)
      Row 2: Ch 1, sc in first 2 sc, dc3tog in next sc, sc in next 3 sc, dc3tog in next sc, sc in next 3 sc, turn.
      Row 3: Ch 3 (counts as dc), *dc2tog over next 2 sts, ch 1; rep from * to last st, dc in last st, turn.`,
  });

export const longStitches = (): Fabric =>
  workText({
    Panel: `Foundation: With A, ch 10.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (9 sc)
      Row 2: Ch 1, sc in each sc across, turn. (9 sc)
      Row 3: With B, ch 1, sc in first sc, *sc in next sc 2 rows below, sc in next sc; rep from * across, turn. (9 sc)
      Row 4: Ch 1, sc in back loop only of each sc across, turn. (9 sc)`,
  });

export const mesh = (): Fabric =>
  workText({
    Mesh: `Foundation: Ch 24.
      Row 1 (RS): Dc in 6th ch from hook (skipped 5 ch count as dc and ch 1), *ch 1, sk next ch, dc in next ch; rep from * across, turn.
      Row 2: Ch 4 (counts as dc and ch 1), dc in next dc, *ch 1, dc in next dc; rep from * across, turn.
      Row 3: Ch 1, sc in first dc, *ch 5, sk next dc, sc in next dc; rep from * across, turn.`,
  });

export const edged = (): Fabric =>
  workText({
    Panel: `Foundation: Ch 13.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn. (12 sc)
      Rows 2-6: Ch 1, sc in each sc across, turn. (12 sc)`,
    'Edging:Panel': `Rnd 1 (RS): Ch 1, 3 sc in first st, sc in next 10 sts, 3 sc in last st, work 5 sc evenly along row ends, working along opposite side of foundation ch, 3 sc in first ch, sc in next 10 ch, 3 sc in last ch, work 5 sc evenly along row ends, join with sl st in first sc.`,
  });

/** A chain of six worked round on both sides, 3 sc at its far end. */
export function oval(): Fabric {
  const chain: Worked[] = Array.from({ length: 6 }, () => ({ id: 'ch' }));
  const turning: Worked = { id: 'ch', flags: FLAG.turningChain };
  const sc = (into: number, where: number = INTO.top): Worked => ({
    id: 'sc',
    into: [into],
    where,
    flags: FLAG.counted,
  });
  const work = [
    ...[5, 4, 3, 2, 1, 0, 0, 0].map((chainAt) => sc(chainAt)),
    ...[1, 2, 3, 4, 5, 5].map((chainAt) => sc(chainAt, INTO.underside)),
    { id: 'sl-st', into: [7], where: INTO.top, flags: FLAG.join },
  ];
  return buildFabric(
    [
      { work: [...chain, turning], label: 'Foundation', onto: null, closing: 'flat' },
      { work, label: 'Rnd 1', unit: 'round', number: 1, side: 'RS', closing: 'joined', onto: 0 },
    ],
    [{ name: 'Rug', firstRow: 0, endRow: 2, shape: 'round', start: 'chain', corners: 0, onto: null }],
  );
}

/** A row of these stitches over those of the row below, each into one; `below` in the order they were worked. */
function rowOver(n: number, below: readonly number[], ids: readonly string[], where: number): WorkedRow {
  const work = [...below].reverse().map((into, k): Worked => {
    const id = ids[k % ids.length] ?? '';
    return { id, into: [into], where: /^[fb]p/.test(id) ? INTO.post : where };
  });
  const side = n % 2 === 1 ? 'RS' : 'WS';
  return { label: `Row ${n}`, number: n, side, direction: side === 'RS' ? 'left' : 'right', work };
}

const from = (first: number, count: number): number[] => Array.from({ length: count }, (_, k) => first + k);

const turningChains = (count: number): Worked[] => times(count, { id: 'ch', flags: FLAG.turningChain });

/** No chain first; then posts from both sides on a wrong-side row, taller ones over it, and two together. */
export function posts(): Fabric {
  const foundation: WorkedRow = {
    label: 'Row 1',
    number: 1,
    side: 'RS',
    onto: null,
    work: [...turningChains(3), ...times(12, { id: 'fdc' })],
  };
  // Row 1 is stitches 3 to 14, row 2 is 15 to 26, row 3 is 27 to 38.
  const row2 = rowOver(2, from(3, 12), ['fpdc', 'bpdc'], INTO.top);
  const row3 = rowOver(3, from(15, 12), ['dc', 'dc', 'fptr', 'dc'], INTO.top);
  const row4 = rowOver(4, from(27, 12), ['sc'], INTO.top);
  const together: Worked = { id: 'fpdc2tog', into: [38, 37], where: INTO.post };
  return buildFabric(
    [foundation, row2, row3, { ...row4, work: [together, ...row4.work.slice(2)] }],
    [{ name: 'Ribs' }],
  );
}

/** Popcorns and the like with single crochet between, then stitches into the gaps between them. */
export function textured(): Fabric {
  const foundation: WorkedRow = {
    label: 'Row 1',
    number: 1,
    side: 'RS',
    onto: null,
    // "Ch 2" before a foundation stitch is no turning chain of a row below.
    work: [...times(2, { id: 'ch' }), ...times(11, { id: 'fsc' })],
  };
  const row2 = rowOver(2, from(2, 11), ['sc'], INTO.top);
  const gathered = ['dc5-popcorn', 'sc', 'hdc3-puff', 'sc', 'dc3-cl', 'sc', 'dc5-bobble', 'bullion'];
  const row3 = rowOver(3, from(13, 11), [...gathered, 'loop-st', 'linked-dc', 'rev-sc'], INTO.top);
  const row4 = rowOver(4, from(25, 10), ['dc'], INTO.between);
  return buildFabric([foundation, row2, row3, row4], [{ name: 'Sampler' }]);
}

/** A net of love knots on a line of them. */
export function loveKnots(): Fabric {
  const sc = (into: number): Worked => ({ id: 'sc', into: [into] });
  const knots: Worked[] = times(2, { id: 'love-knot' });
  return buildFabric(
    [
      { label: 'Foundation', unit: null, work: times(6, { id: 'love-knot' }) },
      { label: 'Row 1', number: 1, side: 'RS', work: [sc(5), ...knots, sc(3), ...knots, sc(1)] },
    ],
    [{ name: 'Net' }],
  );
}

export const SAMPLES: Readonly<Record<string, () => Fabric>> = {
  rows,
  shells,
  granny,
  spiral,
  hexagon,
  'solid square': solidSquare,
  'square begun in a corner': cornerStart,
  clusters,
  'long stitches': longStitches,
  posts,
  textured,
  'love knots': loveKnots,
  mesh,
  'edged panel': edged,
  oval,
};
