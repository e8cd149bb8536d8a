/**
 * A fabric and the width of its stitches in, the yarn each colour takes out: an estimate, held against what the designer
 * knows of her own where she says it (`yarn-scale.ts`).
 *
 * One maker's measured strips took 10.6 in of yarn for each inch of a row of single crochet, so a stitch takes 10.6
 * times its width; other stitches stand to it as the stitch table has it. A colour has a tail at each start and end,
 * and all is raised by a tenth, the allowance commonly made. A colour that rests for no more than two rows is taken to
 * be carried up, without new tails, unless it is fastened off. What joins the pieces is added (`joining.ts`).
 */

import { type Fabric, type FabricRow, FLAG } from '../fabric/fabric.ts';
import type { Pattern, Yarn } from '../pattern/pattern.ts';
import { stitchById } from '../stitches/table.ts';
import { mFromMm } from '../units.ts';
import { joiningYarn } from './joining.ts';
import type { ScaleOf, YarnUse } from './measures.ts';
import { pieceOf } from './piece-measures.ts';
import { inBalls } from './put-up.ts';
import { timesMade } from './times-made.ts';
import { ALLOWANCE, HANDS, TAIL_MM, YARN_PER_SC_WIDTH } from './yarn-figures.ts';

const ROWS_CARRIED = 2;

/** What a colour takes by the figures, in all the pieces made. */
export interface ReckonedYarn {
  readonly stitchesM: number;
  readonly tailsM: number;
  /** To join the pieces. */
  readonly joiningM: number;
}

/** By letter, in order. */
export function reckonYarn(
  pattern: Pattern,
  fabric: Fabric,
  stitchMm: number,
): ReadonlyMap<string, ReckonedYarn> {
  const lengthsMm = stitchLengths(pattern, fabric, stitchMm);
  const starts = startsOf(pattern, fabric);
  const joining = joiningYarn(pattern, pieceOf(pattern, fabric));
  const letters = [
    ...new Set([...lengthsMm.keys(), ...starts.keys(), ...(joining === null ? [] : [joining.letter])]),
  ].sort((a, b) => (a < b ? -1 : 1));
  return new Map(
    letters.map((letter) => [
      letter,
      {
        stitchesM: mFromMm(lengthsMm.get(letter) ?? 0),
        tailsM: mFromMm((starts.get(letter) ?? 0) * 2 * TAIL_MM),
        joiningM: joining?.letter === letter ? joining.lengthM : 0,
      },
    ]),
  );
}

export function yarnUse(
  pattern: Pattern,
  fabric: Fabric,
  reckoned: ReadonlyMap<string, ReckonedYarn>,
  scaleOf: ScaleOf,
): YarnUse[] {
  return [...reckoned].map(([letter, { stitchesM, tailsM, joiningM }]) => {
    const { factor, basis, from } = scaleOf(letter, fabric.size);
    const lengthM = (stitchesM + tailsM + joiningM) * factor * ALLOWANCE;
    return {
      letter,
      lengthM,
      ...(joiningM > 0 ? { joiningM: joiningM * factor * ALLOWANCE } : {}),
      basis,
      scaledFrom: from,
      rangeM: basis === 'figures' ? { least: lengthM * HANDS.least, most: lengthM * HANDS.most } : null,
      ...toBuy(letter, lengthM, pattern, fabric.size),
    };
  });
}

/** Balls that the designer lists for a size; null where she lists none. */
export function listedBalls(yarn: Yarn, sizeIndex: number): number | null {
  if (yarn.balls === null) return null;
  return (yarn.balls.length === 1 ? yarn.balls[0] : yarn.balls[sizeIndex]) ?? null;
}

function stitchLengths(pattern: Pattern, fabric: Fabric, stitchMm: number): Map<string, number> {
  const makes = timesMade(pattern, fabric);
  const perKind = fabric.stitches.map((id) => stitchById(id).yarnInSc * YARN_PER_SC_WIDTH * stitchMm);
  const byYarn = fabric.yarns.map(() => 0);
  for (let i = 0; i < fabric.count; i += 1) {
    const yarn = fabric.yarn[i] ?? 0;
    const make = makes[fabric.rows[fabric.row[i] ?? 0]?.part ?? 0] ?? 1;
    byYarn[yarn] = (byYarn[yarn] ?? 0) + (perKind[fabric.kind[i] ?? 0] ?? 0) * make;
  }
  const lengths = new Map<string, number>();
  for (const [yarn, lengthMm] of byYarn.entries())
    if (lengthMm > 0) lengths.set(letterOf(yarn, fabric, pattern), lengthMm);
  return lengths;
}

/** How often each colour is begun anew, in all the pieces made. */
function startsOf(pattern: Pattern, fabric: Fabric): ReadonlyMap<string, number> {
  const starts = new Map<string, number>();
  const makes = timesMade(pattern, fabric);
  const lastRow = new Map<string, number>();
  const cutIn = new Set<string>();
  for (const [index, row] of fabric.rows.entries()) {
    for (const yarn of yarnsIn(fabric, row.first, row.end)) {
      const letter = letterOf(yarn, fabric, pattern);
      const key = `${row.part} ${letter}`;
      const before = lastRow.get(key);
      if (before === undefined || index - before - 1 > ROWS_CARRIED || cutIn.has(key))
        starts.set(letter, (starts.get(letter) ?? 0) + (makes[row.part] ?? 1));
      lastRow.set(key, index);
      if (isCut(fabric, yarn, row)) cutIn.add(key);
      else cutIn.delete(key);
    }
  }
  return starts;
}

/** Whether a row's last stitch in a yarn is the last before that is fastened off. */
function isCut(fabric: Fabric, yarn: number, { first, end }: FabricRow): boolean {
  for (let i = end - 1; i >= first; i -= 1)
    if (fabric.yarn[i] === yarn) return ((fabric.flags[i] ?? 0) & FLAG.cut) !== 0;
  return false;
}

function yarnsIn(fabric: Fabric, first: number, end: number): ReadonlySet<number> {
  const yarns = new Set<number>();
  for (let i = first; i < end; i += 1) yarns.add(fabric.yarn[i] ?? 0);
  return yarns;
}

/** The letter as listed; a pattern with one yarn need not name it in its rows. */
function letterOf(yarn: number, fabric: Fabric, pattern: Pattern): string {
  const letter = fabric.yarns[yarn] ?? '';
  const [only, ...others] = pattern.yarns;
  return only !== undefined && others.length === 0 ? only.letter : letter;
}

/** The designer's own number of balls stands where there is one: she has weighed hers. */
function toBuy(
  letter: string,
  lengthM: number,
  { yarns, sizes }: Pattern,
  size: string,
): Pick<YarnUse, 'balls' | 'massG'> {
  const yarn = yarns.find((one) => one.letter === letter);
  const { ballLengthM = null, ballMassG = null } = yarn ?? {};
  const sizeIndex = sizes.findIndex(({ name }) => name === size);
  const listed = yarn === undefined ? null : listedBalls(yarn, sizeIndex);
  if (ballLengthM === null) return { balls: listed, massG: null };
  const { balls, massG } = inBalls(lengthM, { lengthM: ballLengthM, massG: ballMassG });
  return { balls: listed ?? balls, massG };
}
