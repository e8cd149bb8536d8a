/** A stitch described hook by hook in, the stitch of the table it comes to out: `(yo, insert hook …) 3 times in same st, …`. */

import type { Terms } from '../stitches/stitch-row.ts';
import { findStitch, STITCHES } from '../stitches/table.ts';

/**
 * Legs begun in one place and drawn together (a cluster), tall loops drawn together (a puff), or whole stitches drawn
 * together (a popcorn), each said to count as 1. Null when the words are any other, or their numbers do not agree.
 */
export function hookedStitch(text: string, terms: Terms): string | null {
  const words = text
    .toLowerCase()
    .replace(/\b(?:yrh|yarn over|yarn round hook|wrap the yarn)\b/g, 'yo')
    .replace(/\b(?:loops?|lps)\b/g, 'lp')
    .replace(/\b(?:stitch|sp|space)\b/g, 'st')
    .replace(/\b(?:a|an|the|all|it|up|through all) (?=\S)/g, (found) =>
      found.startsWith('through') ? 'through ' : '',
    )
    .replace(/\s+/g, ' ')
    .trim();
  return cluster(words) ?? puff(words) ?? popcorn(words, terms);
}

const LEG =
  /^[([](yo(?: twice)?), insert hook in (?:same )?st, yo, pull (?:through )?lp, ((?:yo, draw through 2 lp(?:, | )?)+)[)\]]/;
const COUNTS_AS_ONE = '\\. counts as (?:1|one|a) st\\.?$';

/** Each leg is left with its last loop on the hook; n of them and the first loop are n + 1. */
function cluster(words: string): string | null {
  const leg = LEG.exec(words);
  const rest = leg === null ? null : closing(words.slice(leg[0].length));
  if (leg === null || rest === null || rest.drawn !== rest.n + 1) return null;
  const wraps = leg[1] === 'yo' ? 1 : 2;
  const draws = (leg[2] ?? '').split('draw').length - 1;
  if (draws !== wraps) return null;
  return known(`${wraps === 1 ? 'dc' : 'tr'}${rest.n}-cl`);
}

/** Each wrap and loop leave two on the hook; n of them and the first loop are 2n + 1. */
function puff(words: string): string | null {
  const loop = /^[([]yo, insert hook in (?:same )?st, yo, pull (?:through )?lp[)\]]/.exec(words);
  const rest = loop === null ? null : closing(words.slice(loop[0].length));
  return rest === null || rest.drawn !== 2 * rest.n + 1 ? null : known(`hdc${rest.n}-puff`);
}

/** ` 3 times in same st, yo, draw through 4 lp. counts as 1 st.` */
function closing(words: string): { readonly n: number; readonly drawn: number } | null {
  const found = new RegExp(`^ (\\d+) times in same st, yo, draw through (\\d+) lp${COUNTS_AS_ONE}`).exec(
    words,
  );
  return found === null ? null : { n: Number(found[1]), drawn: Number(found[2]) };
}

/** Whole stitches, the hook taken out, put through the first of them, and the dropped loop drawn through. */
function popcorn(words: string, terms: Terms): string | null {
  const found = new RegExp(
    `^(\\d+) ([a-z]+) in same st, (?:drop lp from hook|remove hook)(?: from lp)?, insert (?:hook )?in (?:top of )?first(?: of (\\d+))? ([a-z]+), draw dropped lp through${COUNTS_AS_ONE}`,
  ).exec(words);
  if (found === null || found[2] !== found[4] || (found[3] !== undefined && found[3] !== found[1]))
    return null;
  const leg = findStitch(found[2] ?? '', terms);
  return leg === null ? null : known(`${leg.id}${found[1]}-popcorn`);
}

function known(id: string): string | null {
  return STITCHES.some((row) => row.id === id) ? id : null;
}
