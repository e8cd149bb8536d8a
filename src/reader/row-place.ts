/** Which rows are ticked -> which of them is at hand. */

export interface RowPlace {
  /** In the order of the page. */
  readonly ticked: readonly boolean[];
  /** The row that was ticked last; -1 for none. */
  readonly last: number;
}

/** The first row not ticked after the one ticked last, else the first of all that is not; -1 when all are. */
export function rowAtHand({ ticked, last }: RowPlace): number {
  const after = ticked.findIndex((done, i) => i > last && !done);
  return after >= 0 ? after : ticked.indexOf(false);
}

/** What is kept holds for a page of as many rows: the rows of a mended pattern may be others. */
export interface KeptPlace {
  readonly rows: number;
  readonly ticked: readonly number[];
  readonly last: number;
}

export function toKeep({ ticked, last }: RowPlace): KeptPlace {
  return { rows: ticked.length, ticked: ticked.flatMap((done, i) => (done ? [i] : [])), last };
}

export function fromKept(kept: KeptPlace | null, rows: number): RowPlace {
  const none: RowPlace = { ticked: Array.from({ length: rows }, () => false), last: -1 };
  if (kept === null || kept.rows !== rows) return none;
  return { ticked: none.ticked.map((_, i) => kept.ticked.includes(i)), last: kept.last };
}

export function isKeptPlace(value: unknown): value is KeptPlace {
  if (typeof value !== 'object' || value === null) return false;
  const { rows, ticked, last } = value as Record<keyof KeptPlace, unknown>;
  return (
    typeof rows === 'number' &&
    typeof last === 'number' &&
    Array.isArray(ticked) &&
    ticked.every((i) => typeof i === 'number')
  );
}
