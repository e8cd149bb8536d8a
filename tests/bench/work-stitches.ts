/** How long a size of 40,000 stitches takes to be worked: in plain rows, in shells, and in rounds with corners. */

import { planSize } from '../../src/check/plan-size.ts';
import { workSize } from '../../src/fabric/work.ts';
import { readPattern } from '../../src/pattern/read-pattern.ts';
import type { Piece } from '../fabric/work-text.ts';
import { patternText } from '../fabric/work-text.ts';
import { quartileMs, tell } from './watch.ts';

/** 200 rows of 200 stitches. */
const PLAIN: Piece = {
  work: 'Ch 201.\nRow 1: Sc in 2nd ch from hook and in each ch across. (200 sc)\nRow 2: Ch 1, *sc in next 3 sts, hdc in next st; rep from * across. (200 sts)\nRows 3-200: Rep Row 2.',
};

/** 33 shells of 6 stitches and 1, over 201 rows: 199 x 201. */
const SHELLS: Piece = {
  special: ['shell: 5 dc in same st'],
  work: `Ch 200.
Row 1: Sc in 2nd ch from hook, *sk next 2 ch, shell in next ch, sk next 2 ch, sc in next ch; rep from * across, turn.
Row 2: Ch 3 (counts as dc), 2 dc in first sc, *sk next 2 dc, sc in next dc, sk next 2 dc, shell in next sc; rep from * to last 6 sts, sk next 2 dc, sc in next dc, sk next 2 dc, 3 dc in last sc, turn.
Row 3: Ch 1, sc in first dc, *sk next 2 dc, shell in next sc, sk next 2 dc, sc in next dc; rep from * across, turn.
Rows 4-201: Rep Rows 2 and 3.`,
};

/** 6 n(n + 1) stitches in n rounds: 40,836 in 82. */
const HEXAGON: Piece = {
  work: `Rnd 1: Ch 3 (counts as dc), dc in magic ring, ch 2, *2 dc in ring, ch 2; rep from * 4 more times, join with sl st in top of beg ch-3.
Rnd 2: Sl st in next dc and in next ch-2 sp, ch 5 (counts as dc and ch 2), dc in same sp, *dc in each dc to next corner, (dc, ch 2, dc) in next corner ch-2 sp; rep from * 4 more times, dc in each rem dc around, join with sl st in 3rd ch of beg ch-5.
Rnd 3: Sl st in next ch-2 sp, ch 5 (counts as dc and ch 2), dc in same sp, *dc in each dc to next corner, (dc, ch 2, dc) in next corner ch-2 sp; rep from * 4 more times, dc in each rem dc around, join with sl st in 3rd ch of beg ch-5.
Rnds 4-82: Rep Rnd 3.`,
};

export function workStitches(): void {
  const pieces = [
    ['in plain rows: the yardstick', PLAIN],
    ['in rows of shells', SHELLS],
    ['in rounds with six corners', HEXAGON],
  ] as const;
  tell(
    '40,000 stitches worked',
    pieces.map(([name, piece]) => [name, quartileMs(workingOf(name, piece))]),
  );
}

function workingOf(name: string, piece: Piece): () => void {
  const { pattern } = readPattern({ file: name, text: patternText(piece) }, 'bench');
  if (pattern === null) throw new Error(`${name} is no pattern`);
  const { plan } = planSize(pattern, 0);
  if (plan === null) throw new Error(`${name} has no size`);
  return () => {
    const { fabric, whole } = workSize(pattern, 0, plan);
    if (!whole || fabric.count < 40_000) throw new Error(`${name}: ${fabric.count} stitches`);
  };
}
