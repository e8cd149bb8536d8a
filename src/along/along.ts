/** An along as its file gives it: values checked, release times found, places kept; no pattern of it is read yet. */

import type { Gauge, Yarn } from '../pattern/pattern.ts';
import type { Photograph } from '../pattern/photograph.ts';
import type { Source, Span } from '../source/span.ts';
import type { Lie } from './lies.ts';
import type { SeamName } from './seams.ts';

export interface AlongChoice {
  /** The pattern's folder as written, seen from the folder of the along. */
  readonly pattern: string;
  readonly size: string | null;
  readonly make: number;
  /** Places of the blanket it covers, side by side. */
  readonly covers: number;
  readonly span: Span;
}

export interface AlongWeek {
  /** From 1. */
  readonly number: number;
  readonly title: string;
  /** What may be said of it before its hour; null where nothing may. */
  readonly teaser: string | null;
  readonly note: string | null;
  readonly video: string | null;
  /** Milliseconds since 1970 in UTC. */
  readonly releaseMs: number;
  readonly make: number;
  readonly choices: readonly AlongChoice[];
  readonly span: Span;
}

export interface Edging {
  /** A side has a multiple of `of` stitches, and `plus` more. */
  readonly of: number;
  readonly plus: number;
  readonly corner: string;
  readonly first: string;
  readonly repeat: string;
  readonly last: string;
}

export interface Along {
  /** Its folder's name: the address of its pages. */
  readonly slug: string;
  readonly source: Source;
  readonly title: string;
  readonly about: string;
  readonly organiser: string | null;
  readonly terms: 'US' | 'UK';
  readonly zone: string;
  /** Zones whose hours the schedule shows as well. */
  readonly elsewhere: readonly string[];
  readonly announcedMs: number;
  readonly gauge: Gauge;
  readonly hookMm: number | null;
  readonly yarns: readonly Yarn[];
  readonly specials: Readonly<Record<string, string>>;
  readonly match: { readonly stitches: number; readonly sizeMm: number; readonly toleranceMm: number };
  readonly blanket: { readonly lie: Lie; readonly across: number; readonly down: number };
  readonly joining: { readonly method: SeamName; readonly colour: string };
  readonly border: { readonly colour: string; readonly rounds: number; readonly edging: Edging | null };
  /** The first is the cover's. */
  readonly photographs: readonly Photograph[];
  readonly weeks: readonly AlongWeek[];
  /** Span of every value by its path: `match.stitches`, `weeks.0.make`. */
  readonly places: ReadonlyMap<string, Span>;
}
