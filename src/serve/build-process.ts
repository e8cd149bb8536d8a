/** A process of its own, which builds the site each time it is told to, so that whoever is served never waits for it. */

import { buildSite } from '../site/build-site.ts';
import { type BuildOrder, type BuildReport, tellable } from './build-words.ts';

const report = (words: BuildReport): void => void process.send?.(words);

/** Of one folder, which is the same for as long as the process lives. */
const madeBefore = new Map<string, string>();

process.on('message', async (order: BuildOrder) => {
  try {
    const result = await buildSite({
      ...order,
      asOf: () => Date.now(),
      madeBefore,
      progress: (words) => report({ kind: 'progress', words }),
    });
    report({ kind: 'done', result: tellable(result) });
  } catch (fault) {
    report({ kind: 'failed', why: String(fault) });
  }
});
// It ends with the server, which is interrupted by the same keys.
process.on('SIGINT', () => undefined);
process.on('disconnect', () => process.exit());
