/** Builds of the site, made in a process of their own and told of as they go on. */

import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { BuildResult } from '../site/build-site.ts';
import type { BuildOrder, BuildReport } from './build-words.ts';

export interface Builder {
  /** One at a time. */
  readonly build: (order: BuildOrder, progress: (words: string) => void) => Promise<BuildResult>;
  readonly end: () => void;
}

const PROCESS = fileURLToPath(new URL('build-process.ts', import.meta.url));

export function startBuilder(): Builder {
  let child: ChildProcess | null = null;
  return {
    build: (order, progress) =>
      new Promise((resolve) => {
        // One that was ended from outside is started anew.
        child ??= fork(PROCESS, {
          execArgv: ['--import', import.meta.resolve('tsx')],
          stdio: ['ignore', 'inherit', 'inherit', 'ipc'],
        });
        const builder = child;
        const finish = (result: BuildResult): void => {
          builder.removeAllListeners();
          resolve(result);
        };
        builder.on('message', (report: BuildReport) => {
          if (report.kind === 'progress') progress(report.words);
          else finish(report.kind === 'done' ? report.result : { kind: 'stopped', why: report.why });
        });
        builder.once('exit', (code, signal) => {
          child = null;
          finish({ kind: 'stopped', why: `the building of it ended by itself (${signal ?? code})` });
        });
        builder.send(order);
      }),
    end: () => {
      child?.disconnect();
      child = null;
    },
  };
}
