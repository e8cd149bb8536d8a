import { fork } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { FuzzReport } from './fuzz-lines.ts';

/** Once in a while `ROWFOLD_LONG=1 npx vitest run … fuzz` goes on for longer. */
const LONG = process.env.ROWFOLD_LONG !== undefined;
const EDITS = LONG ? 200_000 : 3_000;

/** A line takes a few milliseconds; one that is not done after this long never will be. */
const STUCK_AFTER_MS = 30_000;

test(`${EDITS} random edits of the trade's lines are read to their end, none with a crash`, {
  timeout: LONG ? 7_200_000 : 300_000,
}, async () => {
  // The process ends of itself after the last edit; the line it stopped at is then none.
  expect(await run(1, EDITS)).toEqual({ done: EDITS, troubles: [], at: '' });
});

/** The edits are worked in a process of their own, so that a line without end can be stopped and told. */
function run(seed: number, edits: number): Promise<FuzzReport> {
  return new Promise((resolve, reject) => {
    const child = fork(join(import.meta.dirname, 'fuzz-lines.ts'), [String(seed), String(edits)], {
      execArgv: ['--import', 'tsx'],
    });
    let reached: FuzzReport = { done: 0, troubles: [], at: '' };
    const stop = (): void => {
      child.kill('SIGKILL');
      reject(new Error(`never came to an end: ${reached.at}`));
    };
    let watch = setTimeout(stop, STUCK_AFTER_MS);
    child.on('message', (report: FuzzReport) => {
      reached = report;
      clearTimeout(watch);
      watch = setTimeout(stop, STUCK_AFTER_MS);
    });
    child.on('error', reject);
    child.on('exit', (code) => {
      clearTimeout(watch);
      if (code === 0) resolve(reached);
      else reject(new Error(`the process ended with ${code} at: ${reached.at}`));
    });
  });
}
