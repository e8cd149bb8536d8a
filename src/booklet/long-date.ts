/** An ISO date in, the date as each country's readers write it out: `24 November 2026`, `November 24, 2026`. */

import type { Terms } from '../stitches/stitch-row.ts';

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);

export function longDate(iso: string, terms: Terms): string {
  const found = /^(\d{4})-(\d{2})-(\d{2})/.exec(iso);
  const month = MONTHS[Number(found?.[2] ?? 0) - 1];
  if (!found || !month) return iso;
  const day = Number(found[3]);
  return terms === 'US' ? `${month} ${day}, ${found[1]}` : `${day} ${month} ${found[1]}`;
}
