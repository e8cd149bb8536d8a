/** A pattern made over, in the page -> followed row by row, as a ready-made size is. Loaded once the words stand there. */

import type { OwnMade } from '../own/make-own.ts';
import { followedLines } from '../site/following.ts';
import type { DialectKey } from '../wording/words.ts';
import { type Following, followRows } from './follow-rows.ts';
import type { RowSheets } from './own-result.ts';

export function followOwn(
  { worked }: OwnMade,
  { words, chartIds }: Pick<RowSheets, 'words' | 'chartIds'>,
  dialect: DialectKey,
  keepAs: string,
): Following {
  return followRows(followedLines({ words, accounts: worked.accounts }, chartIds, dialect), keepAs);
}
