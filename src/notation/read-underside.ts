/** `2 sc along the underside of the ch-2`: one in each of those chains, from below. */

import type { Cursor } from './cursor.ts';
import { atBoundary, spanSince, takeAny } from './cursor.ts';
import type { Num } from './num.ts';
import { readChainName, takeChainSpace } from './read-chain-name.ts';
import type { StitchName, WorkStep } from './tree.ts';

/** Behind the stitch and how many; null, with the cursor where it was, where it is not one in each chain that is told. */
export function readAlongUnderside(
  cursor: Cursor,
  from: number,
  stitch: StitchName,
  times: Num,
): WorkStep | null {
  const start = cursor.at;
  if (takeAny(cursor, 'along', 'across', 'on') !== null) {
    takeAny(cursor, 'the');
    const under = takeAny(cursor, 'underside', 'bottom') !== null && takeAny(cursor, 'of') !== null;
    takeAny(cursor, 'the');
    const chains = under ? (readChainName(cursor)?.chains ?? null) : null;
    takeChainSpace(cursor);
    if (chains !== null && times.values.every((n) => n === chains) && atBoundary(cursor)) {
      const span = spanSince(cursor, from);
      const place = {
        kind: 'next',
        n: times,
        what: { kind: 'ch' },
        each: true,
        span: spanSince(cursor, start),
      } as const;
      return { kind: 'work', stitch, times: null, place, loop: 'both', skipped: null, span };
    }
  }
  cursor.at = start;
  return null;
}
