/**
 * So many stitches spread evenly over a number of places: how many go into each.
 *
 * The trade's rule gives the ith of E places floor((i+1)N/E) - floor(iN/E), so that no two differ by more than one, and
 * half a gap to each end of a flat edge. Counted from both ends to the middle it is the same from either, and so from
 * side to side, wherever that can be: not of an odd number over an even number of places.
 */
export function spread(total: number, places: number): number[] {
  const counts: number[] = new Array<number>(places).fill(0);
  const half = Math.floor(places / 2);
  let given = 0;
  for (let i = 0; i < half; i += 1) {
    // In whole numbers, the half gap put in: floor((i + 1) N / E + 1 / 2).
    const upTo = Math.floor((2 * (i + 1) * total + places) / (2 * places));
    counts[i] = upTo - given;
    counts[places - 1 - i] = upTo - given;
    given = upTo;
  }
  if (places % 2 === 1) counts[half] = total - 2 * given;
  // Of an odd number over an even number of places the two in the middle cannot be alike.
  else if (half > 0) counts[half] = (counts[half] ?? 0) + total - 2 * given;
  return counts;
}

/** The same round a ring, which has no ends: one rule that comes again as often as it can. */
export function spreadAround(total: number, places: number): number[] {
  const upTo = (i: number): number => Math.floor((2 * i * total + places) / (2 * places));
  return Array.from({ length: places }, (_, i) => upTo(i + 1) - upTo(i));
}

/** Whether a spread is the same from either end. */
export function isSymmetrical(counts: readonly number[]): boolean {
  return counts.every((count, i) => count === counts[counts.length - 1 - i]);
}
