/** The corners round a blanket of hexagons -> the rounds of its border as the trade writes them, over an edge that stands for the joined hexagons. */

import { type BorderInk, said } from './border-words.ts';
import { halvesFolded, runsFolded } from './fold-runs.ts';

export interface ZigzagEdge {
  /** `O` for an outer corner, `I` for an inner one, each before an edge; see `cornersInOrder`. */
  readonly corners: string;
  /** Along each edge. */
  readonly stitches: number;
}

/** What one place of a round is: a corner, or a stitch between corners. */
type Place = 'outer' | 'inner' | 'side';

/** The edge of the joined hexagons: a chain space in each corner, two with the seam between them at an inner one. */
export function zigzagEdgeLines(
  { corners, stitches }: ZigzagEdge,
  { terms, edgeColour }: BorderInk,
): string[] {
  const { sc, join } = said(terms);
  const outer = `${sc} in next ${stitches} ch, ch 2, sk next ch`;
  const inner = `${outer}, ${join} in next ch, ch 2, sk next ch`;
  const all = [...corners];
  const chains = all.reduce((sum, corner) => sum + stitches + (corner === 'O' ? 1 : 3), 0);
  const round = runsFolded(all.map((corner) => (corner === 'O' ? outer : inner)));
  return [
    `Foundation: With ${edgeColour}, ch ${chains}, join with ${join} in first ch to form ring.`,
    `Rnd 1 (RS): Ch 1, ${round}, join with ${join} in first ${sc}.`,
    `Fasten off ${edgeColour}.`,
  ];
}

export function zigzagLines(
  { corners, stitches }: ZigzagEdge,
  rounds: number,
  { terms, colour }: BorderInk,
): string[] {
  const { sc, join } = said(terms);
  const first = [...corners].flatMap((corner) => [
    corner === 'O' ? `3 ${sc} in corner ch-2 sp` : `${sc}2tog over next 2 ch-2 sps`,
    inNext(stitches, sc),
  ]);
  const lines = [
    `Rnd 1 (RS): Join ${colour} with ${join} in any corner ch-2 sp, ch 1, ${halvesFolded(first)}, join with ${join} in first ${sc}.`,
  ];
  let places: readonly Place[] = [...corners].flatMap((corner): Place[] => [
    ...(corner === 'O' ? (['side', 'outer', 'side'] as const) : (['inner'] as const)),
    ...Array.from({ length: stitches }, () => 'side' as const),
  ]);
  for (let round = 2; round <= rounds; round += 1) {
    const made = round % 2 === 0 ? drawnIn(places, sc) : spreadOut(places, sc);
    lines.push(
      `Rnd ${round}: Ch 1, ${sc} in same st, ${runsFolded(made.words)}, join with ${join} in first ${sc}.`,
    );
    places = made.places;
  }
  return [...lines, `Fasten off ${colour}.`];
}

interface Round {
  /** After the first stitch. */
  readonly words: readonly string[];
  readonly places: readonly Place[];
}

/** Three together at each inner corner: the one in the middle and its neighbours. */
function drawnIn(below: readonly Place[], sc: string): Round {
  const words: string[] = [];
  const places: Place[] = [];
  let run = 0;
  for (let i = 0; i < below.length; i += 1) {
    const place = below[i] ?? 'side';
    if (below[i + 1] === 'inner') {
      pushRun(words, run, sc);
      words.push(`${sc}3tog`);
      places.push('inner');
      run = 0;
      i += 2;
    } else {
      // The first is worked where the round begins, and said there.
      run += i === 0 ? 0 : 1;
      places.push(place);
    }
  }
  pushRun(words, run, sc);
  return { words, places };
}

/** Three in the middle one of each outer corner. */
function spreadOut(below: readonly Place[], sc: string): Round {
  const words: string[] = [];
  const places: Place[] = [];
  let run = 0;
  for (const [i, place] of below.entries()) {
    if (place === 'outer') {
      pushRun(words, run, sc);
      words.push(`3 ${sc} in next st`);
      places.push('side', 'outer', 'side');
      run = 0;
    } else {
      run += i === 0 ? 0 : 1;
      places.push(place);
    }
  }
  pushRun(words, run, sc);
  return { words, places };
}

function pushRun(words: string[], run: number, sc: string): void {
  if (run > 0) words.push(inNext(run, sc));
}

function inNext(n: number, sc: string): string {
  return n === 1 ? `${sc} in next st` : `${sc} in next ${n} sts`;
}
