/** `serve`: builds the site, serves it to this computer only, and builds again whenever a file changes. */

import { progressOf } from './progress.ts';
import type { Verb } from './verb.ts';

const DEFAULT_PORT = 8080;

export const serve: Verb = {
  name: 'serve',
  takes: '[--port N] [--patterns DIR] [--out DIR]',
  about: 'your desk: faults beside the text, rows, sizes, chart and booklet, as you write; and the site',
  least: 0,
  most: 0,
  flags: [
    { name: 'port', value: 'N', about: `the port to serve on (${DEFAULT_PORT}, or the next one free)` },
    { name: 'patterns', value: 'DIR', about: 'where the patterns are (patterns)' },
    { name: 'out', value: 'DIR', about: 'where the site goes (_site)' },
  ],
  teaches: `Shows your pattern in your browser while you write it: your desk, and the whole site.

  npm run -s rowfold -- serve
  npm run -s rowfold -- serve --port 9000

Open the address of your desk. It has the text of a pattern with what is wrong beside the very lines, how each row
comes to its number, all sizes side by side, chart, words and booklet. Save the file in any editor, or write in the
page: all of it is new by itself. Instructions pasted there become a pattern file.

The site is built after that, and its pages load again by themselves. When a pattern has an error they stay as they
were, with a word above them. Only this computer can see desk and site, and the desk is never published.
Ctrl-C ends it.`,
  run: async ({ values }, terminal) => {
    const port = Number(values.get('port') ?? DEFAULT_PORT);
    if (!Number.isInteger(port) || port < 1 || port > 65_535) {
      terminal.tell(`--port takes a whole number from 1 to 65535, not ${values.get('port')}.`);
      return 2;
    }
    const { serveSite } = await import('../serve/serve-site.ts');
    const progress = progressOf(terminal);
    return serveSite({
      port,
      patterns: values.get('patterns') ?? 'patterns',
      out: values.get('out') ?? '_site',
      say: terminal.say,
      progress: progress.at,
      built: progress.done,
    });
  },
};
