/** How far a maker has come: lines that are ticked, and within the line at hand the rows and the passes of a repeat. */

export interface RowPlace {
  /** Lines, in the order of the page. */
  readonly ticked: readonly boolean[];
  /** The line that was ticked last; -1 for none. */
  readonly last: number;
  /** Rows of the line at hand that are done: `Rows 4–27` is one line. */
  readonly rowsDone: number;
  /** Passes of the repeats of the row at hand that are done. */
  readonly passesDone: number;
}

/** The first line not ticked after the one ticked last, else the first of all that is not; -1 when all are. */
export function lineAtHand({ ticked, last }: Pick<RowPlace, 'ticked' | 'last'>): number {
  const after = ticked.findIndex((done, i) => i > last && !done);
  return after >= 0 ? after : ticked.indexOf(false);
}

export function startOver(lines: number): RowPlace {
  return { ticked: Array.from({ length: lines }, () => false), last: -1, rowsDone: 0, passesDone: 0 };
}

export function withTick({ ticked, last: before }: RowPlace, line: number, checked: boolean): RowPlace {
  const now = ticked.with(line, checked);
  const last = checked ? line : before === line ? now.lastIndexOf(true, line) : before;
  return { ticked: now, last, rowsDone: 0, passesDone: 0 };
}

/** `rowsOf` says how many rows a line stands for; a sentence is done in one go. */
export function rowDone(place: RowPlace, rowsOf: (line: number) => number): RowPlace {
  const line = lineAtHand(place);
  if (line < 0) return startOver(place.ticked.length);
  const rowsDone = place.rowsDone + 1;
  return rowsDone < rowsOf(line) ? { ...place, rowsDone, passesDone: 0 } : withTick(place, line, true);
}

/** To the row before, in the line before where need be. */
export function rowBack(place: RowPlace, rowsOf: (line: number) => number): RowPlace {
  const { ticked, last, rowsDone } = place;
  if (rowsDone > 0) return { ...place, rowsDone: rowsDone - 1, passesDone: 0 };
  const line = ticked[last] === true ? last : ticked.lastIndexOf(true);
  if (line < 0) return place;
  return { ...withTick({ ...place, last: line }, line, false), rowsDone: Math.max(rowsOf(line) - 1, 0) };
}

/** Which pass of which repeat is at hand; null where there is none or all are done. */
export function passAtHand(
  passesDone: number,
  passes: readonly number[],
): { readonly repeat: number; readonly pass: number; readonly of: number } | null {
  let before = 0;
  for (const [repeat, of] of passes.entries()) {
    if (passesDone < before + of) return { repeat, pass: passesDone - before + 1, of };
    before += of;
  }
  return null;
}

/** What is kept holds for a page of as many lines: those of a mended pattern may be others. */
export interface KeptPlace {
  readonly rows: number;
  readonly ticked: readonly number[];
  readonly last: number;
  readonly rowsDone?: number;
  readonly passesDone?: number;
}

export function toKeep({ ticked, ...rest }: RowPlace): KeptPlace {
  return { rows: ticked.length, ticked: ticked.flatMap((done, i) => (done ? [i] : [])), ...rest };
}

export function fromKept(kept: KeptPlace | null, lines: number): RowPlace {
  const none = startOver(lines);
  if (kept === null || kept.rows !== lines) return none;
  return {
    ticked: none.ticked.map((_, i) => kept.ticked.includes(i)),
    last: kept.last,
    rowsDone: kept.rowsDone ?? 0,
    passesDone: kept.passesDone ?? 0,
  };
}

export function isKeptPlace(value: unknown): value is KeptPlace {
  if (typeof value !== 'object' || value === null) return false;
  const { rows, ticked, last, rowsDone, passesDone } = value as Record<keyof KeptPlace, unknown>;
  return (
    typeof rows === 'number' &&
    typeof last === 'number' &&
    Array.isArray(ticked) &&
    ticked.every((i) => typeof i === 'number') &&
    [rowsDone, passesDone].every((one) => one === undefined || typeof one === 'number')
  );
}
