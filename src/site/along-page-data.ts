/** What the layouts of an along are given: finished strings and lists, as on every other page. */

import type { Fact, Link, Markup, PageFrame, PictureSet, RowLine, YarnLine } from './page-data.ts';

export interface ScheduleRow {
  readonly number: number;
  /** Null before its hour. */
  readonly title: string | null;
  readonly href: string | null;
  readonly teaser: string | null;
  /** For the page's small script and for machines: `2026-11-07T13:00:00Z`. */
  readonly instant: string;
  readonly day: string;
  readonly hour: string;
  readonly elsewhere: readonly { readonly place: string; readonly when: string }[];
  /** `out`, `to come`, `late`. */
  readonly state: string;
}

export interface AlongSquareCard {
  readonly title: string;
  readonly href: string;
  readonly about: string;
  readonly cover: string | null;
  /** Shown in its place. */
  readonly photograph: PictureSet | null;
  readonly facts: readonly Fact[];
}

export interface AlongFrame extends PageFrame {
  readonly heading: string;
  /** Address of a script of the site's own, or null. */
  readonly script: string | null;
}

export interface WeekPage extends AlongFrame {
  readonly number: number;
  readonly day: string;
  readonly note: string | null;
  readonly video: string | null;
  readonly making: string;
  readonly squares: readonly AlongSquareCard[];
  readonly downloads: readonly Link[];
  readonly others: readonly Link[];
}

export interface AlongTotals {
  readonly lines: readonly YarnLine[];
  readonly note: string;
}

export interface AlongPage extends AlongFrame {
  /** Of the along as a whole. */
  readonly photograph: PictureSet | null;
  readonly photographs: readonly PictureSet[];
  readonly about: string;
  readonly facts: readonly Fact[];
  readonly links: readonly Link[];
  /** The week that came out last, or null before the first. */
  readonly latest: {
    readonly heading: string;
    readonly note: string | null;
    readonly making: string;
    readonly squares: readonly AlongSquareCard[];
    readonly href: string;
  } | null;
  readonly zonePlace: string;
  readonly schedule: readonly ScheduleRow[];
  readonly totals: AlongTotals;
  readonly tools: readonly string[];
  readonly gauge: string;
  /** The default blanket as far as it is out. */
  readonly picture: Markup | null;
  readonly pictureWords: string;
  readonly downloads: readonly Link[];
}

export interface JoiningPage extends AlongFrame {
  readonly sides: readonly {
    readonly id: string;
    readonly name: string;
    readonly before: readonly string[];
    readonly seams: readonly RowLine[];
    readonly after: readonly string[];
    readonly border: readonly RowLine[];
    readonly abbreviations: readonly { readonly abbr: string; readonly meaning: string }[];
    readonly specials: readonly { readonly name: string; readonly how: string }[];
  }[];
  readonly facts: readonly Fact[];
}

export interface PlannerPage extends AlongFrame {
  readonly about: string;
  /** Address of the script that holds the squares' pictures. */
  readonly pictures: string;
  /** Figures for the page's script, as JSON. */
  readonly figures: string;
}

export interface AlongPages {
  readonly alongs: readonly AlongPage[];
  readonly weeks: readonly WeekPage[];
  readonly joining: readonly JoiningPage[];
  readonly planners: readonly PlannerPage[];
}
