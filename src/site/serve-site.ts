/** Patterns and a port -> a site on this computer that is built again whenever a pattern or a layout changes. */

import { existsSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { answer, type Served } from './answer-request.ts';
import { type BuildResult, buildSite } from './build-site.ts';
import { faultPage } from './fault-page.ts';
import { alongsBeside } from './read-alongs.ts';
import { PROJECT_FOLDER } from './run-eleventy.ts';
import { watchFolders } from './watch-folders.ts';

export interface ServeSettings {
  readonly port: number;
  readonly patterns: string;
  readonly out: string;
  readonly say: (line: string) => void;
}

/** Ends with 0 when it is interrupted, and with 2 when it cannot begin. */
export async function serveSite({ port, patterns, out, say }: ServeSettings): Promise<0 | 2> {
  let served: Served = { folder: out, faults: null };
  const alongs = alongsBeside(patterns);
  const build = async (): Promise<BuildResult> => {
    const began = performance.now();
    const result = await buildSite({
      patterns,
      alongs,
      asOf: () => Date.now(),
      out,
      progress: () => undefined,
    });
    served = { folder: out, faults: result.kind === 'built' ? null : faultPage(result) };
    say(buildLine(result, performance.now() - began));
    return result;
  };

  const first = await build();
  if (first.kind === 'refused') return 2;
  const server = await listen(
    createServer((request, response) => void answer(request, response, served)),
    port,
  );
  say(`The site is at http://127.0.0.1:${(server.address() as AddressInfo).port}/ (Ctrl-C ends it)`);
  const stopWatching = watchFolders(
    [patterns, ...(existsSync(alongs) ? [alongs] : []), path.join(PROJECT_FOLDER, 'layouts')],
    async () => {
      await build();
    },
  );
  await interrupted();
  stopWatching();
  server.closeAllConnections();
  server.close();
  return 0;
}

function buildLine(result: BuildResult, ms: number): string {
  switch (result.kind) {
    case 'built':
      return [
        `Built ${result.counts.pages} pages in ${(ms / 1000).toFixed(1)} s.`,
        ...(result.late.length === 0
          ? []
          : ['A week that is due has faults and is held back: rowfold check tells them.']),
      ].join(' ');
    case 'faults':
      return 'There are faults in the patterns; the pages say which. The last good site stays as it was.';
    case 'stopped':
      return `The pages could not be set with these layouts: ${result.why}`;
    case 'settings':
      return `${result.why}.`;
    case 'refused':
      return `${result.why}. Name another folder with --out.`;
  }
}

/** Listens on this computer only, on the port or the next one that is free. */
async function listen(server: Server, wanted: number): Promise<Server> {
  for (let port = wanted; ; port++) {
    try {
      await new Promise<void>((resolve, reject) => {
        server.once('error', reject);
        server.listen(port, '127.0.0.1', () => {
          server.off('error', reject);
          resolve();
        });
      });
      return server;
    } catch (fault) {
      const taken = fault instanceof Error && 'code' in fault && fault.code === 'EADDRINUSE';
      if (!taken || port >= Math.min(wanted + 100, 65_535)) throw fault;
    }
  }
}

function interrupted(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', resolve);
    process.once('SIGTERM', resolve);
  });
}
