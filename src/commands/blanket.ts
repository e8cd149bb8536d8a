/** `blanket`: an along and what one maker chooses of it -> squares, yarn by colour, size and seams of her blanket. */

import { arrange } from '../along/arrange.ts';
import type { BlanketFigures } from '../along/figures.ts';
import { LIES, leastAcross } from '../along/lies.ts';
import { type BlanketPlan, defaultMake, planBlanket, type Wish } from '../along/plan-blanket.ts';
import { borderLines, hexagonSeamLines, sizeLine } from '../along/plan-lines.ts';
import { nearest } from '../diagnostics/nearest.ts';
import { alongsAt } from '../site/along-site.ts';
import { readAlongs } from '../site/read-alongs.ts';
import { AS_OF_FLAGS, readAsOf } from './as-of.ts';
import { tellFaults } from './tell-faults.ts';
import type { Verb } from './verb.ts';

/** More places than these are no blanket. */
const MOST_PLACES = 60;

export const blanket: Verb = {
  name: 'blanket',
  takes: 'PATH [--across N] [--down N] [--make LIST] [--as-of TIME] [--preview] [--json]',
  about: 'squares or hexagons, yarn by colour, size and seams of a blanket from an along',
  least: 1,
  most: 1,
  flags: [
    { name: 'across', value: 'N', about: 'squares or hexagons across (as the along has it)' },
    { name: 'down', value: 'N', about: 'squares or rows of hexagons down (as the along has it)' },
    { name: 'make', value: 'LIST', about: 'how many of which, as in "reed-square 6, long-reed 3"' },
    ...AS_OF_FLAGS,
    { name: 'json', value: null, about: 'the figures as JSON, for other programs' },
  ],
  teaches: `Plans a blanket from the squares or hexagons of an along that are out, as its planner page does.

  npm run -s rowfold -- blanket alongs/my-along
  npm run -s rowfold -- blanket alongs/my-along --across 5 --down 6 --make "reed-square 20, long-reed 5"

Without --make it takes the first choice of every week. Squares are named by their folders. It ends with 1 when the
squares do not fill the places.`,
  run: async ({ paths: [path = ''], flags, values }, terminal) => {
    const asked = readAsOf({ flags, values });
    if (asked.kind === 'wrong') {
      terminal.tell(asked.message);
      return 2;
    }
    const [along, more] = await readAlongs(path);
    if (along === undefined || more !== undefined) {
      terminal.tell(`blanket takes one along: name the folder with its along.yaml.`);
      return 2;
    }
    const { sites, faults } = alongsAt([along], asked.asOf);
    tellFaults(faults, terminal);
    const [site] = sites;
    if (site === undefined) return 1;
    const { figures } = site;
    const wish = readWish(values, figures);
    if (typeof wish === 'string') {
      terminal.tell(wish);
      return 2;
    }
    const plan = planBlanket(figures, wish);
    const { over } = arrange(figures, { ...wish, apart: false });
    terminal.say(
      flags.has('json') ? JSON.stringify({ ...wish, ...plan }, null, 2) : told(figures, wish, plan),
    );
    const filled = plan.filled === plan.places && over === 0;
    if (!filled) terminal.tell(fillWords(plan, over, LIES[figures.lie].pieces));
    return filled ? 0 : 1;
  },
};

/** What is wrong with the words, or what they wish for. */
function readWish(values: ReadonlyMap<string, string>, figures: BlanketFigures): Wish | string {
  const { pieces } = LIES[figures.lie];
  const least = { across: leastAcross(figures.lie), down: 1 };
  const side = (name: 'across' | 'down'): number | null => {
    const written = values.get(name);
    if (written === undefined) return figures[name];
    const n = Number(written);
    return /^\d+$/.test(written) && n >= least[name] && n <= MOST_PLACES ? n : null;
  };
  const [across, down] = [side('across'), side('down')];
  if (across === null || down === null)
    return least.across === 1
      ? `--across and --down take a whole number of ${pieces}, 1 to ${MOST_PLACES}.`
      : `--across takes ${least.across} to ${MOST_PLACES} ${pieces}, --down 1 to ${MOST_PLACES} rows.`;
  const written = values.get('make');
  if (written === undefined) return { across, down, make: defaultMake(figures) };
  const ids = figures.squares.map(({ id }) => id);
  const make: Record<string, number> = {};
  for (const entry of written.split(',').map((words) => words.trim())) {
    const found = /^([\w-]+)[\s=:]+(\d{1,4})$/.exec(entry);
    if (found === null)
      return `"${entry}" is not a ${LIES[figures.lie].piece} and a number. Write it like "${ids[0] ?? 'reed-square'} 6".`;
    const [, id = '', n = '0'] = found;
    if (!ids.includes(id)) {
      const near = nearest(id, ids);
      return `There is no ${LIES[figures.lie].piece} ${id} among those that are out.${near === null ? ` There are ${ids.join(', ')}.` : ` Did you mean ${near}?`}`;
    }
    make[id] = Number(n);
  }
  return { across, down, make };
}

function told(figures: BlanketFigures, { across, down, make }: Wish, plan: BlanketPlan): string {
  const squares = figures.squares
    .filter(({ id }) => (make[id] ?? 0) > 0)
    .map(({ id, title, week }) => `  ${String(make[id]).padStart(3)}  ${title} (week ${week})`);
  const { pieces } = LIES[figures.lie];
  const heads = ['', pieces, 'joining', 'border', 'all', 'balls'];
  const rows = plan.yarn.map((yarn) => [
    `${yarn.letter} ${yarn.colour}`,
    ...[yarn.squaresM, yarn.joiningM, yarn.borderM, yarn.allM].map((m) => `${m} m`),
    yarn.balls === null ? '' : String(yarn.balls),
  ]);
  const widths = heads.map((head, i) => Math.max(head.length, ...rows.map((row) => row[i]?.length ?? 0)));
  const table = [heads, ...rows].map((row) =>
    row
      .map((cell, i) => (i === 0 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
      .join('  ')
      .trimEnd(),
  );
  return [
    `${across} across and ${down} down: ${plan.filled} of ${plan.places} places filled, ${plan.squares} ${pieces}`,
    ...squares,
    '',
    ...table,
    '',
    sizeLine(plan),
    ...seamLines(plan),
    ...borderLines(plan, 'sts'),
  ].join('\n');
}

function seamLines(plan: BlanketPlan): string[] {
  if (plan.shape === 'hexagons') return hexagonSeamLines(plan, 'sts');
  const { seams, seamStitches } = plan;
  return [
    `Seams from side to side ${seams[0].count}, ${seamStitches[0]} sts each; from top to bottom ${seams[1].count}, ${seamStitches[1]} sts each`,
  ];
}

function fillWords({ places, filled }: BlanketPlan, over: number, pieces: string): string {
  if (filled < places) return `${places - filled} places are empty.`;
  if (filled > places) return `There are ${pieces} for ${filled - places} places too many.`;
  return `${over} of them find no room beside one another: one that covers two places needs two in one row.`;
}
