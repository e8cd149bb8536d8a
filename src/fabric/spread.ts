/**
 * So many stitches spread evenly over places of given heights: how many go into each.
 *
 * With equal heights this is the trade's rule: the ith of E places gets floor((i+1)N/E) - floor(iN/E).
 */
export function spread(total: number, heights: readonly number[]): number[] {
  const whole = heights.reduce((sum, height) => sum + height, 0);
  const counts: number[] = [];
  let upTo = 0;
  let before = 0;
  for (const height of heights) {
    upTo += height;
    // The last bit of a float must not lose a stitch where the division is exact.
    const after = Math.floor((total * upTo) / whole + 1e-9);
    counts.push(after - before);
    before = after;
  }
  return counts;
}
