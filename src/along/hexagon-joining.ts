/** A planned blanket of hexagons -> how it is joined: within the rows first, then row to row in zigzag, as lines to print. */

import type { JoiningWords } from './joining.ts';
import { LIES } from './lies.ts';
import type { HexagonsPlan } from './plan-blanket.ts';
import type { PublicAlong } from './release.ts';
import { SEAMS, seamAbbreviation } from './seams.ts';

export function hexagonJoining(
  { joining, match, border }: PublicAlong,
  { lie, rows, seams, seamStitches, edges, yarn, border: planned }: HexagonsPlan,
  terms: 'US' | 'UK',
): JoiningWords {
  const seam = SEAMS[joining.method];
  const abbr = seamAbbreviation(joining.method, terms);
  const sc = terms === 'US' ? 'sc' : 'dc';
  const [each, zigzag] = seamStitches;
  const through =
    seam.yarn.kind === 'sewn'
      ? `take each of the ${match.stitches} stitches of one hexagon together with the one across from it, and the corners as well: ${each} to an edge`
      : `work 1 ${seamAbbreviation(joining.method, terms, true)} through both corners, ${match.stitches} along the edge, stitch to stitch, and 1 through the next two corners: ${each} to an edge`;
  const joiningM = yarn.find(({ letter }) => letter === joining.colour)?.joiningM ?? 0;
  const count = seams[0].count + seams[1].count;
  const stitches = seams[0].stitches + seams[1].stitches;
  const [first] = planned.rounds;
  return {
    before: [
      `Block every hexagon to one measure. Lay them out right side up as they are to lie, each with an upright edge at its left and at its right: ${layWords(lie, rows)}`,
      `With ${joining.colour}, join with ${terms === 'US' ? seam.us : seam.uk}. ${seam.how('two hexagons')}`,
      `Along each edge, ${through}.`,
      ...(seams[0].count > 0
        ? ['First join the hexagons of every row to one another. Each of these seams is one edge long.']
        : []),
      ...(seams[1].count > 0
        ? [
            'Then join the rows to one another, each in one zigzag from side to side: go on to the next edge without cutting the yarn, turning the work at each corner.',
          ]
        : []),
    ],
    seams: [
      ...rows.flatMap((n, y) =>
        n < 2
          ? []
          : [
              {
                label: `Row ${y + 1}`,
                text: `${n} hexagons side by side: ${n === 2 ? '1 seam' : `${n - 1} seams of ${each} ${abbr} each`}.`,
                count: `${(n - 1) * each} ${abbr}`,
              },
            ],
      ),
      ...rows.slice(1).map((_, y) => ({
        label: `Rows ${y + 1} and ${y + 2}`,
        text: `from side to side in zigzag: ${zigzag / each === 1 ? '1 edge' : `${zigzag / each} edges`}.`,
        count: `${zigzag} ${abbr}`,
      })),
    ],
    after: [
      ...(seams[0].count > 0 && seams[1].count > 0
        ? ['Where a zigzag meets the end of a seam within a row, go over it without a stitch.']
        : []),
      ...(count > 0
        ? [
            `${count === 1 ? 'The seam comes' : `All ${count} seams come`} to ${stitches} ${abbr} and ${count === 1 ? 'takes' : 'take'} about ${joiningM} m of ${joining.colour}, tails and a tenth more included.`,
          ]
        : []),
      `The border, in ${border.colour}, begins at the topmost corner of the last hexagon at the right of the top row, with three stitches in that corner itself, and goes to the left. In its first round, work 3 ${sc} in the corner space of each of the ${edges.outer} outer corners, where one hexagon stands out, and 1 ${sc} in each of the ${match.stitches} stitches of each of the ${edges.free} free edges.${innerWords(edges.inner, sc)} That is ${first?.stitches ?? 0} ${sc} in all.`,
      ...(planned.rounds.length > 1
        ? [
            `After that, rounds with even numbers take in at the inner corners and rounds with odd numbers widen at the outer ones: by turns, about as much as corners of this shape take.`,
          ]
        : []),
    ],
  };
}

/** `8 rows of 7, every second one half a hexagon further to the right.` */
function layWords(lie: HexagonsPlan['lie'], rows: readonly number[]): string {
  const [top = 0, second] = rows;
  if (second === undefined) return `one row of ${top}.`;
  const [odd, even] = [everySecond(1, rows.length), everySecond(2, rows.length)];
  return LIES[lie].fewer === 0
    ? `${rows.length} rows of ${top}, ${even} half a hexagon further to the right.`
    : `${rows.length} rows, ${top} in ${odd} and ${second} in ${even}, half a hexagon in at either end.`;
}

/** `row 2`, `rows 2 and 4`, `rows 2, 4 and so on`. */
function everySecond(first: number, down: number): string {
  if (first + 2 > down) return `row ${first}`;
  return first + 4 > down ? `rows ${first} and ${first + 2}` : `rows ${first}, ${first + 2} and so on`;
}

function innerWords(inner: number, sc: string): string {
  if (inner === 0) return '';
  const where = inner === 1 ? 'At the inner corner' : `At each of the ${inner} inner corners`;
  return ` ${where}, where two hexagons meet, work 2 ${sc} together over the corner spaces on either side of the seam.`;
}
