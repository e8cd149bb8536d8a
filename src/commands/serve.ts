/** `serve`: builds the site, serves it to this computer only, and builds again whenever a file changes. */

import type { Verb } from './verb.ts';

const DEFAULT_PORT = 8080;

export const serve: Verb = {
  name: 'serve',
  takes: '[--port N] [--patterns DIR] [--out DIR]',
  about: 'build, serve, rebuild on change, faults shown in the page',
  least: 0,
  most: 0,
  flags: [
    { name: 'port', value: 'N', about: `the port to serve on (${DEFAULT_PORT}, or the next one free)` },
    { name: 'patterns', value: 'DIR', about: 'where the patterns are (patterns)' },
    { name: 'out', value: 'DIR', about: 'where the site goes (_site)' },
  ],
  teaches: `Builds the site and shows it in your browser while you write.

  npm run -s rowfold -- serve
  npm run -s rowfold -- serve --port 9000

Open the address it prints. Save a pattern or a layout and load the page again: it is new. When a pattern has
an error the pages stay as they were, with the faults above them. Only this computer can see the site.
Ctrl-C ends it.`,
  run: async ({ values }, terminal) => {
    const port = Number(values.get('port') ?? DEFAULT_PORT);
    if (!Number.isInteger(port) || port < 1 || port > 65_535) {
      terminal.tell(`--port takes a whole number from 1 to 65535, not ${values.get('port')}.`);
      return 2;
    }
    const { serveSite } = await import('../site/serve-site.ts');
    return serveSite({
      port,
      patterns: values.get('patterns') ?? 'patterns',
      out: values.get('out') ?? '_site',
      say: terminal.say,
    });
  },
};
