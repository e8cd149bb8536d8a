/**
 * One size worked -> what a page needs to follow a maker row by row: which rows each line stands for, which row of its
 * chart each is, the row it is worked as, and how often its repeats are worked.
 */

import type { RowAccount } from '../explain/row-account.ts';
import { phrasesOf } from '../wording/phrases.ts';
import { DIALECTS, type DialectKey, type WordedPattern } from '../wording/words.ts';
import type { Markup } from './page-data.ts';

export interface WorkedWords {
  readonly words: Pick<WordedPattern, 'parts'>;
  /** How each row came to its number. */
  readonly accounts: readonly RowAccount[];
}

/** A line of the page, in its order; a sentence outside rows has none. */
export interface FollowedLine {
  /** The element of the chart that may have its rows: its part's own, else the one before, since an edging is drawn around its piece. */
  readonly chart: string | null;
  readonly rows: readonly FollowedRow[];
}

export interface FollowedRow {
  /** As the chart numbers it. */
  readonly row: number;
  /** The row it is worked on, as the chart numbers it; null for the first, and for what goes along other edges. */
  readonly onto: number | null;
  /** `Row 6`. */
  readonly name: string;
  /** The row whose words it is worked by, where another line has them. */
  readonly as: { readonly line: number; readonly name: string } | null;
  /** How often each repeat of it is worked, in order. */
  readonly passes: readonly number[];
}

/** `charts` are the elements of the parts' charts, in the order of the parts; null where a part has none of its own. */
export function followedLines(
  { words, accounts }: WorkedWords,
  charts: readonly (string | null)[],
  dialect: DialectKey,
): FollowedLine[] {
  const lines = words.parts.flatMap((part, p) =>
    part.lines.map((line) => ({
      ...line,
      chart: charts.slice(0, p + 1).findLast((chart) => chart !== null) ?? null,
    })),
  );
  const lineOfRow = new Map(lines.flatMap(({ rows }, i) => rows.map((row) => [row, i] as const)));
  return lines.map(({ rows, label, chart }, i) => ({
    chart,
    rows: rows.flatMap((row): FollowedRow[] => {
      const account = accounts[row];
      if (account === undefined) return [];
      const model = accounts.findIndex((other) => sameSteps(other, account));
      const line = lineOfRow.get(model);
      const named = (of: RowAccount): string => nameOf(of, dialect) ?? label ?? of.label;
      return [
        {
          row,
          onto: account.onto,
          name: rows.length === 1 ? (label ?? named(account)) : named(account),
          as: line === undefined || line === i ? null : { line, name: named(accounts[model] ?? account) },
          passes: account.steps.flatMap(({ runs }) =>
            runs.length === 0 ? [] : [runs.reduce((sum, { times }) => sum + times, 0)],
          ),
        },
      ];
    }),
  }));
}

/** As JSON with nothing in it that could end the element it stands in. */
export function followingMarkup(lines: readonly FollowedLine[]): Markup {
  return JSON.stringify(lines).replaceAll('<', '\\u003c');
}

/** A row that is repeated is worked by the very steps of the row it repeats. */
function sameSteps(one: RowAccount, other: RowAccount): boolean {
  return (
    one.part === other.part &&
    one.steps.length > 0 &&
    one.steps.length === other.steps.length &&
    one.steps.every(({ step }, i) => step === other.steps[i]?.step)
  );
}

function nameOf({ unit, number }: RowAccount, dialect: DialectKey): string | null {
  if (unit === null || number === null) return null;
  const { row, round } = phrasesOf(DIALECTS[dialect]);
  return `${(unit === 'row' ? row : round).one} ${number}`;
}
