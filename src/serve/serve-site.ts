/** Patterns and a port -> the designer's desk and the site on this computer; both are new whenever a pattern or a layout changes. */

import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { DESK_ADDRESS } from '../desk/desk-view.ts';
import type { BuildResult } from '../site/build-site.ts';
import { PROJECT_FOLDER } from '../site/project-folder.ts';
import { alongsBeside } from '../site/read-alongs.ts';
import { whyNotReplace } from '../site/swap-folder.ts';
import { openDesk } from './answer-desk.ts';
import { answer, type Served } from './answer-request.ts';
import { startBuilder } from './build-apart.ts';
import { deskAssets } from './desk-assets.ts';
import { faultPage } from './fault-page.ts';
import { watchFolders } from './watch-folders.ts';

export interface ServeSettings {
  readonly port: number;
  readonly patterns: string;
  readonly out: string;
  readonly say: (line: string) => void;
  /** Told what a build is at; `built` ends a line that goes forward. */
  readonly progress: (words: string) => void;
  readonly built: () => void;
}

/** Editors save in several steps: the desk is told when they have been quiet for the first, the site is built after the second. */
const DESK_QUIET_MS = 40;
const BUILD_QUIET_MS = 300;

/** Ends with 0 when it is interrupted, and with 2 when it cannot begin. */
export async function serveSite(settings: ServeSettings): Promise<0 | 2> {
  const { port, patterns, out, say, progress, built } = settings;
  const why = whyNotReplace(out);
  if (why !== null) {
    say(buildLine({ kind: 'refused', why }, 0));
    return 2;
  }
  const alongs = alongsBeside(patterns);
  const desk = openDesk({ patterns, alongs });
  const builder = startBuilder(out);
  let served: Omit<Served, 'news'> = { folder: out, faults: null, waiting: true };
  const build = async (): Promise<void> => {
    const began = performance.now();
    const result = await builder.build({ patterns, alongs, out }, progress);
    served = { folder: out, faults: result.kind === 'built' ? null : faultPage(result), waiting: false };
    desk.hear(result);
    built();
    desk.news.tell('built');
    say(buildLine(result, performance.now() - began));
  };

  const server = await listen(
    createServer((request, response) => {
      void answer(request, response, { ...served, news: desk.news.stamp() }, desk);
    }),
    port,
  );
  // Made while she opens her browser.
  void deskAssets();
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  say(`Your desk is at ${address}${DESK_ADDRESS} (Ctrl-C ends it)`);
  const sources = [patterns, alongs];
  const stopTelling = watchFolders(sources, DESK_QUIET_MS, async () => desk.news.tell('saved'));
  const ended = interrupted();
  const stopBuilding = watchFolders(
    [...sources, path.join(PROJECT_FOLDER, 'layouts')],
    BUILD_QUIET_MS,
    build,
    // What was changed while the site was built for the first time is built as well.
    async () => {
      await build();
      say(`The site is at ${address}/`);
    },
  );
  await ended;
  stopTelling();
  stopBuilding();
  await builder.end();
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
      return 'There are faults in the patterns; the desk says which. The last good site stays as it was.';
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
