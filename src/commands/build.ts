/** `build`: a folder of patterns -> the whole site, or the faults that keep it from being published. */

import { tellFaults } from './tell-faults.ts';
import type { Verb } from './verb.ts';

export const build: Verb = {
  name: 'build',
  takes: '[--patterns DIR] [--out DIR]',
  about: 'the whole site, ready for any web host',
  least: 0,
  most: 0,
  flags: [
    { name: 'patterns', value: 'DIR', about: 'where the patterns are (patterns)' },
    { name: 'out', value: 'DIR', about: 'where the site goes (_site)' },
  ],
  teaches: `Makes every page, chart and booklet and puts them into one folder, which any web host can serve.

  npm run -s rowfold -- build
  npm run -s rowfold -- build --patterns my-patterns --out public

When a pattern has an error nothing is published: the faults are told, and the site of the last good build
stays as it was. The folder is replaced whole by each build, so keep nothing else in it.

Which booklets the site offers is said in site.yaml beside the patterns; without it each size has one on A4 and one on
US Letter, in its pattern's own terms. rowfold booklet makes any other.`,
  run: async ({ values }, terminal) => {
    const began = performance.now();
    // Loaded when asked for: what writes PDFs takes longer to load than a pattern takes to check.
    const { buildSite } = await import('../site/build-site.ts');
    const out = values.get('out') ?? '_site';
    const result = await buildSite({
      patterns: values.get('patterns') ?? 'patterns',
      out,
      progress: terminal.tell,
    });
    if (result.kind === 'refused') {
      terminal.tell(`${result.why}. Name another folder with --out.`);
      return 2;
    }
    if (result.kind === 'settings') {
      terminal.tell(`${result.why}.\nNothing was published.`);
      return 1;
    }
    if (result.kind === 'stopped') {
      terminal.tell(`The pages could not be set with these layouts: ${result.why}\nNothing was published.`);
      return 1;
    }
    tellFaults(result.files, terminal);
    if (result.kind === 'faults') {
      terminal.tell('Nothing was published; the last good site stays as it was.');
      return 1;
    }
    const { patterns, sizes, pages, booklets, charts } = result.counts;
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    const made = [several(pages, 'page'), several(charts, 'chart'), several(booklets, 'booklet')].join(', ');
    terminal.say(
      `${several(patterns, 'pattern')} in ${several(sizes, 'size')}: ${made} in ${out}, ${seconds} s.`,
    );
    return 0;
  },
};

function several(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? '' : 's'}`;
}
