/**
 * A worked along and an instant in, what may be seen of it at that instant out. Pages, feeds and files are made from
 * this and from nothing else, so that there is no way for what is not out to get into them.
 */

import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Along, AlongWeek } from './along.ts';
import { type AlongSquare, isSound, type WorkedAlong } from './work-along.ts';

/** What is said of the along from the day it is announced: everything but its weeks and its file. */
export type PublicAlong = Omit<Along, 'weeks' | 'source' | 'places'>;

export type ReleasedWeek =
  | {
      readonly kind: 'out';
      readonly number: number;
      readonly releaseMs: number;
      readonly week: Pick<AlongWeek, 'title' | 'teaser' | 'note' | 'video' | 'make'>;
      readonly squares: readonly AlongSquare[];
    }
  /** `late` where its hour has come and it is not fit to be seen. */
  | {
      readonly kind: 'to come' | 'late';
      readonly number: number;
      readonly releaseMs: number;
      readonly teaser: string | null;
    };

export type WeekOut = Extract<ReleasedWeek, { kind: 'out' }>;

export interface ReleasedAlong {
  readonly along: PublicAlong;
  readonly weeks: readonly ReleasedWeek[];
  /** Every week is out. */
  readonly complete: boolean;
}

export interface Release {
  readonly released: ReleasedAlong;
  /** Faults of weeks that are due, which therefore are not out. */
  readonly late: readonly Diagnostic[];
  /** Faults of weeks that are still to come, and warnings of any: to be told, and no more. */
  readonly told: readonly Diagnostic[];
}

/** `asOf` null is a preview: everything that is fit to be seen is out. */
export function releaseAt({ along, weeks }: WorkedAlong, asOf: number | null): Release {
  const late: Diagnostic[] = [];
  const told: Diagnostic[] = [];
  const seen = weeks.map((worked): ReleasedWeek => {
    const { week, squares, faults } = worked;
    const { number, releaseMs, title, teaser, note, video, make } = week;
    const due = asOf === null || releaseMs <= asOf;
    const sound = isSound(worked);
    for (const fault of faults) (due && !sound ? late : told).push(fault);
    return due && sound
      ? { kind: 'out', number, releaseMs, week: { title, teaser, note, video, make }, squares }
      : { kind: due ? 'late' : 'to come', number, releaseMs, teaser };
  });
  const { weeks: _weeks, source: _source, places: _places, ...open } = along;
  return {
    released: { along: open, weeks: seen, complete: seen.every(({ kind }) => kind === 'out') },
    late,
    told,
  };
}

export function weeksOut({ weeks }: ReleasedAlong): readonly WeekOut[] {
  return weeks.flatMap((week) => (week.kind === 'out' ? [week] : []));
}

/** The next release after an instant; null when all are out. */
export function nextRelease(
  along: Pick<Along, 'weeks'>,
  afterMs: number,
): Pick<AlongWeek, 'number' | 'releaseMs'> | null {
  const next = along.weeks.find(({ releaseMs }) => releaseMs > afterMs);
  return next === undefined ? null : { number: next.number, releaseMs: next.releaseMs };
}
