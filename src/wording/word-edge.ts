/** A side of an edging as it is planned in, the words a maker follows along it out; and the whole edging as one row. */

import type { EdgedSide } from '../measure/edge-plan.ts';
import type { EdgePlaces } from '../measure/edge-sides.ts';
import { findStitch, stitchById, termsOf } from '../stitches/table.ts';
import type { Noun } from './phrases.ts';
import { printSpread, TOGETHER } from './print-spread.ts';
import type { Voice } from './voice.ts';

/** `stitch` is an id of the table. */
export function wordEdge({ spread, of }: EdgedSide, stitch: string, voice: Voice): string {
  const name = { kind: 'stitch', id: stitch, span: { start: 0, end: 0 } } as const;
  // A row end that is passed over leaves no hole; a stitch that is passed over does, so two are worked together.
  const twos = of.into !== 'row ends' && findStitch(`${stitch}2tog`, 'US') !== null;
  return printSpread(twos ? takenTogether(spread) : spread, name, nounOf(of.into, voice), '*', voice);
}

/** `row end`, `st`, `ch`; of a mesh `st or ch`. */
export function nounOf(into: EdgePlaces, { phrases }: Voice): Noun {
  switch (into) {
    case 'row ends':
      return phrases.rowEnd;
    case 'stitches':
      return phrases.st;
    case 'chains':
      return phrases.ch;
    case 'stitches and chains':
      return {
        one: `${phrases.st.one} or ${phrases.ch.one}`,
        many: `${phrases.st.many} and ${phrases.ch.many}`,
      };
  }
}

/** A place passed over and the one beside it become two worked together: mirrored, so that both ends stay alike. */
function takenTogether(spread: readonly number[]): readonly number[] {
  const out: number[] = [];
  for (let i = 0; i < spread.length; i += 1) {
    const [here, next] = [spread[i], spread[i + 1]];
    const pair = (here === 0 && next === 1) || (here === 1 && next === 0 && i + 1 >= spread.length / 2);
    out.push(pair ? TOGETHER : (here ?? 0));
    if (pair) i += 1;
  }
  return out;
}

export interface EdgedSize {
  readonly sides: readonly EdgedSide[];
  readonly inCorner: number;
}

/** Stitches all the way round, corners and all. */
export function allRound({ sides, inCorner }: EdgedSize, corners: number): number {
  return sides.reduce((sum, { stitches, of }) => sum + stitches * of.count, corners * inCorner);
}

/**
 * An edging round a piece of rows as a pattern writes it, `work 23 (29, 47) sc evenly along row ends`, for all its sizes;
 * null where their tops or foundations are not worked into one by one, and so no one row says it for all.
 */
export function edgingRow(sizes: readonly EdgedSize[], stitch: string, voice: Voice): string | null {
  const [first] = sizes;
  const name = termsOf(stitchById(stitch), voice.terms).abbr;
  if (first === undefined || first.inCorner === 0) return null;
  const along = sizes.map(({ sides }) => ({
    ends: sides.find(({ of }) => of.side === 'sides' && of.into === 'row ends'),
    top: sides.find(({ of }) => of.side === 'top' && of.into === 'stitches'),
    bottom: sides.find(({ of }) => of.side === 'bottom' && of.into === 'chains'),
  }));
  const plain = (side: EdgedSide | undefined): boolean => side?.spread.every((each) => each === 1) === true;
  if (!along.every(({ ends, top, bottom }) => ends !== undefined && plain(top) && plain(bottom))) return null;
  const ends = forSizes(along.map((one) => one.ends?.stitches ?? 0));
  const corner = first.inCorner === 1 ? name : `${first.inCorner} ${name}`;
  const side = `work ${ends} ${name} evenly along ${voice.phrases.rowEnd.many}`;
  const count = forSizes(sizes.map((size) => allRound(size, 4)));
  return [
    `Edging: Ch 1, ${corner} in first st`,
    `${name} in each st to last st`,
    `${corner} in last st`,
    side,
    `working along opposite side of foundation ch, ${corner} in first ch`,
    `${name} in each ch to last ch`,
    `${corner} in last ch`,
    side,
    `join with sl st in first ${name}. (${count} ${name})`,
  ].join(', ');
}

/** `35`, `35 (44, 53)`. */
function forSizes([first, ...others]: readonly number[]): string {
  if (others.every((n) => n === first)) return String(first);
  return `${first} (${others.join(', ')})`;
}
