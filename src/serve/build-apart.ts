/** Builds of the site, made in a process of their own and told of as they go on. */

import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { BuildResult } from '../site/build-site.ts';
import { clearStarted } from '../site/swap-folder.ts';
import type { BuildOrder, BuildReport } from './build-words.ts';

export interface Builder {
  /** One at a time. */
  readonly build: (order: BuildOrder, progress: (words: string) => void) => Promise<BuildResult>;
  /** Also in the middle of a build, of which nothing is left. */
  readonly end: () => Promise<void>;
}

const PROCESS = fileURLToPath(new URL('build-process.ts', import.meta.url));

/** `out` is the folder that every order publishes into. */
export function startBuilder(out: string): Builder {
  let child: ChildProcess | null = null;
  return {
    build: (order, progress) =>
      new Promise((resolve) => {
        // One that was ended from outside is started anew.
        if (child?.connected !== true)
          child = fork(PROCESS, {
            execArgv: ['--import', import.meta.resolve('tsx')],
            stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
          });
        const builder = child;
        const finish = (result: BuildResult): void => {
          builder.off('message', hear).off('exit', ended);
          resolve(result);
        };
        const hear = (report: BuildReport): void => {
          if (report.kind === 'progress') progress(report.words);
          else finish(report.kind === 'done' ? report.result : { kind: 'stopped', why: report.why });
        };
        const ended = (code: number | null, signal: string | null): void =>
          finish({ kind: 'stopped', why: `the building of it ended by itself (${signal ?? code})` });
        builder.on('message', hear).once('exit', ended);
        builder.send(order);
      }),
    end: async () => {
      const builder = child;
      child = null;
      if (builder === null || !builder.connected) return;
      // Nobody waits any more for what it would have said.
      builder.removeAllListeners('message').removeAllListeners('exit');
      // It may be far into something large, and would hear nothing that is said to it.
      builder.kill('SIGKILL');
      await once(builder, 'exit');
      if (builder.pid !== undefined) await clearStarted(out, builder.pid);
    },
  };
}
