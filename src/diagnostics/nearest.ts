/** A word and the words that would do in, the one most likely meant out, by edit distance. */

/** The nearest candidate, or null when none is near; of two as near, the one listed first. */
export function nearest(word: string, candidates: readonly string[]): string | null {
  const given = word.toLowerCase();
  let best: string | null = null;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const candidate of candidates) {
    const longer = Math.max(word.length, candidate.length);
    // A third of the letters may be wrong, and always one; but changing every letter gives any word at all.
    const likeness = Math.min(Math.max(1, Math.floor(longer / 3)), longer - 1);
    const limit = Math.min(likeness + 1, bestDistance);
    const distance = editDistance(given, candidate.toLowerCase(), limit);
    if (distance < limit) {
      best = candidate;
      bestDistance = distance;
    }
  }
  return best;
}

/**
 * Letters added, left out, changed, or two neighbours swapped, to turn one word into the other
 * (optimal string alignment). Anything of `limit` or more may be given as `limit`.
 */
export function editDistance(from: string, to: string, limit = Number.POSITIVE_INFINITY): number {
  const a = [...from];
  const b = [...to];
  if (Math.abs(a.length - b.length) >= limit) return limit;
  let twoBack: number[] = [];
  let previous = [0, ...b.map((_, index) => index + 1)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (previous[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const cheapest = Math.min(changed, (previous[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(swapped ? Math.min(cheapest, (twoBack[j - 2] ?? 0) + 1) : cheapest);
    }
    if (Math.min(...row) >= limit) return limit;
    twoBack = previous;
    previous = row;
  }
  return previous[b.length] ?? 0;
}
