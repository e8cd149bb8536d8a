/** Balls to buy as a pattern writes them in, one number for all sizes or one a size out: `2`, `2 (3, 3)`, `[2, 3, 3]`. */

const NUMBER = '\\d{1,4}(?:\\.5|½)?';

/** One number, or the trade's list of one for each size. */
export const BALLS_WRITTEN = new RegExp(
  `^\\s*${NUMBER}(?:\\s*[([]\\s*${NUMBER}(?:\\s*[,:]\\s*${NUMBER})*\\s*[)\\]])?\\s*$`,
);

export function readBalls(written: string | number | readonly number[]): readonly number[] {
  if (typeof written === 'number') return [written];
  if (typeof written !== 'string') return written;
  return [...written.matchAll(new RegExp(NUMBER, 'g'))].map(([number]) => Number(number.replace('½', '.5')));
}
