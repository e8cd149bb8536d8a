/** `check`: pattern files -> every fault with its place, why it matters and what to try. */

import type { CompiledPattern } from '../compiled.ts';
import { compilePatterns, hasErrors } from '../site/compile-patterns.ts';
import { type AlongOnDisk, alongFaults, alongsBeside, readAlongs } from '../site/read-alongs.ts';
import { readPatterns } from '../site/read-patterns.ts';
import { explainJson } from './explain-json.ts';
import { explainTable } from './explain-table.ts';
import { widthsText } from './explain-widths.ts';
import { faultJson, faultText } from './tell-faults.ts';
import type { Verb } from './verb.ts';

export const check: Verb = {
  name: 'check',
  takes: '[PATH…] [--explain] [--json]',
  about: 'every fault with its place, why it matters, what to try',
  least: 0,
  most: Number.POSITIVE_INFINITY,
  flags: [
    { name: 'explain', value: null, about: 'how each row comes to its number, before the faults' },
    { name: 'json', value: null, about: 'the faults as JSON, for other programs' },
  ],
  teaches: `Reads each pattern, works every stitch of every size, and says where the counts do not agree.

  npm run -s rowfold -- check                       every pattern under patterns/, every along under alongs/
  npm run -s rowfold -- check patterns/my-square    one pattern, by its folder or its file
  npm run -s rowfold -- check pasted.txt            instructions as pasted, faults in their own lines
  npm run -s rowfold -- check alongs/my-along       a crochet-along: its dates, its patterns, and whether all squares fit

A fault is shown with its file, line and column, then why it matters and one thing to try. An error makes the
work wrong and ends the command with 1. A warning is something a reader may stumble over, a note is worth
knowing; with warnings and notes alone it ends with 0.

  npm run -s rowfold -- check patterns/my-square --explain

lays out, for each size, what every row takes of the row below it, what it skips or leaves unworked, what it
makes, and how it comes to that:

  Row 2  12 sts  25 sts skipped  37 sts  ch 3 is 1, 2 in the first sc, (1 + 5) x 5 = 30, 1 in the next dc,
                                           3 in the last sc: 37 sts
                                         the repeat uses 6, 5 times = 30; the ends use 1 + 6: 37

"(1 + 5) x 5" is a repeat worked five times that makes 1 and 5 each time. A row that cannot be worked is laid
out as far as it goes, with what stopped it. At the end it says over which other foundations each flat part comes
out, and by how much repeated rounds grow, and whether that is proved for every width or only tried.`,
  run: async ({ paths, flags }, terminal) => {
    const { alongs, patterns } = await toCheck(paths);
    const files = compilePatterns(await readPatterns(patterns));
    const told = [...files, ...alongs.map(alongFaults)];
    const explain = flags.has('explain');
    if (flags.has('json')) {
      const explained = explain ? { explained: explainJson(files) } : {};
      terminal.say(JSON.stringify({ ...faultJson(told), ...explained }, null, 2));
      return hasErrors(told) ? 1 : 0;
    }
    if (explain) for (const { compiled } of files) terminal.say(explained(compiled, terminal.width));
    terminal.say(`${faultText(told, terminal.colour)} ${checked(files.length, alongs.length)}`);
    return hasErrors(told) ? 1 : 0;
  },
};

/** Each size of a pattern, under its title. */
function explained(compiled: CompiledPattern, width: number): string {
  const { pattern, slug, sizes } = compiled;
  const tables = sizes.map((size) => explainTable(size, pattern?.terms ?? 'US', width, sizes.length > 1));
  const widths = widthsText(compiled, width);
  return `${[pattern?.title ?? slug, ...tables, ...(widths === null ? [] : [widths])].join('\n\n')}\n`;
}

function checked(patterns: number, alongs: number): string {
  const ofPatterns = patterns === 1 ? '1 pattern' : `${patterns} patterns`;
  const ofAlongs = alongs === 0 ? '' : alongs === 1 ? ' and 1 along' : ` and ${alongs} alongs`;
  return `${ofPatterns}${ofAlongs} checked.`;
}

/** Alongs are checked with the patterns in their folders. */
async function toCheck(
  paths: readonly string[],
): Promise<{ readonly alongs: readonly AlongOnDisk[]; readonly patterns: readonly string[] }> {
  const given = paths.length === 0 ? ['patterns', alongsBeside('patterns')] : paths;
  const found = await Promise.all(given.map(async (one) => ({ one, alongs: await readAlongs(one) })));
  const patterns = found.flatMap(({ one, alongs }) => {
    if (alongs.length > 0) return alongs.map(({ folder }) => folder);
    // Where nothing was asked for by name there need be no alongs.
    return paths.length === 0 && one !== 'patterns' ? [] : [one];
  });
  return { alongs: found.flatMap(({ alongs }) => alongs), patterns };
}
