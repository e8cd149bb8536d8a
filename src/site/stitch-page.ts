/** The table of stitches -> the page that tells how each is made, what it is called in both terms, and its symbol. */

import { stitchPicture } from '../chart/stitch-picture.ts';
import { paintSvg } from '../paint/svg.ts';
import type { StitchFamily, StitchRow } from '../stitches/stitch-row.ts';
import { STITCHES } from '../stitches/table.ts';
import { fragment, linkTo, pagePlace, STITCHES_FOLDER } from './addresses.ts';
import type { StitchEntry, StitchPage } from './page-data.ts';

const FAMILIES: readonly (readonly [StitchFamily, string])[] = [
  ['start', 'Beginnings'],
  ['chain', 'Chains'],
  ['slip', 'Slip stitches'],
  ['basic', 'Plain stitches, from low to tall'],
  ['extended', 'Extended stitches'],
  ['foundation', 'Foundation stitches, made with their own chain'],
  ['post', 'Round the post'],
  ['together', 'Worked together'],
  ['gathered', 'Clusters, puffs, bobbles and popcorns'],
  ['linked', 'Linked stitches'],
  ['fancy', 'Others'],
];

/** As many legs as anyone needs to see: `dc2tog` and `dc3tog` say how `dc9tog` goes. Popcorns and bobbles mostly have five. */
const MOST_LEGS: Readonly<Partial<Record<StitchFamily, number>>> = { together: 3, gathered: 5 };

export function stitchPage(): StitchPage {
  const place = pagePlace([STITCHES_FOLDER]);
  return {
    ...place,
    title: 'Crochet stitches – how each is made, in US and UK terms',
    description:
      'How crochet stitches are made, what each is called in US and in UK terms, and its chart symbol.',
    trail: [{ text: 'Patterns', href: linkTo(place, []), current: false }],
    canonical: null,
    families: FAMILIES.map(([family, heading]) => ({
      id: fragment(heading),
      heading,
      stitches: STITCHES.filter((row) => row.family === family && isShown(row)).map(entry),
    })).filter(({ stitches }) => stitches.length > 0),
  };
}

function isShown(row: StitchRow): boolean {
  return (row.legs ?? row.uses) <= (MOST_LEGS[row.family] ?? row.uses);
}

function entry(row: StitchRow): StitchEntry {
  return {
    id: row.id,
    us: row.us,
    uk: row.uk,
    // The picture says nothing that its name does not, so it is left out of what is read aloud.
    svg: paintSvg(stitchPicture(row), { idPrefix: `symbol-${row.id}` }),
    how: row.how,
    height: row.family === 'basic' ? heightWords(row.heightChains) : null,
  };
}

function heightWords(chains: number): string {
  return `As tall as ${chains === 1 ? '1 chain' : `${chains} chains`}.`;
}
