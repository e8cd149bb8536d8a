/** What a row makes, counted from its stitches, and how that compares with what the pattern states. */

import { describeCounted } from '../notation/describe-counted.ts';
import { isThing, type StatedCount, type StatedEntry, type Thing } from '../notation/line.ts';
import { numberForSize } from '../notation/number-for-size.ts';
import type { What } from '../notation/tree.ts';
import type { Terms } from '../stitches/stitch-row.ts';
import { stitchById } from '../stitches/table.ts';
import type { Builder } from './builder.ts';
import { countedId, groupOf, hasFlag, kindId } from './builder.ts';
import {
  alongSides,
  beginsAs,
  countThing,
  endsLike,
  halvesOf,
  standApart,
  takesHalves,
} from './count-things.ts';
import { FLAG } from './fabric.ts';
import type { RowStretch } from './row-stretch.ts';
import { chainsAcross } from './site.ts';
import { plainName } from './special-name.ts';

export interface RowCount {
  readonly stitches: number;
  readonly spaces: number;
  readonly byStitch: Readonly<Record<string, number>>;
  /** Stitches that belong to no special stitch, by id. */
  readonly outside: Readonly<Record<string, number>>;
  readonly groups: Readonly<Record<string, number>>;
  readonly bySpace: Readonly<Record<number, number>>;
  readonly corners: number;
  /** Corners that are stitches, not spaces. */
  readonly cornerStitches: number;
  /** Chains that are neither a turning chain nor counted. */
  readonly chains: number;
  /** Where its stitches lie, for things that are told from how they stand. */
  readonly stretch: RowStretch;
}

/**
 * Counts the stitches from `first` to before `end`; `countedStart` is a foundation chain that counts as one of them.
 * `firstSpace` is the first of the row's spaces in the builder; `told` what is known of the row besides.
 */
export function countRow(
  builder: Builder,
  first: number,
  end: number,
  countedStart: number,
  firstSpace: number,
  row: number,
  told: Pick<RowStretch, 'passes' | 'number' | 'rows' | 'described'> = NOTHING_TOLD,
): RowCount {
  const byStitch: Record<string, number> = {};
  const outside: Record<string, number> = {};
  const groups: Record<string, number> = {};
  const bySpace: Record<number, number> = {};
  let stitches = 0;
  let corners = 0;
  let chains = 0;
  const count = (i: number): void => {
    const id = countedId(builder, i);
    if (id === null) return;
    stitches += 1;
    byStitch[id] = (byStitch[id] ?? 0) + 1;
    if ((groupOf(builder, i)?.special ?? null) === null) outside[id] = (outside[id] ?? 0) + 1;
    if (hasFlag(builder, i, FLAG.corner)) corners += 1;
  };
  if (countedStart >= 0) count(countedStart);
  const seen = new Set<object>();
  for (let i = first; i < end; i += 1) {
    count(i);
    if (
      kindId(builder, i) === 'ch' &&
      countedId(builder, i) === null &&
      !hasFlag(builder, i, FLAG.turningChain)
    )
      chains += 1;
    const group = groupOf(builder, i);
    if (group !== null && group.special !== null && !seen.has(group)) {
      seen.add(group);
      const name = plainName(group.special);
      groups[name] = (groups[name] ?? 0) + 1;
    }
  }
  const cornerStitches = corners;
  let spaces = 0;
  for (let s = firstSpace; s < builder.spaces.length; s += 1) {
    const space = builder.spaces[s];
    if (space === undefined || space.row !== row) continue;
    spaces += 1;
    const length = chainsAcross(builder, space);
    bySpace[length] = (bySpace[length] ?? 0) + 1;
    if (space.corner) corners += 1;
  }
  const stretch = { builder, first, end, countedStart, ...told };
  return { stitches, spaces, byStitch, outside, groups, bySpace, corners, cornerStitches, chains, stretch };
}

const NOTHING_TOLD = { passes: 0, number: null, rows: 1, described: () => null } as const;

export interface Difference {
  /** As a maker says it after a number: `dc`, `sts`, `ch-2 sps`. */
  readonly what: (n: number) => string;
  readonly stated: number;
  readonly made: number;
}

/** The entries of a stated count that the row does not make, for one size. What cannot be told is none of them. */
export function differences(
  stated: StatedCount,
  made: RowCount,
  sizeIndex: number,
  terms: Terms,
): Difference[] {
  const found: Difference[] = [];
  for (const entry of stated.entries) {
    const said = numberForSize(entry.n, sizeIndex);
    if (said === null) continue;
    const wrong = isThing(entry.what)
      ? thingDiffers(entry.what, made, said, entry.perSide === true)
      : differs({ ...entry, what: entry.what }, stated, made, said, sizeIndex);
    if (wrong === null) continue;
    found.push({ what: (n) => describeCounted(entry.what, n, terms), stated: said, made: wrong });
  }
  return found;
}

/** A thing that is made of several stitches. */
function isOfMany({ what }: StatedEntry): boolean {
  return what?.kind === 'together' || what?.kind === 'shape';
}

const ANY_GROUP: Thing = { kind: 'together', word: 'group', size: null, id: null };
const BLOCK = /\b(?:block|tile)$/i;

/** The words of a stated count that nothing in the row's stitches tells. */
export function notTold(stated: StatedCount, made: RowCount, sizeIndex: number): StatedEntry[] {
  return stated.entries.filter(({ n, what }) => {
    const said = numberForSize(n, sizeIndex);
    return said !== null && isThing(what) && countThing(what, made, said) === null;
  });
}

/** The entries that come out only if two halves are counted as one. */
export function countedByHalves(stated: StatedCount, made: RowCount, sizeIndex: number): StatedEntry[] {
  return stated.entries.filter(({ n, what }) => {
    const said = numberForSize(n, sizeIndex);
    const may = what?.kind === 'special' || what?.kind === 'shape';
    return said !== null && may && takesHalves(what, made, said);
  });
}

/** Along each side those at the corners may be counted or not. */
function thingDiffers(thing: Thing, made: RowCount, said: number, perSide: boolean): number | null {
  const sides = perSide ? Math.max(1, made.corners) : 1;
  const is = countThing(thing, made, said * sides);
  if (is === null || is === said * sides) return null;
  const inner = (said + 2) * sides;
  if (sides > 1 && countThing(thing, made, inner) === inner) return null;
  return is % sides === 0 ? is / sides : is;
}

/** How many there are of what an entry speaks of, where that is not what it says; null where it is right. */
function differs(
  entry: StatedEntry & { readonly what: What | null },
  stated: StatedCount,
  made: RowCount,
  said: number,
  sizeIndex: number,
): number | null {
  const { what } = entry;
  if (entry.sides !== undefined) return sidesDiffer(entry, stated, made, said, sizeIndex);
  const namesSpecial = stated.entries.some((other) => other.what?.kind === 'special');
  const is = madeOf(what, made);
  // Counted a side at a time; corners that stand as stitches of their own are in none of the sides.
  const sides = entry.perSide === true ? Math.max(1, made.corners) : 1;
  const between = said * sides + (sides > 1 ? made.cornerStitches : 0);
  if ((is === said * sides || is === between) && coversKind(entry, stated, made, sizeIndex)) return null;
  // A shape whose corners are no stitches or spaces of their own: it has three to eight sides.
  if (entry.perSide === true && made.corners === 0 && is % said === 0 && is / said >= 3 && is / said <= 8)
    return null;
  // `112 sc each side` of a flat piece, whose two sides are worked in one go.
  if (entry.perSide === true && is === said * 2 && alongSides(made.stretch)) return null;
  // `(8 V-sts, 2 tr)`: stitches inside a special stitch that is counted itself are not counted again.
  if (what?.kind === 'stitch' && namesSpecial && (made.outside[what.id] ?? 0) === said) return null;
  if (
    what?.kind === 'stitch' &&
    familySum(what.id, namesSpecial ? made.outside : made.byStitch) === said * sides
  )
    return null;
  // `10 groups, 2 sc`: so for those that stand in a group or shell which is counted.
  const apart = what?.kind === 'stitch' && stated.entries.some(isOfMany) ? standApart(what.id, made) : [];
  if (apart.includes(said)) return null;
  if (what?.kind === 'space' && what.chains !== null && is === spacesTold(stated, what.chains, sizeIndex))
    return null;
  if (what?.kind === 'space' && what.corner && what.chains === null && said === spacesLeft(stated, made))
    return null;
  // In mesh and the like some houses count a ch-1 that stands for a stitch: that is no mistake.
  if (isTotal(entry) && said === made.stitches + (made.bySpace[1] ?? 0)) return null;
  // Half a shell at either end makes one with the other: some houses count the two.
  if (what?.kind === 'special' && takesHalves(what, made, said)) return null;
  if (what?.kind === 'special' && said === is + 1 && beginsAs(what.name, made)) return null;
  // A block that begins the row may have the name, and those after it be written out.
  if (what?.kind === 'special' && BLOCK.test(what.name) && countThing({ kind: 'block' }, made, said) === said)
    return null;
  // A cluster that the text describes may be written out in its rows: `3 dc in ring`.
  const written = what?.kind === 'special' && is === 0 ? countThing(ANY_GROUP, made, said) : null;
  if (written !== null && written > 0) return written === said ? null : written;
  if (is === said && what?.kind === 'stitch') return otherwise(what.id, namesSpecial, made);
  const [alone = is] = apart;
  return Math.abs(alone - said) < Math.abs(is - said) ? alone : is;
}

/** `6 ch-5 points, 6 ch-5 sps`: all that are told of spaces of one length. */
function spacesTold({ entries }: StatedCount, chains: number | null, sizeIndex: number): number {
  let told = 0;
  for (const { what, n } of entries)
    if (what?.kind === 'space' && what.chains === chains) told += numberForSize(n, sizeIndex) ?? 0;
  return told;
}

/** `2 corner sps, 2 1-ch sps`: the spaces that are of none of the lengths told beside them. */
function spacesLeft({ entries }: StatedCount, made: RowCount): number {
  let left = made.spaces;
  for (const { what } of entries)
    if (what?.kind === 'space' && !what.corner && what.chains !== null)
      left -= made.bySpace[what.chains] ?? 0;
  return left;
}

/** Two short sides and two long ones are all there are, with the corners or without; null where they are. */
function sidesDiffer(
  entry: StatedEntry,
  stated: StatedCount,
  { stitches, cornerStitches }: RowCount,
  said: number,
  sizeIndex: number,
): number | null {
  const other = stated.entries.find(({ sides }) => sides !== undefined && sides !== entry.sides);
  const beside = other === undefined ? null : numberForSize(other.n, sizeIndex);
  // Told once, at the short sides; of one length alone nothing is known.
  if (beside === null || entry.sides === 'long') return null;
  const both = 2 * (said + beside);
  return both === stitches || both + cornerStitches === stitches ? null : stitches / 2 - beside;
}

/**
 * A kind of stitch that is told in number leaves none of its own out: where `28 dc` stands and no decrease is told of,
 * the row has no dc2tog beside them. Stitches within a special stitch that is told of may be told again if that makes
 * up the whole row.
 */
function coversKind(
  { what, n }: StatedEntry,
  { entries }: StatedCount,
  made: RowCount,
  sizeIndex: number,
): boolean {
  if (what?.kind !== 'stitch') return true;
  const told = new Set(entries.flatMap((entry) => (entry.what?.kind === 'stitch' ? [entry.what.id] : [])));
  const names = entries.some((entry) => entry.what?.kind === 'special');
  if (names) {
    const value = numberForSize(n, sizeIndex) ?? 0;
    if ((made.outside[what.id] ?? 0) === value) return true;
    let all = 0;
    for (const id of told) all += made.byStitch[id] ?? 0;
    return all === made.stitches;
  }
  return Object.keys(made.byStitch).every(
    (id) => id === what.id || told.has(id) || stitchById(id).legOf !== what.id,
  );
}

/** How many there are, where the number told is only a part of them or takes in what is told of elsewhere. */
function otherwise(id: string, namesSpecial: boolean, made: RowCount): number {
  return namesSpecial ? (made.outside[id] ?? 0) : familySum(id, made.byStitch);
}

/** Decreases are counted among the stitches they are made of: `(42 sc)` takes in the sc2tog. */
function familySum(id: string, counted: RowCount['byStitch']): number {
  let sum = 0;
  for (const [each, n] of Object.entries(counted)) if (stitchById(each).legOf === id) sum += n;
  return sum;
}

/** How many stitches a stated count leaves to work into, where it says so without spaces; null otherwise. */
export function statedStitches(stated: StatedCount | null, sizeIndex: number): number | null {
  if (stated === null) return null;
  let sum: number | null = null;
  for (const entry of stated.entries) {
    const value = numberForSize(entry.n, sizeIndex);
    if (value === null) return null;
    // A side is a share of what there is in all.
    if (entry.perSide === true || entry.sides !== undefined) continue;
    if (isTotal(entry)) return value;
    // How a row is shaped says nothing of how many there are.
    if (SAYS_NOTHING.has(entry.what?.kind ?? '')) continue;
    if (entry.what?.kind !== 'stitch') return null;
    sum = (sum ?? 0) + value;
  }
  return sum;
}

/** Things that are no stitches to work into. */
const SAYS_NOTHING: ReadonlySet<string> = new Set(['shaping', 'picot', 'rows']);

/** A count as written with the numbers of one size: `37 (49, 61) sts`, `37/49/61 sts` -> `49 sts`. */
export function forOneSize({ text, entries }: StatedCount, sizeIndex: number): string {
  let said = text;
  for (const { n } of entries) {
    if (n.values.length < 2) continue;
    const each = n.values.map((value) => (value === null ? '-' : String(value)));
    const list = new RegExp(`${each.join('\\s*[,:/([]\\s*')}(?:\\s*[)\\]])?`);
    said = said.replace(list, each[sizeIndex] ?? '-');
  }
  return said;
}

function isTotal(entry: StatedEntry): boolean {
  return entry.what === null || entry.what.kind === 'st';
}

/** By its name; a half shell that the row never names by its ends as they are written out, `3 ch, 2 tr in first dc`. */
function specialsOf(name: string, made: RowCount): number {
  const named = made.groups[plainName(name)] ?? 0;
  const whole = HALF.exec(name)?.[1];
  if (whole === undefined || named > 0) return named;
  const own = made.stretch.described(name);
  return own === null ? halvesOf(whole, made) : endsLike(own, made);
}

const HALF = /^half[ -](.+)$/i;

function madeOf(what: What | null, made: RowCount): number {
  if (what === null) return made.stitches;
  switch (what.kind) {
    case 'st':
      return made.stitches;
    case 'stitch':
      return made.byStitch[what.id] ?? 0;
    case 'special':
      return specialsOf(what.name, made);
    case 'ch':
      return made.chains;
    case 'space':
      // A house may call every space of a round a corner, whatever made it one.
      return what.corner && what.chains === null
        ? made.corners || made.spaces
        : what.chains === null
          ? made.spaces
          : (made.bySpace[what.chains] ?? 0);
    case 'corner':
      return made.corners;
    case 'any-of':
      return what.of.reduce((sum, each) => sum + madeOf(each, made), 0);
    case 'group':
    case 'marked':
    case 'row-end':
      return 0;
  }
}
