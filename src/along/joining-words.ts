/** A planned blanket -> how it is joined, seam by seam with the stitches of each, as lines to print. */

import { hexagonJoining } from './hexagon-joining.ts';
import type { JoiningWords } from './joining.ts';
import type { BlanketPlan, SquaresPlan } from './plan-blanket.ts';
import type { PublicAlong } from './release.ts';
import { SEAMS, seamAbbreviation } from './seams.ts';

export function joiningWords(along: PublicAlong, plan: BlanketPlan, terms: 'US' | 'UK'): JoiningWords {
  return plan.shape === 'squares' ? squareJoining(along, plan, terms) : hexagonJoining(along, plan, terms);
}

function squareJoining(along: PublicAlong, plan: SquaresPlan, terms: 'US' | 'UK'): JoiningWords {
  const { joining, blanket, match, border } = along;
  const seam = SEAMS[joining.method];
  const sewn = seam.yarn.kind === 'sewn';
  const abbr = seamAbbreviation(joining.method, terms);
  const name = terms === 'US' ? seam.us : seam.uk;
  const { across, down } = blanket;
  const [sideways, upright] = plan.seamStitches;
  const each = match.stitches + 2;
  const through = sewn
    ? `take each of the ${match.stitches} stitches of one edge together with the one across from it, and the corners as well: ${each} to a square`
    : `work 1 ${seamAbbreviation(joining.method, terms, true)} through both corners, ${match.stitches} along the edge, stitch to stitch, and 1 through the next two corners: ${each} to a square`;
  const yarn = plan.yarn.find(({ letter }) => letter === joining.colour);
  const all = plan.seams[0].stitches + plan.seams[1].stitches;
  const count = plan.seams[0].count + plan.seams[1].count;
  return {
    before: [
      `Block every square to one measure. Lay them out right side up as they are to lie, ${across} across and ${down} down.`,
      `With ${joining.colour}, join with ${name}. ${seam.how('two rows of squares')}`,
      `Along each square, ${through}. Go on to the next square without cutting the yarn.`,
    ],
    seams: [
      ...Array.from({ length: down - 1 }, (_, i) => ({
        label: `Seam ${i + 1}`,
        text: `from side to side, rows ${i + 1} and ${i + 2} of squares from the top: ${across} squares.`,
        count: `${sideways} ${abbr}`,
      })),
      ...Array.from({ length: across - 1 }, (_, i) => ({
        label: `Seam ${down + i}`,
        text: `from top to bottom, columns ${i + 1} and ${i + 2} of squares from the right: ${down} squares.`,
        count: `${upright} ${abbr}`,
      })),
    ],
    after: [
      ...(across > 1 && down > 1
        ? ['Where a seam from top to bottom meets one from side to side, go over it without a stitch.']
        : []),
      `All ${count} seams come to ${all} ${abbr} and take about ${yarn?.joiningM ?? 0} m of ${joining.colour}, tails and a tenth more included.`,
      `The border, in ${border.colour}, begins at the top right-hand corner. In its first round work 1 ${terms === 'US' ? 'sc' : 'dc'} in the corner space on either side of each seam: ${match.stitches} to a square and 2 to a seam, ${plan.border.edge[0]} along the top and the bottom edge and ${plan.border.edge[1]} along each side.`,
    ],
  };
}
