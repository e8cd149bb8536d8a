/**
 * Wished-for places in, places out: the nearest by least squares that keep their order and a least distance between
 * neighbours. Exact, by pooling adjacent violators, in time linear in the number of places.
 */

export interface Wishes {
  /** Where each would best be. */
  readonly wish: Float64Array;
  /** How much each counts. */
  readonly weight: Float64Array;
  /** `gap[i]` is the least distance from i - 1 to i; `gap[0]` is not used. */
  readonly gap: Float64Array;
  /** Neither the first before `least` nor the last beyond `most`. */
  readonly least?: number;
  readonly most?: number;
}

export function keepApart({ wish, weight, gap, least, most }: Wishes): Float64Array {
  const count = wish.length;
  const shift = new Float64Array(count);
  for (let i = 1; i < count; i += 1) shift[i] = (shift[i - 1] ?? 0) + (gap[i] ?? 0);

  // With the gaps taken off, the places only have to be in order: isotonic regression.
  const mean = new Float64Array(count);
  const mass = new Float64Array(count);
  const size = new Uint32Array(count);
  let blocks = 0;
  for (let i = 0; i < count; i += 1) {
    mean[blocks] = (wish[i] ?? 0) - (shift[i] ?? 0);
    mass[blocks] = weight[i] ?? 1;
    size[blocks] = 1;
    while (blocks > 0 && (mean[blocks - 1] ?? 0) > (mean[blocks] ?? 0)) {
      const a = mass[blocks - 1] ?? 0;
      const b = mass[blocks] ?? 0;
      mean[blocks - 1] = (a * (mean[blocks - 1] ?? 0) + b * (mean[blocks] ?? 0)) / (a + b);
      mass[blocks - 1] = a + b;
      size[blocks - 1] = (size[blocks - 1] ?? 0) + (size[blocks] ?? 0);
      blocks -= 1;
    }
    blocks += 1;
  }

  // Cutting an isotonic fit off at both ends gives the best fit within those ends.
  const low = least ?? Number.NEGATIVE_INFINITY;
  const high = (most ?? Number.POSITIVE_INFINITY) - (shift[count - 1] ?? 0);
  const placed = new Float64Array(count);
  let i = 0;
  for (let block = 0; block < blocks; block += 1) {
    const at = Math.max(low, Math.min(high, mean[block] ?? 0));
    for (let k = 0; k < (size[block] ?? 0); k += 1, i += 1) placed[i] = at + (shift[i] ?? 0);
  }
  return placed;
}
