/** A watch for work that is done over and over, and the lines that tell what it took. */

/**
 * Milliseconds of the processor's time that the work takes at its lower quartile: three passes of four take longer. What
 * other programs do to a shared machine, which is nothing of the work's own, weighs less there than in the middle.
 */
export function quartileMs(work: () => void, { warmMs = 3000, forMs = 3000 } = {}): number {
  passes(work, warmMs);
  const taken = passes(work, forMs).toSorted((a, b) => a - b);
  return taken[Math.floor(taken.length / 4)] ?? Number.NaN;
}

/** At least one pass, however long it takes. */
function passes(work: () => void, forMs: number): number[] {
  const taken: number[] = [];
  const began = performance.now();
  do {
    const start = process.cpuUsage();
    work();
    const { user, system } = process.cpuUsage(start);
    taken.push((user + system) / 1000);
  } while (performance.now() - began < forMs);
  return taken;
}

/** One heading and what was measured under it, each beside the first, which is the yardstick. */
export function tell(heading: string, measured: readonly (readonly [name: string, ms: number])[]): void {
  const yardstick = measured[0]?.[1] ?? Number.NaN;
  const lines = measured.map(
    ([name, ms], i) =>
      `  ${name}: ${ms.toFixed(2)} ms${i === 0 ? '' : `, ${(ms / yardstick).toFixed(1)} times the first`}`,
  );
  process.stdout.write(`${[heading, ...lines].join('\n')}\n`);
}
