/** What only a count speaks of in, how many of it the stitches of a row make out: groups, squares, blocks, petals. */

import type { Thing } from '../notation/line.ts';
import { stitchById } from '../stitches/table.ts';
import type { Builder } from './builder.ts';
import { countedId, firstTarget, groupOf, hasFlag, kindId } from './builder.ts';
import { countGathered } from './count-gathered.ts';
import type { Group } from './fabric.ts';
import { FLAG, INTO } from './fabric.ts';
import type { RowStretch } from './row-stretch.ts';
import { footOf } from './site.ts';
import { plainName } from './special-name.ts';

interface Counted {
  readonly stitches: number;
  readonly spaces: number;
  readonly bySpace: Readonly<Record<number, number>>;
  readonly groups: Readonly<Record<string, number>>;
  readonly stretch: RowStretch;
}

/** Null where the stitches do not tell; of two ways to count, the one that was meant. */
export function countThing(thing: Thing, made: Counted, said: number): number | null {
  switch (thing.kind) {
    case 'together':
      return countTogether(thing, made.stretch, said);
    case 'shaping':
      return countShaping(thing.does, made.stretch, said);
    case 'square':
      return countSquares(thing.filled, made, said);
    case 'block':
      return countBlocks(made, said);
    case 'picot':
      return countPicots(made.stretch, said);
    case 'gathered':
      return countGathered(thing.word, made.stretch, said);
    case 'half':
      return halvesOf(thing.special, made);
    case 'rows':
      return countRows(made.stretch, said);
    case 'shape':
      return countShapes(thing.word, made, said);
    case 'of-yarn':
      return countOfYarn(thing.yarn, made.stretch);
    case 'named':
      return null;
  }
}

function countOfYarn(yarn: string, { builder, first, end, countedStart }: RowStretch): number {
  const index = builder.yarns.indexOf(yarn);
  let made = countedStart >= 0 && builder.yarn[countedStart] === index ? 1 : 0;
  for (let i = first; i < end; i += 1)
    if (builder.yarn[i] === index && countedId(builder, i) !== null) made += 1;
  return made;
}

/** Of all rows so far and those of the line, the number that is nearer to what is said. */
function countRows({ number, rows }: RowStretch, said: number): number | null {
  if (number === null) return rows > 1 ? rows : null;
  if (rows === 1) return number;
  return Math.abs(said - rows) < Math.abs(said - number) ? rows : number;
}

/** Whether all the stitches of a row go into the ends of rows. */
export function alongSides({ builder, first, end }: RowStretch): boolean {
  for (let i = first; i < end; i += 1)
    if (countedId(builder, i) !== null && builder.where[i] !== INTO.rowEnd) return false;
  return true;
}

/** Counted stitches one after the other, no chain between them, in one place. */
interface Run {
  readonly foot: number;
  readonly ids: readonly string[];
  readonly group: Group | null;
}

function runsOf({ builder, first, end, countedStart }: RowStretch): Run[] {
  const runs: { foot: number; ids: string[]; group: Group | null }[] = [];
  let parted = true;
  for (let i = countedStart >= 0 ? countedStart : first; i < end; i = i < first ? first : i + 1) {
    const id = countedId(builder, i);
    if (id === null) {
      if (parts(builder, i)) parted = true;
      continue;
    }
    const last = runs[runs.length - 1];
    const foot = footOf(builder, i, first);
    if (!parted && last !== undefined && last.foot === foot && foot >= 0) last.ids.push(id);
    else runs.push({ foot, ids: [id], group: groupOf(builder, i) });
    parted = false;
  }
  return runs;
}

/** Chains that stand between stitches, not the ones a row rises by; and slip stitches between blocks. */
function parts(builder: Builder, i: number): boolean {
  return !hasFlag(builder, i, FLAG.turningChain) && kindId(builder, i) !== 'mr';
}

function countTogether(
  { word, size, id, half }: Extract<Thing, { kind: 'together' }>,
  stretch: RowStretch,
  said: number,
): number {
  let found = half === true ? edgesOf(runsOf(stretch), size ?? 0, id) : 0;
  for (const { ids } of runsOf(stretch)) {
    const right = size === null ? ids.length >= 2 : ids.length === size;
    if (right && ids.every((each) => id === null || each === id)) found += 1;
    else if (word === 'cluster' || size === null)
      found += ids.filter((each) => isGathered(each, size, id)).length;
  }
  if (size !== null || found === said) return found;
  // `10 groups` of (sc, ch 1, dc).
  const brackets = bracketsOf(stretch).size;
  return brackets > 0 && Math.abs(brackets - said) <= Math.abs(found - said) ? brackets : found;
}

/** Ends of the row where an edge stitch and what stands beside it in one place come to so many. */
function edgesOf(runs: readonly Run[], size: number, id: string | null): number {
  if (size < 2 || runs.length < 4) return 0;
  const ends = [
    [runs[0], runs[1]],
    [runs.at(-1), runs.at(-2)],
  ];
  return ends.filter(
    ([edge, beside]) =>
      edge?.ids.length === 1 &&
      beside?.ids.length === size - 1 &&
      [...edge.ids, ...beside.ids].every((each) => id === null || each === id),
  ).length;
}

function isGathered(each: string, size: number | null, id: string | null): boolean {
  const row = stitchById(each);
  const legs = row.legs ?? row.uses;
  return legs > 1 && (size === null || legs === size) && (id === null || row.legOf === id);
}

/** An increase may be counted by its places or by the stitches gained, a decrease by its stitches or by those lost. */
function countShaping(does: 'inc' | 'dec', stretch: RowStretch, said: number): number {
  const more = runsOf(stretch).flatMap(({ ids }) =>
    does === 'inc' ? [ids.length - 1] : ids.map((id) => stitchById(id).uses - 1),
  );
  const places = more.filter((n) => n > 0).length;
  const stitches = more.reduce((sum, n) => sum + Math.max(0, n), 0);
  return stitches === said ? stitches : places;
}

/** Stitches between one chain space and the next, from edge to edge. */
function stretchesBetween({ stretch, spaces }: Counted): number[] {
  const { builder, first, end, countedStart } = stretch;
  const lengths: number[] = [];
  let length = countedStart >= 0 ? 1 : 0;
  for (let i = first; i < end; i += 1) {
    const counted = countedId(builder, i) !== null;
    if (counted) length += 1;
    else if (kindId(builder, i) === 'ch' && parts(builder, i) && length > 0) {
      lengths.push(length);
      length = 0;
    }
  }
  if (length > 0) lengths.push(length);
  // A space made of chains skipped before the first stitch lies behind the one of them that counts.
  const [start, ...rest] = lengths;
  if (countedStart >= 0 && start !== undefined && start > 1 && spaces === lengths.length)
    return [1, start - 1, ...rest];
  return lengths;
}

/** A square of a net is a space, or as many stitches between two posts as a space has chains. */
function countSquares(filled: boolean | null, made: Counted, said: number): number | null {
  const lengths = Object.keys(made.bySpace).map(Number);
  const [chains, another] = lengths;
  if (another !== undefined) return filled === false ? made.spaces : null;
  if (chains === undefined) {
    if (filled === false) return 0;
    const each = (made.stitches - 1) / said;
    // With no space in the row its squares may be any the trade makes, 1 to 3 chains wide.
    return each >= 2 && each <= 4 && Number.isInteger(each) ? said : Math.floor((made.stitches - 1) / 3);
  }
  const solid = stretchesBetween(made).map((length) => Math.floor((length - 1) / (chains + 1)));
  const all = solid.reduce((sum, n) => sum + n, 0);
  const inner = solid.slice(1, -1).reduce((sum, n) => sum + n, 0);
  const open = filled === true ? 0 : made.spaces;
  if (filled === false) return open;
  // Stitches along both edges may be a border and no squares.
  return said === open + inner ? said : open + all;
}

/** From corner to corner a block is a few stitches between chains; in a net it is a solid square. */
function countBlocks(made: Counted, said: number): number | null {
  const { builder, first, end } = made.stretch;
  const lengths: number[] = [];
  let length = 0;
  let slips = false;
  for (let i = first; i <= end; i += 1) {
    const kind = i < end ? kindId(builder, i) : 'ch';
    if (kind === 'sl-st' && !hasFlag(builder, i, FLAG.join)) slips = true;
    if (kind !== 'ch' && kind !== 'sl-st') length += 1;
    else if (length > 0) {
      lengths.push(length);
      length = 0;
    }
  }
  if (!slips && lengths.length !== 1) return countSquares(true, made, said);
  const usual = mostCommon(lengths);
  return lengths.filter((each) => each === usual && each > 1).length;
}

function mostCommon(numbers: readonly number[]): number {
  const times = new Map<number, number>();
  for (const n of numbers) times.set(n, (times.get(n) ?? 0) + 1);
  const often = (n: number): number => times.get(n) ?? 0;
  return numbers.reduce((best, n) => (often(n) > often(best) ? n : best), numbers[0] ?? 0);
}

/** Chains closed where they began; where none are, loops of chains may be what is meant. */
function countPicots({ builder, first, end }: RowStretch, said: number): number {
  let closed = 0;
  let loops = 0;
  let from = -1;
  for (let i = first; i < end; i += 1) {
    if (kindId(builder, i) === 'ch') {
      if (!hasFlag(builder, i, FLAG.turningChain) && from < 0) from = i;
      continue;
    }
    if (from > first && i - from >= 2) {
      loops += 1;
      const target = firstTarget(builder, i);
      const foot = firstTarget(builder, from - 1);
      const closes = target >= from - 1 || (kindId(builder, i) === 'sl-st' && target >= 0 && target === foot);
      if (closes && !hasFlag(builder, i, FLAG.join)) closed += 1;
    }
    from = -1;
  }
  return closed === 0 && loops === said ? loops : closed;
}

/** Halves of a special stitch at the ends of the row: 3 dc in one place where the whole has 5. */
export function halvesOf(name: string, { stretch }: Counted): number {
  const runs = runsOf(stretch);
  const whole = wholeOf(name, stretch) ?? usualRun(runs)?.ids ?? [];
  const [first] = runs;
  const last = runs.length > 1 ? runs[runs.length - 1] : undefined;
  return [first, last].filter((run) => run !== undefined && isHalf(run, whole)).length;
}

/** How many ends of the row are made of just these stitches in one place. */
export function endsLike(ids: readonly string[], { stretch }: Counted): number {
  const runs = runsOf(stretch);
  const ends = runs.length > 1 ? [runs[0], runs.at(-1)] : runs;
  return ends.filter((run) => run?.ids.length === ids.length && run.ids.every((id, i) => id === ids[i]))
    .length;
}

/**
 * Whether a row begins with just what a special stitch is made of, its first stitch the turning chain: `ch 3, 2 dc in
 * same st` for a half shell of 3 dc.
 */
export function beginsAs(name: string, { stretch }: Counted): boolean {
  const { builder, first, end } = stretch;
  let at = first;
  while (at < end && countedId(builder, at) === null) at += 1;
  const whole = groupNamed(name, stretch);
  if (at === end || whole === undefined || kindId(builder, at) !== 'ch' || groupOf(builder, at)?.special)
    return false;
  const made = makeUp(builder, whole.first, whole.end, whole.first);
  const begun = makeUp(builder, at, end, first).slice(0, made.length);
  const feet = new Set(begun.flatMap(({ id, foot }) => (id === 'ch' ? [] : [foot])));
  const alike =
    made.length > 1 && begun.length === made.length && made.every(({ id }, i) => id === begun[i]?.id);
  return alike && feet.size === 1;
}

/** Counted stitches and the chains between them, one after the other. */
function makeUp(
  builder: Builder,
  from: number,
  end: number,
  rowFirst: number,
): { readonly id: string; readonly foot: number }[] {
  const made: { id: string; foot: number }[] = [];
  for (let i = from; i < end; i += 1) {
    const id = countedId(builder, i);
    const between = kindId(builder, i) === 'ch' && !hasFlag(builder, i, FLAG.turningChain);
    if (id !== null || between) made.push({ id: id ?? 'ch', foot: footOf(builder, i, rowFirst) });
  }
  return made;
}

function groupNamed(name: string, { builder }: RowStretch): Group | undefined {
  return builder.groups.find(({ special }) => special !== null && plainName(special) === plainName(name));
}

/** The stitches of a special stitch of the pattern; null where it describes none of that name. */
function wholeOf(name: string, stretch: RowStretch): readonly string[] | null {
  const { builder } = stretch;
  const whole = groupNamed(name, stretch);
  if (whole === undefined) return null;
  const ids: string[] = [];
  for (let i = whole.first; i < whole.end; i += 1) {
    const id = countedId(builder, i);
    if (id !== null) ids.push(id);
  }
  return ids;
}

function isHalf({ ids, group }: Run, whole: readonly string[]): boolean {
  const half = Math.floor(whole.length / 2);
  const size = ids.length === half || ids.length === half + 1;
  const plain = group === null || group.special === null;
  return plain && whole.length > 2 && size && ids.every((id) => id === whole[0]);
}

/** Of three stitches and more in one place, those there are most of; of as many, the wider ones. */
function usualRun(runs: readonly Run[]): Run | undefined {
  const wide = runs.filter(({ ids, group }) => ids.length >= 3 && (group?.special ?? null) === null);
  const byLength = new Map<number, number>();
  for (const { ids } of wide) byLength.set(ids.length, (byLength.get(ids.length) ?? 0) + 1);
  const often = ({ ids }: Run): number => byLength.get(ids.length) ?? 0;
  return wide.reduce<Run | undefined>((best, run) => {
    if (best === undefined) return run;
    const more = often(run) - often(best);
    return more > 0 || (more === 0 && run.ids.length > best.ids.length) ? run : best;
  }, undefined);
}

function spreadsOf(runs: readonly Run[]): number {
  const usual = usualRun(runs);
  return usual === undefined ? 0 : runs.filter(({ ids }) => ids.length === usual.ids.length).length;
}

/** Whether a count comes out only if half a shell at either end makes one with the other. */
export function takesHalves(
  what: Thing | { kind: 'special'; name: string },
  made: Counted,
  said: number,
): boolean {
  if (what.kind === 'special')
    return said === groupsOf(what.name, made) + 1 && halvesOf(what.name, made) === 2;
  if (what.kind !== 'shape' || !SPREADS.test(what.word)) return false;
  return said === spreadsOf(runsOf(made.stretch)) + 1 && halvesOf(what.word, made) === 2;
}

function groupsOf(name: string, { groups }: Counted): number {
  return groups[plainName(name)] ?? 0;
}

/** Words for stitches that spread out of one place, bracketed or not. */
const SPREADS = /^(?:shell|fan|scallop)s?$/;

/** Told where all stitches stand in brackets into one place or spread from one, or where the repeats come to as many. */
function countShapes(word: string, made: Counted, said: number): number | null {
  const { stretch } = made;
  const { builder, first, end, passes } = stretch;
  const brackets = bracketsOf(stretch).size;
  const runs = runsOf(stretch);
  const spread = spreadsOf(runs);
  if (said === brackets || said === passes || said === spread) return said;
  if (said === spread + 1 && halvesOf(word, made) === 2) return said;
  if (SPREADS.test(word) && spread > 0) return spread;
  let outside = 0;
  for (let i = first; i < end; i += 1)
    if (countedId(builder, i) !== null && kindId(builder, i) !== 'sl-st' && !isBracket(groupOf(builder, i)))
      outside += 1;
  return brackets === 0 || outside > 0 || brackets % said === 0 ? null : brackets;
}

function isBracket(group: Group | null): group is Group {
  return group !== null && group.special === null;
}

function bracketsOf({ builder, first, end }: RowStretch): Set<Group> {
  const brackets = new Set<Group>();
  for (let i = first; i < end; i += 1) {
    const group = groupOf(builder, i);
    if (isBracket(group)) brackets.add(group);
  }
  return brackets;
}

/** How many of a kind stand apart from brackets, or from what spreads out of one place, with its halves and without. */
export function standApart(id: string, { stretch }: Counted): number[] {
  const { builder, first, end, countedStart } = stretch;
  let unbracketed = countedStart >= 0 && countedId(builder, countedStart) === id ? 1 : 0;
  for (let i = first; i < end; i += 1)
    if (countedId(builder, i) === id && !isBracket(groupOf(builder, i))) unbracketed += 1;
  const found = bracketsOf(stretch).size === 0 ? [] : [unbracketed];
  const runs = runsOf(stretch);
  const usual = usualRun(runs)?.ids;
  if (usual === undefined) return found;
  const of = (ids: readonly string[]): number => ids.filter((each) => each === id).length;
  const beside = runs.filter(({ ids }) => ids.length !== usual.length);
  const apart = beside.reduce((sum, { ids }) => sum + of(ids), 0);
  const halves = beside.filter((run) => isHalf(run, usual)).reduce((sum, { ids }) => sum + of(ids), 0);
  return [...found, apart, apart - halves];
}
