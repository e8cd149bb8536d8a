/**
 * So many stitches spread evenly over a number of places: how many go into each.
 *
 * The trade's rule: of E places the ith gets floor((i+1)N/E) - floor(iN/E), so that no two differ by more than one.
 */
export function spread(total: number, places: number): number[] {
  return Array.from(
    { length: places },
    (_, i) => Math.floor(((i + 1) * total) / places) - Math.floor((i * total) / places),
  );
}
