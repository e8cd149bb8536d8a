/** Balls listed against the yarn a size takes: the estimate of `measure/yarn-use.ts`, tails and a tenth included. */

import { diagnose } from '../diagnostics/catalogue.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { ALLOWANCE } from '../measure/yarn-figures.ts';
import { listedBalls } from '../measure/yarn-use.ts';
import type { Yarn } from '../pattern/pattern.ts';
import { type Publication, placeOf } from './publication.ts';
import { usedNames, WHICHEVER } from './used-names.ts';

/** One fault a yarn: of the size that is short by most. */
export function tooLittleYarn({ pattern, sizes }: Publication): Diagnostic[] {
  // Where the rows leave it open which yarn comes when, all of them together have to do.
  const open = usedNames(pattern).yarns.has(WHICHEVER);
  if (open && sizes.every(({ index, measures }) => togetherEnough(pattern.yarns, index, measures))) return [];
  return pattern.yarns.flatMap((yarn) => {
    const short = shortest(yarn, sizes);
    if (short === null) return [];
    const several = pattern.sizes.length > 1;
    const size = pattern.sizes[short.index]?.name ?? '';
    const where = {
      file: pattern.source.file,
      span: placeOf(pattern, `yarn.${yarn.letter}.balls`, `yarn.${yarn.letter}`),
      sizes: several ? [size] : [],
    };
    const facts = {
      letter: yarn.letter,
      listed: `${short.balls} ${short.balls === 1 ? 'ball is' : 'balls are'}`,
      listedM: Math.round(short.listedM),
      neededM: Math.ceil(short.neededM),
      size: several ? size : null,
    };
    return [diagnose('yarn/too-little', where, facts)];
  });
}

function togetherEnough(
  yarns: readonly Yarn[],
  index: number,
  { yarn: used }: Publication['sizes'][number]['measures'],
): boolean {
  const listed = yarns.reduce(
    (sum, yarn) => sum + (listedBalls(yarn, index) ?? 0) * (yarn.ballLengthM ?? 0),
    0,
  );
  // What is kept in hand of each is for its own leftovers: of all together it cannot be told who has them.
  return used.reduce((sum, { lengthM }) => sum + lengthM, 0) / ALLOWANCE <= listed;
}

interface Short {
  readonly index: number;
  readonly balls: number;
  readonly listedM: number;
  readonly neededM: number;
}

function shortest(yarn: Yarn, sizes: Publication['sizes']): Short | null {
  let worst: Short | null = null;
  if (yarn.balls === null || yarn.ballLengthM === null) return null;
  for (const { index, measures } of sizes) {
    const balls = listedBalls(yarn, index);
    const neededM = measures.yarn.find(({ letter }) => letter === yarn.letter)?.lengthM;
    if (balls === null || neededM === undefined) continue;
    const listedM = balls * yarn.ballLengthM;
    if (neededM <= listedM) continue;
    if (worst === null || neededM - listedM > worst.neededM - worst.listedM)
      worst = { index, balls, listedM, neededM };
  }
  return worst;
}
