/** Pieces of every sort that a chart must draw. */

import { type Fabric, FLAG, INTO } from '../../src/fabric/fabric.ts';
import { buildFabric, type Worked } from '../measure/build-fabric.ts';
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
  mesh,
  'edged panel': edged,
  oval,
};
