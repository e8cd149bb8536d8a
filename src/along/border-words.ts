/** A border planned for a blanket -> its rounds as the trade writes them, over an edge that stands for the joined squares. */

import type { Edging } from './along.ts';
import type { BorderPlan } from './plan-border.ts';

export interface BorderInk {
  readonly terms: 'US' | 'UK';
  /** Letter of the border's yarn. */
  readonly colour: string;
  /** Letter of the yarn that stands for the edge of the joined squares: none of the blanket's own. */
  readonly edgeColour: string;
}

/** The edge of the joined squares: so many stitches on each side, and a chain space in each corner. The first corner is the one before the top edge. */
export function edgeLines({ edge: [across, down] }: BorderPlan, { terms, edgeColour }: BorderInk): string[] {
  const { sc, join } = said(terms);
  const chains = 2 * (across + down + 2);
  return [
    `Foundation: With ${edgeColour}, ch ${chains}, join with ${join} in first ch to form ring.`,
    `Rnd 1 (RS): Ch 1, *${sc} in next ${down} ch, ch 2, sk next ch, ${sc} in next ${across} ch, ch 2, sk next ch; rep from * once more, join with ${join} in first ${sc}.`,
    `Fasten off ${edgeColour}.`,
  ];
}

export function borderLines(
  { edge, rounds, adjust, repeats }: BorderPlan,
  edging: Edging | null,
  { terms, colour }: BorderInk,
): string[] {
  const { sc, join } = said(terms);
  const corner = `(${sc}, ch 2, ${sc}) in corner ch-2 sp`;
  const lines = rounds.map((_, r) => {
    const first = r === 0;
    const begins = first
      ? `Rnd 1 (RS): Join ${colour} with ${join} in any corner ch-2 sp, ch 1`
      : `Rnd ${r + 1}: ${cap(join)} in next corner ch-2 sp, ch 1`;
    const isLast = r === rounds.length - 1;
    const below = first ? edge : (rounds[r - 1] ?? edge);
    if (!isLast || (adjust[0] === 0 && adjust[1] === 0))
      return `${begins}, *${corner}, ${sc} in each st to next corner; rep from * around, join with ${join} in first ${sc}.`;
    const sides = [0, 1].map((side) => sideWords(below[side] ?? 0, adjust[side] ?? 0, sc));
    return `${begins}, *${corner}, ${sides[0]}, ${corner}, ${sides[1]}; rep from * once more, join with ${join} in first ${sc}.`;
  });
  if (edging !== null && repeats !== null) {
    const side = (times: number): string =>
      [edging.corner, edging.first, `[${edging.repeat}] ${times} times`, edging.last]
        .filter((words) => words !== '')
        .join(', ');
    lines.push(
      `Rnd ${rounds.length + 1}: ${cap(join)} in next corner ch-2 sp, ch 1, *${side(repeats[0])}, ${side(repeats[1])}; rep from * once more, join with ${join} in first st.`,
    );
  }
  return [...lines, `Fasten off ${colour}.`];
}

/** Along one side, with stitches put in or taken out at even distances. */
function sideWords(among: number, more: number, sc: string): string {
  if (more === 0) return `${sc} in each st to next corner`;
  const times = Math.abs(more);
  const uses = more > 0 ? 1 : 2;
  const change = more > 0 ? `2 ${sc} in next st` : `${sc}2tog`;
  // One alone stands in the middle; several lie as far apart as the side is long.
  const plain = times === 1 ? Math.floor((among - uses) / 2) : Math.floor(among / times) - uses;
  const left = among - times * (plain + uses);
  const lead = times === 1 ? 0 : Math.floor(left / 2);
  const run = plain > 0 ? `${inNext(plain, sc)}, ${change}` : change;
  const repeated = times === 1 ? run : `[${run}] ${times} times`;
  return [lead > 0 ? inNext(lead, sc) : null, repeated, left > lead ? inNext(left - lead, sc) : null]
    .filter((words) => words !== null)
    .join(', ');
}

function inNext(n: number, sc: string): string {
  return n === 1 ? `${sc} in next st` : `${sc} in next ${n} sts`;
}

/** The two stitches of a border by their names in one country. */
export function said(terms: 'US' | 'UK'): { readonly sc: string; readonly join: string } {
  return terms === 'US' ? { sc: 'sc', join: 'sl st' } : { sc: 'dc', join: 'ss' };
}

function cap(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
