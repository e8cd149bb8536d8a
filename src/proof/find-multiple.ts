/**
 * Which foundations a part comes out over, for every width and not only for those tried.
 *
 * A part is worked over three foundations with the same number of chains between them. Where each of its rows at the
 * second is its row at the first with one block of stitches put in, and at the third with the same block put in once
 * more at the same place, the next repeat finds what the last one found: a step looks no further along the row below
 * than to the next place of its kind, and counts no further back from its end than its words say. So the block can be
 * put in again for ever, and each row's stitches are a linear function of the repeats.
 */

import { rowGrowsEvenly } from './inserted.ts';
import type { Trial } from './trial.ts';

export interface MultipleFound {
  /** Any multiple of `of` chains, plus `plus`. */
  readonly of: number;
  readonly plus: number;
  /** Fewest chains it comes out over. */
  readonly from: number;
  /** The same told by the stitches of the first row worked on the chain. */
  readonly stitches: { readonly of: number; readonly plus: number };
  /** For every width; otherwise for those tried only. */
  readonly proved: boolean;
}

export type TrialAt = (chains: number) => Trial;

/** Repeats wider than this are looked for only where the pattern claims one. */
export const WIDEST_REPEAT = 60;

/** One work may alternate from repeat to repeat, or be the same again only after a few. */
const TOGETHER = [1, 2, 3, 4] as const;
/** Widths that have to come out before a multiple is named that could not be proved. */
const TRIED = 8;
/** Narrow pieces may differ from all wider ones: so many repeats on, they must no longer. */
const LATEST_START = 4;

/** The smallest multiple over whose every foundation the part comes out, those of `anchor` among them; null for none. */
export function findMultiple(trialAt: TrialAt, anchor: number, widest: number): MultipleFound | null {
  if (!comesOut(trialAt(anchor))) return null;
  let tried: MultipleFound | null = null;
  for (let of = 1; of <= widest; of += 1) {
    const found = multipleFrom(trialAt, anchor, of, tried === null);
    if (found?.proved === true) return found;
    tried ??= found;
  }
  return tried;
}

/** One multiple looked into: proved, or tried where `alsoTried`; null when it does not come out. */
export function multipleFrom(
  trialAt: TrialAt,
  anchor: number,
  of: number,
  alsoTried: boolean,
): MultipleFound | null {
  if (!comesOut(trialAt(anchor + of)) || !comesOut(trialAt(anchor + 2 * of))) return null;
  if (isProved(trialAt, anchor, of)) return foundFrom(trialAt, anchor, of, true);
  if (!alsoTried) return null;
  const all = Array.from({ length: TRIED }, (_, i) => anchor + (i + 1) * of);
  return all.every((chains) => comesOut(trialAt(chains))) ? foundFrom(trialAt, anchor, of, false) : null;
}

/** Whether every foundation of the class from `anchor` up is proved: a few neighbours lead on by so many repeats each. */
function isProved(trialAt: TrialAt, anchor: number, of: number): boolean {
  return TOGETHER.some((together) =>
    Array.from({ length: together }, (_, i) => anchor + i * of).every((first) =>
      leadsOn(trialAt, first, together * of),
    ),
  );
}

/**
 * From the first, or from a narrower one of its class, which costs less to work; from one of the next few where narrow
 * pieces are not regular yet, with all between them worked through.
 */
function leadsOn(trialAt: TrialAt, first: number, by: number): boolean {
  for (let start = first % by; start < first; start += by)
    if (start > 0 && leadsOnFrom(trialAt, start, by)) return true;
  for (let start = first; start <= first + LATEST_START * by; start += by) {
    if (leadsOnFrom(trialAt, start, by)) return true;
    if (!comesOut(trialAt(start))) return false;
  }
  return false;
}

function leadsOnFrom(trialAt: TrialAt, start: number, by: number): boolean {
  const a = trialAt(start);
  if (!comesOut(a)) return false;
  const [b, c] = [trialAt(start + by), trialAt(start + 2 * by)];
  return [a, b, c].every((trial) => comesOut(trial) && trial.sure) && growsEvenly(a, b, c);
}

function growsEvenly(a: Trial, b: Trial, c: Trial): boolean {
  if (a.rows.length !== b.rows.length || b.rows.length !== c.rows.length) return false;
  return a.rows.every((row, i) => {
    const [second, third] = [b.rows[i], c.rows[i]];
    return second !== undefined && third !== undefined && rowGrowsEvenly(row, second, third);
  });
}

/** Told from the narrowest of the class that comes out with all up to `anchor`. */
function foundFrom(trialAt: TrialAt, anchor: number, of: number, proved: boolean): MultipleFound {
  let from = anchor;
  for (let chains = anchor % of; chains < anchor; chains += of)
    if (chains > 0 && leadsUp(trialAt, chains, anchor, of, proved)) {
      from = chains;
      break;
    }
  // No whole repeat is no width that the words speak of.
  if (of > 1) from = Math.max(from, of + (from % of));
  const [fewest, wider] = [firstRow(trialAt(from)), firstRow(trialAt(from + of))];
  const stitchesOf = wider - fewest;
  const stitches = { of: stitchesOf, plus: stitchesOf > 0 ? fewest % stitchesOf : fewest };
  return { of, plus: from % of, from, stitches, proved };
}

/** Whether all of the class from here to the anchor come out; a proof on the way stands for the rest of them. */
function leadsUp(trialAt: TrialAt, from: number, anchor: number, of: number, proved: boolean): boolean {
  for (let chains = from; chains < anchor; chains += of) {
    if (!comesOut(trialAt(chains))) return false;
    const regular = TOGETHER.some((together) =>
      Array.from({ length: together }, (_, i) => chains + i * of).every((first) =>
        leadsOnFrom(trialAt, first, together * of),
      ),
    );
    if (proved && regular) return true;
  }
  return true;
}

function firstRow({ rows }: Trial): number {
  return rows.find(({ counted }) => counted > 0)?.counted ?? 0;
}

export function comesOut({ fault, rows, flat }: Trial): boolean {
  return fault === null && flat && rows.length > 0;
}
