/**
 * A worked part in, the same part worked over fewer repeats or fewer rows out, for a chart with a window of what repeats
 * instead of every stitch. Each row is held against the one of the whole work: it has to be that row with so many like
 * blocks taken out, and the rows left out have to be worked just as those that are drawn.
 */

import { type ChartOptions, chartParts } from './chart/chart-parts.ts';
import { type Fold, foldWords } from './chart/fold.ts';
import type { FoldedChart, PartChart } from './chart/part-chart.ts';
import { type Fabric, targets } from './fabric/fabric.ts';
import { type SizePlan, type Worked, workSize } from './fabric/work.ts';
import type { Line } from './notation/line.ts';
import type { RepeatRowsStep } from './notation/tree.ts';
import { partRepeats } from './part-repeats.ts';
import type { Part, Pattern } from './pattern/pattern.ts';
import type { PartMultiple } from './proof/part-multiple.ts';
import { type RowWord, rowWords } from './proof/row-word.ts';
import { foundationOf, overChains } from './proof/trial.ts';
import type { Scene, Shape } from './scene/scene.ts';

export interface FoldedPart {
  readonly fabric: Fabric;
  readonly fold: Fold;
}

export interface WholePart {
  readonly pattern: Pattern;
  readonly sizeIndex: number;
  readonly plan: SizePlan;
  readonly worked: Worked;
  readonly multiples: readonly PartMultiple[];
}

/** A window shows no fewer foundation chains than this, so that its bracket has room for its words… */
const LEAST_WINDOW_CHAINS = 8;
/** …and no more than this. */
const WIDEST_WINDOW_CHAINS = 48;
/** Rows are left out only where it saves more than this many. */
const LEAST_ROWS_LEFT_OUT = 6;

/** Folded across, then up, then both: what there is of them. Only of a piece that nothing is worked onto. */
export function foldings(whole: WholePart, name: string): FoldedPart[] {
  const { pattern, worked } = whole;
  const index = pattern.parts.findIndex((part) => part.name === name);
  const part = pattern.parts[index];
  if (part === undefined || pattern.parts.some(({ onto }) => onto === name)) return [];
  if (!worked.whole || worked.fabric.parts[index]?.shape !== 'flat') return [];
  const up = upFold(whole, part, index);
  const across =
    acrossFolds(whole, part, index).find(
      (each) => folded(whole, part, index, { across: each, up: null }) !== null,
    ) ?? null;
  const wanted: Wanted[] = [
    ...(across === null ? [] : [{ across, up: null }]),
    ...(up === null ? [] : [{ across: null, up }]),
    ...(across === null || up === null ? [] : [{ across, up }]),
  ];
  return wanted.flatMap((each) => folded(whole, part, index, each) ?? []);
}

/** Charts with their foldings beside them, drawn when they are first asked for: most charts fit their paper whole. */
export function withFoldings(
  charts: readonly Omit<PartChart, 'folded'>[],
  options: ChartOptions,
  foldingsOf: (part: string) => readonly FoldedPart[],
): PartChart[] {
  return charts.map(({ part, scene }) => {
    let drawn: readonly FoldedChart[] | null = null;
    return {
      part,
      scene,
      get folded() {
        drawn ??= foldingsOf(part).flatMap((folded) => drawFolded(folded, scene, options));
        return drawn;
      },
    };
  });
}

/** Told in words as the whole is, with what is left out of the drawing. */
function drawFolded({ fabric, fold }: FoldedPart, whole: Scene, options: ChartOptions): FoldedChart[] {
  const words = foldWords(fold);
  return chartParts(fabric, { ...options, fold }).flatMap(({ scene }) =>
    // What the words speak of has to be marked: a window cannot be where the foundation does not lie straight.
    foldMarks(scene.shapes) === (fold.across === null ? 0 : 1) + (fold.up === null ? 0 : 1)
      ? [{ scene: { ...scene, title: whole.title, alternative: `${whole.alternative} ${words}` }, words }]
      : [],
  );
}

function foldMarks(shapes: readonly Shape[]): number {
  return shapes.reduce((sum, shape) => {
    if (shape.kind !== 'group') return sum;
    return sum + (shape.data?.fold === undefined ? 0 : 1) + foldMarks(shape.shapes);
  }, 0);
}

interface AcrossFold {
  /** Of the foundation that is worked instead, and fewer blocks than the whole has. */
  readonly chains: number;
  readonly blocksOut: number;
  readonly drawn: number;
  /** Repeats in one window, and how often it is worked. */
  readonly window: number;
  readonly times: number;
}

interface UpFold {
  readonly line: number;
  /** Numbers of the rows that are drawn, and of the last row worked as they are. */
  readonly first: number;
  readonly last: number;
  readonly upTo: number;
}

interface Wanted {
  readonly across: AcrossFold | null;
  readonly up: UpFold | null;
}

/** What may be tried, the best first: a window that is worked a whole number of times, else one repeat among a few. */
function acrossFolds(
  { pattern, sizeIndex, worked, multiples }: WholePart,
  part: Part,
  index: number,
): AcrossFold[] {
  const size = pattern.sizes[sizeIndex]?.name ?? '';
  const ofPart = <T extends { readonly part: string }>(each: T): boolean => each.part === part.name;
  const repeat = partRepeats(worked.fabric, worked.accounts, multiples, size).find(ofPart);
  const found = multiples.find((each) => ofPart(each) && (each.size === null || each.size === size))?.found;
  const row = worked.fabric.rows[worked.fabric.parts[index]?.firstRow ?? -1];
  if (repeat === undefined || found?.proved !== true || row === undefined) return [];
  const { places: of, times: all } = repeat;
  const few = Math.ceil(LEAST_WINDOW_CHAINS / of);
  const counts = Array.from({ length: all }, (_, i) => i + 1);
  const windows = counts.filter((n) => all % n === 0 && n >= few && n * of <= WIDEST_WINDOW_CHAINS);
  const among = [few, few + 1, few + 2].map((drawn) => ({ drawn, window: 1 }));
  return [...windows.map((n) => ({ drawn: n, window: n })), ...among].flatMap(({ drawn, window }) => {
    const chains = row.end - row.first - (all - drawn) * of;
    return drawn < all && chains >= found.from
      ? [{ chains, blocksOut: all - drawn, drawn, window, times: all / window }]
      : [];
  });
}

/** The longest run of rows that repeat rows before them. */
function upFold({ worked, sizeIndex }: WholePart, part: Part, index: number): UpFold | null {
  const found = part.instructions.lines.flatMap((line, at): (UpFold & { out: number })[] => {
    const rep = repeatOf(line);
    const rows = worked.fabric.rows.filter((row) => row.part === index && row.line === at);
    const [from, to] = [rows[0]?.number, rows.at(-1)?.number];
    if (from == null || to == null) return [];
    if (line.sizes !== undefined && !line.sizes.includes(sizeIndex)) return [];
    if (line.label?.kind === 'numbered' && line.label.others !== undefined) return [];
    const cycle = rep === undefined ? 1 : (rep.last ?? rep.rows.length);
    // An even number, so that every row keeps its side and its way.
    const keep = cycle % 2 === 0 ? cycle : 2 * cycle;
    const out = rows.length - keep;
    return out < LEAST_ROWS_LEFT_OUT ? [] : [{ line: at, first: from, last: from + keep - 1, upTo: to, out }];
  });
  const [most] = found.sort((a, b) => b.out - a.out);
  return most ?? null;
}

function repeatOf(line: Line): RepeatRowsStep | undefined {
  return line.steps.find((step): step is RepeatRowsStep => step.kind === 'repeat rows');
}

function folded(whole: WholePart, part: Part, index: number, { across, up }: Wanted): FoldedPart | null {
  const { pattern, sizeIndex, plan, worked } = whole;
  const foundation = foundationOf(part);
  const narrow = across === null || foundation === null ? part : overChains(part, foundation, across.chains);
  const short = up === null ? narrow : fewerRows(narrow, up);
  const alone = { ...pattern, parts: [short] };
  const made = workSize(alone, sizeIndex, { ...plan, readings: worked.readings });
  if (!made.whole || !standsFor(whole, index, made.fabric, { across, up })) return null;
  const size = pattern.sizes[sizeIndex]?.name ?? '';
  const repeat = partRepeats(made.fabric, made.accounts, whole.multiples, size)[0];
  if (across !== null && repeat?.times !== across.drawn) return null;
  return {
    fabric: made.fabric,
    fold: {
      across:
        across === null || repeat === undefined
          ? null
          : { ...repeat, places: repeat.places * across.window, window: across.window, times: across.times },
      up: up === null ? null : { first: up.first, last: up.last, upTo: up.upTo },
    },
  };
}

function fewerRows(part: Part, { line: at, first, last }: UpFold): Part {
  const n = (values: number): { values: number[]; span: Line['span'] } => ({
    values: [values],
    span: part.span,
  });
  const lines = part.instructions.lines.map((line, i): Line => {
    if (i !== at) return line;
    const { label } = line;
    const steps = line.steps.map((step) =>
      step.kind === 'repeat rows' && step.until.kind !== 'label'
        ? { ...step, until: { kind: 'total' as const, n: n(last), endingWith: null } }
        : step,
    );
    if (label?.kind === 'numbered' && label.to !== null)
      return { ...line, steps, label: { ...label, to: n(last) } };
    if (label?.kind === 'next' && label.n !== undefined)
      return { ...line, steps, label: { ...label, n: n(last - first + 1) } };
    return { ...line, steps };
  });
  return { ...part, instructions: { lines } };
}

/**
 * Whether the folded rows are those of the whole with like blocks taken out, all of them where the window stands, and the
 * rows left out like those drawn.
 */
function standsFor(whole: WholePart, index: number, drawn: Fabric, { across, up }: Wanted): boolean {
  const { fabric } = whole.worked;
  const { firstRow = 0, endRow = 0 } = fabric.parts[index] ?? {};
  const alphabet = new Map<string, number>();
  const all = rowWords(fabric, alphabet).slice(firstRow, endRow);
  const few = rowWords(drawn, alphabet);
  const numbers = fabric.rows.slice(firstRow, endRow).map(({ number }) => number ?? 0);
  const isOut = (i: number): boolean =>
    up !== null && (numbers[i] ?? 0) > up.last && (numbers[i] ?? 0) <= up.upTo;
  const kept = all.filter((_, i) => !isOut(i));
  if (kept.length !== few.length) return false;
  const blocksOut = across?.blocksOut ?? 0;
  const alike = kept.every((row, i) => {
    const other = few[i];
    return other !== undefined && other.label === row.label && isWithBlocks(other, row, blocksOut);
  });
  const cycle = up === null ? 0 : up.last - up.first + 1;
  return (
    alike &&
    all.every((row, i) => !isOut(i) || sameStitches(row, all[i - cycle])) &&
    // With rows left out as well it has been asked before.
    (across === null || up !== null || repeatsInPlace(fabric, firstRow, across, all, few))
  );
}

/**
 * Whether every row repeats over the same stretch: a window is read upwards, so its blocks have to stand over one
 * another. A row may begin and end its stretch a repeat later or earlier than the row below.
 */
function repeatsInPlace(
  fabric: Fabric,
  firstRow: number,
  { drawn, blocksOut }: AcrossFold,
  all: readonly RowWord[],
  few: readonly RowWord[],
): boolean {
  const repeats = drawn + blocksOut;
  const words = rowWords(fabric, new Map(), true);
  const stretches = new Map<number, Stretch>();
  for (const [i, { stitches: long }] of all.entries()) {
    const row = firstRow + i;
    const stitches = words[row]?.stitches ?? [];
    const { first = 0 } = fabric.rows[row] ?? {};
    const block = (long.length - (few[i]?.stitches.length ?? 0)) / blocksOut;
    if (long.length === 0) continue;
    // A row that is the same at every width has nothing over the window.
    if (block === 0) return false;
    const found = i === 0 ? ([0, stitches.length] as const) : longestRun(stitches, block);
    if (found[1] - found[0] < (repeats - 1) * block) return false;
    const stretch = { from: first + found[0], to: first + found[1], block };
    if (!standsOver(fabric, stretch, stretches)) return false;
    stretches.set(row, stretch);
  }
  return true;
}

/** Stitches as indices of the fabric's arrays. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly block: number;
}

function standsOver(fabric: Fabric, { from, to }: Stretch, below: ReadonlyMap<number, Stretch>): boolean {
  return [from, to - 1].every((i) =>
    targets(fabric, i).every((target) => {
      const under = below.get(fabric.row[target] ?? -1);
      return under === undefined || (target >= under.from - under.block && target < under.to + under.block);
    }),
  );
}

/** The longest stretch in which each stitch is the one a block before it. */
function longestRun(stitches: readonly number[], block: number): readonly [number, number] {
  let best: readonly [number, number] = [0, 0];
  let from = 0;
  for (let i = block; i <= stitches.length; i += 1) {
    if (i < stitches.length && stitches[i] === stitches[i - block]) continue;
    if (i - from > best[1] - best[0]) best = [from, i];
    from = i - block + 1;
  }
  return best;
}

function sameStitches(a: RowWord, b: RowWord | undefined): boolean {
  return b?.stitches.length === a.stitches.length && a.stitches.every((sort, i) => sort === b.stitches[i]);
}

/** Whether `long` is `short` with one block put in so many times, the block standing in `short` too. */
function isWithBlocks({ stitches: short }: RowWord, { stitches: long }: RowWord, blocks: number): boolean {
  const more = long.length - short.length;
  if (blocks === 0 || more === 0) return more === 0 && short.every((sort, i) => sort === long[i]);
  if (more < 0 || more % blocks !== 0) return false;
  const block = more / blocks;
  let at = 0;
  while (at < short.length && short[at] === long[at]) at += 1;
  for (let i = at; i < short.length; i += 1) if (short[i] !== long[i + more]) return false;
  if (at < block) return false;
  for (let i = at - block; i < at + more - block; i += 1) if (long[i] !== long[i + block]) return false;
  return true;
}
