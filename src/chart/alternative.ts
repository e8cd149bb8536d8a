/** A piece of a fabric in, its chart in words out, for who cannot see it. */

import { type Fabric, type FabricRow, INTO } from '../fabric/fabric.ts';
import type { StitchRow } from '../stitches/stitch-row.ts';
import { postFace } from './foot-marks.ts';

export function alternativeText(
  fabric: Fabric,
  table: readonly StitchRow[],
  title: string,
  rows: readonly number[],
  leftHanded = false,
): string {
  const lines = runsOf(
    rows.flatMap((index) => {
      const row = fabric.rows[index];
      return row === undefined || row.end === row.first
        ? []
        : [{ row, count: countText(row), post: postText(fabric, table, row) }];
    }),
  ).map((run) => runText(run, leftHanded));
  const numbered = rows.filter((index) => fabric.rows[index]?.number !== null).length;
  const unit = rows.some((index) => fabric.rows[index]?.unit === 'round') ? 'round' : 'row';
  const count = `${numbered} ${unit}${numbered === 1 ? '' : 's'}`;
  return `Chart of ${title}, ${count}. It shows the same stitches as the written instructions. ${lines.join('; ')}.`;
}

interface ToldRow {
  readonly row: FabricRow;
  readonly count: string;
  readonly post: string;
}

/** Numbered rows alike, one after another, are told together: forty of them would tire a listener. */
function runsOf(all: readonly ToldRow[]): ToldRow[][] {
  const runs: ToldRow[][] = [];
  for (const told of all) {
    const before = runs.at(-1)?.at(-1);
    if (before && goesOn(before, told)) runs.at(-1)?.push(told);
    else runs.push([told]);
  }
  return runs;
}

function goesOn(before: ToldRow, { row, count, post }: ToldRow): boolean {
  return (
    row.number !== null &&
    before.row.number === row.number - 1 &&
    before.row.part === row.part &&
    before.row.unit === row.unit &&
    before.count === count &&
    before.post === post
  );
}

function runText(run: readonly ToldRow[], leftHanded: boolean): string {
  const [first, second] = run;
  const last = run.at(-1);
  if (first === undefined || last === undefined) return '';
  const { row, count, post } = first;
  const side = row.side === 'RS' ? ', right side' : row.side === 'WS' ? ', wrong side' : '';
  const way = wayText(row, leftHanded);
  if (second === undefined)
    return `${row.label === '' ? 'start' : row.label}${side}, ${way}: ${count}${post}`;
  const unit = row.unit === 'round' ? 'Rounds' : 'Rows';
  const turned = second.row.direction !== row.direction;
  const ways = turned
    ? `, ${unit === 'Rows' ? 'row' : 'round'} ${row.number}${side} and ${way}, then turned each time`
    : `${side}, ${way}`;
  return `${unit} ${row.number} to ${last.row.number}${ways}: ${count} each${post}`;
}

function wayText({ closing, direction }: FabricRow, leftHanded: boolean): string {
  const toLeft = (direction === 'left') !== leftHanded;
  if (closing === 'flat') return toLeft ? 'right to left' : 'left to right';
  return toLeft ? 'anticlockwise' : 'clockwise';
}

function countText(row: FabricRow): string {
  const parts: string[] = [];
  if (row.stitches > 0) parts.push(plural(row.stitches, 'stitch', 'stitches'));
  if (row.spaces > 0) parts.push(plural(row.spaces, 'chain space', 'chain spaces'));
  if (parts.length === 0) parts.push(plural(row.end - row.first, 'chain', 'chains'));
  return parts.join(' and ');
}

/** Hooks are all that a chart shows posts by, as seen from the right side. */
function postText(fabric: Fabric, rows: readonly StitchRow[], { first, end }: FabricRow): string {
  if (!fabric.where.subarray(first, end).includes(INTO.post)) return '';
  const faces = Array.from({ length: end - first }, (_, k) => postFace({ fabric, rows }, first + k));
  const said = (['front', 'back'] as const).flatMap((face) => {
    const count = faces.filter((each) => each === face).length;
    return count === 0 ? [] : [`${count} round the ${face} of a post`];
  });
  return `, of them ${said.join(' and ')}, seen from the right side`;
}

function plural(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
