/** A row in, worked from the side that it says it shows; where only the other side comes out, worked from that. */

import { backToMark, markBuilder } from './builder.ts';
import type { Top } from './row-start.ts';
import { startRow } from './row-start.ts';
import type { RowPlan, RowSetting, RowWorked } from './work-row.ts';
import { workRow } from './work-row.ts';
import type { Worker } from './worker.ts';

/**
 * `Row 13 (RS): … dc in top of 3 ch` on a row that was itself RS, then turned: that the face is wrong is told where faces
 * are compared, so the row is worked as the turn before it has it.
 */
export function workEitherFace(
  worker: Worker,
  plan: RowPlan,
  top: Top | null,
  doubt: number | null,
  setting: RowSetting,
): RowWorked {
  const mark = markBuilder(worker.builder);
  const worked = workRow(worker, plan, top, doubt, setting);
  if (!isWrong(worked) || top === null || !turnsOtherwise(plan, top)) return worked;
  backToMark(worker.builder, mark);
  const turned = workRow(worker, { ...plan, statedSide: null }, top, doubt, setting);
  if (!isWrong(turned)) return turned;
  backToMark(worker.builder, mark);
  return workRow(worker, plan, top, doubt, setting);
}

function isWrong({ faults }: RowWorked): boolean {
  return faults.some(({ severity }) => severity === 'error');
}

/** Whether the turn before a row has it show another face than it says. */
function turnsOtherwise({ unit, statedSide }: RowPlan, top: Top): boolean {
  if (statedSide === null || unit !== 'row' || top.closing !== 'flat' || top.side === null) return false;
  return startRow(top, unit, null).side !== statedSide;
}
