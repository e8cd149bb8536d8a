/** Rows of a text that names no sizes in, how many sizes their numbers are given for out. */

/** `35 (44, 53)` and `61(67:73:79)`: the number of sizes most of the lists have; 1 where there are none. */
export function sizesInRows(rows: readonly string[]): number {
  const times = new Map<number, number>();
  for (const row of rows) {
    for (const found of row.matchAll(/(?<![\d.-])\d+\s*[([]\s*(\d+(?:\s*[,:]\s*\d+)+)\s*[)\]]/g)) {
      const sizes = (found[1]?.split(/[,:]/).length ?? 0) + 1;
      times.set(sizes, (times.get(sizes) ?? 0) + 1);
    }
  }
  const most = [...times].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0];
  return most?.[0] ?? 1;
}

/** `Figures in brackets are for the larger size`: two sizes, which the sentence tells apart. */
export function saysBracketsAreLarger(texts: readonly string[]): boolean {
  return texts.some((text) =>
    /\b(?:figures|numbers|instructions|changes)\b[^.]*\b(?:brackets|parenthes[ei]s)\b[^.]*\b(?:larger|second|bigger) size\b/i.test(
      text,
    ),
  );
}
