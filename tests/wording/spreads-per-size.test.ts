/** What is worked evenly, written out for each size, and what is printed worked again as it stands. */

import { describe, expect, test } from 'vitest';
import { compilePattern } from '../../src/compile.ts';
import { fabricOf, rowOf } from '../fabric/work-text.ts';

function edgingOf(work: string, line: number): string[] {
  const text = `title: Eelgrass Cuff
terms: US
yarn:
  A: {colour: reed, weight: 4, fibre: wool}
sizes:
  - {name: small}
  - {name: large}
parts:
  - name: Cuff
    work: |
${work
  .split('\n')
  .map((one) => `      ${one}`)
  .join('\n')}
`;
  const compiled = compilePattern({ file: 'cuff', text }, 'cuff');
  expect(compiled.diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return compiled.sizes.map(({ words }) => words.us.parts[0]?.lines[line]?.text ?? '');
}

describe('stitches worked evenly', () => {
  const CUFF = `Ch 24 (40), join with sl st in first ch to form ring.
Rnd 1: Ch 1, sc in each ch around, join with sl st in first sc.
Rnd 2: Ch 1, work 30 (44) sc evenly around, join with sl st in first sc.`;

  test('round a ring are one rule for each size', () => {
    const [small = '', large = ''] = edgingOf(CUFF, 2);
    expect(small).toBe(
      'Ch 1, work 30 sc evenly around: *1 sc in next st, 2 sc in next st, 1 sc in each of next 2 sts; rep from * 5 more times; join with sl st in first sc.',
    );
    expect(large).toContain('1 sc in each of next 4 sts, 2 sc in next st, 1 sc in each of next 5 sts');
    // As a maker would follow it: the rule alone, without the number it comes to.
    const rule = small.replace('work 30 sc evenly around: ', '').replace('times; join', 'times, join');
    const again = CUFF.replaceAll(/ \(\d+\)/g, '').replace(/Rnd 2: .*/, `Rnd 2: ${rule}`);
    expect(rowOf(fabricOf(again), 'Rnd 2').stitches).toBe(30);
  });

  test('along row ends are one rule for each size, the same on both sides and from both ends', () => {
    const panel = `Ch 11.
Row 1 (RS): Sc in 2nd ch from hook and in each ch across, turn.
Rows 2-25 (32): Ch 1, sc in each st across, turn.
Edging: Ch 1, 3 sc in first st, sc in next 8 sts, 3 sc in last st, work 23 (30) sc evenly along row ends, working along opposite side of foundation ch, 3 sc in first ch, sc in next 8 ch, 3 sc in last ch, work 23 (30) sc evenly along row ends, join with sl st in first sc.`;
    const [small = '', large = ''] = edgingOf(panel, 3);
    const side =
      '1 sc in each of next 6 row ends, sk next row end, 1 sc in each of next 11 row ends, sk next row end, 1 sc in each of next 6 row ends; ';
    expect(small.split(side)).toHaveLength(3);
    expect(large).toContain(
      '1 sc in each of next 8 row ends, sk next row end, 1 sc in each of next 14 row ends, sk next row end, 1 sc in each of next 8 row ends',
    );
  });

  test('over spaces as well as stitches are not written out, for a space is no place for one stitch', () => {
    const mesh = `Ch 24 (40), join with sl st in first ch to form ring.
Rnd 1: Ch 1, [sc in next ch, ch 1, sk next ch] around, join with sl st in first sc.
Rnd 2: Ch 1, work 30 (44) sc evenly around, join with sl st in first sc.`;
    const [small = ''] = edgingOf(mesh, 2);
    expect(small).toBe('Ch 1, work 30 sc evenly around, join with sl st in first sc.');
  });
});
