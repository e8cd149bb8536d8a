/** `build`: a folder of patterns -> the whole site, or the faults that keep it from being published. */

import { alongsBeside } from '../site/read-alongs.ts';
import { AS_OF_FLAGS, readAsOf } from './as-of.ts';
import { progressOf } from './progress.ts';
import { tellFaults } from './tell-faults.ts';
import type { Verb } from './verb.ts';

export const build: Verb = {
  name: 'build',
  takes: '[--patterns DIR] [--alongs DIR] [--out DIR] [--as-of TIME] [--preview]',
  about: 'the whole site, ready for any web host',
  least: 0,
  most: 0,
  flags: [
    { name: 'patterns', value: 'DIR', about: 'where the patterns are (patterns)' },
    { name: 'alongs', value: 'DIR', about: 'where the crochet-alongs are (alongs, beside the patterns)' },
    { name: 'out', value: 'DIR', about: 'where the site goes (_site)' },
    ...AS_OF_FLAGS,
  ],
  teaches: `Makes every page, chart and booklet and puts them into one folder, which any web host can serve.

  npm run -s rowfold -- build
  npm run -s rowfold -- build --patterns my-patterns --out public

When a pattern has an error nothing is published: the faults are told, and the site of the last good build
stays as it was. The folder is replaced whole by each build, so keep nothing else in it.

Which booklets the site offers is said in site.yaml beside the patterns; without it each size has one on A4 and one on
US Letter, in its pattern's own terms. rowfold booklet makes any other.

Of a crochet-along only what is due by now is published, and nothing of a later week is anywhere in the folder.

  npm run -s rowfold -- build --as-of 2026-11-07T09:00-04:00    what is due at that time
  npm run -s rowfold -- build --preview --out preview           every week, marked as preview on each page and sheet

When a week that is due has a pattern with an error, or one that does not fit, the rest is published without it, and
the command says so and ends with 1.`,
  run: async (given, terminal) => {
    const { values } = given;
    const began = performance.now();
    // Loaded when asked for: what writes PDFs takes longer to load than a pattern takes to check.
    const { buildSite } = await import('../site/build-site.ts');
    const out = values.get('out') ?? '_site';
    const asked = readAsOf(given);
    if (asked.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const patterns = values.get('patterns') ?? 'patterns';
    const progress = progressOf(terminal);
    const result = await buildSite({
      patterns,
      alongs: values.get('alongs') ?? alongsBeside(patterns),
      asOf: asked.asOf,
      out,
      progress: progress.at,
    });
    progress.done();
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
    const { patterns: read, sizes, pages, booklets, charts, alongs } = result.counts;
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    const made = [several(pages, 'page'), several(charts, 'chart'), several(booklets, 'booklet')].join(', ');
    const along = alongs === 0 ? '' : ` and ${several(alongs, 'crochet-along')}`;
    terminal.say(
      `${several(read, 'pattern')}${along} in ${several(sizes, 'size')}: ${made} in ${out}, ${seconds} s.`,
    );
    if (result.late.length === 0) return 0;
    tellFaults(result.late, terminal);
    terminal.tell('A week that is due is held back. The rest was published; mend it and build again.');
    return 1;
  },
};

function several(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? '' : 's'}`;
}
