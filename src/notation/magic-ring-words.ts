/** The names of the ring that is drawn together. */

import type { Cursor } from './cursor.ts';
import { takeAny, takeWords, wordAt } from './cursor.ts';

export function takeMagicRing(cursor: Cursor): boolean {
  const word = wordAt(cursor);
  if (word !== 'magic' && word !== 'adjustable' && word !== 'mr') return false;
  return (
    takeWords(cursor, 'magic', 'ring') ||
    takeWords(cursor, 'magic', 'circle') ||
    takeWords(cursor, 'magic', 'loop') ||
    takeWords(cursor, 'adjustable', 'loop') ||
    takeWords(cursor, 'adjustable', 'ring') ||
    takeAny(cursor, 'mr') !== null
  );
}
