/** A round begun in the middle of any petal, and what begins and numbers the yarns and stitches of such a page. */

import { expect, test } from 'vitest';
import { workedText } from './worked-text.ts';

const MAT = [
  'Foam Mat',
  '',
  'US terms',
  '',
  'Materials',
  '- DK cotton (100 g / 230 m), about 20 g each of:',
  '   A = Sand',
  '   B = Kelp',
  '   C = Coral',
  '',
  'Special stitches',
  'Cl: (yo, insert hook in sp, yo and pull up a loop, yo and draw through 2 loops) twice in same sp, yo and draw through all 3 loops on hook.',
  'Beg cl: ch 2, then (yo, insert hook in same sp, yo and pull up a loop, yo and draw through 2 loops) once, yo and draw through both loops. Counts as a cl.',
  '',
  'MAT',
  'Rnd 1 (A): Make a magic ring, ch 1, (sc in ring, ch 1) 6 times, join with sl st in first sc. (6 sc, 6 ch-1 sps)',
  'Rnd 2 (C): Join C in any ch-1 sp, beg cl in same sp, ch 3, *cl in next ch-1 sp, ch 3; rep from * around, join with sl st in top of beg cl. (6 cl, 6 ch-3 sps)',
  'Rnd 3 (B): Join B in any ch-3 sp, ch 1, (sc, hdc, 3 dc, hdc, sc) in same sp and in each ch-3 sp around, join with sl st in first sc. (6 petals, 42 sts)',
  'Rnd 4 (A): Join A in the centre dc of any petal, ch 1, sc in same st, ch 5, *sc in centre dc of next petal, ch 5; rep from * around, join with sl st in first sc. (6 sc, 6 ch-5 sps)',
].join('\n');

const codes = (text: string): readonly string[] =>
  workedText(text).codes.filter((code) => !/^(?:gauge|hook|size|text|yarn)\/(?!unlisted|special)/.test(code));

test('its yarns, its first cluster and its last round are read', () => {
  expect(codes(MAT)).toEqual([]);
  expect(workedText(MAT).rows[0]?.map((row) => row.split(': ')[1])).toEqual(['6', '6', '42', '6']);
});

test.each([
  ['6 sc, 6 ch-5 sps', '7 sc, 6 ch-5 sps'],
  ['6 cl, 6 ch-3', '5 cl, 6 ch-3'],
  ['centre dc of any petal', 'centre tr of any petal'],
  ['centre dc of any petal', 'centre dc of any table'],
  ['   C = Coral\n', ''],
])('but not where "%s" is "%s"', (right, wrong) => expect(codes(MAT.replace(right, wrong))).not.toEqual([]));
