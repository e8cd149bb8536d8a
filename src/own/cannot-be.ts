/** What a maker asks for and the pattern in, what its own rules do not leave open out. */

import { openEnd } from '../fabric/open-end.ts';
import { NOTHING_ASKED, type OwnSize } from '../pattern/own-size.ts';
import type { Pattern } from '../pattern/pattern.ts';
import { firstMultiple } from '../pattern/pattern-repeat.ts';
import { fewestRounds, type GrowingRounds, growingRounds } from './as-rounds.ts';
import { ownPattern, type Remakeable } from './own-pattern.ts';

/** A sentence, or null where all can be had. */
export function cannotBe(own: OwnSize, remakeable: Remakeable): string | null {
  const { pattern } = remakeable;
  const round = remakeable.fabric === null ? null : growingRounds(pattern, own.from, remakeable.fabric);
  // A round piece is as high as it is wide, so either says it.
  if (round !== null) return fewerThanItHas(own, round, pattern);
  const made = ownPattern(remakeable, own);
  const sizes = pattern.sizes.map(({ name }) => name).join(', ');
  if ((own.widthMm ?? own.repeats) !== null && firstMultiple(made) === null)
    return `${pattern.title} has no pattern repeat, so no width can be asked for; its sizes are ${sizes}.`;
  if ((own.heightMm ?? own.rows) !== null && !goesOn(made, own.from))
    return `All rows of ${pattern.title} are numbered, so no height can be asked for; its sizes are ${sizes}.`;
  return own.rows === null ? null : rowsNotAllowed(own.rows, made, own.from);
}

/** Which rule so many rows break, and the nearest numbers that keep it. */
function rowsNotAllowed(rows: number, made: Pattern, sizeIndex: number): string | null {
  const open = made.parts
    .map((part) => openEnd(part.instructions.lines, sizeIndex))
    .find((end) => end !== null);
  if (open === undefined || open === null || open.allows(rows)) return null;
  const least = Math.max(rows, open.from);
  const more = fromOn(least, open.cycle).find(open.allows);
  const fewer = fromOn(rows - open.cycle, open.cycle).findLast(open.allows);
  const near = [fewer, more].filter((n) => n !== undefined);
  const rule =
    rows < open.from || open.endingWith === null
      ? `${made.title} takes more rows than ${rows}`
      : `${made.title} ends with a Row ${open.endingWith}, which ${rows} rows do not`;
  return near.length === 0
    ? `${rule}.`
    : `${rule}; the nearest ${near.length === 1 ? 'is' : 'are'} ${near.join(' and ')}.`;
}

function fromOn(first: number, count: number): number[] {
  return Array.from({ length: count + 1 }, (_, i) => first + i);
}

function fewerThanItHas({ repeats, rows }: OwnSize, round: GrowingRounds, { title }: Pattern): string | null {
  if (repeats !== null) return `${title} is worked in rounds, so no repeats across can be asked for.`;
  const fewest = fewestRounds(round);
  return rows !== null && rows < fewest ? `${title} takes ${fewest} rounds at least.` : null;
}

/** Which of her wishes a pattern leaves open, made from one of its sizes. */
export function leavesOpen(
  remakeable: Remakeable,
  from: number,
): { readonly across: boolean; readonly up: boolean } {
  const ask = { ...NOTHING_ASKED, from };
  const { pattern, fabric } = remakeable;
  const round = fabric !== null && growingRounds(pattern, from, fabric) !== null;
  return {
    across: cannotBe({ ...ask, widthMm: ANY_MM }, remakeable) === null,
    up: !round && cannotBe({ ...ask, heightMm: ANY_MM }, remakeable) === null,
  };
}

const ANY_MM = 300;

function goesOn(pattern: Pattern, sizeIndex: number): boolean {
  return pattern.parts.some((part) => openEnd(part.instructions.lines, sizeIndex) !== null);
}
