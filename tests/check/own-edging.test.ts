/** Edgings of a size of a maker's own: as many stitches along her sides as the designer's stand to hers. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { compileOwnSize } from '../../src/compile-own.ts';
import type { CompiledPattern } from '../../src/compiled.ts';
import { INTO } from '../../src/fabric/fabric.ts';
import { NOTHING_ASKED, OWN_NAME, type OwnSize } from '../../src/pattern/own-size.ts';

const ROOT = join(import.meta.dirname, '../..');
const ASKS: OwnSize = NOTHING_ASKED;

function demo(name: string): CompiledPattern {
  const text = readFileSync(join(ROOT, 'patterns', name, 'pattern.yaml'), 'utf8');
  return compilePattern({ file: name, text }, name);
}

/** How many stitches of the first edging round go into row ends. */
function alongEnds({ sizes }: CompiledPattern): number {
  const fabric = sizes[0]?.fabric;
  const round = fabric?.rows.find(({ edging, closing }) => edging || closing !== 'flat');
  if (fabric === undefined || round === undefined) return 0;
  const where = [...fabric.where.slice(round.first, round.end)];
  return where.filter((each) => each === INTO.rowEnd).length;
}

describe.each([
  ['sandbar-square', 23 / 13],
  ['two-tides-square', 25 / 30],
])('the edging of %s', (name, perRow) => {
  const pattern = demo(name);

  test.each([21, 31, 47])('grows with its rows: about %d of them', (rows) => {
    // Some rows cannot be the last; those that can come again after a few.
    const own = [0, 1, 2, 3, 4, 5]
      .map((more) => compileOwnSize(pattern, { ...ASKS, rows: rows + more }))
      .find(({ sizes, diagnostics }) => sizes.length > 0 && !diagnostics.some(isError));
    expect(own?.sizes[0]?.size.name).toBe(OWN_NAME);
    const worked =
      own?.sizes[0]?.fabric.rows.filter((row) => row.closing === 'flat' && row.unit === 'row').length ?? 0;
    const perSide = (own === undefined ? 0 : alongEnds(own)) / 2;
    expect(Number.isInteger(perSide)).toBe(true);
    expect(Math.abs(perSide - worked * perRow)).toBeLessThanOrEqual(2);
    expect(own?.diagnostics.map(({ code }) => code)).not.toContain('edging/ratio');
  });

  test('stays as the designer wrote it where only the gauge is another', () => {
    const gauge = { stitches: 12, rows: 8, overMm: 100, upMm: 100 };
    expect(alongEnds(compileOwnSize(pattern, { ...ASKS, gauge }))).toBe(alongEnds(pattern));
  });
});

describe('an edging with a repeat of its own', () => {
  // 4 corners of 3, 18 across twice, and the sides: all round a multiple of 4.
  const text = `title: Eelgrass Panel
terms: US
gauge: {stitches: 16, rows: 18, over: 10 cm, of: single crochet}
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
sizes:
  - {name: one, rows: 25}
parts:
  - name: Panel
    work: |
      Ch 21.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.
      Row 2: Ch 1, sc in each st across, turn.
      Rows 3 on: Rep Row 2 to height, ending with a Row 2.
      Rnd 1: Ch 1, 3 sc in first st, sc in each st to last st, 3 sc in last st, work 22 sc evenly along row ends, working along opposite side of foundation ch, 3 sc in first ch, sc in each ch to last ch, 3 sc in last ch, work 22 sc evenly along row ends, join with sl st in first sc.
      Rnd 2: Ch 1, *sc in next st, ch 3, sk next 3 sts; rep from * around, join with sl st in first sc.
`;

  test('takes the nearest number along each side over which it comes out', () => {
    const panel = compilePattern({ file: 'panel', text }, 'panel');
    expect(panel.diagnostics.filter(isError)).toEqual([]);
    for (const rows of [30, 33, 41]) {
      const own = compileOwnSize(panel, { ...ASKS, rows });
      expect(own.diagnostics.filter(isError)).toEqual([]);
      const side = alongEnds(own) / 2;
      // 12 and 36 are multiples of 4, so twice the side is.
      expect(side % 2).toBe(0);
      expect(Math.abs(side - (rows * 22) / 25)).toBeLessThanOrEqual(2);
    }
  });
});

function isError({ severity }: { readonly severity: string }): boolean {
  return severity === 'error';
}
