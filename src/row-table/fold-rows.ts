/** Explained rows -> those that fare alike taken together: `Rows 4-9`, and `as Rows 2 and 3 in turn`. */

import type { ExplainedRow } from './explain-rows.ts';

export interface FoldedRows {
  /** `Row 4`, `Rows 4-9`. */
  readonly label: string;
  /** The first of them. */
  readonly row: ExplainedRow;
  /** The rows above that they fare like, or null. */
  readonly as: string | null;
  /** False where they do not take and make the same, so that no figure stands for all. */
  readonly level: boolean;
}

/** A longer turn than this is laid out row by row. */
const LONGEST_TURN = 8;

interface Run {
  readonly key: string;
  readonly from: ExplainedRow;
  readonly to: ExplainedRow;
  readonly as: string | null;
  readonly level: boolean;
}

export function foldRows(rows: readonly ExplainedRow[]): readonly FoldedRows[] {
  return turns(alike(rows)).map(({ from, to, as, level }) => ({
    label: from === to ? from.label : rangeLabel(from, to),
    row: from,
    as,
    level,
  }));
}

/** Rows after one another with the same figures are one run; a later run with those figures names the first. */
function alike(rows: readonly ExplainedRow[]): readonly Run[] {
  const runs: Run[] = [];
  const first = new Map<string, string>();
  for (const row of rows) {
    const { part, takes, skips, leaves, makes, how, account } = row;
    const key = JSON.stringify([part, takes, skips, leaves, makes, how, account.faults]);
    const last = runs[runs.length - 1];
    if (last?.key === key && follows(last.to, row)) runs[runs.length - 1] = { ...last, to: row };
    else {
      const as = first.get(key) ?? null;
      runs.push({ key, from: row, to: row, as, level: true });
      if (as === null && row.label !== '') first.set(key, row.label);
    }
  }
  return runs;
}

/** Runs that go through the same rows over and over are one: Rows 4 to 13 as Rows 2 and 3 in turn. */
function turns(runs: readonly Run[]): readonly Run[] {
  const folded: Run[] = [];
  for (let at = 0; at < runs.length; ) {
    const turn = turnFrom(runs, at);
    const run = runs[at];
    if (run === undefined) break;
    if (turn === null) folded.push(run);
    else folded.push(turn.run);
    at += turn?.length ?? 1;
  }
  return folded;
}

function turnFrom(runs: readonly Run[], at: number): { readonly run: Run; readonly length: number } | null {
  const from = runs[at];
  if (from === undefined) return null;
  for (let period = 2; period <= LONGEST_TURN; period += 1) {
    let end = at;
    while (end < runs.length && goesOn(runs, at, end, period)) end += 1;
    const last = runs[end - 1];
    if (end - at <= period || last === undefined) continue;
    const names = runs.slice(at, at + period).map(({ as }) => as ?? '');
    const level = runs.slice(at, end).every((run) => sameFigures(run.from, from.from));
    return { run: { ...from, to: last.to, as: `${listed(names)} in turn`, level }, length: end - at };
  }
  return null;
}

/** Whether a run is a single row like one above, follows the one before and is like the one a turn back. */
function goesOn(runs: readonly Run[], at: number, i: number, period: number): boolean {
  const run = runs[i];
  const before = runs[i - 1];
  if (run === undefined || run.as === null || run.from !== run.to) return false;
  if (i > at && (before === undefined || !follows(before.to, run.from))) return false;
  return i - at < period || run.as === runs[i - period]?.as;
}

/** One line can stand for them all. */
function sameFigures(a: ExplainedRow, b: ExplainedRow): boolean {
  return (
    JSON.stringify([a.takes, a.skips, a.leaves, a.makes]) ===
    JSON.stringify([b.takes, b.skips, b.leaves, b.makes])
  );
}

function follows(before: ExplainedRow, row: ExplainedRow): boolean {
  const { number } = before.account;
  return number !== null && row.account.number === number + 1 && nameOf(before.label) === nameOf(row.label);
}

/** `Rows 2 and 3`, `Rows 3, 4, 5 and 6`. */
function listed(labels: readonly string[]): string {
  const name = nameOf(labels[0] ?? '');
  const numbers = labels.map((label) => (name.length === 1 ? label : label.slice(name.length).trim()));
  const list = `${numbers.slice(0, -1).join(', ')} and ${numbers[numbers.length - 1]}`;
  return name.length === 1 ? list : `${name}s ${list}`;
}

/** `Rows 4-9`, `R4-R9`. */
function rangeLabel(from: ExplainedRow, to: ExplainedRow): string {
  const name = nameOf(from.label);
  if (name.length === 1) return `${from.label}-${to.label}`;
  return `${name}s ${from.account.number}-${to.account.number}`;
}

/** `Row` of `Row 4`. */
function nameOf(label: string): string {
  return label.replace(/\s*\d+$/, '');
}
