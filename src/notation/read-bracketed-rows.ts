/** Rows repeated that are told in brackets, with how often behind them: `[Rep rows 3-6 consecutively] 28 times`. */

import type { Cursor } from './cursor.ts';
import { peek, spanSince, takeAny } from './cursor.ts';
import { readRepeatRows } from './read-rows.ts';
import { readTimes } from './read-stop.ts';
import type { RepeatRowsStep } from './tree.ts';

/** Null where the brackets hold anything else, with the cursor where it was. */
export function readBracketedRows(cursor: Cursor): RepeatRowsStep | null {
  const from = cursor.at;
  cursor.at += 1;
  const rows = takeAny(cursor, 'rep', 'repeat') === null ? null : readRepeatRows(cursor, from);
  if (rows?.until.kind === 'label' && peek(cursor).kind === 'close') {
    cursor.at += 1;
    const until = readTimes(cursor, cursor.at);
    if (until?.kind === 'times') return { ...rows, until, span: spanSince(cursor, from) };
  }
  cursor.at = from;
  return null;
}
