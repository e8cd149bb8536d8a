/** What readers look for a pattern by -> of each pattern, what it is found under. Read off the worked stitches where it can be. */

import { findCorners } from '../chart/find-corners.ts';
import type { CompiledPattern, CompiledSize } from '../compiled.ts';
import { type Fabric, FLAG, INTO, LOOP, targets } from '../fabric/fabric.ts';
import { rowWidths } from '../measure/row-widths.ts';
import { yarnWeight } from '../measure/yarn-weights.ts';
import { type Pattern, SKILLS } from '../pattern/pattern.ts';
import type { StitchFamily } from '../stitches/stitch-row.ts';
import { stitchById } from '../stitches/table.ts';
import { SKILL_NAMES } from './facts.ts';

export const FACETS = ['shape', 'skill', 'weight', 'size', 'technique', 'colours', 'time'] as const;
export type FacetName = (typeof FACETS)[number];

export interface FacetWords {
  readonly label: string;
  /** Value -> words, in the order in which they are offered. Values stand in style sheets: small letters and hyphens. */
  readonly options: ReadonlyMap<string, string>;
}

export type Found = Readonly<Partial<Record<FacetName, readonly string[]>>>;

/** The trade's weights by number, `4 Medium`. */
const WEIGHTS = [0, 1, 2, 3, 4, 5, 6, 7].map((number): [string, string] => [
  `weight-${number}`,
  `${number} ${yarnWeight(number)?.name ?? ''}`,
]);

/** The longer side; our own choice of steps: a coaster, a square, a cushion, a baby blanket, and larger. */
const SIZES: readonly { readonly value: string; readonly toMm: number; readonly words: string }[] = [
  { value: 'to-15-cm', toMm: 150, words: 'up to 15 cm (6 in)' },
  { value: 'to-30-cm', toMm: 300, words: '15 to 30 cm (6 to 12 in)' },
  { value: 'to-60-cm', toMm: 600, words: '30 to 60 cm (12 to 24 in)' },
  { value: 'to-120-cm', toMm: 1200, words: '60 to 120 cm (24 to 48 in)' },
  { value: 'over-120-cm', toMm: Number.POSITIVE_INFINITY, words: 'over 120 cm (48 in)' },
];

const CORNERED: ReadonlyMap<number, string> = new Map([
  [3, 'triangle'],
  [4, 'square'],
  [5, 'pentagon'],
  [6, 'hexagon'],
  [8, 'octagon'],
]);

/** Techniques that whole families of stitches are. */
const FAMILIES: Readonly<Partial<Record<StitchFamily, string>>> = {
  foundation: 'foundation',
  post: 'post',
  gathered: 'gathered',
  extended: 'extended',
  linked: 'linked',
};

export const FACET_WORDS: Readonly<Record<FacetName, FacetWords>> = {
  shape: {
    label: 'Shape',
    options: new Map([
      ['square', 'Square'],
      ['rectangle', 'Rectangle'],
      ['triangle', 'Triangle'],
      ['pentagon', 'Pentagon'],
      ['hexagon', 'Hexagon'],
      ['octagon', 'Octagon'],
      ['circle', 'Circle or oval'],
      ['hollow', 'With sides: hats, baskets, tubes'],
      ['shaped', 'Shaped'],
    ]),
  },
  skill: { label: 'Skill level', options: new Map(SKILLS.map((skill) => [skill, SKILL_NAMES[skill]])) },
  weight: { label: 'Yarn weight', options: new Map(WEIGHTS) },
  size: { label: 'Finished size', options: new Map(SIZES.map(({ value, words }) => [value, words])) },
  technique: {
    label: 'Technique',
    options: new Map([
      ['rows', 'Worked in rows'],
      ['rounds', 'Worked in joined rounds'],
      ['spiral', 'Worked in a spiral'],
      ['magic-ring', 'Magic ring'],
      ['foundation', 'Foundation stitches'],
      ['shells', 'Shells and fans'],
      ['gathered', 'Clusters, puffs, bobbles, popcorns'],
      ['post', 'Post stitches'],
      ['long', 'Long stitches into rows below'],
      ['one-loop', 'Front or back loop only'],
      ['extended', 'Extended stitches'],
      ['linked', 'Linked stitches'],
      ['colourwork', 'Colours changed within a row'],
    ]),
  },
  colours: {
    label: 'Colours',
    options: new Map([
      ['one-colour', 'One'],
      ['two-colours', 'Two'],
      ['more-colours', 'Three or more'],
    ]),
  },
  time: {
    label: 'Crochet-along',
    options: new Map([
      ['to-come', 'Still to begin'],
      ['under-way', 'Under way'],
      ['all-out', 'All weeks out'],
    ]),
  },
};

export function patternFound({ sizes }: Pick<CompiledPattern, 'sizes'>, pattern: Pattern): Found {
  const colours = pattern.yarns.length;
  return {
    shape: sorted('shape', sizes.flatMap(shapeOf)),
    skill: pattern.skill === null ? [] : [pattern.skill],
    weight: sorted(
      'weight',
      pattern.yarns.map(({ weight }) => `weight-${weight}`),
    ),
    size: sorted('size', sizes.flatMap(sizeOf)),
    technique: sorted('technique', sizes.flatMap(techniquesOf)),
    colours:
      colours === 0 ? [] : [colours === 1 ? 'one-colour' : colours === 2 ? 'two-colours' : 'more-colours'],
  };
}

/** What several patterns are found under together. */
export function allFound(each: readonly Found[]): Found {
  return Object.fromEntries(
    FACETS.map((name) => [
      name,
      sorted(
        name,
        each.flatMap((found) => found[name] ?? []),
      ),
    ]),
  );
}

/** Each once, in the order in which they are offered. */
function sorted(name: FacetName, values: readonly string[]): string[] {
  return [...FACET_WORDS[name].options.keys()].filter((value) => values.includes(value));
}

/** Of the piece that is made first: edgings and small parts follow it. */
function shapeOf({ fabric, measures }: CompiledSize): string[] {
  const [first] = fabric.parts;
  if (first === undefined) return [];
  if (measures.aroundMm !== null) return ['hollow'];
  const round = first.shape === 'round';
  if (round) {
    const corners = first.corners > 0 ? first.corners : cornersFound(fabric, first);
    return [CORNERED.get(corners) ?? 'circle'];
  }
  const widths = rowWidths(fabric).filter(
    (width, row) =>
      width > 0 && row >= first.firstRow && row < first.endRow && fabric.rows[row]?.edging === false,
  );
  const { widthMm, heightMm } = measures;
  const nearlySquare =
    widthMm !== null && heightMm !== null && Math.abs(widthMm / heightMm - 1) <= NEARLY_SQUARE;
  // Within a tenth the rows are of one width: a decrease here and an increase there make no slope.
  if (Math.min(...widths) < 0.9 * Math.max(...widths)) {
    // A square may be worked from corner to corner, or with a mitre: then its edging has its four corners.
    return [nearlySquare && fabric.parts.at(-1)?.corners === 4 ? 'square' : 'shaped'];
  }
  if (widthMm === null || heightMm === null) return [];
  return [nearlySquare ? 'square' : 'rectangle'];
}

/** Our own choice: what is called a square and blocked as one may measure a tenth more one way. */
const NEARLY_SQUARE = 0.1;

function cornersFound(fabric: Fabric, { firstRow, endRow }: Fabric['parts'][number]): number {
  const rows = Array.from({ length: endRow - firstRow }, (_, i) => firstRow + i);
  return findCorners(
    fabric,
    fabric.stitches.map((id) => stitchById(id)),
    rows,
  ).corners;
}

function sizeOf({ measures: { widthMm, heightMm, aroundMm } }: CompiledSize): string[] {
  const longest = Math.max(widthMm ?? 0, heightMm ?? 0, aroundMm ?? 0);
  if (longest === 0) return [];
  return [SIZES.find(({ toMm }) => longest <= toMm)?.value ?? 'over-120-cm'];
}

function techniquesOf({ fabric }: CompiledSize): string[] {
  const found = new Set<string>();
  const edged = fabric.parts.map(({ onto }) => onto !== null);
  for (const { unit, closing, onto, edging, part } of fabric.rows) {
    // What follows the first round of an edging belongs to it, and says nothing of how the piece is made.
    if (edging) edged[part] = true;
    if (unit === null || edged[part]) continue;
    if (closing === 'flat') found.add('rows');
    else if (closing === 'spiral') found.add('spiral');
    else if (onto !== null || unit === 'round') found.add('rounds');
  }
  if (fabric.parts.some(({ start }) => start === 'magic ring')) found.add('magic-ring');
  for (const id of fabric.stitches) {
    const technique = FAMILIES[stitchById(id).family];
    if (technique !== undefined) found.add(technique);
  }
  lookThrough(fabric, found);
  return [...found];
}

/** As many in one place are a shell rather than an increase or a corner; our own choice. */
const LEAST_SHELL = 5;

function lookThrough(fabric: Fabric, found: Set<string>): void {
  // Clusters are decreases with all legs in one place.
  const together = new Set(
    fabric.stitches.flatMap((id, kind) => (stitchById(id).family === 'together' ? [kind] : [])),
  );
  let inPlace = 0;
  let place = -1;
  for (let i = 0; i < fabric.count; i += 1) {
    const row = fabric.row[i] ?? 0;
    const legs = targets(fabric, i);
    const loop = fabric.loop[i];
    if (loop === LOOP.front || loop === LOOP.back) found.add('one-loop');
    if (i > 0 && fabric.row[i - 1] === row && fabric.yarn[i - 1] !== fabric.yarn[i] && counted(fabric, i - 1))
      found.add('colourwork');
    const into = fabric.where[i];
    const onePlace = into === INTO.space || into === INTO.ring || legs.every((leg) => leg === legs[0]);
    if (onePlace && together.has(fabric.kind[i] ?? -1)) found.add('gathered');
    const [target = -1] = legs;
    const below = target < 0 ? null : (fabric.row[target] ?? 0);
    const onto = fabric.rows[row]?.onto ?? null;
    // The chain a first row turns on lies in the foundation.
    if (
      into === INTO.top &&
      below !== null &&
      onto !== null &&
      below < onto &&
      fabric.rows[below]?.unit !== null
    )
      found.add('long');
    const corner = ((fabric.flags[i] ?? 0) & FLAG.corner) !== 0;
    inPlace =
      counted(fabric, i) && !corner && into !== INTO.ring && target >= 0 && target === place
        ? inPlace + 1
        : 1;
    place = target;
    if (inPlace >= LEAST_SHELL) found.add('shells');
  }
}

function counted(fabric: Fabric, i: number): boolean {
  return ((fabric.flags[i] ?? 0) & FLAG.counted) !== 0;
}
