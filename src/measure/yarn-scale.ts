/**
 * What the designer knows of her own yarn in, how much more or less than the figures each colour of each size takes out.
 *
 * Best is what she used of the same colour for the same size; then for another size, so that both are held against their
 * own stitches and tails rather than against their areas; then of her other colours; then what her swatch took; and last
 * the figures as they are.
 */

import type { Fabric } from '../fabric/fabric.ts';
import type { Gauge, Pattern, UsedYarn } from '../pattern/pattern.ts';
import { findStitch } from '../stitches/table.ts';
import { mFromMm } from '../units.ts';
import type { ScaleOf, YarnScale } from './measures.ts';
import { stitchWidthMm } from './row-heights.ts';
import { rowWidths } from './row-widths.ts';
import { timesMade } from './times-made.ts';
import { YARN_PER_SC_WIDTH } from './yarn-figures.ts';
import { type ReckonedYarn, reckonYarn } from './yarn-use.ts';

const AS_RECKONED: YarnScale = { factor: 1, basis: 'figures', from: null };

/** For a piece whose pattern tells nothing of its yarn. */
export const byFigures: ScaleOf = () => AS_RECKONED;

/** `fabrics` are the pattern's sizes as far as they were worked. */
export function yarnScales(pattern: Pattern, fabrics: readonly Fabric[]): ScaleOf {
  const { gauge } = pattern;
  if (gauge === null) return byFigures;
  const stitchMm = stitchWidthMm(gauge);
  const reckoned = new Map(fabrics.map((fabric) => [fabric.size, reckonYarn(pattern, fabric, stitchMm)]));
  const known = pattern.yarns.flatMap(({ letter, used }) =>
    used.flatMap((use) => knownUse(letter, use, pattern, reckoned)),
  );
  const swatch = swatchFactor(pattern, gauge, fabrics[0], stitchMm);
  return (letter, size) => {
    const ofColour = known.filter((use) => use.letter === letter);
    const own = ofColour.find((use) => use.size === size);
    if (own !== undefined) return scaled([own], null);
    const others = ofColour.length > 0 ? ofColour : known;
    const [first] = others;
    if (first !== undefined) return scaled(others, first.size === size ? null : first.size);
    return swatch === null ? AS_RECKONED : { factor: swatch, basis: 'swatch', from: null };
  };
}

interface KnownUse {
  readonly letter: string;
  readonly size: string;
  readonly usedM: number;
  readonly reckonedM: number;
}

function knownUse(
  letter: string,
  { size, lengthM }: UsedYarn,
  { sizes }: Pattern,
  reckoned: ReadonlyMap<string, ReadonlyMap<string, ReckonedYarn>>,
): KnownUse[] {
  const [only, more] = sizes;
  const name = size ?? (more === undefined ? only?.name : undefined);
  const figures = name === undefined ? undefined : reckoned.get(name)?.get(letter);
  if (name === undefined || figures === undefined || lengthM === null) return [];
  const reckonedM = figures.stitchesM + figures.tailsM + figures.joiningM;
  return reckonedM > 0 ? [{ letter, size: name, usedM: lengthM, reckonedM }] : [];
}

function scaled(uses: readonly KnownUse[], from: string | null): YarnScale {
  const sum = (of: (use: KnownUse) => number): number => uses.reduce((all, use) => all + of(use), 0);
  return { factor: sum(({ usedM }) => usedM) / sum(({ reckonedM }) => reckonedM), basis: 'used', from };
}

/** What the swatch took against the figures for as many stitches; of a pattern, for as much of it as was swatched. */
function swatchFactor(
  pattern: Pattern,
  { tookM, stitches, rows, of }: Gauge,
  fabric: Fabric | undefined,
  stitchMm: number,
): number | null {
  if (tookM === null || rows === null || fabric === undefined) return null;
  const plain = of === null ? null : findStitch(of, pattern.terms);
  const stitchM =
    plain === null
      ? meanPerStitchM(pattern, fabric, stitchMm)
      : mFromMm(plain.yarnInSc * YARN_PER_SC_WIDTH * stitchMm);
  return stitchM > 0 ? tookM / (stitches * rows * stitchM) : null;
}

/** Chains, spaces and all, for one stitch's width of one row. */
function meanPerStitchM(pattern: Pattern, fabric: Fabric, stitchMm: number): number {
  const makes = timesMade(pattern, fabric);
  const widths = rowWidths(fabric);
  const places = fabric.rows.reduce(
    (sum, { unit, part }, row) => sum + (unit === null ? 0 : (widths[row] ?? 0) * (makes[part] ?? 1)),
    0,
  );
  const lengthM = [...reckonYarn(pattern, fabric, stitchMm).values()].reduce(
    (sum, { stitchesM }) => sum + stitchesM,
    0,
  );
  return places > 0 ? lengthM / places : 0;
}
