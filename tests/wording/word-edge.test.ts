/** An edging's words, read again and worked as they stand. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planEdge } from '../../src/measure/edge-plan.ts';
import type { EdgePlaces } from '../../src/measure/edge-sides.ts';
import { plainVoice } from '../../src/wording/voice.ts';
import { wordEdge } from '../../src/wording/word-edge.ts';
import { codesOf, fabricOf, rowOf } from '../fabric/work-text.ts';

function wordsFor(places: number, put: number, into: EdgePlaces): string {
  const side = { side: 'sides', count: 1, into, places, mm: null, flat: places } as const;
  const plan = planEdge([side], { put, across: null, inCorner: 0, multiple: null });
  const [planned] = plan.kind === 'planned' ? plan.sides : [];
  return planned === undefined ? '' : wordEdge(planned, 'sc', plainVoice('US', 'all'));
}

const anyPlaces = fc.integer({ min: 4, max: 70 });
const anyNumber = fc.integer({ min: 2, max: 160 });

test('any number of stitches over any number of stitches comes to that number', () => {
  fc.assert(
    fc.property(anyPlaces, anyNumber, (places, put) => {
      const work = `Ch ${places + 1}.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Row 2: Ch 1, ${wordsFor(places, put, 'stitches')}.`;
      expect(codesOf(work)).toEqual([]);
      expect(rowOf(fabricOf(work), 'Row 2').stitches).toBe(put);
    }),
  );
});

test('and over any number of row ends', () => {
  fc.assert(
    fc.property(anyPlaces, anyNumber, (rows, put) => {
      const work = `Ch 6.
Row 1: Sc in 2nd ch from hook and in each ch across, turn.
Rows 2-${rows}: Ch 1, sc in each st across, turn.
Edging: Ch 1, sc in next 5 sts, working along row ends, ${wordsFor(rows, put, 'row ends')}.`;
      expect(codesOf(work)).toEqual([]);
      expect(rowOf(fabricOf(work), 'Edging').stitches).toBe(5 + put);
    }),
  );
});
